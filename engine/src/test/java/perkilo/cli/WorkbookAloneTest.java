package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code perkilo book.xlsx}: a check, then the costs. */
final class WorkbookAloneTest {

    private static final String DAY = "2026-11-20";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void it_is_checked_and_costed_and_nothing_is_said_twice() {
        Path book = template("launch");
        CommandLineRun check = CommandLineRun.of("check", book, "--date", DAY);
        CommandLineRun cost = CommandLineRun.of("cost", book, "--date", DAY);
        CommandLineRun both = CommandLineRun.of(book, "--date", DAY);

        assertThat(both.exit()).isEqualTo(Exit.DONE);
        assertThat(both.out()).isEqualTo(check.out() + cost.out());
        assertThat(both.err().lines())
                .doesNotHaveDuplicates()
                .containsAll(cost.err().lines().toList());
        assertThat(folder.resolve("launch-costed.xlsx")).exists();
    }

    @Test
    void options_of_the_costs_hold() throws IOException {
        Path book = template("minimal");
        CommandLineRun run = CommandLineRun.of(
                "--debug", book, "--units", "700", "--json", "-o", folder.resolve("there.xlsx"), "--date", DAY);

        assertThat(run.exit()).isEqualTo(Exit.DONE);
        JsonNode answer = new ObjectMapper().readTree(run.out());
        assertThat(answer.at("/runs/0/units").asText()).isEqualTo("700");
        assertThat(folder.resolve("there.xlsx")).exists();
    }

    @Test
    void a_book_with_errors_is_checked_alone() throws IOException {
        Path book = Files.write(
                folder.resolve("book.xlsx"),
                RawBook.sound().set("Offers", "F2", RawBook.text("soon")).bytes());
        CommandLineRun check = CommandLineRun.of("check", book);
        CommandLineRun both = CommandLineRun.of(book);

        assertThat(check.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(both.exit()).isEqualTo(Exit.PARTLY);
        assertThat(both.out()).startsWith(check.out()).contains("not complete: Shea butter");
        assertThat(both.err()).isEqualTo(check.err());
        assertThat(folder.resolve("book-costed.xlsx")).exists();
    }

    @Test
    void several_are_a_portfolio() {
        CommandLineRun run = CommandLineRun.of(template("launch"), template("minimal"), "--date", DAY);

        assertThat(run.exit()).isEqualTo(Exit.DONE);
        assertThat(folder.resolve("portfolio-costed.xlsx")).exists();
    }

    @Test
    void one_that_is_not_there_is_a_file_that_cannot_be_read() {
        CommandLineRun run = CommandLineRun.of(folder.resolve("missing.xlsx"));

        assertThat(run.exit()).isEqualTo(Exit.FILE);
        assertThat(run.err()).contains("missing.xlsx does not exist");
    }

    private Path template(String name) {
        Path book = folder.resolve(name + ".xlsx");
        assertThat(CommandLineRun.of("new", name, book).exit()).isEqualTo(Exit.DONE);
        return book;
    }
}
