package perkilo.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.origin.Finding;
import perkilo.rates.Bank;
import perkilo.reading.RatesReader;
import perkilo.units.Currencies;

/** Taking exchange rates in, fetching them and looking one up. */
final class RatesTest {

    /** An address that nothing answers at. */
    private static final Bank NOBODY = new Bank(URI.create("http://127.0.0.1:1/"), Duration.ofSeconds(5));

    @TempDir
    private Path folder = Path.of("");

    @Test
    void rates_are_added_to_the_table_once() throws IOException {
        Path file = file("rates.csv", "1.25");

        RatesAnswer first = take(Watch.NONE, file);
        RatesAnswer second = take(Watch.NONE, file);

        assertThat(first).isInstanceOfSatisfying(RatesAnswer.Taken.class, taken -> {
            assertThat(taken.changed()).isTrue();
            assertThat(taken.rates()).hasSize(1);
            assertThat(taken.files()).singleElement().satisfies(one -> {
                assertThat(one.file()).isEqualTo(file.toString());
                assertThat(one.taken().added()).isEqualTo(1);
            });
        });
        assertThat(second)
                .isInstanceOfSatisfying(
                        RatesAnswer.Taken.class,
                        taken -> assertThat(taken.changed()).isFalse());
    }

    @Test
    void a_bad_file_changes_nothing() throws IOException {
        RatesAnswer answer = take(Watch.NONE, file("good.csv", "1.25"), file("bad.csv", "soon"));

        assertThat(answer).isInstanceOf(RatesAnswer.BadInput.class);
        assertThat(table()).doesNotExist();
    }

    /** 1 / 1.25 = 0.8 */
    @Test
    void a_rate_far_from_the_tables_is_asked_about() throws IOException {
        take(Watch.NONE, file("one.csv", "1.25"));
        Path inverted = Files.writeString(folder.resolve("two.csv"), "From,To,Rate,Date\nEUR,USD,0.8,2026-11-20\n");
        Path far = Files.writeString(folder.resolve("three.csv"), "From,To,Rate,Date\nEUR,USD,12.6,2026-11-20\n");

        RatesAnswer turned = take(Watch.NONE, inverted);
        assertThat(turned)
                .isInstanceOfSatisfying(
                        RatesAnswer.Waits.class,
                        waits -> assertThat(waits.open()).isEqualTo(1));
        assertThat(turned.findings())
                .extracting(Finding::toString)
                .first()
                .asString()
                .startsWith(
                        "error two.csv line 2: The rate from EUR to USD is 0.8 on 2026-11-20 but 1.25 on 2026-11-19 (table.csv line 2)."
                                + " Does 1 EUR cost 0.8 USD, or does 1 USD cost 0.8 EUR? In the second case type 1.25,");

        RatesAnswer jump = take(Watch.NONE, far);
        assertThat(jump)
                .isInstanceOfSatisfying(
                        RatesAnswer.Waits.class,
                        waits -> assertThat(waits.open()).isEqualTo(1));
        assertThat(jump.findings())
                .extracting(Finding::toString)
                .contains(
                        "warning three.csv line 2: The rate from EUR to USD is 12.6 on 2026-11-20, which is 908 % more"
                                + " than the 1.25 of 2026-11-19 (table.csv line 2). Check whether it is right.");
        assertThat(new RatesReader().read(table()).value()).hasSize(1);
    }

    /** Croatia took the euro over on 2023-01-01, at 7.53450 kuna. */
    @Test
    void rates_of_a_replaced_currency_are_used_up_to_its_last_day() throws IOException {
        Path file = Files.writeString(
                folder.resolve("kuna.csv"),
                "From,To,Rate,Date\nEUR,HRK,7.5365,2022-12-30\nEUR,HRK,7.6,2023-01-02\nHRK,EUR,0.1327228,2023-01-03\n");

        assertThat(take(Watch.NONE, file).findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "warning kuna.csv line 3: On 2023-01-02 the euro has replaced HRK, so rates of HRK from then"
                                + " on are not used. The rate is 7.53450 HRK for 1 EUR, fixed by law (Council Regulation (EC) No"
                                + " 2866/98, Article 1, as amended in 2022).");
        assertThat(kuna("2022-12-31")).isEqualByComparingTo("7.5365");
        assertThat(kuna("2023-01-01")).isEqualByComparingTo("7.53450");
        assertThat(kuna("2023-06-01")).isEqualByComparingTo("7.53450");
    }

    private BigDecimal kuna(String day) throws IOException {
        RateAnswer answer = new LookUpRate()
                .look(new RateRequest(table(), Currencies.of("EUR"), Currencies.of("HRK"), LocalDate.parse(day)));
        assertThat(answer).isInstanceOf(RateAnswer.Found.class);
        return ((RateAnswer.Found) answer).conversion().factor();
    }

    @Test
    void cancelled_between_two_files_nothing_is_written() throws IOException {
        Seen watch = Seen.cancelAfter(1);
        RatesAnswer answer = take(watch, file("one.csv", "1.25"), file("two.csv", "1.25"));

        assertThat(answer).isInstanceOf(RatesAnswer.Stopped.class);
        assertThat(watch.of(Stage.TAKING_IN)).containsExactly("0 of 2", "1 of 2");
        assertThat(table()).doesNotExist();
    }

    @Test
    void a_bank_that_does_not_answer_is_a_sentence() {
        assertThatThrownBy(() -> new TakeInRates(NOBODY)
                        .take(new RatesRequest(table(), List.of(), Bank.Span.DAY, false), Watch.NONE))
                .isInstanceOf(IOException.class)
                .hasMessageStartingWith("The address http://127.0.0.1:1/eurofxref-daily.xml cannot be reached: ");
    }

    @Test
    void the_last_rate_on_or_before_a_day_holds() throws IOException {
        take(Watch.NONE, file("rates.csv", "1.25"));

        assertThat(look("2026-11-20")).isInstanceOfSatisfying(RateAnswer.Found.class, found -> {
            assertThat(found.conversion().factor()).isEqualByComparingTo("1.25");
            assertThat(found.findings()).isEmpty();
        });
        assertThat(look("2027-11-20").findings())
                .singleElement()
                .matches(finding -> finding.text().contains("days older than 2027-11-20"));
        assertThat(look("2026-11-01")).isInstanceOf(RateAnswer.None.class);
        assertThat(look("2026-11-01").findings())
                .singleElement()
                .matches(finding -> finding.text()
                        .equals("There is no rate from EUR to USD on or before 2026-11-01. The table begins on"
                                + " 2026-11-19."));
    }

    private RatesAnswer take(Watch watch, Path... files) throws IOException {
        return new TakeInRates(NOBODY).take(RatesRequest.ofFiles(table(), List.of(files)), watch);
    }

    private RateAnswer look(String day) throws IOException {
        return new LookUpRate()
                .look(new RateRequest(table(), Currencies.of("EUR"), Currencies.of("USD"), LocalDate.parse(day)));
    }

    private Path table() {
        return folder.resolve("table.csv");
    }

    private Path file(String name, String rate) throws IOException {
        return Files.writeString(folder.resolve(name), "From,To,Rate,Date\nEUR,USD," + rate + ",2026-11-19\n");
    }
}
