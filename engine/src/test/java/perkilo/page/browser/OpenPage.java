package perkilo.page.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jspecify.annotations.Nullable;
import perkilo.Scratch;
import perkilo.cli.Perkilo;
import perkilo.page.PageServer;
import perkilo.page.PageSettings;

/** A folder that is served, and its page in the browser. */
final class OpenPage implements AutoCloseable {

    /** The day on which all of it happens, for the server and the command. */
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static final ObjectMapper JSON = new ObjectMapper();

    final Path folder;
    final Browser browser = Browser.get();
    private final PageServer server;
    private final List<Throwable> faults = new CopyOnWriteArrayList<>();

    private OpenPage(Path folder, @Nullable String book) {
        this.folder = folder;
        Clock clock = Clock.fixed(TODAY.atTime(12, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
        Path recent = Scratch.folder().resolve("recent");
        try {
            server = PageServer.start(new PageSettings(folder, book, recent, "0.1.0", clock, faults::add));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        browser.open(server.address().toString());
    }

    /** The page of a folder. */
    static OpenPage of(Path folder) {
        return new OpenPage(folder, null);
    }

    /** The page of a template, in a new folder. */
    static OpenPage ofTemplate(String template) {
        Path folder = Scratch.folder();
        run("new", template, folder.resolve(template + ".xlsx").toString());
        return new OpenPage(folder, template + ".xlsx");
    }

    /** What a command prints. */
    static String run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = Perkilo.run(new PrintWriter(out), new PrintWriter(err), arguments);
        assertThat(exit).as(err.toString()).isIn(0, 3);
        return out.toString();
    }

    /** What the command says about a workbook of the folder, on the same day. */
    JsonNode json(String command, String book, String... options) {
        List<String> arguments =
                new ArrayList<>(List.of(command, folder.resolve(book).toString(), "--json"));
        arguments.addAll(List.of("--date", TODAY.toString()));
        arguments.addAll(List.of(options));
        try {
            return JSON.readTree(run(arguments.toArray(String[]::new)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String address() {
        return server.address().toString();
    }

    StartView start() {
        browser.script("location.hash = '#/'");
        browser.shown("#drop-heading");
        return new StartView(browser);
    }

    ReadingView reading(String book) {
        browser.shown("#foot p");
        browser.script("location.hash = '#/reading/' + encodeURIComponent(arguments[0])", book);
        return new ReadingView(browser).whenRead();
    }

    CostView cost(String book) {
        browser.shown("#foot p");
        browser.script("location.hash = '#/cost/' + encodeURIComponent(arguments[0])", book);
        return new CostView(browser).whenCosted();
    }

    /** Ends the program in the middle of it all. */
    void endServer() {
        server.close();
    }

    /** Ends all; neither the browser nor the server may have complained. */
    @Override
    public void close() {
        List<String> log = browser.log();
        server.close();
        browser.driver().get("about:blank");
        assertThat(log).isEmpty();
        assertThat(faults).isEmpty();
    }
}
