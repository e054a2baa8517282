package perkilo.orderplan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import perkilo.json.OrderJson;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.report.order.OrderReport;
import perkilo.sheet.ResultSheet;
import perkilo.units.Measure;

/** Plans with goods that are on order already: each can be followed by hand. */
final class GoodsOnOrderTest {

    /** 10 kg a month from January to April; 25 kg come in February, so they are there for March and April. */
    @Test
    void the_days_before_an_open_order_arrives_are_bought_for() {
        OrderPlan plan = planned(mask().onOrder("Clay", "25", Measure.KG, null, "2027-02-12")
                        .book())
                .plan();

        assertThat(bought(plan)).containsExactly("2027-01-01: 10", "2027-02-01: 10");
        assertThat(plan.stock().get(0).days())
                .extracting(day -> "%s + %s + %s - %s = %s"
                        .formatted(day.opening(), day.delivered(), day.bought(), day.used(), day.closing()))
                .containsExactly(
                        "0 + 0 + 10 - 10 = 0", "0 + 0 + 10 - 10 = 0", "0 + 25 + 0 - 10 = 15", "15 + 0 + 0 - 10 = 5");
    }

    @Test
    void goods_that_are_expected_on_the_day_of_a_need_are_there_for_it() {
        OrderPlan plan = planned(mask().onOrder("Clay", "10", Measure.KG, null, "2027-02-01")
                        .book())
                .plan();

        assertThat(bought(plan)).containsExactly("2027-01-01: 10", "2027-03-01: 10", "2027-04-01: 10");
    }

    @Test
    void stock_on_the_shelf_is_there_at_once() {
        OrderPlan plan =
                planned(mask().stock("Clay", "25", Measure.KG, null).book()).plan();

        assertThat(bought(plan)).containsExactly("2027-03-01: 5", "2027-04-01: 10");
    }

    /**
     * Usable until the end of March: of 25 kg that are there for March 10 are used; 15 expire, and April is bought for.
     */
    @Test
    void what_expires_before_it_is_used_is_bought_again() {
        OrderOutcome.Planned planned = planned(mask().onOrder("Clay", "25", Measure.KG, "2027-03-31", "2027-02-12")
                .book());

        assertThat(bought(planned.plan())).containsExactly("2027-01-01: 10", "2027-02-01: 10", "2027-04-01: 10");
        assertThat(planned.findings())
                .extracting(Finding::text)
                .contains("15 kg of \"Clay\" will not be used before the expiry date, 2027-03-31.");
    }

    /** A shelf life of two months from 12 February ends on 11 April, after the last need. */
    @Test
    void goods_without_an_expiry_keep_for_the_shelf_life_from_the_day_they_arrive() {
        Book book =
                trade("2").onOrder("Clay", "25", Measure.KG, null, "2027-02-12").book();
        OrderPlan plan = planned(book).plan();

        assertThat(plan.stock().get(0).onOrder())
                .extracting(lot -> lot.lastDay() + " used " + lot.used())
                .containsExactly("2027-04-11 used [0, 0, 10, 10]");
        assertThat(bought(plan).stream().mapToInt(GoodsOnOrderTest::kg).sum()).isEqualTo(20);
    }

    @Test
    void overdue_goods_count_from_the_costing_date_on() {
        OrderPlan plan = planned(mask().onOrder("Clay", "25", Measure.KG, null, "2026-11-20")
                        .book())
                .plan();

        assertThat(bought(plan)).containsExactly("2027-03-01: 5", "2027-04-01: 10");
        assertThat(plan.stock().get(0).days().get(0).delivered()).isEqualByComparingTo("25");
    }

    @Test
    void goods_that_come_after_the_last_day_are_shown_and_not_used() {
        OrderOutcome.Planned planned = planned(
                mask().onOrder("Clay", "25", Measure.KG, null, "2027-04-02").book());

        assertThat(bought(planned.plan()))
                .containsExactly("2027-01-01: 10", "2027-02-01: 10", "2027-03-01: 10", "2027-04-01: 10");
        assertThat(planned.findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "note Stock!E10: 25 kg of \"Clay\" are expected on 2027-04-02, after the last day of the"
                                + " plan. This plan does not use them.");
        assertThat(words(planned)).contains("On order, expected on 2027-04-02, after these days");
        assertThat(planned.plan()
                        .stock()
                        .get(0)
                        .leftovers(planned.plan().basis().horizon()))
                .isEmpty();
    }

    /** Of what comes too late, of what expires before it comes, and of what is expired no more is said. */
    @Test
    void of_one_lot_one_thing_is_told() {
        OrderOutcome.Planned planned = planned(mask().onOrder("Clay", "25", Measure.KG, "2027-05-02", "2027-04-02")
                .onOrder("Clay", "10", Measure.KG, "2027-02-01", "2027-03-20")
                .onOrder("Clay", "10", Measure.KG, "2026-11-01", "2026-10-20")
                .book());

        assertThat(planned.findings())
                .extracting(Finding::text)
                .containsExactly(
                        "25 kg of \"Clay\" are expected on 2027-04-02, after the last day of the plan. This plan"
                                + " does not use them.");
    }

    @Test
    void the_sheet_says_what_is_on_order_and_from_which_day_it_counts() {
        assertThat(words(planned(mask().onOrder("Clay", "15", Measure.KG, null, "2027-02-12")
                        .onOrder("Clay", "3", Measure.KG, null, "2026-11-20")
                        .book())))
                .contains(
                        "On order, expected on 2027-02-12",
                        "On order, overdue since 2026-11-20, counted from 2026-11-25 on",
                        "Arriving from goods on order");
    }

    @Test
    void a_day_that_nobody_can_deliver_for_tells_what_is_on_order_for_later() {
        Book book = trade(null)
                .demand("Mask", "4", "2026-11-30")
                .onOrder("Clay", "25", Measure.KG, null, "2026-12-12")
                .book();

        OrderOutcome.Planned outcome = planned(book);

        assertThat(outcome.unmet().late())
                .singleElement()
                .satisfies(late -> assertThat(late.possibleOn()).isEqualTo("2026-12-04"));
        assertThat(outcome.findings())
                .filteredOn(Finding::isError)
                .extracting(Finding::text)
                .singleElement()
                .asString()
                .startsWith(
                        "\"Clay\" cannot be there on 2026-11-30: 4 kg are needed, and the stock does not cover them. ")
                .endsWith(" 25 kg are on order, but are expected only on 2026-12-12.");
    }

    @Test
    void json_tells_what_is_on_order() {
        OrderOutcome.Planned planned = planned(mask().onOrder("Clay", "25", Measure.KG, null, "2027-02-12")
                .onOrder("Clay", "7", Measure.KG, "2028-12-31", "2027-04-02")
                .book());

        JsonNode stock = OrderJson.of(planned, Reasons.NONE, planned.findings())
                .get("stock")
                .get(0);

        assertThat(stock.get("onOrder").toString())
                .isEqualTo("[{\"quantity\":\"25\",\"expectedOn\":\"2027-02-12\",\"usableFrom\":\"2027-02-12\","
                        + "\"usableUntil\":null,\"left\":\"5\"},"
                        + "{\"quantity\":\"7\",\"expectedOn\":\"2027-04-02\",\"usableFrom\":null,"
                        + "\"usableUntil\":\"2028-12-31\",\"left\":\"7\"}]");
        assertThat(stock.get("days").get(2).get("delivered").asText()).isEqualTo("25");
        assertThat(stock.get("leftovers").toString())
                .isEqualTo("[{\"quantity\":\"5\",\"usableUntil\":null,\"bought\":false}]");
    }

    /** Leaving Slow out means buying the same 20 kg at 6 from Fast: 40 more than at 4, with the open order counted. */
    @Test
    void another_supplier_is_compared_with_the_open_order_counted() {
        OrderOutcome.Planned planned = planned(mask().supplier("Dear", 9)
                .offer("Dear", "Clay", "1", Measure.KG, "6")
                .onOrder("Clay", "25", Measure.KG, null, "2027-02-12")
                .book());

        Reasons reasons = new WhyThis(new CheapestPlan(), WhyThis.Limits.within(Duration.ofHours(1))).of(planned);

        assertThat(OrderJson.of(planned, reasons, planned.findings()).get("why").toString())
                .contains("\"40\"");
    }

    /** 10 kg of clay a month from January to April 2027, one kilogram at a time, keeping costs something. */
    private static Trade mask() {
        return trade(null);
    }

    private static Trade trade(@org.jspecify.annotations.Nullable String shelfLife) {
        return new Trade("2026-11-25")
                .holding("0.12")
                .material("Clay", shelfLife, "0")
                .product("Mask", List.of(), "Clay", "1")
                .supplier("Fast", 9)
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .demand("Mask", "10", "2027-01-01")
                .demand("Mask", "10", "2027-02-01")
                .demand("Mask", "10", "2027-03-01")
                .demand("Mask", "10", "2027-04-01");
    }

    private static List<String> bought(OrderPlan plan) {
        List<String> bought = new ArrayList<>();
        for (int period = 0; period < plan.days().size(); period++) {
            BigDecimal kg = plan.stock().get(0).days().get(period).bought();
            if (kg.signum() > 0) {
                bought.add(plan.days().get(period) + ": " + kg);
            }
        }
        return bought;
    }

    private static int kg(String bought) {
        return Integer.parseInt(bought.substring(bought.indexOf(' ') + 1));
    }

    private static List<String> words(OrderOutcome.Planned planned) {
        return OrderReport.of(planned, Reasons.NONE, planned.findings()).sheets().stream()
                .filter(sheet -> sheet.name().equals("Stock and leftovers"))
                .flatMap(sheet -> sheet.cells().values().stream())
                .flatMap(row -> row.values().stream())
                .map(cell -> cell.content() instanceof ResultSheet.Text text ? text.text() : null)
                .filter(Objects::nonNull)
                .toList();
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
