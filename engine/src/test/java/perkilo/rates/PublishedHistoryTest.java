package perkilo.rates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import perkilo.Ratio;
import perkilo.origin.Reading;
import perkilo.reading.RatesReader;
import perkilo.units.Conversion;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;

/** 24 years of euro reference rates, read in each form that the bank publishes. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class PublishedHistoryTest {

    @TempDir
    private Path folder = Path.of("");

    private TreeMap<String, Map<String, String>> days = new TreeMap<>();
    private List<DatedRate> history = List.of();

    @BeforeAll
    void read() throws IOException {
        days = new TreeMap<>(BankFiles.byDay(BankFiles.history()));
        history = read(BankFiles.history());
    }

    @Test
    void every_rate_of_the_history_is_read_as_it_was_published() {
        assertThat(lines(history)).isEqualTo(expected(days));
        assertThat(history.size()).isGreaterThan(190_000);
        assertThat(days.firstKey()).isEqualTo("1999-01-04");
        assertThat(days.lastKey()).isEqualTo("2023-02-21");
    }

    @Test
    void ninety_days_and_the_last_day_are_parts_of_it() throws IOException {
        Set<String> all = new HashSet<>(expected(days));
        assertThat(lines(read(BankFiles.ninetyDays()))).isNotEmpty().allMatch(all::contains);
        assertThat(lines(read(BankFiles.day()))).isNotEmpty().allMatch(all::contains);
    }

    @Test
    void zipped_csv_holds_the_same() throws IOException {
        Path zip = BankFiles.zip(folder.resolve("eurofxref-hist.zip"), "eurofxref-hist.csv", BankFiles.csv(days));

        List<DatedRate> rates = read(zip);

        assertThat(lines(rates)).isEqualTo(expected(days));
        assertThat(rates.get(0).rate().origin().where()).isEqualTo("eurofxref-hist.csv line 2");
    }

    /** On every day of five months, published or not, a cross is exactly the quotient of the last published day. */
    @Test
    void on_any_day_the_cross_of_the_last_published_day_holds() {
        LocalDate first = LocalDate.of(2004, 1, 1);
        ExchangeRates rates = new ExchangeRates(history.stream()
                .filter(rate -> rate.date().getYear() >= 2003 && rate.date().getYear() <= 2004)
                .toList());
        int weekends = 0;
        for (LocalDate day = first; day.isBefore(first.plusMonths(5)); day = day.plusDays(1)) {
            Map.Entry<String, Map<String, String>> published = days.floorEntry(day.toString());
            weekends += published.getKey().equals(day.toString()) ? 0 : 1;
            for (String from : List.of("USD", "GBP", "SIT")) {
                Conversion cross =
                        rates.on(day, Currencies.of(from), Currencies.of("JPY")).orElseThrow();
                Ratio.of(published(published.getKey(), "JPY"))
                        .by(Ratio.of(published(published.getKey(), from)))
                        .assertIs(cross.factor(), from + " on " + day);
                assertThat(day.minusDays(cross.ageInDays(day))).hasToString(published.getKey());
            }
        }
        assertThat(weekends).isGreaterThan(40);
    }

    /** Slovenia adopted the euro in 2007: until then the bank's rates are used, and afterwards the legal rate. */
    @Test
    void a_currency_that_the_euro_has_replaced_has_the_rate_of_the_law() {
        ExchangeRates rates = new ExchangeRates(history);

        assertThat(tolar(rates, LocalDate.of(2006, 12, 31)).factor())
                .isEqualByComparingTo(published("2006-12-29", "SIT"));
        assertThat(tolar(rates, LocalDate.of(2007, 6, 1)).factor()).isEqualByComparingTo("239.640");
        assertThat(tolar(rates, LocalDate.of(2007, 6, 1)).ageInDays(LocalDate.of(2007, 6, 1)))
                .isZero();
    }

    private static Conversion tolar(ExchangeRates rates, LocalDate day) {
        return rates.on(day, Currencies.of("EUR"), Currencies.of("SIT")).orElseThrow();
    }

    /** The bank stopped publishing the rouble on 2 March 2022: its last rate stays the last and gets old. */
    @Test
    void a_currency_that_is_no_longer_published_keeps_its_last_rate() {
        ExchangeRates rates = new ExchangeRates(history);

        Conversion rouble = rates.on(LocalDate.of(2022, 8, 2), Currencies.of("EUR"), Currencies.of("RUB"))
                .orElseThrow();

        assertThat(rouble.factor()).isEqualByComparingTo(published("2022-03-01", "RUB"));
        assertThat(rouble.ageInDays(LocalDate.of(2022, 8, 2))).isEqualTo(154);
    }

    @Test
    void the_table_gives_back_what_was_put_in() throws IOException {
        Path file = folder.resolve("rates.csv");
        RatesTable table = RatesTable.read(file).value();
        RatesTable.Taken taken = table.take(history, false);
        table.write(file);

        assertThat(taken).isEqualTo(new RatesTable.Taken(history.size(), history.size(), 0, List.of()));
        Reading<RatesTable> again = RatesTable.read(file);
        assertThat(again.findings()).isEmpty();
        assertThat(lines(again.value().rates())).isEqualTo(expected(days));
        assertThat(again.value().rates().get(0).source()).isEqualTo("European Central Bank");
        assertThat(again.value().take(read(BankFiles.ninetyDays()), false).changed())
                .isFalse();
    }

    @Test
    void a_zip_file_without_a_table_or_with_damage_is_refused() throws IOException {
        Path words = BankFiles.zip(folder.resolve("words.zip"), "readme.txt", "nothing here");
        assertThatThrownBy(() -> read(words))
                .isInstanceOf(IOException.class)
                .hasMessageEndingWith(
                        "words.zip is a ZIP file with 0 tables. It must hold one CSV or XML file with exchange rates.");

        Path cut = folder.resolve("cut.zip");
        byte[] whole = Files.readAllBytes(words);
        Files.write(cut, Arrays.copyOf(whole, whole.length / 2));
        assertThatThrownBy(() -> read(cut)).isInstanceOf(IOException.class).hasMessageContaining("cut.zip");
    }

    private String published(String day, String currency) {
        return days.getOrDefault(day, Map.of()).getOrDefault(currency, "");
    }

    private static List<DatedRate> read(Path file) throws IOException {
        Reading<List<DatedRate>> reading = new RatesReader().read(file);
        assertThat(reading.findings()).isEmpty();
        return reading.value();
    }

    private static List<String> lines(List<DatedRate> rates) {
        return rates.stream()
                .map(rate -> rate.date() + " " + rate.from() + " " + rate.to() + " "
                        + plain(rate.rate().value()))
                .sorted()
                .toList();
    }

    private static List<String> expected(Map<String, Map<String, String>> days) {
        List<String> lines = new ArrayList<>();
        days.forEach((day, rates) -> rates.forEach(
                (currency, rate) -> lines.add(day + " EUR " + currency + " " + plain(new BigDecimal(rate)))));
        lines.sort(String::compareTo);
        return lines;
    }

    private static String plain(BigDecimal rate) {
        return rate.stripTrailingZeros().toPlainString();
    }
}
