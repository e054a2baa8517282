package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code target}, from a workbook to its answer. */
final class TargetCommandTest {

    @TempDir
    private Path folder = Path.of("");

    private static RawBook balm(String retail, String margin) {
        return RawBook.sound()
                .sheet(
                        "Products",
                        List.of("Product", "Formula", "Fill", "Fill unit", "Target retail price", "Target margin %"),
                        List.of(
                                "Balm 30",
                                "Balm",
                                30,
                                "g",
                                retail.isEmpty() ? "" : new BigDecimal(retail),
                                margin.isEmpty() ? "" : new BigDecimal(margin)));
    }

    /** 30 g at 4.52 per kg cost 0.1356; at half of 0.40 a unit may cost 0.20. */
    @Test
    void a_target_that_is_reached_says_so() throws IOException {
        CommandLineRun run = run(balm("0.40", "50"));

        assertThat(run.exit()).as(run.err()).isZero();
        JsonNode target = json(run).get("products").get(0);
        assertThat(target.get("allowedUnitCost").textValue()).isEqualTo("0.2");
        assertThat(target.get("gap").textValue()).startsWith("-0.06");
        assertThat(target.get("reached").booleanValue()).isTrue();
        assertThat(target.get("moves")).isEmpty();
        assertThat(folder.resolve("book-target.xlsx")).exists();
    }

    @Test
    void a_product_without_a_price_or_a_margin_is_named() throws IOException {
        CommandLineRun run = run(balm("0.40", ""));

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.out() + run.err()).contains("No product has both a target retail price and a target margin.");
    }

    @Test
    void the_terminal_says_what_would_close_the_gap() throws IOException {
        CommandLineRun run = CommandLineRun.of("target", file(balm("0.10", "50")));

        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).contains("500 × Balm 30").contains("nothing was found");
    }

    /** The body lotion of the demo at a shop price that it does not reach: swaps are found, with their cautions. */
    @Test
    void swaps_are_among_the_changes_with_their_cautions() throws IOException {
        Path book = folder.resolve("launch.xlsx");
        try (InputStream in = Files.newInputStream(Path.of("../workbook-templates/launch.xlsx"));
                XSSFWorkbook workbook = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(book)) {
            for (Row row : workbook.getSheet("Products")) {
                if (row.getCell(0) != null && row.getCell(0).toString().equals("Body lotion")) {
                    row.getCell(14).setCellValue(13.5);
                }
            }
            workbook.write(out);
        }

        CommandLineRun run = CommandLineRun.of("target", book, "--units", "1000", "--date", "2026-11-20", "--json");

        assertThat(run.exit()).as(run.err()).isZero();
        List<String> kinds = new ArrayList<>();
        for (JsonNode product : json(run).get("products")) {
            boolean lotion = product.get("product").textValue().equals("Body lotion");
            assertThat(product.get("candidates").isEmpty()).isNotEqualTo(lotion);
            for (JsonNode move : product.get("candidates")) {
                kinds.add(move.get("kind").textValue());
                boolean swap = move.get("kind").textValue().equals("swap");
                assertThat(move.get("cautions").isEmpty()).isEqualTo(!swap && !isBlend(move));
                assertThat(move.get("effect").textValue()).startsWith("-");
            }
            assertThat(product.get("moves").size()).isLessThanOrEqualTo(3);
        }
        assertThat(kinds).contains("swap", "offer");
        assertThat(json(run).get("cautions")).isNotEmpty();
    }

    private static boolean isBlend(JsonNode move) {
        return move.get("kind").textValue().equals("blend");
    }

    private static JsonNode json(CommandLineRun run) throws IOException {
        return new ObjectMapper().readTree(run.out());
    }

    private CommandLineRun run(RawBook book) throws IOException {
        return CommandLineRun.of("target", file(book), "--json");
    }

    private Path file(RawBook book) throws IOException {
        return Files.write(folder.resolve("book.xlsx"), book.bytes());
    }
}
