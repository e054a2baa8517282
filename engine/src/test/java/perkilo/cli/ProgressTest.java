package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import perkilo.desk.Stage;

/** One line that is written over itself on a terminal, and nothing elsewhere. */
final class ProgressTest {

    private final StringWriter err = new StringWriter();

    @Test
    void on_a_terminal_the_line_counts_and_goes_away() {
        try (Progress progress = new Progress(new PrintWriter(err), true)) {
            progress.at(Stage.BOOKS, 1, 3);
            progress.at(Stage.BOOKS, 2, 3);
        }

        assertThat(err).hasToString("\r1 of 3 books\r2 of 3 books\r" + " ".repeat(12) + "\r");
    }

    @Test
    void a_shorter_line_covers_the_one_before() {
        try (Progress progress = new Progress(new PrintWriter(err), true)) {
            progress.at(Stage.COSTING, 10, 10);
            progress.at(Stage.BOOKS, 1, 3);
        }

        assertThat(err).hasToString("\r10 of 10 runs costed\r1 of 3 books        \r" + " ".repeat(12) + "\r");
    }

    @Test
    void what_nobody_has_counted_in_advance_is_counted_alone() {
        try (Progress progress = new Progress(new PrintWriter(err), true)) {
            progress.at(Stage.ASKING, 7, 0);
        }

        assertThat(err.toString()).startsWith("\r7 questions about the plan\r");
    }

    @Test
    void elsewhere_nothing_is_printed() {
        try (Progress progress = new Progress(new PrintWriter(err), false)) {
            progress.at(Stage.BOOKS, 1, 3);
        }

        assertThat(err).hasToString("");
    }

    @Test
    void what_is_done_at_once_needs_no_line() {
        try (Progress progress = new Progress(new PrintWriter(err))) {
            progress.at(Stage.BOOKS, 1, 3);
        }

        assertThat(err).hasToString("");
    }

    @Test
    void it_stops_nothing() {
        try (Progress progress = new Progress(new PrintWriter(err))) {
            assertThat(progress.isCancelled()).isFalse();
        }
    }
}
