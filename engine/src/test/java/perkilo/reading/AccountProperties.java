package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import perkilo.origin.Account;

/**
 * Every cell that is not blank belongs to exactly one entry of the account: nothing is left out, nothing counts twice.
 */
final class AccountProperties {

    private static final List<Object> TYPED = List.of(
            "Total",
            "Prices in USD per lb",
            "valid until 31.12.2027",
            "call on Monday",
            "Supplier",
            "Item",
            "Price",
            "Product",
            "Units",
            "Discount %",
            "Freight",
            "% w/w",
            "Material",
            12,
            0,
            0.5,
            LocalDate.of(2027, 1, 1));

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void each_cell_of_a_disturbed_workbook_is_in_one_entry(
            @ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed) throws IOException {
        Path file = TestBook.sound()
                .sheet("Notes", List.of("Remember the labels"))
                .sheet("Plan", List.of("Jan", "Feb", "Mar"), List.of(1, 2, 3))
                .sheet("Empty")
                .with(book -> disturb(book, new Random(seed)))
                .save();
        check(file);
    }

    /** A list whose headers take two rows, of which the upper one is typed over. */
    @Example
    void each_cell_of_headers_in_two_rows_is_in_one_entry() throws IOException {
        each_cell_of_a_disturbed_workbook_is_in_one_entry(7_958_492);
    }

    /** Settings whose headers are hidden. */
    @Example
    void each_cell_below_hidden_headers_is_in_one_entry() throws IOException {
        each_cell_of_a_disturbed_workbook_is_in_one_entry(3523);
    }

    /** An error beside a formula's table, which belongs to none of its columns. */
    @Example
    void each_cell_beside_a_formula_is_in_one_entry() throws IOException {
        each_cell_of_a_disturbed_workbook_is_in_one_entry(818);
    }

    @Example
    void each_cell_of_the_templates_is_in_one_entry() throws IOException {
        for (String template : List.of("minimal", "launch", "orders", "emollients")) {
            check(Path.of("..", "workbook-templates", template + ".xlsx"));
        }
    }

    private static void check(Path file) throws IOException {
        Account account = new BookReader()
                .read(Sources.of(file), LocalDate.of(2026, 11, 20))
                .account();
        int cells = 0;
        try (InputStream content = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(content)) {
            for (int at = 0; at < book.getNumberOfSheets(); at++) {
                XSSFSheet sheet = book.getSheetAt(at);
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() != CellType.BLANK) {
                            cells++;
                            assertThat(account.entries().stream()
                                            .filter(entry ->
                                                    entry.place().sheet().equals(sheet.getSheetName()))
                                            .filter(entry -> entry.holds(cell.getRowIndex(), cell.getColumnIndex())))
                                    .as("%s %s: %s", sheet.getSheetName(), cell.getAddress(), cell)
                                    .hasSize(1);
                        }
                    }
                }
            }
        }
        assertThat(cells).isPositive();
    }

    private static void disturb(XSSFWorkbook book, Random random) {
        CellStyle struck = book.createCellStyle();
        XSSFFont font = book.createFont();
        font.setStrikeout(true);
        struck.setFont(font);
        for (int change = random.nextInt(12); change >= 0; change--) {
            XSSFSheet sheet = book.getSheetAt(random.nextInt(book.getNumberOfSheets()));
            int row = random.nextInt(9);
            int column = random.nextInt(11);
            Row cells = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
            switch (random.nextInt(8)) {
                case 0 -> cells.setZeroHeight(true);
                case 1 -> sheet.setColumnHidden(column, true);
                case 2 -> cells.forEach(cell -> cell.setCellStyle(struck));
                case 3 -> sheet.shiftRows(0, Math.max(0, sheet.getLastRowNum()), 1 + random.nextInt(3));
                default -> put(cells.createCell(column), TYPED.get(random.nextInt(TYPED.size())));
            }
        }
    }

    private static void put(Cell cell, Object value) {
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof LocalDate day) {
            cell.setCellValue(day);
        } else {
            cell.setCellValue(value.toString());
        }
    }
}
