package perkilo.purchasing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.jspecify.annotations.Nullable;

/** Random purchases of a size that a person could check by hand, and their parts. */
final class Problems {

    private Problems() {}

    /** A problem, and one plan for it that need not cover anything. */
    record Case(PurchaseProblem problem, PurchasePlan plan) {}

    static Arbitrary<Case> cases() {
        return Combinators.combine(
                        Arbitraries.integers().between(1, 3),
                        vendor().list().ofMinSize(1).ofMaxSize(3),
                        need().list().ofMinSize(1).ofMaxSize(3))
                .flatAs((periods, vendors, seeds) -> {
                    List<Need> needs = new ArrayList<>();
                    for (NeedSeed seed : seeds) {
                        needs.add(seed.need("item " + needs.size(), periods));
                    }
                    return quote(needs.size(), vendors.size(), periods)
                            .list()
                            .ofMinSize(1)
                            .ofMaxSize(5)
                            .flatMap(quotes -> plan(quotes.size(), periods)
                                    .map(plan -> new Case(
                                            new PurchaseProblem(periods, needs, vendors, quotes, null, null), plan)));
                });
    }

    private static Arbitrary<PurchasePlan> plan(int quotes, int periods) {
        return Combinators.combine(
                        Arbitraries.integers().between(0, quotes - 1),
                        Arbitraries.integers().between(0, periods - 1),
                        Arbitraries.longs().between(1, 12))
                .as(PurchasePlan.Line::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(6)
                .uniqueElements(line -> List.of(line.quote(), line.period()))
                .map(PurchasePlan::new);
    }

    private static Arbitrary<Vendor> vendor() {
        Arbitrary<BigDecimal> small = decimal(0, 60, 2).injectNull(0.4);
        return Combinators.combine(
                        decimal(1, 3000, 4),
                        orZero(decimal(0, 0.05, 4)),
                        orZero(decimal(0, 90, 2)),
                        orZero(decimal(0, 4, 3)),
                        orZero(decimal(0, 0.03, 4)),
                        orZero(decimal(0, 800, 2)),
                        small,
                        Arbitraries.of(DutyBasis.values()))
                .as((rate, margin, perOrder, perKg, insurance, minimum, charge, basis) -> new Vendor(
                        "vendor", rate.movePointLeft(2), margin, perOrder, perKg, insurance, minimum, charge, basis));
    }

    private static Arbitrary<Quote> quote(int items, int vendors, int periods) {
        return Combinators.combine(
                        Arbitraries.integers().between(0, items - 1),
                        Arbitraries.integers().between(0, vendors - 1),
                        decimal(0.1, 40, 3),
                        Arbitraries.of(true, false),
                        decimal(0, 200, 3).list().ofMinSize(1).ofMaxSize(3),
                        orZero(decimal(0, 0.12, 3)),
                        Arbitraries.of("1", "1", "0.85", "1.27"),
                        Arbitraries.of(0, 2, 2, 2, 3))
                .as((item, vendor, pack, byPiece, prices, duty, rate, digits) -> new Quote(
                        item,
                        vendor,
                        pack,
                        byPiece ? BigDecimal.ZERO : pack,
                        1,
                        BigDecimal.ZERO,
                        tiers(pack, prices),
                        duty,
                        new BigDecimal(rate),
                        digits,
                        0,
                        periods - 1));
    }

    private static List<Tier> tiers(BigDecimal pack, List<BigDecimal> prices) {
        List<Tier> tiers = new ArrayList<>();
        for (BigDecimal price : prices) {
            tiers.add(new Tier(pack.multiply(BigDecimal.valueOf(3L * tiers.size())), price));
        }
        return tiers;
    }

    /** A need before it is known how many periods there are. */
    private record NeedSeed(
            List<BigDecimal> wanted,
            List<Need.Lot> stock,
            int usable,
            BigDecimal holding,
            BigDecimal credit,
            BigDecimal creditable) {

        Need need(String item, int periods) {
            return new Need(item, wanted.subList(0, periods), stock, usable, holding, credit, creditable);
        }
    }

    private static Arbitrary<NeedSeed> need() {
        Arbitrary<Need.Lot> lot = Combinators.combine(
                        decimal(0, 50, 3),
                        Arbitraries.of(0, 0, 0, 1, 2, 3),
                        Arbitraries.of(0, 1, 2, 3, 5, Need.UNLIMITED))
                .as(Need.Lot::new);
        return Combinators.combine(
                        decimal(0, 80, 3).list().ofSize(3),
                        lot.list().ofMaxSize(3),
                        Arbitraries.of(1, 2, 3, Need.UNLIMITED),
                        orZero(decimal(0, 1, 3)),
                        orZero(decimal(0, 5, 3)),
                        decimal(0, 100, 3))
                .as(NeedSeed::new);
    }

    /** A need over several periods, for the shelf alone. */
    static Arbitrary<Need> needs() {
        return Combinators.combine(need(), Arbitraries.integers().between(1, 3))
                .as((seed, periods) -> seed.need("item", periods));
    }

    static Arbitrary<BigDecimal> decimal(double from, double to, int scale) {
        return Arbitraries.bigDecimals()
                .between(BigDecimal.valueOf(from), BigDecimal.valueOf(to))
                .ofScale(scale);
    }

    private static Arbitrary<BigDecimal> orZero(Arbitrary<BigDecimal> some) {
        return Arbitraries.frequencyOf(Tuple.of(1, Arbitraries.just(BigDecimal.ZERO)), Tuple.of(2, some));
    }

    // plain parts for examples

    static BigDecimal d(String decimal) {
        return new BigDecimal(decimal);
    }

    /** A vendor in home currency who charges nothing on top. */
    static Vendor plainVendor(String name) {
        return vendor(name, "0", null);
    }

    static Vendor vendor(String name, String minimumOrderValue, @Nullable String smallOrderCharge) {
        return new Vendor(
                name,
                BigDecimal.ONE,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                d(minimumOrderValue),
                smallOrderCharge == null ? null : d(smallOrderCharge),
                DutyBasis.CIF);
    }

    /** A quote of one vendor for one item in cents, with nothing special. */
    static Quote quote(String packSize, Tier... tiers) {
        return quote(packSize, 1, "0", tiers);
    }

    static Quote quote(String packSize, int multiple, String minimum, Tier... tiers) {
        return new Quote(
                0,
                0,
                d(packSize),
                d(packSize),
                multiple,
                d(minimum),
                List.of(tiers),
                BigDecimal.ZERO,
                BigDecimal.ONE,
                2,
                0,
                0);
    }

    static Tier tier(String from, String pricePerPack) {
        return new Tier(d(from), d(pricePerPack));
    }
}
