package perkilo.purchasing.search.quick;

import java.util.List;

/**
 * What a cover counts for in the order to one vendor as a whole; more is better.
 *
 * @param of what is counted
 * @param vendor whose order it is
 * @param enough more than this makes no difference; infinite if more always does
 * @param worthBuying up to goods of this value, more than is needed may pay for the sake of the order
 */
record Measure(Of of, int vendor, double enough, double worthBuying) {

    /** What is counted, in the vendor's currency. */
    enum Of {
        /** The goods, up to a minimum order value. */
        MINIMUM(0),
        /** All goods: the more, the lower the average rate of duty that the others cause. */
        GOODS(1),
        /** The duty on the goods, as a loss. */
        DUTY(2);

        private final int key;

        Of(int key) {
            this.key = key;
        }
    }

    /** The goods that count towards a minimum order value. */
    static Measure minimum(int vendor, double value) {
        return new Measure(Of.MINIMUM, vendor, value, value);
    }

    /** All goods. */
    static Measure goods(int vendor, double worthBuying) {
        return new Measure(Of.GOODS, vendor, Double.POSITIVE_INFINITY, worthBuying);
    }

    /** The duty on the goods, below zero. */
    static Measure duty(int vendor) {
        return new Measure(Of.DUTY, vendor, Double.POSITIVE_INFINITY, 0);
    }

    /** Adds numbers to a key that no other measure in a market adds. */
    void addTo(List<Number> key) {
        key.add(of.key);
        key.add(vendor);
        key.add(worthBuying);
    }

    /** The measure of a cover. */
    double in(List<Cover.Pick> picks) {
        double sum = 0;
        for (Cover.Pick pick : picks) {
            if (pick.price().vendor() == vendor) {
                double goods = pick.price().goods(pick.packs());
                sum += of == Of.DUTY ? -pick.price().dutyRate() * goods : goods;
            }
        }
        return Math.min(sum, enough);
    }
}
