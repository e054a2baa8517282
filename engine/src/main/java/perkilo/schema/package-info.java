/**
 * The tables of a person's workbook, described once: the name of each sheet and column, the kind of its values, and the
 * meaning of a blank cell.
 *
 * <ul>
 *   <li>the reader finds and reads tables by these descriptions, and templates are made from them; no other place knows
 *       the name of a column;
 *   <li>a description has no behaviour and knows no file format.
 * </ul>
 *
 * <p>Start at {@link perkilo.schema.Schemas}. This package uses the JDK alone.
 */
@NullMarked
package perkilo.schema;

import org.jspecify.annotations.NullMarked;
