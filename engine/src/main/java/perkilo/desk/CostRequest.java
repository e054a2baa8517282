package perkilo.desk;

import java.time.LocalDate;
import perkilo.reading.Sources;

/**
 * A request to cost one book.
 *
 * @param sources the workbook, and what is read with it
 * @param sizes run sizes instead of the Runs sheet
 * @param today the costing date if none is set
 */
public record CostRequest(Sources sources, RunSizes sizes, LocalDate today) {}
