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

/** The sensitivities of a workbook against the costs of workbooks with other numbers typed into their cells. */
final class WhatMovesCommandTest {

    @TempDir
    private Path folder = Path.of("");

    /** A balm with work, a dollar and losses: what is moved is typed in by hand below. */
    private static RawBook book(double shea, double labour, double fill, double loss, double units, double dollar) {
        return RawBook.sound()
                .sheet(
                        "Settings",
                        List.of("Setting", "Value"),
                        List.of("Home currency", "EUR"),
                        List.of("Costing date", "2026-11-20"),
                        List.of("Labour rate", labour),
                        List.of("Overhead %", 15))
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per", "Currency"),
                        List.of("Tarnholt Oleo", "Shea butter", 5, "kg", shea, "kg", "EUR"),
                        List.of("Brayle Traders", "Sunflower oil", 20, "kg", 3.2, "kg", "USD"))
                .sheet("Rates", List.of("From", "To", "Rate", "Date"), List.of("USD", "EUR", dollar, "2026-11-20"))
                .sheet("Batches", List.of("Formula", "Hours per batch"), List.of("Balm", 4))
                .sheet(
                        "Products",
                        List.of("Product", "Formula", "Fill", "Fill unit", "Fill loss %"),
                        List.of("Balm 30", "Balm", fill, "g", loss))
                .sheet("Runs", List.of("Product", "Units"), List.of("Balm 30", units));
    }

    private static RawBook today() {
        return book(6.5, 24, 30, 4, 500, 0.9);
    }

    @Test
    void each_factor_planned_anew_costs_what_a_workbook_with_that_number_costs() throws IOException {
        JsonNode found = json(today(), "--sensitivity").get("sensitivity");

        assertReplanned(found, "Shea butter", book(5.85, 24, 30, 4, 500, 0.9), book(7.15, 24, 30, 4, 500, 0.9));
        assertReplanned(found, "Labour rate", book(6.5, 21.6, 30, 4, 500, 0.9), book(6.5, 26.4, 30, 4, 500, 0.9));
        assertReplanned(found, "Fill", book(6.5, 24, 27, 4, 500, 0.9), book(6.5, 24, 33, 4, 500, 0.9));
        assertReplanned(found, "Fill loss", book(6.5, 24, 30, 3.6, 500, 0.9), book(6.5, 24, 30, 4.4, 500, 0.9));
        assertReplanned(found, "Run size", book(6.5, 24, 30, 4, 450, 0.9), book(6.5, 24, 30, 4, 550, 0.9));
        assertReplanned(found, "USD", book(6.5, 24, 30, 4, 500, 0.81), book(6.5, 24, 30, 4, 500, 0.99));
    }

    @Test
    void the_setting_says_how_far() throws IOException {
        RawBook five = today();
        five.set("Settings", "A6", RawBook.text("Sensitivity %")).set("Settings", "B6", RawBook.number(5));

        JsonNode shea = find(json(five, "--sensitivity").get("sensitivity"), "Shea butter");

        assertThat(shea.get("upReplanned").textValue())
                .isEqualTo(unitCost(book(6.825, 24, 30, 4, 500, 0.9)).textValue());
    }

    @Test
    void without_the_option_nothing_is_planned_anew() throws IOException {
        JsonNode answer = json(today());

        for (JsonNode swing : answer.get("sensitivity")) {
            assertThat(swing.get("upReplanned").isNull()).isTrue();
            assertThat(swing.get("downReplanned").isNull()).isTrue();
        }
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode share : answer.get("shares")) {
            assertThat(share.get("product").textValue()).isEqualTo("Balm 30");
            sum = sum.add(new BigDecimal(share.get("perUnit").textValue()));
        }
        BigDecimal unitCost = new BigDecimal(
                answer.get("runs").get(0).get("unitCost").get("EUR").textValue());
        assertThat(sum.subtract(unitCost).abs()).isLessThan(new BigDecimal("0.00001"));
    }

    @Test
    void the_option_is_for_one_workbook() throws IOException {
        Path one = Files.write(folder.resolve("one.xlsx"), today().bytes());
        Path two = Files.write(folder.resolve("two.xlsx"), today().bytes());

        CommandLineRun run = CommandLineRun.of("cost", one, two, "--sensitivity");

        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err()).contains("--sensitivity works with one workbook");
    }

    private void assertReplanned(JsonNode found, String factor, RawBook down, RawBook up) throws IOException {
        JsonNode swing = find(found, factor);
        assertThat(swing.get("downReplanned")).as(factor).isEqualTo(unitCost(down));
        assertThat(swing.get("upReplanned")).as(factor).isEqualTo(unitCost(up));
    }

    private static JsonNode find(JsonNode all, String factor) {
        for (JsonNode one : all) {
            if (one.get("factor").textValue().equals(factor)) {
                return one;
            }
        }
        throw new AssertionError("no factor " + factor + " in " + all);
    }

    private JsonNode unitCost(RawBook book) throws IOException {
        return json(book).get("runs").get(0).get("unitCost").get("EUR");
    }

    private JsonNode json(RawBook book, String... options) throws IOException {
        Path file = Files.write(folder.resolve("book.xlsx"), book.bytes());
        Object[] arguments = new Object[options.length + 3];
        arguments[0] = "cost";
        arguments[1] = file;
        arguments[2] = "--json";
        System.arraycopy(options, 0, arguments, 3, options.length);
        CommandLineRun run = CommandLineRun.of(arguments);
        assertThat(run.exit()).as(run.err()).isZero();
        return new ObjectMapper().readTree(run.out());
    }
}
