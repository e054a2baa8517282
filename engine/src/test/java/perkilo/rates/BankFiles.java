package perkilo.rates;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Files that the European Central Bank published up to 21 February 2023: the day, 90 days and the full history as XML,
 * unpacked from a library that carries them ({@code moneta-convert-ecb}, Apache-2.0); and the same rates in the bank's
 * CSV form.
 *
 * <p>The history is read here in a second way, by a pattern over the text, for comparison with the engine's reading.
 */
public final class BankFiles {

    private static final Path FOLDER = Path.of("target/published-rates/org/javamoney/moneta/convert/ecb/defaults");
    private static final Pattern PIECE =
            Pattern.compile("time=[\"']([0-9-]+)[\"']|currency=[\"']([A-Z]{3})[\"'] rate=[\"']([0-9.]+)[\"']");

    private BankFiles() {}

    /** The rates of the last day. */
    public static Path day() {
        return FOLDER.resolve("eurofxref-daily.xml");
    }

    /** The rates of 90 days. */
    public static Path ninetyDays() {
        return FOLDER.resolve("eurofxref-hist-90d.xml");
    }

    /** The rates of all days since 4 January 1999. */
    public static Path history() {
        return FOLDER.resolve("eurofxref-hist.xml");
    }

    /** Units of each currency for one euro, by day and currency's code. */
    public static Map<String, Map<String, String>> byDay(Path file) throws IOException {
        Map<String, Map<String, String>> days = new TreeMap<>();
        Map<String, String> day = new TreeMap<>();
        Matcher pieces = PIECE.matcher(Files.readString(file));
        while (pieces.find()) {
            if (pieces.group(1) != null) {
                day = days.computeIfAbsent(pieces.group(1), any -> new TreeMap<>());
            } else {
                day.put(pieces.group(2), pieces.group(3));
            }
        }
        return days;
    }

    /**
     * The same rates in the form of the bank's CSV: a row for each day, newest first, with a comma at the end of each
     * line.
     */
    public static String csv(Map<String, Map<String, String>> days) {
        TreeSet<String> currencies = new TreeSet<>();
        days.values().forEach(day -> currencies.addAll(day.keySet()));
        StringBuilder csv = new StringBuilder("Date," + String.join(",", currencies) + ",\n");
        List<String> newestFirst = new ArrayList<>(days.keySet());
        Collections.reverse(newestFirst);
        for (String day : newestFirst) {
            csv.append(day).append(',');
            currencies.forEach(
                    currency -> csv.append(days.getOrDefault(day, Map.of()).getOrDefault(currency, "N/A"))
                            .append(','));
            csv.append('\n');
        }
        return csv.toString();
    }

    /** A ZIP file with one text file in it. */
    public static Path zip(Path target, String entry, String text) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(target))) {
            zip.putNextEntry(new ZipEntry(entry));
            zip.write(text.getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        }
        return target;
    }
}
