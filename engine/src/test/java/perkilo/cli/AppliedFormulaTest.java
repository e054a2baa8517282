package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.desk.Choice;

/**
 * A swap or blend that was taken into a formula of its own, as a person goes on with it: he types the new formula's
 * name on the Products sheet and costs the workbook. What that costs is what the sheet has promised.
 */
@Tag("slow")
final class AppliedFormulaTest {

    private static final Path TEMPLATES = Path.of("../workbook-templates");
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder = Path.of("");

    /** One blend of each function of each formula of the templates; material Water asks for no single swaps. */
    @TestFactory
    List<DynamicTest> a_blend_costs_what_its_sheet_has_promised() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (String template : List.of("emollients", "launch", "orders")) {
            Path book = TEMPLATES.resolve(template + ".xlsx");
            JsonNode found = swapped(book);
            Map<String, Integer> last = new LinkedHashMap<>();
            found.get("blends")
                    .forEach(blend -> last.put(
                            blend.get("formula").asText() + ", "
                                    + blend.get("function").asText(),
                            blend.get("number").asInt()));
            assertThat(last).as(template).hasSizeGreaterThan(2);
            last.forEach((what, number) -> tests.add(DynamicTest.dynamicTest(
                    template + ": " + what,
                    () -> checkBlend(book, found.get("blends").get(number - 1)))));
        }
        return tests;
    }

    private JsonNode swapped(Path book, Object... more) throws IOException {
        List<Object> words = new ArrayList<>(
                List.of("swap", book, "--json", "-o", folder.resolve("found.xlsx"), "--date", "2026-11-19"));
        words.addAll(List.of(more));
        CommandLineRun run = CommandLineRun.of(words.toArray());
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        return JSON.readTree(run.out());
    }

    private void checkBlend(Path book, JsonNode blend) throws IOException {
        String formula = blend.get("formula").asText();
        String number = blend.get("number").asText();
        Path result = folder.resolve("applied.xlsx");
        CommandLineRun run =
                CommandLineRun.of("swap", book, "--date", "2026-11-19", "--apply", "blend", number, "-o", result);
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        String name = formula + " blend " + number;

        try (XSSFWorkbook written = opened(result)) {
            checkLines(written, name, formula, blend.get("parts"));
            Map<String, double[]> promised = promised(written.getSheet("Blend"), number);
            assertThat(promised).isNotEmpty();
            checkCosts(retyped(written, result, formula, name), name, promised, blend.get("proven"));
        }
    }

    @Test
    void a_swap_costs_what_its_sheet_has_promised() throws IOException {
        JsonNode found = swapped(
                TEMPLATES.resolve("emollients.xlsx"),
                "--formula",
                "Dry body oil",
                "--function",
                "emollient",
                "--apply",
                1);
        JsonNode swap = found.get("swaps").get(0);
        JsonNode base = found.get("base").get("Dry body oil");
        Map<String, double[]> promised = new LinkedHashMap<>();
        base.fieldNames()
                .forEachRemaining(key ->
                        promised.put("%,d × Dry body oil 200 mL".formatted(Long.valueOf(key)), new double[] {
                            base.get(key).get("unitCost").asDouble()
                                    + swap.get("unitCostChange").get(key).asDouble(),
                            base.get(key).get("outlay").asDouble()
                                    + swap.get("outlayChange").get(key).asDouble()
                        }));

        Path result = folder.resolve("found.xlsx");
        try (XSSFWorkbook written = opened(result)) {
            Path retyped = retyped(written, result, "Dry body oil", "Dry body oil swap 1");
            checkCosts(retyped, "Dry body oil swap 1", promised, swap.get("proven"));
        }
    }

    /** What only price lists offer is pointed out, for without them the new formula can't be costed. */
    @Test
    void what_comes_from_a_price_list_is_costed_with_it() throws IOException {
        Path prices = Path.of("../prices");
        JsonNode found = swapped(
                TEMPLATES.resolve("emollients.xlsx"),
                "--prices",
                prices,
                "--formula",
                "Dry body oil",
                "--apply",
                "blend 1");
        Path result = folder.resolve("found.xlsx");
        List<String> missing = new ArrayList<>();
        try (XSSFWorkbook written = opened(result)) {
            missing.addAll(column(written.getSheet("Dry body oil blend 1"), "Material"));
            missing.removeAll(column(written.getSheet("Offers"), "Item"));
        }
        CommandLineRun without =
                CommandLineRun.of("cost", result, "--batch-kg", "20", "-o", folder.resolve("without.xlsx"));
        CommandLineRun with = CommandLineRun.of(
                "cost", result, "--batch-kg", "20", "--prices", prices, "-o", folder.resolve("with.xlsx"));

        assertThat(missing).isNotEmpty().allSatisfy(material -> {
            assertThat(found.get("messages").findValuesAsText("text"))
                    .anySatisfy(text -> assertThat(text)
                            .startsWith("\"%s\" in \"Dry body oil blend 1\" is not offered in the workbook, only in "
                                    .formatted(material))
                            .endsWith(".csv. Use the same --prices when you cost the formula."));
            assertThat(without.err()).contains(material);
        });
        assertThat(without.exit()).isNotEqualTo(Exit.DONE);
        assertThat(with.exit()).isEqualTo(Exit.DONE);
        assertThat(with.out()).contains("20 kg of Dry body oil blend 1");
    }

    /** Types the new name over the old one among the products and saves the workbook. */
    private static Path retyped(XSSFWorkbook written, Path file, String from, String to) throws IOException {
        assertThat(retyped(written.getSheet("Products"), from, to)).isPositive();
        try (FileOutputStream out = new FileOutputStream(file.toFile())) {
            written.write(out);
        }
        return file;
    }

    private static XSSFWorkbook opened(Path file) throws IOException {
        try (FileInputStream in = new FileInputStream(file.toFile())) {
            return new XSSFWorkbook(in);
        }
    }

    /** Adds up to 100 %; what is out is gone, what is in stands there at its level, all else is as it was. */
    private static void checkLines(XSSFWorkbook written, String name, String original, JsonNode parts) {
        Map<String, BigDecimal> levels = levels(written.getSheet(name));
        Map<String, BigDecimal> before = levels(written.getSheet(original));
        BigDecimal sum = levels.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(sum).isEqualByComparingTo(new BigDecimal(100));
        BigDecimal change = BigDecimal.ZERO;
        for (JsonNode part : parts) {
            String material = part.get("material").asText();
            BigDecimal then = new BigDecimal(part.get("newPercent").asText());
            if (then.signum() == 0) {
                assertThat(levels).doesNotContainKey(material);
            } else {
                assertThat(levels.get(material)).as(material).isEqualByComparingTo(then);
                assertThat(described(written)).contains(material);
            }
            change =
                    change.add(then).subtract(new BigDecimal(part.get("percent").asText()));
            before.remove(material);
            levels.remove(material);
        }
        if (change.signum() != 0) {
            levels.merge("Water", change, (then, more) -> then.add(more).stripTrailingZeros());
        }
        assertThat(levels).isEqualTo(before);
    }

    private static List<String> described(XSSFWorkbook book) {
        return column(book.getSheet("Materials"), "Material");
    }

    /** In per cent; q.s. takes the rest. */
    private static Map<String, BigDecimal> levels(Sheet sheet) {
        List<String> materials = column(sheet, "Material");
        List<String> typed = column(sheet, "% w/w");
        Map<String, BigDecimal> levels = new LinkedHashMap<>();
        BigDecimal stated = BigDecimal.ZERO;
        for (String level : typed) {
            stated = level.equals("q.s.") ? stated : stated.add(new BigDecimal(level));
        }
        for (int i = 0; i < materials.size(); i++) {
            BigDecimal level =
                    typed.get(i).equals("q.s.") ? new BigDecimal(100).subtract(stated) : new BigDecimal(typed.get(i));
            levels.merge(materials.get(i), level, BigDecimal::add);
        }
        levels.replaceAll((material, level) -> level.stripTrailingZeros());
        return levels;
    }

    private static List<String> column(Sheet sheet, String head) {
        List<String> texts = new ArrayList<>();
        int column = -1;
        for (Row row : sheet) {
            if (column >= 0 && !text(row.getCell(column)).isEmpty()) {
                texts.add(text(row.getCell(column)));
            }
            for (Cell cell : row) {
                column = column < 0 && text(cell).equals(head) ? cell.getColumnIndex() : column;
            }
        }
        return texts;
    }

    private static String text(Cell cell) {
        if (cell == null) {
            return "";
        }
        return cell.getCellType() == CellType.NUMERIC
                ? BigDecimal.valueOf(cell.getNumericCellValue()).toPlainString()
                : cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "";
    }

    /** Unit cost and outlay then, by the title of the run. */
    private static Map<String, double[]> promised(Sheet sheet, String number) {
        Map<String, double[]> promised = new LinkedHashMap<>();
        boolean inBlend = false;
        boolean inRuns = false;
        for (Row row : sheet) {
            String first = text(row.getCell(0));
            inBlend = first.startsWith("Blend ") ? first.startsWith("Blend " + number + ":") : inBlend;
            boolean isRun = inRuns && row.getCell(2) != null && row.getCell(2).getCellType() == CellType.NUMERIC;
            if (isRun) {
                promised.put(first, new double[] {
                    row.getCell(2).getNumericCellValue(), row.getCell(5).getNumericCellValue()
                });
            }
            inRuns = inBlend && (first.equals("Run") || isRun);
        }
        return promised;
    }

    private static int retyped(Sheet products, String from, String to) {
        int retyped = 0;
        int formula = -1;
        for (Row row : products) {
            for (Cell cell : row) {
                formula = text(cell).equals("Formula") ? cell.getColumnIndex() : formula;
            }
            if (formula >= 0 && text(row.getCell(formula)).equals(from)) {
                row.getCell(formula).setCellValue(to);
                retyped++;
            }
        }
        return retyped;
    }

    private static void checkCosts(Path book, String formula, Map<String, double[]> promised, JsonNode proven)
            throws IOException {
        CommandLineRun run = CommandLineRun.of(
                "cost", book, "--json", "--date", "2026-11-19", "-o", book.resolveSibling("costed.xlsx"));
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        int compared = 0;
        for (JsonNode cost : JSON.readTree(run.out()).get("runs")) {
            if (cost.get("formula").asText().equals(formula)) {
                String title = "%,d × %s"
                        .formatted(
                                cost.get("units").asLong(), cost.get("product").asText());
                double[] then = promised.get(title);
                assertThat(then).as("%s of %s", title, promised.keySet()).isNotNull();
                double unitCost = cost.get("unitCost").get("EUR").asDouble();
                double outlay = cost.get("outlay").get("EUR").asDouble();
                assertThat(proven.get(cost.get("units").asText()).asBoolean()).isTrue();
                assertThat(outlay).as(title).isCloseTo(then[1], within(0.01));
                assertThat(unitCost).as(title).isCloseTo(then[0], within(1e-6 * then[0]));
                compared++;
            }
        }
        assertThat(compared).isEqualTo(promised.size());
    }

    @ParameterizedTest
    @CsvSource({
        "blend 99, 'takes a blend from 1 to'",
        "99999, 'takes a swap from 1 to'",
        "0, 'takes a swap from 1 to'",
        "blend, 'Choose one with --apply, from \"blend 1\" to'",
        "B2, 'but was given \"B2\"'",
        "-1, 'but was given \"-1\"'",
        "the first, 'but was given \"the first\"'"
    })
    void what_is_not_there_is_wrong_usage_and_writes_nothing(String choice, String said) throws IOException {
        Path book = Files.copy(TEMPLATES.resolve("emollients.xlsx"), folder.resolve("book.xlsx"));
        CommandLineRun run = CommandLineRun.of("swap", book, "--formula", "Face cream", "--apply", choice);

        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err()).contains(said);
        assertThat(folder.resolve("book-swapped.xlsx")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({"3, 3", "swap 3, 3", "SWAP3, 3"})
    void a_swap_is_called_by_its_number(String choice, int number) {
        assertThat(ChoiceWords.typed(choice).orElseThrow()).isEqualTo(new Choice(false, OptionalInt.of(number)));
    }

    @ParameterizedTest
    @CsvSource({"blend 2, 2", "Blend 2, 2", "blend-2, 2", "blend2, 2"})
    void a_blend_is_called_by_its_word_and_number(String choice, int number) {
        assertThat(ChoiceWords.typed(choice).orElseThrow()).isEqualTo(new Choice(true, OptionalInt.of(number)));
    }

    @Test
    void the_one_blend_that_is_asked_for_needs_no_number() throws IOException {
        JsonNode found = swapped(
                TEMPLATES.resolve("emollients.xlsx"),
                "--formula",
                "Dry body oil",
                "--function",
                "emollient",
                "--apply",
                "blend");

        assertThat(found.get("blends")).hasSize(1);
        assertThat(found.get("applied").asText()).isEqualTo("Dry body oil blend 1");
        assertThat(found.get("messages").findValuesAsText("text"))
                .anySatisfy(
                        text -> assertThat(text)
                                .isEqualTo(
                                        "To cost \"Dry body oil 200 mL\" with the new formula, type \"Dry body oil blend 1\" as its formula in this row."));
    }
}
