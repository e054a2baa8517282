package perkilo.origin;

import static java.util.Objects.requireNonNull;

import org.jspecify.annotations.Nullable;

/**
 * The place from which something was read: file, sheet and cell.
 *
 * <p>A long price list has a million of them and few are ever shown, so the name of a cell is made on demand.
 */
public final class Origin {

    /** No place: for a default, or for a value that a program passes in. */
    public static final Origin NONE = new Origin("", "", "");

    private static final int LETTERS = 26;
    private static final int LINE = -1;

    private final String file;
    private final String sheet;
    private final @Nullable String spelled;
    private final int row;
    private final int column;

    /**
     * A place by its name.
     *
     * @param file the file's name without its folder; empty if there is no file
     * @param sheet the sheet as its tab shows it; empty for a file without sheets
     * @param cell the cell as a spreadsheet names it, such as {@code F12}; in a text file the line, such as {@code line
     *     4}; empty if the whole sheet or file is meant
     */
    public Origin(String file, String sheet, String cell) {
        this(file, sheet, requireNonNull(cell, "cell"), 0, 0);
    }

    private Origin(String file, String sheet, @Nullable String spelled, int row, int column) {
        this.file = requireNonNull(file, "file");
        this.sheet = requireNonNull(sheet, "sheet");
        this.spelled = spelled;
        this.row = row;
        this.column = column;
    }

    /**
     * A cell of a sheet.
     *
     * @param row from zero
     * @param column from zero
     */
    public static Origin ofCell(String file, String sheet, int row, int column) {
        return new Origin(file, sheet, null, row, column);
    }

    /**
     * A line of a text file.
     *
     * @param line from one
     */
    public static Origin ofLine(String file, String sheet, int line) {
        return new Origin(file, sheet, null, line, LINE);
    }

    /** The file's name without its folder; empty if there is no file. */
    public String file() {
        return file;
    }

    /** The sheet as its tab shows it; empty for a file without sheets. */
    public String sheet() {
        return sheet;
    }

    /**
     * The cell as a spreadsheet names it, such as {@code F12}; in a text file the line, such as {@code line 4}; empty
     * if the whole sheet or file is meant.
     */
    public String cell() {
        if (spelled != null) {
            return spelled;
        }
        return column == LINE ? "line " + row : columnName(column) + (row + 1);
    }

    /**
     * The name of a column, such as {@code AB}.
     *
     * @param column from zero
     */
    public static String columnName(int column) {
        String rest = column >= LETTERS ? columnName(column / LETTERS - 1) : "";
        return rest + (char) ('A' + column % LETTERS);
    }

    /** The row of a cell of a sheet, from zero; -1 for any other place. */
    public int row() {
        return spelled == null && column != LINE ? row : -1;
    }

    /** The column of a cell of a sheet, from zero; -1 for any other place. */
    public int column() {
        return spelled == null && column != LINE ? column : -1;
    }

    /** The place as it is written in a message: {@code Offers!F12}, or {@code prices.csv line 4} for a text file. */
    public String where() {
        String cell = cell();
        if (sheet.isEmpty()) {
            return cell.isEmpty() ? file : (file + " " + cell).strip();
        }
        return cell.isEmpty() ? sheet : sheet + "!" + cell;
    }

    /** Whether this place is in a file. */
    public boolean isKnown() {
        return !file.isEmpty() || !sheet.isEmpty();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Origin that
                        && file.equals(that.file)
                        && sheet.equals(that.sheet)
                        && cell().equals(that.cell()));
    }

    @Override
    public int hashCode() {
        return 31 * (31 * file.hashCode() + sheet.hashCode()) + cell().hashCode();
    }

    @Override
    public String toString() {
        return where();
    }
}
