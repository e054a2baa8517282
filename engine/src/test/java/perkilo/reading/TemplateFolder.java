package perkilo.reading;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/** A folder of CSV files, one per sheet, as a workbook. */
final class TemplateFolder {

    static final Path SOURCES = Path.of("..", "workbook-templates", "source");

    private TemplateFolder() {}

    /** The workbook of a template. */
    static TestBook book(String template) {
        TestBook book = TestBook.empty();
        try (Stream<Path> files = Files.list(SOURCES.resolve(template))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".csv"))
                    .sorted()
                    .toList()) {
                Grid grid = Grids.ofPriceFile(file).sheets().get(0);
                book.sheet(grid.title(), rows(grid));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return book;
    }

    private static List<?>[] rows(Grid grid) {
        List<List<Object>> rows = new ArrayList<>();
        for (int row = 0; row <= grid.rows().last(); row++) {
            List<Object> values = new ArrayList<>();
            int last = grid.row(row).isEmpty() ? -1 : grid.row(row).lastKey();
            for (int column = 0; column <= last; column++) {
                values.add(value(grid.at(row, column)));
            }
            rows.add(values);
        }
        return rows.toArray(List[]::new);
    }

    private static Object value(Cell cell) {
        if (cell.number() != null) {
            return cell.number();
        }
        return cell.text().matches("\\d{4}-\\d{2}-\\d{2}") ? LocalDate.parse(cell.text()) : cell.text();
    }
}
