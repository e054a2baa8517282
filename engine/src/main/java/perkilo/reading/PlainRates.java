package perkilo.reading;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;

/**
 * Reads a long table of rates quickly if it is written plainly: the columns From, To, Rate, Date and Source, commas,
 * ISO codes, decimal points, ISO dates, no quotation marks. Any other file is left to the full reader, which also
 * reports what is wrong.
 */
final class PlainRates {

    private static final String HEADER = "From,To,Rate,Date,Source";
    private static final Pattern DECIMAL = Pattern.compile("\\d{1,15}(\\.\\d{1,15})?");

    private final String file;
    private final List<DatedRate> rates = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();
    private String lastText = "";
    private @Nullable LocalDate lastDay;

    private PlainRates(String file) {
        this.file = file;
    }

    /** All rates of a file; empty if it is not as plain as that in every line. */
    static Optional<List<DatedRate>> read(Path file) throws IOException {
        if (!isOne(file)) {
            return Optional.empty();
        }
        PlainRates reader = new PlainRates(String.valueOf(file.getFileName()));
        try {
            List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
            for (int line = 1; line < lines.size(); line++) {
                if (!lines.get(line).isEmpty() && !reader.add(lines.get(line), line + 1)) {
                    return Optional.empty();
                }
            }
        } catch (CharacterCodingException notUtf8) {
            return Optional.empty();
        }
        return reader.rates.isEmpty() ? Optional.empty() : Optional.of(reader.rates);
    }

    /** Whether a file begins with the headers of such a table. */
    static boolean isOne(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (var content = Files.newInputStream(file)) {
            byte[] start = content.readNBytes(HEADER.length() + 1);
            String text = new String(start, StandardCharsets.UTF_8);
            return text.strip().equals(HEADER);
        }
    }

    /** Reads one line; false if it is not plain, or repeats the pair and the day of another line. */
    private boolean add(String line, int number) {
        String[] fields = line.split(",", -1);
        if (fields.length != 5 || line.indexOf('"') >= 0) {
            return false;
        }
        CurrencyUnit from = currency(fields[0]);
        CurrencyUnit to = currency(fields[1]);
        LocalDate date = date(fields[3]);
        BigDecimal rate = DECIMAL.matcher(fields[2]).matches() ? new BigDecimal(fields[2]) : BigDecimal.ZERO;
        if (from == null || to == null || from.equals(to) || date == null || rate.signum() == 0) {
            return false;
        }
        Figure figure = new Figure(rate, new Origin(file, "", "line " + number), null);
        rates.add(new DatedRate(from, to, figure, date, fields[4].strip()));
        return seen.add(fields[0] + fields[1] + fields[3]);
    }

    private static @Nullable CurrencyUnit currency(String code) {
        return Currencies.find(code)
                .filter(found -> found.getCurrencyCode().equals(code))
                .orElse(null);
    }

    /** The day; most lines are of the same day as the one before. */
    private @Nullable LocalDate date(String text) {
        if (text.equals(lastText)) {
            return lastDay;
        }
        try {
            lastDay = LocalDate.parse(text);
            lastText = text;
            return lastDay;
        } catch (DateTimeParseException e) {
            return null;
        }
    }
}
