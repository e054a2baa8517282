/**
 * Sheets to decide by: what moves a cost. The cells that their formulas refer to come from the sheets of the costs, as
 * {@link perkilo.report.decision.RunFigures}.
 */
@NullMarked
package perkilo.report.decision;

import org.jspecify.annotations.NullMarked;
