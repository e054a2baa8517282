/**
 * Sheets on which a person answers what was not clear, and their answers read back.
 *
 * <ul>
 *   <li>a cell to be filled in has a look of its own and, where the answers are known, a drop-down list;
 *   <li>each row carries a key, so that rows may be sorted, filtered or deleted before they are read back;
 *   <li>what is filled in already is part of the key, so that a changed answer is recognised.
 * </ul>
 *
 * <p>Start at {@link perkilo.review.ReviewSheet} to write and at {@link perkilo.review.FilledIn} to read.
 */
@NullMarked
package perkilo.review;

import org.jspecify.annotations.NullMarked;
