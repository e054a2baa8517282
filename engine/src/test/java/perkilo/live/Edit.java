package perkilo.live;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Something that a person changes in a workbook of results.
 *
 * @param what in words
 * @param sheet the sheet
 * @param place a cell such as {@code F2}, a row from one, or a range to sort; on a result sheet a heading with the row
 *     below it, such as {@code Packs+1}
 * @param kind number, percent, date, text, blank, row (values from the cell to the right), insert, delete, or sort
 * @param value what is typed; the column to sort by, from zero
 * @param outcome what the result sheets must do
 */
record Edit(String what, String sheet, String place, String kind, String value, String outcome) {

    /** The edits of a file among the test's resources. */
    static List<Edit> of(String resource) throws IOException {
        return LiveBook.lines(resource).stream()
                .skip(1)
                .map(line -> new Edit(line.get(0), line.get(1), line.get(2), line.get(3), line.get(4), line.get(5)))
                .toList();
    }

    /** Whether the sheet is one of the person's. */
    boolean isOfInputs() {
        return LiveBook.SHEETS.contains(sheet);
    }

    /** Whether only values are typed. */
    boolean isTyped() {
        return !List.of("insert", "delete", "sort").contains(kind);
    }

    /**
     * The lines of a script for the office suite.
     *
     * @param before what the result sheets hold
     */
    List<String> script(Dump before) {
        if (kind.equals("row")) {
            List<String> lines = new ArrayList<>();
            CellReference first = new CellReference(place);
            String[] values = value.split("\\|", -1);
            for (int i = 0; i < values.length; i++) {
                if (!values[i].isEmpty()) {
                    CellReference at = new CellReference(first.getRow(), first.getCol() + i);
                    lines.add(String.join("\t", "set", sheet, at.formatAsString(), kindOf(values[i]), values[i]));
                }
            }
            return lines;
        }
        String at = place.contains("+") ? before.below(sheet, place) : place;
        return List.of(
                isTyped()
                        ? String.join("\t", "set", sheet, at, kind, value)
                        : String.join("\t", kind, sheet, at, value));
    }

    private static String kindOf(String value) {
        if (value.matches("\\d{4}-\\d\\d-\\d\\d")) {
            return "date";
        }
        return value.matches("-?\\d+(\\.\\d+)?") ? "number" : "text";
    }

    /** Makes the same change in the workbook as it was before it was costed. */
    void in(Path from, Path to) throws IOException {
        try (InputStream in = Files.newInputStream(from);
                XSSFWorkbook book = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(to)) {
            change(book);
            book.write(out);
        }
    }

    private void change(XSSFWorkbook book) {
        XSSFSheet on = book.getSheet(sheet);
        switch (kind) {
            case "insert" -> on.shiftRows(Integer.parseInt(place) - 1, on.getLastRowNum(), 1);
            case "delete" -> delete(on, Integer.parseInt(place) - 1);
            case "sort" -> sort(on);
            default -> type(book, on);
        }
    }

    private static void delete(XSSFSheet on, int row) {
        on.removeRow(on.getRow(row));
        if (row < on.getLastRowNum()) {
            on.shiftRows(row + 1, on.getLastRowNum(), -1);
        }
    }

    private void sort(XSSFSheet on) {
        CellRangeAddress range = CellRangeAddress.valueOf(place);
        int by = range.getFirstColumn() + Integer.parseInt(value);
        List<List<Object>> rows = new ArrayList<>();
        for (int row = range.getFirstRow(); row <= range.getLastRow(); row++) {
            List<Object> cells = new ArrayList<>();
            for (int column = range.getFirstColumn(); column <= range.getLastColumn(); column++) {
                cells.add(content(on.getRow(row).getCell(column)));
            }
            rows.add(cells);
        }
        rows.sort(Comparator.comparing(row -> key(row.get(by))));
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).size(); column++) {
                put(
                        cell(on, range.getFirstRow() + row, range.getFirstColumn() + column),
                        rows.get(row).get(column));
            }
        }
    }

    /** Numbers before words before nothing, as a spreadsheet sorts. */
    private static String key(Object content) {
        if (content instanceof Double number) {
            return "0%020.6f".formatted(number);
        }
        return content.equals("") ? "2" : "1" + content;
    }

    private static Object content(Cell cell) {
        if (cell == null) {
            return "";
        }
        return switch (cell.getCellType()) {
            case NUMERIC -> cell.getNumericCellValue();
            case STRING -> cell.getStringCellValue();
            default -> "";
        };
    }

    private static void put(XSSFCell cell, Object content) {
        if (content instanceof Double number) {
            cell.setCellValue(number);
        } else if (content.equals("")) {
            cell.setBlank();
        } else {
            cell.setCellValue((String) content);
        }
    }

    private void type(XSSFWorkbook book, XSSFSheet on) {
        CellReference at = new CellReference(place);
        CellStyle day = book.createCellStyle();
        day.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
        XSSFCell cell = cell(on, at.getRow(), at.getCol());
        switch (kind) {
            case "number" -> cell.setCellValue(Double.parseDouble(value));
            case "text" -> cell.setCellValue(value);
            case "blank" -> cell.setBlank();
            case "date" -> {
                cell.setCellValue(LocalDate.parse(value));
                cell.setCellStyle(day);
            }
            case "percent" -> {
                CellStyle percent = book.createCellStyle();
                percent.setDataFormat(book.createDataFormat().getFormat("0%"));
                cell.setCellValue(Double.parseDouble(value) / 100);
                cell.setCellStyle(percent);
            }
            case "row" -> {
                String[] values = value.split("\\|", -1);
                for (int i = 0; i < values.length; i++) {
                    if (!values[i].isEmpty()) {
                        LiveBook.type(cell(on, at.getRow(), at.getCol() + i), values[i], day);
                    }
                }
            }
            default -> throw new AssertionError(kind);
        }
    }

    private static XSSFCell cell(XSSFSheet on, int row, int column) {
        XSSFRow in = on.getRow(row) == null ? on.createRow(row) : on.getRow(row);
        XSSFCell cell = in.getCell(column);
        return cell == null ? in.createCell(column) : cell;
    }

    @Override
    public String toString() {
        return what + " (" + sheet + "!" + place + " " + kind + " " + value + ")";
    }
}
