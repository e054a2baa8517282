package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.reading.BookReader;
import perkilo.reading.Sources;

/** {@code perkilo prices} as a person runs it: lists in, costs out, what changed. */
final class PricesCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String TITLE = "Wending Supplies;;;;\nPreisliste Stand: %s;;;;\n;;;;\n";

    @TempDir
    Path folder = Path.of("");

    private Path book = Path.of("");
    private Path kept = Path.of("");
    private String err = "";

    @BeforeEach
    void a_book_and_an_empty_folder() {
        book = folder.resolve("minimal.xlsx");
        kept = folder.resolve("kept");
        assertThat(run("new", "minimal", book.toString()).exit()).isZero();
    }

    private record Ran(int exit, String out) {}

    private Ran run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter errors = new StringWriter();
        int exit = Perkilo.run(new PrintWriter(out), new PrintWriter(errors), arguments);
        err = errors.toString();
        return new Ran(exit, out.toString());
    }

    private Path write(String name, String text) throws IOException {
        return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    }

    private Ran take(Path list, String... more) {
        List<String> arguments = new ArrayList<>(List.of(
                "prices",
                list.toString(),
                "--prices",
                kept.toString(),
                "--book",
                book.toString(),
                "--supplier",
                "Wending Supplies"));
        arguments.addAll(List.of(more));
        return run(arguments.toArray(String[]::new));
    }

    @Test
    void a_kept_list_is_not_warned_about() throws IOException {
        Path list = write("list.csv", "Stand: 2026-11-02\nArtikel;Gebinde;EUR/kg;Rabatt %\nVanillin;25 kg;6,10;2\n");
        assertThat(take(list).exit()).as(err).isZero();

        Ran checked = run("check", book.toString(), "--prices", kept.toString());
        assertThat(checked.out()).contains("wending-supplies-2026-11-02.csv");
        assertThat(err).doesNotContain("\"From file\"", "\"Note\"");
    }

    @Test
    void the_suppliers_article_number_stays_with_the_price_and_is_read_again() throws IOException {
        Path list = write("list.csv", "Stand: 2026-11-02\nArt.-Nr.;Artikel;Gebinde;EUR/kg\nW-10;Vanillin;25 kg;6,10\n");
        assertThat(take(list).exit()).as(err).isZero();

        List<String> lines = Files.readAllLines(kept.resolve("wending-supplies-2026-11-02.csv"));
        assertThat(lines.get(0)).endsWith(",Note,From file,Article number,Supplier's item name");
        assertThat(lines.get(1)).endsWith(",W-10,");
        assertThat(new BookReader()
                        .read(new Sources(book, List.of(kept), null, null), LocalDate.of(2026, 11, 20))
                        .value()
                        .offersFor("Vanillin"))
                .singleElement()
                .satisfies(offer -> assertThat(offer.terms().listed().article()).isEqualTo("W-10"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--out=x.xlsx",
                "--in-place",
                "--sheet-only",
                "--date=2026-11-20",
                "--rates=r.csv",
                "--units=10",
                "--batch-kg=5"
            })
    void an_option_that_is_for_changes_alone_is_refused_when_lists_are_taken_in(String option) throws IOException {
        Path list = write("list.csv", TITLE.formatted("15.11.2026"));
        assertThat(take(list, option).exit()).isEqualTo(Exit.USAGE);
        assertThat(err)
                .contains("--out, --in-place, --sheet-only, --date, --rates, --units and --batch-kg only work with"
                        + " --changes. Leave them out to take lists in.");
        assertThat(kept).doesNotExist();
    }

    @Test
    void items_without_a_price_are_not_counted_among_those_that_have_one() throws IOException {
        Path list = write("one.csv", "Item;Pack;Price EUR/kg\nA;25 kg;1,50\nB;25 kg;auf Anfrage\n");

        Ran ran = take(list, "--quoted", "2026-11-15");

        assertThat(ran.exit()).as(err).isZero();
        assertThat(ran.out() + err).contains("Wending Supplies of 2026-11-15: 1 price of 1 item, kept in ");
    }

    private Map<String, BigDecimal> unitCosts(String date) throws IOException {
        Ran ran = run(
                "cost",
                book.toString(),
                "--prices",
                kept.toString(),
                "--json",
                "--date",
                date,
                "-o",
                folder.resolve("costed.xlsx").toString());
        assertThat(ran.exit()).as(err).isZero();
        Map<String, BigDecimal> costs = new HashMap<>();
        for (JsonNode one : JSON.readTree(ran.out()).get("runs")) {
            JsonNode cost = one.get("unitCost");
            costs.put(
                    one.get("product").asText() + one.get("units").asText(),
                    new BigDecimal(cost.elements().next().asText()));
        }
        assertThat(costs).isNotEmpty();
        return costs;
    }

    /** Every item that the minimal workbook buys, a little below its price there. */
    private List<String> items() throws IOException {
        Ran ran = run(
                "cost",
                book.toString(),
                "--json",
                "-o",
                folder.resolve("plain.xlsx").toString());
        assertThat(ran.exit()).as(err).isZero();
        List<String> items = new ArrayList<>();
        for (JsonNode item : JSON.readTree(ran.out()).get("runs").get(0).get("items")) {
            if (item.get("unit").asText().equals("kg") && !item.get("purchases").isEmpty()) {
                items.add(item.get("item").asText());
            }
        }
        assertThat(items).isNotEmpty();
        return items;
    }

    private String list(String day, List<String> items, String first, String second) {
        StringBuilder text = new StringBuilder(TITLE.formatted(day));
        text.append("Artikel;Gebinde;Preis EUR/kg;ab 5 Gebinde (EUR/kg)\n");
        for (String item : items) {
            text.append('"')
                    .append(item)
                    .append("\";1 kg;")
                    .append(first)
                    .append(';')
                    .append(second)
                    .append('\n');
        }
        return text.toString();
    }

    @Test
    void the_same_catalogue_in_all_layouts_gives_the_same_costs() throws IOException {
        List<String> items = items();
        StringBuilder packs = new StringBuilder("Product,Pack,From quantity (kg),Price per 100 g,Currency\n");
        StringBuilder json = new StringBuilder();
        StringBuilder french = new StringBuilder("Désignation\tConditionnement\t1–4 fûts\t5+ fûts\n");
        StringBuilder kept = new StringBuilder(
                "Supplier,Item,Pack size,Pack unit,From quantity,Price,Price per,Currency,Quoted on\n");
        for (String item : items) {
            packs.append("\"%s\",1 kg,,0.125,EUR\n\"%s\",1 kg,5,0.11,EUR\n".formatted(item, item));
            json.append(json.length() == 0 ? "" : ",")
                    .append("{\"Item\": \"%s\", \"Pack size\": \"1 kg\", \"Price per kg (EUR)\": 1.25, "
                            .formatted(item))
                    .append("\"from 5 packs (EUR/kg)\": 1.1}");
            french.append(item).append("\tfût de 1 kg\t1,25 €/kg\t1,10 €/kg\n");
            kept.append("Wending Supplies,\"%s\",1,kg,,1.25,kg,EUR,2026-11-01\n".formatted(item));
            kept.append("Wending Supplies,\"%s\",1,kg,5,1.10,kg,EUR,2026-11-01\n".formatted(item));
        }
        List<Path> lists = List.of(
                write("german.csv", list("01.11.2026", items, "1,25", "1,10")),
                write("english.csv", packs.toString()),
                write("list.json", "[" + json + "]"),
                write("french.txt", french.toString()),
                write("long.csv", kept.toString()));
        Map<String, BigDecimal> expected = null;
        for (Path list : lists) {
            deleteKept();
            assertThat(take(list, "--quoted", "2026-11-01").exit())
                    .as(list + err)
                    .isZero();
            Map<String, BigDecimal> costs = unitCosts("2026-11-20");
            if (expected == null) {
                expected = costs;
                deleteKept();
                Files.createDirectories(this.kept);
                assertThat(unitCosts("2026-11-20"))
                        .as("the list is cheaper than the workbook")
                        .isNotEqualTo(expected);
            }
            assertThat(costs).as(list.toString()).isEqualTo(expected);
        }
    }

    private void deleteKept() throws IOException {
        if (Files.exists(kept)) {
            try (var files = Files.list(kept)) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    @Test
    void the_quote_that_is_valid_on_the_costing_date_wins_and_the_change_is_shown_with_its_effect() throws IOException {
        List<String> items = items();
        assertThat(take(write("a.csv", list("01.09.2026", items, "1,25", "1,10")))
                        .exit())
                .as(err)
                .isZero();
        assertThat(take(write("b.csv", list("01.11.2026", items, "1,50", "1,20")))
                        .exit())
                .as(err)
                .isZero();
        Map<String, BigDecimal> september = unitCosts("2026-10-31");
        Map<String, BigDecimal> november = unitCosts("2026-11-20");
        assertThat(november).isNotEqualTo(september);

        Path result = folder.resolve("changes.xlsx");
        Ran ran = run(
                "prices",
                "--changes",
                book.toString(),
                "--prices",
                kept.toString(),
                "--date",
                "2026-11-20",
                "--json",
                "-o",
                result.toString());

        assertThat(ran.exit()).as(err).isZero();
        assertThat(result).exists();
        JsonNode answer = JSON.readTree(ran.out());
        assertThat(answer.get("changes")).hasSize(items.size() * 2);
        assertThat(answer.get("changes").get(0).get("changePercent").asText()).isEqualTo("20");
        for (JsonNode one : answer.get("runs")) {
            BigDecimal before = new BigDecimal(one.get("unitCostBefore").asText());
            BigDecimal now = new BigDecimal(one.get("unitCostNow").asText());
            assertThat(september.values()).anyMatch(cost -> cost.compareTo(before) == 0);
            assertThat(november.values()).anyMatch(cost -> cost.compareTo(now) == 0);
        }
        assertThat(run("check", result.toString(), "--prices", kept.toString()).exit())
                .as(err)
                .isZero();
    }

    @Test
    void runs_that_are_not_complete_are_listed_with_what_they_lack() throws IOException {
        List<String> items = items();
        String missing = items.get(0);
        List<String> offered = items.subList(1, items.size());
        assertThat(take(write("a.csv", list("01.09.2026", offered, "1,25", "1,10")))
                        .exit())
                .as(err)
                .isZero();
        Path without = folder.resolve("without.xlsx");
        try (java.io.InputStream in = Files.newInputStream(book);
                var workbook = new org.apache.poi.xssf.usermodel.XSSFWorkbook(in);
                var out = Files.newOutputStream(without)) {
            workbook.getSheet("Offers")
                    .forEach(row -> row.forEach(cell -> {
                        if (cell.getCellType() == org.apache.poi.ss.usermodel.CellType.STRING
                                && cell.getStringCellValue().equals(missing)) {
                            cell.setCellValue("Something else entirely");
                        }
                    }));
            workbook.write(out);
        }
        String[] command = {
            "prices",
            "--changes",
            without.toString(),
            "--prices",
            kept.toString(),
            "--date",
            "2026-11-20",
            "-o",
            folder.resolve("changes.xlsx").toString()
        };

        Ran ran = run(command);
        assertThat(ran.out()).contains(": Not complete. Missing: ").contains(missing);
        String[] json = java.util.Arrays.copyOf(command, command.length + 1);
        json[command.length] = "--json";
        JsonNode answer = JSON.readTree(run(json).out());
        assertThat(answer.get("incompleteRuns"))
                .isNotEmpty()
                .allSatisfy(run -> assertThat(run.get("missing"))
                        .anySatisfy(one -> assertThat(one.asText()).isEqualTo(missing)));
    }

    @Test
    void an_old_quote_is_worth_a_warning() throws IOException {
        assertThat(take(write("a.csv", list("01.02.2026", items(), "1,25", "1,10")))
                        .exit())
                .isZero();
        unitCosts("2026-11-20");
        assertThat(err).contains("292 days older than the costing date; the limit is 180 days. Ask for a new quote.");
    }

    @Test
    void what_is_not_clear_ends_with_one_and_nothing_is_kept_but_the_question() throws IOException {
        Ran ran = take(write("list.csv", "Product;Pack;Price\nShea;25 kg;1.250\n"), "--quoted", "2026-11-01");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(err)
                .contains(
                        "Does \"1.250\" mean 1.25 (decimal point) or 1250 (decimal comma)? Possible answers: point or"
                                + " comma.",
                        "Which currency are the prices in?",
                        "is not taken in yet; it waits for 3 answers.",
                        "prices-review.xlsx, answer in the yellow cells, save and close it, and run perkilo prices"
                                + " again.");
        assertThat(kept).isDirectoryNotContaining("glob:**.csv");
        assertThat(unitCosts("2026-11-20")).as("the review is no price list").isNotEmpty();
    }

    @Test
    void wrong_usage_ends_with_two_and_a_missing_file_with_four() {
        assertThat(run("prices").exit()).isEqualTo(2);
        assertThat(run("prices", "--changes", "a.xlsx", "b.xlsx").exit()).isEqualTo(2);
        assertThat(run("prices", "--changes", "--quoted", "2026-01-01").exit()).isEqualTo(2);
        assertThat(run("prices", "--changes", "--in-place").exit()).isEqualTo(2);
        assertThat(run("prices", folder.resolve("none.csv").toString(), "--prices", kept.toString())
                        .exit())
                .isEqualTo(4);
    }
}
