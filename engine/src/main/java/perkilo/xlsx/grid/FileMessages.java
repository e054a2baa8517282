package perkilo.xlsx.grid;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import perkilo.origin.Counted;
import perkilo.origin.Decimals;

/** What a person reads about a file, or a sheet, that cannot be read. */
final class FileMessages {

    private static final String SAVE_AS_XLSX = "Open it in your spreadsheet program and save it as .xlsx.";

    private static final String SAVE_AGAIN = "Open it in your spreadsheet program and save it again.";

    private static final String FRESH_COPY = "Get a fresh copy.";

    private static final String FRESH_COPY_FROM_SOURCE = "Get a fresh copy from the source of the file.";

    private FileMessages() {}

    // the file cannot be opened

    static String missing(Path file) {
        return file + " does not exist. Check the name and the folder.";
    }

    static String folder(Path file) {
        return file + " is a folder. Name the file in it.";
    }

    static String notReadable(Path file) {
        return file + " cannot be read. Check that you have permission to open it.";
    }

    static String tooLarge(Path file, int megabytes) {
        return file + " is larger than " + megabytes + " MB. Move the tables that you need into a smaller file.";
    }

    static String empty(Path file) {
        return file + " is empty. Use a copy that has content.";
    }

    // the file is of another kind

    static String text(Path file) {
        return file + " is a text file (CSV), not a workbook. " + SAVE_AS_XLSX;
    }

    static String json(Path file) {
        return file + " is a JSON file, not a workbook. " + SAVE_AS_XLSX;
    }

    static String pdf(Path file) {
        return file + " is a PDF, not a workbook. Ask for the figures as a spreadsheet.";
    }

    static String webPage(Path file) {
        return file + " is a web page (HTML), not a workbook. " + SAVE_AS_XLSX;
    }

    static String xml(Path file) {
        return file + " is an XML file, not a workbook. " + SAVE_AS_XLSX;
    }

    static String otherKind(Path file) {
        return file + " is not a workbook. " + SAVE_AS_XLSX;
    }

    static String oldWorkbook(Path file) {
        return file + " is a workbook in the old format (.xls). " + SAVE_AS_XLSX;
    }

    static String binaryWorkbook(Path file) {
        return file + " is a binary workbook (.xlsb). " + SAVE_AS_XLSX;
    }

    static String openDocument(Path file) {
        return file + " is an OpenDocument file (.ods). " + SAVE_AS_XLSX;
    }

    static String numbersDocument(Path file) {
        return file + " is a Numbers document. Export it as an Excel workbook (.xlsx).";
    }

    static String wordDocument(Path file) {
        return file + " is a Word document, not a workbook. Copy the tables into a spreadsheet and save it as .xlsx.";
    }

    static String archive(Path file) {
        return file + " is a ZIP archive, not a workbook. Unpack it and name the workbook in it.";
    }

    static String password(Path file) {
        return file
                + " is protected by a password. Open it in your spreadsheet program and save it without a password.";
    }

    // the file is damaged

    static String notJson(Path file, int line, String why) {
        return file + " cannot be read as JSON near line " + line + ": " + why
                + ". Correct the file, or get a new one.";
    }

    static String cutShort(Path file) {
        return file + " is damaged or was not copied completely. " + FRESH_COPY;
    }

    static String noSheetList(Path file) {
        return file + " is damaged: the part that lists its sheets is missing. " + FRESH_COPY;
    }

    static String noPart(Path file, String part) {
        return file + " is damaged: its part " + part + " is missing. " + FRESH_COPY;
    }

    static String noXml(Path file) {
        return file + " is damaged and cannot be opened as a workbook. " + SAVE_AGAIN;
    }

    static String rowBeyondLast(Path file, String sheet, int row) {
        return beyondLast(file, sheet, "row", row);
    }

    static String columnBeyondLast(Path file, String sheet, int column) {
        return beyondLast(file, sheet, "column", column);
    }

    private static String beyondLast(Path file, String sheet, String what, int number) {
        return file + " is damaged: its sheet \"" + sheet + "\" has " + what + " "
                + Decimals.readable(BigDecimal.valueOf(number), 0) + ", which no sheet can have. " + SAVE_AGAIN;
    }

    // the file may be made to mislead

    static String docType(Path file) {
        return file + " holds a DOCTYPE declaration, which no spreadsheet program writes. " + SAVE_AGAIN;
    }

    static String unpacksTooFar(Path file) {
        return file + " unpacks to far more than its size, which no real workbook does. " + SAVE_AGAIN;
    }

    static String tooManyParts(Path file, int parts) {
        return file + " holds " + Counted.of(parts, "part") + ", far more than a workbook has. "
                + FRESH_COPY_FROM_SOURCE;
    }

    static String partOutside(Path file, String part) {
        return file + " holds a part called \"" + part + "\", which would land outside its folder when unpacked. "
                + FRESH_COPY_FROM_SOURCE;
    }

    static String partTwice(Path file, String part) {
        return file + " holds the part \"" + part + "\" twice, so two programs may read different contents. "
                + SAVE_AGAIN;
    }

    // how a text file was read

    static String otherDelimiter(String delimiter, int columns, String other, int otherColumns) {
        return "The fields are taken to be separated by " + named(delimiter) + ", which makes "
                + Counted.of(columns, "column") + ". They could also be separated by " + named(other)
                + ", which makes " + Counted.of(otherColumns, "column") + ". If the columns are wrong: " + SAVE_AS_XLSX;
    }

    static String weakDelimiter(String delimiter, int columns) {
        return "The fields are taken to be separated by " + named(delimiter) + ", because that makes "
                + Counted.of(columns, "column") + " in nearly all lines. If the columns are wrong: " + SAVE_AS_XLSX;
    }

    static String apostrophes() {
        return "The apostrophes around fields are taken to be quotation marks and are left out.";
    }

    static String oddMarks(List<Integer> lines) {
        int others = lines.size() - 1;
        String where = others == 0
                ? "A quotation mark is out of place in the row that begins here."
                : "Quotation marks are out of place in " + Counted.of(lines.size(), "row") + ": here, in line "
                        + lines.get(1) + (others > 1 ? " and later." : ".");
        return where + " Such a row is read so that it has as many columns as the other rows. Check that its text is"
                + " right.";
    }

    static String macRoman(String word) {
        return "The file does not say how its letters are encoded. They are read as Mac Roman, because that makes words"
                + " such as \"" + word + "\". If letters with accents are wrong, save the file as UTF-8.";
    }

    private static String named(String delimiter) {
        return switch (delimiter) {
            case "," -> "commas";
            case ";" -> "semicolons";
            case "\t" -> "tabs";
            case " " -> "spaces";
            case ":" -> "colons";
            case "|" -> "vertical bars";
            default -> "\"" + delimiter + "\"";
        };
    }

    // parts of a workbook are not read, or may be out of date

    static String noSheet() {
        return "The workbook is damaged: it lists this sheet but does not hold it. " + FRESH_COPY;
    }

    static String hiddenSheet() {
        return "This sheet is hidden, so it is not read. Unhide it if it counts.";
    }

    static String hiddenRow(int row) {
        return "Row " + row + " is hidden, perhaps by a filter, so it is not read. Show all rows if it counts.";
    }

    static String hiddenRows(int rows, int first, int last) {
        return Counted.of(rows, "row") + " between " + first + " and " + last
                + " are hidden, perhaps by a filter, so they are not read. Show all rows if they count.";
    }

    static String linkedFormula() {
        return "The formula refers to another workbook, so its last saved value is used. Check that it is up to date.";
    }

    static String linkedFormulas(int others) {
        return "This formula and " + Counted.of(others, "more cell", "more cells")
                + " of the sheet refer to another workbook, so their last saved values are used."
                + " Check that they are up to date.";
    }
}
