package perkilo.orderplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.report.order.OrderReport;
import perkilo.sheet.ResultSheet;
import perkilo.units.Measure;

/**
 * Prices that are announced for a day within the horizon. Ten kilograms of clay are needed on the first of each of the
 * months that a test names. In 2027 the first of January is a Friday, of February and March a Monday, of April a
 * Thursday and of May a Saturday; the last working day of February is the 26th.
 */
final class AnnouncedPricesTest {

    /** The cell of a price; a formula names it twice, as it asks first whether it holds a number. */
    private static final Pattern PRICE_CELL = Pattern.compile("'Offers'!F\\d+");

    private static final Offset<BigDecimal> NEARLY = Offset.offset(new BigDecimal("1e-9"));
    private static final String RISE = "2027-03-01";

    @Test
    void before_a_rise_it_is_bought_ahead_where_holding_costs_little() {
        // the rest is ordered on 26 February: 10 kg are kept for 3, 34 and 64 days, at 12 % a year of 4 EUR
        OrderPlan plan = planned(rising("0.12").book()).plan();
        assertThat(lines(plan)).containsExactly("2027-01-01 10 at 4", "2027-02-01 10 at 4", "2027-03-01 30 at 4");
        assertThat(orderDays(plan)).containsExactly("2027-01-01", "2027-02-01", "2027-02-26");
        assertThat(plan.outlay()).isEqualByComparingTo("200");
        assertThat(plan.cost().objective()).isCloseTo(held("200", "0.48", 10 * (3 + 34 + 64)), NEARLY);
        assertThat(plan.proven()).isTrue();
    }

    @Test
    void as_far_ahead_as_holding_costs_less_than_the_rise() {
        // 180 % a year are 7.20: 34 days are 0.67, less than the rise of 1; 64 days are 1.26. May's comes a day early
        OrderPlan plan = planned(rising("1.8").book()).plan();
        assertThat(lines(plan))
                .containsExactly(
                        "2027-01-01 10 at 4", "2027-02-01 10 at 4", "2027-03-01 20 at 4", "2027-05-01 10 at 5");
        assertThat(plan.cost().objective()).isCloseTo(held("210", "7.2", 10 * (3 + 34 + 1)), NEARLY);
    }

    @Test
    void where_holding_costs_more_than_the_rise_nothing_is_bought_ahead() {
        // 360 % a year are 1.34 in 34 days, the rise is 1; March's comes 3 days early
        OrderPlan plan = planned(rising("3.6").book()).plan();
        assertThat(lines(plan))
                .containsExactly(
                        "2027-01-01 10 at 4",
                        "2027-02-01 10 at 4",
                        "2027-03-01 10 at 4",
                        "2027-04-01 10 at 5",
                        "2027-05-01 10 at 5");
        assertThat(plan.outlay()).isEqualByComparingTo("220");
    }

    @Test
    void after_a_promotion_it_is_bought_at_the_list_price_again() {
        // the promotion is for February; March's is ordered on the 26th; 360 % a year are 1.34 in 34 days, the saving
        // is 1
        Trade trade =
                trade(0, "3.6").offer("Fast", "Clay", "1", Measure.KG, "4").quoted("2026-11-01");
        trade.offer("Fast", "Clay", "1", Measure.KG, null, 1, "2027-02-28", "0", "3")
                .quoted("2027-02-01");
        OrderPlan plan = planned(wanted(trade, 1, 4).book()).plan();
        assertThat(lines(plan))
                .containsExactly(
                        "2027-01-01 10 at 4", "2027-02-01 10 at 3", "2027-03-01 10 at 3", "2027-04-01 10 at 4");
        assertThat(orderDays(plan)).containsExactly("2027-01-01", "2027-02-01", "2027-02-26", "2027-04-01");
        assertThat(plan.outlay()).isEqualByComparingTo("140");
    }

    @Test
    void the_list_price_after_a_promotion_goes_on_with_a_warning() {
        // 1 November + 180 days is 30 April, so June's order is placed after that
        Trade trade =
                trade(0, "3.6").offer("Fast", "Clay", "1", Measure.KG, "4").quoted("2026-11-01");
        trade.offer("Fast", "Clay", "1", Measure.KG, null, 1, "2026-12-31", "0", "3")
                .quoted("2026-11-20");
        OrderOutcome.Planned planned = planned(wanted(trade, 5, 6).book());
        assertThat(lines(planned.plan())).containsExactly("2027-05-01 10 at 4", "2027-06-01 10 at 4");
        assertThat(planned.findings())
                .extracting(Finding::text)
                .contains(
                        "Fast's price for \"Clay\" is valid until 2027-04-30, but some is ordered by 2027-06-01. The plan "
                                + "still uses this price. Ask for a new quote.");
    }

    @Test
    void before_a_fall_no_more_is_bought_than_is_needed_until_then() {
        // each order costs 5, so January's holds February's too: 20 × 4 + 5 + 30 × 3 + 5; all at once would be 205
        Trade trade = new Trade("2026-11-25")
                .supplier("Fast", "EUR", 0, "5", null, null, "0", "0", "0")
                .material("Clay", null, "0")
                .product("Mask", List.of(), "Clay", "1")
                .holding("0.12")
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .offer("Fast", "Clay", "1", Measure.KG, "3")
                .quoted(RISE);
        OrderPlan plan = planned(wanted(trade, 1, 5).book()).plan();
        assertThat(lines(plan)).containsExactly("2027-01-01 20 at 4", "2027-03-01 30 at 3");
        assertThat(plan.outlay()).isEqualByComparingTo("180");
    }

    @Test
    void each_price_has_its_own_breaks() {
        // 12 % a year of 3.60: 50 kg in January at 3.60 are 180 and 3.60 for holding; from February on 184 and 2.16
        assertThat(lines(planned(breaks("0.12", "40", "4.4").book()).plan())).containsExactly("2027-01-01 50 at 3.6");
        // 120 % a year: about 180 + 36 against 40 + 144 + 21.60
        assertThat(lines(planned(breaks("1.2", "40", "4.4").book()).plan()))
                .containsExactly("2027-01-01 10 at 4", "2027-02-01 40 at 3.6");
        // a first break that is out of reach: 80 + 30 × 3.80 + 1.09 against 200 and 60 × 3.60; May's is there for 61
        // days
        OrderPlan later = planned(breaks("0.12", "60", "3.8").book()).plan();
        assertThat(lines(later)).containsExactly("2027-01-01 10 at 4", "2027-02-01 10 at 4", "2027-03-01 30 at 3.8");
        assertThat(later.cost().objective()).isCloseTo(held("194", "0.432", 10 * (31 + 61)), NEARLY);
    }

    @Test
    void each_price_has_its_own_minimum_order() {
        // 12 % a year: about 40 × 4 + 2.40 against 30 × 4 + 1.20 + 10 × 4.50
        assertThat(lines(planned(minimums("0.12").book()).plan())).containsExactly("2027-01-01 40 at 4");
        // 120 % a year: about 160 + 24 against 120 + 12 + 45
        OrderPlan plan = planned(minimums("1.2").book()).plan();
        assertThat(lines(plan)).containsExactly("2027-01-01 30 at 4", "2027-04-01 10 at 4.5");
        assertThat(plan.cost().objective()).isCloseTo(held("165", "4.8", 10 * (31 + 59)), NEARLY);
    }

    @Test
    void the_day_that_counts_is_that_of_the_order() {
        // 20 days before 1 March it is 9 February; what is ordered on 26 February is there on 18 March, in time for
        // April; 20 days before 1 May it is a Sunday
        Trade trade = trade(20, "3.6").offer("Fast", "Clay", "1", Measure.KG, "4");
        trade.offer("Fast", "Clay", "1", Measure.KG, "5").quoted(RISE);
        OrderPlan plan = planned(wanted(trade, 3, 5).book()).plan();
        assertThat(lines(plan)).containsExactly("2027-03-01 10 at 4", "2027-04-01 10 at 4", "2027-05-01 10 at 5");
        assertThat(orderDays(plan)).containsExactly("2027-02-09", "2027-02-26", "2027-04-09");
    }

    @Test
    void what_can_be_ordered_today_is_not_lost_to_a_rise() {
        // today + 20 days is 15 December; ordered on 30 November at 4 it is there on 20 December, in time for January
        Trade trade = trade(20, "0.12").offer("Fast", "Clay", "1", Measure.KG, "4");
        trade.offer("Fast", "Clay", "1", Measure.KG, "8").quoted("2026-12-01");
        OrderPlan plan = planned(wanted(trade, 1, 1).book()).plan();
        assertThat(lines(plan)).containsExactly("2027-01-01 10 at 4");
        assertThat(orderDays(plan)).containsExactly("2026-11-30");
    }

    @Test
    void what_can_be_ordered_today_is_not_lost_to_a_time_without_a_price() {
        Trade trade = trade(20, "0.12")
                .offer("Fast", "Clay", "1", Measure.KG, null, 1, "2026-11-30", "0", "4")
                .offer("Fast", "Clay", "1", Measure.KG, "8")
                .quoted("2027-01-01");
        OrderOutcome.Planned planned = planned(wanted(trade, 1, 1).book());
        assertThat(lines(planned.plan())).containsExactly("2027-01-01 10 at 4");
        assertThat(orderDays(planned.plan())).containsExactly("2026-11-30");
        assertThat(planned.findings()).extracting(Finding::text).anyMatch(text -> text.contains("ends on 2026-11-30"));
    }

    @Test
    void prices_of_different_days_are_two_orders() {
        // clay rises from 1 March on, chalk falls: April's clay is ordered on 26 February, its chalk on 12 March
        Trade trade = new Trade("2026-11-25")
                .supplier("Fast", 20)
                .material("Clay", null, "0")
                .material("Chalk", null, "0")
                .product("Mask", List.of(), "Clay", "0.5", "Chalk", "0.5")
                .holding("3.6")
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .offer("Fast", "Clay", "1", Measure.KG, "5")
                .quoted(RISE)
                .offer("Fast", "Chalk", "1", Measure.KG, "4")
                .offer("Fast", "Chalk", "1", Measure.KG, "3")
                .quoted(RISE);
        OrderOutcome.Planned planned = planned(wanted(trade, 4, 4).book());
        assertThat(orderDays(planned.plan())).containsExactly("2027-02-26", "2027-03-12");
        assertThat(planned.plan().outlay()).isEqualByComparingTo("35");
        assertThat(planned.findings()).isEmpty();
    }

    @Test
    void each_of_two_orders_has_its_own_freight() {
        // as above, with a freight of 6: clay at 5 with the chalk costs 5 more, a second order 6 and 14 days of holding
        Trade trade = new Trade("2026-11-25")
                .supplier("Fast", "EUR", 20, "6", null, null, "0", "0", "0")
                .material("Clay", null, "0")
                .material("Chalk", null, "0")
                .product("Mask", List.of(), "Clay", "0.5", "Chalk", "0.5")
                .holding("0.1")
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .offer("Fast", "Clay", "1", Measure.KG, "5")
                .quoted(RISE)
                .offer("Fast", "Chalk", "1", Measure.KG, "5")
                .offer("Fast", "Chalk", "1", Measure.KG, "3")
                .quoted(RISE);
        OrderPlan plan = planned(wanted(trade, 4, 4).book()).plan();
        assertThat(orderDays(plan)).containsExactly("2027-03-12");
        assertThat(plan.outlay()).isEqualByComparingTo("46"); // 25 + 15 + 6
    }

    @Test
    void an_announced_price_that_ends_before_it_begins_ends_no_other() {
        Trade trade = trade(0, "3.6")
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .offer("Fast", "Clay", "1", Measure.KG, null, 1, "2027-01-31", "0", "5")
                .quoted(RISE);
        assertThat(lines(planned(wanted(trade, 3, 4).book()).plan()))
                .containsExactly("2027-03-01 10 at 4", "2027-04-01 10 at 4");
    }

    @Test
    void a_pack_typed_in_grams_is_the_same_pack() {
        Trade trade = trade(0, "3.6")
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .offer("Fast", "Clay", "1000", Measure.G, "5")
                .quoted(RISE);
        assertThat(lines(planned(wanted(trade, 3, 4).book()).plan()))
                .containsExactly("2027-03-01 10 at 4", "2027-04-01 10 at 5");
    }

    @Test
    void of_several_announced_prices_each_holds_until_the_next() {
        Trade trade = trade(0, "3.6")
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .offer("Fast", "Clay", "1", Measure.KG, "4.5")
                .quoted("2027-03-01")
                .offer("Fast", "Clay", "1", Measure.KG, "4.2")
                .quoted("2027-02-01");
        assertThat(lines(planned(wanted(trade, 1, 4).book()).plan()))
                .containsExactly(
                        "2027-01-01 10 at 4", "2027-02-01 10 at 4", "2027-03-01 10 at 4.2", "2027-04-01 10 at 4.5");
    }

    @Test
    void between_the_end_of_a_price_and_the_next_one_nothing_is_ordered() {
        OrderOutcome.Planned planned =
                planned(wanted(gap(trade(0, "3.6"), RISE), 1, 3).book());
        assertThat(lines(planned.plan()))
                .containsExactly("2027-01-01 10 at 4", "2027-02-01 10 at 4", "2027-03-01 10 at 5");
        assertThat(orderDays(planned.plan())).containsExactly("2027-01-01", "2027-01-29", "2027-03-01");
        assertThat(planned.findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "warning Offers!A5: Fast's price for \"Clay\" in packs of 1 kg ends on 2027-01-31, and their next"
                                + " price begins on 2027-03-01. No order of these packs is planned in between. Ask for a"
                                + " quote.");
    }

    @Test
    void what_cannot_be_kept_over_such_a_time_is_late_and_the_rest_is_planned() {
        Trade trade = new Trade("2026-11-25")
                .supplier("Fast", 0)
                .material("Clay", "1", "0")
                .product("Mask", List.of(), "Clay", "1");
        OrderOutcome.Planned outcome =
                planned(wanted(gap(trade, "2027-04-01"), 1, 3).book());
        assertThat(lines(outcome.plan()))
                .containsExactly("2027-01-01 10 at 4", "2027-02-01 10 at 4", "2027-04-01 10 at 5");
        assertThat(outcome.unmet().notCovered()).isEmpty();
        assertThat(outcome.unmet().late()).singleElement().satisfies(clay -> {
            assertThat(clay.item()).isEqualTo("Clay");
            assertThat(clay.neededBy()).isEqualTo("2027-03-01");
            assertThat(clay.possibleOn()).isEqualTo("2027-04-01");
        });
        assertThat(outcome.findings())
                .extracting(Finding::text)
                .anyMatch(text -> text.startsWith("\"Clay\" cannot be there on 2027-03-01"))
                .anyMatch(text -> text.contains("No order of these packs is planned in between"));
    }

    @Test
    void what_is_only_announced_can_be_there_from_its_day_on() {
        Trade trade = trade(10, "0").offer("Fast", "Clay", "1", Measure.KG, "5").quoted(RISE);
        assertThat(lines(planned(wanted(trade, 4, 4).book()).plan())).containsExactly("2027-04-01 10 at 5");
        Trade early = trade(10, "0").offer("Fast", "Clay", "1", Measure.KG, "5").quoted(RISE);
        OrderOutcome.Planned late = planned(wanted(early, 3, 4).book());
        assertThat(lines(late.plan())).containsExactly("2027-03-11 20 at 5");
        assertThat(late.findings())
                .filteredOn(Finding::isError)
                .extracting(Finding::text)
                .containsExactly(
                        "\"Clay\" cannot be there on 2027-03-01: 10 kg are needed, and the stock does not cover them. The"
                                + " earliest delivery is on 2027-03-11 from Fast, if ordered on 2027-03-01, once Fast's"
                                + " announced price takes effect. It is planned for 2027-03-11. Make the units later, or find"
                                + " a supplier with a shorter lead time.");
    }

    @Test
    void litres_without_a_density_stop_the_plan_only_if_they_could_be_ordered() {
        assertThat(plan(inLitres("2027-02-02").book()).findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "error Offers!C6: \"Clay\" is sold by volume from 2027-02-02 on, but its density is unknown."
                                + " Fill Density g/mL on the Materials sheet.");
        assertThat(lines(planned(inLitres("2027-03-02").book()).plan()))
                .containsExactly("2027-02-01 10 at 4", "2027-03-01 10 at 4");
    }

    @Test
    void an_order_that_is_moved_takes_the_price_of_the_order_it_joins() {
        OrderOutcome.Planned planned = planned(rising("3.6").book());
        Reasons reasons = new WhyThis(new CheapestPlan(), WhyThis.Limits.within(Duration.ofHours(1))).of(planned);
        // April's 10 kg with March's order of 26 February: 10 less to pay, 34 days of holding at 14.40 a year
        assertThat(reasons.shifts())
                .filteredOn(shift -> planned.plan()
                                .orders()
                                .get(shift.order())
                                .neededBy()
                                .toString()
                                .equals("2027-04-01")
                        && shift.by() == -1)
                .extracting(Reasons.Shift::difference)
                .first()
                .satisfies(difference -> {
                    Difference.Costs costs = (Difference.Costs) difference;
                    assertThat(costs.cost()).isCloseTo(held("-10", "14.4", 10 * 34), NEARLY);
                    assertThat(costs.cash()).isEqualByComparingTo("-10");
                });
        assertThat(reasons.items())
                .extracting(best -> best.chosen().words())
                .containsExactly("30 × 1 kg from Fast", "20 × 1 kg from Fast at the price of " + RISE);
    }

    @Test
    void an_order_that_is_too_small_for_its_new_price_cannot_be_moved() {
        Trade trade = trade(0, "3.6")
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .offer("Fast", "Clay", "1", Measure.KG, null, 1, null, "40", "3")
                .quoted(RISE);
        OrderOutcome.Planned planned = planned(wanted(trade, 3, 4).book());
        Reasons reasons = new WhyThis(new CheapestPlan(), WhyThis.Limits.within(Duration.ofHours(1))).of(planned);
        assertThat(lines(planned.plan())).containsExactly("2027-03-01 20 at 4");
        assertThat(reasons.shifts())
                .filteredOn(shift -> shift.by() == 1)
                .extracting(Reasons.Shift::difference)
                .containsExactly(new Difference.NotPossible(
                        "20 × 1 kg of \"Clay\" are too few: the first price that is valid then starts at 40 kg."));
    }

    @Test
    void each_order_refers_to_the_cells_of_its_own_price() {
        OrderOutcome.Planned planned = planned(rising("3.6").book());
        ResultSheet orders = OrderReport.of(planned, Reasons.NONE, planned.findings()).sheets().stream()
                .filter(sheet -> sheet.name().equals("Supplier orders"))
                .findFirst()
                .orElseThrow();
        List<String> prices = orders.cells().values().stream()
                .flatMap(row -> Stream.ofNullable(row.get(4)))
                .map(ResultSheet.Cell::content)
                .flatMap(content -> content instanceof ResultSheet.Value value
                        ? Stream.of(value.expr().formula(UnaryOperator.identity()))
                        : Stream.empty())
                .flatMap(formula -> PRICE_CELL.matcher(formula).results().limit(1))
                .map(MatchResult::group)
                .toList();
        assertThat(prices).containsExactly("'Offers'!F5", "'Offers'!F5", "'Offers'!F5", "'Offers'!F6", "'Offers'!F6");
    }

    /** An amount, and what it costs to keep kilograms for days. */
    private static BigDecimal held(String amount, String perKgAndYear, int kgDays) {
        BigDecimal perYear = new BigDecimal(perKgAndYear).multiply(BigDecimal.valueOf(kgDays));
        return new BigDecimal(amount).add(perYear.divide(new BigDecimal("365"), MathContext.DECIMAL64));
    }

    /** 4 EUR, and 5 from March on; needed from January to May. */
    private static Trade rising(String holding) {
        Trade trade = trade(0, holding)
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .offer("Fast", "Clay", "1", Measure.KG, "5")
                .quoted(RISE);
        return wanted(trade, 1, 5);
    }

    private static Trade breaks(String holding, String firstBreak, String laterPrice) {
        Trade trade = trade(0, holding)
                .offer("Fast", "Clay", "1", Measure.KG, null, 1, null, "0", "4", firstBreak, "3.6")
                .offer("Fast", "Clay", "1", Measure.KG, null, 1, null, "0", "5", "25", laterPrice)
                .quoted(RISE);
        return wanted(trade, 1, 5);
    }

    private static Trade minimums(String holding) {
        Trade trade = trade(0, holding)
                .offer("Fast", "Clay", "1", Measure.KG, "30", 1, null, "0", "4")
                .offer("Fast", "Clay", "1", Measure.KG, "4.5")
                .quoted(RISE);
        return wanted(trade, 1, 4);
    }

    private static Trade gap(Trade trade, String next) {
        return trade.offer("Fast", "Clay", "1", Measure.KG, null, 1, "2027-01-31", "0", "4")
                .offer("Fast", "Clay", "1", Measure.KG, "5")
                .quoted(next);
    }

    private static Trade inLitres(String from) {
        Trade trade = new Trade("2026-11-25")
                .supplier("Fast", 0)
                .materialWithoutDensity("Clay")
                .product("Mask", List.of(), "Clay", "1")
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .offer("Fast", "Clay", "1", Measure.L, "3")
                .quoted(from)
                .holding("3.6");
        return wanted(trade, 2, 3);
    }

    private static Trade trade(int leadDays, String holding) {
        return new Trade("2026-11-25")
                .supplier("Fast", leadDays)
                .material("Clay", null, "0")
                .product("Mask", List.of(), "Clay", "1")
                .holding(holding);
    }

    private static Trade wanted(Trade trade, int firstMonth, int lastMonth) {
        for (int month = firstMonth; month <= lastMonth; month++) {
            trade.demand("Mask", "10", "2027-0%d-01".formatted(month));
        }
        return trade;
    }

    /** Every line of every order: for when, how many kilograms, and at which price. */
    private static List<String> lines(OrderPlan plan) {
        return plan.orders().stream()
                .flatMap(order -> order.cost().lines().stream()
                        .map(line -> "%s %s at %s"
                                .formatted(
                                        order.neededBy(),
                                        plain(line.quantity()),
                                        plain(line.goodsQuoted().divide(line.quantity(), MathContext.DECIMAL64)))))
                .toList();
    }

    private static List<String> orderDays(OrderPlan plan) {
        return plan.orders().stream().map(order -> order.orderBy().toString()).toList();
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }

    private static OrderOutcome.Planned planned(Book book) {
        OrderOutcome outcome = plan(book);
        assertThat(outcome).isInstanceOf(OrderOutcome.Planned.class);
        return (OrderOutcome.Planned) outcome;
    }

    private static OrderOutcome plan(Book book) {
        return new OrderBook(new CheapestPlan(), SearchLimits.within(Duration.ofHours(1))).plan(book);
    }
}
