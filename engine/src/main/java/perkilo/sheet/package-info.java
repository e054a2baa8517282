/**
 * Result sheets as plain data: what stands in which cell, computed and as a live formula.
 *
 * <ul>
 *   <li>an {@link perkilo.sheet.Expr} is a figure twice: the engine's decimal, and the formula that an office suite
 *       recalculates; both are written, so each checks the other;
 *   <li>a formula refers to the cells that a person typed in ({@link perkilo.sheet.Expr#input}) and to cells of the
 *       result sheets ({@link perkilo.sheet.Expr#cell}); only the choice of a purchase is a plain value;
 *   <li>a sheet is built by a {@link perkilo.sheet.SheetBuilder} and knows no file format.
 * </ul>
 *
 * <p>Start at {@link perkilo.sheet.ResultSheet}. This package uses the layers above it and no library.
 */
@NullMarked
package perkilo.sheet;

import org.jspecify.annotations.NullMarked;
