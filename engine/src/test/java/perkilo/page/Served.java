package perkilo.page;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A server on a folder of its own. */
public final class Served implements AutoCloseable {

    /** The day that the templates are made for, at noon. */
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-20T12:00:00Z"), ZoneOffset.UTC);

    private final PageServer server;
    private final List<Throwable> faults = Collections.synchronizedList(new ArrayList<>());

    /** A server on a folder; what it remembers is beside it. */
    public Served(Path folder) throws IOException {
        this(folder, null, CLOCK);
    }

    Served(Path folder, @Nullable String book, Clock clock) throws IOException {
        Path recent = folder.resolveSibling("settings").resolve("recent");
        this.server = PageServer.start(new PageSettings(folder, book, recent, "1.0", clock, faults::add));
    }

    /** The server itself. */
    public PageServer server() {
        return server;
    }

    /** A page that has entered. */
    public Visitor visitor() throws IOException, InterruptedException {
        return Visitor.entered(server.address());
    }

    /** What failed unexpectedly. */
    public List<Throwable> faults() {
        return faults;
    }

    @Override
    public void close() {
        server.close();
    }
}
