package perkilo.reading;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import perkilo.Scratch;
import perkilo.model.Book;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Reading;

/**
 * A small workbook that has nothing wrong, for tests to change in one place: a balm of shea butter and sunflower oil,
 * 30 g each, 500 made.
 *
 * <p>A value that begins with {@code =} becomes a formula; numbers, dates and text become cells of their kind.
 */
final class TestBook {

    static final LocalDate TODAY = LocalDate.of(2026, 11, 20);

    private final XSSFWorkbook book = new XSSFWorkbook();
    private final Map<String, CellStyle> styles = new TreeMap<>();

    /** No sheets yet. */
    static TestBook empty() {
        return new TestBook();
    }

    /** The sound workbook. */
    static TestBook sound() {
        return empty().sheet(
                        "Settings",
                        List.of("Setting", "Value"),
                        List.of("Home currency", "EUR"),
                        List.of("Costing date", LocalDate.of(2026, 11, 20)))
                .sheet(
                        "Suppliers",
                        List.of("Supplier", "Currency", "Terms"),
                        List.of("Tarnholt Oleo", "EUR", "FCA"),
                        List.of("Jarrowglass", "EUR", "DAP"))
                .sheet(
                        "Offers",
                        List.of(
                                "Supplier",
                                "Item",
                                "Pack size",
                                "Pack unit",
                                "From quantity",
                                "Price",
                                "Price per",
                                "Currency"),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", "", 6.5, "kg", "EUR"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", "", 3.2, "kg", "EUR"),
                        List.of("Jarrowglass", "Jar", 100, "each", "", 0.62, "each", "EUR"))
                .sheet(
                        "Materials",
                        List.of("Material", "INCI name", "Density g/mL"),
                        List.of("Shea butter", "Butyrospermum Parkii Butter", 0.91))
                .sheet(
                        "Balm",
                        List.of("Phase", "Material", "% w/w"),
                        List.of("A", "Shea butter", 40),
                        List.of("A", "Sunflower oil", 60))
                .sheet(
                        "Products",
                        List.of("Product", "Formula", "Fill", "Fill unit"),
                        List.of("Balm 30", "Balm", 30, "g"))
                .sheet("Components", List.of("Product", "Component", "Units per product"), List.of("Balm 30", "Jar", 1))
                .sheet("Runs", List.of("Product", "Units"), List.of("Balm 30", 500));
    }

    /** Another sheet, or another text for one that is there. */
    TestBook sheet(String name, List<?>... rows) {
        drop(name);
        XSSFSheet sheet = book.createSheet(name);
        for (int row = 0; row < rows.length; row++) {
            for (int column = 0; column < rows[row].size(); column++) {
                put(sheet, row, column, rows[row].get(column));
            }
        }
        return this;
    }

    /** Without a sheet. */
    TestBook drop(String name) {
        int index = book.getSheetIndex(name);
        if (index >= 0) {
            book.removeSheetAt(index);
        }
        return this;
    }

    /** With another value in a cell, such as {@code F2}. */
    TestBook set(String sheet, String cell, Object value) {
        var reference = new org.apache.poi.ss.util.CellReference(cell);
        put(book.getSheet(sheet), reference.getRow(), reference.getCol(), value);
        return this;
    }

    /** With a number in a format of its own. */
    TestBook set(String sheet, String cell, double value, String format) {
        set(sheet, cell, value);
        var reference = new org.apache.poi.ss.util.CellReference(cell);
        book.getSheet(sheet)
                .getRow(reference.getRow())
                .getCell(reference.getCol())
                .setCellStyle(style(format));
        return this;
    }

    /** Changed by hand. */
    TestBook with(Consumer<XSSFWorkbook> change) {
        change.accept(book);
        return this;
    }

    /** Saved in a file that is deleted when the tests end. */
    Path save() {
        try {
            Path file = Scratch.folder().resolve("book.xlsx");
            try (OutputStream out = Files.newOutputStream(file)) {
                book.write(out);
            }
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Saved and read. */
    Reading<Book> read() {
        return read(Sources.of(save()));
    }

    /** Read with price lists. */
    Reading<Book> readWith(Path... priceFiles) {
        return read(new Sources(save(), List.of(priceFiles), null, null));
    }

    /** What was found, one line each, as a person reads it. */
    List<String> findings() {
        return read().findings().stream().map(Finding::toString).toList();
    }

    static Reading<Book> read(Sources sources) {
        try {
            return new BookReader().read(sources, TODAY);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The value of a figure that must be there. */
    static BigDecimal value(@Nullable Figure figure) {
        return requireNonNull(figure).value();
    }

    private void put(XSSFSheet sheet, int row, int column, @Nullable Object value) {
        Row cells = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
        Cell cell = cells.createCell(column);
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof LocalDate day) {
            cell.setCellValue(day);
            cell.setCellStyle(style("yyyy-mm-dd"));
        } else if (value instanceof String text && text.startsWith("=")) {
            cell.setCellFormula(text.substring(1));
        } else if (value instanceof String text && !text.isEmpty()) {
            cell.setCellValue(text);
        } else {
            cell.setBlank();
        }
    }

    private CellStyle style(String format) {
        return styles.computeIfAbsent(format, key -> {
            CellStyle style = book.createCellStyle();
            style.setDataFormat(book.createDataFormat().getFormat(key));
            return style;
        });
    }
}
