package perkilo.xlsx.author;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A small workbook as a formulator would write it. */
public final class SampleBook {

    public static final String FILE = "cream.xlsx";

    private static final Object[][] OFFERS = {
        {"Supplier", "Item", "Pack size kg", "Price per kg", "Duty %"},
        {"Lindgren", "Shea butter", 25, 6.4, 2.5},
        {"Lindgren", "Cetearyl alcohol", 20, 3.15, 0},
        {"Okafor & Sons", "Glycerin", 30, 1.85, 0},
        {"Okafor & Sons", "Preservative", 5, 21.7, 6.5}
    };

    private SampleBook() {}

    /** The rows of the sheet of offers, the heads first. */
    public static List<Object[]> offers() {
        return Stream.of(OFFERS).map(Object[]::clone).toList();
    }

    /** Writes it into a folder. */
    public static Path in(Path folder) throws IOException {
        Path file = folder.resolve(FILE);
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            Sheet offers = workbook.createSheet("Offers");
            for (Object[] row : OFFERS) {
                fill(offers.createRow(offers.getLastRowNum() + 1), row);
            }
            workbook.createSheet("Köln's notes").createRow(0).createCell(0).setCellValue("keep me");
            workbook.write(out);
        }
        return file;
    }

    public static void fill(Row row, Object... values) {
        for (int column = 0; column < values.length; column++) {
            if (values[column] instanceof Number number) {
                row.createCell(column).setCellValue(number.doubleValue());
            } else {
                row.createCell(column).setCellValue(String.valueOf(values[column]));
            }
        }
    }
}
