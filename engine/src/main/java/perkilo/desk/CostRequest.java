package perkilo.desk;

import java.time.LocalDate;
import perkilo.reading.Sources;

/**
 * A request to cost one book.
 *
 * @param sources the workbook, and what is read with it
 * @param sizes run sizes instead of the Runs sheet
 * @param wishes what is asked for besides the costs
 * @param today the costing date if none is set
 */
public record CostRequest(Sources sources, RunSizes sizes, CostWishes wishes, LocalDate today) {

    /** A request for the costs alone. */
    public CostRequest(Sources sources, RunSizes sizes, LocalDate today) {
        this(sources, sizes, CostWishes.NONE, today);
    }
}
