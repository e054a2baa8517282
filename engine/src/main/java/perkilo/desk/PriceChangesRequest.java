package perkilo.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Which price changes to show.
 *
 * @param folder where price lists are kept
 * @param book the workbook whose costs are looked at as well; null for the changes alone
 * @param rates exchange rates for the workbook; null for its own
 * @param date the day to look from; null for the workbook's costing date, or today
 * @param sizes run sizes in place of the Runs sheet
 * @param today the day where none is set
 */
public record PriceChangesRequest(
        Path folder,
        @Nullable Path book,
        @Nullable Path rates,
        @Nullable LocalDate date,
        RunSizes sizes,
        LocalDate today) {}
