package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
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
    void a_command_on_a_workbook_asks_for_it_in_one_line(String command) {
        CommandLineRun run = CommandLineRun.of(command);
        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err())
                .isEqualToIgnoringNewLines(
                        "Name a workbook after the command, as in \"perkilo %s book.xlsx\".".formatted(command));
    }

    @Test
    void without_a_command_all_are_listed() {
        CommandLineRun run = CommandLineRun.of();
        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err())
                .startsWith("No command was given. Choose one from the list below.")
                .contains("check", "cost", "order", "swap", "prices", "rates", "new", "open");
    }

    @ParameterizedTest
    @CsvSource({
        "frob, 'There is no command \"frob\". The commands are check, cost, order, swap, target, compare, prices, rates, new, open.'",
        "cost --frob book.xlsx, 'There is no option --frob for perkilo cost. Type \"perkilo cost --help\" for a list of its options.'",
        "cost --units a book.xlsx, '--units takes whole numbers above zero and below a billion, but was given \"a\". Type them without points, '",
        "cost --units 1.000;5.000 book.xlsx, '--units takes whole numbers above zero and below a billion, but was given \"1.000,5.000\". Type'",
        "cost --units 1;000 book.xlsx, '--units takes whole numbers above zero and below a billion, but was given \"1,000\". Type them'",
        "swap --units 2.5 book.xlsx, '--units takes whole numbers above zero and below a billion, but was given \"2.5\". Type them'",
        "cost --batch-kg 1.000 book.xlsx, '--batch-kg was given \"1.000\", which can mean 1000 or 1. Type \"1000\" or \"1\".'",
        "cost --batch-kg 2.125 book.xlsx, '--batch-kg was given \"2.125\", which can mean 2125 or 2.125. Type \"2125\" or \"2.1250\".'",
        "cost --batch-kg 1;000 book.xlsx, '--batch-kg takes weights above zero and below a billion, but was given \"1,000\". Type decimals with'",
        "cost --batch-kg 0.0 book.xlsx, '--batch-kg takes weights above zero and below a billion, but was given \"0.0\". Type decimals with'",
        "cost --batch-kg 5kg book.xlsx, '--batch-kg takes weights above zero and below a billion, but was given \"5kg\". Type decimals with'",
        "cost --batch-kg 99999999999 book.xlsx, '--batch-kg takes weights above zero and below a billion, but was given \"99'",
        "cost --units 0 book.xlsx, '--units takes whole numbers above zero and below a billion, but was given \"0\".'",
        "cost --date 31.12.2026 book.xlsx, '--date takes a day typed as year-month-day, such as --date 2026-11-20, but was given \"31.12.2026\".'",
        "cost --date 2026-02-30 book.xlsx, '--date was given \"2026-02-30\", which is not a day of the calendar.'",
        "--unit 5 cost book.xlsx, 'There is no option --unit before a command. Type it after the command, as in \"perkilo cost book.xlsx --units\".'",
        "--xyzzyx, 'There is no option --xyzzyx before a command. Type \"perkilo --help\" for a list of the commands.'",
        "new lunch book.xlsx, 'There is no template \"lunch\". Did you mean launch?'",
        "new frob book.xlsx, 'There is no template \"frob\". Type \"perkilo new --list\" for a list of templates.'",
        "prices --quoted 2026-2-30 list.csv, '--quoted takes a day typed as year-month-day, such as --quoted 2026-11-20, but was given \"2026-2-30\".'",
        "cost --out, '--out needs a value, as in \"--out FILE\".'",
        "cost --out a.xlsx --in-place book.xlsx, '--in-place writes into BOOK itself. Leave out --out and --sheet-only.'",
        "check one.xlsx two.xlsx, '\"two.xlsx\" is one argument too many. The command \"perkilo check\" takes only BOOK.'",
        "swap --apply x book.xlsx, '--apply takes the number of a swap'",
        "swap --apply 1 --apply 2 book.xlsx, '--apply can be given only once.'",
        "swap --formula a --formula b book.xlsx, --formula can be given only once.",
        "new minimal, Name a template and the workbook to write",
        "prices, 'Name the price lists to take in, or the folder that they are in. Or use --changes.'",
        "rates --from EUR, --from and --to go together. Type both or neither.",
        "csot book.xlsx, 'There is no command \"csot\". Did you mean cost?'",
        "--debug chekc book.xlsx, 'There is no command \"chekc\". Did you mean check?'",
        "ordr book.xlsx, 'There is no command \"ordr\". Did you mean order?'",
        "price list.csv, 'There is no command \"price\". Did you mean prices?'",
        "help csot, 'There is no command \"csot\". Did you mean cost?'",
        "cost --unit 500 book.xlsx, There is no option --unit for perkilo cost. Did you mean --units?",
        "cost --unit=500 book.xlsx, There is no option --unit for perkilo cost. Did you mean --units?",
        "cost -units 500 book.xlsx, There is no option -units for perkilo cost. Did you mean --units?",
        "check --quite, There is no option --quite for perkilo check. Did you mean --quiet?",
        "-q cost book.xlsx, 'There is no option -q before a command. Type it after the command, as in \"perkilo cost book.xlsx -q\".'",
        "order --time x book.xlsx, '--time takes a whole number of seconds, such as --time 60, but was given \"x\".'",
        "order --reasons x book.xlsx, '--reasons takes a whole number, such as --reasons 1, but was given \"x\".'",
        "order --why 1.5 book.xlsx, '--why takes a whole number of seconds, such as --why 30, but was given \"1.5\".'",
        "swap --changes two book.xlsx, '--changes takes a whole number, such as --changes 2, but was given \"two\".'",
        "cost --units 5k book.xlsx, '--units takes whole numbers above zero and below a billion, but was given \"5k\". Type them'"
    })
    void what_is_wrong_is_said_first(String typed, String said) {
        CommandLineRun run =
                CommandLineRun.of((Object[]) typed.replace(';', ',').split(" "));
        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err()).startsWith(said).hasLineCount(1);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void help_and_version_work_as_words() {
        assertThat(CommandLineRun.of("help")).isEqualTo(CommandLineRun.of("--help"));
        assertThat(CommandLineRun.of("help", "cost")).isEqualTo(CommandLineRun.of("cost", "--help"));
        assertThat(CommandLineRun.of("version")).isEqualTo(CommandLineRun.of("--version"));
        assertThat(CommandLineRun.of("--help").out()).contains("Usage: perkilo", "5   an internal fault");
    }

    @Test
    void another_file_in_place_of_a_command_is_told_where_it_belongs() throws IOException {
        Path list = Files.writeString(folder.resolve("list.csv"), "Item,Price");
        CommandLineRun run = CommandLineRun.of(list);

        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err())
                .isEqualToIgnoringNewLines(
                        "\"%s\" is a file, not a command. Say what to do with it, as in \"perkilo prices %s\"."
                                .formatted(list, list));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "check", "cost", "order", "swap", "prices", "rates", "new", "open"})
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
        assertThat(run.err()).startsWith("The name of a new workbook must end in .xlsx, but \"balm.csv\" was given.");
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
