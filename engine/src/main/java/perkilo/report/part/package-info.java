/**
 * Parts of sheets that several reports share, so that a figure is written as a formula in one way only.
 *
 * <ul>
 *   <li>{@link perkilo.report.part.Lines} writes lines and tables one below the other;
 *   <li>{@link perkilo.report.part.MakingPart} says how much is filled and made,
 *       {@link perkilo.report.part.NeedFormulas} how much of an item that takes;
 *   <li>{@link perkilo.report.part.Landing} says what an order costs once it is here;
 *   <li>{@link perkilo.report.part.RunTitle} names a run, {@link perkilo.report.part.Shortage} says where too little is
 *       bought for it after a change;
 *   <li>{@link perkilo.report.part.QuoteDates} marks the dates of quotes that have ended, or soon will.
 * </ul>
 */
@NullMarked
package perkilo.report.part;

import org.jspecify.annotations.NullMarked;
