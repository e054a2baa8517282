package perkilo.desk;

import java.time.LocalDate;
import perkilo.reading.Sources;

/**
 * What to cost.
 *
 * @param sources the workbook, and what is read with it
 * @param sizes run sizes in place of the Runs sheet
 * @param today the costing date where none is set
 */
public record CostRequest(Sources sources, RunSizes sizes, LocalDate today) {}
