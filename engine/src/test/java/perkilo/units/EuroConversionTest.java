package perkilo.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conversion at rates and by rules that the law fixes.
 *
 * <p>Rates: Council Regulation (EC) No 2866/98, Article 1, and its successors ({@code euro-fixed-rates.csv}). Rules:
 * Council Regulation (EC) No 1103/97, Article 4 (no inverse rates; from one legacy currency to another through the
 * euro) and Article 5 (to the nearest sub-unit, an exact half upwards).
 */
final class EuroConversionTest {

    private static final ExchangeRates RATES = ExchangeRates.NONE;
    private static final LocalDate DAY = LocalDate.of(2026, 1, 1);

    /** 500 and 1,000 tolars: worked examples of the Slovenian government's changeover page. */
    @ParameterizedTest(name = "{0} {1} is {2} EUR")
    @CsvSource({
        "500, SIT, 2.09",
        "1000, SIT, 4.17",
        // 1,000,000 / 6.55957; a rate inverted to six significant figures would give 152,449.00
        "1000000, FRF, 152449.02",
        // 100 / 1.95583
        "100, DEM, 51.13",
        // 10,000 / 1936.27
        "10000, ITL, 5.16"
    })
    void legacy_currency_to_euro(String amount, String currency, String euros) {
        assertThat(converted(amount, currency, "EUR")).isEqualTo(euros);
    }

    /**
     * Article 4(4): through the euro, and the amount in euro rounded to not less than three decimals. The engine does
     * not round it at all; at three decimals the first would be 335.38.
     */
    @ParameterizedTest(name = "{0} {1} is {3} {2}")
    @CsvSource({"100, DEM, FRF, 335.39", "1000, ITL, DEM, 1.01", "1000, FRF, ESP, 25365", "250, NLG, IEP, 89.35"})
    void one_legacy_currency_to_another_goes_through_the_euro(String amount, String from, String to, String expected) {
        assertThat(conversion(from, to).legs()).hasSize(2);
        assertThat(converted(amount, from, to)).isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"24.784, 24.78", "24.785, 24.79", "22.224, 22.22", "22.225, 22.23", "22.226, 22.23"})
    void an_exact_half_cent_goes_up(String amount, String rounded) {
        assertThat(Currencies.invoiced(new BigDecimal(amount), Currencies.of("EUR")))
                .isEqualTo(new BigDecimal(rounded));
    }

    @Test
    void every_rate_converts_its_own_amount_to_exactly_one_euro() {
        EuroFixedRates.rows()
                .forEach((code, row) -> assertThat(conversion(code, "EUR")
                                .convert(row.unitsPerEuro().value()))
                        .as(code)
                        .isEqualByComparingTo("1"));
    }

    /** One euro in a legacy currency is the rate itself, all six significant figures of it. */
    @Test
    void a_rate_is_used_both_ways_and_never_rounded() {
        EuroFixedRates.rows()
                .forEach((code, row) -> assertThat(conversion("EUR", code).factor())
                        .as(code)
                        .isEqualByComparingTo(row.unitsPerEuro().value()));
    }

    /**
     * Six significant figures (Regulation (EC) No 1103/97, Article 4(1)), a source, and a code that amounts can have.
     */
    @Test
    void each_row_of_the_file_can_be_used() {
        List<String> faults = new ArrayList<>();
        EuroFixedRates.rows().forEach((code, row) -> {
            BigDecimal rate = row.unitsPerEuro().value();
            if (Currencies.find(code).isEmpty()) {
                faults.add(code + " is no currency that amounts can be in, so its rate is never used");
            }
            if (rate.precision() != 6) {
                faults.add("the rate of %s, %s, has not the six significant figures of the law".formatted(code, rate));
            }
            if (row.firstDay().isBefore(LocalDate.of(1999, 1, 1))) {
                faults.add("the first day of the euro in place of %s is before there was one".formatted(code));
            }
            if (row.source().isBlank()) {
                faults.add("the rate of " + code + " has no source");
            }
        });
        assertThat(faults).isEmpty();
        assertThat(EuroFixedRates.rows()).hasSize(21);
    }

    /** The kuna was replaced on 1 January 2023. */
    @Test
    void before_its_first_day_a_currency_has_the_rate_of_the_table() {
        LocalDate eve = LocalDate.of(2022, 12, 31);
        ExchangeRates table = new ExchangeRates(List.of(PublishedRates.perEuro("HRK", "7.5365", eve, "a table")));
        CurrencyUnit kuna = Currencies.of("HRK");
        CurrencyUnit euro = Currencies.of("EUR");

        assertThat(ExchangeRates.NONE.on(eve, euro, kuna)).isEmpty();
        assertThat(table.on(eve, euro, kuna).orElseThrow().factor()).isEqualByComparingTo("7.5365");
        assertThat(table.on(eve.plusDays(1), euro, kuna).orElseThrow().factor()).isEqualByComparingTo("7.53450");
    }

    /** USD 1.10 for a euro: 195.583 marks are 100 euros, and those are 110 dollars. Fixed rates never get old. */
    @Test
    void a_currency_outside_the_euro_is_reached_through_it() {
        ExchangeRates table = new ExchangeRates(List.of(PublishedRates.perEuro("USD", "1.10", DAY, "a table")));
        Conversion marks =
                table.on(DAY, Currencies.of("DEM"), Currencies.of("USD")).orElseThrow();

        assertThat(marks.convert(new BigDecimal("195.583"))).isEqualByComparingTo("110");
        assertThat(marks.ageInDays(DAY)).isZero();
        assertThat(table.on(DAY, Currencies.of("USD"), Currencies.of("DEM"))
                        .orElseThrow()
                        .convert(new BigDecimal("110")))
                .isEqualByComparingTo("195.583");
    }

    private static Conversion conversion(String from, String to) {
        return RATES.on(DAY, Currencies.of(from), Currencies.of(to)).orElseThrow();
    }

    private static String converted(String amount, String from, String to) {
        CurrencyUnit target = Currencies.of(to);
        BigDecimal exact = conversion(from, to).convert(new BigDecimal(amount));
        return Currencies.invoiced(exact, target).toPlainString();
    }
}
