package perkilo.purchasing.search.oracle;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.Need;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/**
 * An invented market: repackers sell small packs dear and ask for little, distributors sell more for less, makers sell
 * sacks and drums and refuse small orders. Which numbers are usual is common practice, no source.
 *
 * <p>Nothing is rounded to cents, so that a linear program can say exactly the same.
 */
public final class SampleMarket {
    private static final List<BigDecimal> RATES = List.of(new BigDecimal("0.9215"), new BigDecimal("1.164"));
    private static final List<BigDecimal> DUTIES =
            List.of(BigDecimal.ZERO, new BigDecimal("0.025"), new BigDecimal("0.037"), new BigDecimal("0.065"));
    private static final List<Integer> SHELF_LIVES = List.of(2, 3, 6, 9, 12, 12, 18, 24, 24);

    private final Random random;
    private final Size size;
    private final int periods;
    private final List<Kind> kinds = new ArrayList<>();
    private final List<BigDecimal> duties = new ArrayList<>();

    private SampleMarket(Size size, int periods, long seed) {
        this.size = size;
        this.periods = periods;
        random = new Random(31 * seed + size.name().hashCode());
    }

    /** How large a problem is. */
    public enum Size {
        FEW(10, 30, 5, 1, false, false),
        FEW_MIXED(6, 18, 3, 1, false, true),
        SHOP(60, 205, 12, 1, false, false),
        SHOP_MIXED(60, 205, 12, 1, false, true),
        TIGHT_SHOP(60, 213, 12, 1, true, false),
        HOUSE(500, 2000, 40, 1, false, false),
        QUARTER(8, 24, 3, 3, false, false),
        QUARTER_MIXED(4, 12, 2, 2, false, true),
        SMALL_PLAN(12, 36, 4, 4, false, false),
        SMALL_PLAN_MIXED(12, 36, 4, 4, false, true),
        PLAN(40, 120, 8, 6, false, false),
        PLAN_MIXED(40, 120, 8, 6, false, true),
        YEAR(150, 450, 12, 12, false, false);

        private final int items;
        private final int quotes;
        private final int vendors;
        private final int periods;
        /** Needs so small that minimum order values bind. */
        private final boolean tight;
        /** Each quote has a rate of duty of its own. */
        private final boolean mixed;

        Size(int items, int quotes, int vendors, int periods, boolean tight, boolean mixed) {
            this.items = items;
            this.quotes = quotes;
            this.vendors = vendors;
            this.periods = periods;
            this.tight = tight;
            this.mixed = mixed;
        }

        @Override
        public String toString() {
            return "%d items × %d period%s%s%s"
                    .formatted(
                            items,
                            periods,
                            periods == 1 ? "" : "s",
                            tight ? ", tight" : "",
                            mixed ? ", mixed duty" : "");
        }
    }

    /** What a material is for: how dear it is, and how much of it is needed in a month. */
    private enum Use {
        BULK(4.5, 55),
        FUNCTIONAL(16, 11),
        PRESERVATIVE(62, 2.4),
        ACTIVE(100, 1.2);

        private final double price;
        private final double kg;

        Use(double price, double kg) {
            this.price = price;
            this.kg = kg;
        }
    }

    private enum Kind {
        REPACKER(1.45),
        DISTRIBUTOR(1.13),
        MAKER(1);

        private final double level;

        Kind(double level) {
            this.level = level;
        }

        List<Double> packs() {
            return switch (this) {
                case REPACKER -> List.of(0.25, 0.5, 1.0, 5.0);
                case DISTRIBUTOR -> List.of(1.0, 5.0, 20.0, 25.0);
                case MAKER -> List.of(25.0, 25.0, 25.0, 190.0, 200.0);
            };
        }
    }

    /** The same problem for the same seed. */
    public static PurchaseProblem of(Size size, long seed) {
        return new SampleMarket(size, size.periods, seed).problem();
    }

    /** A problem with the items and vendors of a size, over another number of periods. */
    public static PurchaseProblem over(int periods, Size size, long seed) {
        return new SampleMarket(size, periods, seed).problem();
    }

    private PurchaseProblem problem() {
        List<Vendor> vendors = new ArrayList<>();
        for (int v = 0; v < size.vendors; v++) {
            Kind kind = v * 2 < size.vendors ? Kind.REPACKER : v * 6 < size.vendors * 5 ? Kind.DISTRIBUTOR : Kind.MAKER;
            kinds.add(kind);
            vendors.add(vendor("vendor " + v, kind));
        }
        List<Need> needs = new ArrayList<>();
        List<Quote> quotes = new ArrayList<>();
        for (int i = 0; i < size.items; i++) {
            Use use = oneOf(List.of(Use.BULK, Use.FUNCTIONAL, Use.FUNCTIONAL, Use.PRESERVATIVE, Use.ACTIVE));
            double price = use.price * Math.exp(0.4 * random.nextGaussian());
            double monthly = use.kg * Math.exp(0.9 * random.nextGaussian()) * (size.tight ? 0.03 : 1);
            needs.add(need("item " + i, price, monthly));
            int count = size.quotes * (i + 1) / size.items - size.quotes * i / size.items;
            for (int q = 0; q < count; q++) {
                quotes.add(quote(i, use, price, vendors, q == 0));
            }
        }
        return new PurchaseProblem(periods, needs, vendors, quotes, null, null);
    }

    private Need need(String name, double price, double monthly) {
        List<BigDecimal> perPeriod = new ArrayList<>();
        boolean rare = oneIn(4);
        for (int t = 0; t < periods; t++) {
            boolean none = periods > 1 && rare && random.nextBoolean();
            perPeriod.add(none ? BigDecimal.ZERO : decimal(monthly * (0.6 + 0.8 * random.nextDouble()) + 0.01, 2));
        }
        BigDecimal stock = random.nextBoolean() ? BigDecimal.ZERO : decimal(monthly * random.nextDouble(), 2);
        int shelfLife = oneOf(SHELF_LIVES);
        return new Need(
                name,
                perPeriod,
                List.of(new Need.Lot(stock, 1 + random.nextInt(shelfLife))),
                shelfLife,
                periods > 1 ? decimal(price * 0.01, 4) : BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO);
    }

    private Vendor vendor(String name, Kind kind) {
        boolean foreign = (kind != Kind.REPACKER && oneIn(2)) || oneIn(4);
        BigDecimal rate = foreign ? oneOf(RATES) : BigDecimal.ONE;
        return switch (kind) {
            case REPACKER -> vendor(name, rate, between(7, 20), between(0.6, 1.8), between(0, 60), between(5, 14));
            case DISTRIBUTOR ->
                vendor(
                        name,
                        rate,
                        between(30, 90),
                        between(0.3, 1.2),
                        between(150, 350),
                        oneIn(2) ? between(20, 45) : Double.NaN);
            case MAKER -> vendor(name, rate, between(95, 240), between(0.15, 0.35), between(550, 1500), Double.NaN);
        };
    }

    private Vendor vendor(
            String name, BigDecimal rate, double freight, double perKg, double minimum, double smallCharge) {
        boolean foreign = rate.compareTo(BigDecimal.ONE) != 0;
        duties.add(foreign ? oneOf(DUTIES) : BigDecimal.ZERO);
        return new Vendor(
                name,
                rate,
                foreign ? new BigDecimal("0.015") : BigDecimal.ZERO,
                decimal(freight, 1),
                decimal(perKg, 2),
                foreign ? new BigDecimal("0.004") : BigDecimal.ZERO,
                minimum < 20 ? BigDecimal.ZERO : decimal(minimum, 0),
                Double.isNaN(smallCharge) ? null : decimal(smallCharge, 0),
                random.nextBoolean() ? DutyBasis.CIF : DutyBasis.FOB);
    }

    /**
     * A quote of any vendor who sells such goods; of a repacker if {@code small}, so that small needs can be covered.
     */
    private Quote quote(int item, Use use, double price, List<Vendor> vendors, boolean small) {
        int vendor = small ? random.nextInt((vendors.size() + 1) / 2) : random.nextInt(vendors.size());
        boolean dear = use == Use.ACTIVE || use == Use.PRESERVATIVE;
        while (dear && kinds.get(vendor) == Kind.MAKER) {
            vendor = random.nextInt(vendors.size());
        }
        Kind kind = kinds.get(vendor);
        BigDecimal pack = BigDecimal.valueOf(oneOf(kind.packs()));
        double toVendor = 1 / vendors.get(vendor).toHome().doubleValue();
        double perKg = price * kind.level * between(0.85, 1.15) * toVendor;
        List<Tier> tiers = new ArrayList<>();
        double packs = 0;
        for (int t = random.nextInt(3); t >= 0; t--) {
            BigDecimal from = pack.multiply(decimal(packs, 0));
            tiers.add(new Tier(from, decimal(perKg, 2).multiply(pack)));
            packs = packs == 0 ? oneOf(List.of(2.0, 4.0, 5.0, 10.0)) : packs * oneOf(List.of(2.0, 4.0, 5.0));
            perKg *= between(0.87, 0.95);
        }
        return new Quote(
                item,
                vendor,
                pack,
                pack,
                oneIn(8) ? oneOf(List.of(2, 4, 6)) : 1,
                oneIn(3) ? pack.multiply(BigDecimal.valueOf(1 + random.nextInt(3))) : BigDecimal.ZERO,
                tiers,
                size.mixed ? oneOf(DUTIES) : duties.get(vendor),
                BigDecimal.ONE,
                null,
                0,
                periods - 1);
    }

    private <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    private boolean oneIn(int n) {
        return random.nextInt(n) == 0;
    }

    private double between(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    private static BigDecimal decimal(double value, int scale) {
        return BigDecimal.valueOf(value).setScale(scale, RoundingMode.HALF_UP);
    }
}
