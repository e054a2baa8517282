package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.Need;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/** Short ways to say what is bought and from whom. */
final class Buying {

    private Buying() {}

    /** A vendor in home currency who charges so much for every order, and nothing else. */
    static Vendor vendor(String name, String perOrder) {
        return vendor(name, perOrder, "0", null);
    }

    /** The same with a minimum order value; orders below it are refused where {@code charge} is null. */
    static Vendor vendor(String name, String perOrder, String minimum, @Nullable String charge) {
        return new Vendor(
                name,
                BigDecimal.ONE,
                BigDecimal.ZERO,
                new BigDecimal(perOrder),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                new BigDecimal(minimum),
                charge == null ? null : new BigDecimal(charge),
                DutyBasis.CIF);
    }

    /** Packs of one size at one price. */
    static Quote quote(int item, int vendor, String pack, String pricePerPack) {
        return quote(item, vendor, pack, "0", List.of(tier("0", pricePerPack)), 0, Integer.MAX_VALUE);
    }

    static Quote quote(
            int item, int vendor, String pack, String minimum, List<Tier> tiers, int firstPeriod, int lastPeriod) {
        BigDecimal size = new BigDecimal(pack);
        return new Quote(
                item,
                vendor,
                size,
                size,
                1,
                new BigDecimal(minimum),
                tiers,
                BigDecimal.ZERO,
                BigDecimal.ONE,
                2,
                firstPeriod,
                lastPeriod);
    }

    static Tier tier(String from, String pricePerPack) {
        return new Tier(new BigDecimal(from), new BigDecimal(pricePerPack));
    }

    /** Needs that last as long as the horizon and cost so much per unit and period to keep. */
    static Need need(String item, String holding, int... perPeriod) {
        return new Need(
                item,
                Arrays.stream(perPeriod).mapToObj(BigDecimal::valueOf).toList(),
                List.of(),
                Need.UNLIMITED,
                new BigDecimal(holding),
                BigDecimal.ZERO,
                BigDecimal.ZERO);
    }
}
