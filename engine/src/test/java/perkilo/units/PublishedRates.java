package perkilo.units;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import perkilo.origin.Figure;

/** Published tables of rates, each row with its source. */
final class PublishedRates {

    private PublishedRates() {}

    /** Euro foreign exchange reference rates of the European Central Bank on three days. */
    static ExchangeRates ofTheEuropeanCentralBank() {
        return new ExchangeRates(rows("ecb-reference-rates.csv")
                .map(row -> perEuro(row[1], row[2], LocalDate.parse(row[0]), row[3]))
                .toList());
    }

    static DatedRate perEuro(String currency, String rate, LocalDate date, String source) {
        return new DatedRate(Currencies.of("EUR"), Currencies.of(currency), Figure.of(rate), date, source);
    }

    static Stream<String[]> rows(String file) {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(PublishedRates.class.getResourceAsStream(file)), StandardCharsets.UTF_8))) {
            List<String[]> rows =
                    lines.lines().skip(1).map(line -> line.split(",", 4)).toList();
            return rows.stream();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
