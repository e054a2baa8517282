/**
 * Result sheets as plain data: the content of each cell, as a value and as a live formula.
 *
 * <ul>
 *   <li>an {@link perkilo.sheet.Expr} holds a figure twice: as the engine's decimal, and as the formula that an office
 *       suite recalculates; both are written, so each checks the other;
 *   <li>a formula refers to the cells that a person typed in ({@link perkilo.sheet.Expr#input}) and to cells of the
 *       result sheets ({@link perkilo.sheet.Expr#cell}); only the packs of a purchase are plain values;
 *   <li>a sheet is built by a {@link perkilo.sheet.SheetBuilder} and knows no file format.
 * </ul>
 *
 * <p>Start at {@link perkilo.sheet.ResultSheet}. This package uses the layers above and no library.
 */
@NullMarked
package perkilo.sheet;

import org.jspecify.annotations.NullMarked;
