package perkilo.purchasing.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/**
 * Published lot-size problems. With one item in packs of one unit and a charge for every order, the planner solves the
 * dynamic lot-size problem; holding is charged on what is in stock at the end of a period.
 */
final class LotSizingTest {
    private static final int[] WAGNER_WHITIN_DEMAND = {69, 29, 36, 61, 61, 26, 34, 67, 45, 67, 79, 56};

    /**
     * H. M. Wagner and T. M. Whitin, Dynamic Version of the Economic Lot Size Model, Management Science 5(1), 1958,
     * pages 89–96: 864, with orders in periods 1, 3, 5, 8, 10 and 11. What an order costs differs from period to
     * period, so there is a vendor for each.
     */
    @Test
    void wagner_and_whitin_1958() {
        int[] setup = {85, 102, 102, 101, 98, 114, 105, 86, 119, 110, 98, 114};
        List<Vendor> vendors = new ArrayList<>();
        List<Quote> quotes = new ArrayList<>();
        for (int t = 0; t < setup.length; t++) {
            vendors.add(Buying.vendor("vendor of period " + (t + 1), Integer.toString(setup[t])));
            quotes.add(Buying.quote(0, t, "1", "0", List.of(Buying.tier("0", "0")), t, t));
        }
        PurchaseProblem problem = new PurchaseProblem(
                setup.length, List.of(Buying.need("units", "1", WAGNER_WHITIN_DEMAND)), vendors, quotes, null, null);

        PlanOutcome.Proven proven = proven(problem);

        assertThat(proven.cost().objective()).isEqualByComparingTo("864");
        assertThat(proven.plan().lines().stream().map(PurchasePlan.Line::period))
                .containsExactly(0, 2, 4, 7, 9, 10);
        assertThat(proven.plan().lines().stream().map(PurchasePlan.Line::packs))
                .containsExactly(98L, 97L, 121L, 112L, 67L, 135L);
    }

    /**
     * W. J. Hopp and M. L. Spearman, Factory Physics, section on dynamic lot sizing: 580, ordering 80, 130 and 90 in
     * periods 1, 4 and 8 (the least cost has ties).
     */
    @Test
    void factory_physics_ten_periods() {
        assertThat(leastCost("100", "1", 20, 50, 10, 50, 50, 10, 20, 40, 20, 30))
                .isEqualByComparingTo("580");
    }

    /**
     * F. S. Hillier and G. J. Lieberman, Introduction to Operations Research, inventory chapter: 4.8 (million dollars).
     */
    @Test
    void four_quarters_of_jets() {
        assertThat(leastCost("2", "0.2", 3, 2, 3, 2)).isEqualByComparingTo("4.8");
    }

    /** Wagner and Whitin's demand at 54 an order and 0.4 a unit and period; recomputed by their recursion: 431.6. */
    @Test
    void twelve_periods_at_constant_costs() {
        assertThat(leastCost("54", "0.4", WAGNER_WHITIN_DEMAND)).isEqualByComparingTo("431.6");
    }

    /** A need of 26.25 kg in packs of 10 kg with a minimum of 25 kg: three packs, 3.75 kg left over. */
    @Test
    void whole_packs_above_a_minimum() {
        PurchaseProblem problem = PurchaseProblem.once(
                List.of(Need.once("emollient", new BigDecimal("26.25"))),
                List.of(Buying.vendor("vendor", "0")),
                List.of(Buying.quote(0, 0, "10", "25", List.of(Buying.tier("0", "50")), 0, 0)));

        PurchasePlan plan = proven(problem).plan();

        assertThat(plan.lines()).containsExactly(new PurchasePlan.Line(0, 0, 3));
        assertThat(PlanCost.boughtPerPeriod(problem, plan, 0).get(0).subtract(new BigDecimal("26.25")))
                .isEqualByComparingTo("3.75");
    }

    /**
     * All-units discounts of textbooks. The yearly cost at lots of Q is D/Q times what an order of Q costs, and half a
     * lot in stock: D/Q · S + D · P(Q) + Q/2 · H. The order is costed as the engine costs it; the totals are the
     * books', rounded to a unit of money as printed.
     *
     * <p>Race cars: J. Heizer and B. Render, Operations Management. Cleaner and switches: W. J. Stevenson, Operations
     * Management. Hospital supply: L. J. Krajewski and L. P. Ritzman, Operations Management. Vitamins: S. Chopra and P.
     * Meindl, Supply Chain Management. Speakers: Hillier and Lieberman.
     */
    @ParameterizedTest(name = "{0}: lots of {5} cost {6} a year")
    @CsvSource({
        "race cars, 5000, 49, 20 %, 1:5 1000:4.8 2000:4.75, 700, 25700",
        "race cars, 5000, 49, 20 %, 1:5 1000:4.8 2000:4.75, 1000, 24725",
        "race cars, 5000, 49, 20 %, 1:5 1000:4.8 2000:4.75, 2000, 24822.5",
        "cleaner, 816, 12, 4, 1:20 50:18 80:17 100:16, 70, 14968",
        "cleaner, 816, 12, 4, 1:20 50:18 80:17 100:16, 80, 14154",
        "cleaner, 816, 12, 4, 1:20 50:18 80:17 100:16, 100, 13354",
        "switches, 4000, 30, 40 %, 1:0.9 500:0.85 1000:0.8, 840, 3686",
        "switches, 4000, 30, 40 %, 1:0.9 500:0.85 1000:0.8, 1000, 3480",
        "hospital supply, 936, 45, 25 %, 1:60 300:58.8 500:57, 75, 57284",
        "hospital supply, 936, 45, 25 %, 1:60 300:58.8 500:57, 300, 57382",
        "hospital supply, 936, 45, 25 %, 1:60 300:58.8 500:57, 500, 56999",
        "vitamins, 120000, 100, 20 %, 1:3 5000:2.96 10000:2.92, 6367, 358969",
        "vitamins, 120000, 100, 20 %, 1:3 5000:2.96 10000:2.92, 10000, 354520",
        "speakers, 8000, 12000, 0.3, 1:11 10000:10 80000:9.5, 25298, 87589",
        "speakers, 8000, 12000, 0.3, 1:11 10000:10 80000:9.5, 80000, 89200"
    })
    void the_whole_line_gets_the_price_of_the_break(
            String what, int yearly, String perOrder, String holding, String breaks, int lot, double total) {
        List<Tier> tiers = new ArrayList<>();
        Pattern.compile(" ")
                .splitAsStream(breaks)
                .forEach(one -> tiers.add(
                        Buying.tier(one.substring(0, one.indexOf(':')), one.substring(one.indexOf(':') + 1))));
        PurchaseProblem problem = PurchaseProblem.once(
                List.of(Need.once(what, BigDecimal.valueOf(lot))),
                List.of(Buying.vendor("vendor", perOrder)),
                List.of(Buying.quote(0, 0, "1", "0", tiers, 0, 0)));
        PlanCost cost = PlanCost.of(problem, new PurchasePlan(List.of(new PurchasePlan.Line(0, 0, lot))));
        double price = cost.lines().get(0).goods().doubleValue() / lot;
        double perUnit = holding.endsWith(" %")
                ? price * Double.parseDouble(holding.substring(0, holding.length() - 2)) / 100
                : Double.parseDouble(holding);
        double year = cost.outlay().doubleValue() * yearly / lot + perUnit * lot / 2;
        assertThat(Math.abs(year - total)).isLessThan(1);
    }

    private static BigDecimal leastCost(String perOrder, String holding, int... demand) {
        PurchaseProblem problem = new PurchaseProblem(
                demand.length,
                List.of(Buying.need("units", holding, demand)),
                List.of(Buying.vendor("vendor", perOrder)),
                List.of(Buying.quote(0, 0, "1", "0")),
                null,
                null);
        return proven(problem).cost().objective();
    }

    private static PlanOutcome.Proven proven(PurchaseProblem problem) {
        PlanOutcome outcome = new CheapestPlan().plan(problem, SearchLimits.usual());
        assertThat(outcome).isInstanceOf(PlanOutcome.Proven.class);
        return (PlanOutcome.Proven) outcome;
    }
}
