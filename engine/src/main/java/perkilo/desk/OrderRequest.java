package perkilo.desk;

import java.time.Duration;
import java.time.LocalDate;
import perkilo.reading.Sources;

/**
 * What to plan orders for.
 *
 * @param sources the workbook, and what is read with it
 * @param search the longest that the search may take
 * @param why the longest that is looked into what else could have been done; zero for not at all
 * @param today the costing date where none is set
 */
public record OrderRequest(Sources sources, Duration search, Duration why, LocalDate today) {}
