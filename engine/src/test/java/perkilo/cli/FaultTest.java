package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import perkilo.desk.CostedBook;
import perkilo.desk.PortfolioAnswer;
import perkilo.report.portfolio.PortfolioBook;
import perkilo.xlsx.write.Written;

/** What fails inside is told apart from files that cannot be read, with an exit code of its own. */
final class FaultTest {

    private static final String REPORT = ". Run it again with --debug and report what it prints.";

    @Test
    void an_exception_is_a_fault_and_asks_for_a_report() {
        CommandLineRun run = CommandLineRun.ofCommand(new Failing(new IllegalStateException("no such case")));

        assertThat(run.exit()).isEqualTo(Exit.FAULT).isEqualTo(5);
        assertThat(run.err())
                .isEqualToIgnoringNewLines("This is a fault in Perkilo, not in your file:"
                        + " java.lang.IllegalStateException: no such case" + REPORT);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void an_error_of_the_language_is_a_fault_too() {
        CommandLineRun run = CommandLineRun.ofCommand(new Failing(new AssertionError("no such case")));

        assertThat(run.exit()).isEqualTo(Exit.FAULT);
        assertThat(run.err())
                .contains("java.lang.AssertionError: no such case" + REPORT)
                .hasLineCount(1);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void debug_shows_where() {
        CommandLineRun run =
                CommandLineRun.ofCommand(new Failing(new IllegalStateException("no such case")), "--debug");

        assertThat(run.exit()).isEqualTo(Exit.FAULT);
        assertThat(run.err())
                .contains("no such case", "at perkilo.cli.FaultTest")
                .doesNotContain(REPORT);
    }

    @Test
    void a_file_is_not_a_fault() {
        IOException told = new IOException("book.xlsx cannot be read.");

        assertThat(CommandLineRun.ofCommand(new Failing(told)))
                .isEqualTo(CommandLineRun.ofCommand(new Failing(new UncheckedIOException(told))))
                .isEqualTo(new CommandLineRun(Exit.FILE, "", "book.xlsx cannot be read." + System.lineSeparator()));
    }

    @Test
    void too_little_memory_is_not_a_fault() {
        CommandLineRun run = CommandLineRun.ofCommand(new Failing(new OutOfMemoryError("heap")));

        assertThat(run.exit()).isEqualTo(Exit.FILE);
        assertThat(run.err())
                .startsWith("There is not enough memory for these files. Give Java more")
                .hasLineCount(1);
    }

    @Test
    void in_a_portfolio_a_fault_goes_before_errors() {
        assertThat(exit(List.of(costed()))).isEqualTo(Exit.DONE);
        assertThat(exit(List.of(costed(), notCosted(false)))).isEqualTo(Exit.PARTLY);
        assertThat(exit(List.of(notCosted(false)))).isEqualTo(Exit.BAD_INPUT);
        assertThat(exit(List.of(notCosted(false), notCosted(true), costed()))).isEqualTo(Exit.FAULT);
    }

    private static int exit(List<CostedBook<String>> books) {
        Written summary = new Written(Path.of("portfolio-costed.xlsx"), Map.of(), null);
        return PortfolioWords.exit(new PortfolioAnswer.Done<>(books, List.of(), summary));
    }

    private static CostedBook<String> costed() {
        return new CostedBook<>(Path.of("a.xlsx"), shown(), List.of(), "view", null, false);
    }

    private static CostedBook<String> notCosted(boolean isFaulty) {
        return new CostedBook<>(Path.of("b.xlsx"), shown(), List.of(), null, null, isFaulty);
    }

    private static PortfolioBook shown() {
        return PortfolioBook.failed("book.xlsx", "book.xlsx", List.of());
    }

    /** A command that fails. */
    private static final class Failing extends Command {

        private final Throwable failure;

        Failing(Throwable failure) {
            super("fail", "Fails.");
            this.failure = failure;
        }

        @Override
        public Integer call() throws IOException {
            if (failure instanceof IOException file) {
                throw file;
            }
            if (failure instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) failure;
        }
    }
}
