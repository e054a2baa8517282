package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Workbooks as small brands and laboratories keep them, with several tables on one sheet. The expected costs are sums
 * of level times price, by hand.
 */
final class OwnBooksTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String DAY = "2026-11-25";

    @TempDir
    private Path folder = Path.of("");

    private final XSSFWorkbook book = new XSSFWorkbook();

    private XSSFSheet sheet(String name) {
        return book.createSheet(name);
    }

    private static void put(XSSFSheet sheet, String place, Object... values) {
        CellReference at = new CellReference(place);
        Row row = sheet.getRow(at.getRow());
        row = row == null ? sheet.createRow(at.getRow()) : row;
        for (int i = 0; i < values.length; i++) {
            if (values[i] instanceof Number number) {
                row.createCell(at.getCol() + i).setCellValue(number.doubleValue());
            } else if (!values[i].equals("")) {
                row.createCell(at.getCol() + i).setCellValue(values[i].toString());
            }
        }
    }

    private Path saved() throws IOException {
        Path file = folder.resolve("book.xlsx");
        try (OutputStream out = Files.newOutputStream(file)) {
            book.write(out);
        }
        return file;
    }

    /** The answers of a review, filled in as a person would. */
    private Path answered(Path file, Map<String, String> answers) throws IOException {
        CommandLineRun.of("check", file, "--review");
        Path review = folder.resolve("book-review.xlsx");
        Path filled = folder.resolve("answered.xlsx");
        try (InputStream in = Files.newInputStream(review);
                XSSFWorkbook asked = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(filled)) {
            int found = 0;
            for (Row row : asked.getSheet("Reading")) {
                String there = row.getCell(2) == null ? "" : row.getCell(2).toString();
                if (answers.containsKey(there)) {
                    row.getCell(5, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK).setCellValue(answers.get(there));
                    found++;
                }
            }
            assertThat(found).isEqualTo(answers.size());
            asked.write(out);
        }
        return filled;
    }

    private static Map<String, Double> bulk(Path file, String... options) throws IOException {
        return figures(file, "bulkPerKg", options);
    }

    private static Map<String, Double> figures(Path file, String key, String... options) throws IOException {
        Object[] arguments = new Object[5 + options.length];
        System.arraycopy(new Object[] {"cost", file, "--json", "--date", DAY}, 0, arguments, 0, 5);
        System.arraycopy(options, 0, arguments, 5, options.length);
        CommandLineRun run = CommandLineRun.of(arguments);
        assertThat(run.exit()).as(run.err()).isZero();
        Map<String, Double> figures = new LinkedHashMap<>();
        for (JsonNode one : JSON.readTree(run.out()).get("runs")) {
            JsonNode value = one.get(key);
            if (value != null && !value.isNull()) {
                figures.put(one.get("formula").asText(), value.elements().next().asDouble());
            }
        }
        return figures;
    }

    @Test
    void formulas_side_by_side_and_below_are_named_by_the_lines_above_them() throws IOException {
        XSSFSheet lab = sheet("Rezepturen");
        put(lab, "A1", "Stand November");
        put(lab, "A3", "Tagespflege TP-01", "", "", "", "Lotion KL-07");
        put(lab, "A4", "Phase", "Rohstoff", "%", "", "Phase", "Rohstoff", "%");
        put(lab, "A5", "A", "Wasser", "ad 100", "", "A", "Wasser", "ad 100");
        put(lab, "A6", "B", "Rapsöl", 10, "", "B", "Rapsöl", 7);
        put(lab, "A7", "", "Sheabutter", 4);
        put(lab, "B8", "Summe", 100, "", "", "Summe", 100);
        put(lab, "A11", "Balsam LB-03");
        put(lab, "A12", "Phase", "Rohstoff", "%");
        put(lab, "A13", "A", "Rapsöl", 60);
        put(lab, "B14", "Sheabutter", 40);
        prices("Preise");
        XSSFSheet runs = sheet("Ansätze");
        put(runs, "A1", "Rezeptur", "Ansatz kg");
        put(runs, "A2", "Tagespflege TP-01", 50);
        put(runs, "A3", "Lotion KL-07", 50);
        put(runs, "A4", "Balsam LB-03", 10);
        Map<String, Double> bulk = bulk(saved());
        assertThat(bulk.values())
                .satisfiesExactly(
                        one -> assertThat(one).isCloseTo(0.10 * 4.1 + 0.04 * 9.8, within(1e-6)),
                        one -> assertThat(one).isCloseTo(0.07 * 4.1, within(1e-6)),
                        one -> assertThat(one).isCloseTo(0.60 * 4.1 + 0.40 * 9.8, within(1e-6)));
        assertThat(bulk.keySet()).allMatch(title -> title.contains("-0"));
    }

    private void prices(String name) {
        XSSFSheet prices = sheet(name);
        put(prices, "A1", "Rohstoff", "Lieferant", "Gebinde", "Preis");
        put(prices, "A2", "Rapsöl", "Nordchem", "25 kg", "4,10 €/kg");
        put(prices, "A3", "Sheabutter", "Nordchem", "10 kg", "9,80 €/kg");
    }

    @Test
    void one_sheet_with_formula_prices_packaging_and_facts() throws IOException {
        Path file = calculator();
        CommandLineRun check = CommandLineRun.of("check", file);
        assertThat(check.err()).contains("is a volume, but Density g/mL is missing");
        Path answered = answered(file, Map.of("density g/mL", "1"));
        CommandLineRun again = CommandLineRun.of("check", answered);
        assertThat(again.exit()).as(again.err()).isZero();
        // 5 % at 21.50 for 5 kg, 6 % at 47 for 5 kg; 96 of labour on 200 units; a tube 0.45, a label 0.085
        double materials = 0.05 * 21.5 / 5 + 0.06 * 47.0 / 5;
        double unit = 0.075 * materials + 96.0 / 200 + 0.45 + 0.085;
        assertThat(figures(answered, "unitCost").values())
                .anySatisfy(one -> assertThat(one).isCloseTo(unit, within(1e-6)));
    }

    /** The first line of a kind counts, and a second one is named instead of being dropped. */
    @Test
    void a_fact_that_stands_twice_is_named() throws IOException {
        XSSFSheet one = book.createSheet("Calculator");
        put(one, "A1", "Rose balm");
        put(one, "A3", "Material", "%", "Supplier", "Pack size", "Pack unit", "Price", "Price per", "Currency");
        put(one, "A4", "Shea butter", 40, "Tarnholt Oleo", 10, "kg", 6.5, "kg", "EUR");
        put(one, "A5", "Sunflower oil", 60, "Tarnholt Oleo", 10, "kg", 3.2, "kg", "EUR");
        put(one, "A8", "Fill", 30, "g");
        put(one, "A9", "VAT %", 20);
        put(one, "A10", "VAT %", 10);
        put(one, "A11", "Shop price", 12);
        put(one, "A12", "Units", 500);

        CommandLineRun check = CommandLineRun.of("check", saved(), "--date", DAY);

        assertThat(check.err())
                .contains("Calculator!A10")
                .contains("These lines hold a figure but are not read: \"VAT %\"");
    }

    @Test
    void vat_and_margin_that_are_not_typed_are_said_once() throws IOException {
        Path answered = answered(calculator(), Map.of("density g/mL", "1"));
        CommandLineRun cost = CommandLineRun.of("cost", answered, "--date", DAY);
        assertThat(cost.err().lines().filter(line -> line.contains("price ladder")))
                .containsExactly("note Costing!B20: The price ladder of \"Costing\" is without VAT and without retailer"
                        + " margin, because nothing is typed there. Fill it in where the product is described, or type"
                        + " 0.");
    }

    private Path calculator() throws IOException {
        XSSFSheet one = sheet("Costing");
        put(one, "A1", "HC-014 Hand cream");
        put(one, "A3", "Ingredient", "%", "Supplier", "Pack", "Pack price (£)", "£/kg");
        put(one, "A4", "Water", 89);
        put(one, "A5", "Glycerin", 5, "Harrow", "5 kg", 21.5, 4.3);
        put(one, "A6", "Shea butter", 6, "Mill Lane", "5 kg", 47, 9.4);
        put(one, "A7", "Total", 100);
        put(one, "A10", "Packaging", "Qty per tube", "Supplier", "Pack", "Pack price (£)");
        put(one, "A11", "Tube 75 ml", 1, "Tubeworks", 250, 112.5);
        put(one, "A12", "Label", 1, "Printhouse", 1000, 85);
        put(one, "A15", "Labour rate (£/h)", 16);
        put(one, "A16", "Hours per batch", 6);
        put(one, "A17", "Tubes per batch", 200);
        put(one, "A18", "Retail price inc VAT", 14.5);
        put(one, "A20", "Fill", "75 ml");
        return saved();
    }

    @Test
    void what_prices_are_for_is_asked_once_at_their_header() throws IOException {
        XSSFSheet one = sheet("Hoja1");
        put(one, "A1", "Champú sólido");
        put(one, "A3", "Materia prima", "%", "", "", "Materia prima", "Proveedor", "Envase kg", "Precio €");
        put(one, "A4", "SCI", 80, "", "", "SCI", "Quimivita", 25, 210);
        put(one, "A5", "Manteca de cacao", 20, "", "", "Manteca de cacao", "Quimivita", 5, 61);
        put(one, "A6", "Total", 100);
        put(one, "A9", "Cajita", 0.28);
        Path file = saved();
        CommandLineRun check = CommandLineRun.of("check", file);
        assertThat(check.err().lines().filter(line -> line.startsWith("error")))
                .containsExactly(
                        "error Hoja1!H3: Are the prices in the column \"Precio €\" for one pack, or for 1 kg or 1"
                                + " piece? Add a column Price per with pack, kg or each, or answer at \"price per\" on the sheet"
                                + " that perkilo check --review makes.");
        assertThat(check.err())
                .contains(
                        "warning Hoja1!A9: These lines hold a figure but are not read: \"Cajita\". If one counts, give"
                                + " it a row on the sheet of its kind, such as Offers, Components or Settings.");
        Map<String, Double> bulk = bulk(answered(file, Map.of("price per", "pack")), "--batch-kg", "20");
        assertThat(bulk).hasSize(1).allSatisfy((title, cost) -> {
            assertThat(title).contains("Champú sólido");
            assertThat(cost).isCloseTo(0.8 * 210 / 25 + 0.2 * 61 / 5, within(1e-6));
        });
    }

    @Test
    void a_line_added_to_effect_is_asked_about_in_the_review() throws IOException {
        XSSFSheet one = sheet("Rezeptbuch");
        put(one, "A1", "Handcreme Nr. 5");
        put(one, "A2", "Zutat", "Menge (g)");
        put(one, "A3", "dest. Wasser", "ad 500");
        put(one, "A4", "Rapsöl", 60);
        put(one, "A5", "Sheabutter", "q.s.");
        prices("Preise");
        Path answered = answered(saved(), Map.of("estimate % of Sheabutter", "0.4"));
        assertThat(bulk(answered, "--batch-kg", "5"))
                .hasSize(1)
                .allSatisfy((title, cost) -> assertThat(cost).isCloseTo(0.12 * 4.1 + 0.004 * 9.8, within(1e-6)));
    }

    @Test
    void prices_per_kilogram_beside_the_levels_count_without_packs() throws IOException {
        XSSFSheet one = sheet("Foglio1");
        put(one, "A1", "Crema mani");
        put(one, "A2", "Ingrediente", "g", "€/kg", "Costo");
        put(one, "A3", "Acqua distillata", "q.b. a 1000");
        put(one, "A4", "Glicerina", 40, 7.5, 0.3);
        put(one, "A5", "Burro di karité", 50, 13.9, 0.695);
        put(one, "A6", "Totale", 1000, "", 0.995);
        assertThat(bulk(saved(), "--batch-kg", "1"))
                .hasSize(1)
                .allSatisfy((title, cost) -> assertThat(cost).isCloseTo(0.995, within(1e-6)));
        assertThat(CommandLineRun.of("check", folder.resolve("book.xlsx")).err())
                .contains("The prices beside the levels count per kilogram, because no packs are given. So nothing is"
                        + " bought in whole packs, and no stock is left over.");
    }

    @Test
    void columns_of_suppliers_are_asked_about_once() throws IOException {
        XSSFSheet balm = sheet("Balm");
        put(balm, "A1", "Material", "%");
        put(balm, "A2", "Rapsöl", 60);
        put(balm, "A3", "Sheabutter", 40);
        XSSFSheet prices = sheet("Prices");
        put(prices, "A1", "Item", "Pack", "Kestrel", "Dunmore", "Currency");
        put(prices, "A2", "Rapsöl", "25 kg", 4.4, 4.1, "EUR");
        put(prices, "A3", "Sheabutter", "10 kg", 9.8, "", "EUR");
        Path file = saved();
        assertThat(CommandLineRun.of("check", file).err().lines().filter(line -> line.startsWith("error Prices")))
                .hasSize(2)
                .anyMatch(line -> line.contains("Are \"Kestrel\", \"Dunmore\" suppliers, with their prices below?"));
        Path answered = answered(file, Map.of("columns of suppliers", "yes", "price per", "kg"));
        assertThat(bulk(answered, "--batch-kg", "10"))
                .hasSize(1)
                .allSatisfy((title, cost) -> assertThat(cost).isCloseTo(0.6 * 4.1 + 0.4 * 9.8, within(1e-6)));
    }

    @Test
    void hours_without_a_labour_rate_are_said() throws IOException {
        XSSFSheet balm = sheet("Balm");
        put(balm, "A1", "Material", "%");
        put(balm, "A2", "Rapsöl", 60);
        put(balm, "A3", "Sheabutter", 40);
        prices("Preise");
        XSSFSheet batches = sheet("Batches");
        put(batches, "A1", "Formula", "Hours per batch");
        put(batches, "A2", "Balm", 5);
        assertThat(CommandLineRun.of("cost", saved(), "--batch-kg", "10", "--date", DAY)
                        .err())
                .contains(
                        "note Batches!B2: Hours of work are given but no labour rate, so the work is counted as 0. Type"
                                + " \"Labour rate\" on the Settings sheet.");
    }
}
