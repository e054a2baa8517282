package perkilo.desk;

import java.time.Duration;
import java.time.LocalDate;
import perkilo.reading.Sources;

/**
 * A request to plan orders.
 *
 * @param sources the workbook, and what is read with it
 * @param search the longest time that the search may take
 * @param today the costing date if none is set
 */
public record OrderRequest(Sources sources, Duration search, LocalDate today) {}
