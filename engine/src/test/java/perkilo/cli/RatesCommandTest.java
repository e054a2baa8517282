package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.rates.Bank;
import perkilo.rates.BankFiles;

/** {@code perkilo rates}, on files as the European Central Bank published them. */
final class RatesCommandTest {

    @TempDir
    private Path folder = Path.of("");

    private Path table = Path.of("");

    @BeforeEach
    void table() {
        table = folder.resolve("rates.csv");
    }

    @Test
    void the_banks_files_become_a_dated_table() throws IOException {
        CommandLineRun day = CommandLineRun.of("rates", BankFiles.day(), "-o", table);
        CommandLineRun more = CommandLineRun.of("rates", BankFiles.ninetyDays(), "-o", table);

        assertThat(day.exit()).isZero();
        assertThat(day.out()).contains("30 rates, 30 new").contains("30 rates from 2023-02-21 to 2023-02-21");
        // 62 published days: the first is 2022-11-24
        assertThat(more.out()).contains(" rates, ").contains("rates from 2022-11-24 to 2023-02-21");
        assertThat(more.err()).isEmpty();
        assertThat(Files.readAllLines(table)).contains("EUR,GBP,0.87925,2023-02-21,European Central Bank");
    }

    /** 21 February 2023 was a Tuesday; the rates of Sunday the 19th are those of Friday the 17th. */
    @ParameterizedTest(name = "{0} {1} to {2}")
    @CsvSource({
        "2023-02-21, USD, EUR, 1 USD = 0.93773443 EUR on 2023-02-21",
        "2023-02-21, EUR, JPY, 1 EUR = 143.76 JPY on 2023-02-21",
        "2023-02-21, gbp, usd, 1 GBP = 1.2128519 USD on 2023-02-21",
        "2023-02-19, USD, EUR, '1 USD = 0.94117647 EUR on 2023-02-17, the last day with a rate on or before 2023-02-19'"
    })
    void the_rate_of_a_day_is_told_with_the_day_that_it_is_of(String date, String from, String to, String sentence) {
        CommandLineRun.of("rates", BankFiles.ninetyDays(), "-o", table);

        CommandLineRun asked = CommandLineRun.of("rates", "-o", table, "--date", date, "--from", from, "--to", to);

        assertThat(asked.exit()).isZero();
        assertThat(asked.out().lines().findFirst().orElseThrow()).isEqualTo(sentence);
        assertThat(asked.out()).contains("European Central Bank");
    }

    @Test
    void a_file_of_the_bank_can_be_asked_as_it_is() {
        CommandLineRun asked = CommandLineRun.of(
                "rates", "--rates", BankFiles.day(), "--date", "2023-02-25", "--from", "CHF", "--to", "EUR");

        assertThat(asked.out()).startsWith("1 CHF = 1.0149193 EUR on 2023-02-21");
    }

    @Test
    void an_old_rate_is_a_warning_and_no_rate_is_an_error() {
        CommandLineRun old = CommandLineRun.of(
                "rates", "--rates", BankFiles.day(), "--date", "2023-03-25", "--from", "EUR", "--to", "USD");
        assertThat(old.exit()).isZero();
        assertThat(old.err()).contains("The rate from EUR to USD is 32 days older than 2023-03-25");

        CommandLineRun none = CommandLineRun.of(
                "rates", "--rates", BankFiles.day(), "--date", "2023-02-20", "--from", "EUR", "--to", "USD");
        assertThat(none.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(none.err())
                .isEqualToIgnoringNewLines("error eurofxref-daily.xml: There is no rate from EUR to USD on or before"
                        + " 2023-02-20. The table begins on 2023-02-21.");
    }

    @Test
    void the_answer_as_json() throws IOException {
        CommandLineRun run = CommandLineRun.of(
                "rates",
                BankFiles.day(),
                "-o",
                table,
                "--from",
                "JPY",
                "--to",
                "EUR",
                "--date",
                "2023-02-22",
                "--json");

        JsonNode answer = new ObjectMapper().readTree(run.out());
        assertThat(answer.at("/files/0/added").asInt()).isEqualTo(30);
        // 1 / 143.76
        assertThat(answer.at("/rate/rate").asText()).isEqualTo("0.00695603784084585");
        assertThat(answer.at("/rate/rateDate").asText()).isEqualTo("2023-02-21");
        assertThat(answer.at("/rate/legs/0/inverted").asBoolean()).isTrue();
        assertThat(answer.at("/messages").isEmpty()).isTrue();
    }

    @Test
    void a_bad_file_changes_nothing() throws IOException {
        CommandLineRun.of("rates", BankFiles.day(), "-o", table);
        String before = Files.readString(table);
        Path bad = Files.writeString(
                folder.resolve("bad.csv"), "From,To,Rate,Date\nEUR,USD,2,2026-03-09\nEUR,GBP,soon,2026-03-09\n");

        CommandLineRun run = CommandLineRun.of("rates", bad, "-o", table);

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("error bad.csv line 3: Rate").contains("nothing was written");
        assertThat(table).hasContent(before);
    }

    @Test
    void without_a_network_a_fetch_is_one_sentence_and_nothing_is_written() {
        Bank nobody = new Bank(URI.create("http://127.0.0.1:1/"), Duration.ofSeconds(1));

        CommandLineRun run = CommandLineRun.ofCommand(new RatesCommand(nobody), "--fetch", "-o", table);

        assertThat(run.exit()).isEqualTo(Exit.FILE);
        assertThat(run.err())
                .startsWith("The address http://127.0.0.1:1/eurofxref-hist-90d.xml cannot be reached: ")
                .hasLineCount(1);
        assertThat(table).doesNotExist();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "--from USD | --from and --to go together. Type both or neither.",
                "--date 2026-01-01 | --date asks for the rate of a day, so it needs --from and --to as well.",
                "-q | Name a file to take in, get one with --fetch, or ask for a rate with --from and --to.",
                "--from USD --to DOLLAR | --to takes an ISO 4217 code such as USD, but was given \"DOLLAR\".",
                "--fetch yesterday | --fetch takes day, 90-days or all, but was given \"yesterday\".",
                "--from USD --to EUR -o no-such.csv | There is no table no-such.csv yet. Take a file in first"
            })
    void what_cannot_be_meant_is_wrong_usage(String arguments, String message) {
        Object[] words = ("rates " + arguments).split(" ");
        CommandLineRun run = CommandLineRun.of(words);

        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err()).startsWith(message);
    }
}
