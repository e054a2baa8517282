package perkilo.cli;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;

/**
 * A purchase order as its reader sees it, read with a spreadsheet library.
 *
 * @param number from its title
 * @param orderDate of the order
 * @param deliverBy the day of delivery
 * @param lines in order
 * @param goods the value below the lines
 * @param charge for a small order; null if there is none
 * @param total of the order; null if it is the goods
 * @param words all words on the page
 * @param headRow the row with the heads of the lines
 */
record PaperOrder(
        String number,
        LocalDate orderDate,
        LocalDate deliverBy,
        List<Line> lines,
        BigDecimal goods,
        @Nullable BigDecimal charge,
        @Nullable BigDecimal total,
        List<String> words,
        int headRow) {

    private static final String TITLE = "Purchase order ";

    /** A line. */
    record Line(String article, String item, String pack, BigDecimal packs, BigDecimal price, BigDecimal total) {}

    /** The orders in a workbook, on one sheet. */
    static List<PaperOrder> read(Path file, String sheetName) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            Sheet sheet = Objects.requireNonNull(book.getSheet(sheetName));
            List<Integer> titles = new ArrayList<>();
            for (Row row : sheet) {
                if (words(row, 0).startsWith(TITLE)) {
                    titles.add(row.getRowNum());
                }
            }
            List<PaperOrder> orders = new ArrayList<>();
            for (int at = 0; at < titles.size(); at++) {
                int end = at + 1 < titles.size() ? titles.get(at + 1) : sheet.getLastRowNum() + 1;
                orders.add(read(sheet, titles.get(at), end));
            }
            return orders;
        }
    }

    private static PaperOrder read(Sheet sheet, int first, int end) {
        List<String> words = new ArrayList<>();
        LocalDate ordered = null;
        LocalDate deliver = null;
        BigDecimal goods = null;
        BigDecimal charge = null;
        BigDecimal total = null;
        int head = -1;
        List<Line> lines = new ArrayList<>();
        DataFormatter shown = new DataFormatter();
        shown.setUseCachedValuesForFormulaCells(true);
        for (int at = first; at < end; at++) {
            Row row = sheet.getRow(at);
            if (row == null) {
                continue;
            }
            for (Cell cell : row) {
                words.add(shown.formatCellValue(cell));
            }
            if (words(row, 2).equals("Item")) {
                head = at;
            } else if (head >= 0 && number(row, 0) != null) {
                lines.add(new Line(
                        words(row, 1), words(row, 2), words(row, 3), known(row, 4), known(row, 6), known(row, 7)));
            }
            switch (words(row, 3)) {
                case "Order date" ->
                    ordered = row.getCell(5).getLocalDateTimeCellValue().toLocalDate();
                case "Deliver by" ->
                    deliver = row.getCell(5).getLocalDateTimeCellValue().toLocalDate();
                default -> {}
            }
            switch (words(row, 6)) {
                case "Goods" -> goods = known(row, 7);
                case "Small-order charge" -> charge = known(row, 7);
                case "Order total" -> total = known(row, 7);
                default -> {}
            }
        }
        return new PaperOrder(
                words(sheet.getRow(first), 0).substring(TITLE.length()),
                Objects.requireNonNull(ordered),
                Objects.requireNonNull(deliver),
                lines,
                Objects.requireNonNull(goods),
                charge,
                total,
                words,
                head);
    }

    private static String words(Row row, int column) {
        Cell cell = row.getCell(column);
        return cell != null && cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "";
    }

    private static BigDecimal known(Row row, int column) {
        return Objects.requireNonNull(number(row, column));
    }

    private static @Nullable BigDecimal number(Row row, int column) {
        Cell cell = row.getCell(column);
        boolean number =
                cell != null && (cell.getCellType() == CellType.NUMERIC || cell.getCellType() == CellType.FORMULA);
        return number ? BigDecimal.valueOf(cell.getNumericCellValue()) : null;
    }
}
