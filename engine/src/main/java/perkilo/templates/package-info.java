/**
 * Makes the workbooks of {@code workbook-templates/} from plain tables and the description of the sheets.
 *
 * <p>Headers, notes, drop-down lists and formats come from {@link perkilo.schema}, the same description that the reader
 * goes by, so the two cannot drift apart; the example's values come from {@code workbook-templates/source/}.
 *
 * <p>Start at {@link perkilo.templates.TemplateWriter}.
 */
@NullMarked
package perkilo.templates;

import org.jspecify.annotations.NullMarked;
