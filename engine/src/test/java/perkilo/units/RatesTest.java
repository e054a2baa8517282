package perkilo.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.Ratio;
import perkilo.origin.Figure;

/**
 * The choice of a day's rate, and the conversion of amounts.
 *
 * <p>Rates: euro foreign exchange reference rates of the European Central Bank ({@code ecb-reference-rates.csv}); the
 * amounts are quotients and products of them.
 */
final class RatesTest {

    private static final ExchangeRates ECB = PublishedRates.ofTheEuropeanCentralBank();
    private static final LocalDate FEBRUARY = LocalDate.of(2023, 2, 21);
    private static final LocalDate DECEMBER = LocalDate.of(2022, 12, 30);

    @ParameterizedTest(name = "{0} {1} on {3} is {4} {2}")
    @CsvSource({
        // 100 / 1.0664
        "100, USD, EUR, 2023-02-21, 93.7734433608, 93.77",
        "100, EUR, JPY, 2023-02-21, 14376, 14376",
        // 100 / 1.0664 × 143.76
        "100, USD, JPY, 2023-02-21, 13480.8702175544, 13481",
        // 49.90 / 0.87925 × 1.0664
        "49.90, GBP, USD, 2023-02-21, 60.5213079329, 60.52",
        // 1,250 / 7.3582
        "1250, CNY, EUR, 2022-12-30, 169.8785028947, 169.88"
    })
    void reference_rates(String amount, String from, String to, LocalDate day, BigDecimal exact, String invoiced) {
        BigDecimal converted = on(day, from, to).convert(new BigDecimal(amount));

        assertThat(converted).isCloseTo(exact, within(new BigDecimal("1e-9")));
        assertThat(Currencies.invoiced(converted, Currencies.of(to)).toPlainString())
                .isEqualTo(invoiced);
    }

    @Test
    void every_cross_of_a_day_is_the_exact_quotient_of_its_two_rates() {
        List<String[]> rows = PublishedRates.rows("ecb-reference-rates.csv")
                .filter(row -> row[0].equals("2023-02-21"))
                .toList();
        for (String[] from : rows) {
            for (String[] to : rows) {
                if (!from[1].equals(to[1])) {
                    Ratio expected = Ratio.of("1234.56").by(Ratio.of(from[2])).times(Ratio.of(to[2]));
                    BigDecimal converted = on(FEBRUARY, from[1], to[1]).convert(new BigDecimal("1234.56"));
                    expected.assertIs(converted, from[1] + " to " + to[1]);
                }
            }
        }
    }

    @Test
    void the_newest_rate_on_or_before_the_day_holds() {
        assertThat(on(FEBRUARY, "EUR", "USD").factor()).isEqualByComparingTo("1.0664");
        assertThat(on(FEBRUARY.minusDays(1), "EUR", "USD").factor()).isEqualByComparingTo("1.0666");
        assertThat(on(FEBRUARY.plusYears(3), "EUR", "USD").factor()).isEqualByComparingTo("1.0664");
    }

    @Test
    void its_age_is_counted_in_days() {
        assertThat(on(FEBRUARY, "USD", "EUR").ageInDays(FEBRUARY)).isZero();
        // 30 December to 20 February: 1 + 31 + 20
        assertThat(on(FEBRUARY.minusDays(1), "USD", "EUR").ageInDays(FEBRUARY.minusDays(1)))
                .isEqualTo(52);
    }

    @Test
    void a_cross_is_as_old_as_the_older_of_its_rates() {
        ExchangeRates table = new ExchangeRates(
                List.of(rate("EUR", "USD", "1.1", "2026-03-10"), rate("EUR", "GBP", "0.9", "2026-03-01")));
        LocalDate day = LocalDate.of(2026, 3, 12);

        assertThat(found(table, day, "USD", "GBP").ageInDays(day)).isEqualTo(11);
    }

    @Test
    void no_rate_is_known_before_the_first_or_for_a_currency_that_nobody_lists() {
        LocalDate first = LocalDate.of(1999, 1, 4);

        assertThat(ECB.on(first, Currencies.of("EUR"), Currencies.of("USD"))).isPresent();
        assertThat(ECB.on(first.minusDays(1), Currencies.of("EUR"), Currencies.of("USD")))
                .isEmpty();
        assertThat(ECB.on(FEBRUARY, Currencies.of("EUR"), Currencies.of("KWD"))).isEmpty();
        assertThat(ExchangeRates.NONE.on(FEBRUARY, Currencies.of("EUR"), Currencies.of("USD")))
                .isEmpty();
    }

    @Test
    void a_currency_is_worth_itself_without_any_rate() {
        Conversion same = found(ExchangeRates.NONE, FEBRUARY, "EUR", "EUR");

        assertThat(same.factor()).isEqualByComparingTo("1");
        assertThat(same.ageInDays(FEBRUARY)).isZero();
    }

    @Test
    void of_a_rate_and_its_inverse_of_one_day_the_direct_one_is_used() {
        ExchangeRates table = new ExchangeRates(
                List.of(rate("USD", "EUR", "0.9", "2026-03-10"), rate("EUR", "USD", "1.2", "2026-03-10")));

        assertThat(found(table, LocalDate.of(2026, 3, 10), "EUR", "USD").factor())
                .isEqualByComparingTo("1.2");
        assertThat(found(table, LocalDate.of(2026, 3, 10), "USD", "EUR").factor())
                .isEqualByComparingTo("0.9");
    }

    @Test
    void an_inverse_is_used_where_it_is_newer() {
        ExchangeRates table = new ExchangeRates(
                List.of(rate("EUR", "USD", "1.2", "2026-03-09"), rate("USD", "EUR", "0.8", "2026-03-10")));

        assertThat(found(table, LocalDate.of(2026, 3, 9), "EUR", "USD").factor())
                .isEqualByComparingTo("1.2");
        assertThat(found(table, LocalDate.of(2026, 3, 10), "EUR", "USD").factor())
                .isEqualByComparingTo("1.25");
    }

    @Test
    void of_equally_fresh_ways_the_rate_goes_before_a_cross() {
        ExchangeRates table = new ExchangeRates(List.of(
                rate("EUR", "USD", "1.2", "2026-03-10"),
                rate("EUR", "GBP", "0.9", "2026-03-11"),
                rate("GBP", "USD", "1.4", "2026-03-10")));

        assertThat(found(table, LocalDate.of(2026, 3, 11), "GBP", "USD").factor())
                .isEqualByComparingTo("1.4");
        assertThat(found(table, LocalDate.of(2026, 3, 11), "USD", "GBP").legs()).hasSize(1);
        assertThat(found(table, LocalDate.of(2026, 3, 8), "EUR", "EUR").legs()).isEmpty();
    }

    /** A rate that was typed in spring must not outlive what the bank publishes every day. */
    @Test
    void a_fresher_cross_goes_before_an_older_rate_between_the_two() {
        ExchangeRates table = new ExchangeRates(List.of(
                rate("GBP", "USD", "1.4", "2026-03-09"),
                rate("EUR", "USD", "1.2", "2026-03-10"),
                rate("EUR", "GBP", "0.8", "2026-03-10")));

        // 1.2 / 0.8
        assertThat(found(table, LocalDate.of(2026, 3, 10), "GBP", "USD").factor())
                .isEqualByComparingTo("1.5");
        assertThat(found(table, LocalDate.of(2026, 3, 9), "GBP", "USD").factor())
                .isEqualByComparingTo("1.4");
        assertThat(table.betweenOn(LocalDate.of(2026, 3, 10), Currencies.of("GBP"), Currencies.of("USD"))
                        .orElseThrow()
                        .factor())
                .isEqualByComparingTo("1.4");
    }

    @Test
    void of_two_crosses_the_fresher_one_is_used_and_on_a_tie_the_first_in_the_table() {
        DatedRate eurUsd = rate("EUR", "USD", "1.2", "2026-03-10");
        DatedRate eurJpy = rate("EUR", "JPY", "150", "2026-03-08");
        DatedRate chfUsd = rate("CHF", "USD", "1.1", "2026-03-09");
        DatedRate chfJpy = rate("CHF", "JPY", "165", "2026-03-09");
        DatedRate chfJpyOld = rate("CHF", "JPY", "143", "2026-03-08");
        LocalDate day = LocalDate.of(2026, 3, 10);

        // through the franc: 165 / 1.1; through the euro: 150 / 1.2
        assertThat(found(new ExchangeRates(List.of(eurUsd, eurJpy, chfUsd, chfJpy)), day, "USD", "JPY")
                        .factor())
                .isEqualByComparingTo("150");
        assertThat(found(new ExchangeRates(List.of(eurUsd, eurJpy, chfUsd, chfJpyOld)), day, "USD", "JPY")
                        .factor())
                .isEqualByComparingTo("125");
        assertThat(found(new ExchangeRates(List.of(chfUsd, chfJpyOld, eurUsd, eurJpy)), day, "USD", "JPY")
                        .factor())
                .isEqualByComparingTo("130");
    }

    /**
     * The European Central Bank's reference rate of the lev had five figures; the rate at which it was fixed to the
     * euro has six. A table that holds the legal rate must return that one.
     */
    @Test
    void a_reference_rate_is_not_the_legal_rate() {
        LocalDate euro = LocalDate.of(2026, 1, 1);
        ExchangeRates table = new ExchangeRates(List.of(
                PublishedRates.perEuro("BGN", "1.9558", FEBRUARY, "European Central Bank"),
                PublishedRates.perEuro("BGN", "1.95583", euro, "legal conversion rate")));

        assertThat(on(FEBRUARY, "EUR", "BGN").factor()).isEqualByComparingTo("1.9558");
        assertThat(found(table, euro.minusDays(1), "EUR", "BGN").factor()).isEqualByComparingTo("1.9558");
        assertThat(found(table, euro, "EUR", "BGN").factor()).isEqualByComparingTo("1.95583");
    }

    @Test
    void a_rate_of_zero_is_refused() {
        assertThatThrownBy(() -> rate("EUR", "USD", "0", "2026-03-10"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a rate must be above zero, but EUR to USD was 0");
    }

    @Test
    void the_days_of_the_table_are_those_of_the_bank() {
        assertThat(on(DECEMBER, "EUR", "CNY").legs().get(0).rate().date()).isEqualTo(DECEMBER);
        assertThat(on(DECEMBER, "CNY", "EUR").legs().get(0).inverted()).isTrue();
    }

    private static Conversion on(LocalDate day, String from, String to) {
        return found(ECB, day, from, to);
    }

    private static Conversion found(ExchangeRates table, LocalDate day, String from, String to) {
        return table.on(day, Currencies.of(from), Currencies.of(to)).orElseThrow();
    }

    private static DatedRate rate(String from, String to, String rate, String date) {
        return new DatedRate(
                Currencies.of(from), Currencies.of(to), Figure.of(rate), LocalDate.parse(date), "invented");
    }
}
