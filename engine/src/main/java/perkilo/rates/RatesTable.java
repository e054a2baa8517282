package perkilo.rates;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.CurrencyUnit;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.reading.RatesReader;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;
import perkilo.xlsx.grid.UnreadableFileException;
import perkilo.xlsx.write.SavedFile;

/** The table of rates in one file; each pair of currencies has one rate per day. */
public final class RatesTable {

    private static final List<String> COLUMNS = List.of("From", "To", "Rate", "Date", "Source");

    private static final Comparator<DatedRate> NEWEST_FIRST = Comparator.comparing(DatedRate::date)
            .reversed()
            .thenComparing(rate -> rate.from().getCurrencyCode())
            .thenComparing(rate -> rate.to().getCurrencyCode());

    private final Map<Key, DatedRate> rates = new LinkedHashMap<>();

    private RatesTable() {}

    /**
     * Reads the table in a file; the table is empty if there is no such file.
     *
     * @return the table, and the faults found in it
     * @throws UnreadableFileException if the file is not such a table, so it must not be overwritten
     */
    public static Reading<RatesTable> read(Path file) throws IOException {
        RatesTable table = new RatesTable();
        List<Finding> findings = new ArrayList<>();
        if (Files.exists(file)) {
            checkItIsOurs(file);
            if (hasRows(file)) {
                Reading<List<DatedRate>> read = new RatesReader().read(file);
                findings.addAll(read.findings());
                table.take(read.value(), false);
            }
        }
        return new Reading<>(table, findings);
    }

    private static void checkItIsOurs(Path file) throws IOException {
        if (!Files.isRegularFile(file) || !header(file).equals(COLUMNS)) {
            throw new UnreadableFileException(RateMessages.otherFile(file));
        }
    }

    private static List<String> header(Path file) throws IOException {
        byte[] start;
        try (var content = Files.newInputStream(file)) {
            start = content.readNBytes(200);
        }
        String first = new String(start, StandardCharsets.UTF_8)
                .replace("\uFEFF", "")
                .lines()
                .findFirst()
                .orElse("");
        return Arrays.stream(first.split("[,;\t]"))
                .map(column -> column.replace("\"", "").strip())
                .toList();
    }

    private static boolean hasRows(Path file) throws IOException {
        try (var lines = Files.newBufferedReader(file, StandardCharsets.ISO_8859_1)) {
            lines.readLine();
            return lines.lines().anyMatch(line -> !line.isBlank());
        }
    }

    /**
     * Adds rates. If the table already has a rate for the pair and day, that rate stays unless it is to be replaced.
     *
     * @param replace whether an incoming rate replaces a different one in the table
     */
    public Taken take(List<DatedRate> incoming, boolean replace) {
        int added = 0;
        int same = 0;
        List<Differing> differing = new ArrayList<>();
        for (DatedRate rate : incoming) {
            Key key = new Key(rate.from(), rate.to(), rate.date());
            DatedRate there = rates.putIfAbsent(key, rate);
            if (there == null) {
                added++;
            } else if (there.rate().value().compareTo(rate.rate().value()) == 0) {
                same++;
            } else {
                differing.add(new Differing(there, rate, replace));
                if (replace) {
                    rates.put(key, rate);
                }
            }
        }
        return new Taken(incoming.size(), added, same, differing);
    }

    /** All rates, newest day first. */
    public List<DatedRate> rates() {
        return rates.values().stream().sorted(NEWEST_FIRST).toList();
    }

    /** The rates, for conversions on a day. */
    public ExchangeRates exchangeRates() {
        return new ExchangeRates(rates());
    }

    /**
     * Writes the table; the file's old content is replaced.
     *
     * @throws IOException if it cannot be written, with the reason and what to do
     */
    public void write(Path file) throws IOException {
        StringBuilder text = new StringBuilder(String.join(",", COLUMNS)).append('\n');
        for (DatedRate rate : rates()) {
            text.append(rate.from().getCurrencyCode())
                    .append(',')
                    .append(rate.to().getCurrencyCode())
                    .append(',')
                    .append(rate.rate().value().toPlainString())
                    .append(',')
                    .append(rate.date())
                    .append(',')
                    .append(quoted(rate.source()))
                    .append('\n');
        }
        SavedFile.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static String quoted(String text) {
        boolean plain =
                text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r' || c == ';' || c == '\t');
        return plain ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }

    private record Key(CurrencyUnit from, CurrencyUnit to, LocalDate date) {}

    /**
     * The outcome of adding rates.
     *
     * @param rates how many rates came in
     * @param added how many were new
     * @param same how many the table already had
     * @param differing those that the table had with another value
     */
    public record Taken(int rates, int added, int same, List<Differing> differing) {

        public Taken {
            differing = List.copyOf(differing);
        }

        /** Whether the table has changed. */
        public boolean changed() {
            return added > 0 || differing.stream().anyMatch(Differing::replaced);
        }
    }

    /**
     * Two rates of one pair and day that differ.
     *
     * @param there the rate in the table
     * @param incoming the rate that came in
     * @param replaced whether the table now has the incoming rate
     */
    public record Differing(DatedRate there, DatedRate incoming, boolean replaced) {

        /** The difference as a warning for a person. */
        public Finding finding() {
            String from = incoming.from().getCurrencyCode();
            String to = incoming.to().getCurrencyCode();
            BigDecimal rate = incoming.rate().value();
            BigDecimal known = there.rate().value();
            return Finding.warning(
                    incoming.rate().origin(),
                    replaced
                            ? RateMessages.replacedRate(from, to, incoming.date(), rate, known, there.source())
                            : RateMessages.keptRate(from, to, incoming.date(), rate, known, there.source()));
        }
    }
}
