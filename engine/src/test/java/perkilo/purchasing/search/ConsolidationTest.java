package perkilo.purchasing.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PurchasePlan.Line;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.Vendor;

/** Which plan is chosen among those that cost the same. Nothing is charged for keeping stock. */
final class ConsolidationTest {

    @Test
    void one_need_is_one_order_as_late_as_it_may_be() {
        // 100 × 5 = 500, whenever and in however many orders
        assertThat(lines(
                        List.of(Buying.need("oil", "0", 0, 0, 0, 0, 0, 0, 0, 100)),
                        List.of(Buying.vendor("Acme", "0")),
                        List.of(Buying.quote(0, 0, "1", "5"))))
                .containsExactly(new Line(0, 7, 100));
    }

    @Test
    void each_vendor_gets_one_order() {
        assertThat(lines(
                        List.of(Buying.need("oil", "0", 0, 0, 0, 100), Buying.need("jar", "0", 0, 0, 0, 100)),
                        List.of(Buying.vendor("Acme", "0"), Buying.vendor("Boxx", "0")),
                        List.of(Buying.quote(0, 0, "1", "5"), Buying.quote(1, 1, "1", "0.3"))))
                .containsExactly(new Line(0, 3, 100), new Line(1, 3, 100));
    }

    @Test
    void needs_of_several_periods_are_bought_in_one_order_for_the_first() {
        assertThat(lines(
                        List.of(Buying.need("oil", "0", 0, 10, 20, 30)),
                        List.of(Buying.vendor("Acme", "0")),
                        List.of(Buying.quote(0, 0, "1", "5"))))
                .containsExactly(new Line(0, 1, 60));
    }

    @Test
    void what_lasts_two_periods_is_bought_for_two_at_a_time() {
        assertThat(lines(
                        List.of(lasting(2, Buying.need("oil", "0", 10, 10, 10, 10))),
                        List.of(Buying.vendor("Acme", "0")),
                        List.of(Buying.quote(0, 0, "1", "5"))))
                .containsExactly(new Line(0, 0, 20), new Line(0, 2, 20));
    }

    @Test
    void goods_are_bought_as_long_as_their_price_holds_and_as_late_as_it_does() {
        Quote quote = Buying.quote(0, 0, "1", "5").heldUntil(1);
        assertThat(lines(
                        List.of(Buying.need("oil", "0", 0, 0, 0, 0, 100)),
                        List.of(Buying.vendor("Acme", "0")),
                        List.of(quote)))
                .containsExactly(new Line(0, 1, 100));
    }

    @Test
    void a_price_that_ended_before_the_first_order_is_no_reason_to_order_early() {
        Quote quote = Buying.quote(0, 0, "1", "5").heldUntil(-1);
        assertThat(lines(
                        List.of(Buying.need("oil", "0", 0, 0, 0, 0, 100)),
                        List.of(Buying.vendor("Acme", "0")),
                        List.of(quote)))
                .containsExactly(new Line(0, 4, 100));
    }

    @Test
    void a_lower_price_counts_for_more_than_one_that_holds() {
        // both vendors are in time; 100 × 4.99 is less than 100 × 5
        assertThat(lines(
                        List.of(Buying.need("oil", "0", 0, 0, 100)),
                        List.of(Buying.vendor("Acme", "0"), Buying.vendor("Boxx", "0")),
                        List.of(
                                Buying.quote(0, 0, "1", "5"),
                                Buying.quote(0, 1, "1", "4.99").heldUntil(-1))))
                .containsExactly(new Line(1, 2, 100));
    }

    @Test
    void of_two_orders_that_are_needed_the_first_pays_for_no_more_than_it_has_to() {
        // three needs of 100 that last two periods: two orders, 30 each; 100 now and 200 next, or 101 and 199 …
        assertThat(lines(
                        List.of(lasting(2, Buying.need("oil", "0", 0, 100, 100, 100))),
                        List.of(Buying.vendor("Acme", "30")),
                        List.of(Buying.quote(0, 0, "1", "5"))))
                .containsExactly(new Line(0, 1, 100), new Line(0, 2, 200));
    }

    @Test
    void a_limit_on_cash_leaves_the_earlier_order_what_the_later_cannot_pay() {
        // 100 × 5 = 500, of which 300 may be paid in one period: 60 as late as may be, 40 before
        PurchaseProblem problem = new PurchaseProblem(
                4,
                List.of(Buying.need("oil", "0", 0, 0, 0, 100)),
                List.of(Buying.vendor("Acme", "0")),
                List.of(Buying.quote(0, 0, "1", "5")),
                new BigDecimal("300"),
                null);
        assertThat(lines(problem)).containsExactly(new Line(0, 2, 40), new Line(0, 3, 60));
    }

    @Test
    void a_minimum_order_value_is_kept() {
        // 25 × 4 = 100 at least: two orders, one for the need of 20, one for that of 30, would cost 200; one costs 200
        assertThat(lines(
                        List.of(lasting(3, Buying.need("oil", "0", 20, 0, 30))),
                        List.of(Buying.vendor("Acme", "0", "100", null)),
                        List.of(Buying.quote(0, 0, "1", "4"))))
                .containsExactly(new Line(0, 0, 50));
    }

    @Test
    void one_line_is_bought_rather_than_two_that_cost_the_same() {
        // 30 kg: a drum of 25 at 100 and a can of 5 at 20, or six cans
        assertThat(lines(
                        List.of(Buying.need("oil", "0", 30)),
                        List.of(Buying.vendor("Acme", "0")),
                        List.of(Buying.quote(0, 0, "25", "100"), Buying.quote(0, 0, "5", "20"))))
                .containsExactly(new Line(1, 0, 6));
    }

    @Test
    void a_vendor_who_is_needed_gets_what_another_would_sell_for_the_same() {
        // the wax is Boxx's alone; the oil costs 5 everywhere
        assertThat(lines(
                        List.of(Buying.need("oil", "0", 0, 10), Buying.need("wax", "0", 0, 10)),
                        List.of(Buying.vendor("Acme", "0"), Buying.vendor("Boxx", "0")),
                        List.of(
                                Buying.quote(0, 0, "1", "5"),
                                Buying.quote(0, 1, "1", "5"),
                                Buying.quote(1, 1, "1", "7"))))
                .containsExactly(new Line(1, 1, 10), new Line(2, 1, 10));
    }

    @Test
    void what_costs_the_same_and_leaves_less_over_is_bought() {
        // 80 × 5 = 100 × 4
        Quote quote = Buying.quote(
                0, 0, "1", "0", List.of(Buying.tier("0", "5"), Buying.tier("100", "4")), 0, Integer.MAX_VALUE);
        assertThat(lines(List.of(Buying.need("oil", "0", 0, 80)), List.of(Buying.vendor("Acme", "0")), List.of(quote)))
                .containsExactly(new Line(0, 1, 80));
    }

    @Test
    void an_order_more_is_placed_where_that_costs_less() {
        // a line of 60 saves nothing, but keeping 30 for a period would cost 30 × 0.01 = 0.3
        assertThat(lines(
                        List.of(Buying.need("oil", "0.01", 30, 30)),
                        List.of(Buying.vendor("Acme", "0")),
                        List.of(Buying.quote(0, 0, "1", "5"))))
                .containsExactly(new Line(0, 0, 30), new Line(0, 1, 30));
    }

    private static Need lasting(int periods, Need need) {
        return new Need(
                need.item(),
                need.perPeriod(),
                need.stock(),
                periods,
                need.holdingPerUnit(),
                need.creditPerUnit(),
                need.creditable());
    }

    private static List<Line> lines(List<Need> needs, List<Vendor> vendors, List<Quote> quotes) {
        @Nullable BigDecimal none = null;
        return lines(new PurchaseProblem(needs.get(0).perPeriod().size(), needs, vendors, quotes, none, none));
    }

    private static List<Line> lines(PurchaseProblem problem) {
        PlanOutcome outcome = new CheapestPlan().plan(problem, SearchLimits.usual());
        assertThat(outcome).isInstanceOf(PlanOutcome.Proven.class);
        return ((PlanOutcome.Proven) outcome).plan().lines();
    }
}
