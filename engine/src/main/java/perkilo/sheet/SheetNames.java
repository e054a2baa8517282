package perkilo.sheet;

/** The names of sheets, columns and cells as formulas write them. */
public final class SheetNames {

    private static final int LETTERS = 26;

    private SheetNames() {}

    /** A sheet's name as a formula writes it: always in quotation marks, which every office suite understands. */
    public static String quoted(String sheet) {
        return "'" + sheet.replace("'", "''") + "'";
    }

    /**
     * A cell's name.
     *
     * @param row from zero
     * @param column from zero
     * @return such as {@code A1} for row 0 and column 0
     */
    public static String cell(int row, int column) {
        return column(column) + (row + 1);
    }

    /** A cell's name that stays when a formula is copied: {@code $A$1}. Row and column from zero. */
    public static String absolute(int row, int column) {
        return "$" + column(column) + "$" + (row + 1);
    }

    /**
     * A column's letters.
     *
     * @param column from zero
     */
    public static String column(int column) {
        String rest = column >= LETTERS ? column(column / LETTERS - 1) : "";
        return rest + (char) ('A' + column % LETTERS);
    }
}
