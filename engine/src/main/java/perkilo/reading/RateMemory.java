package perkilo.reading;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import perkilo.origin.Origin;
import perkilo.reading.RateAnswers.Question;
import perkilo.xlsx.grid.Csv;
import perkilo.xlsx.grid.UnreadableFileException;
import perkilo.xlsx.write.SavedFile;

/**
 * The questions about rates with their answers, kept as a CSV file beside the table of rates. An answer that is blank
 * is still waited for.
 */
public final class RateMemory {

    private static final List<String> HEADINGS = List.of(
            "Rates question", "About", "Answer", "File", "Sheet", "Cell", "What is there", "Question", "Choices");
    private static final String MARK = "\uFEFF";
    private static final String BETWEEN = " / ";
    private static final String CSV = ".csv";

    private final Map<List<String>, Kept> all = new LinkedHashMap<>();

    /**
     * A question with its answer.
     *
     * @param answer empty for none
     */
    public record Kept(Question question, String answer) {}

    private RateMemory() {}

    /** The file that holds the answers about the rates of a table: {@code rates.answers.csv} for {@code rates.csv}. */
    public static Path fileFor(Path table) {
        return table.resolveSibling(stem(table) + PriceFiles.RATE_ANSWERS_ENDING);
    }

    /** The workbook with the questions about the rates of a table: {@code rates-review.xlsx} for {@code rates.csv}. */
    public static Path reviewFor(Path table) {
        return table.resolveSibling(stem(table) + PriceFiles.REVIEW_ENDING);
    }

    private static String stem(Path table) {
        String name = String.valueOf(table.getFileName());
        return name.endsWith(CSV) ? name.substring(0, name.length() - CSV.length()) : name;
    }

    /**
     * What is remembered about the rates of a table; nothing if there is no such file.
     *
     * @throws UnreadableFileException if the file holds something else
     */
    public static RateMemory of(Path table) throws IOException {
        RateMemory memory = new RateMemory();
        Path file = fileFor(table);
        if (!Files.exists(file)) {
            return memory;
        }
        String text = Files.readString(file, StandardCharsets.UTF_8).replace(MARK, "");
        int after = HEADINGS.get(0).length();
        if (!text.startsWith(HEADINGS.get(0)) || text.length() <= after || ",;\t".indexOf(text.charAt(after)) < 0) {
            throw new UnreadableFileException(RateTableMessages.notAnswers(file));
        }
        for (Csv.Line line : Csv.read(text, text.charAt(after))) {
            List<String> fields =
                    line.fields().stream().map(field -> field.text().strip()).toList();
            if (fields.size() >= HEADINGS.size() && !fields.get(0).equals(HEADINGS.get(0))) {
                memory.put(new Kept(question(fields), fields.get(2)));
            }
        }
        return memory;
    }

    private static Question question(List<String> fields) {
        List<String> choices = fields.get(8).isEmpty()
                ? List.of()
                : Arrays.asList(fields.get(8).split(BETWEEN, -1));
        Origin where = new Origin(fields.get(3), fields.get(4), fields.get(5));
        return new Question(fields.get(0), fields.get(1), where, fields.get(6), fields.get(7), choices);
    }

    /** The answer to a question; empty if none is remembered. */
    public Optional<String> answer(String what, String about) {
        return Optional.ofNullable(all.get(List.of(what, about)))
                .map(Kept::answer)
                .filter(answer -> !answer.isBlank());
    }

    /** All questions, in the order in which they were first asked. */
    public List<Kept> all() {
        return new ArrayList<>(all.values());
    }

    /** Remembers a question with its answer. */
    public void put(Kept kept) {
        all.put(List.of(kept.question().what(), kept.question().about()), kept);
    }

    /** Forgets a question. */
    public void forget(Question question) {
        all.remove(List.of(question.what(), question.about()));
    }

    /** Writes the file for a table, if that changes it. */
    public void write(Path table) throws IOException {
        Path file = fileFor(table);
        if (all.isEmpty() && !Files.exists(file)) {
            return;
        }
        StringBuilder text =
                new StringBuilder(MARK).append(String.join(",", HEADINGS)).append('\n');
        for (Kept kept : all.values()) {
            Question asked = kept.question();
            text.append(List.of(
                                    asked.what(),
                                    asked.about(),
                                    kept.answer(),
                                    asked.where().file(),
                                    asked.where().sheet(),
                                    asked.where().cell(),
                                    asked.says(),
                                    asked.text(),
                                    String.join(BETWEEN, asked.choices()))
                            .stream()
                            .map(RateMemory::quoted)
                            .collect(Collectors.joining(",")))
                    .append('\n');
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        if (!Files.exists(file) || !Arrays.equals(Files.readAllBytes(file), bytes)) {
            SavedFile.write(file, bytes);
        }
    }

    /** A text that a spreadsheet would take for a formula gets a space before it, which the reader removes. */
    private static String quoted(String text) {
        String safe = !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0 ? " " + text : text;
        return "\"" + safe.replace("\"", "\"\"").replace("\n", " ").replace("\r", " ") + "\"";
    }
}
