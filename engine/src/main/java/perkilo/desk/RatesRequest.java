package perkilo.desk;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.rates.Bank;

/**
 * Which exchange rates to take in.
 *
 * @param table the table that they are added to
 * @param files files of rates
 * @param fetched what the bank is asked for; null for nothing
 * @param replace whether a new rate goes before another one of the same day
 */
public record RatesRequest(Path table, List<Path> files, Bank.@Nullable Span fetched, boolean replace) {

    public RatesRequest {
        files = List.copyOf(files);
    }

    /** Files alone; the bank is not asked, and rates that the table has stay. */
    public static RatesRequest ofFiles(Path table, List<Path> files) {
        return new RatesRequest(table, files, null, false);
    }
}
