package perkilo.costing;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static perkilo.costing.Draft.cell;
import static perkilo.costing.Draft.component;
import static perkilo.costing.Draft.d;
import static perkilo.costing.Draft.line;
import static perkilo.costing.Draft.material;
import static perkilo.costing.Draft.offerOf;
import static perkilo.costing.Draft.price;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Batching;
import perkilo.model.Product;
import perkilo.model.ProductKind;
import perkilo.model.Run;
import perkilo.model.Supplier;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.purchasing.OrderCost;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;
import perkilo.report.cost.CostReport;
import perkilo.sheet.ResultSheet;
import perkilo.units.Measure;

/** The cost of whole runs, on examples that can be worked out by hand, and what is said where there is none. */
final class CostRunsTest {

    /**
     * A body oil of 60 % sunflower and 40 % jojoba, 1,000 bottles of 0.1 kg. Sunflower: 60 kg of 25 kg drums at 4 per
     * kg: 3 drums, 300 for 75 kg. Jojoba: 40 kg of 20 kg cans at 25 per kg: 2 cans, 1,000. Bottles: 2 % are spoiled,
     * 1,000 / 0.98 are 1,021 of boxes of 500 at 0.30: 3 boxes, 450.
     */
    @Test
    void a_body_oil_by_hand() {
        Draft draft = bodyOil();
        RunCost cost = costed(draft).runs().get(0);

        // 60 / 75 of 300, 40 / 40 of 1,000, 1,021 / 1,500 of 450
        assertThat(cost.used()).isEqualByComparingTo("1546.3");
        assertThat(cost.outlay()).isEqualByComparingTo("1750");
        assertThat(cost.wasted()).isEqualByComparingTo("0");
        // 15 kg at 4 and 479 bottles at 0.30
        assertThat(cost.stockLeft()).isEqualByComparingTo("203.7");
        assertThat(cost.heads().get(Head.RAW_MATERIALS)).isEqualByComparingTo("1240");
        assertThat(cost.heads().get(Head.PACKAGING)).isEqualByComparingTo("306.3");
        assertThat(cost.heads().get(Head.INBOUND)).isEqualByComparingTo("0");
        // 2 h + 100 kg × 0.01 h, at 30
        assertThat(cost.heads().get(Head.MAKING)).isEqualByComparingTo("90");
        // 1 h + 1,000 / 250 × 2, at 30
        assertThat(cost.heads().get(Head.FILLING)).isEqualByComparingTo("270");
        assertThat(cost.heads().get(Head.OVERHEAD)).isEqualByComparingTo("72");
        assertThat(cost.heads().get(Head.QUALITY_CONTROL)).isEqualByComparingTo("45");
        // 2,000 over 4,000 units
        assertThat(cost.heads().get(Head.ONE_OFFS)).isEqualByComparingTo("500");
        // 1,546.3 + 90 + 270 + 72 + 45 + 500
        assertThat(cost.total()).isEqualByComparingTo("2523.3");
        assertThat(cost.unitCost().orElseThrow()).isEqualByComparingTo("2.5233");
        // 1,750 + 477 + 2,000
        assertThat(cost.cash()).isEqualByComparingTo("4227");
        assertThat(cost.cashPerUnit().orElseThrow()).isEqualByComparingTo("4.227");
        // 0.6 × 4 + 0.4 × 25
        assertThat(cost.rawMaterialPerKg()).isEqualByComparingTo("12.4");
        // (1,240 + 90 + 18 + 45) / 100
        assertThat(cost.bulkPerKg()).isEqualByComparingTo("13.93");
        assertThat(cost.unitCostAmount().orElseThrow().getCurrency().getCurrencyCode())
                .isEqualTo("EUR");
        assertThat(cost.purchase().proven()).isTrue();
    }

    /** A run of more units than the one-off costs are spread over carries all of them, and never more. */
    @ParameterizedTest(name = "{0} units: {1}")
    @CsvSource({"1, 0.5", "1000, 500", "4000, 2000", "5000, 2000"})
    void one_off_costs_are_spread_by_units(String units, BigDecimal share) {
        Draft draft = bodyOil();
        draft.runs.clear();
        draft.run("Bottle", units);

        assertThat(costed(draft).runs().get(0).oneOffShare()).isEqualByComparingTo(share);
    }

    /** 200 g filled to 204.32 g at 6.40 per kg of bulk: 0.00432 × 6.40. */
    @Test
    void what_is_given_away_costs_the_bulk_in_it() {
        Draft draft = new Draft()
                .formula("Gel", Batching.ANY, line("Base", "1"))
                .offer("Oils", "Base", "2043.2", Measure.KG, "6.40", Measure.KG)
                .run("Jar", "10000");
        Draft.ProductDraft product = new Draft.ProductDraft("Jar", "Gel", "200", Measure.G);
        product.overfill = "0.0216";
        draft.products.add(product.product());

        RunCost cost = costed(draft).runs().get(0);

        assertThat(cost.bulkPerKg()).isEqualByComparingTo("6.40");
        assertThat(cost.giveawayPerUnit().orElseThrow()).isEqualByComparingTo("0.027648");
        // 0.20432 × 6.40
        assertThat(cost.unitCost().orElseThrow()).isEqualByComparingTo("1.307648");
    }

    /**
     * 2.4 kg needed for three months' worth of units, 9.6 kg a year, usable for 12 months: nine months are left for
     * what is left over, 7.2 kg of it. Of 12.4 kg bought 10 are left over and 2.8 expire.
     */
    @Test
    void what_cannot_be_used_before_it_expires_is_wasted() {
        Draft draft = new Draft()
                .material(material("Extract", "", null, null, "0", "12"))
                .formula("Gel", Batching.ANY, line("Extract", "0.024"), line("Water", null))
                .offer("Oils", "Extract", "12.4", Measure.KG, "20", Measure.KG)
                .run("Jar", "1000");
        Draft.ProductDraft product = new Draft.ProductDraft("Jar", "Gel", "100", Measure.G);
        product.yearlyUnits = "4000";
        draft.products.add(product.product());

        RunCost cost = costed(draft).runs().get(0);

        ItemCost extract = cost.items().get(0);
        assertThat(extract.leftover()).isEqualByComparingTo("10");
        assertThat(extract.usableLeftover()).isEqualByComparingTo("7.2");
        assertThat(extract.expiring()).isEqualByComparingTo("2.8");
        assertThat(cost.used()).isEqualByComparingTo("48");
        assertThat(cost.wasted()).isEqualByComparingTo("56");
        assertThat(cost.stockLeft()).isEqualByComparingTo("144");
    }

    @ParameterizedTest(name = "shelf life {0}, yearly units {1}")
    @CsvSource({", 4000", "12, ", ", "})
    void without_shelf_life_or_yearly_units_nothing_counts_as_wasted(
            @Nullable String shelfLife, @Nullable String yearly) {
        Draft draft = new Draft()
                .material(material("Extract", "", null, null, "0", shelfLife))
                .formula("Gel", Batching.ANY, line("Extract", "0.024"), line("Water", null))
                .offer("Oils", "Extract", "12.4", Measure.KG, "20", Measure.KG)
                .run("Jar", "1000");
        Draft.ProductDraft product = new Draft.ProductDraft("Jar", "Gel", "100", Measure.G);
        product.yearlyUnits = yearly;
        draft.products.add(product.product());

        assertThat(costed(draft).runs().get(0).wasted()).isEqualByComparingTo("0");
    }

    /** A yearly need that is used up before this run's own: nothing of the leftover is usable, and no more than all. */
    @Test
    void a_shelf_life_shorter_than_the_run_wastes_all_that_is_left() {
        Draft draft = new Draft()
                .material(material("Extract", "", null, null, "0", "1"))
                .formula("Gel", Batching.ANY, line("Extract", "0.024"), line("Water", null))
                .offer("Oils", "Extract", "12.4", Measure.KG, "20", Measure.KG)
                .run("Jar", "1000");
        Draft.ProductDraft product = new Draft.ProductDraft("Jar", "Gel", "100", Measure.G);
        product.yearlyUnits = "4000";
        draft.products.add(product.product());

        assertThat(costed(draft).runs().get(0).wasted()).isEqualByComparingTo("200");
    }

    /** Without credit one drum of 25 kg at 100; with it the leftover of two cans of 10 kg counts for nothing less. */
    @Test
    void a_credit_for_leftovers_may_choose_the_larger_pack() {
        Draft draft = new Draft()
                .formula("Gel", Batching.ANY, line("Oil", "1"))
                .offer("Oils", "Oil", "10", Measure.KG, "90", null)
                .offer("Oils", "Oil", "25", Measure.KG, "100", null)
                .bulk("Gel", "8");

        // 90 against 100; with half of 4 per kg for 2 and for 17 kg: 86 against 66
        assertThat(costed(draft).runs().get(0).outlay()).isEqualByComparingTo("90");
        draft.leftoverCredit = Figure.of("0.5");
        assertThat(costed(draft).runs().get(0).outlay()).isEqualByComparingTo("100");
    }

    @Test
    void water_is_process_water_and_a_note_says_so() {
        Draft draft = new Draft()
                .material(material("Demineralised", "Aqua", null, null, "0", null))
                .formula("Gel", Batching.ANY, line("Demineralised", "1", cell("Gel", "C5")))
                .bulk("Gel", "100");
        draft.processWater = Figure.of("0.012");

        CostOutcome.Costed costed = costed(draft);

        RunCost cost = costed.runs().get(0);
        assertThat(cost.used()).isEqualByComparingTo("1.2");
        assertThat(cost.outlay()).isEqualByComparingTo("1.2");
        assertThat(cost.stockLeft()).isEqualByComparingTo("0");
        assertThat(cost.purchase().plan().lines()).isEmpty();
        assertThat(costed.findings())
                .containsExactly(Finding.note(
                        cell("Gel", "C5"),
                        "\"Demineralised\" is counted as process water at 0.012 EUR per kg, because it has no offer and no"
                                + " house price."));
    }

    @Test
    void water_with_a_house_price_costs_that_without_a_note() {
        Draft draft = new Draft()
                .material(material("Water", "Aqua", null, "0.02", "0", null))
                .formula("Gel", Batching.ANY, line("Water", "1"))
                .bulk("Gel", "100");
        draft.processWater = Figure.of("9");

        CostOutcome.Costed costed = costed(draft);

        assertThat(costed.runs().get(0).used()).isEqualByComparingTo("2");
        assertThat(costed.findings()).isEmpty();
    }

    @Test
    void water_that_somebody_sells_is_bought() {
        Draft draft = new Draft()
                .material(material("Water", "Aqua", null, "0.02", "0", null))
                .formula("Gel", Batching.ANY, line("Water", "1"))
                .offer("Springs", "Water", "60", Measure.KG, "6", null)
                .bulk("Gel", "100");

        RunCost cost = costed(draft).runs().get(0);

        assertThat(cost.outlay()).isEqualByComparingTo("12");
        assertThat(cost.used()).isEqualByComparingTo("10");
    }

    /**
     * A macerate made in the house, 0.49 kg that lose 2 % in handling, so 0.5 kg, at 14 per kg: the same in what is
     * used and paid.
     */
    @Test
    void what_has_a_house_price_costs_the_same_used_and_paid() {
        Draft draft = new Draft()
                .material(material("Macerate", "", null, "14", "0.02", "1"))
                .formula("Oil", Batching.ANY, line("Macerate", "0.049"), line("Water", null))
                .bulk("Oil", "10");

        RunCost cost = costed(draft).runs().get(0);

        assertThat(cost.used()).isEqualByComparingTo("7");
        assertThat(cost.outlay()).isEqualByComparingTo("7");
        assertThat(cost.wasted()).isEqualByComparingTo("0");
        assertThat(cost.heads().get(Head.RAW_MATERIALS)).isEqualByComparingTo("7");
    }

    @Test
    void an_expired_offer_is_not_used_although_it_is_cheaper() {
        Draft draft = new Draft()
                .formula("Gel", Batching.ANY, line("Oil", "1"))
                .offer("Oils", "Oil", "10", Measure.KG, "90", null)
                .bulk("Gel", "10");
        draft.offers.add(expired("Oil", "10", Origin.NONE));

        assertThat(costed(draft).runs().get(0).outlay()).isEqualByComparingTo("90");
    }

    @Test
    void everything_that_cannot_be_bought_is_named_with_its_cell() {
        Draft draft = new Draft()
                .formula(
                        "Gel",
                        Batching.ANY,
                        line("Oil", "0.5", cell("Gel", "C2")),
                        line("Wax", "0.3", cell("Gel", "C3")),
                        line("Scent", "0.1", cell("Gel", "C4")),
                        line("Water", null, cell("Gel", "C5")))
                .offer("Oils", "Oil", "10", Measure.KG, "90", null)
                .run("Jar", "100");
        draft.offers.add(expired("Scent", "10", cell("Offers", "A7")));
        draft.products.add(Draft.product(
                "Jar",
                "Gel",
                "50",
                Measure.G,
                new Product.Component("Lid", Figure.ONE, Figure.ZERO, null, cell("Components", "B2"))));

        assertThat(refused(draft))
                .containsExactly(
                        Finding.error(
                                cell("Gel", "C3"),
                                "\"Wax\" has no offer, so it cannot be bought. Add an offer for it, or a house price on the"
                                        + " Materials sheet."),
                        Finding.error(
                                cell("Gel", "C4"),
                                "No offer for \"Scent\" is valid on 2026-11-19. The last one listed, from Oils (Offers!A7),"
                                        + " expired on 2026-11-18. Ask for a new quote."),
                        Finding.error(
                                cell("Components", "B2"),
                                "\"Lid\" has no offer, so it cannot be bought. Add an offer for it."));
    }

    /** A colour that is tried at 0 % needs no offer; it stays in the list, and nothing is bought of it. */
    @Test
    void a_line_at_zero_needs_no_offer() {
        Draft draft = new Draft()
                .formula(
                        "Gel",
                        Batching.ANY,
                        line("Mica", "0", cell("Gel", "C2")),
                        line("Oil", "1", cell("Gel", "C3")),
                        line("Iron oxide", "0", cell("Gel", "C4")))
                .offer("Oils", "Oil", "10", Measure.KG, "90", null)
                .offer("Pigments", "Iron oxide", "1", Measure.KG, "40", null)
                .bulk("Gel", "10");

        CostOutcome.Costed costed = costed(draft);

        RunCost cost = costed.runs().get(0);
        assertThat(cost.items()).extracting(item -> item.item().name()).containsExactly("Mica", "Oil", "Iron oxide");
        assertThat(cost.outlay()).isEqualByComparingTo("90");
        assertThat(cost.bulkPerKg()).isEqualByComparingTo("9");
        assertThat(cost.items().get(1).used()).isEqualByComparingTo("90");
        assertThat(cost.items().get(0).lines()).isEmpty();
        assertThat(cost.items().get(2).lines()).isEmpty();
        assertThat(costed.findings())
                .containsExactly(Finding.note(
                        cell("Gel", "C2"), "None of \"Mica\" is used. It has no offer, so its price is unknown."));
        List<ResultSheet> sheets = CostReport.of(costed, costed.findings()).sheets();
        ResultSheet detail = sheets.stream()
                .filter(sheet -> sheet.name().equals("Cost detail"))
                .findFirst()
                .orElseThrow();
        assertThat(detail.cells().values().stream()
                        .flatMap(row -> row.values().stream())
                        .map(ResultSheet.Cell::content))
                .contains(new ResultSheet.Text("Mica"), new ResultSheet.Text("Iron oxide"));
    }

    @Test
    void the_same_lack_in_two_runs_is_named_once_and_another_run_does_not_hide_it() {
        Draft draft = new Draft()
                .formula("Gel", Batching.ANY, line("Wax", "1", cell("Gel", "C3")))
                .formula("Oil", Batching.ANY, line("Oil", "1", cell("Oil", "C3")))
                .offer("Oils", "Oil", "10", Measure.KG, "90", null)
                .bulk("Gel", "10")
                .bulk("Oil", "10")
                .bulk("Gel", "20");

        assertThat(refused(draft)).hasSize(1);
    }

    @Test
    void what_the_planner_finds_impossible_is_said_with_its_reason_and_remedy() {
        Draft draft = oneOil();
        PlanPurchases never = (problem, limits) -> new PlanOutcome.Impossible(List.of(
                new PlanOutcome.Shortfall(0, 0, "the minimum is too high.", "Ask for less."),
                new PlanOutcome.Shortfall(-1, 0, "there is too little cash.", "")));

        CostOutcome outcome = new CostRuns(never, SearchLimits.usual()).cost(draft.book());

        assertThat(outcome.findings())
                .containsExactly(
                        Finding.error(cell("Gel", "C2"), "\"Oil\": the minimum is too high. Ask for less."),
                        Finding.error(cell("Runs", "A2"), "There is too little cash."));
        assertThat(outcome).isInstanceOf(CostOutcome.NoPurchase.class);
    }

    @Test
    void a_search_without_any_result_names_the_run() {
        PlanPurchases slow = (problem, limits) -> new PlanOutcome.NoneFound(BigDecimal.ONE);

        CostOutcome outcome = new CostRuns(slow, SearchLimits.usual()).cost(oneOil().book());

        assertThat(outcome.findings())
                .containsExactly(Finding.error(
                        cell("Runs", "A2"), "No purchase for 8 kg of Gel was found in the time allowed."));
    }

    /** A plan at 90 of which only 85.5 is proven. */
    @Test
    void a_plan_without_proof_comes_with_its_gap() {
        PlanPurchases hasty = (problem, limits) -> {
            PlanOutcome.Proven best = (PlanOutcome.Proven) new EveryPurchase().plan(problem, limits);
            return new PlanOutcome.BestSoFar(best.plan(), PlanCost.of(problem, best.plan()), d("85.5"));
        };

        CostOutcome.Costed costed =
                (CostOutcome.Costed) new CostRuns(hasty, SearchLimits.usual()).cost(oneOil().book());

        assertThat(costed.runs().get(0).purchase().proven()).isFalse();
        assertThat(costed.runs().get(0).purchase().bound()).isEqualByComparingTo("85.5");
        assertThat(costed.findings())
                .containsExactly(Finding.warning(
                        cell("Runs", "A2"),
                        "8 kg of Gel: the purchase is the best found in the time allowed. No other can be cheaper by more"
                                + " than 4.50 EUR."));
    }

    /**
     * 20 kg in a vessel of 8 kg are three batches and nothing more; 6 kg in a vessel of at least 10 kg are 4 too many.
     */
    @Test
    void a_note_about_bulk_left_over_is_made_only_where_there_is_some() {
        Draft even = new Draft()
                .formula("Gel", Draft.batching("8", "1", "0"), line("Oil", "1"))
                .offer("Oils", "Oil", "20", Measure.KG, "90", null)
                .bulk("Gel", "20");
        Draft grams = new Draft()
                .formula("Gel", Draft.batching("8", "2.004", "0"), line("Oil", "1"))
                .offer("Oils", "Oil", "20", Measure.KG, "90", null)
                .bulk("Gel", "2");
        Draft little = new Draft()
                .formula("Gel", Draft.batching("50", "10", "0"), line("Oil", "1"))
                .offer("Oils", "Oil", "20", Measure.KG, "90", null)
                .bulk("Gel", "6");

        assertThat(costed(even).findings()).isEmpty();
        assertThat(costed(grams).findings().get(0).text()).contains("makes 0.004 kg more bulk");
        assertThat(costed(little).findings())
                .containsExactly(Finding.note(
                        Origin.NONE,
                        "10 kg of Gel: the vessel's minimum makes 4.00 kg more bulk than was asked for. Its cost is"
                                + " included."));
    }

    @Test
    void contradictions_about_the_fill_and_freight_without_weight_are_warned_of() {
        Draft draft = new Draft()
                .formula("Gel", Batching.ANY, line("Water", "1"))
                .run("Jar", "100")
                .run("Sachet", "100");
        draft.materials.add(material("Water", "Aqua", null, "0", "0", null));
        Draft.ProductDraft jar = new Draft.ProductDraft("Jar", "Gel", "50", Measure.G);
        jar.overfill = "0.01";
        jar.fillerSd = "1";
        Draft.ProductDraft sachet = new Draft.ProductDraft("Sachet", "Gel", "3", Measure.G);
        sachet.fillerSd = "0.1";
        draft.products.add(jar.product(component("Lid", "1", "0")));
        draft.products.add(sachet.product());
        draft.suppliers.add(Draft.supplier("Glass", "EUR", null));
        draft.offer("Glass", "Lid", "100", Measure.EACH, "10", null);

        assertThat(costed(draft).findings())
                .extracting(Finding::text)
                .containsExactlyInAnyOrder(
                        "\"Jar\" has both an overfill and a filler's standard deviation. Only the standard deviation is"
                                + " used; clear one of the two.",
                        "\"Sachet\" is filled to its nominal quantity, although a filler's standard deviation is given."
                                + " The average-quantity rules cover only 5 g or mL to 10 kg or L.",
                        "Glass charges freight by weight, but the weight of \"Lid\" is unknown. No freight by weight is"
                                + " counted for it. Type \"Weight g\" on the Components sheet.");
    }

    /** 104 lids of 12.5 g are bought, 52 at a time: 1.3 kg at 0.80 is 1.04, and nothing is left to warn of. */
    @Test
    void freight_by_weight_counts_pieces_of_known_weight() {
        Draft draft =
                new Draft().formula("Gel", Batching.ANY, line("Water", "1")).run("Jar", "100");
        draft.materials.add(material("Water", "Aqua", null, "0", "0", null));
        draft.products.add(
                new Draft.ProductDraft("Jar", "Gel", "50", Measure.G).product(component("Lid", "1", "0", "12.5")));
        draft.suppliers.add(new Supplier(
                "Glass",
                Draft.EUR,
                null,
                new Supplier.Minimum(null, null),
                new Supplier.Charges(Figure.ZERO, Figure.of("0.8"), Figure.ZERO, Figure.of("0.1")),
                Figure.ZERO,
                Origin.NONE));
        draft.offer("Glass", "Lid", "52", Measure.EACH, "10", null);

        CostOutcome.Costed costed = costed(draft);

        assertThat(costed.findings()).isEmpty();
        OrderCost order = costed.runs().get(0).purchase().cost().orders().get(0);
        assertThat(order.lines().get(0).kg()).isEqualByComparingTo("1.3");
        assertThat(order.freight()).isEqualByComparingTo("1.04");
        // 20 + 1.04, and 10 % duty on both
        assertThat(order.landed()).isEqualByComparingTo("23.144");
    }

    /** One order for all that a supplier sells: freight of 50 once, shared by goods value, 300 to 100. */
    @Test
    void items_of_one_supplier_share_an_order() {
        Draft draft = new Draft()
                .formula("Gel", Batching.ANY, line("Oil", "0.5"), line("Wax", "0.5"))
                .offer("Oils", "Oil", "10", Measure.KG, "300", null)
                .offer("Oils", "Wax", "10", Measure.KG, "100", null)
                .bulk("Gel", "20");
        draft.suppliers.add(new Supplier(
                "Oils",
                Draft.EUR,
                null,
                new Supplier.Minimum(null, null),
                new Supplier.Charges(Figure.of("50"), Figure.ZERO, Figure.ZERO, Figure.ZERO),
                Figure.ZERO,
                Origin.NONE));

        RunCost cost = costed(draft).runs().get(0);

        assertThat(cost.outlay()).isEqualByComparingTo("450");
        assertThat(cost.items().get(0).landed()).isEqualByComparingTo("337.5");
        assertThat(cost.items().get(1).landed()).isEqualByComparingTo("112.5");
        assertThat(cost.heads().get(Head.INBOUND)).isEqualByComparingTo("50");
    }

    private static Draft bodyOil() {
        Draft draft = new Draft()
                .formula(
                        "Body oil",
                        new Batching(
                                null,
                                Figure.ZERO,
                                Figure.ZERO,
                                Figure.of("2"),
                                Figure.of("0.01"),
                                Figure.of("45"),
                                null,
                                ProductKind.LEAVE_ON,
                                Origin.NONE),
                        line("Sunflower oil", "0.6"),
                        line("Jojoba oil", null))
                .offer("Oils", "Sunflower oil", "25", Measure.KG, "4", Measure.KG)
                .offer("Oils", "Jojoba oil", "20", Measure.KG, "25", Measure.KG)
                .offer("Glass", "Bottle 100", "500", Measure.EACH, "0.30", Measure.EACH)
                .run("Bottle", "1000");
        draft.labourRate = Figure.of("30");
        draft.overhead = Figure.of("0.2");
        Draft.ProductDraft product = new Draft.ProductDraft("Bottle", "Body oil", "100", Measure.G);
        product.setUpHours = "1";
        product.unitsPerHour = "250";
        product.people = "2";
        product.oneOffs = "2000";
        product.spreadOver = "4000";
        draft.products.add(product.product(component("Bottle 100", "1", "0.02")));
        return draft;
    }

    /** 8 kg of oil at 90 for 10 kg. */
    private static Draft oneOil() {
        Draft draft = new Draft()
                .formula("Gel", Batching.ANY, line("Oil", "1", cell("Gel", "C2")))
                .offer("Oils", "Oil", "10", Measure.KG, "90", null);
        draft.runs.add(new Run.OfBulk("Gel", Figure.of("8"), cell("Runs", "A2")));
        return draft;
    }

    private static Offer expired(String item, String size, Origin origin) {
        Offer offer = offerOf("Oils", item, size, Measure.KG, "EUR", price("1", null));
        return new Offer(
                offer.supplier(),
                offer.item(),
                offer.packSize(),
                offer.packUnit(),
                offer.breaks(),
                offer.currency(),
                LineTerms.NONE,
                new Validity(null, LocalDate.of(2026, 11, 18)),
                origin);
    }

    private static CostOutcome.Costed costed(Draft draft) {
        CostOutcome outcome = new CostRuns(new EveryPurchase(), SearchLimits.usual()).cost(draft.book());
        assertThat(outcome).as(outcome.findings().toString()).isInstanceOf(CostOutcome.Costed.class);
        return (CostOutcome.Costed) requireNonNull(outcome);
    }

    private static List<Finding> refused(Draft draft) {
        CostOutcome outcome = new CostRuns(new EveryPurchase(), SearchLimits.usual()).cost(draft.book());
        if (outcome instanceof CostOutcome.Costed costed) {
            assertThat(costed.incomplete())
                    .isNotEmpty()
                    .allSatisfy(run -> assertThat(run.cost()).isNotNull());
        }
        return outcome.findings().stream().filter(Finding::isError).toList();
    }
}
