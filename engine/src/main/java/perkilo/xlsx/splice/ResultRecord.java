package perkilo.xlsx.splice;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import perkilo.xlsx.parts.PartNames;
import perkilo.xlsx.splice.WorkbookPart.LocalName;

/**
 * The record in a result of which answer it is, for which workbook, and what all its parts were when it was written.
 *
 * <p>A file whose record still fits, and names the same answer for the same workbook, may be replaced without a backup:
 * a person has put nothing into it. The record is a hidden defined name in the scope of a sheet of ours.
 */
public final class ResultRecord {

    private static final String NAME = "_perkilo_result";
    private static final String BETWEEN = "/";

    private ResultRecord() {}

    /**
     * The words that tell one answer for one workbook from all others.
     *
     * @param answer what kind of answer, such as the name of its first sheet
     * @param book the person's workbook; null for an answer without one
     */
    public static String subject(String answer, @Nullable Path book) {
        String place = book == null ? "" : book.toAbsolutePath().normalize().toString();
        return key(answer) + BETWEEN + sum(place);
    }

    private static String key(String words) {
        return words.replace(BETWEEN, " ").replace("\"", "");
    }

    private static String sum(String text) {
        CRC32 sum = new CRC32();
        sum.update(PartText.encoded(text));
        return Long.toHexString(sum.getValue());
    }

    /** The records of earlier runs. */
    static List<XmlElement> earlier(WorkbookPart workbook) {
        return workbook.definedNames().stream()
                .filter(name -> NAME.equals(name.get("name")))
                .toList();
    }

    /**
     * The record of a workbook whose other parts are complete.
     *
     * @param sheet the place of a sheet of ours, from zero: the record goes with that sheet
     */
    static LocalName of(Map<String, Long> sums, WorkbookPart workbook, String subject, int sheet) {
        return new LocalName(NAME, sheet, true, content(sums, workbook, subject));
    }

    private static String content(Map<String, Long> sums, WorkbookPart workbook, String subject) {
        return "\"" + subject + BETWEEN + digest(sums, workbook.part()) + "\"";
    }

    /**
     * The parts of a whole workbook of ours, with the record.
     *
     * @param parts by their names
     */
    public static Map<String, byte[]> into(Map<String, byte[]> parts, String subject) throws IOException {
        Map<String, Long> sums = new HashMap<>();
        parts.forEach((part, bytes) -> sums.put(PartNames.key(part), ZippedParts.sumOf(bytes)));
        WorkbookPart workbook = WorkbookPart.of(new MemoryParts(parts));
        workbook.change(List.of(), List.of(of(sums, workbook, subject, 0)));
        Map<String, byte[]> recorded = new LinkedHashMap<>(parts);
        recorded.put(workbook.part(), PartText.encoded(workbook.text()));
        return recorded;
    }

    /** A sum over all parts but the workbook part, which holds the record. */
    private static String digest(Map<String, Long> sums, String without) {
        StringBuilder all = new StringBuilder();
        new TreeMap<>(sums).forEach((part, sum) -> {
            if (!part.equals(PartNames.key(without))) {
                all.append(part.toLowerCase(Locale.ROOT))
                        .append(' ')
                        .append(sum)
                        .append('\n');
            }
        });
        return sum(all.toString());
    }

    /**
     * Whether a file is an untouched result.
     *
     * @param file any file
     * @param subject the answer and the workbook that it has to be the result of
     */
    public static boolean isUntouched(Path file, String subject) {
        try (BookPackage book = BookPackage.open(file)) {
            WorkbookPart workbook = WorkbookPart.of(book);
            String expected = content(book.sums(), workbook, subject);
            List<XmlElement> records = earlier(workbook);
            return records.size() == 1 && records.get(0).words().strip().equals(expected);
        } catch (IOException e) {
            return false; // not a workbook, so not a result
        }
    }
}
