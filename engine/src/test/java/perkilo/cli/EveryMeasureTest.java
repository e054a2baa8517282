package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.units.Measure;

/**
 * Each unit goes all the way: an item is sold in packs of 2 of it at 10 EUR for one of it, and what is read, costed,
 * planned and written is what a person computes by hand.
 *
 * <p>A new unit is tested here without a line of this test: where it is trapped in some place, that place is named.
 */
final class EveryMeasureTest {

    /** Of the material, and so 0.8 kg in a litre. */
    private static final BigDecimal DENSITY = new BigDecimal("0.8");

    /** Pieces of the component, or kilograms of the material at 50 g a unit. */
    private static final BigDecimal UNITS = BigDecimal.valueOf(1000);

    private static final BigDecimal FILLED_KG = BigDecimal.valueOf(50);
    private static final BigDecimal PACK = BigDecimal.valueOf(2);
    private static final BigDecimal PRICE = BigDecimal.TEN;

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest(name = "{0}")
    @EnumSource(Measure.class)
    void a_unit_is_costed_as_by_hand(Measure unit) throws IOException {
        Path book = book(unit, unit.symbol(), PRICE);

        JsonNode item = item(book);

        BigDecimal packs = packs(unit, needed(unit));
        JsonNode purchase = item.get("purchases").get(0);
        assertThat(amount(purchase.get("packs")))
                .as("packs of 2 %s that are bought for %s", unit.symbol(), needed(unit))
                .isEqualByComparingTo(packs);
        assertThat(amount(purchase.get("goods")))
                .as("what they cost at %s EUR per %s", PRICE, unit.symbol())
                .isEqualByComparingTo(packs.multiply(PACK).multiply(PRICE));
        assertThat(amount(item.get("used")).doubleValue())
                .as("what is used of them, at 10 EUR for %s kg or pieces", inBase(unit))
                .isCloseTo(
                        needed(unit).multiply(PRICE).doubleValue()
                                / inBase(unit).doubleValue(),
                        closely());
        assertThat(List.of(
                        purchase.get("packUnit").asText(),
                        purchase.get("pricePer").asText(),
                        purchase.get("packSize").asText()))
                .as("the purchase in the answer")
                .containsExactly(unit.symbol(), unit.symbol(), "2");
    }

    /** 10 EUR for one of the unit, said of one kilogram, litre or piece. */
    @ParameterizedTest(name = "{0}")
    @EnumSource(Measure.class)
    void a_price_for_the_base_unit_comes_to_the_same(Measure unit) throws IOException {
        BigDecimal perBase = PRICE.divide(unit.inBase(), 15, RoundingMode.HALF_UP);

        JsonNode item = item(book(unit, base(unit).symbol(), perBase));

        assertThat(amount(item.get("used")).doubleValue())
                .as(
                        "what is used of packs in %s that are priced per %s",
                        unit.symbol(), base(unit).symbol())
                .isCloseTo(
                        needed(unit).multiply(PRICE).doubleValue()
                                / inBase(unit).doubleValue(),
                        closely());
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Measure.class)
    void the_sheets_formulas_come_to_the_same_and_follow_a_new_price(Measure unit) throws IOException {
        Path book = book(unit, unit.symbol(), PRICE);
        Path result = folder.resolve("costed.xlsx");
        assertThat(CommandLineRun.of("cost", "--date=2026-11-20", "-q", "-o", result, book)
                        .exit())
                .isZero();

        try (InputStream in = Files.newInputStream(result);
                XSSFWorkbook costed = new XSSFWorkbook(in)) {
            Map<String, Double> cached = numbers(costed, null);
            FormulaEvaluator evaluator = costed.getCreationHelper().createFormulaEvaluator();
            numbers(costed, evaluator).forEach((cell, number) -> {
                double written = cached.getOrDefault(cell, Double.NaN);
                assertThat(number)
                        .as("%s of a book whose packs are in %s, recalculated", cell, unit.symbol())
                        .isCloseTo(written, Offset.offset(1e-9 * Math.max(1, Math.abs(written))));
            });

            double goods =
                    packs(unit, needed(unit)).multiply(PACK).multiply(PRICE).doubleValue();
            assertThat(cached.values())
                    .as("a formula for the goods, in packs of 2 %s", unit.symbol())
                    .anyMatch(number -> number == goods);
            costed.getSheet("Offers").getRow(1).getCell(4).setCellValue(2 * PRICE.doubleValue());
            evaluator.clearAllCachedResultValues();
            assertThat(numbers(costed, evaluator).values())
                    .as("a formula for the goods at twice the price per %s", unit.symbol())
                    .anyMatch(number -> number == 2 * goods);
        }
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Measure.class)
    void stock_in_a_unit_is_not_ordered(Measure unit) throws IOException {
        Path book = book(unit, unit.symbol(), PRICE);

        CommandLineRun run = CommandLineRun.of("order", "--date=2026-11-20", "--json", book);
        JsonNode orders = JsonMapper.builder().build().readTree(run.out()).get("orders");

        BigDecimal needed = needed(unit).multiply(demand(unit)).divide(UNITS);
        BigDecimal stock = inBase(unit).multiply(BigDecimal.valueOf(3));
        assertThat(amount(orders.get(0).get("lines").get(0).get("packs")))
                .as("packs of 2 %s to order where 3 %s are there", unit.symbol(), unit.symbol())
                .isEqualByComparingTo(packs(unit, needed.subtract(stock)));
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Measure.class)
    void a_suppliers_own_list_may_use_it(Measure unit) throws IOException {
        Path list = Files.writeString(
                folder.resolve("list.csv"),
                "Item;Pack;Price\nThing;2 %s;10.00 EUR per %s\n".formatted(unit.symbol(), unit.symbol()));
        Path kept = folder.resolve("kept");

        CommandLineRun run = CommandLineRun.of(
                "prices", list, "--prices", kept, "--supplier", "Tarnholt Oleo", "--quoted=2026-11-20", "-q");

        assertThat(Files.isDirectory(kept))
                .as("a list with \"2 %s\" and \"per %s\" is taken in: %s", unit.symbol(), unit.symbol(), run.err())
                .isTrue();
        try (var files = Files.list(kept)) {
            String text = Files.readString(files.filter(file -> file.toString().endsWith(".csv"))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(run.err())));
            assertThat(text).contains("Thing,2,%s,".formatted(unit.symbol()), ",10,%s,EUR".formatted(unit.symbol()));
        }
    }

    /** 4 gross are 576 pieces; typed as such, or in a column that is headed so. */
    @ParameterizedTest
    @CsvSource({"Units, 4 gross", "Units (gross), 4", "Units, 576"})
    void a_number_of_things_may_be_in_gross(String header, String units) throws IOException {
        Path book = book(Measure.GROSS, "gross", PRICE);
        change(book, "Runs", 0, 1, header);
        change(book, "Runs", 1, 1, units);

        assertThat(amount(item(book).get("needed"))).isEqualByComparingTo("576");
    }

    @Test
    void a_component_may_come_in_gross_per_product() throws IOException {
        Path book = book(Measure.GROSS, "gross", PRICE);
        change(book, "Components", 1, 2, "1 gross");

        assertThat(amount(item(book).get("needed"))).isEqualByComparingTo("144000");
    }

    @ParameterizedTest
    @ValueSource(strings = {"gross", "Gross", "grosses", "Gros"})
    void words_for_twelve_dozen(String word) {
        assertThat(Measure.parse(word)).contains(Measure.GROSS);
    }

    /** With its taxes, or before a discount: not 144 pieces. */
    @ParameterizedTest
    @ValueSource(strings = {"Price (gross)", "Price gross", "Gross price"})
    void gross_beside_a_price_is_the_opposite_of_net(String header) throws IOException {
        Path book = book(Measure.EACH, "each", PRICE);
        change(book, "Offers", 0, 4, header);

        CommandLineRun run = CommandLineRun.of("cost", "--date=2026-11-20", "--json", book);

        assertThat(run.out() + run.err()).doesNotContain("144").doesNotContain("per gross");
    }

    private JsonNode item(Path book) throws IOException {
        CommandLineRun run = CommandLineRun.of("cost", "--date=2026-11-20", "--json", book);
        assertThat(run.exit()).as(run.out() + run.err()).isZero();
        for (JsonNode item : JsonMapper.builder()
                .build()
                .readTree(run.out())
                .get("runs")
                .get(0)
                .get("items")) {
            if (item.get("item").asText().equals("Thing")) {
                return item;
            }
        }
        throw new AssertionError("the answer has no item Thing: " + run.out());
    }

    private static BigDecimal amount(JsonNode node) {
        return new BigDecimal(node.isObject() ? node.get("EUR").asText() : node.asText());
    }

    private static BigDecimal inBase(Measure unit) {
        return unit.kind() == Measure.Kind.VOLUME ? unit.inBase().multiply(DENSITY) : unit.inBase();
    }

    private static Measure base(Measure unit) {
        return switch (unit.kind()) {
            case MASS -> Measure.KG;
            case VOLUME -> Measure.L;
            case COUNT -> Measure.EACH;
        };
    }

    private static BigDecimal needed(Measure unit) {
        return unit.isCount() ? UNITS : FILLED_KG;
    }

    /** What a plan is made for: few of a product where a pack is tiny, as a plan looks at each number of packs. */
    private static BigDecimal demand(Measure unit) {
        return unit.inBase().compareTo(new BigDecimal("0.01")) < 0 ? BigDecimal.TEN : UNITS;
    }

    private static BigDecimal packs(Measure unit, BigDecimal needed) {
        return needed.divide(inBase(unit).multiply(PACK), 0, RoundingMode.CEILING);
    }

    private static Percentage closely() {
        return Percentage.withPercentage(1e-5); // amounts have six decimals
    }

    private Path book(Measure unit, String pricePer, BigDecimal price) throws IOException {
        boolean count = unit.isCount();
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            sheet(
                    book,
                    "Offers",
                    List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per", "Currency"),
                    List.of(
                            "Tarnholt Oleo",
                            "Thing",
                            PACK.doubleValue(),
                            unit.symbol(),
                            price.doubleValue(),
                            pricePer,
                            "EUR"));
            sheet(
                    book,
                    "Materials",
                    List.of("Material", "Density g/mL", "House price"),
                    count ? List.of("Filling", 1.0, 0.01) : List.of("Thing", DENSITY.doubleValue()));
            sheet(book, "Balm", List.of("Material", "% w/w"), List.of(count ? "Filling" : "Thing", 100.0));
            sheet(
                    book,
                    "Products",
                    List.of("Product", "Formula", "Fill", "Fill unit"),
                    List.of("Balm 50", "Balm", 50.0, "g"));
            if (count) {
                sheet(
                        book,
                        "Components",
                        List.of("Product", "Component", "Units per product"),
                        List.of("Balm 50", "Thing", 1.0));
            }
            sheet(book, "Runs", List.of("Product", "Units"), List.of("Balm 50", UNITS.doubleValue()));
            sheet(
                    book,
                    "Demand",
                    List.of("Product", "Units", "Needed by"),
                    List.of("Balm 50", demand(unit).doubleValue(), "2027-01-20"));
            sheet(book, "Stock", List.of("Item", "Quantity", "Unit"), List.of("Thing", 3.0, unit.symbol()));
            return write(book);
        }
    }

    private Path write(XSSFWorkbook book) throws IOException {
        Path file = folder.resolve("book.xlsx");
        try (OutputStream out = Files.newOutputStream(file)) {
            book.write(out);
        }
        return file;
    }

    private void change(Path file, String sheet, int row, int column, String text) throws IOException {
        XSSFWorkbook book;
        try (InputStream in = Files.newInputStream(file)) {
            book = new XSSFWorkbook(in);
        }
        try (book) {
            book.getSheet(sheet).getRow(row).getCell(column).setCellValue(text);
            write(book);
        }
    }

    private static void sheet(XSSFWorkbook book, String name, List<?>... rows) {
        Sheet sheet = book.createSheet(name);
        for (int at = 0; at < rows.length; at++) {
            Row row = sheet.createRow(at);
            for (int column = 0; column < rows[at].size(); column++) {
                Cell cell = row.createCell(column);
                if (rows[at].get(column) instanceof Double number) {
                    cell.setCellValue(number);
                } else {
                    cell.setCellValue(String.valueOf(rows[at].get(column)));
                }
            }
        }
    }

    /** The numbers that formulas come to, by their cells: as they are kept, or as they are computed. */
    private static Map<String, Double> numbers(XSSFWorkbook book, @Nullable FormulaEvaluator evaluator) {
        Map<String, Double> numbers = new HashMap<>();
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() != CellType.FORMULA) {
                        continue;
                    }
                    String place = sheet.getSheetName() + "!" + cell.getAddress();
                    if (evaluator != null) {
                        CellValue value = evaluator.evaluate(cell);
                        if (value.getCellType() == CellType.NUMERIC) {
                            numbers.put(place, value.getNumberValue());
                        }
                    } else if (cell.getCachedFormulaResultType() == CellType.NUMERIC) {
                        numbers.put(place, cell.getNumericCellValue());
                    }
                }
            }
        }
        return numbers;
    }
}
