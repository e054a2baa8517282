package perkilo.desk;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.rates.Bank;

/**
 * A request to take exchange rates in.
 *
 * @param table the table that they are added to
 * @param files files of rates
 * @param fetched the rates to fetch from the bank; null for none
 * @param replace whether a new rate replaces a different one of the same day
 */
public record RatesRequest(Path table, List<Path> files, Bank.@Nullable Span fetched, boolean replace) {

    public RatesRequest {
        files = List.copyOf(files);
    }

    /** Only files; nothing is fetched, and rates of the table are kept. */
    public static RatesRequest ofFiles(Path table, List<Path> files) {
        return new RatesRequest(table, files, null, false);
    }
}
