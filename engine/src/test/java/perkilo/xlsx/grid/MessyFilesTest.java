package perkilo.xlsx.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Messy delimited files, against the rows that they were written from. */
final class MessyFilesTest {

    /** Three have spaces between fields and marks that are not doubled. */
    private static final int MOST_NOT_EXACT = 3;

    @Test
    void nearly_all_load_exactly() throws IOException {
        List<MessyFiles.Messy> files = MessyFiles.all();
        List<String> wrong = new ArrayList<>();
        double sum = 0;
        int low = 0;
        for (MessyFiles.Messy file : files) {
            List<List<String>> read = read(file.text());
            double f1 = f1(file.rows(), read);
            sum += f1;
            low += f1 < 0.95 ? 1 : 0;
            if (!tidy(file.rows()).equals(read)) {
                wrong.add("%.4f %s".formatted(f1, file.name()));
            }
        }
        double mean = sum / files.size();
        wrong.add(
                0,
                "%d files, %d not exact, mean F1 %.4f, %d below 0.95".formatted(files.size(), wrong.size(), mean, low));
        Files.write(Path.of("target", "messy-files.txt"), wrong);
        assertThat(mean).isGreaterThanOrEqualTo(0.995);
        assertThat(wrong.size() - 1).isLessThanOrEqualTo(MOST_NOT_EXACT);
    }

    private static List<List<String>> read(String text) {
        DialectFinder.Found found = DialectFinder.find(text);
        List<List<String>> rows = new ArrayList<>();
        new Csv(text, found.dialect(), found.usual())
                .read(line ->
                        rows.add(line.fields().stream().map(Csv.Field::text).toList()));
        return tidy(rows);
    }

    /** Without spaces around fields, blank fields at the end of rows, and blank rows. */
    private static List<List<String>> tidy(List<List<String>> rows) {
        List<List<String>> tidy = new ArrayList<>();
        for (List<String> row : rows) {
            List<String> cells = new ArrayList<>(row.stream().map(Spaces::strip).toList());
            while (!cells.isEmpty() && cells.get(cells.size() - 1).isEmpty()) {
                cells.remove(cells.size() - 1);
            }
            if (!cells.isEmpty()) {
                tidy.add(cells);
            }
        }
        return tidy;
    }

    /** The harmonic mean of precision and recall of the cells, as the paper of the benchmark measures it. */
    private static double f1(List<List<String>> truth, List<List<String>> read) {
        Map<String, Integer> left = new HashMap<>();
        int wanted = 0;
        for (List<String> row : tidy(truth)) {
            for (String cell : row) {
                left.merge(cell, 1, Integer::sum);
                wanted++;
            }
        }
        int found = 0;
        int hits = 0;
        for (List<String> row : read) {
            for (String cell : row) {
                found++;
                if (left.getOrDefault(cell, 0) > 0) {
                    left.merge(cell, -1, Integer::sum);
                    hits++;
                }
            }
        }
        return hits == 0 ? 0 : 2.0 * hits / (wanted + found);
    }
}
