package perkilo.review.prices;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A review as a person fills it in. */
public final class FilledReview implements AutoCloseable {

    private static final int HEAD_ROW = 3;

    private final Path file;
    private final XSSFWorkbook book;
    private final DataFormatter words = new DataFormatter();

    private FilledReview(Path file, XSSFWorkbook book) {
        this.file = file;
        this.book = book;
    }

    /** Opens a review. */
    public static FilledReview open(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new FilledReview(file, new XSSFWorkbook(in));
        }
    }

    /** The cells of a row, by their headings. */
    public Map<String, Cell> cells(Row row) {
        Map<String, Cell> cells = new LinkedHashMap<>();
        for (Cell heading : row.getSheet().getRow(HEAD_ROW)) {
            cells.put(
                    words.formatCellValue(heading),
                    row.getCell(heading.getColumnIndex(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK));
        }
        return cells;
    }

    /** The words of a row under a heading. */
    public String under(Row row, String heading) {
        return words.formatCellValue(cells(row).get(heading));
    }

    /** The first row of a sheet with some words in a cell; fails if there is none. */
    public Row row(String sheet, Predicate<String> where) {
        Sheet rows = book.getSheet(sheet);
        for (int number = HEAD_ROW + 1; number <= rows.getLastRowNum(); number++) {
            Row row = rows.getRow(number);
            if (row != null) {
                for (Cell cell : row) {
                    if (where.test(words.formatCellValue(cell))) {
                        return row;
                    }
                }
            }
        }
        throw new AssertionError("no such row on " + sheet);
    }

    /** How many rows a sheet has below its headings. */
    public int rows(String sheet) {
        return Math.max(0, book.getSheet(sheet).getLastRowNum() - HEAD_ROW);
    }

    /** Fills in a cell of a row that has some words. */
    public FilledReview fill(String sheet, String wordsOfRow, String heading, String answer) {
        Cell cell = cells(row(sheet, words -> words.contains(wordsOfRow))).get(heading);
        if (cell == null) {
            throw new AssertionError("no column " + heading);
        }
        cell.setBlank(); // in a cell with its words inline, the library would keep the old ones
        if (!answer.isEmpty()) {
            cell.setCellValue(answer);
        }
        return this;
    }

    /** Answers the question that has some words. */
    public FilledReview answer(String question, String answer) {
        return fill("Questions", question, "Answer", answer);
    }

    /** Saves it in its place. */
    @Override
    public void close() throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            book.write(out);
        }
        book.close();
    }
}
