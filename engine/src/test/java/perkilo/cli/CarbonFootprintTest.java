package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.CellFunction;

/** 500 jars of 30 g take 15 kg of bulk without losses, so that each footprint can be worked out by hand. */
final class CarbonFootprintTest {

    private static final String HEADING = "Raw materials, kg CO2e per unit";

    /** Invented footprints in kg CO2e for a kilogram; with the levels in %: 25, 44.5, 12, 10, 8 and 0.5. */
    private static final Map<String, Double> ALL = new LinkedHashMap<>(Map.of(
            "Shea butter refined", 2.0,
            "Sunflower oil high oleic", 1.0,
            "Coco-caprylate", 3.0,
            "Candelilla wax", 4.0,
            "Castor oil", 2.0,
            "Tocopherol", 10.0));

    @TempDir
    private Path folder = Path.of("");

    private Path book(Map<String, Double> footprints) throws IOException {
        Path plain = folder.resolve("plain.xlsx");
        CommandLineRun.of("new", "minimal", plain);
        Path book = folder.resolve("book.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(plain));
                OutputStream out = Files.newOutputStream(book)) {
            XSSFSheet sheet = workbook.createSheet("Materials");
            Row heads = sheet.createRow(0);
            heads.createCell(0).setCellValue("Material");
            heads.createCell(1).setCellValue("Carbon footprint, kg CO2e per kg");
            footprints.forEach((material, footprint) -> {
                Row row = sheet.createRow(sheet.getLastRowNum() + 1);
                row.createCell(0).setCellValue(material);
                row.createCell(1).setCellValue(footprint);
            });
            workbook.write(out);
        }
        return book;
    }

    private static JsonNode cost(Path book) throws IOException {
        return JsonMapper.builder()
                .build()
                .readTree(CommandLineRun.of("cost", "--date", "2026-11-20", "--json", book)
                        .out())
                .get("runs")
                .get(0);
    }

    private XSSFWorkbook result() throws IOException {
        return new XSSFWorkbook(Files.newInputStream(folder.resolve("book-costed.xlsx")));
    }

    /** The cell below the heading. */
    private static Cell cell(XSSFWorkbook workbook) {
        for (Row row : workbook.getSheet("Cost summary")) {
            for (Cell head : row) {
                if (head.getCellType() == CellType.STRING
                        && head.getStringCellValue().equals(HEADING)) {
                    return workbook.getSheet("Cost summary")
                            .getRow(row.getRowNum() + 1)
                            .getCell(head.getColumnIndex());
                }
            }
        }
        throw new AssertionError("the summary has no column " + HEADING);
    }

    @Test
    void a_unit_has_the_footprint_of_its_raw_materials() throws IOException {
        JsonNode run = cost(book(ALL));

        // 15 kg × (0.25 × 2 + 0.445 × 1 + 0.12 × 3 + 0.10 × 4 + 0.08 × 2 + 0.005 × 10) ÷ 500
        assertThat(run.get("carbonPerUnit").asText()).isEqualTo("0.05745");
        assertThat(run.get("carbonUnknown")).isEmpty();
        try (XSSFWorkbook workbook = result()) {
            assertThat(cell(workbook).getNumericCellValue()).isCloseTo(0.05745, within());
        }
    }

    @Test
    void it_follows_a_change_in_the_workbook() throws IOException {
        cost(book(ALL));

        try (XSSFWorkbook workbook = result()) {
            for (Row row : workbook.getSheet("Materials")) {
                if (row.getCell(0).getStringCellValue().equals("Candelilla wax")) {
                    row.getCell(1).setCellValue(14);
                }
            }
            XSSFFormulaEvaluator evaluator = new XSSFFormulaEvaluator(CellFunction.withoutComparisons(workbook));
            evaluator.evaluateAll();

            // 10 kg CO2e more for each of 1.5 kg, shared by 500 jars
            assertThat(cell(workbook).getNumericCellValue()).isCloseTo(0.05745 + 0.03, within());
        }
    }

    @Test
    void what_is_unknown_is_named_and_never_zero() throws IOException {
        Map<String, Double> some = new LinkedHashMap<>(ALL);
        some.remove("Castor oil");
        some.remove("Tocopherol");

        JsonNode run = cost(book(some));

        assertThat(run.get("carbonPerUnit").isNull()).isTrue();
        assertThat(run.get("carbonUnknown")).extracting(JsonNode::asText).containsExactly("Castor oil", "Tocopherol");
        try (XSSFWorkbook workbook = result()) {
            assertThat(cell(workbook).getStringCellValue()).isEqualTo("unknown: Castor oil, Tocopherol");
        }
    }

    @Test
    void zero_that_was_typed_is_a_figure() throws IOException {
        Map<String, Double> some = new LinkedHashMap<>(ALL);
        some.put("Shea butter refined", 0.0);

        assertThat(cost(book(some)).get("carbonPerUnit").asText()).isEqualTo("0.04245");
    }

    private static Offset<Double> within() {
        return Offset.offset(1e-12);
    }
}
