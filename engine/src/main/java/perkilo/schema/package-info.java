/**
 * The tables that a person brings, described once: how each sheet and column is called, what stands in it, what holds
 * where it is blank.
 *
 * <ul>
 *   <li>the reader finds and reads tables by these descriptions, templates and handbook pages are made from them: no
 *       other place knows how a column is called;
 *   <li>a description has no behaviour and knows no file format.
 * </ul>
 *
 * <p>Start at {@link perkilo.schema.Schemas}. This package uses the JDK alone.
 */
@NullMarked
package perkilo.schema;

import org.jspecify.annotations.NullMarked;
