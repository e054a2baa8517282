package perkilo.purchasing;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One supplier's price for one item in one pack size, with its all-units price breaks.
 *
 * @param item index of the need it covers
 * @param vendor index of the vendor who offers it
 * @param packSize content of one pack, in the item's base unit
 * @param kgPerPack weight of one pack for freight, in kilograms; zero for pieces of unknown weight
 * @param multiple packs are sold in multiples of this; at least one
 * @param minimum the smallest line, in the base unit; zero for none
 * @param tiers rising, at least one; the price of the highest one reached applies to the whole line
 * @param duty on this line, as a fraction
 * @param toVendorCurrency units of the vendor's currency for one unit of the quote's currency; one if they are the same
 * @param minorDigits decimals that a line's goods value is rounded to, half up; null if nothing is rounded
 * @param firstPeriod the first period it can arrive in, from zero
 * @param lastPeriod the last period it can be ordered for
 * @param heldUntil the last period whose orders are placed before the price ends; later orders are planned at this
 *     price too, but the vendor has to confirm it
 */
public record Quote(
        int item,
        int vendor,
        BigDecimal packSize,
        BigDecimal kgPerPack,
        int multiple,
        BigDecimal minimum,
        List<Tier> tiers,
        BigDecimal duty,
        BigDecimal toVendorCurrency,
        @Nullable Integer minorDigits,
        int firstPeriod,
        int lastPeriod,
        int heldUntil,
        @Nullable Deliveries deliveries) {

    public Quote {
        requireNonNull(kgPerPack, "kgPerPack");
        requireNonNull(minimum, "minimum");
        requireNonNull(duty, "duty");
        tiers = List.copyOf(tiers);
        if (packSize.signum() <= 0 || multiple < 1 || toVendorCurrency.signum() <= 0) {
            throw new IllegalArgumentException("a quote needs a pack size, an order multiple and a rate above zero");
        }
        if (tiers.isEmpty()) {
            throw new IllegalArgumentException("a quote needs at least one price");
        }
        for (int i = 1; i < tiers.size(); i++) {
            if (tiers.get(i).from().compareTo(tiers.get(i - 1).from()) <= 0) {
                throw new IllegalArgumentException("price breaks must rise, but %s follows %s"
                        .formatted(tiers.get(i).from(), tiers.get(i - 1).from()));
            }
        }
    }

    /** A quote whose price is valid for as long as it can be ordered. */
    public Quote(
            int item,
            int vendor,
            BigDecimal packSize,
            BigDecimal kgPerPack,
            int multiple,
            BigDecimal minimum,
            List<Tier> tiers,
            BigDecimal duty,
            BigDecimal toVendorCurrency,
            @Nullable Integer minorDigits,
            int firstPeriod,
            int lastPeriod) {
        this(
                item,
                vendor,
                packSize,
                kgPerPack,
                multiple,
                minimum,
                tiers,
                duty,
                toVendorCurrency,
                minorDigits,
                firstPeriod,
                lastPeriod,
                lastPeriod,
                null);
    }

    /** The same quote, whose price is valid only for orders of the periods to {@code last}. */
    public Quote heldUntil(int last) {
        return new Quote(
                item,
                vendor,
                packSize,
                kgPerPack,
                multiple,
                minimum,
                tiers,
                duty,
                toVendorCurrency,
                minorDigits,
                firstPeriod,
                lastPeriod,
                last,
                deliveries);
    }

    /** The same quote of another vendor, whose goods arrive and keep as given. */
    public Quote delivered(int otherVendor, Deliveries arrivals) {
        return new Quote(
                item,
                otherVendor,
                packSize,
                kgPerPack,
                multiple,
                minimum,
                tiers,
                duty,
                toVendorCurrency,
                minorDigits,
                firstPeriod,
                lastPeriod,
                heldUntil,
                arrivals);
    }

    /** The same quote for packs with other contents, prices, multiple or minimum. */
    public Quote inPacks(
            BigDecimal size, BigDecimal kg, int otherMultiple, BigDecimal otherMinimum, List<Tier> otherTiers) {
        return new Quote(
                item,
                vendor,
                size,
                kg,
                otherMultiple,
                otherMinimum,
                otherTiers,
                duty,
                toVendorCurrency,
                minorDigits,
                firstPeriod,
                lastPeriod,
                heldUntil,
                deliveries);
    }

    /** Whether it can be ordered for a period. */
    public boolean isFor(int period) {
        return firstPeriod <= period && period <= lastPeriod && (deliveries == null || deliveries.isFor(period));
    }

    /** How long before a period it arrives, in the unit of the holding cost. */
    public int early(int period) {
        return deliveries == null ? 0 : deliveries.early().get(period);
    }

    /**
     * The last period in which it can be used.
     *
     * @param need that it covers
     */
    public int lastUse(Need need, int period) {
        return deliveries == null
                ? Need.lastPeriod(period, need.usablePeriods())
                : deliveries.last().get(period);
    }

    /** A line of it as goods on a shelf. */
    public Shelf.Bought bought(Need need, PurchasePlan.Line line) {
        return new Shelf.Bought(
                quantity(line.packs()), line.period(), lastUse(need, line.period()), early(line.period()));
    }

    /**
     * The same quote for another need and other periods; its price is valid in all of them.
     *
     * @param index of the need it covers
     * @param first the first period it can arrive in
     * @param last the last period it can be ordered for
     */
    public Quote forNeed(int index, int first, int last) {
        return new Quote(
                index,
                vendor,
                packSize,
                kgPerPack,
                multiple,
                minimum,
                tiers,
                duty,
                toVendorCurrency,
                minorDigits,
                first,
                last);
    }

    /** Whether another quote has the same vendor, pack, prices and terms; needs and periods may differ. */
    public boolean hasTermsOf(Quote other) {
        return vendor == other.vendor
                && multiple == other.multiple
                && isSame(packSize, other.packSize)
                && isSame(kgPerPack, other.kgPerPack)
                && isSame(minimum, other.minimum)
                && tiers.equals(other.tiers)
                && isSame(duty, other.duty)
                && isSame(toVendorCurrency, other.toVendorCurrency)
                && Objects.equals(minorDigits, other.minorDigits);
    }

    /** Shared by quotes that differ only in need and periods. */
    @SuppressWarnings("ReferenceEquality")
    private static boolean isSame(BigDecimal one, BigDecimal other) {
        return one == other || one.compareTo(other) == 0;
    }

    /** The smallest line that has a price and meets the minimum, in the base unit. */
    public BigDecimal smallestLine() {
        return minimum.max(tiers.get(0).from());
    }

    /** The fewest packs, in whole multiples and at least one multiple, that make a line of {@code quantity} or more. */
    public long packsFor(BigDecimal quantity) {
        BigDecimal step = packSize.multiply(BigDecimal.valueOf(multiple));
        long steps = quantity.divide(step, 0, RoundingMode.CEILING).longValueExact();
        return Math.max(1, steps) * multiple;
    }

    /** The content of {@code packs}, in the base unit. */
    public BigDecimal quantity(long packs) {
        return packSize.multiply(BigDecimal.valueOf(packs));
    }

    /**
     * The price break that a line of {@code packs} reaches.
     *
     * @return index of the highest one whose {@code from} is at most the line's quantity, or −1 if the line is below
     *     the first
     */
    public int tierFor(long packs) {
        BigDecimal quantity = quantity(packs);
        int reached = -1;
        for (int i = 0; i < tiers.size() && tiers.get(i).from().compareTo(quantity) <= 0; i++) {
            reached = i;
        }
        return reached;
    }

    /**
     * The value of a line's goods in the quote's currency, rounded as on an invoice.
     *
     * @throws IllegalArgumentException if the line is below the first price break
     */
    public BigDecimal goods(long packs) {
        return goodsAt(tierFor(packs), packs);
    }

    /** The value of a line's goods at one of the price breaks; below the first there is no price. */
    BigDecimal goodsAt(int tier, long packs) {
        if (tier < 0) {
            throw new IllegalArgumentException(packs + " packs are below the first price");
        }
        BigDecimal exact = tiers.get(tier).pricePerPack().multiply(BigDecimal.valueOf(packs));
        return minorDigits == null ? exact : exact.setScale(minorDigits, RoundingMode.HALF_UP);
    }
}
