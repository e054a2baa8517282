package perkilo.units;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.money.CurrencyUnit;
import perkilo.origin.Figure;

/**
 * The fixed rates at which the euro replaced other currencies, from {@code euro-fixed-rates.csv}; they never change.
 *
 * <p>Council Regulation (EC) No 2866/98 and the regulations that amend it. For a currency that joins the euro, add a
 * row to that file.
 */
public final class EuroFixedRates {

    private EuroFixedRates() {}

    /**
     * The rate at which the euro has replaced a currency: units of the currency for one euro.
     *
     * @param date the day of the conversion; it is also the rate's date, as a fixed rate never gets old
     * @return empty if the currency has not been replaced, or not yet on the day
     */
    public static Optional<DatedRate> on(LocalDate date, CurrencyUnit currency) {
        Row row = Table.ROWS.get(currency.getCurrencyCode());
        return row == null || date.isBefore(row.firstDay())
                ? Optional.empty()
                : Optional.of(new DatedRate(euro(), currency, row.unitsPerEuro(), date, row.source()));
    }

    /** The euro. */
    static CurrencyUnit euro() {
        return Currencies.of("EUR");
    }

    /** The rows of the file, by their currencies. */
    static Map<String, Row> rows() {
        return Table.ROWS;
    }

    /**
     * A row of the file.
     *
     * @param firstDay the first day on which the euro replaced the currency
     */
    record Row(Figure unitsPerEuro, LocalDate firstDay, String source) {}

    /** Loads the file when a currency is first looked up; most workbooks never need it. */
    private static final class Table {

        private static final Map<String, Row> ROWS = read();

        private static Map<String, Row> read() {
            Map<String, Row> rows = new LinkedHashMap<>();
            try (InputStream file = EuroFixedRates.class.getResourceAsStream("euro-fixed-rates.csv")) {
                if (file == null) {
                    throw new IllegalStateException("euro-fixed-rates.csv is missing from this build");
                }
                BufferedReader lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8));
                lines.readLine();
                for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                    String[] fields = line.split(",", 4);
                    String source = fields[3].replace("\"", "");
                    rows.put(fields[0], new Row(Figure.of(fields[1]), LocalDate.parse(fields[2]), source));
                }
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
            return rows;
        }
    }
}
