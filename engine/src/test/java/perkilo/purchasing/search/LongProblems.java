package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import perkilo.purchasing.Need;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;

/**
 * Problems of one item over more periods than it keeps for, with stock and goods on order that expire at any time;
 * small enough to try every plan.
 */
final class LongProblems {

    private LongProblems() {}

    /** The same problem for the same seed. */
    static PurchaseProblem random(long seed) {
        return random(new Random(seed), 1, 1);
    }

    /** The same problem for the same seed: two to five lots, of which several may come in one period. */
    static PurchaseProblem withManyLots(long seed) {
        return random(new Random(seed), 2, 2);
    }

    /**
     * One item's problem.
     *
     * @param fewestLots there may be as many more, and one
     * @param together lots come only in each so many-th period
     */
    private static PurchaseProblem random(Random random, int fewestLots, int together) {
        int periods = 4 + random.nextInt(3);
        List<BigDecimal> needs = new ArrayList<>();
        List<Quote> quotes = new ArrayList<>();
        for (int t = 0; t < periods; t++) {
            needs.add(BigDecimal.valueOf(random.nextInt(26), 1));
        }
        List<Need.Lot> stock = new ArrayList<>();
        for (int l = fewestLots + random.nextInt(2 + fewestLots); l > 0; l--) {
            stock.add(new Need.Lot(
                    BigDecimal.valueOf(5 + random.nextInt(36), 1),
                    random.nextInt(periods) / together * together,
                    random.nextInt(periods + 1)));
        }
        boolean credits = random.nextInt(3) == 0;
        Need need = new Need(
                "item",
                needs,
                stock,
                1 + random.nextInt(periods),
                BigDecimal.valueOf(random.nextInt(60), 2),
                credits ? BigDecimal.valueOf(random.nextInt(300), 2) : BigDecimal.ZERO,
                credits ? BigDecimal.valueOf(random.nextInt(30), 1) : BigDecimal.ZERO);
        String pack = List.of("1.5", "2", "2.5").get(random.nextInt(3));
        for (int t = 0; t < periods; t++) {
            String price = Integer.toString(2 + random.nextInt(9));
            quotes.add(Buying.quote(0, 0, pack, "0", List.of(Buying.tier("0", price)), t, t));
        }
        return new PurchaseProblem(
                periods,
                List.of(need),
                List.of(Buying.vendor("vendor", Integer.toString(random.nextInt(6)))),
                quotes,
                null,
                null);
    }
}
