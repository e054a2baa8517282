package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A scenario costs what a workbook with those numbers typed into its cells costs. */
final class ScenariosTest {

    @TempDir
    private Path folder = Path.of("");

    /** A balm with work, freight and a dollar. */
    private static RawBook book(
            double shea, double sunflower, double labour, double freight, double fill, double units, double dollar) {
        return RawBook.sound()
                .sheet(
                        "Settings",
                        List.of("Setting", "Value"),
                        List.of("Home currency", "EUR"),
                        List.of("Costing date", "2026-11-20"),
                        List.of("Labour rate", labour))
                .sheet(
                        "Suppliers",
                        List.of("Supplier", "Currency", "Freight per order"),
                        List.of("Tarnholt Oleo", "EUR", freight),
                        List.of("Brayle Traders", "USD", freight))
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per", "Currency"),
                        List.of("Tarnholt Oleo", "Shea butter", 5, "kg", shea, "kg", "EUR"),
                        List.of("Brayle Traders", "Sunflower oil", 20, "kg", sunflower, "kg", "USD"))
                .sheet("Rates", List.of("From", "To", "Rate", "Date"), List.of("USD", "EUR", dollar, "2026-11-20"))
                .sheet("Batches", List.of("Formula", "Hours per batch"), List.of("Balm", 4))
                .sheet(
                        "Products",
                        List.of("Product", "Formula", "Fill", "Fill unit"),
                        List.of("Balm 30", "Balm", fill, "g"))
                .sheet("Runs", List.of("Product", "Units"), List.of("Balm 30", units));
    }

    private static RawBook today() {
        return book(6.5, 3.2, 24, 40, 30, 500, 0.9);
    }

    @Test
    void each_scenario_of_the_sheet_is_costed_beside_today() throws IOException {
        RawBook asked = today().sheet(
                        "Scenarios",
                        List.of("Name", "What", "Change"),
                        List.of("Strong dollar", "USD", "+10 %"),
                        List.of("Bad year", "Shea butter", "+20%"),
                        List.of("Bad year", "Labour rate", "30"),
                        List.of("Larger", "Run size", "1500"),
                        List.of("", "Freight", "-50 %"),
                        List.of("Small jar", "Fill", "-10,5 %"),
                        List.of("Brayle", "Brayle Traders", "+5 %"));

        JsonNode found = json(run(asked), 0).get("scenarios");

        assertThat(found).hasSize(6);
        assertCost(found, "Strong dollar", book(6.5, 3.2, 24, 40, 30, 500, 0.99));
        assertCost(found, "Bad year", book(7.8, 3.2, 30, 40, 30, 500, 0.9));
        assertCost(found, "Larger", book(6.5, 3.2, 24, 40, 30, 1500, 0.9));
        assertCost(found, "Freight -50 %", book(6.5, 3.2, 24, 20, 30, 500, 0.9));
        assertCost(found, "Small jar", book(6.5, 3.2, 24, 40, 26.85, 500, 0.9));
        assertCost(found, "Brayle", book(6.5, 3.36, 24, 40, 30, 500, 0.9));
    }

    @Test
    void a_percent_cell_means_what_it_shows() throws IOException {
        RawBook asked = today().sheet("Scenarios", List.of("Name", "What", "Change"), List.of("Up", "USD", ""))
                .set("Scenarios", "C2", "<c s=\"2\"><v>0.1</v></c>");

        assertCost(json(run(asked), 0).get("scenarios"), "Up", book(6.5, 3.2, 24, 40, 30, 500, 0.99));
    }

    @Test
    void scenarios_may_be_typed_on_the_command_line() throws IOException {
        CommandLineRun run = run(today(), "--what", "USD +10%", "--what", "Shea butter +20 %; Run size 1500");

        JsonNode found = json(run, 0).get("scenarios");

        assertThat(found).hasSize(2);
        assertCost(found, "USD +10%", book(6.5, 3.2, 24, 40, 30, 500, 0.99));
        assertCost(found, "Shea butter +20 %; Run size 1500", book(7.8, 3.2, 24, 40, 30, 1500, 0.9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Shea buter | +10 % | which is not in the workbook | B2",
                "USD | a lot | \"a lot\" of \"USD\" is not understood | C2",
                "USD | 0.95 | \"0.95\" of \"USD\" is not understood | C2",
                "USD | -100 % | would leave nothing of \"USD\" | C2",
                "EUR | +10 % | EUR is your home currency | B2",
                "JPY | +10 % | There is no exchange rate for JPY | B2",
                "Run size | 1,500 | without marks between thousands | C2",
                "Fill loss | 10 % | Type a sign | C2",
            })
    void what_is_not_understood_is_said_with_its_cell(String what, String change, String words, String cell)
            throws IOException {
        RawBook asked = today().sheet(
                        "Scenarios",
                        List.of("Name", "What", "Change"),
                        List.of("One", what, change),
                        List.of("One", "Shea butter", "+10 %"),
                        List.of("Other", "Shea butter", "+10 %"));

        JsonNode answer = json(run(asked), 0);

        assertThat(answer.get("scenarios")).hasSize(1);
        assertThat(answer.get("scenarios").get(0).get("name").textValue()).isEqualTo("Other");
        List<String> said = new ArrayList<>();
        for (JsonNode message : answer.get("messages")) {
            if (message.get("where").textValue().equals("Scenarios!" + cell)) {
                said.add(message.get("text").textValue());
            }
        }
        assertThat(said).singleElement().asString().contains(words);
    }

    @Test
    void without_scenarios_there_are_none() throws IOException {
        assertThat(json(run(today()), 0).has("scenarios")).isFalse();
    }

    private void assertCost(JsonNode all, String name, RawBook same) throws IOException {
        for (JsonNode one : all) {
            if (one.get("name").textValue().equals(name)) {
                JsonNode expected =
                        json(run(same), 0).get("runs").get(0).get("unitCost").get("EUR");
                assertThat(one.get("runs").get(0).get("cost")).as(name).isEqualTo(expected);
                return;
            }
        }
        throw new AssertionError("no scenario " + name + " in " + all);
    }

    private static JsonNode json(CommandLineRun run, int exit) throws IOException {
        assertThat(run.exit()).as(run.err()).isEqualTo(exit);
        return new ObjectMapper().readTree(run.out());
    }

    private CommandLineRun run(RawBook book, String... options) throws IOException {
        Path file = Files.write(folder.resolve("book.xlsx"), book.bytes());
        List<Object> arguments = new ArrayList<>(List.of("cost", file, "--json"));
        arguments.addAll(List.of(options));
        return CommandLineRun.of(arguments.toArray());
    }
}
