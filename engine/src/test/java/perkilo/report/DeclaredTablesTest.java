package perkilo.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Result sheets are declared: no report writes into a column by its number or letters, or looks for English words. */
final class DeclaredTablesTest {

    private static final Path REPORTS = Path.of("src", "main", "java", "perkilo", "report");

    /** A cell whose column is a number: the second argument of whatever writes one. */
    private static final Pattern BY_NUMBER = Pattern.compile(
            "\\b[a-zA-Z]*sheet\\(?\\)?\\s*\\.(?:text|value|checked|sentence|fileName|width)\\(\\s*[^,;()]+(?:\\(\\))?,\\s*\\d");

    /** Letters and a row, such as {@code "B7"} or {@code "$D$5"}. */
    private static final Pattern BY_LETTERS = Pattern.compile("\"\\$?[A-Z]{1,2}\\$?[0-9]+[\":]");

    /** A condition that looks for words in a cell. */
    private static final Pattern BY_WORDS = Pattern.compile("SEARCH\\(|FIND\\(");

    @Test
    void no_column_is_written_by_number_or_letters() throws IOException {
        assertThat(found(BY_NUMBER, BY_LETTERS))
                .as("declare a Column in a Table, and refer to it")
                .isEmpty();
    }

    @Test
    void no_format_depends_on_words() throws IOException {
        assertThat(found(BY_WORDS))
                .as("let a figure decide, or the sign of perkilo.sheet.Sign")
                .isEmpty();
    }

    private static List<String> found(Pattern... patterns) throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(REPORTS)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                String source = Files.readString(file);
                for (Pattern pattern : patterns) {
                    Matcher one = pattern.matcher(source);
                    while (one.find()) {
                        found.add(REPORTS.relativize(file) + ": " + one.group());
                    }
                }
            }
        }
        return found;
    }
}
