package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is typed wrong is told as such, with the exit code for it. */
class UsageTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"check", "cost", "order", "swap"})
    void a_command_on_a_workbook_asks_for_it(String command) {
        CommandLineRun run = CommandLineRun.of(command);
        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err()).startsWith("Missing required parameter: 'BOOK").contains("Usage: perkilo " + command);
    }

    @Test
    void without_a_command_all_are_listed() {
        CommandLineRun run = CommandLineRun.of();
        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err()).contains("check", "cost", "order", "swap", "prices", "rates", "new");
    }

    @ParameterizedTest
    @CsvSource({
        "frob, Unmatched argument",
        "cost --frob book.xlsx, Unknown option: '--frob'",
        "cost --units a book.xlsx, '--units takes whole numbers above zero and below a billion, but was given a; type them without points, '",
        "cost --units 1.000;5.000 book.xlsx, '--units takes whole numbers above zero and below a billion, but was given 1.000,5.000; type'",
        "cost --units 1;000 book.xlsx, '--units takes whole numbers above zero and below a billion, but was given 1,000; type them'",
        "swap --units 2.5 book.xlsx, '--units takes whole numbers above zero and below a billion, but was given 2.5; type them'",
        "cost --batch-kg 1.000 book.xlsx, '--batch-kg was given 1.000, which can mean 1000 or 1; type it as 1000 or 1'",
        "cost --batch-kg 2.125 book.xlsx, '--batch-kg was given 2.125, which can mean 2125 or 2.125; type it as 2125 or 2.1250'",
        "cost --batch-kg 1;000 book.xlsx, '--batch-kg takes weights above zero and below a billion, but was given 1,000; type decimals with'",
        "cost --batch-kg 0.0 book.xlsx, '--batch-kg takes weights above zero and below a billion, but was given 0.0; type decimals with'",
        "cost --batch-kg 5kg book.xlsx, '--batch-kg takes weights above zero and below a billion, but was given 5kg; type decimals with'",
        "cost --batch-kg 99999999999 book.xlsx, '--batch-kg takes weights above zero and below a billion, but was given 99'",
        "cost --units 0 book.xlsx, '--units takes whole numbers above zero and below a billion, but was given 0'",
        "cost --date 31.12.2026 book.xlsx, 'Invalid value for option ''--date'': 31.12.2026 is not a day as expected; type it as YYYY-MM-DD'",
        "prices --quoted 2026-2-30 list.csv, 'Invalid value for option ''--quoted'': 2026-2-30 is not a day as expected; type it as'",
        "cost --out, Missing required parameter for option '--out'",
        "cost --out a.xlsx --in-place book.xlsx, '--in-place writes into BOOK itself'",
        "check one.xlsx two.xlsx, Unmatched argument",
        "swap --apply x book.xlsx, '--apply takes the number of a swap'",
        "swap --apply 1 --apply 2 book.xlsx, '--apply should be specified only once'",
        "swap --formula a --formula b book.xlsx, option '--formula' (NAME) should be specified only once",
        "new minimal, name a template and the workbook to write",
        "prices, name the price lists to take in",
        "rates --from EUR, --from and --to go together"
    })
    void what_is_wrong_is_said_first(String typed, String said) {
        CommandLineRun run =
                CommandLineRun.of((Object[]) typed.replace(';', ',').split(" "));
        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err()).startsWith(said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "check", "cost", "order", "swap", "prices", "rates", "new"})
    void help_and_version_are_had_with_every_command(String command) {
        for (String option : List.of("--help", "-h", "--version", "-V")) {
            CommandLineRun run = command.isEmpty() ? CommandLineRun.of(option) : CommandLineRun.of(command, option);
            assertThat(run.exit()).as(option).isEqualTo(Exit.DONE);
            assertThat(run.out())
                    .as(option)
                    .contains(option.equalsIgnoreCase("-v") || option.length() > 6 ? "Perkilo" : "Usage: perkilo");
        }
    }

    @Test
    void a_new_workbook_is_called_like_one() {
        CommandLineRun run = CommandLineRun.of("new", "minimal", folder.resolve("balm.csv"));
        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err()).startsWith("a new workbook's name ends in .xlsx, but balm.csv was given");
        assertThat(folder.resolve("balm.csv")).doesNotExist();
    }

    @Test
    void a_flag_of_the_whole_tool_may_stand_before_and_behind_the_command() {
        Path missing = folder.resolve("missing.xlsx");
        CommandLineRun before = CommandLineRun.of("--debug", "cost", missing);
        CommandLineRun behind = CommandLineRun.of("cost", "--debug", missing);
        CommandLineRun without = CommandLineRun.of("cost", missing);
        assertThat(before.exit()).isEqualTo(Exit.FILE);
        assertThat(before.err()).contains("missing.xlsx does not exist", "at perkilo.");
        assertThat(behind.err()).contains("missing.xlsx does not exist", "at perkilo.");
        assertThat(without.err()).contains("missing.xlsx does not exist").doesNotContain("at perkilo.");
    }
}
