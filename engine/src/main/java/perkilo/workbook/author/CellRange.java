package perkilo.workbook.author;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import perkilo.report.SheetNames;

/** A rectangle of cells; rows and columns from zero, both corners included. */
record CellRange(int firstRow, int firstColumn, int lastRow, int lastColumn) {

    private static final Pattern WRITTEN = Pattern.compile("([A-Z]+)([0-9]+):([A-Z]+)([0-9]+)");
    private static final int LETTERS = 26;

    /**
     * The rectangle as result sheets write it.
     *
     * @param range such as {@code A5:K40}
     */
    static CellRange of(String range) {
        Matcher matcher = WRITTEN.matcher(range);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("not a range of cells: " + range);
        }
        return new CellRange(
                row(matcher.group(2)), column(matcher.group(1)), row(matcher.group(4)), column(matcher.group(3)));
    }

    private static int row(String number) {
        return Integer.parseInt(number) - 1;
    }

    private static int column(String letters) {
        return letters.chars().reduce(0, (before, letter) -> before * LETTERS + letter - 'A' + 1) - 1;
    }

    /** The first cell, such as {@code A5}. */
    String firstCell() {
        return SheetNames.cell(firstRow, firstColumn);
    }

    /** Such as {@code $A$5:$K$40}. */
    String absolute() {
        return "$%s$%d:$%s$%d"
                .formatted(SheetNames.column(firstColumn), firstRow + 1, SheetNames.column(lastColumn), lastRow + 1);
    }
}
