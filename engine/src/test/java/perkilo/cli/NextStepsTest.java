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
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a formulator asks for once swaps are found, with figures that were computed by hand from {@link TwoFormulas}.
 */
final class NextStepsTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder = Path.of("");

    private JsonNode asked(String more) throws IOException {
        CommandLineRun run = CommandLineRun.of(
                TwoFormulas.search(TwoFormulas.in(folder), folder.resolve("result.xlsx"), ("--json " + more).strip())
                        .toArray());
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        return JSON.readTree(run.out());
    }

    private static JsonNode swap(JsonNode answer, String formula, String candidate) {
        return only(answer.get("swaps"), "formula", formula, "material", "Caprylate A", "candidate", candidate);
    }

    private static JsonNode only(JsonNode all, String... keysAndTexts) {
        List<JsonNode> found = StreamSupport.stream(all.spliterator(), false)
                .filter(one -> {
                    boolean same = true;
                    for (int i = 0; i < keysAndTexts.length; i += 2) {
                        same &= one.get(keysAndTexts[i]).asText().equals(keysAndTexts[i + 1]);
                    }
                    return same;
                })
                .toList();
        assertThat(found).as(String.join(" ", keysAndTexts)).hasSize(1);
        return found.get(0);
    }

    private static double number(JsonNode node) {
        return Double.parseDouble(node.asText());
    }

    // what a trial costs

    /**
     * 200 g with 5 % take 10 g; the only pack of palmitate C is 180 kg: 180 x 3.1 = 558, above the minimum order, and
     * 45 freight. One of stearate D is 25 kg: 130, and 60 freight. Oleate B: 160, 45 freight and 30 for a small order.
     */
    @Test
    void a_trial_costs_the_smallest_pack_with_its_charges_and_the_tests() throws IOException {
        JsonNode answer = asked("");
        for (String[] each : new String[][] {{"Palmitate C", "603"}, {"Stearate D", "190"}, {"Oleate B", "235"}}) {
            String choice =
                    "swap " + swap(answer, "Body milk", each[0]).get("number").asInt();
            JsonNode trial = only(answer.get("trialCosts"), "choice", choice);

            assertThat(number(trial.get("materials"))).isEqualTo(Double.parseDouble(each[1]));
            assertThat(number(trial.get("cost"))).isEqualTo(Double.parseDouble(each[1]) + 650 + 480);
            assertThat(trial.get("assessment").isNull()).isTrue();
            assertThat(trial.get("notKnown").get(0).asText()).isEqualTo("assessment");
        }
    }

    @Test
    void units_to_pay_back_are_the_cost_over_the_saving_or_never() throws IOException {
        JsonNode answer = asked("");
        int never = 0;
        int paid = 0;
        for (JsonNode swap : answer.get("swaps")) {
            JsonNode trial = only(
                    answer.get("trialCosts"),
                    "choice",
                    "swap " + swap.get("number").asInt());
            for (String run : List.of("300", "3000", "500", "5000")) {
                JsonNode change = swap.get("unitCostChange").get(run);
                if (change == null) {
                    continue;
                }
                String units = trial.get("unitsToPayBack").get(run).asText();
                if (number(change) >= 0) {
                    assertThat(units).isEqualTo("never");
                    never++;
                } else {
                    double cost = number(trial.get("cost"));
                    double saving = -number(change); // to six decimals
                    assertThat(Double.parseDouble(units))
                            .isGreaterThanOrEqualTo(cost / (saving + 6e-7))
                            .isLessThan(cost / (saving - 6e-7) + 1);
                    paid++;
                }
            }
        }
        assertThat(paid).isPositive();
        assertThat(never).isPositive();
    }

    // the same swap in all formulas

    /**
     * The smallest runs: 25.5 kg of cream and 61 kg of milk, both with their hold-up. Together they take one pack each:
     * Ostrand 52.5 + 18 + 150 + 70 + 8 x 30 + 60 freight = 590.5; Nordquell 287.5 + 170 + 45 = 502.5. With stearate D
     * in place of caprylate A: Ostrand 590.5 + 130, Nordquell 170 + 45 + 30 for a small order = 245. Alone: cream 5 x
     * 30 of bottles: 500.5 + 502.5 = 1003, then 630.5 + 245 = 875.5; milk 3 x 30: 440.5 + 287.5 + 45 + 30 = 803, then
     * 570.5.
     */
    @Test
    void the_same_swap_is_bought_alone_and_together() throws IOException {
        JsonNode answer = asked("");
        JsonNode same = only(answer.get("sameSwapInAllFormulas"), "material", "Caprylate A", "candidate", "Stearate D");
        JsonNode smallest = same.get("ranks").get(0);

        assertThat(same.get("formulas")).extracting(JsonNode::asText).containsExactly("Day cream", "Body milk");
        assertThat(smallest.get("runs"))
                .extracting(JsonNode::asText)
                .containsExactly(TwoFormulas.title(500, "Cream 50 g"), TwoFormulas.title(300, "Milk 200 g"));
        assertThat(smallest.get("outlaySavedAlone"))
                .extracting(NextStepsTest::number)
                .containsExactly(1003 - 875.5, 803 - 570.5);
        assertThat(number(smallest.get("outlaySavedAloneTogether"))).isEqualTo(360);
        assertThat(number(smallest.get("outlaySavedInOnePurchase"))).isEqualTo(590.5 + 502.5 - (720.5 + 245));
        assertThat(same.get("ranks")).hasSize(2);
    }

    // emollients compared

    /** 5,000 creams take 20.04 kg of caprylate A: one pack of 25 kg; 500 take 2.04 kg, and one pack as well. */
    @Test
    void emollients_cost_what_their_purchase_alone_costs_and_the_cheapest_stand_first() throws IOException {
        JsonNode emollients = asked("").get("emollients");

        assertThat(emollients)
                .extracting(one -> one.get("material").asText())
                .containsExactly("Palmitate C", "Stearate D", "Oleate B", "Triglyceride E", "Caprylate A");
        String run = TwoFormulas.title(500, "Cream 50 g");
        assertThat(emollients)
                .extracting(one -> number(one.get("perKgs").get(run)))
                .containsExactly(603 / 180.0, 190 / 25.0, 235 / 25.0, 245 / 25.0, (287.5 + 75) / 25);
        assertThat(number(emollients.get(1).get("savingsPerKg").get(run))).isEqualTo(14.5 - 7.6, within(1e-9));
        assertThat(emollients.get(0).get("spreadingValue").asText()).isEqualTo("1050");
        assertThat(emollients.get(4).get("formulas"))
                .extracting(JsonNode::asText)
                .containsExactly("Day cream", "Body milk");
        try (XSSFWorkbook book = opened("result.xlsx")) {
            XSSFSheet sheet = book.getSheet("Emollients compared");
            assertThat(sheet.createDrawingPatriarch().getCharts()).hasSize(1);
        }
    }

    // bench sheets

    @ParameterizedTest
    @ValueSource(strings = {"200", "333.33", "50"})
    void weights_add_up_to_the_batch_and_follow_its_size(String grams) throws IOException {
        asked("--formula Body~milk --bench " + grams);
        try (XSSFWorkbook book = opened("result.xlsx")) {
            Sheet bench = book.getSheet("Bench Body milk");
            FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
            assertThat(weights(bench, evaluator).stream().reduce(BigDecimal.ZERO, BigDecimal::add))
                    .isEqualByComparingTo(grams);
            size(bench).setCellValue(777.77);
            evaluator.clearAllCachedResultValues();
            List<BigDecimal> weights = weights(bench, evaluator);
            assertThat(weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add))
                    .isEqualByComparingTo("777.77");
            assertThat(weights.get(1)).isEqualByComparingTo("23.33");
            assertThat(weights.get(2)).isEqualByComparingTo("3.11");
        }
    }

    private static Cell size(Sheet bench) {
        for (Row row : bench) {
            for (Cell cell : row) {
                if (text(cell).equals("Batch")) {
                    return bench.getRow(row.getRowNum() + 1).getCell(cell.getColumnIndex());
                }
            }
        }
        throw new AssertionError("no batch size");
    }

    private static List<BigDecimal> weights(Sheet bench, FormulaEvaluator evaluator) {
        List<BigDecimal> weights = new ArrayList<>();
        int column = -1;
        for (Row row : bench) {
            if (column >= 0 && text(row.getCell(0)).isEmpty()) {
                return weights;
            }
            if (column >= 0) {
                double weight = evaluator.evaluate(row.getCell(column)).getNumberValue();
                weights.add(BigDecimal.valueOf(Math.round(weight * 1e6), 6).stripTrailingZeros());
                assertThat(weights.get(weights.size() - 1).scale()).isLessThanOrEqualTo(2);
            }
            for (Cell cell : row) {
                column = text(cell).equals("Weight, g") ? cell.getColumnIndex() : column;
            }
        }
        throw new AssertionError("no weights");
    }

    @Test
    void the_bench_sheet_of_a_swap_marks_what_changed_and_is_not_read_as_a_formula() throws IOException {
        JsonNode answer = asked("--apply 1 --bench 200");
        JsonNode weights = answer.get("benches").get(0).get("weights");
        String candidate = answer.get("swaps").get(0).get("candidate").asText();

        assertThat(only(weights, "material", candidate).get("changed").asText())
                .startsWith("new, in place of Caprylate A, ");
        Path kept = folder.resolve("kept.xlsx");
        try (XSSFWorkbook book = opened("result.xlsx")) {
            book.setSheetName(book.getSheetIndex("Bench Body milk swap 1"), "My trial");
            try (FileOutputStream out = new FileOutputStream(kept.toFile())) {
                book.write(out);
            }
        }
        CommandLineRun check = CommandLineRun.of("check", kept);
        assertThat(check.exit()).as(check.err()).isEqualTo(Exit.DONE);
        assertThat(check.out()).contains("My trial").doesNotContain("'My trial': read", "'My trial' (from");
    }

    @Test
    void a_batch_below_a_gram_is_wrong_usage() throws IOException {
        CommandLineRun run = CommandLineRun.of("swap", TwoFormulas.in(folder), "--bench", "0.5");

        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err()).contains("--bench takes the grams of a trial batch");
    }

    // applied formulas

    @Test
    void a_new_formula_keeps_the_columns_of_the_persons_sheet() throws IOException {
        JsonNode answer = asked("--formula Day~cream --material Caprylate~A --apply 1");
        String candidate = answer.get("swaps").get(0).get("candidate").asText();
        try (XSSFWorkbook book = opened("result.xlsx")) {
            Sheet sheet = book.getSheet("Day cream swap 1");

            assertThat(cells(sheet.getRow(0)))
                    .startsWith(
                            "Phase",
                            "Material",
                            "% w/w",
                            "Phase °C",
                            "Formula",
                            "INCI name",
                            "Remarks",
                            "Supplier code",
                            "Changed");
            assertThat(cells(sheet.getRow(3)).subList(5, 9))
                    .containsExactly("Xanthan Gum", "disperse in glycerin", "71.0", "");
            assertThat(text(sheet.getRow(4).getCell(1))).isEqualTo(candidate);
            assertThat(text(sheet.getRow(4).getCell(5))).isNotEmpty().isNotEqualTo("Coco-Caprylate");
            assertThat(cells(sheet.getRow(4)).subList(6, 9))
                    .containsExactly("", "", "new, in place of Caprylate A, 8 %");
        }
        assertThat(answer.get("messages").findValuesAsText("text"))
                .anySatisfy(text -> assertThat(text)
                        .startsWith("In \"Day cream swap 1\" the cells of Remarks, Supplier code are blank"));
    }

    @Test
    void the_same_swap_applied_again_replaces_its_sheet_and_one_that_was_changed_stays() throws IOException {
        Path book = TwoFormulas.in(folder);
        applied(book);
        List<String> once = tabs(book);
        applied(book);
        assertThat(tabs(book)).isEqualTo(once).contains("Body milk swap 1");

        try (XSSFWorkbook opened = opened("two.xlsx")) {
            opened.getSheet("Body milk swap 1").getRow(2).getCell(2).setCellValue(3.5);
            try (FileOutputStream out = new FileOutputStream(book.toFile())) {
                opened.write(out);
            }
        }
        String said = applied(book);
        assertThat(said).contains("The sheet \"Body milk swap 1\" has been changed since it was written");
        assertThat(tabs(book)).contains("Body milk swap 1", "Body milk swap 1 (2)");
        try (XSSFWorkbook opened = opened("two.xlsx")) {
            assertThat(opened.getSheet("Body milk swap 1").getRow(2).getCell(2).getNumericCellValue())
                    .isEqualTo(3.5);
        }
        applied(book);
        assertThat(tabs(book)).doesNotContain("Body milk swap 1 (3)");
    }

    private static String applied(Path book) {
        CommandLineRun run = CommandLineRun.of(
                "swap", book, "--formula", "Body milk", "--material", "Caprylate A", "--apply", "1", "--in-place");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        return run.out() + run.err();
    }

    private static List<String> tabs(Path book) throws IOException {
        try (XSSFWorkbook opened = new XSSFWorkbook(Files.newInputStream(book))) {
            List<String> tabs = new ArrayList<>();
            opened.sheetIterator().forEachRemaining(sheet -> tabs.add(sheet.getSheetName()));
            return tabs;
        }
    }

    private XSSFWorkbook opened(String file) throws IOException {
        try (FileInputStream in = new FileInputStream(folder.resolve(file).toFile())) {
            return new XSSFWorkbook(in);
        }
    }

    private static List<String> cells(Row row) {
        List<String> cells = new ArrayList<>();
        for (int column = 0; column < row.getLastCellNum(); column++) {
            cells.add(text(row.getCell(column)));
        }
        return cells;
    }

    private static String text(Cell cell) {
        if (cell == null) {
            return "";
        }
        return cell.getCellType() == CellType.NUMERIC
                ? Double.toString(cell.getNumericCellValue())
                : cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "";
    }
}
