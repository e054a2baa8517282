/**
 * Parts of sheets that several reports share, so that each figure has one formula.
 *
 * <ul>
 *   <li>{@link perkilo.report.part.Lines} writes lines and tables one below the other;
 *   <li>{@link perkilo.report.part.MakingPart} has the quantities filled and made,
 *       {@link perkilo.report.part.NeedFormulas} the need of each item;
 *   <li>{@link perkilo.report.part.Landing} has the landed cost of an order;
 *   <li>{@link perkilo.report.part.RunTitle} names a run, {@link perkilo.report.part.Shortage} warns if too little is
 *       bought for it after a change;
 *   <li>{@link perkilo.report.part.QuoteDates} marks the dates of quotes that have ended, or soon will.
 * </ul>
 */
@NullMarked
package perkilo.report.part;

import org.jspecify.annotations.NullMarked;
