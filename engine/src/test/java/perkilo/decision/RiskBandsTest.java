package perkilo.decision;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Past;
import perkilo.model.Product;
import perkilo.model.ProductFixture;
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
import perkilo.rates.BankFiles;
import perkilo.reading.RatesReader;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;
import perkilo.units.Measure;

/**
 * Risk bands beside a second computation: in doubles, from the text of the European Central Bank's file, and without
 * any class of the engine.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class RiskBandsTest {

    private static final LocalDate TODAY = LocalDate.of(2023, 2, 21);
    private static final double TINY = 1e-9;

    private List<DatedRate> history = List.of();
    private TreeMap<LocalDate, Map<String, String>> published = new TreeMap<>();

    @BeforeAll
    void read() throws IOException {
        history = new RatesReader().read(BankFiles.history()).value();
        published = new TreeMap<>();
        BankFiles.byDay(BankFiles.history()).forEach((day, rates) -> published.put(LocalDate.parse(day), rates));
    }

    /** 10 kg at 8 dollars and 5 kg at 6 pounds, in cans of exactly so much; water of the house at 1 EUR. */
    @ParameterizedTest
    @ValueSource(ints = {1, 30, 90, 365})
    void two_currencies_move_together_as_the_bank_published_them(int days) {
        Book book = book("EUR", days, List.of(can("A", "10", "8", "USD", null), can("B", "5", "6", "GBP", null)));

        RiskBand.Figures band = figures(book.withPast(new Past(history, List.of())));

        double usd = 80 / rate(TODAY, "USD");
        double gbp = 30 / rate(TODAY, "GBP");
        double[] costs = windows(days, List.of("USD", "GBP"), start -> {
            LocalDate end = requireNonNull(published.floorKey(start.plusDays(days)));
            return usd * rate(start, "USD") / rate(end, "USD") + gbp * rate(start, "GBP") / rate(end, "GBP");
        });
        assertBand(band, costs);
        assertThat(band.from()).isEqualTo(LocalDate.of(1999, 1, 4));
        assertThat(band.to()).isBetween(TODAY.minusDays(4), TODAY);
        assertThat(costs.length).isGreaterThan(4_800);
    }

    /** The bank publishes no rate between dollar and pound: it is the cross of one day. */
    @Test
    void a_cross_moves_as_the_quotient_of_two_published_rates() {
        Book book = book("GBP", 90, List.of(can("A", "10", "8", "USD", null)));

        RiskBand.Figures band = figures(book.withPast(new Past(history, List.of())));

        double today = 80 * rate(TODAY, "GBP") / rate(TODAY, "USD");
        double[] costs = windows(90, List.of("USD", "GBP"), start -> {
            LocalDate end = requireNonNull(published.floorKey(start.plusDays(90)));
            return today * (rate(end, "GBP") / rate(end, "USD")) / (rate(start, "GBP") / rate(start, "USD"));
        });
        assertBand(band, costs);
    }

    @Test
    void with_fewer_than_250_days_there_is_no_band_and_the_currency_is_named() {
        Book book = book("EUR", 90, List.of(can("A", "10", "8", "USD", null), can("B", "5", "6", "GBP", null)));

        assertThat(only(book.withPast(new Past(dollarDays(RiskBands.LEAST_DAYS), List.of())))
                        .figures())
                .isNotNull();
        RiskBand without = only(book.withPast(new Past(dollarDays(RiskBands.LEAST_DAYS - 1), List.of())));
        assertThat(without.figures()).isNull();
        assertThat(without.lacking()).containsExactly(new RiskBand.Lack.Rates("USD", 249));
    }

    /** The last so many rates of the dollar, and all of the pound. */
    private List<DatedRate> dollarDays(int days) {
        List<DatedRate> dollars = history.stream()
                .filter(rate -> rate.to().getCurrencyCode().equals("USD"))
                .sorted(Comparator.comparing(DatedRate::date).reversed())
                .limit(days)
                .toList();
        List<DatedRate> all = new ArrayList<>(dollars);
        history.stream()
                .filter(rate -> rate.to().getCurrencyCode().equals("GBP"))
                .forEach(all::add);
        return all;
    }

    @Test
    void rates_of_later_days_do_not_count() {
        Book book = book("EUR", 90, List.of(can("A", "10", "8", "USD", null)));
        LocalDate early = LocalDate.of(1999, 10, 1);
        List<DatedRate> ofThatDay =
                history.stream().filter(rate -> rate.date().equals(early)).toList();
        Book then = book.withSettings(book.settings().on(early))
                .withRates(new ExchangeRates(ofThatDay))
                .withPast(new Past(history, List.of()));

        assertThat(only(then).lacking())
                .containsExactly(new RiskBand.Lack.Rates(
                        "USD", published.headMap(early, true).size()));
    }

    /** Three lists of a can in home currency: a price holds from its list to the next; a window begins on every day. */
    @Test
    void a_price_moves_as_it_did_from_list_to_list() {
        List<Offer> lists = List.of(
                can("A", "10", "8", "EUR", LocalDate.of(2022, 1, 3)),
                can("A", "10", "9", "EUR", LocalDate.of(2022, 6, 1)),
                can("A", "10", "7.5", "EUR", LocalDate.of(2023, 1, 2)));
        Book book = book("EUR", 60, List.of(lists.get(2))).withPast(new Past(List.of(), lists));

        RiskBand.Figures band = figures(book);

        List<Double> costs = new ArrayList<>();
        for (LocalDate start = LocalDate.of(2022, 1, 3);
                !start.plusDays(60).isAfter(TODAY);
                start = start.plusDays(1)) {
            costs.add(75 * listPrice(start.plusDays(60)) / listPrice(start));
        }
        assertBand(band, costs.stream().mapToDouble(cost -> cost).toArray());
        assertThat(band.windows()).isEqualTo(355); // 3 January 2022 to 23 December 2022
        assertThat(only(book).still()).isEmpty();
    }

    @Test
    void two_lists_say_nothing_of_a_price() {
        List<Offer> lists = List.of(
                can("A", "10", "8", "EUR", LocalDate.of(2022, 1, 3)),
                can("A", "10", "9", "EUR", LocalDate.of(2022, 6, 1)));
        Book book = book("EUR", 60, List.of(lists.get(1))).withPast(new Past(List.of(), lists));

        RiskBand band = only(book);

        assertThat(band.figures()).isNull();
        assertThat(band.lacking()).containsExactly(new RiskBand.Lack.Anything());
        assertThat(band.still()).containsExactly("A");
    }

    /** A currency with a band of its own: the 5th and 95th percentile of its changes, whatever else there is. */
    @Test
    void each_currency_has_its_own_spread() {
        Book book = book("EUR", 90, List.of(can("A", "10", "8", "USD", null), can("B", "5", "6", "GBP", null)));

        RiskBand band = only(book.withPast(new Past(history, List.of())));

        RiskBand.Spread dollar = requireNonNull(band.moved().get(new Factor(Factor.Kind.CURRENCY, "USD")));
        double[] changes = windows(90, List.of("USD"), start -> {
            LocalDate end = requireNonNull(published.floorKey(start.plusDays(90)));
            return rate(start, "USD") / rate(end, "USD") - 1;
        });
        Arrays.sort(changes);
        assertThat(dollar.low().doubleValue()).isCloseTo(percentile(changes, 0.05), within(TINY));
        assertThat(dollar.high().doubleValue()).isCloseTo(percentile(changes, 0.95), within(TINY));
        assertThat(band.still()).containsExactly("A", "B");
    }

    /**
     * Definition 7 of Hyndman and Fan by their own example of a sample: for 1, 2, 3, 4 the quartiles are 1.75, 2.5 and
     * 3.25, which is what PERCENTILE of a spreadsheet gives.
     */
    @Test
    void a_percentile_lies_on_a_straight_line_between_two_values() {
        Percentile four = new Percentile(
                List.of(new BigDecimal("3"), new BigDecimal("1"), new BigDecimal("4"), new BigDecimal("2")));

        assertThat(four.at(new BigDecimal("0.25"))).isEqualByComparingTo("1.75");
        assertThat(four.at(Percentile.MIDDLE)).isEqualByComparingTo("2.5");
        assertThat(four.at(new BigDecimal("0.75"))).isEqualByComparingTo("3.25");
        assertThat(four.at(BigDecimal.ONE)).isEqualByComparingTo("4");
    }

    private double rate(LocalDate day, String currency) {
        return Double.parseDouble(requireNonNull(
                requireNonNull(published.floorEntry(day)).getValue().get(currency)));
    }

    private static double listPrice(LocalDate day) {
        return day.isBefore(LocalDate.of(2022, 6, 1)) ? 8 : day.isBefore(LocalDate.of(2023, 1, 2)) ? 9 : 7.5;
    }

    private double[] windows(int days, List<String> currencies, ToDoubleFunction<LocalDate> cost) {
        return published.entrySet().stream()
                .filter(entry -> entry.getValue().keySet().containsAll(currencies))
                .map(Map.Entry::getKey)
                .filter(day -> !day.plusDays(days).isAfter(TODAY))
                .filter(day ->
                        requireNonNull(published.floorKey(day.plusDays(days))).isAfter(day))
                .mapToDouble(cost)
                .toArray();
    }

    private static void assertBand(RiskBand.Figures band, double[] costs) {
        Arrays.sort(costs);
        assertThat(band.windows()).isEqualTo(costs.length);
        assertThat(band.p5().doubleValue()).isCloseTo(percentile(costs, 0.05), within(TINY));
        assertThat(band.p50().doubleValue()).isCloseTo(percentile(costs, 0.5), within(TINY));
        assertThat(band.p95().doubleValue()).isCloseTo(percentile(costs, 0.95), within(TINY));
        assertThat(band.p5()).isLessThan(band.p95());
    }

    /** As NumPy and spreadsheets interpolate by default: Hyndman and Fan, definition 7. */
    private static double percentile(double[] sorted, double fraction) {
        double place = fraction * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    private static RiskBand.Figures figures(Book book) {
        return requireNonNull(only(book).figures());
    }

    private static RiskBand only(Book book) {
        CostOutcome outcome = new CostRuns(new CheapestPlan(), SearchLimits.usual()).cost(book);
        List<RiskBand> bands = RiskBands.of((CostOutcome.Costed) outcome);
        assertThat(bands).hasSize(1);
        return bands.get(0);
    }

    /** One unit that needs exactly the cans. */
    private Book book(String home, int days, List<Offer> offers) {
        BigDecimal kg = offers.stream().map(offer -> offer.packSize().value()).reduce(BigDecimal.ZERO, BigDecimal::add);
        List<Formula.Line> lines = new ArrayList<>();
        for (Offer offer : offers) {
            Figure level = Figure.of(
                    offer.packSize().value().divide(kg, MathContext.DECIMAL128).toPlainString());
            lines.add(
                    new Formula.Line("A", offer.item(), offers.indexOf(offer) == 0 ? null : level, null, Origin.NONE));
        }
        Settings settings = Settings.of(Currencies.of(home), TODAY)
                .looking(new Settings.Outlook(Settings.USUAL_SENSITIVITY, Figure.of(Integer.toString(days))));
        Product product =
                ProductFixture.of("P", "F", kg.toPlainString(), Measure.KG).product();
        List<Supplier> suppliers = offers.stream()
                .map(offer -> Supplier.of(offer.supplier(), offer.currency()))
                .toList();
        List<DatedRate> today =
                history.stream().filter(rate -> rate.date().equals(TODAY)).toList();
        return new Book(
                settings,
                Book.byName(suppliers, Supplier::name),
                offers,
                Map.of(),
                Book.byName(List.of(new Formula("F", lines, Batching.ANY, Origin.NONE)), Formula::name),
                Book.byName(List.of(product), Product::name),
                List.of(new Run.OfProduct("P", Figure.ONE, Origin.NONE)),
                List.of(),
                List.of(),
                new ExchangeRates(today));
    }

    private static Offer can(String item, String kg, String perKg, String currency, @Nullable LocalDate day) {
        return new Offer(
                "House of " + item,
                item,
                Figure.of(kg),
                Measure.KG,
                List.of(new Offer.PriceBreak(null, Figure.of(perKg), Measure.KG, Origin.NONE)),
                Currencies.of(currency),
                LineTerms.NONE,
                new Validity(day, null),
                Origin.NONE);
    }
}
