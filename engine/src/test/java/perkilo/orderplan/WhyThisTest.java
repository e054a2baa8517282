package perkilo.orderplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.origin.Day;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.units.Measure;

/**
 * What else could have been done.
 *
 * <p>A new plan without something is compared with the plan of a book that lacks it, found by trying every plan.
 */
final class WhyThisTest {

    private static final Offset<BigDecimal> NEARLY = Offset.offset(new BigDecimal("1e-9"));
    private static final PlanPurchases EVERY_PLAN = new EveryPlan(4);

    /** Two suppliers of clay, one of whom sells it dearer and by the kilogram; oil from the first alone. */
    private static Trade trade(boolean cheap, @Nullable String minimum, @Nullable String orderValue) {
        Trade trade = new Trade("2027-01-01")
                .supplier("Mine", "EUR", 0, "12", orderValue, "9", "0.1", "0", "0")
                .supplier("Shop", "EUR", 0, "3", null, null, "0", "0", "0")
                .material("Clay", null, "0")
                .product("Mask", List.of(), "Clay", "1");
        if (cheap) {
            trade.offer("Mine", "Clay", "4", Measure.KG, minimum, 1, null, "0", "20", "12", "17");
        }
        return trade.offer("Shop", "Clay", "2", Measure.KG, "24")
                .demand("Mask", "5", "2027-01-01")
                .demand("Mask", "3", "2027-02-01");
    }

    @Test
    void doing_without_an_offer_costs_what_a_book_without_it_does() {
        OrderOutcome.Planned planned = planned(trade(true, "12", "60").book());
        OrderPlan without = planned(trade(false, "12", "60").book()).plan();
        BigDecimal more =
                without.cost().objective().subtract(planned.plan().cost().objective());
        Reasons reasons = why(planned);
        assertThat(reasons.items()).hasSize(1);
        Reasons.NextBest best = reasons.items().get(0);
        assertThat(best.chosen().words()).isEqualTo("3 × 4 kg from Mine");
        assertThat(best.instead()).extracting(Reasons.Packs::words).containsExactly("4 × 2 kg from Shop");
        assertThat(costs(best.difference()).cost()).isEqualByComparingTo(more).isPositive();
        // the only offer of its only supplier
        assertThat(costs(reasons.suppliers().get(0).difference()).cost()).isEqualByComparingTo(more);
    }

    @Test
    void a_minimum_costs_what_a_book_without_it_saves() {
        OrderOutcome.Planned planned = planned(trade(true, "12", "60").book());
        OrderPlan noMinimum = planned(trade(true, null, "60").book()).plan();
        OrderPlan noOrderValue = planned(trade(true, "12", null).book()).plan();
        List<Reasons.Minimum> minimums = why(planned).minimums();
        assertThat(saves(minimums, Reasons.Minimum.Kind.MINIMUM_ORDER))
                .isEqualByComparingTo(saved(planned.plan(), noMinimum))
                .isPositive();
        assertThat(saves(minimums, Reasons.Minimum.Kind.ORDER_VALUE))
                .isEqualByComparingTo(saved(planned.plan(), noOrderValue))
                .isPositive();
        assertThat(minimums).isSortedAccordingTo((one, other) -> other.saves().compareTo(one.saves()));
        assertThat(minimums).extracting(Reasons.Minimum::stated).contains("12 kg", "60.00 EUR");
    }

    @Test
    void what_nobody_else_sells_has_no_next_best() {
        OrderOutcome.Planned planned = planned(trade(false, null, null).book());
        assertThat(why(planned).items().get(0).difference())
                .isEqualTo(new Difference.NotPossible("No other offer arrives in time for \"Clay\"."));
    }

    @Test
    void more_of_a_line_and_another_day_by_hand() {
        // 4 × 2 kg of 24.00 in January, freight 3; 3 kg of 12.00 are kept for 31 days at 24 % a year
        OrderOutcome.Planned planned =
                planned(trade(false, null, null).holding("0.24").book());
        assertThat(planned.plan().cost().objective()).isCloseTo(held("99", 3 * 31), NEARLY);
        Reasons reasons = why(planned);
        // one more pack: 24.00, and 2 kg kept for 31 days
        assertThat(reasons.lines()).hasSize(1);
        assertThat(reasons.lines().get(0).packs()).isEqualTo(5);
        assertThat(costs(reasons.lines().get(0).difference()).cost()).isCloseTo(held("24", 2 * 31), NEARLY);
        assertThat(costs(reasons.lines().get(0).difference()).cash()).isEqualByComparingTo("24.00");
        // for the other day
        assertThat(reasons.shifts()).hasSize(1);
        assertThat(reasons.shifts().get(0).difference())
                .isEqualTo(new Difference.NotPossible("\"Clay\" would be missing on 2027-01-01."));
    }

    @Test
    void an_order_for_the_day_before_joins_the_one_that_is_there() {
        // freight 0.10 an order: two orders are cheaper than holding 4 kg of 8.00 for 31 days
        OrderOutcome.Planned planned = planned(new Trade("2027-01-01")
                .holding("0.24")
                .supplier("Shop", "EUR", 0, "0.10", null, null, "0", "0", "0")
                .material("Clay", null, "0")
                .offer("Shop", "Clay", "2", Measure.KG, "16")
                .product("Mask", List.of(), "Clay", "1")
                .demand("Mask", "4", "2027-01-01")
                .demand("Mask", "4", "2027-02-01")
                .book());
        assertThat(planned.plan().orders()).hasSize(2);
        Reasons.Shift earlier = why(planned).shifts().stream()
                .filter(shift -> shift.by() < 0)
                .findFirst()
                .orElseThrow();
        assertThat(earlier.joins()).isTrue();
        // 4 kg × 31 days × 8.00 × 0.24 / 365 − 0.10
        BigDecimal kept = new BigDecimal("238.08").divide(new BigDecimal("365"), MathContext.DECIMAL64);
        assertThat(costs(earlier.difference()).cost()).isCloseTo(kept.subtract(new BigDecimal("0.10")), NEARLY);
    }

    @Test
    void without_time_the_questions_stay_open() {
        OrderOutcome.Planned planned = planned(trade(true, "12", "60").book());
        Reasons reasons =
                new WhyThis(EVERY_PLAN, new WhyThis.Limits(SearchLimits.usual(), Duration.ZERO, 1, 1, 1)).of(planned);
        assertThat(reasons.items().get(0).difference()).isEqualTo(new Difference.NotKnown());
        assertThat(reasons.minimums()).isEmpty();
        assertThat(reasons.lines()).isNotEmpty();
        assertThat(reasons.leftOut()).isPositive();
    }

    @Test
    void a_limit_of_work_gives_the_same_answers_each_time() {
        OrderOutcome.Planned planned = balm();
        Reasons first = new WhyThis(new CheapestPlan(), WhyThis.Limits.ofWork(1, () -> false)).of(planned);
        Reasons again = new WhyThis(new CheapestPlan(), WhyThis.Limits.ofWork(1, () -> false)).of(planned);
        assertThat(again).isEqualTo(first);
        assertThat(first.items()).isNotEmpty().noneMatch(item -> item.difference() instanceof Difference.NotKnown);
    }

    @Test
    void a_plan_that_needs_more_steps_than_its_share_is_not_called_proven() {
        AtomicInteger asked = new AtomicInteger();
        SearchLimits untilAsked = new SearchLimits(Duration.ofHours(1), () -> asked.incrementAndGet() > 1000);
        OrderOutcome.Planned planned =
                (OrderOutcome.Planned) new OrderBook(new CheapestPlan(), untilAsked).plan(balmEveryNineDays());
        WhyThis.Limits few =
                new WhyThis.Limits(SearchLimits.within(Duration.ofHours(1)), Duration.ofHours(1), 3, 9, 9, 9);
        Reasons reasons = new WhyThis(new CheapestPlan(), few).of(planned);
        assertThat(reasons).isEqualTo(new WhyThis(new CheapestPlan(), few).of(planned));
        assertThat(reasons.items())
                .anyMatch(item -> item.difference() instanceof Difference.NotKnown
                        || (item.difference() instanceof Difference.Costs costs && !costs.proven()));
    }

    /** An amount, and what it costs to keep clay of 12.00 at 24 % a year. */
    private static BigDecimal held(String amount, int kgDays) {
        BigDecimal perYear = new BigDecimal("2.88").multiply(BigDecimal.valueOf(kgDays));
        return new BigDecimal(amount).add(perYear.divide(new BigDecimal("365"), MathContext.DECIMAL64));
    }

    /** The balm made three times as often, so that its plans are not plain at once. */
    private static Book balmEveryNineDays() {
        Book book = Balm.book();
        List<Demand> often = new ArrayList<>();
        for (int later = 0; later < 3; later++) {
            for (Demand demand : book.demand()) {
                LocalDate day = demand.neededBy().date().plusDays(9L * later);
                often.add(new Demand(
                        demand.product(),
                        demand.units(),
                        new Day(day, demand.neededBy().origin(), false),
                        demand.origin()));
            }
        }
        return book.withDemand(often);
    }

    private static OrderOutcome.Planned balm() {
        return (OrderOutcome.Planned) new OrderBook(new CheapestPlan(), SearchLimits.usual()).plan(Balm.book());
    }

    private static Reasons why(OrderOutcome.Planned planned) {
        return new WhyThis(new CheapestPlan(), WhyThis.Limits.within(Duration.ofHours(1))).of(planned);
    }

    private static OrderOutcome.Planned planned(Book book) {
        return (OrderOutcome.Planned) new OrderBook(EVERY_PLAN, SearchLimits.usual()).plan(book);
    }

    private static Difference.Costs costs(Difference difference) {
        assertThat(difference).isInstanceOf(Difference.Costs.class);
        return (Difference.Costs) difference;
    }

    private static BigDecimal saves(List<Reasons.Minimum> minimums, Reasons.Minimum.Kind kind) {
        return minimums.stream()
                .filter(minimum -> minimum.kind() == kind)
                .map(Reasons.Minimum::saves)
                .findFirst()
                .orElse(BigDecimal.ZERO);
    }

    private static BigDecimal saved(OrderPlan plan, OrderPlan other) {
        return plan.cost().objective().subtract(other.cost().objective());
    }
}
