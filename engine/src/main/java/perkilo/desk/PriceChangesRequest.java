package perkilo.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A request to show price changes.
 *
 * @param folder where price lists are kept
 * @param book the workbook whose costs are compared as well; null for the changes only
 * @param rates exchange rates for the workbook; null for its own
 * @param date the day to look from; null for the workbook's costing date, or today
 * @param sizes run sizes instead of the Runs sheet
 * @param today the day to use if none is set
 */
public record PriceChangesRequest(
        Path folder,
        @Nullable Path book,
        @Nullable Path rates,
        @Nullable LocalDate date,
        RunSizes sizes,
        LocalDate today) {}
