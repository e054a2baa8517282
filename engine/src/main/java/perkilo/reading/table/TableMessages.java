package perkilo.reading.table;

import java.util.List;
import perkilo.origin.Counted;

/** What a person reads about a table: its sheet, its headers, and the rows that are not read. */
public final class TableMessages {

    private TableMessages() {}

    // sheets

    static String noHeaders(List<String> columns) {
        return "No row of headers was found on this sheet. Add one, with columns such as " + String.join(", ", columns)
                + ".";
    }

    static String unknownHeaders(String table, List<String> headers, List<String> columns) {
        return "This sheet is to be " + table + ", but its headers are not known: " + String.join(", ", headers)
                + ". Rename them to columns such as " + String.join(", ", columns)
                + ", or say on a sheet Reading which column is which. perkilo check --review makes that sheet.";
    }

    static String resultSheet() {
        return "This sheet has the name of a result sheet, so it is not read. Rename it if it is yours.";
    }

    // columns that are missing, or not read

    static String noColumn(String table, String column, String explanation) {
        return missing(table, column, explanation) + " Add it.";
    }

    static String noColumn(String table, String column, String explanation, List<String> unread) {
        return missing(table, column, explanation) + " These headers were not recognised: " + String.join(", ", unread)
                + ". If one of them is this column, rename it to \"" + column + "\".";
    }

    private static String missing(String table, String column, String explanation) {
        return "The " + table + " table has no column \"" + column + "\" (" + explanation + ").";
    }

    static String nearlyAColumn(String header, String column, String explanation) {
        return "The column \"" + header + "\" is not read. If you mean \"" + column + "\" (" + explanation
                + "), rename it.";
    }

    // columns that are there twice, or hidden

    static String secondColumn(String header, String column) {
        return "\"" + header + "\" is a second column for " + column + ". Keep one.";
    }

    static String otherColumnRead(String header, String column, String read) {
        return "\"" + header + "\" is not read, because " + column + " is taken from \"" + read + "\".";
    }

    static String hiddenColumn(String header) {
        return "The column \"" + header + "\" is hidden but is read. Unhide and check it.";
    }

    // units in headers

    /** The unit in the header of a column, or in the name of a setting, is not recognised. */
    public static String unknownUnit(String unit, String column) {
        return notRecognised(unit, column) + " Correct it, or delete it.";
    }

    static String unknownUnit(String unit, String column, String expected) {
        return notRecognised(unit, column) + " Use " + expected + ".";
    }

    private static String notRecognised(String unit, String column) {
        return "The unit \"" + unit + "\" of " + column + " is not recognised.";
    }

    // rows

    static String noKey(String column) {
        return column + " is blank, so this row is not read. Fill it if the row counts.";
    }

    /** Rows that are struck through are left out. */
    static String struckRows(int rows, String which) {
        return rows == 1
                ? "Row " + which + " is struck through, so it is not read. Remove the line through it if it counts."
                : Counted.of(rows, "row") + " (" + which + ") are struck through, so they are not read."
                        + " Remove the lines through them if they count.";
    }

    static String struckCells(int cells) {
        return cells == 1
                ? "This cell is struck through but is read. Empty it, or remove the line through it."
                : "This cell and " + Counted.of(cells - 1, "other") + " of the table are struck through but are read."
                        + " Empty them, or remove the lines through them.";
    }

    // sheets that look like a table

    static String looksLike(String table, List<String> columns, List<String> missing) {
        return "This sheet looks like " + table + " by what is in its columns: " + String.join(", ", columns) + ". "
                + (missing.isEmpty()
                        ? "Rename the headers and it is read."
                        : "Rename the headers and add " + String.join(", ", missing) + ".");
    }
}
