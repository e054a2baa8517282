/**
 * Sheets that a person laid out in their own way, arranged as the tables that are read.
 *
 * <ul>
 *   <li>a sheet that is understood as it is stays as it is, and only its first rows are looked at;
 *   <li>an arranged cell keeps the place where the person typed it. It is live if it is that cell as typed, and a
 *       constant if a header or a text says it;
 *   <li>what is not clear is an error with its cell, never a guess.
 * </ul>
 *
 * <p>Start at {@link perkilo.reading.arrange.Arranger}. {@link perkilo.reading.arrange.ContentGuess} says what columns
 * look like by what is in them.
 */
@NullMarked
package perkilo.reading.arrange;

import org.jspecify.annotations.NullMarked;
