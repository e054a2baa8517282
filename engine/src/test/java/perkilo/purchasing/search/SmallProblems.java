package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.Need;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/** Purchase problems small enough to try every plan, with all that a quote and a vendor may ask. */
final class SmallProblems {
    private final Random random;
    private final int periods;
    private final int items;
    private final int vendors;
    private final boolean onOrder;

    private SmallProblems(long seed, boolean onOrder) {
        this.onOrder = onOrder;
        random = new Random(seed);
        periods = 1 + random.nextInt(3);
        items = 1 + random.nextInt(3);
        vendors = 1 + random.nextInt(3);
    }

    /** The same problem for the same seed. */
    static PurchaseProblem random(long seed) {
        return new SmallProblems(seed, false).problem();
    }

    /** The same problem for the same seed: some of the stock is on order, for one of the periods or the one after. */
    static PurchaseProblem withGoodsOnOrder(long seed) {
        return new SmallProblems(seed, true).problem();
    }

    private PurchaseProblem problem() {
        List<Need> needs = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            needs.add(need("item " + i));
        }
        List<Vendor> sellers = new ArrayList<>();
        for (int v = 0; v < vendors; v++) {
            sellers.add(vendor("vendor " + v));
        }
        List<Quote> quotes = new ArrayList<>();
        int most = periods == 1 ? 4 : periods == 2 ? 3 : 2;
        int count = Math.max(items, 1 + random.nextInt(most));
        for (int q = 0; q < count; q++) {
            quotes.add(quote(q < items ? q : random.nextInt(items)));
        }
        return new PurchaseProblem(
                periods,
                needs,
                sellers,
                quotes,
                oneIn(8) ? decimal(40, 160, 0) : null,
                oneIn(8) ? decimal(40, 250, 0) : null);
    }

    private Need need(String name) {
        List<BigDecimal> perPeriod = new ArrayList<>();
        for (int t = 0; t < periods; t++) {
            perPeriod.add(oneIn(4) ? BigDecimal.ZERO : decimal(1, 7, random.nextInt(3)));
        }
        int usable = oneIn(3) ? Need.UNLIMITED : 1 + random.nextInt(3);
        List<Need.Lot> stock = new ArrayList<>();
        for (int l = random.nextInt(3); l > 0; l--) {
            int arrival = onOrder ? random.nextInt(periods + 1) : 0;
            stock.add(new Need.Lot(decimal(0, 4, 1), arrival, random.nextInt(5)));
        }
        boolean credits = oneIn(3);
        return new Need(
                name,
                perPeriod,
                stock,
                usable,
                oneIn(2) ? decimal(0, 1, 2) : BigDecimal.ZERO,
                credits ? decimal(0, 6, 2) : BigDecimal.ZERO,
                credits ? decimal(0, 4, 1) : BigDecimal.ZERO);
    }

    private Vendor vendor(String name) {
        boolean foreign = oneIn(3);
        boolean minimum = oneIn(2);
        return new Vendor(
                name,
                foreign ? new BigDecimal("0.9215") : BigDecimal.ONE,
                foreign ? new BigDecimal("0.015") : BigDecimal.ZERO,
                oneIn(4) ? BigDecimal.ZERO : decimal(2, 25, 2),
                oneIn(2) ? decimal(0, 1, 2) : BigDecimal.ZERO,
                oneIn(3) ? new BigDecimal("0.01") : BigDecimal.ZERO,
                minimum ? decimal(10, 60, 0) : BigDecimal.ZERO,
                oneIn(2) ? decimal(1, 15, 2) : null,
                oneIn(2) ? DutyBasis.CIF : DutyBasis.FOB);
    }

    private Quote quote(int item) {
        BigDecimal pack = new BigDecimal(
                List.of("1", "2", "2.5", "3", "1.36077711", "4.5359237").get(random.nextInt(6)));
        List<Tier> tiers = new ArrayList<>();
        BigDecimal from = oneIn(6) ? pack.multiply(new BigDecimal(2)) : BigDecimal.ZERO;
        BigDecimal price = decimal(4, 14, 2).multiply(pack);
        for (int t = 1 + random.nextInt(3); t > 0; t--) {
            tiers.add(new Tier(from, price));
            from = from.add(decimal(2, 6, 1));
            price = price.multiply(decimal(0, 1, 2).max(new BigDecimal("0.6")));
        }
        int first = oneIn(4) ? random.nextInt(periods) : 0;
        return new Quote(
                item,
                random.nextInt(vendors),
                pack,
                oneIn(4) ? BigDecimal.ZERO : pack,
                oneIn(5) ? 2 : 1,
                oneIn(4) ? decimal(2, 6, 0) : BigDecimal.ZERO,
                tiers,
                oneIn(3) ? new BigDecimal("0.065") : BigDecimal.ZERO,
                oneIn(4) ? new BigDecimal("1.164") : BigDecimal.ONE,
                digits(),
                first,
                oneIn(5) ? first : periods - 1);
    }

    private @Nullable Integer digits() {
        return oneIn(4) ? null : Integer.valueOf(oneIn(4) ? 0 : 2);
    }

    private boolean oneIn(int n) {
        return random.nextInt(n) == 0;
    }

    private BigDecimal decimal(int from, int to, int scale) {
        int parts = (int) Math.pow(10, scale);
        return BigDecimal.valueOf((long) from * parts + random.nextInt((to - from) * parts + 1), scale);
    }
}
