package perkilo.pricelists;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import perkilo.xlsx.grid.Csv;
import perkilo.xlsx.grid.UnreadableFileException;
import perkilo.xlsx.write.SavedFile;

/** What is remembered of a supplier as a CSV file, which a person can open in a spreadsheet program and correct. */
final class MemoryFile {

    private static final List<String> HEADINGS =
            List.of("What", "On the list", "Answer", "How", "Question", "Choices", "Headers");
    private static final String MARK = "\uFEFF";
    private static final String BETWEEN = " / ";
    private static final Charset OF_OLD_SPREADSHEETS = Charset.forName("windows-1252");

    private MemoryFile() {}

    /**
     * Reads a file.
     *
     * @throws UnreadableFileException if it holds no answers
     */
    static Memory read(Path file) throws IOException {
        String text = decoded(Files.readAllBytes(file)).replace(MARK, "");
        int after = HEADINGS.get(0).length();
        boolean ours =
                text.startsWith(HEADINGS.get(0)) && text.length() > after && ",;\t".indexOf(text.charAt(after)) >= 0;
        if (!ours) {
            throw new UnreadableFileException(ListMessages.notAnswers(file));
        }
        List<Remembered> rows = new ArrayList<>();
        String supplier = "";
        for (Csv.Line line : Csv.read(text, text.charAt(after))) {
            Remembered row = row(line);
            if (row.what().equals(Memory.SUPPLIER)) {
                supplier = row.answer();
            } else if (!row.what().isEmpty() && !row.what().equals(HEADINGS.get(0))) {
                rows.add(row);
            }
        }
        Memory memory = new Memory(supplier);
        rows.forEach(memory::put);
        return memory;
    }

    private static String decoded(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException other) {
            return new String(bytes, OF_OLD_SPREADSHEETS);
        }
    }

    private static Remembered row(Csv.Line line) {
        List<String> texts = new ArrayList<>();
        for (int field = 0; field < HEADINGS.size(); field++) {
            texts.add(
                    field < line.fields().size()
                            ? line.fields().get(field).text().strip()
                            : "");
        }
        List<String> choices =
                texts.get(5).isEmpty() ? List.of() : Arrays.asList(texts.get(5).split(BETWEEN, -1));
        return new Remembered(
                texts.get(0), texts.get(1), texts.get(2), texts.get(3), texts.get(4), choices, texts.get(6));
    }

    /** Writes a file. */
    static void write(Path file, Memory memory) throws IOException {
        StringBuilder text =
                new StringBuilder(MARK).append(String.join(",", HEADINGS)).append('\n');
        for (Remembered row : memory.rows()) {
            List<String> fields = List.of(
                    row.what(),
                    row.listed(),
                    row.answer(),
                    row.how(),
                    row.question(),
                    String.join(BETWEEN, row.choices()),
                    row.layout());
            text.append(String.join(",", fields.stream().map(LongForm::quoted).toList()))
                    .append('\n');
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        if (!Files.exists(file) || !Arrays.equals(Files.readAllBytes(file), bytes)) {
            SavedFile.write(file, bytes);
        }
    }
}
