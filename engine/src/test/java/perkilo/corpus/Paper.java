package perkilo.corpus;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Rows of cells, to be saved as a workbook or as text. */
final class Paper {

    private final List<List<Val>> rows = new ArrayList<>();

    void row(Val... cells) {
        rows.add(Arrays.asList(cells));
    }

    void blank() {
        rows.add(List.of());
    }

    /** Adds a table: the headers of all rows, then the rows. */
    void table(List<Map<String, Val>> table) {
        Set<String> heads = new LinkedHashSet<>();
        table.forEach(row -> heads.addAll(row.keySet()));
        rows.add(heads.stream().map(Val::of).toList());
        table.forEach(row -> rows.add(
                heads.stream().map(head -> row.getOrDefault(head, Val.BLANK)).toList()));
    }

    /**
     * A workbook.
     *
     * @param asText whether numbers and days are saved as the words that they look like
     */
    byte[] xlsx(boolean asText) {
        return xlsx(Map.of("Sheet1", this), asText);
    }

    /** A workbook of several sheets. */
    static byte[] xlsx(Map<String, Paper> sheets, boolean asText) {
        try (XSSFWorkbook book = new XSSFWorkbook();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            sheets.forEach((name, paper) -> paper.fill(book, name, asText));
            book.write(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void fill(XSSFWorkbook book, String name, boolean asText) {
        XSSFSheet sheet = book.createSheet(name);
        CellStyle date = book.createCellStyle();
        date.setDataFormat(book.createDataFormat().getFormat("dd.mm.yyyy"));
        for (int at = 0; at < rows.size(); at++) {
            Row row = sheet.createRow(at);
            for (int column = 0; column < rows.get(at).size(); column++) {
                Val val = rows.get(at).get(column);
                if (!val.text().isEmpty()) {
                    fill(book, row.createCell(column), val, asText, date);
                }
            }
        }
    }

    private static void fill(XSSFWorkbook book, Cell cell, Val val, boolean asText, CellStyle date) {
        BigDecimal number = val.number();
        LocalDate day = val.day();
        if (number != null && !asText) {
            cell.setCellValue(number.doubleValue());
            if (!val.format().isEmpty()) {
                CellStyle style = book.createCellStyle();
                style.setDataFormat(book.createDataFormat().getFormat(val.format()));
                cell.setCellStyle(style);
            }
        } else if (day != null && !asText) {
            cell.setCellValue(day);
            cell.setCellStyle(date);
        } else {
            cell.setCellValue(val.text());
        }
    }

    /** Text with a delimiter, in UTF-8. */
    byte[] text(char delimiter) {
        StringBuilder text = new StringBuilder();
        for (List<Val> row : rows) {
            List<String> fields =
                    row.stream().map(val -> quoted(val.text(), delimiter)).toList();
            text.append(String.join(String.valueOf(delimiter), fields)).append("\r\n");
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String quoted(String field, char delimiter) {
        return field.indexOf(delimiter) >= 0 || field.indexOf('"') >= 0
                ? "\"" + field.replace("\"", "\"\"") + "\""
                : field;
    }
}
