package perkilo.layouts;

import perkilo.origin.Origin;
import perkilo.xlsx.grid.Grid;

/**
 * A cell of a list with which something is wrong; a person may type what it shall say.
 *
 * @param grid the sheet
 * @param row from zero
 * @param column from zero
 * @param where its place, as messages show it
 * @param text the message
 */
public record CellFault(Grid grid, int row, int column, Origin where, String text) {}
