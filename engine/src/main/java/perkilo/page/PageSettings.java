package perkilo.page;

import java.nio.file.Path;
import java.time.Clock;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What a page is started with.
 *
 * @param folder that it works in, with a whole path; made once a file is put into it
 * @param book the name of a file in it to begin with; null for none
 * @param recent the file that keeps which folders were opened; it may be missing
 * @param version of Perkilo, to be shown
 * @param clock says the day, and when the last page went
 * @param faults receives what failed unexpectedly
 */
public record PageSettings(
        Path folder, @Nullable String book, Path recent, String version, Clock clock, Consumer<Throwable> faults) {}
