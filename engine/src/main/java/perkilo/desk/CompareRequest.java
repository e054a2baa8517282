package perkilo.desk;

import java.time.LocalDate;
import perkilo.reading.Sources;

/**
 * A request to say why costs changed.
 *
 * @param before the workbook as it was, or on an earlier day, and what is read with it
 * @param after the workbook as it is
 * @param sizes run sizes instead of the Runs sheets
 * @param today the costing date if none is set
 */
public record CompareRequest(Sources before, Sources after, RunSizes sizes, LocalDate today) {}
