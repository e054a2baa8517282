package perkilo.decision;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.model.ActualRow;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Past;
import perkilo.model.Product;
import perkilo.model.ProductFixture;
import perkilo.model.ProductKind;
import perkilo.model.Run;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;
import perkilo.units.Measure;

/** What a run really took beside its plan: standard costing. */
final class ActualVariancesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 19);
    private static final BigDecimal TINY = new BigDecimal("1e-15");

    /**
     * Price variance = (actual price − standard price) × actual quantity, quantity variance = (actual quantity −
     * standard quantity) × standard price (OpenStax, Principles of Accounting, Volume 2: Managerial Accounting, chapter
     * 8, Standard Costs and Variances; formulas from memory). Figures of two published exercises with their solutions:
     * accountingqa.blogspot.com, Ex 23-5 direct materials variances; qammunity.org/8059627.
     */
    @ParameterizedTest
    @CsvSource({
        "430, 6.90, 450, 2925, -180, 138, -42",
        "185000, 6.00, 183200, 1062560, -36640, -10800, -47440",
    })
    void price_and_quantity_variances_are_those_of_standard_costing(
            String standard,
            String standardPrice,
            String actual,
            String paid,
            String price,
            String quantity,
            String all) {
        Book book = book(standard, standardPrice, "EUR", "0", "0");
        PlanAndActual run = only(book, use("Material", actual, paid, null, null, "1", null));

        PlanAndActual.OfItem item = run.items().get(0);
        assertThat(requireNonNull(item.priceVariance())).isCloseTo(new BigDecimal(price), within(TINY));
        assertThat(requireNonNull(item.quantityVariance())).isCloseTo(new BigDecimal(quantity), within(TINY));
        assertIs(run, Variance.Part.PRICE, price);
        assertIs(run, Variance.Part.PROCESS, quantity);
        assertThat(run.variance().change()).isCloseTo(new BigDecimal(all), within(TINY));
    }

    /**
     * Labour efficiency variance = (actual hours − standard hours) × standard rate: (18,930 − 18,500) × 16.50 = 7,095
     * (figures of the same exercise, qammunity.org/8059627; by hand). Other rates of pay are not written down.
     */
    @Test
    void hours_are_held_against_the_plan_at_its_rate() {
        Book book = book("185000", "6.00", "EUR", "16.50", "18500");
        PlanAndActual run = only(book, use("Material", "185000", "1110000", null, null, "1", "18930"));

        assertIs(run, Variance.Part.PROCESS, "7095");
        assertThat(run.variance().change()).isCloseTo(new BigDecimal("7095"), within(TINY));
    }

    /**
     * By hand: planned 10 units of 10 kg at 6 = 60 each. 8 came out of 100 kg, for 580: the standard for 8 is 80 kg, so
     * 20 kg × 6 = 120 too much was used, and 100 kg cost 20 less than 600: a unit (600 − 20) / 8 = 72.50.
     */
    @Test
    void the_standard_is_the_plan_for_the_units_made() {
        Book book = sized(book("10", "6", "EUR", "0", "0"), "10");
        PlanAndActual run = only(
                book,
                new ActualRow(
                        "",
                        "P",
                        Figure.of("10"),
                        useOf("Material", "100", "580", null, null),
                        Figure.of("8"),
                        null,
                        false,
                        Origin.NONE));

        assertThat(run.items().get(0).standard()).isEqualByComparingTo("80");
        assertThat(requireNonNull(run.items().get(0).quantityVariance())).isEqualByComparingTo("120");
        assertThat(requireNonNull(run.items().get(0).priceVariance())).isEqualByComparingTo("-20");
        assertIs(run, Variance.Part.PROCESS, "15");
        assertIs(run, Variance.Part.PRICE, "-2.5");
        assertThat(run.variance().ofOneBefore()).isEqualByComparingTo("60");
        assertThat(run.variance().ofOneAfter()).isEqualByComparingTo("72.5");
    }

    /**
     * By hand: 100 kg at 5 dollars, planned at 0.90 EUR: 450. Paid 520 dollars on a day of 0.95: price (520 − 500) ×
     * 0.90 = 18, exchange rate 520 × 0.05 = 26; together 494 − 450 = 44.
     */
    @Test
    void the_exchange_rate_of_the_day_of_payment_is_a_part_of_its_own() {
        LocalDate paid = LocalDate.of(2026, 11, 2);
        Book book = book("100", "5", "USD", "0", "0")
                .withRates(new ExchangeRates(List.of(dollar("0.90", DAY))))
                .withPast(new Past(List.of(dollar("0.90", DAY), dollar("0.95", paid)), List.of()));
        PlanAndActual run = only(book, use("Material", "100", "520", "USD", paid, "1", null));

        assertIs(run, Variance.Part.PRICE, "18");
        assertIs(run, Variance.Part.EXCHANGE_RATE, "26");
        assertIs(run, Variance.Part.PROCESS, "0");
        assertThat(run.variance().change()).isCloseTo(new BigDecimal("44"), within(TINY));
    }

    @Test
    void what_is_not_in_the_plan_is_a_matter_of_the_recipe() {
        Book book = book("100", "5", "EUR", "0", "0");
        ActualVariances held = held(
                book,
                List.of(
                        use("Material", "100", "500", null, null, "1", null),
                        use("Perfume", "2", "30", null, null, "1", null)));

        PlanAndActual run = held.runs().get(0);
        assertIs(run, Variance.Part.RECIPE, "30");
        assertThat(run.items().get(1).standardPrice()).isNull();
        assertThat(held.findings()).anyMatch(one -> one.text().contains("\"Perfume\" is not in the plan of 1 × P"));
    }

    @Test
    void what_is_not_written_down_counts_as_planned_and_is_named() {
        Book book = book("100", "5", "EUR", "20", "3");
        ActualVariances held =
                held(book, List.of(new ActualRow("", "P", Figure.ONE, null, Figure.ONE, null, false, Origin.NONE)));

        assertThat(held.runs().get(0).variance().change()).isEqualByComparingTo("0");
        assertThat(held.findings())
                .extracting(Finding::text)
                .containsExactly(
                        "1 × P: Hours is blank, so the hours of the plan count.",
                        "1 × P: nothing is written down for Material, so the plan counts for the units made.");
    }

    @Test
    void a_run_that_is_not_clear_is_left_out_and_says_why() {
        Book book = book("100", "5", "EUR", "0", "0");

        assertThat(problems(book, use("Material", "100", "500", "USD", DAY, "1", null)))
                .contains(
                        "There is no exchange rate for USD on or before 2026-11-19, so this run is not held against its"
                                + " plan. Add one to Rates, or give a file with --rates.");
        assertThat(problems(
                        book,
                        use("Material", "50", "250", null, null, "1", null),
                        use("Material", "50", "250", null, null, "2", null)))
                .anyMatch(text -> text.startsWith("Units made of 1 × P differs from "));
        assertThat(problems(
                        book,
                        new ActualRow(
                                "",
                                "Q",
                                Figure.ONE,
                                useOf("Material", "1", "5", null, null),
                                null,
                                null,
                                false,
                                Origin.NONE)))
                .contains("There is no product \"Q\" on Products, so this row is not held against a plan.");
        assertThat(problems(
                        book,
                        new ActualRow(
                                "",
                                "P",
                                null,
                                useOf("Material", "1", "5", null, null),
                                null,
                                null,
                                false,
                                Origin.NONE)))
                .isEmpty(); // Runs has one size of it
        assertThat(problems(
                        book,
                        new ActualRow(
                                "",
                                "P",
                                Figure.ONE,
                                new ActualRow.Use(
                                        "Material", Figure.ONE, Measure.EACH, Figure.ONE, null, null, Origin.NONE),
                                Figure.ONE,
                                null,
                                false,
                                Origin.NONE)))
                .contains("The quantity of \"Material\" is in each, but it is counted in kg. Type it in kg.");
        assertThat(problems(book, use("Perfume", "2", null, null, null, "1", null)))
                .contains(
                        "\"Perfume\" is not in the plan of 1 × P, and Amount paid is blank, so its cost is not known.");
    }

    @Test
    void runs_of_one_size_are_told_apart_by_their_names() {
        Book book = book("100", "5", "EUR", "0", "0");
        List<ActualRow> rows = List.of(named("July", "100"), named("August", "104"), named("July", "2"));

        ActualVariances held = held(book, rows);

        assertThat(held.runs())
                .extracting(run -> run.variance().title())
                .containsExactly("1 × P (July)", "1 × P (August)");
        assertIs(held.runs().get(0), Variance.Part.PROCESS, "10");
        assertIs(held.runs().get(1), Variance.Part.PROCESS, "20");
        assertThat(held.variances().whole(Variance.Part.PROCESS)).isCloseTo(new BigDecimal("30"), within(TINY));
    }

    private static ActualRow named(String name, String kg) {
        return new ActualRow(
                name, "P", Figure.ONE, useOf("Material", kg, null, null, null), null, null, false, Origin.NONE);
    }

    private static List<String> problems(Book book, ActualRow... rows) {
        Book with = book.withPast(new Past(book.past().rates(), List.of(), List.of(rows)));
        ActualRuns actual = ActualRuns.of(with);
        List<Finding> all = new ArrayList<>(actual.findings());
        if (!actual.runs().isEmpty()) {
            all.addAll(ActualVariances.of(costed(actual.plan(with)), actual).findings());
        }
        return all.stream().filter(Finding::isError).map(Finding::text).toList();
    }

    private static PlanAndActual only(Book book, ActualRow row) {
        ActualVariances held = held(book, List.of(row));
        assertThat(held.runs()).hasSize(1);
        PlanAndActual run = held.runs().get(0);
        BigDecimal sum = run.variance().parts().values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(sum).isEqualByComparingTo(run.variance().change());
        return run;
    }

    private static ActualVariances held(Book book, List<ActualRow> rows) {
        Book with = book.withPast(new Past(book.past().rates(), List.of(), rows));
        ActualRuns actual = ActualRuns.of(with);
        assertThat(actual.findings()).isEmpty();
        return ActualVariances.of(costed(actual.plan(with)), actual);
    }

    private static void assertIs(PlanAndActual run, Variance.Part part, String amount) {
        assertThat(run.variance().part(part)).as(part.words()).isCloseTo(new BigDecimal(amount), within(TINY));
    }

    private static ActualRow use(
            String item,
            String kg,
            @Nullable String paid,
            @Nullable String currency,
            @Nullable LocalDate day,
            String made,
            @Nullable String hours) {
        return new ActualRow(
                "",
                "P",
                Figure.ONE,
                useOf(item, kg, paid, currency, day),
                Figure.of(made),
                hours == null ? null : Figure.of(hours),
                false,
                Origin.NONE);
    }

    private static ActualRow.Use useOf(
            String item, String kg, @Nullable String paid, @Nullable String currency, @Nullable LocalDate day) {
        return new ActualRow.Use(
                item,
                Figure.of(kg),
                Measure.KG,
                paid == null ? null : Figure.of(paid),
                currency == null ? null : Currencies.of(currency),
                day == null ? null : Day.of(day),
                Origin.NONE);
    }

    private static DatedRate dollar(String euros, LocalDate day) {
        return new DatedRate(Currencies.of("USD"), Currencies.of("EUR"), Figure.of(euros), day, "test");
    }

    /** One unit of so many kilograms of a material that is sold by the kilogram, made in so many hours. */
    private static Book book(String kg, String price, String currency, String wage, String hours) {
        Settings settings = Settings.of(Currencies.of("EUR"), DAY)
                .withMaking(new Settings.Making(Figure.of(wage), Figure.ZERO, Figure.ZERO));
        Batching batching = new Batching(
                null,
                Figure.ZERO,
                Figure.ZERO,
                Figure.of(hours),
                Figure.ZERO,
                Figure.ZERO,
                null,
                ProductKind.LEAVE_ON,
                Origin.NONE);
        Offer offer = new Offer(
                "Tarnholt Oleo",
                "Material",
                Figure.ONE,
                Measure.KG,
                List.of(new Offer.PriceBreak(null, Figure.of(price), Measure.KG, Origin.NONE)),
                Currencies.of(currency),
                LineTerms.NONE,
                Validity.UNKNOWN,
                Origin.NONE);
        Formula.Line line = new Formula.Line("A", "Material", Figure.ONE, null, Origin.NONE);
        Product product = ProductFixture.of("P", "F", kg, Measure.KG).product();
        return new Book(
                settings,
                Book.byName(List.of(Supplier.of("Tarnholt Oleo", Currencies.of(currency))), Supplier::name),
                List.of(offer),
                Map.of(),
                Book.byName(List.of(new Formula("F", List.of(line), batching, Origin.NONE)), Formula::name),
                Book.byName(List.of(product), Product::name),
                List.of(new Run.OfProduct("P", Figure.ONE, Origin.NONE)),
                List.of(),
                List.of(),
                ExchangeRates.NONE);
    }

    private static Book sized(Book book, String units) {
        return book.withRuns(List.of(new Run.OfProduct("P", Figure.of(units), Origin.NONE)));
    }

    private static CostOutcome.Costed costed(Book book) {
        CostOutcome outcome = new CostRuns(new CheapestPlan(), SearchLimits.usual()).cost(book);
        return (CostOutcome.Costed) outcome;
    }
}
