package perkilo.purchasing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static perkilo.purchasing.Problems.d;
import static perkilo.purchasing.Problems.plainVendor;
import static perkilo.purchasing.Problems.quote;
import static perkilo.purchasing.Problems.tier;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Every rule that a plan can break is noticed, and said in words. */
final class PlanCheckTest {

    private static final Need NEED = Need.once("Jojoba oil", d("20"));

    @Test
    void a_plan_that_keeps_every_rule_is_not_complained_of() {
        assertThat(violations(plainVendor("Oils"), quote("10", 2, "20", tier("20", "90")), line(0, 2)))
                .isEmpty();
    }

    @Test
    void packs_outside_the_order_multiple() {
        assertThat(violations(plainVendor("Oils"), quote("10", 2, "0", tier("0", "90")), line(0, 3)))
                .containsExactly("Jojoba oil from Oils in period 1: 3 packs are not a multiple of 2");
    }

    @Test
    void a_line_below_the_minimum_order() {
        assertThat(violations(plainVendor("Oils"), quote("10", 1, "25", tier("0", "90")), line(0, 2)))
                .containsExactly("Jojoba oil from Oils in period 1: 20 is below the minimum order of 25");
    }

    @Test
    void a_line_below_the_first_price() {
        assertThat(violations(plainVendor("Oils"), quote("10", tier("25", "90")), line(0, 2)))
                .containsExactly("Jojoba oil from Oils in period 1: 20 is below the first price");
    }

    @Test
    void a_line_that_arrives_too_early_or_too_late() {
        Quote early = inPeriods(1, 1);
        PurchaseProblem problem = new PurchaseProblem(
                3, List.of(needIn("0", "20", "0")), List.of(plainVendor("Oils")), List.of(early), null, null);

        assertThat(PlanCheck.violations(problem, plan(new PurchasePlan.Line(0, 0, 2))))
                .containsExactly("Jojoba oil from Oils in period 1: it can only be had in periods 2 to 2");
        assertThat(PlanCheck.violations(problem, plan(new PurchasePlan.Line(0, 2, 2))))
                .containsExactly(
                        "Jojoba oil from Oils in period 3: it can only be had in periods 2 to 2",
                        "Jojoba oil: short by 20 in period 2");
    }

    @Test
    void a_line_outside_all_periods() {
        PurchaseProblem problem = new PurchaseProblem(
                1, List.of(NEED), List.of(plainVendor("Oils")), List.of(inPeriods(0, 5)), null, null);

        assertThat(PlanCheck.violations(problem, plan(new PurchasePlan.Line(0, 4, 2))))
                .containsExactly("Jojoba oil from Oils in period 5: the plan ends with period 1");
    }

    @Test
    void a_quote_that_stands_twice() {
        assertThat(violations(plainVendor("Oils"), quote("10", tier("0", "90")), line(0, 1), line(0, 1)))
                .containsExactly("quote 0 occurs twice in period 1");
    }

    @Test
    void a_need_that_is_not_covered() {
        assertThat(violations(plainVendor("Oils"), quote("10", tier("0", "90")), line(0, 1)))
                .containsExactly("Jojoba oil: short by 10 in period 1");
    }

    @Test
    void a_purchase_that_expires_before_it_is_needed() {
        Need shortLived = new Need(
                "Jojoba oil",
                List.of(d("0"), d("0"), d("20")),
                List.of(),
                2,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO);
        PurchaseProblem problem = new PurchaseProblem(
                3, List.of(shortLived), List.of(plainVendor("Oils")), List.of(inPeriods(0, 2)), null, null);

        assertThat(PlanCheck.violations(problem, plan(new PurchasePlan.Line(0, 0, 2))))
                .containsExactly("Jojoba oil: short by 20 in period 3");
        assertThat(PlanCheck.violations(problem, plan(new PurchasePlan.Line(0, 1, 2))))
                .isEmpty();
    }

    @Test
    void an_order_below_the_minimum_order_value_without_a_charge_for_it() {
        assertThat(violations(Problems.vendor("Oils", "200", null), quote("10", tier("0", "90")), line(0, 2)))
                .containsExactly("Oils in period 1: goods of 180.00 are below the minimum order value of 200");
        assertThat(violations(Problems.vendor("Oils", "180", null), quote("10", tier("0", "90")), line(0, 2)))
                .isEmpty();
        assertThat(violations(Problems.vendor("Oils", "200", "15"), quote("10", tier("0", "90")), line(0, 2)))
                .isEmpty();
    }

    @Test
    void more_cash_than_there_is_in_a_period_or_in_all() {
        assertThat(withCash("150", null)).containsExactly("period 1: 180.00 is more than the limit on cash of 150");
        assertThat(withCash(null, "179.99"))
                .containsExactly("all periods: 180.00 is more than the limit on cash of 179.99");
        assertThat(withCash("180", "180")).isEmpty();
    }

    @Test
    void problems_that_contradict_themselves_are_refused() {
        assertThatThrownBy(() -> new PurchaseProblem(2, List.of(NEED), List.of(), List.of(), null, null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Jojoba oil has needs for 1 periods, but there are 2");
        assertThatThrownBy(() -> PurchaseProblem.once(List.of(NEED), List.of(), List.of(quote("1", tier("0", "1")))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a quote names item 0 and vendor 0, but there are 1 and 0");
        assertThatThrownBy(() -> quote("1", tier("5", "1"), tier("5", "2")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("price breaks must rise, but 5 follows 5");
        assertThatThrownBy(() -> quote("0", tier("0", "1"))).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<String> withCash(@Nullable String perPeriod, @Nullable String total) {
        PurchaseProblem problem = new PurchaseProblem(
                1,
                List.of(NEED),
                List.of(plainVendor("Oils")),
                List.of(quote("10", tier("0", "90"))),
                perPeriod == null ? null : d(perPeriod),
                total == null ? null : d(total));
        return PlanCheck.violations(problem, plan(line(0, 2)));
    }

    private static List<String> violations(Vendor vendor, Quote quote, PurchasePlan.Line... lines) {
        return PlanCheck.violations(PurchaseProblem.once(List.of(NEED), List.of(vendor), List.of(quote)), plan(lines));
    }

    private static PurchasePlan plan(PurchasePlan.Line... lines) {
        return new PurchasePlan(List.of(lines));
    }

    private static PurchasePlan.Line line(int quote, long packs) {
        return new PurchasePlan.Line(quote, 0, packs);
    }

    private static Need needIn(String... perPeriod) {
        return new Need(
                "Jojoba oil",
                List.of(perPeriod).stream().map(BigDecimal::new).toList(),
                List.of(),
                Need.UNLIMITED,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO);
    }

    private static Quote inPeriods(int first, int last) {
        return new Quote(
                0, 0, d("10"), d("10"), 1, d("0"), List.of(tier("0", "90")), d("0"), BigDecimal.ONE, 2, first, last);
    }
}
