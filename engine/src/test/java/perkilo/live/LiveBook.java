package perkilo.live;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** An invented book with every kind of sheet, small enough to be costed and recalculated many times. */
final class LiveBook {

    static final List<String> SHEETS = List.of(
            "Settings",
            "Suppliers",
            "Offers",
            "Materials",
            "Batches",
            "Hand balm",
            "Body lotion",
            "Products",
            "Components",
            "Runs",
            "Demand",
            "Stock",
            "Rates");

    private LiveBook() {}

    /** Writes it. */
    static Path write(Path file) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            CellStyle day = book.createCellStyle();
            day.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
            for (String name : SHEETS) {
                fill(book.createSheet(name), lines("book/" + name + ".csv"), day);
            }
            book.write(out);
        }
        return file;
    }

    private static void fill(XSSFSheet sheet, List<List<String>> lines, CellStyle day) {
        for (int row = 0; row < lines.size(); row++) {
            sheet.createRow(row);
            for (int column = 0; column < lines.get(row).size(); column++) {
                String text = lines.get(row).get(column);
                if (!text.isEmpty()) {
                    type(sheet.getRow(row).createCell(column), text, day);
                }
            }
        }
    }

    /** Types a text as a person would: a day, a number, or words. */
    static void type(XSSFCell cell, String text, CellStyle day) {
        if (text.matches("\\d{4}-\\d\\d-\\d\\d")) {
            cell.setCellValue(LocalDate.parse(text));
            cell.setCellStyle(day);
        } else if (text.matches("-?\\d+(\\.\\d+)?")) {
            cell.setCellValue(Double.parseDouble(text));
        } else {
            cell.setCellValue(text);
        }
    }

    /** The lines of a file of comma-separated values among the test's resources. */
    static List<List<String>> lines(String resource) throws IOException {
        List<List<String>> lines = new ArrayList<>();
        try (InputStream in = Objects.requireNonNull(LiveBook.class.getResourceAsStream("/perkilo/live/" + resource));
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    lines.add(split(line));
                }
            }
        }
        return lines;
    }

    private static List<String> split(String line) {
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                parts.add(part.toString());
                part.setLength(0);
            } else {
                part.append(c);
            }
        }
        parts.add(part.toString());
        return parts;
    }
}
