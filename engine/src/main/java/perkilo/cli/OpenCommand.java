package perkilo.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import perkilo.page.PageServer;
import perkilo.page.PageSettings;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command {@code open}: serves the page to browsers on this computer until it is ended. */
final class OpenCommand extends Command {

    private static final long TICK = TimeUnit.SECONDS.toMillis(5);

    private final PositionalParamSpec place = Options.parameter(
            0,
            "0..1",
            Path.class,
            "BOOK",
            "A workbook, or the folder to work in. Default: the folder Perkilo in your home folder.");
    private final OptionSpec noBrowser = Options.flag(
            "Print the address of the page instead of opening it in your browser. Whoever knows the address can use the"
                    + " page.",
            "--no-browser");

    private final Path home;
    private final Path recent;
    private final Clock clock;
    private final Consumer<PageServer> started;
    private final long tick;

    OpenCommand() {
        this(
                Desktop.home(),
                Desktop.settings().resolve("recent-folders"),
                Clock.system(ZoneId.systemDefault()),
                TICK,
                any -> {});
    }

    /**
     * A command that is made for a test.
     *
     * @param home the person's home folder
     * @param recent the file that keeps which folders were opened
     * @param started receives the server once it runs
     */
    OpenCommand(Path home, Path recent, Clock clock, long tick, Consumer<PageServer> started) {
        super(
                "open",
                "Open a page in your browser that shows the answers and lets you try changes.",
                "The page is for this computer alone, and nothing leaves it. It ends with Ctrl-C, with Close on the page, or"
                        + " half an hour after the last page was closed.");
        takes(place, noBrowser);
        this.home = home;
        this.recent = recent;
        this.clock = clock;
        this.tick = tick;
        this.started = started;
    }

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec().commandLine().getOut();
        PrintWriter err = spec().commandLine().getErr();
        try (PageServer server = PageServer.start(settings(err))) {
            boolean shown = !Options.isOn(noBrowser) && Desktop.isThere() && Desktop.show(server.addressForOnce());
            if (!shown) {
                out.println(server.address());
                out.flush();
            }
            err.println(shown ? CommandMessages.pageIsOpen() : CommandMessages.openTheAddress());
            err.flush();
            started.accept(server);
            server.await(tick);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
        return Exit.DONE;
    }

    private PageSettings settings(PrintWriter err) throws IOException {
        Path said = Options.said(place, Path.class);
        Path whole =
                said == null ? home.resolve("Perkilo") : said.toAbsolutePath().normalize();
        Path folder = whole;
        String book = null;
        if (said != null && !Files.isDirectory(whole)) {
            checkWorkbook(said);
            folder = whole.getParent() == null ? whole : whole.getParent();
            book = String.valueOf(whole.getFileName());
        }
        return new PageSettings(folder, book, recent, Version.words(), clock, fault -> said(err, fault));
    }

    private static void checkWorkbook(Path said) throws IOException {
        if (!Files.exists(said)) {
            throw new IOException(CommandMessages.nothingToOpen(said));
        }
        if (!isWorkbook(said)) {
            throw new IOException(CommandMessages.cannotOpen(said));
        }
    }

    /** Prints what failed; the page itself shows no more than that something did. */
    private static synchronized void said(PrintWriter err, Throwable fault) {
        err.println(CommandMessages.faultOfPage(fault.toString()));
        StackTraceElement[] trace = fault.getStackTrace();
        if (trace.length > 0) {
            err.println("    at " + trace[0]);
        }
        err.flush();
    }

    private static boolean isWorkbook(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".xlsx") || name.endsWith(".xlsm");
    }
}
