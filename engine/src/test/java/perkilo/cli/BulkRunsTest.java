package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bulk that would stay in the vessel is named at its cell, and does not keep other runs from being costed. */
final class BulkRunsTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void runs_that_leave_nothing_beyond_the_hold_up_are_named_at_their_cells() throws IOException {
        Path book = book(List.of("Formula", "Batch kg"), List.of("Balm", 7.5), List.of("Balm", 12), List.of("Balm", 4));
        CommandLineRun cost = CommandLineRun.of("cost", book);
        assertThat(cost.exit()).isEqualTo(Exit.PARTLY);
        assertThat(cost.out())
                .startsWith("Not complete: 2 of 3 runs")
                .containsSubsequence("7.5 kg of Balm", "not complete", "12 kg of Balm", "4 kg of Balm", "not complete");
        assertThat(cost.err())
                .contains(
                        "error Runs!A2: 7.5 kg of Balm cannot be made. A batch of 3.75 kg leaves nothing beyond its hold-up of 4 kg.",
                        "error Runs!A4: 4 kg of Balm cannot be made. A batch of 4 kg leaves nothing beyond its hold-up of 4 kg.")
                .doesNotContain("Runs!A3");
        assertThat(folder.resolve("book-costed.xlsx")).exists();

        CommandLineRun check = CommandLineRun.of("check", book);
        assertThat(check.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(check.err()).contains("Runs!A2").contains("Runs!A4");
        assertThat(check.out()).contains("2 errors");
    }

    @Test
    void so_are_those_of_the_command_line() throws IOException {
        Path book = book(List.of("Product", "Units"), List.of("Balm 30", 500));
        CommandLineRun cost = CommandLineRun.of("cost", book, "--batch-kg", "3,10");
        assertThat(cost.exit()).isEqualTo(Exit.PARTLY);
        assertThat(cost.err())
                .contains("3 kg of Balm cannot be made. A batch of 3 kg leaves nothing")
                .doesNotContain("10 kg of Balm");
        assertThat(CommandLineRun.of("swap", book, "--batch-kg", "3").exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(CommandLineRun.of("cost", book, "--batch-kg", "10").exit()).isEqualTo(Exit.DONE);
    }

    @Test
    void and_those_of_a_look_at_price_changes() throws IOException {
        Path book = book(List.of("Product", "Units"), List.of("Balm 30", 500));
        Path prices = Files.createDirectory(folder.resolve("prices"));
        CommandLineRun changes = CommandLineRun.of("prices", "--changes", book, "--prices", prices, "--batch-kg", "3");
        assertThat(changes.exit()).as(changes.err()).isEqualTo(Exit.BAD_INPUT);
        assertThat(changes.err()).contains("3 kg of Balm cannot be made. A batch of 3 kg leaves nothing");
    }

    private Path book(List<?>... runs) throws IOException {
        RawBook book = RawBook.sound()
                .sheet("Batches", List.of("Formula", "Vessel max kg", "Hold-up kg"), List.of("Balm", 7, 4))
                .sheet("Runs", runs);
        return Files.write(folder.resolve("book.xlsx"), book.bytes());
    }
}
