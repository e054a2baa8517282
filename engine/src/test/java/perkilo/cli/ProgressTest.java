package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** One line that is written over itself on a terminal, and nothing elsewhere. */
final class ProgressTest {

    private final StringWriter err = new StringWriter();

    @Test
    void on_a_terminal_the_line_counts_and_goes_away() {
        Progress progress = new Progress(new PrintWriter(err), true, "3 books");
        progress.step();
        progress.step();
        progress.end();

        assertThat(err).hasToString("\r1 of 3 books\r2 of 3 books\r" + " ".repeat(12) + "\r");
    }

    @Test
    void elsewhere_nothing_is_printed() {
        Progress progress = new Progress(new PrintWriter(err), false, "3 books");
        progress.step();
        progress.end();

        assertThat(err).hasToString("");
    }
}
