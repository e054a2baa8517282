package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.page.PageServer;
import perkilo.page.Visitor;

/** The command that serves the page. */
final class OpenCommandTest {

    @TempDir
    private Path folder = Path.of("");

    /** A clock that a test sets. */
    private static final class Hands extends Clock {

        private volatile Instant now = Instant.parse("2026-11-20T12:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private final Hands clock = new Hands();

    private CommandLineRun open(Consumer<PageServer> meanwhile, Object... arguments) {
        List<Object> all = new ArrayList<>(List.of(arguments));
        all.add("--no-browser");
        return CommandLineRun.ofCommand(
                new OpenCommand(folder, folder.resolve("settings/recent"), clock, 5, meanwhile), all.toArray());
    }

    @Test
    void the_address_is_the_first_line_and_close_ends_it() {
        List<String> address = new ArrayList<>();
        CommandLineRun run = open(server -> {
            address.add(server.address().toString());
            close(server);
        });
        assertThat(run.exit()).isEqualTo(Exit.DONE);
        assertThat(run.out()).isEqualToIgnoringNewLines(address.get(0));
        assertThat(address.get(0)).matches("http://127\\.0\\.0\\.1:\\d+/#[\\w-]{43}");
        assertThat(run.err()).startsWith("Open this address in a browser on this computer.");
    }

    @Test
    void it_works_in_the_folder_that_is_named_or_that_of_the_workbook() throws Exception {
        Path book = folder.resolve("launch.xlsx");
        CommandLineRun.of("new", "launch", book);
        assertThat(started(book)).isEqualTo(folder + " launch.xlsx");
        assertThat(started(folder)).isEqualTo(folder + " null");
        assertThat(started()).isEqualTo(folder.resolve("Perkilo") + " null");
        assertThat(folder.resolve("Perkilo")).doesNotExist();
    }

    private String started(Object... arguments) {
        List<String> said = new ArrayList<>();
        CommandLineRun run = open(
                server -> {
                    try {
                        JsonNode start = Visitor.entered(server.address()).get("/api/start");
                        said.add(start.get("folder").asText() + " "
                                + start.get("book").asText());
                    } catch (IOException | InterruptedException e) {
                        throw new AssertionError(e);
                    }
                    close(server);
                },
                arguments);
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        return said.get(0);
    }

    private static void close(PageServer server) {
        try {
            Visitor.entered(server.address()).post("/api/close", new ObjectMapper().createObjectNode());
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void it_ends_half_an_hour_after_the_last_page_has_gone() {
        CommandLineRun run = open(server -> clock.now = clock.now.plus(Duration.ofMinutes(30)));
        assertThat(run.exit()).isEqualTo(Exit.DONE);
    }

    @Test
    void what_is_not_there_or_no_workbook_is_said() throws IOException {
        Path list = Files.writeString(folder.resolve("list.csv"), "Item,Price");
        CommandLineRun missing = open(server -> {}, folder.resolve("missing.xlsx"));
        CommandLineRun other = open(server -> {}, list);
        assertThat(missing.exit()).isEqualTo(Exit.FILE);
        assertThat(missing.err()).contains("missing.xlsx does not exist. Name a workbook, or the folder to work in.");
        assertThat(other.exit()).isEqualTo(Exit.FILE);
        assertThat(other.err()).contains("list.csv is not a workbook.");
    }

    /** A double-click, and a file that is dropped onto the program; in a terminal the words mean what they meant. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''          | false | true  | open",
                "''          | true  | true  | ''",
                "''          | false | false | ''",
                "book.xlsx   | true  | true  | open book.xlsx",
                "Book.XLSM   | false | true  | open Book.XLSM",
                "book.xlsx   | true  | false | book.xlsx",
                "src         | true  | true  | open src",
                "--help      | false | true  | --help",
                "list.csv    | false | true  | list.csv",
                "cost        | false | true  | cost",
            })
    void on_a_desktop_a_workbook_alone_opens_the_page(String typed, boolean terminal, boolean desktop, String meant) {
        String[] words = typed.isEmpty() ? new String[0] : typed.split(" ");
        assertThat(String.join(" ", Desktop.meant(words, terminal, desktop))).isEqualTo(meant);
    }
}
