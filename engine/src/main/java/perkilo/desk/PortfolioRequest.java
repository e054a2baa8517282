package perkilo.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which books to cost side by side.
 *
 * @param named workbooks, and folders of them; at least one
 * @param prices price lists that all books share; files, or folders of them
 * @param rates exchange rates that all books share; null for none
 * @param date goes before the books' own costing dates; null where those hold
 * @param sizes run sizes in place of the Runs sheets
 * @param destination where the results go; its {@code out} is a folder
 * @param today the costing date where none is set
 */
public record PortfolioRequest(
        List<Path> named,
        List<Path> prices,
        @Nullable Path rates,
        @Nullable LocalDate date,
        RunSizes sizes,
        Destination destination,
        LocalDate today) {

    public PortfolioRequest {
        named = List.copyOf(named);
        prices = List.copyOf(prices);
    }
}
