package perkilo.desk;

import java.time.LocalDate;
import perkilo.reading.Sources;

/**
 * A request for what a unit may cost.
 *
 * @param sources the workbook, and what is read with it
 * @param sizes run sizes instead of the Runs sheet
 * @param today the costing date if none is set
 */
public record TargetRequest(Sources sources, RunSizes sizes, LocalDate today) {}
