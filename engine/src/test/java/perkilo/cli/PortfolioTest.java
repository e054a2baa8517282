package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code perkilo cost} on several books and on folders of them. */
final class PortfolioTest {

    private static final String DAY = "2026-11-20";

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void books() throws IOException {
        CommandLineRun.of("new", "launch", folder.resolve("Launch & co.xlsx"));
        CommandLineRun.of("new", "minimal", folder.resolve("balm.xlsx"));
        Files.writeString(folder.resolve("cut.xlsx"), "this is no workbook");
        Files.writeString(folder.resolve("~$balm.xlsx"), "a lock");
        Files.writeString(folder.resolve(".hidden.xlsx"), "hidden");
        Files.writeString(folder.resolve("balm-ordered.xlsx"), "a result");
        Files.writeString(folder.resolve("balm.backup-2026-11-20-1.xlsx"), "a backup");
        Files.writeString(folder.resolve("notes.txt"), "notes");
        Files.createDirectory(folder.resolve("more.xlsx"));
    }

    @Test
    void a_folder_is_costed_book_by_book_and_a_bad_one_does_not_stop_the_others() throws IOException {
        CommandLineRun run = CommandLineRun.of("cost", folder, "--date", DAY, "--units", "500");

        assertThat(run.exit()).isEqualTo(Exit.PARTLY);
        assertThat(run.out())
                .containsSubsequence(
                        "balm.xlsx (EUR)",
                        "  500 × Simple balm 30 g",
                        "cut.xlsx: not costed, 1 error",
                        "Launch & co.xlsx (EUR)",
                        "  500 × Hand balm",
                        "Written to " + folder.resolve("portfolio-costed.xlsx"))
                .doesNotContain("ordered", "backup", "hidden", "~$");
        assertThat(run.err().lines().filter(line -> line.contains("error")))
                .singleElement()
                .asString()
                .startsWith("cut.xlsx: error: ")
                .contains("is a text file");
        assertThat(results()).containsExactly("Launch & co-costed.xlsx", "balm-costed.xlsx", "portfolio-costed.xlsx");
    }

    /** The results of a first run are no books of the second. */
    @Test
    void a_second_run_says_the_same() throws IOException {
        CommandLineRun first = CommandLineRun.of("cost", folder, "--date", DAY, "--units", "500");
        byte[] summary = Files.readAllBytes(folder.resolve("portfolio-costed.xlsx"));

        CommandLineRun second = CommandLineRun.of("cost", folder, "--date", DAY, "--units", "500");

        assertThat(second).isEqualTo(first);
        assertThat(cells(folder.resolve("portfolio-costed.xlsx"))).isEqualTo(cells(summary));
    }

    @Test
    void as_json_it_is_an_array_of_the_single_answers() throws IOException {
        JsonNode all = new ObjectMapper()
                .readTree(CommandLineRun.of("cost", folder, "--date", DAY, "--units", "500", "--json")
                        .out());

        assertThat(all.isArray()).isTrue();
        assertThat(all).hasSize(3);
        for (int i : List.of(0, 2)) {
            Path book = Path.of(all.get(i).get("book").asText());
            JsonNode single = new ObjectMapper()
                    .readTree(CommandLineRun.of("cost", book, "--date", DAY, "--units", "500", "--json")
                            .out());
            ObjectNode alone = ((ObjectNode) all.get(i)).deepCopy();
            alone.remove("book");
            assertThat(alone.equals(single)).as(alone + " against " + single).isTrue();
        }
        assertThat(all.get(1).at("/messages/0/level").asText()).isEqualTo("error");
        assertThat(all.get(1).has("runs")).isFalse();
    }

    @Test
    void the_summary_is_live_and_leads_to_the_books() throws IOException {
        CommandLineRun.of("cost", folder, "--date", DAY, "--units", "500");

        try (XSSFWorkbook workbook = open(folder.resolve("portfolio-costed.xlsx"))) {
            XSSFSheet sheet = workbook.getSheet("Portfolio");
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            int formulas = 0;
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA
                            && cell.getCachedFormulaResultType() == CellType.NUMERIC) {
                        double cached = cell.getNumericCellValue();
                        assertThat(evaluator.evaluate(cell).getNumberValue())
                                .as(cell.getAddress().toString())
                                .isCloseTo(cached, within(Math.abs(cached) * 1e-9));
                        formulas++;
                    }
                }
            }
            assertThat(formulas).isGreaterThan(15);
            assertThat(sheet.getDrawingPatriarch().getCharts()).hasSize(2);
            List<String> targets = sheet.getHyperlinkList().stream()
                    .filter(link -> link.getType() != HyperlinkType.DOCUMENT)
                    .map(Hyperlink::getAddress)
                    .distinct()
                    .toList();
            assertThat(targets)
                    .containsExactlyInAnyOrder(
                            "cut.xlsx",
                            "balm-costed.xlsx#'Cost summary'!A1",
                            "Launch%20&%20co-costed.xlsx#'Cost summary'!A1");
            assertThat(workbook.getSheet("Messages").getPhysicalNumberOfRows()).isGreaterThan(3);
        }
    }

    @Test
    void results_may_go_to_a_folder_of_their_own() throws IOException {
        Path out = folder.resolve("results");

        CommandLineRun run = CommandLineRun.of(
                "cost",
                folder.resolve("balm.xlsx"),
                folder.resolve("balm.xlsx"),
                folder.resolve("Launch & co.xlsx"),
                "-o",
                out,
                "--date",
                DAY,
                "--units",
                "500",
                "-q");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).isEmpty();
        try (Stream<Path> inside = Files.list(out)) {
            assertThat(inside.map(file -> String.valueOf(file.getFileName())).sorted())
                    .containsExactly("Launch & co-costed.xlsx", "balm-costed.xlsx", "portfolio-costed.xlsx");
        }
        assertThat(results()).isEmpty();
    }

    @Test
    void two_results_for_one_place_are_refused_before_anything_is_done() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        Files.copy(folder.resolve("balm.xlsx"), other.resolve("balm.xlsx"));

        CommandLineRun run = CommandLineRun.of(
                "cost", folder.resolve("balm.xlsx"), other.resolve("balm.xlsx"), "-o", folder.resolve("results"));

        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err())
                .contains("would both be written to")
                .contains("Rename one of the two, or cost them one at a time.");
        assertThat(folder.resolve("results")).doesNotExist();
    }

    @Test
    void what_stood_in_the_place_of_a_result_is_kept_and_named() throws IOException {
        Path place = folder.resolve("balm-costed.xlsx");
        Files.copy(folder.resolve("Launch & co.xlsx"), place);
        byte[] before = Files.readAllBytes(place);
        CommandLineRun run = CommandLineRun.of("cost", folder, "--date", DAY, "--units", "500");

        String told = "The result of balm.xlsx replaced a file, which is kept as ";
        assertThat(run.out())
                .containsOnlyOnce("replaced a file, which is kept as")
                .contains(told);
        String kept = run.out()
                .substring(run.out().indexOf(told) + told.length())
                .lines()
                .findFirst()
                .orElseThrow();
        assertThat(Path.of(kept)).hasBinaryContent(before);
    }

    @Test
    void out_names_a_folder() {
        CommandLineRun run = CommandLineRun.of("cost", folder, "-o", folder.resolve("all.xlsx"));

        assertThat(run.exit()).isEqualTo(Exit.USAGE);
        assertThat(run.err())
                .startsWith("--out must name a folder when several workbooks or a folder are costed, but was given");
    }

    @Test
    void a_folder_without_books_is_said_to_be_one() {
        CommandLineRun run = CommandLineRun.of("cost", folder.resolve("more.xlsx"));

        assertThat(run.exit()).isEqualTo(Exit.FILE);
        assertThat(run.err()).contains("holds no workbook (.xlsx or .xlsm) to cost");
    }

    /** What every book of the folder uses is read and told once. */
    @Test
    void price_lists_are_shared() throws IOException {
        Path prices = Files.createDirectory(folder.resolve("lists"));
        Files.writeString(prices.resolve("words.csv"), "Some,words\nand,more\n");
        Files.copy(folder.resolve("balm.xlsx"), folder.resolve("balm 2.xlsx"));

        CommandLineRun run = CommandLineRun.of(
                "cost", folder.resolve("balm.xlsx"), folder.resolve("balm 2.xlsx"), "--prices", prices, "--date", DAY);

        assertThat(run.exit()).isZero();
        assertThat(run.err().lines().filter(line -> line.contains("words.csv"))).hasSize(1);
    }

    @Test
    void what_is_said_of_a_row_of_a_shared_list_is_said_once() throws IOException {
        Path list = folder.resolve("list.csv");
        Files.writeString(list, """
                Supplier,Item,Pack size,Pack unit,Price,Price per,Currency,Quoted on,Valid until
                Wending Supplies,Shea butter refined,25,kg,4.10,kg,EUR,2026-01-05,2026-02-01
                """);
        Files.copy(folder.resolve("balm.xlsx"), folder.resolve("balm 2.xlsx"));

        CommandLineRun run = CommandLineRun.of(
                "cost", folder.resolve("balm.xlsx"), folder.resolve("balm 2.xlsx"), "--prices", list, "--date", DAY);

        assertThat(run.exit()).isZero();
        assertThat(run.err().lines().filter(line -> line.contains("expired on 2026-02-01")))
                .singleElement()
                .asString()
                .contains("list.csv line 2");
    }

    @Test
    void one_book_alone_is_no_portfolio() throws IOException {
        CommandLineRun run = CommandLineRun.of("cost", folder.resolve("balm.xlsx"), "--date", DAY);

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("(all in EUR)").doesNotContain("portfolio");
        assertThat(results()).containsExactly("balm-costed.xlsx");
    }

    /** A price list that cannot be used keeps every book from an answer, and is named once. */
    @Test
    void a_bad_shared_file_stops_all() throws IOException {
        Path words = Files.writeString(folder.resolve("words.csv"), "Some,words\nand,more\n");

        CommandLineRun run = CommandLineRun.of("cost", folder, "--prices", words, "--date", DAY);

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err())
                .startsWith("error words.csv: No price list was recognised in this file. ")
                .contains("1 error; nothing was written.");
        assertThat(results()).isEmpty();
    }

    private List<String> results() throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith("-costed.xlsx"))
                    .sorted()
                    .toList();
        }
    }

    private static XSSFWorkbook open(Path file) throws IOException {
        try (var content = Files.newInputStream(file)) {
            return new XSSFWorkbook(content);
        }
    }

    private static List<String> cells(Path file) throws IOException {
        return cells(Files.readAllBytes(file));
    }

    private static List<String> cells(byte[] file) throws IOException {
        List<String> cells = new ArrayList<>();
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(file))) {
            for (var sheet : workbook) {
                for (Row row : sheet) {
                    row.forEach(cell -> cells.add(sheet.getSheetName() + cell.getAddress() + cell));
                }
            }
        }
        assertThat(cells).isNotEmpty();
        return cells;
    }
}
