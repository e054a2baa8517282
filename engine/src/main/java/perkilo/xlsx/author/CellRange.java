package perkilo.xlsx.author;

import perkilo.sheet.SheetNames;

/** A rectangle of cells; rows and columns from zero, both corners included. */
record CellRange(int firstRow, int firstColumn, int lastRow, int lastColumn) {

    private static final int LETTERS = 26;

    /**
     * The rectangle as result sheets write it.
     *
     * @param range such as {@code A5:K40}
     */
    static CellRange of(String range) {
        int colon = range.indexOf(':');
        String first = range.substring(0, colon);
        String last = range.substring(colon + 1);
        return new CellRange(row(first), column(first), row(last), column(last));
    }

    private static int row(String cell) {
        return Integer.parseInt(cell, letters(cell), cell.length(), 10) - 1;
    }

    private static int column(String cell) {
        int column = 0;
        for (int i = 0; i < letters(cell); i++) {
            column = column * LETTERS + cell.charAt(i) - 'A' + 1;
        }
        return column - 1;
    }

    private static int letters(String cell) {
        int letters = 0;
        while (Character.isLetter(cell.charAt(letters))) {
            letters++;
        }
        return letters;
    }

    /** The first cell, such as {@code A5}. */
    String firstCell() {
        return SheetNames.cell(firstRow, firstColumn);
    }

    /** Such as {@code A5:K40}, or {@code A5} for one cell. */
    String relative() {
        String first = firstCell();
        String last = SheetNames.cell(lastRow, lastColumn);
        return first.equals(last) ? first : first + ":" + last;
    }

    /** Such as {@code $A$5:$K$40}. */
    String absolute() {
        return SheetNames.absolute(firstRow, firstColumn) + ":" + SheetNames.absolute(lastRow, lastColumn);
    }
}
