package perkilo.orderplan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import perkilo.json.OrderJson;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.units.Measure;

/** Orders for small makers, and the words for what stands in their way. */
final class OrderBookTest {

    @Test
    void orders_come_by_the_day_they_have_to_be_placed() {
        OrderPlan plan = planned(Balm.book()).plan();
        assertThat(plan.orders())
                .extracting(order ->
                        "%s by %s for %s".formatted(order.supplier().name(), order.orderBy(), order.neededBy()))
                .containsExactly(
                        "Oleo by 2026-12-22 for 2027-01-01",
                        "Pacific by 2026-12-23 for 2027-02-01",
                        // 27 December is a Sunday
                        "Glas by 2026-12-25 for 2027-01-01",
                        "Oleo by 2027-03-22 for 2027-04-01");
        assertThat(plan.proven()).isTrue();
        assertThat(plan.proof("EUR")).isEqualTo("Proven: no plan is cheaper.");
        assertThat(plan.answer("EUR"))
                .isEqualTo("4 orders to 3 suppliers, 6,458.51 EUR; next: order from Oleo by 2026-12-22");
    }

    /** A search that is stopped at once says how much dearer than the cheapest its plan may be. */
    @Test
    void a_plan_that_is_not_proven_says_what_a_cheaper_one_would_save_at_most() {
        OrderOutcome.Planned stopped = (OrderOutcome.Planned)
                new OrderBook(new CheapestPlan(), SearchLimits.usual(() -> true)).plan(Balm.book());

        assertThat(stopped.plan().proven()).isFalse();
        assertThat(stopped.plan().gap()).isPositive();
        assertThat(stopped.plan().proof("EUR"))
                .matches(
                        "Not proven: this is the best plan found in the time allowed\\. A cheaper one would save at most"
                                + " [\\d,]+\\.\\d\\d EUR\\.");
    }

    @Test
    void the_same_book_gets_the_same_plan() {
        assertThat(planned(Balm.book()).plan().plan())
                .isEqualTo(planned(Balm.book()).plan().plan());
    }

    @Test
    void json_has_orders_stock_and_plan() {
        OrderOutcome.Planned planned = planned(Balm.book());
        JsonNode json = OrderJson.of(planned, Reasons.NONE, planned.findings());
        JsonNode first = json.get("orders").get(0);
        // 5 × 140.50 + 14 × 121.00 + 30 × 8.75
        assertThat(first.get("goods").asText()).isEqualTo("2659");
        // insurance 2659 × 0.004, freight 45 + 0.35 × (125 + 63 + 30)
        assertThat(first.get("charges").asText()).isEqualTo("131.936");
        assertThat(first.get("landedHome").asText()).isEqualTo("2790.936");
        assertThat(first.get("lines").get(1).get("quantity").asText()).isEqualTo("63");
        assertThat(json.get("homeCurrency").asText()).isEqualTo("EUR");
        assertThat(json.get("plan").get("proven").asBoolean()).isTrue();
        // 60 + 500 jars − 123 − 307 − 82, of which 2 % are spoiled: 120, 300 and 80 / 0.98
        assertThat(json.get("stock")
                        .get(3)
                        .get("leftovers")
                        .get(0)
                        .get("quantity")
                        .asText())
                .isEqualTo("48");
        assertThat(json.get("messages").isArray()).isTrue();
    }

    @Test
    void a_day_that_comes_too_soon_is_named_with_the_first_day_that_can() {
        Book book = one().supplier("Fast", 9)
                .supplier("Slow", 30)
                .offer("Slow", "Clay", "5", Measure.KG, "10")
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .demand("Mask", "10", "2026-12-01")
                .demand("Mask", "20", "2027-02-15")
                .book();
        OrderOutcome.Planned planned = planned(book);
        assertThat(planned.plan().orders())
                .extracting(order -> order.neededBy().toString())
                .containsExactly("2026-12-04", "2027-02-15");
        assertThat(planned.unmet().late()).singleElement().satisfies(late -> {
            assertThat(late.item()).isEqualTo("Clay");
            assertThat(late.neededBy()).isEqualTo("2026-12-01");
            assertThat(late.possibleOn()).isEqualTo("2026-12-04");
            assertThat(late.daysLate()).isEqualTo(3);
            assertThat(late.runs()).hasSize(1);
        });
        assertThat(planned.findings())
                .filteredOn(Finding::isError)
                .extracting(Finding::toString)
                .containsExactly(
                        "error Demand!A8: \"Clay\" cannot be there on 2026-12-01: 10 kg are needed, and the stock does not"
                                + " cover them. The earliest delivery is on 2026-12-04 from Fast, if ordered on 2026-11-25."
                                + " It is planned for 2026-12-04. Make the units later, or find a supplier with a shorter"
                                + " lead time.");
    }

    @Test
    void a_lead_time_that_ends_on_the_day_of_the_need_is_in_time() {
        Book book = one().supplier("Fast", 6)
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .demand("Mask", "10", "2026-12-01")
                .book();
        assertThat(planned(book).plan().orders())
                .extracting(order -> order.orderBy().toString())
                .containsExactly("2026-11-25");
    }

    @Test
    void stock_covers_a_day_that_no_supplier_can() {
        Book book = one().supplier("Fast", 9)
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .stock("Clay", "10000", Measure.G, "2026-12-01")
                .demand("Mask", "10", "2026-12-01")
                .book();
        OrderOutcome.Planned planned = planned(book);
        assertThat(planned.plan().orders()).isEmpty();
        assertThat(planned.plan().answer("EUR"))
                .isEqualTo("Nothing has to be ordered: the stock covers all that is needed");
    }

    @Test
    void stock_that_expires_the_day_before_is_not_used() {
        Book book = one().supplier("Fast", 1)
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .stock("Clay", "10", Measure.KG, "2026-12-14")
                .demand("Mask", "10", "2026-12-15")
                .book();
        OrderOutcome.Planned planned = planned(book);
        assertThat(planned.plan().orders()).hasSize(1);
        assertThat(warnings(planned.findings()))
                .containsExactly(
                        "warning Stock!A6: 10 kg of \"Clay\" will not be used before the expiry date, 2026-12-14.");
    }

    @Test
    void stock_that_costs_nothing_is_said() {
        Book book = one().supplier("Fast", 1)
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .demand("Mask", "10", "2027-01-15")
                .book();
        assertThat(planned(book).findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "note: Holding % per year is blank or 0, so stock costs nothing in this plan and may be bought"
                                + " long ahead. Fill in what capital, space and risk cost you.");
    }

    private static List<String> warnings(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.level() == Level.WARNING)
                .map(Finding::toString)
                .toList();
    }

    @Test
    void what_expires_first_is_used_first_and_what_is_bought_lasts_its_shelf_life() {
        Book book = new Trade("2028-01-01")
                .supplier("Fast", 0)
                .material("Clay", "2", "0")
                .offer("Fast", "Clay", "50", Measure.KG, "4")
                .product("Mask", List.of(), "Clay", "1")
                .stock("Clay", "5", Measure.KG, null)
                .stock("Clay", "7", Measure.KG, "2028-02-29")
                .holding("1")
                .demand("Mask", "30", "2028-01-31")
                .demand("Mask", "30", "2028-02-29")
                .demand("Mask", "10", "2028-03-31")
                .book();
        StockFlow clay = planned(book).plan().stock().get(0);
        // two months from 31 January on end on 30 March, the last day on which the 50 kg of January may be used; the
        // 3 kg that are missing in February are on the shelf, so that the other purchase can wait until 31 March
        assertThat(clay.lots())
                .extracting(lot -> lot.lastDay() + " " + lot.quantity().toPlainString() + " used " + lot.used())
                .containsExactly(
                        "2028-02-29 7 used [7, 0, 0]",
                        "2028-03-30 50 used [23, 27, 0]",
                        "2028-05-30 50 used [0, 0, 10]",
                        "null 5 used [0, 3, 0]");
    }

    @Test
    void what_nobody_sells_is_named() {
        Book book = one().supplier("Fast", 1).demand("Mask", "10", "2027-02-15").book();
        assertThat(noPlan(book).findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "error Mask!C3: \"Clay\" has no offer, so it cannot be bought. Add an offer for it, or a house"
                                + " price on the Materials sheet.");
    }

    @Test
    void stock_in_a_unit_that_does_not_fit_is_named() {
        Book book = one().supplier("Fast", 1)
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .stock("Clay", "3", Measure.EACH, null)
                .demand("Mask", "10", "2027-02-15")
                .book();
        OrderOutcome.NoPlan outcome = noPlan(book);
        assertThat(outcome.badInput()).isTrue();
        assertThat(outcome.findings())
                .extracting(Finding::text)
                .containsExactly("The stock of \"Clay\" is in each, but it is needed in kg. Correct the unit.");
    }

    @Test
    void a_price_that_ends_before_its_order_is_said_once() {
        Book book = new Trade("2026-11-25")
                .supplier("Fast", 1)
                .material("Clay", "1", "0")
                .product("Mask", List.of(), "Clay", "1")
                .offer("Fast", "Clay", "1", Measure.KG, null, 1, "2026-12-31", "0", "4")
                .demand("Mask", "10", "2027-01-15")
                .demand("Mask", "10", "2027-02-15")
                .demand("Mask", "10", "2027-03-15")
                .book();
        assertThat(warnings(planned(book).findings()))
                .containsExactly(
                        "warning Offers!A5: Fast's price for \"Clay\" is valid until 2026-12-31, but some is ordered by"
                                + " 2027-01-14. The plan still uses this price. Ask for a new quote.");
    }

    @Test
    void goods_are_ordered_while_their_price_holds_where_that_costs_the_same() {
        // for 15 January the order would be placed on the 14th, for 15 February and March on the Friday before
        assertThat(ordersOf("2027-01-14")).containsExactly("2027-01-14");
        assertThat(ordersOf("2027-02-11")).containsExactly("2027-01-14");
        assertThat(ordersOf("2027-02-12")).containsExactly("2027-02-12");
        assertThat(ordersOf(null)).containsExactly("2027-02-12");
    }

    private static List<String> ordersOf(@Nullable String validUntil) {
        Book book = one().supplier("Fast", 1)
                .offer("Fast", "Clay", "1", Measure.KG, null, 1, validUntil, "0", "4")
                .stock("Clay", "10", Measure.KG, null)
                .demand("Mask", "10", "2027-01-15")
                .demand("Mask", "10", "2027-02-15")
                .book();
        OrderOutcome.Planned planned = planned(book);
        assertThat(warnings(planned.findings())).isEmpty();
        return planned.plan().orders().stream()
                .map(order -> order.orderBy().toString())
                .toList();
    }

    @Test
    void a_limit_on_cash_that_cannot_be_kept_is_said_and_the_plan_is_made_without_it() {
        Book book = one().supplier("Fast", 1)
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .cash(null, "39.99")
                .demand("Mask", "10", "2027-01-15")
                .book();
        assertThat(planned(book).plan().outlay()).isEqualByComparingTo("40");
        assertThat(planned(book).findings()).anyMatch(Finding::isError);
        assertThat(planned(one().supplier("Fast", 1)
                                .offer("Fast", "Clay", "1", Measure.KG, "4")
                                .cash("40", "40")
                                .demand("Mask", "10", "2027-01-15")
                                .book())
                        .plan()
                        .outlay())
                .isEqualByComparingTo("40");
    }

    @Test
    void what_a_planner_cannot_cover_is_told_with_its_day() {
        Book book = one().supplier("Fast", 1)
                .offer("Fast", "Clay", "1", Measure.KG, "4")
                .demand("Mask", "10", "2027-01-15")
                .book();
        OrderOutcome outcome = new OrderBook(
                        (problem, limits) -> new PlanOutcome.Impossible(List.of(new PlanOutcome.Shortfall(
                                0, 0, "its minimum is above its shelf life.", "Ask for less."))),
                        SearchLimits.usual())
                .plan(book);
        assertThat(outcome.findings())
                .extracting(Finding::toString)
                .containsExactly("error Demand!A6: \"Clay\" on 2027-01-15: its minimum is above its shelf life. Ask for"
                        + " less.");
    }

    /** One product of one material. */
    private static Trade one() {
        return new Trade("2026-11-25").material("Clay", null, "0").product("Mask", List.of(), "Clay", "1");
    }

    private static OrderOutcome.Planned planned(Book book) {
        OrderOutcome outcome = plan(book);
        assertThat(outcome).isInstanceOf(OrderOutcome.Planned.class);
        return (OrderOutcome.Planned) outcome;
    }

    private static OrderOutcome.NoPlan noPlan(Book book) {
        OrderOutcome outcome = plan(book);
        assertThat(outcome).isInstanceOf(OrderOutcome.NoPlan.class);
        return (OrderOutcome.NoPlan) outcome;
    }

    private static OrderOutcome plan(Book book) {
        return new OrderBook(new CheapestPlan(), SearchLimits.within(Duration.ofHours(1))).plan(book);
    }
}
