package perkilo.reading.table;

import java.util.List;

/** Why a part of a file is not needed, and what to do about a part that is not understood. */
public final class AccountMessages {

    private AccountMessages() {}

    // sheets and files

    static String ignoredSheet() {
        return "The sheet Reading says to ignore it.";
    }

    static String sheetOfAnswers() {
        return "It says how the other sheets are read.";
    }

    static String resultSheet() {
        return "It holds results of an earlier run.";
    }

    static String hiddenSheet() {
        return "It is hidden. Unhide it if it counts.";
    }

    static String missingSheet() {
        return "The file lists this sheet but does not hold it.";
    }

    static String resultName() {
        return "It has the name of a result sheet. Rename it if it is yours.";
    }

    static String emptySheet() {
        return "It is empty.";
    }

    static String noTable() {
        return "No row of headers was recognised. If it counts, give its columns the headers of a table, such as those of"
                + " a workbook that perkilo new makes.";
    }

    static String onlyLines() {
        return "It holds no table, only lines of text.";
    }

    // columns

    static String noValues() {
        return "It holds no values.";
    }

    static String leftOut() {
        return "The sheet Reading says to leave it out.";
    }

    static String allZero() {
        return "All its values are zero.";
    }

    static String ofKeptList() {
        return "It says where a kept price comes from. It changes no price.";
    }

    static String marked() {
        return "Its header says that it is not needed.";
    }

    static String otherRead(String column, String read) {
        return column + " is read from \"" + read + "\".";
    }

    static String pricesFromOffers() {
        return "Prices are read from the Offers tables.";
    }

    static String remarks() {
        return "It holds words, and no table needs them.";
    }

    static String namesNothing() {
        return "Its header names no column of this table. Rename it if it is one.";
    }

    static String headerNotRecognised() {
        return "Its header is nearly one of this table. Rename it if you mean that column.";
    }

    static String noHeader() {
        return "It has no header. Add one if it counts.";
    }

    static String costColumn() {
        return "Its header says that it may change costs. Rename it to the column that it is.";
    }

    /** A column with a word about costs, or several, of one table. */
    static String costColumn(String header, List<String> columns) {
        return "The column \"" + header + "\" may change costs, but it is not read. Rename it to the column that it is"
                + (columns.isEmpty() ? "" : " (" + String.join(", ", columns) + ")")
                + ", or add \"(not needed)\" to its header.";
    }

    static String costsInRemarks(String header, String text) {
        return "The column \"" + header + "\" is not read, but it says \"" + text
                + "\". If that changes costs, type it into a column of the table, such as Freight per order.";
    }

    // rows

    static String totals() {
        return "Totals are not read.";
    }

    static String withoutKey() {
        return "The name is blank. Fill it if the row counts.";
    }

    static String notes() {
        return "The name is blank, so it is not a row of the table.";
    }

    /** A note that names columns of its table, with their places. */
    static String figuresInNote(List<String> places) {
        return "It is a note without a name, so its figures are not read. If they count, type them into "
                + String.join(", ", places) + ", in the row that they are about.";
    }

    static String struck() {
        return "It is struck through. Remove the line through it if it counts.";
    }

    static String hiddenRows() {
        return "It is hidden, perhaps by a filter. Show all rows if it counts.";
    }

    // lines and other cells

    static String besideTables() {
        return "It is beside the tables, and no table needs it.";
    }

    static String lineNotUnderstood() {
        return "It may say something about prices. If it does, type it into a column of the table.";
    }

    /** A charge in cells of their own beside a table of prices. */
    static String chargeBesideTable(String header) {
        return "\"" + header
                + "\" is beside the table and may change costs, but it is not read. Type it into a column of"
                + " the table or of Suppliers, or add \"(not needed)\" to it.";
    }

    /** Lines beside a table of prices that may change them. */
    static String linesNotRead(List<String> lines, int more) {
        return "Beside the table is text that may say something about prices, and it is not read: "
                + String.join(", ", lines) + (more == 0 ? "" : ", and " + more + " more")
                + ". If it counts, type it into a column, such as Currency, Price per or Valid until.";
    }
}
