package perkilo.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A request to cost several books.
 *
 * @param named workbooks, and folders of them; at least one
 * @param prices price lists that all books share; files, or folders of them
 * @param rates exchange rates that all books share; null for none
 * @param date the costing date instead of those of the books; null to use theirs
 * @param sizes run sizes instead of the Runs sheets
 * @param destination where the results go; its {@code out} is a folder
 * @param today the costing date if none is set
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
