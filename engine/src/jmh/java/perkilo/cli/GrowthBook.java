package perkilo.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/** Workbooks and price lists of any size; everything in them is invented. */
final class GrowthBook {

    private static final int MATERIALS = 60;
    private static final int LINES = 10;
    private static final String[] CURRENCIES = {"EUR", "USD", "GBP"};
    private static final String HEADS = "Supplier,Item,Pack size,Pack unit,From quantity,Price,Price per,Currency";

    private GrowthBook() {}

    /** A workbook with so many formulas of ten lines, and offers of their 60 materials in three currencies. */
    static Path write(Path file, int formulas) throws IOException {
        try (SXSSFWorkbook book = new SXSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            offers(book.createSheet("Offers"));
            rates(book.createSheet("Rates"));
            Sheet settings = book.createSheet("Settings");
            fill(settings, "Setting", "Value");
            fill(settings, "Home currency", "EUR");
            for (int formula = 0; formula < formulas; formula++) {
                formula(book.createSheet("Formula " + (formula + 1)), formula);
            }
            book.write(out);
        }
        return file;
    }

    private static void offers(Sheet sheet) {
        Random random = new Random(11);
        fill(sheet, (Object[]) HEADS.split(","));
        for (int material = 0; material < MATERIALS; material++) {
            double price = 2 + random.nextInt(3_000) / 100.0;
            String supplier = "Supplier " + material % CURRENCIES.length;
            String currency = CURRENCIES[material % CURRENCIES.length];
            fill(sheet, supplier, name(material), 1.0, "kg", "", price * 1.6, "kg", currency);
            fill(sheet, supplier, name(material), 5.0, "kg", "", price * 1.2, "kg", currency);
            fill(sheet, supplier, name(material), 25.0, "kg", "", price, "kg", currency);
            fill(sheet, supplier, name(material), 25.0, "kg", 100.0, price * 0.9, "kg", currency);
        }
    }

    private static void rates(Sheet sheet) {
        fill(sheet, "From", "To", "Rate", "Date");
        fill(sheet, "EUR", "USD", 1.16, "2026-11-20");
        fill(sheet, "EUR", "GBP", 0.88, "2026-11-20");
    }

    private static void formula(Sheet sheet, int number) {
        fill(sheet, "Material", "% w/w");
        for (int line = 0; line < LINES; line++) {
            fill(sheet, name((number + 7 * line) % MATERIALS), 100.0 / LINES);
        }
    }

    private static String name(int material) {
        return "Invented material " + (material + 1);
    }

    /** A supplier's list of so many materials, the first of them those of the formulas. */
    static Path writeList(Path file, int offers) throws IOException {
        Random random = new Random(7);
        StringBuilder list = new StringBuilder(HEADS).append('\n');
        for (int row = 0; row < offers; row++) {
            list.append("Fen & Moor (invented),").append(name(row)).append(',').append(5 * (1 + random.nextInt(5)));
            list.append(",kg,,").append((100 + random.nextInt(5_000)) / 100.0).append(",kg,EUR\n");
        }
        Files.writeString(file, list, StandardCharsets.UTF_8);
        return file;
    }

    private static void fill(Sheet sheet, Object... values) {
        Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
        for (int column = 0; column < values.length; column++) {
            if (values[column] instanceof Double number) {
                row.createCell(column).setCellValue(number);
            } else if (values[column] instanceof String text) {
                row.createCell(column).setCellValue(text);
            }
        }
    }
}
