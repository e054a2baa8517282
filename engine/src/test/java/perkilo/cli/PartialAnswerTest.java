package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.CellFunction;

/** What is known is answered, what is missing is named, and nothing is withheld because of something else. */
final class PartialAnswerTest {

    @TempDir
    private Path folder = Path.of("");

    /** Two balms in tins; nobody sells the lid of the second one. */
    private static RawBook twoBalms() {
        return RawBook.sound()
                .sheet(
                        "Products",
                        List.of("Product", "Formula", "Fill", "Fill unit", "Target margin %"),
                        List.of("Balm 30", "Balm", 30, "g", 50),
                        List.of("Balm 60", "Balm", 60, "g", 50))
                .sheet("Components", List.of("Product", "Component"), List.of("Balm 60", "Lid"))
                .sheet("Runs", List.of("Product", "Units"), List.of("Balm 30", 500), List.of("Balm 60", 500));
    }

    @Test
    void a_run_without_a_price_does_not_withhold_the_other() throws IOException {
        CommandLineRun alone = cost(RawBook.sound());
        CommandLineRun both = cost(twoBalms());

        assertThat(both.exit()).isEqualTo(Exit.PARTLY);
        JsonNode runs = json(both).get("runs");
        assertThat(runs.get(0).get("complete").booleanValue()).isTrue();
        assertThat(runs.get(0).get("missing")).isEmpty();
        assertThat(runs.get(0).get("unitCost"))
                .isEqualTo(json(alone).get("runs").get(0).get("unitCost"));
        assertThat(runs.get(1).get("complete").booleanValue()).isFalse();
        assertThat(runs.get(1).get("missing").get(0).textValue()).isEqualTo("Lid");
    }

    /**
     * 30 kg of balm: 12 kg of shea butter in one can of 25 kg at 6.50, 18 kg of sunflower oil in one of 20 kg at 3.20:
     * 12 × 6.50 + 18 × 3.20 = 135.60; per kg 0.4 × 6.50 + 0.6 × 3.20 = 4.52.
     */
    @Test
    void the_known_part_is_never_a_unit_cost() throws IOException {
        JsonNode run = json(cost(twoBalms())).get("runs").get(1);

        assertThat(run.get("knownSoFar").get("EUR").textValue()).isEqualTo("135.6");
        assertThat(run.get("rawMaterialPerKg").get("EUR").textValue()).isEqualTo("4.52");
        for (String figure : List.of("unitCost", "cashPerUnit", "outlay", "ladder", "heads", "used", "plan")) {
            assertThat(run.has(figure)).as(figure).isFalse();
        }
        JsonNode lid = run.get("items").get(2);
        assertThat(lid.get("needed").textValue()).isEqualTo("500");
        assertThat(lid.get("landedPerUnit").isNull()).isTrue();
        assertThat(lid.get("used").isNull()).isTrue();
    }

    @Test
    void a_missing_material_leaves_no_cost_per_kilogram() throws IOException {
        RawBook book = twoBalms().set("Offers", "F3", RawBook.text("ask"));
        CommandLineRun cost = cost(book.sheet("Runs", List.of("Product", "Units"), List.of("Balm 60", 500)));

        JsonNode run = json(cost).get("runs").get(0);
        assertThat(run.has("rawMaterialPerKg")).isFalse();
        assertThat(run.has("bulkPerKg")).isFalse();
        assertThat(run.get("knownSoFar").get("EUR").textValue()).isEqualTo("78"); // 12 × 6.50
    }

    @Test
    void the_first_line_says_it_and_no_sheet_shows_a_wrong_figure() throws IOException {
        Path book = write(twoBalms());
        CommandLineRun cost = CommandLineRun.of("cost", book);

        assertThat(cost.out()).startsWith("Not complete: 1 of 2 runs lacks something");
        assertThat(cost.out()).contains("500 × Balm 60").contains("not complete: Lid");
        List<String> summary = texts("book-costed.xlsx", "Cost summary");
        assertThat(summary.get(2)).startsWith("⚠ Not complete: 1 of 2 runs");
        assertThat(summary)
                .anyMatch(text -> text.startsWith("⚠ 500 × Balm 60: Not complete. Missing: Lid (no price)."));
        List<String> detail = texts("book-costed.xlsx", "Cost detail");
        assertThat(detail).contains("⚠ no price", "Known so far");
        assertThat(detail.stream().filter("Unit cost"::equals)).hasSize(1);
        assertThat(texts("book-costed.xlsx", "Price ladder"))
                .anyMatch(text -> text.startsWith("⚠ 500 × Balm 60: Not complete."));
        assertThat(errors("book-costed.xlsx")).isEmpty();
    }

    @Test
    void an_item_is_costed_from_its_other_offers_and_the_error_stays() throws IOException {
        RawBook book = RawBook.sound()
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "From quantity", "Price", "Price per"),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", "", "ask", "kg"),
                        List.of("Brandel", "Shea butter", 25, "kg", "", 9, "kg"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", "", 3.2, "kg"))
                .sheet(
                        "Suppliers",
                        List.of("Supplier", "Currency"),
                        List.of("Tarnholt Oleo", "EUR"),
                        List.of("Brandel", "EUR"));
        CommandLineRun cost = cost(book);

        assertThat(cost.exit()).isEqualTo(Exit.PARTLY);
        assertThat(cost.err()).contains("error Offers!F2");
        JsonNode run = json(cost).get("runs").get(0);
        assertThat(run.get("complete").booleanValue()).isTrue();
        assertThat(run.get("rawMaterialPerKg").get("EUR").textValue()).isEqualTo("5.52"); // 0.4 × 9 + 0.6 × 3.20
    }

    @Test
    void an_unreadable_line_concerns_its_formula_alone() throws IOException {
        RawBook book = twoBalms()
                .sheet("Components", List.of("Product", "Component"))
                .sheet(
                        "Oil",
                        List.of("Phase", "Material", "% w/w"),
                        List.of("A", "Shea butter", "some"),
                        List.of("A", "Sunflower oil", "q.s."))
                .sheet(
                        "Products",
                        List.of("Product", "Formula", "Fill", "Fill unit"),
                        List.of("Balm 30", "Balm", 30, "g"),
                        List.of("Balm 60", "Oil", 60, "g"));
        JsonNode answer = json(cost(book));

        assertThat(answer.get("runs").get(0).get("complete").booleanValue()).isTrue();
        assertThat(answer.get("runs").get(1).get("missing").toString())
                .isEqualTo("[\"Shea butter\",\"Sunflower oil\"]");
        assertThat(answer.get("messages")).hasSize(1);
    }

    @Test
    void a_currency_without_a_rate_is_one_message() throws IOException {
        RawBook book = twoBalms()
                .set("Offers", "H2", RawBook.text("USD"))
                .set("Offers", "H3", RawBook.text("USD"))
                .sheet("Powder", List.of("Phase", "Material", "% w/w"), List.of("A", "Talc", 100))
                .sheet("Materials", List.of("Material", "INCI name", "House price"), List.of("Talc", "Talc", 0.01))
                .sheet(
                        "Products",
                        List.of("Product", "Formula", "Fill", "Fill unit"),
                        List.of("Balm 30", "Balm", 30, "g"),
                        List.of("Balm 60", "Powder", 60, "g"))
                .sheet("Components", List.of("Product", "Component"));
        CommandLineRun cost = cost(book);

        assertThat(cost.exit()).isEqualTo(Exit.PARTLY);
        assertThat(json(cost).get("messages")).hasSize(1);
        assertThat(cost.err()).contains("There is no rate from USD to EUR");
        assertThat(json(cost).get("runs").get(1).get("complete").booleanValue()).isTrue();
    }

    @Test
    void a_product_with_an_error_is_listed_with_nothing_known() throws IOException {
        CommandLineRun cost = cost(twoBalms()
                .sheet("Components", List.of("Product", "Component"))
                .set("Products", "C3", RawBook.text("some")));

        JsonNode run = json(cost).get("runs").get(1);
        assertThat(cost.exit()).isEqualTo(Exit.PARTLY);
        assertThat(run.get("product").textValue()).isEqualTo("Balm 60");
        assertThat(run.get("complete").booleanValue()).isFalse();
        assertThat(run.get("knownSoFar")).isEmpty();
    }

    @Test
    void sixteen_rows_with_one_cause_are_one_message() throws IOException {
        List<List<?>> rows = new ArrayList<>();
        rows.add(List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per", "Currency"));
        for (int row = 0; row < 16; row++) {
            rows.add(List.of("Tarnholt Oleo", "Oil " + row, 20, "kg", 3.2, "kg", ""));
        }
        CommandLineRun check =
                CommandLineRun.of("check", write(RawBook.sound().sheet("Offers", rows.toArray(List<?>[]::new))));

        assertThat(check.err().lines().filter(line -> line.contains("The currency of the price is unknown")))
                .singleElement()
                .asString()
                .startsWith("error Offers!G2:G17: ");
    }

    @Test
    void an_unknown_home_currency_leaves_nothing_to_answer() throws IOException {
        CommandLineRun cost = CommandLineRun.of("cost", write(twoBalms().set("Settings", "B2", RawBook.text("money"))));

        assertThat(cost.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(folder.resolve("book-costed.xlsx")).doesNotExist();
    }

    @Test
    void an_item_without_an_offer_does_not_withhold_the_orders_for_the_rest() throws IOException {
        RawBook book = twoBalms()
                .sheet(
                        "Demand",
                        List.of("Product", "Units", "Needed by"),
                        List.of("Balm 30", 500, "2027-02-01"),
                        List.of("Balm 60", 500, "2027-02-01"));
        CommandLineRun order = CommandLineRun.of("order", write(book), "--why", "0", "--json");
        JsonNode answer = json(order);

        assertThat(order.exit()).isEqualTo(Exit.PARTLY);
        assertThat(answer.get("notCovered").toString())
                .isEqualTo("[{\"item\":\"Lid\",\"neededBy\":\"2027-02-01\",\"quantity\":\"500\",\"unit\":\"each\","
                        + "\"why\":\"no price\"}]");
        assertThat(answer.get("late")).isEmpty();
        assertThat(answer.get("orders")).hasSize(1);
        assertThat(texts("book-ordered.xlsx", "Order plan"))
                .anyMatch(text -> text.startsWith("⚠ Not complete: 1 need is not covered"));
        assertThat(errors("book-ordered.xlsx")).isEmpty();
    }

    /** Ordered on 20 November, 30 days on the way: there by 20 December, for the month of January. */
    @Test
    void what_cannot_arrive_in_time_is_planned_for_the_first_month_in_which_it_can() throws IOException {
        RawBook book = RawBook.sound()
                .sheet(
                        "Suppliers",
                        List.of("Supplier", "Currency", "Lead time days"),
                        List.of("Tarnholt Oleo", "EUR", 30))
                .sheet("Demand", List.of("Product", "Units", "Needed by"), List.of("Balm 30", 500, "2026-12-10"));
        CommandLineRun order = CommandLineRun.of("order", write(book), "--why", "0", "--json");
        JsonNode late = json(order).get("late");

        assertThat(order.exit()).as(order.err()).isEqualTo(Exit.PARTLY);
        assertThat(late).hasSize(2);
        assertThat(late.get(0).get("neededBy").textValue()).isEqualTo("2026-12-10");
        assertThat(late.get(0).get("possibleOn").textValue()).isEqualTo("2027-01-01");
        assertThat(late.get(0).get("daysLate").intValue()).isEqualTo(22);
        assertThat(late.get(0).get("runs").get(0).get("product").textValue()).isEqualTo("Balm 30");
        assertThat(json(order).get("orders").get(0).get("lines")).hasSize(2);
        assertThat(texts("book-ordered.xlsx", "Order plan"))
                .anyMatch(text -> text.startsWith("⚠ Not complete: 2 needs are late"));
    }

    @Test
    void totals_over_books_say_how_many_runs_are_left_out() throws IOException {
        Path books = Files.createDirectory(folder.resolve("books"));
        Files.write(books.resolve("one.xlsx"), twoBalms().bytes());
        Files.write(books.resolve("two.xlsx"), RawBook.sound().bytes());
        CommandLineRun cost = CommandLineRun.of("cost", books, "-o", Files.createDirectory(folder.resolve("results")));

        assertThat(cost.exit()).isEqualTo(Exit.PARTLY);
        assertThat(cost.out()).contains("one.xlsx (EUR), 1 run not complete and left out");
        assertThat(texts("results/portfolio-costed.xlsx", "Portfolio"))
                .contains("⚠ 2 books, 3 runs, 1 run not complete and left out of all totals");
    }

    private CommandLineRun cost(RawBook book) throws IOException {
        return CommandLineRun.of("cost", write(book), "--json");
    }

    private Path write(RawBook book) throws IOException {
        return Files.write(folder.resolve("book.xlsx"), book.bytes());
    }

    private static JsonNode json(CommandLineRun run) throws IOException {
        return new ObjectMapper().readTree(run.out());
    }

    private List<String> texts(String file, String sheet) throws IOException {
        List<String> texts = new ArrayList<>();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(folder.resolve(file)))) {
            for (Row row : book.getSheet(sheet)) {
                for (Cell cell : row) {
                    boolean text = cell.getCellType() == CellType.STRING
                            || (cell.getCellType() == CellType.FORMULA
                                    && cell.getCachedFormulaResultType() == CellType.STRING);
                    if (text) {
                        texts.add(cell.getStringCellValue());
                    }
                }
            }
        }
        return texts;
    }

    /** Cells of all sheets that hold an error value, after a calculation of every formula. */
    private List<String> errors(String file) throws IOException {
        List<String> errors = new ArrayList<>();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(folder.resolve(file)))) {
            CellFunction.withoutComparisons(book)
                    .getCreationHelper()
                    .createFormulaEvaluator()
                    .evaluateAll();
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.FORMULA
                                && cell.getCachedFormulaResultType() == CellType.ERROR) {
                            errors.add(sheet.getSheetName() + "!" + cell.getAddress());
                        }
                    }
                }
            }
        }
        return errors;
    }
}
