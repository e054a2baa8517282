package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code compare}, from two workbooks or two days to the answer. */
final class CompareCommandTest {

    @TempDir
    private Path folder = Path.of("");

    private static RawBook balm(double shea, double sunflower) {
        return RawBook.sound()
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per", "Currency"),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", shea, "kg", "EUR"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", sunflower, "kg", "EUR"));
    }

    /** 12 g of shea butter and 18 g of sunflower oil: 0.012 × 1.50 − 0.018 × 0.20 = 0.0144 a unit, 7.20 for 500. */
    @Test
    void two_workbooks() throws IOException {
        CommandLineRun run = CommandLineRun.of(
                "compare", file("before.xlsx", balm(6.5, 3.2)), file("after.xlsx", balm(8, 3)), "--json");

        assertThat(run.exit()).as(run.err()).isZero();
        JsonNode answer = new ObjectMapper().readTree(run.out());
        JsonNode balm = answer.get("products").get(0);
        assertThat(balm.get("before").textValue()).isEqualTo("0.1356");
        assertThat(balm.get("after").textValue()).isEqualTo("0.15");
        assertThat(balm.get("parts").get("price").textValue()).isEqualTo("0.0144");
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode part : balm.get("parts")) {
            sum = sum.add(new BigDecimal(part.textValue()));
        }
        assertThat(sum).isEqualByComparingTo("0.0144");
        assertThat(balm.get("parts")).hasSize(7);
        assertThat(answer.get("all").get("parts").get("price").textValue()).isEqualTo("7.2");
        assertThat(folder.resolve("after-compared.xlsx")).exists();
    }

    @Test
    void two_days_of_one_workbook() throws IOException {
        RawBook book = RawBook.sound()
                .sheet(
                        "Offers",
                        List.of(
                                "Supplier",
                                "Item",
                                "Pack size",
                                "Pack unit",
                                "Price",
                                "Price per",
                                "Currency",
                                "Quoted on"),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", 6.5, "kg", "EUR", "2026-05-01"),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", 8, "kg", "EUR", "2026-11-01"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", 3.2, "kg", "EUR", "2026-05-01"));
        Path file = file("book.xlsx", book);

        CommandLineRun run = CommandLineRun.of("compare", file, "--dates", "2026-05-15,2026-11-15", "--json");

        assertThat(run.exit()).as(run.err()).isZero();
        JsonNode balm = new ObjectMapper().readTree(run.out()).get("products").get(0);
        assertThat(balm.get("parts").get("price").textValue()).isEqualTo("0.018");
        assertThat(balm.get("after").textValue()).isEqualTo("0.1536");
    }

    @Test
    void what_is_typed_wrong_is_said() throws IOException {
        Path one = file("one.xlsx", balm(6.5, 3.2));

        assertUsage(CommandLineRun.of("compare", one), "Name a second workbook");
        assertUsage(CommandLineRun.of("compare", one, one, "--dates", "2026-05-15,2026-11-15"), "not with both");
        assertUsage(CommandLineRun.of("compare", one, "--dates", "2026-05-15"), "--dates takes two days");
        assertUsage(CommandLineRun.of("compare", one, "--dates", "May,June"), "--dates takes two days");
        assertUsage(
                CommandLineRun.of("compare", one, "--dates", "2026-05-15,2026-11-15", "--date", "2026-05-15"),
                "--dates sets two");
    }

    @Test
    void different_home_currencies_are_not_compared() throws IOException {
        RawBook dollars = balm(6.5, 3.2).set("Settings", "B2", RawBook.text("USD"));
        dollars.sheet("Rates", List.of("From", "To", "Rate", "Date"), List.of("EUR", "USD", 1.1, "2026-11-19"));

        CommandLineRun run = CommandLineRun.of(
                "compare", file("before.xlsx", balm(6.5, 3.2)), file("after.xlsx", dollars), "--json");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.out()).contains("different home currencies, EUR and USD");
    }

    private static void assertUsage(CommandLineRun run, String words) {
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.USAGE);
        assertThat(run.err()).contains(words);
    }

    private Path file(String name, RawBook book) throws IOException {
        return Files.write(folder.resolve(name), book.bytes());
    }
}
