/**
 * Makes the workbooks of {@code workbook-templates/} from plain tables and the description of the sheets.
 *
 * <p>Headers, notes, drop-down lists and formats come from {@link perkilo.schema}, the description that the reader also
 * uses, so the two always agree; the example's values come from {@code workbook-templates/source/}.
 *
 * <p>Start at {@link perkilo.templates.TemplateWriter}.
 */
@NullMarked
package perkilo.templates;

import org.jspecify.annotations.NullMarked;
