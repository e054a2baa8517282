package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.units.DatedRate;

/** Tables of rates that people and banks write: whose rates they are, for how many units, of which day. */
final class OwnRatesTest {

    @TempDir
    Path folder = Path.of("");

    @Test
    void a_column_for_each_currency_is_not_taken_for_the_central_banks() throws IOException {
        Reading<List<DatedRate>> read = read("Date,GBP,JPY\n2026-11-19,0.8642,161.94\n");

        assertThat(read.value()).isEmpty();
        assertThat(messages(read))
                .containsExactly(
                        "error mine.csv line 1: It is not clear what this rate of GBP, 0.8642, is for. If 1 EUR"
                                + " costs so many GBP, type \"1 EUR =\" in a line above the table. If 1 GBP costs so many EUR, type"
                                + " \"EUR per unit\". Instead of EUR, name the currency that is meant. Or add a column From with its"
                                + " code in each row.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1 EUR =",
                "Rates per EUR",
                "Kurse je 1 EUR",
                "Kurse für 1 Euro",
                "Taux pour 1 EUR",
                "Cours par EUR",
                "Cambi per 1 EUR",
                "Tipos por EUR",
                "Base: EUR",
                "Basiswährung EUR",
                "Devise de base : EUR",
                "Valuta base EUR",
                "Moneda base: EUR",
                "Our rates, 1 € =",
                "Exchange rates for one EUR"
            })
    void a_title_tells_that_rates_are_for_one_unit_of_the_base(String title) throws IOException {
        assertThat(rates(title + "\nDate;GBP;JPY\n2026-11-19;0,8642;161,94\n"))
                .isEqualTo("EUR GBP 0.8642 2026-11-19; EUR JPY 161.94 2026-11-19");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "EUR per unit", "Prices in EUR per unit of foreign currency", "EUR je Einheit", "EUR pro Fremdwährung",
                "EUR par unité", "EUR per unità", "EUR por unidad", "€ per 1 unit"
            })
    void a_title_tells_that_rates_are_in_a_currency(String title) throws IOException {
        assertThat(rates(title + "\nDate;GBP;JPY (100)\n2026-11-19;1,1571;0,6175\n"))
                .isEqualTo("GBP EUR 1.1571 2026-11-19; JPY EUR 0.006175 2026-11-19");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Rates of our bank",
                "Price list in EUR",
                "Rates for November",
                "Week 47",
                "per order",
                "EUR, USD"
            })
    void other_titles_tell_nothing(String title) throws IOException {
        assertThat(read(title + "\nDate;GBP;JPY\n2026-11-19;0,8642;161,94\n").value())
                .isEmpty();
    }

    @Test
    void two_titles_that_contradict_each_other_are_as_none() throws IOException {
        assertThat(read("1 EUR =\n1 USD =\nDate;GBP\n2026-11-19;0,8642\n").findings())
                .extracting(Finding::isError)
                .containsExactly(true);
    }

    @Test
    void a_column_from_or_to_tells_it_in_each_row() throws IOException {
        assertThat(rates("Date,From,GBP,JPY\n2026-11-19,EUR,0.8642,161.94\n2026-11-19,USD,0.76,142.3\n"))
                .isEqualTo("EUR GBP 0.8642 2026-11-19; EUR JPY 161.94 2026-11-19; USD GBP 0.76 2026-11-19; "
                        + "USD JPY 142.3 2026-11-19");
        assertThat(rates("Datum;Nach;GBP;100 JPY\n19.11.2026;EUR;1,1571;0,6175\n"))
                .isEqualTo("GBP EUR 1.1571 2026-11-19; JPY EUR 0.006175 2026-11-19");
    }

    @Test
    void headers_that_name_both_currencies() throws IOException {
        assertThat(rates("Date,USD per EUR,EUR per 100 JPY\n2026-11-19,1.1384,0.6175\n"))
                .isEqualTo("EUR USD 1.1384 2026-11-19; JPY EUR 0.006175 2026-11-19");
    }

    /** 100 yen are 0.6175 euro, so one is 0.006175. */
    @Test
    void units_count() throws IOException {
        assertThat(rates("From,To,Units,Rate,Date\nJPY,EUR,100,0.6175,2026-11-19\nUSD,EUR,,0.8784,2026-11-19\n"))
                .isEqualTo("JPY EUR 0.006175 2026-11-19; USD EUR 0.8784 2026-11-19");
        assertThat(rates("CHF per unit\nDate;Currency;Unit;Rate\n2026-11-19;JPY;100;0,5742\n2026-11-19;EUR;1;0,9299\n"))
                .isEqualTo("JPY CHF 0.005742 2026-11-19; EUR CHF 0.9299 2026-11-19");
        assertThat(rates("CHF je Einheit\nDatum;JPY;EUR\nEinheit;100;1\n2026-11-19;0,5742;0,9299\n"))
                .isEqualTo("JPY CHF 0.005742 2026-11-19; EUR CHF 0.9299 2026-11-19");
        assertThat(messages(read("1 EUR =\nDate;Currency;Units;Rate\n2026-11-19;JPY;100;161,94\n")))
                .containsExactly(
                        "error mine.csv line 3: A rate for 100 units can mean two things here: 100 EUR = 161.94 JPY,"
                                + " or 100 JPY = 161.94 EUR. Use the columns From and To, so that the units are those of From.");
        assertThat(messages(read("From,To,Units,Rate,Date\nJPY,EUR,0,0.6175,2026-11-19\n")))
                .containsExactly("error mine.csv line 2: Units is 0. It must be above zero.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "From;To;Rate;Date;Source",
                "Von;Nach;Kurs;Datum;Quelle",
                "Basiswährung;Zielwährung;Wechselkurs;Stichtag;Quelle",
                "De;À;Taux;Date;Source",
                "Devise de base;Devise cible;Cours;Jour;Source",
                "Da;A;Cambio;Data;Fonte",
                "Valuta base;Valuta di destinazione;Tasso di cambio;Giorno;Fonte",
                "De;A;Tipo de cambio;Fecha;Fuente",
                "Moneda base;Moneda de destino;Tasa;Día;Fuente"
            })
    void headers_in_five_languages(String headers) throws IOException {
        assertThat(rates(headers + "\nEUR;GBP;0,8642;2026-11-19;mine\n")).isEqualTo("EUR GBP 0.8642 2026-11-19");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "19 November 2026",
                "19. November 2026",
                "19 novembre 2026",
                "19 de noviembre de 2026",
                "19/11/2026",
                "19.11.2026",
                "November 19, 2026",
                "19-Nov-2026"
            })
    void dates_in_five_languages(String date) throws IOException {
        assertThat(rates("From;To;Rate;Date\nEUR;GBP;0,8642;" + date + "\n")).isEqualTo("EUR GBP 0.8642 2026-11-19");
    }

    @Test
    void months_with_accents_and_a_word_that_begins_two_of_them() throws IOException {
        assertThat(rates("1 EUR =\nDatum;GBP\n1er août 2026;0,86\n3. März 2026;0,87\n5 février 2026;0,88\n"))
                .isEqualTo("EUR GBP 0.86 2026-08-01; EUR GBP 0.87 2026-03-03; EUR GBP 0.88 2026-02-05");
        assertThat(messages(read("1 EUR =\nDate;GBP\n3 jui 2026;0,86\n")).get(0))
                .contains("\"3 jui 2026\"");
    }

    @Test
    void the_column_tells_the_day_from_the_month() throws IOException {
        assertThat(rates("From,To,Rate,Date\nEUR,GBP,0.86,03/04/2026\nEUR,GBP,0.87,13/04/2026\n"))
                .isEqualTo("EUR GBP 0.86 2026-04-03; EUR GBP 0.87 2026-04-13");
        assertThat(rates("1 EUR =\nDate,GBP\n03/04/2026,0.86\n03/13/2026,0.87\n"))
                .isEqualTo("EUR GBP 0.86 2026-03-04; EUR GBP 0.87 2026-03-13");
        assertThat(rates("1 EUR =\nDatum;GBP\n03.04.2026;0,86\n")).isEqualTo("EUR GBP 0.86 2026-04-03");
        for (String table : List.of(
                "From,To,Rate,Date\nEUR,GBP,0.86,03/04/2026\nEUR,GBP,0.87,04/04/2026\nEUR,GBP,0.87,05/04/2026\n",
                "1 EUR =\nDate,GBP\n03/04/2026,0.86\n05/04/2026,0.87\n")) {
            assertThat(messages(read(table)))
                    .singleElement()
                    .asString()
                    .endsWith(
                            "Date is \"03/04/2026\", and neither it nor the other dates of its column tell the day from the"
                                    + " month. Type the dates as in 2026-11-20.");
        }
    }

    @Test
    void the_column_tells_the_decimal_mark() throws IOException {
        assertThat(rates("From;To;Rate;Date\nEUR;CZK;25,275;2026-11-19\nEUR;GBP;0,8642;2026-11-19\n"))
                .isEqualTo("EUR CZK 25.275 2026-11-19; EUR GBP 0.8642 2026-11-19");
        assertThat(rates("1 EUR =\nDate;CZK;IDR\n2026-11-19;25.275;19,012.34\n"))
                .isEqualTo("EUR CZK 25.275 2026-11-19; EUR IDR 19012.34 2026-11-19");
        assertThat(messages(read("From;To;Rate;Date\nEUR;CZK;25,275;2026-11-19\nEUR;CZK;25,280;2026-11-20\n")))
                .containsExactly(
                        "error mine.csv line 2: Rate is \"25,275\", and neither it nor the other rates tell whether"
                                + " the mark in it is a decimal mark. Type one more decimal, such as a zero at the end.");
    }

    @Test
    void zero_negative_blank_and_twice() throws IOException {
        assertThat(messages(read("1 EUR =\nDate,GBP,USD\n2026-11-18,0.86,\n2026-11-19,0,-1.1\n2026-11-20,n/a,soon\n")))
                .containsExactly(
                        "error mine.csv line 4: The rate of GBP is \"0\". It must be a number above zero.",
                        "error mine.csv line 4: The rate of USD is \"-1.1\". It must be a number above zero.",
                        "error mine.csv line 5: The rate of USD is \"soon\". It must be a number above zero.",
                        "note mine.csv line 3: 2 rates are missing here. For such a day the rate of the last day before it"
                                + " is used.");
        assertThat(messages(read("1 EUR =\nDate,GBP\n2026-11-18,0.86\n2026-11-18,0.87\nSource: our bank,\n")))
                .containsExactly(
                        "error mine.csv line 4: This is a second rate from EUR to GBP on 2026-11-18; the first is in"
                                + " mine.csv line 3. Keep one.",
                        "note mine.csv line 5: 1 row has no rate and is left out.");
        assertThat(messages(read("1 EUR =\nDate,GBP,EUR\n2026-11-18,0.86,1\n2026-11-19,0.86,1.2\n")))
                .containsExactly("error mine.csv line 4: The rate from EUR to EUR is 1.2, but it must be 1. Check which"
                        + " currency the rates are for.");
    }

    /** 1 / 0.8642 = 1.1571 */
    @Test
    void a_rate_the_wrong_way_round_is_an_error_with_both_readings() throws IOException {
        String asked =
                "error mine.csv line 3: The rate from EUR to GBP is 1.1571 on 2026-11-19 but 0.8642 on 2026-11-18"
                        + " (mine.csv line 2). Does 1 EUR cost 1.1571 GBP, or does 1 GBP cost 1.1571 EUR? In the second case type"
                        + " 0.86423, or exchange From and To. If the earlier rate is wrong, correct that one.";
        assertThat(messages(
                        read("From,To,Rate,Date,Source\nEUR,GBP,0.8642,2026-11-18,me\nEUR,GBP,1.1571,2026-11-19,me\n")))
                .containsExactly(asked);
        assertThat(messages(read("From;To;Rate;Date\nEUR;GBP;0,8642;2026-11-18\nEUR;GBP;1,1571;2026-11-19\n")))
                .containsExactly(asked);
    }

    @Test
    void a_rate_far_from_the_one_before_is_a_warning() throws IOException {
        assertThat(messages(read(
                        "1 EUR =\nDate,JPY\n2026-11-20,1630\n2026-11-19,162\n2026-11-18,161.94\n2026-11-21,163\n")))
                .containsExactly(
                        "warning mine.csv line 3: The rate from EUR to JPY is 1630 on 2026-11-20, which is 906 %"
                                + " more than the 162 of 2026-11-19 (mine.csv line 4). 1 later rate of the pair differs as much from"
                                + " the one before. Check whether it is right.");
        assertThat(messages(read("1 EUR =\nDate,USD\n2026-11-19,1.00\n2026-11-20,1.20\n")))
                .isEmpty();
        assertThat(messages(read("1 EUR =\nDate,USD\n2026-11-19,1.00\n2026-11-20,1.21\n")))
                .hasSize(1);
    }

    private Reading<List<DatedRate>> read(String text) throws IOException {
        return new RatesReader().read(Files.writeString(folder.resolve("mine.csv"), text));
    }

    private String rates(String text) throws IOException {
        Reading<List<DatedRate>> read = read(text);
        assertThat(messages(read)).isEmpty();
        return read.value().stream()
                .map(rate -> rate.from().getCurrencyCode() + " " + rate.to().getCurrencyCode() + " "
                        + rate.rate().value().stripTrailingZeros().toPlainString() + " " + rate.date())
                .collect(Collectors.joining("; "));
    }

    private static List<String> messages(Reading<List<DatedRate>> read) {
        return read.findings().stream().map(Finding::toString).toList();
    }
}
