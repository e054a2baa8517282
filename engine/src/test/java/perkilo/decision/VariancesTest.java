package perkilo.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.costing.RandomBooks;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Product;
import perkilo.model.ProductFixture;
import perkilo.model.ProductKind;
import perkilo.model.Run;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;
import perkilo.units.Measure;

/** The parts of a change add up to it, and each change of one input is in its own part. */
final class VariancesTest {

    private static final BigDecimal TINY = new BigDecimal("1e-20");

    /**
     * Standard costing: price variance = (actual price − standard price) × actual quantity, quantity variance = (actual
     * quantity − standard quantity) × standard price (OpenStax, Principles of Accounting, Volume 2: Managerial
     * Accounting, on standard costs and variances; formulas from memory). Figures of two published exercises with their
     * solutions: accountingqa.blogspot.com, Ex 23-5 direct materials variances; qammunity.org/8059627.
     */
    @ParameterizedTest
    @CsvSource({
        "430, 6.90, 450, 6.50, -180, 138",
        "185000, 6.00, 183200, 5.80, -36640, -10800",
    })
    void price_and_quantity_variances_are_those_of_standard_costing(
            String standard, String standardPrice, String actual, String actualPrice, String price, String quantity) {
        Variance found = only(oneUnit(standard, standardPrice), oneUnit(actual, actualPrice));

        assertIs(found, Variance.Part.PRICE, price);
        assertIs(found, Variance.Part.PROCESS, quantity); // another fill is another quantity
        assertThat(found.change()).isEqualByComparingTo(new BigDecimal(price).add(new BigDecimal(quantity)));
    }

    /**
     * By hand, for 100 units of 200 g in one drum of 25 kg at 10 USD a kilogram, 0.90 EUR a dollar, freight of 50 USD
     * an order, 4 hours at 20 EUR, one-off costs of 300 EUR: oil 20 kg × (250 + 50) × 0.9 / 25 = 216.
     */
    @Test
    void each_change_is_in_its_own_part() {
        Book book = drum("10", "0.90", "50", "20", "300", "0");
        assertThat(costed(book).runs().get(0).total()).isEqualByComparingTo("596"); // 216 + 80 + 300

        Variance price = only(book, drum("11", "0.90", "50", "20", "300", "0"));
        assertOnly(price, Variance.Part.PRICE, "0.18"); // 25 × 1 × 0.9 × 20 / 25 / 100
        Variance rate = only(book, drum("10", "0.95", "50", "20", "300", "0"));
        assertOnly(rate, Variance.Part.EXCHANGE_RATE, "0.12"); // 300 × 0.05 × 0.8 / 100
        Variance charges = only(book, drum("10", "0.90", "80", "20", "300", "0"));
        assertOnly(charges, Variance.Part.CHARGES, "0.216"); // 30 × 0.9 × 0.8 / 100
        Variance wage = only(book, drum("10", "0.90", "50", "25", "300", "0"));
        assertOnly(wage, Variance.Part.PROCESS, "0.2");
        Variance oneOffs = only(book, drum("10", "0.90", "50", "20", "450", "0"));
        assertOnly(oneOffs, Variance.Part.ONE_OFFS, "1.5");
        Variance loss = only(book, drum("10", "0.90", "50", "20", "300", "0.2"));
        assertOnly(loss, Variance.Part.PROCESS, "0.54"); // 25 kg instead of 20 at 10.80
    }

    /** Half of the oil is replaced by water of the house at 1 EUR: 10 kg at 10.80 less, 10 kg at 1 more. */
    @Test
    void another_recipe_is_a_part_of_its_own() {
        Book book = drum("10", "0.90", "50", "20", "300", "0");
        Formula.Line oil = new Formula.Line("A", "Oil", Figure.of("0.5"), null, Origin.NONE);
        Formula.Line water = new Formula.Line("A", "Water", Figure.of("0.5"), null, Origin.NONE);
        Formula old = book.formula("F").orElseThrow();
        Settings settings = book.settings();
        Book other = book.withFormula(new Formula("F", List.of(oil, water), old.batching(), Origin.NONE))
                .withSettings(settings.withMaking(
                        new Settings.Making(settings.labourRate(), settings.overhead(), Figure.ONE)));

        assertOnly(only(book, other), Variance.Part.RECIPE, "-0.98");
    }

    /** The can of another supplier, whose dollar is the same: 20 kg at 8 in cans of 20 kg, no freight. */
    @Test
    void another_supplier_is_a_choice() {
        Book book = drum("10", "0.90", "50", "20", "300", "0");
        Offer can = new Offer(
                "Brayle Traders",
                "Oil",
                Figure.of("20"),
                Measure.KG,
                List.of(new Offer.PriceBreak(null, Figure.of("8"), Measure.KG, Origin.NONE)),
                Currencies.of("EUR"),
                LineTerms.NONE,
                Validity.UNKNOWN,
                Origin.NONE);
        Variance found = only(book, book.withOffers(List.of(book.offers().get(0), can)));

        assertOnly(found, Variance.Part.PURCHASE_CHOICE, "-0.56"); // 160 instead of 216
        Variance gone = only(book, book.withOffers(List.of(can)));
        assertOnly(gone, Variance.Part.PURCHASE_CHOICE, "-0.56"); // an offer that is gone keeps its price
    }

    @Property(tries = 80, edgeCases = EdgeCasesMode.NONE)
    void the_parts_add_up_exactly(
            @ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed,
            @ForAll @LongRange(min = 60, max = 160) long percent) {
        Book book = RandomBooks.any(seed);
        BigDecimal factor = BigDecimal.valueOf(percent).movePointLeft(2);
        CostOutcome.Costed before = costed(book);
        Assume.that(before.runs().size() == 1);
        String item = before.runs().get(0).items().get(0).item().name();
        Book edited = Edits.freight(Edits.wage(Edits.price(book, item, factor), factor), factor);
        for (String code : List.of("EUR", "USD", "GBP", "JPY")) {
            if (!book.settings().home().getCurrencyCode().equals(code) && code.hashCode() % 2 == 0) {
                edited = Edits.currency(edited, Currencies.of(code), factor);
            }
        }
        edited = Edits.fillLoss(edited, "Jar", factor);
        CostOutcome.Costed after = costed(edited);
        Assume.that(after.runs().size() == 1);

        Variance found = Variances.between(before, after).runs().get(0);

        BigDecimal sum = found.parts().values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(sum).isEqualByComparingTo(found.change());
        assertThat(found.ofOneBefore().add(sum)).isEqualByComparingTo(found.ofOneAfter());
        assertThat(found.part(Variance.Part.RECIPE)).isCloseTo(BigDecimal.ZERO, within(TINY));
        assertThat(found.part(Variance.Part.ONE_OFFS)).isCloseTo(BigDecimal.ZERO, within(TINY));
    }

    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
    void nothing_changed_is_nothing(@ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed) {
        CostOutcome.Costed same = costed(RandomBooks.any(seed));
        for (Variance run : Variances.between(same, same).runs()) {
            run.parts()
                    .forEach((part, amount) ->
                            assertThat(amount).as(part.words()).isCloseTo(BigDecimal.ZERO, within(TINY)));
        }
    }

    @Test
    void runs_that_are_on_one_side_only_are_named() {
        Book book = drum("10", "0.90", "50", "20", "300", "0");
        Book other = book.withRuns(List.of(new Run.OfProduct("P", Figure.of("50"), Origin.NONE)));

        Variances found = Variances.between(costed(book), costed(other));

        assertThat(found.runs()).isEmpty();
        assertThat(found.unmatched()).containsExactly("100 × P", "50 × P");
    }

    private static void assertOnly(Variance found, Variance.Part only, String amount) {
        for (Variance.Part part : Variance.Part.values()) {
            assertIs(found, part, part == only ? amount : "0");
        }
    }

    private static void assertIs(Variance found, Variance.Part part, String amount) {
        assertThat(found.part(part)).as(part.words()).isCloseTo(new BigDecimal(amount), within(TINY));
    }

    private static Variance only(Book before, Book after) {
        List<Variance> runs = Variances.between(costed(before), costed(after)).runs();
        assertThat(runs).hasSize(1);
        return runs.get(0);
    }

    /** One unit of so many kilograms of a material that is sold by the kilogram. */
    private static Book oneUnit(String kg, String price) {
        Formula.Line line = new Formula.Line("A", "Material", Figure.of("1"), null, Origin.NONE);
        Product product = ProductFixture.of("P", "F", kg, Measure.KG).product();
        return book(
                Settings.of(Currencies.of("EUR"), LocalDate.of(2026, 11, 19)),
                Supplier.of("Tarnholt Oleo", Currencies.of("EUR")),
                offer("Material", "1", price, "EUR"),
                new Formula("F", List.of(line), Batching.ANY, Origin.NONE),
                product,
                "1",
                ExchangeRates.NONE);
    }

    private static Book drum(
            String price, String dollar, String freight, String wage, String oneOffs, String fillLoss) {
        LocalDate day = LocalDate.of(2026, 11, 19);
        Settings usual = Settings.of(Currencies.of("EUR"), day);
        Supplier supplier = new Supplier(
                "Tarnholt Oleo",
                Currencies.of("USD"),
                null,
                new Supplier.Minimum(null, null),
                new Supplier.Charges(Figure.of(freight), Figure.ZERO, Figure.ZERO, Figure.ZERO),
                null,
                Origin.NONE);
        Batching batching = new Batching(
                null,
                Figure.ZERO,
                Figure.ZERO,
                Figure.of("4"),
                Figure.ZERO,
                Figure.ZERO,
                null,
                ProductKind.LEAVE_ON,
                Origin.NONE);
        Formula.Line line = new Formula.Line("A", "Oil", Figure.of("1"), null, Origin.NONE);
        Product plain = ProductFixture.of("P", "F", "200", Measure.G)
                .filling(new Product.Filling(Figure.of("200"), Measure.G, null, null, null, Figure.of(fillLoss)))
                .product();
        Product product = new Product(
                plain.name(),
                plain.formula(),
                plain.filling(),
                plain.work(),
                plain.pricing(),
                new Product.OneOffs(Figure.of(oneOffs), null),
                plain.yearlyUnits(),
                plain.claims(),
                plain.components(),
                plain.origin());
        return book(
                usual.withMaking(new Settings.Making(Figure.of(wage), Figure.ZERO, Figure.ZERO)),
                supplier,
                offer("Oil", "25", price, "USD"),
                new Formula("F", List.of(line), batching, Origin.NONE),
                product,
                "100",
                new ExchangeRates(List.of(
                        new DatedRate(Currencies.of("USD"), Currencies.of("EUR"), Figure.of(dollar), day, "test"))));
    }

    private static Book book(
            Settings settings,
            Supplier supplier,
            Offer offer,
            Formula formula,
            Product product,
            String units,
            ExchangeRates rates) {
        return new Book(
                settings,
                Book.byName(List.of(supplier), Supplier::name),
                List.of(offer),
                Map.of(),
                Book.byName(List.of(formula), Formula::name),
                Book.byName(List.of(product), Product::name),
                List.of(new Run.OfProduct("P", Figure.of(units), Origin.NONE)),
                List.of(),
                List.of(),
                rates);
    }

    private static Offer offer(String item, String kg, String price, String currency) {
        return new Offer(
                "Tarnholt Oleo",
                item,
                Figure.of(kg),
                Measure.KG,
                List.of(new Offer.PriceBreak(null, Figure.of(price), Measure.KG, Origin.NONE)),
                Currencies.of(currency),
                LineTerms.NONE,
                Validity.UNKNOWN,
                Origin.NONE);
    }

    private static CostOutcome.Costed costed(Book book) {
        CostOutcome outcome = new CostRuns(new CheapestPlan(), SearchLimits.usual()).cost(book);
        Assume.that(outcome instanceof CostOutcome.Costed);
        return (CostOutcome.Costed) outcome;
    }
}
