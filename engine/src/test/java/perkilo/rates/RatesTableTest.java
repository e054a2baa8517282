package perkilo.rates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;

/** What the table keeps when rates are added repeatedly. */
final class RatesTableTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void newer_files_add_days_newest_first() throws IOException {
        Path file = folder.resolve("rates.csv");
        RatesTable table = RatesTable.read(file).value();
        table.take(List.of(rate("USD", "1.1", "2026-03-09"), rate("GBP", "0.90", "2026-03-09")), false);
        table.take(List.of(rate("USD", "1.2", "2026-03-10")), false);
        table.write(file);

        assertThat(file).hasContent("""
                From,To,Rate,Date,Source
                EUR,USD,1.2,2026-03-10,invented
                EUR,GBP,0.90,2026-03-09,invented
                EUR,USD,1.1,2026-03-09,invented
                """);
    }

    @Test
    void a_rate_that_is_there_stays_and_the_difference_is_said() {
        RatesTable table = table(rate("USD", "1.1", "2026-03-09"));

        RatesTable.Taken taken =
                table.take(List.of(rate("USD", "1.15", "2026-03-09"), rate("USD", "1.10", "2026-03-09")), false);

        assertThat(taken.changed()).isFalse();
        assertThat(taken.same()).isEqualTo(1);
        assertThat(taken.differing())
                .singleElement()
                .satisfies(differing -> assertThat(differing.finding())
                        .hasToString(
                                "warning new.csv line 2: EUR to USD of 2026-03-09 is 1.15 here, but 1.1 in the table"
                                        + " (invented). The table keeps its rate. Use --replace to take the new one."));
        assertThat(table.rates())
                .singleElement()
                .satisfies(rate -> assertThat(rate.rate().value()).isEqualByComparingTo("1.1"));
    }

    @Test
    void a_rate_that_is_to_be_replaced_is() {
        RatesTable table = table(rate("USD", "1.1", "2026-03-09"));

        RatesTable.Taken taken = table.take(List.of(rate("USD", "1.15", "2026-03-09")), true);

        assertThat(taken.changed()).isTrue();
        assertThat(taken.differing().get(0).finding().text()).endsWith(". The table has the new rate now.");
        assertThat(table.rates())
                .singleElement()
                .satisfies(rate -> assertThat(rate.rate().value()).isEqualByComparingTo("1.15"));
    }

    /** A source with a comma, and with quotation marks, is quoted and read again as it was. */
    @Test
    void a_source_may_hold_anything() throws IOException {
        Path file = folder.resolve("rates.csv");
        DatedRate odd = new DatedRate(
                Currencies.of("EUR"),
                Currencies.of("USD"),
                Figure.of("1.1"),
                LocalDate.of(2026, 3, 9),
                "my bank, \"spot\"; noon");
        table(odd).write(file);

        assertThat(RatesTable.read(file).value().rates())
                .singleElement()
                .satisfies(rate -> assertThat(rate.source()).isEqualTo("my bank, \"spot\"; noon"));
    }

    @Test
    void a_table_that_was_saved_with_semicolons_is_still_ours() throws IOException {
        Path file = Files.writeString(
                folder.resolve("rates.csv"), "\uFEFFFrom;To;Rate;Date;Source\r\nEUR;USD;1,25;2026-03-09;me\r\n");

        assertThat(RatesTable.read(file).value().rates())
                .singleElement()
                .satisfies(rate -> assertThat(rate.rate().value()).isEqualByComparingTo("1.25"));
    }

    @Test
    void an_empty_table_may_be_filled() throws IOException {
        Path file = Files.writeString(folder.resolve("rates.csv"), "From,To,Rate,Date,Source\n");

        assertThat(RatesTable.read(file).value().rates()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "From,To,Rate,Date,Source,My notes\nEUR,USD,1.1,2026-03-09,me,keep\n",
                "Date,USD\n2026-03-09,1.1\n",
                "<?xml version='1.0'?><Cube/>",
                ""
            })
    void nothing_else_is_written_over(String content) throws IOException {
        Path file = Files.writeString(folder.resolve("mine.csv"), content);

        assertThatThrownBy(() -> RatesTable.read(file))
                .hasMessageEndingWith(
                        "mine.csv is not a table with only the columns From, To, Rate, Date and Source, so"
                                + " it is left untouched. Name another file with --out.");
    }

    private static RatesTable table(DatedRate... rates) {
        try {
            RatesTable table = RatesTable.read(Path.of("no such file")).value();
            table.take(List.of(rates), false);
            return table;
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static DatedRate rate(String currency, String rate, String date) {
        Figure figure = new Figure(Figure.of(rate).value(), new Origin("new.csv", "", "line 2"), null);
        return new DatedRate(Currencies.of("EUR"), Currencies.of(currency), figure, LocalDate.parse(date), "invented");
    }
}
