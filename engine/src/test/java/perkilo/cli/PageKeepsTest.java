package perkilo.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.page.Served;
import perkilo.page.Visitor;

/** What the page keeps in the person's workbook: answers, scenarios, numbers; all else stays byte for byte. */
final class PageKeepsTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String BOOK = "/api/books/book.xlsx/";

    @TempDir
    private Path place = Path.of("");

    private Path folder = Path.of("");
    private Path book = Path.of("");
    private Served served;
    private Visitor page;

    @BeforeEach
    void start() throws Exception {
        folder = Files.createDirectory(place.resolve("folder"));
        book = folder.resolve("book.xlsx");
        served = new Served(folder);
        page = served.visitor();
    }

    @AfterEach
    void end() {
        assertThat(served.faults()).isEmpty();
        served.close();
    }

    private static RawBook dated() {
        return RawBook.sound().sheet("Settings", List.of("Setting", "Value"), List.of("Costing date", "2026-11-20"));
    }

    // numbers that are typed

    @Test
    void a_typed_number_changes_its_cell_and_nothing_else() throws Exception {
        Files.write(book, dated().bytes());
        byte[] before = Files.readAllBytes(book);
        JsonNode cost = page.post(BOOK + "cost", Visitor.object());

        JsonNode edited = page.post(BOOK + "edit", edit(cost, "Offers", "F2", "7,25"));

        assertThat(edited.get("backup").textValue()).isEqualTo("book.backup-2026-11-20-1.xlsx");
        assertThat(Files.readAllBytes(folder.resolve("book.backup-2026-11-20-1.xlsx")))
                .isEqualTo(before);
        byte[] typed = dated().set("Offers", "F2", RawBook.number(7.25)).bytes();
        Path same = Files.write(Files.createDirectory(place.resolve("other")).resolve("book.xlsx"), typed);
        JsonNode after = page.post(BOOK + "cost", Visitor.object());
        assertThat(after.get("answer")).isEqualTo(json("cost", same));
        assertThat(after.get("answer")).isNotEqualTo(cost.get("answer"));
        assertThat(after.get("stamp")).isEqualTo(edited.get("stamp")).isNotEqualTo(cost.get("stamp"));
        assertThat(changedParts(before)).containsExactly(RawBook.sound().partOf("Offers"));
    }

    /** The parts whose bytes differ from those of the book before. */
    private List<String> changedParts(byte[] before) throws IOException {
        Path old = Files.write(place.resolve("before.xlsx"), before);
        Map<String, byte[]> was = parts(old);
        Map<String, byte[]> is = parts(book);
        assertThat(is.keySet()).isEqualTo(was.keySet());
        List<String> changed = new ArrayList<>();
        was.forEach((name, bytes) -> {
            if (!Arrays.equals(bytes, is.get(name))) {
                changed.add(name);
            }
        });
        return changed;
    }

    private static Map<String, byte[]> parts(Path file) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        return parts;
    }

    @Test
    void within_the_sheet_only_the_cell_changes() throws Exception {
        Files.write(book, dated().bytes());
        String part = RawBook.sound().partOf("Offers");
        String before = new String(parts(book).get(part), UTF_8);
        JsonNode cost = page.post(BOOK + "cost", Visitor.object());

        page.post(BOOK + "edit", edit(cost, "Offers", "F2", "7.25"));

        String after = new String(parts(book).get(part), UTF_8);
        String cell = before.replaceAll("(?s).*(<c r=\"F2\".*?</c>).*", "$1");
        String now = after.replaceAll("(?s).*(<c r=\"F2\".*?</c>).*", "$1");
        assertThat(after.replace(now, cell)).isEqualTo(before);
        assertThat(now).isEqualTo("<c r=\"F2\"><v>7.25</v></c>");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Offers | F2     | 1.250 | 422 \"1.250\" can mean 1250 or 1.25. Type it so that it has one meaning.",
                "Offers | F0     | 7     | 422 \"F0\" is not the name of a cell, such as F12.",
                "Offers | ../F2  | 7     | 422 \"../F2\" is not the name of a cell, such as F12.",
                "Nowhere| F2     | 7     | 422 book.xlsx: The workbook has no sheet \"Nowhere\" of yours.",
            })
    void what_cannot_be_typed_is_said(String sheet, String cell, String value, String said) throws Exception {
        Files.write(book, dated().bytes());
        byte[] before = Files.readAllBytes(book);
        JsonNode cost = page.post(BOOK + "cost", Visitor.object());

        assertThat(page.refused(BOOK + "edit", edit(cost, sheet, cell, value))).isEqualTo(said);
        assertThat(Files.readAllBytes(book)).isEqualTo(before);
        assertOnly("book.xlsx");
    }

    /** A formula's saved value is what is read; after the change it would be that of before. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "D2*1.1                 | used",
                "'Offers'!$D$2*1.1      | used",
                "SUM(D1:E9)             | used",
                "SUM(D:D)               | used",
                "SUM(2:2)               | used",
                "price_of_shea          | used",
                "INDIRECT(\"D\"&2)      | used",
                "SUM(C2:C9)+D3+D22      | free",
                "Balm!D2*2              | free",
                "LEN(\"D2\")*2.5E2      | free",
                "LOG10(100)+MAX(E2,1)   | free",
            })
    void a_cell_that_a_formula_may_use_is_left_alone(String formula, String state) throws Exception {
        String words = formula.replace("&", "&amp;").replace("\"", "&quot;");
        Files.write(
                book,
                dated().set("Offers", "F2", "<c><f>" + words + "</f><v>6.5</v></c>")
                        .bytes());
        JsonNode cost = page.post(BOOK + "cost", Visitor.object());

        if (state.equals("free")) {
            page.post(BOOK + "edit", edit(cost, "Offers", "D2", "kg"));
        } else {
            assertThat(page.refused(BOOK + "edit", edit(cost, "Offers", "D2", "kg")))
                    .isEqualTo(
                            "422 book.xlsx: Offers!D2 may be used by the formula in Offers!F2, whose saved value would then"
                                    + " be wrong. Change it in your spreadsheet program, which computes it again.");
        }
        JsonNode now = page.post(BOOK + "cost", Visitor.object());
        assertThat(page.refused(BOOK + "edit", edit(now, "Offers", "F2", "7")))
                .isEqualTo("422 book.xlsx: Offers!F2 holds a formula. Change it in your spreadsheet program.");
    }

    @Test
    void words_are_never_formulas_or_markup() throws Exception {
        Files.write(book, dated().bytes());
        String evil = "=HYPERLINK(\"x\")<script>alert(1)</script>&amp;";
        JsonNode cost = page.post(BOOK + "cost", Visitor.object());
        page.post(BOOK + "edit", edit(cost, "Offers", "Z9", evil));

        String sheet = new String(parts(book).get(RawBook.sound().partOf("Offers")), UTF_8);
        assertThat(sheet).doesNotContain("<f>", "<script>");
        assertThat(page.get(BOOK + "reading").toString()).contains("=HYPERLINK");
    }

    @Test
    void a_workbook_that_was_saved_meanwhile_is_left_alone() throws Exception {
        Files.write(book, dated().bytes());
        JsonNode cost = page.post(BOOK + "cost", Visitor.object());
        byte[] saved = dated().set("Offers", "F2", RawBook.number(9)).bytes();
        Files.write(book, saved);

        for (String path : List.of("edit", "scenarios", "answers", "save")) {
            ObjectNode asked = edit(cost, "Offers", "F2", "7").put("name", "x").put("what", "cost");
            assertThat(page.refused(BOOK + path, asked)).as(path).startsWith("409 book.xlsx was changed since");
        }
        assertThat(Files.readAllBytes(book)).isEqualTo(saved);
        assertOnly("book.xlsx");
    }

    // scenarios

    @Test
    void a_scenario_is_kept_on_a_new_sheet_and_then_below() throws Exception {
        Files.write(book, dated().bytes());
        JsonNode cost = page.post(BOOK + "cost", Visitor.object());
        JsonNode first = page.post(BOOK + "scenarios", scenario(cost, "Dear shea", "Shea butter", "+20 %"));
        byte[] between = Files.readAllBytes(book);
        JsonNode second = page.post(BOOK + "scenarios", scenario(first, "Large", "Run size", "2000"));

        assertThat(second.get("scenarios")).hasSize(2);
        assertThat(second.at("/scenarios/0/name").textValue()).isEqualTo("Dear shea");
        assertThat(second.at("/scenarios/1/changes/0/change").textValue()).isEqualTo("2000");
        JsonNode command = json("cost", book);
        for (int at = 0; at < 2; at++) {
            assertThat(second.at("/scenarios/" + at + "/runs")).isEqualTo(command.at("/scenarios/" + at + "/runs"));
        }
        assertThat(page.get(BOOK + "scenarios")).isEqualTo(second);
        assertThat(changedParts(between)).hasSize(1);
        assertThat(page.refused(BOOK + "scenarios", scenario(second, "LARGE", "Run size", "3000")))
                .isEqualTo("422 There is a scenario called \"LARGE\" already. Choose another name.");
        assertThat(page.refused(BOOK + "scenarios", scenario(second, " ", "Run size", "3000")))
                .startsWith("422 Change something first");
    }

    // how the workbook is read

    @Test
    void answers_go_onto_the_sheet_reading_and_are_read() throws Exception {
        Files.write(book, ownLayout().bytes());
        byte[] before = Files.readAllBytes(book);
        JsonNode reading = page.get(BOOK + "reading");
        assertThat(reading.get("questions")).hasSize(1);
        JsonNode question = reading.get("questions").get(0);
        assertThat(question.get("text").textValue()).isEqualTo("What does the sheet \"Einkauf\" hold?");
        assertThat(question.get("answer").isNull()).isTrue();
        assertThat(question.get("choices").findValuesAsText("value")).contains("Offers", "ignore");

        ObjectNode asked = Visitor.object();
        asked.set("stamp", reading.get("stamp"));
        asked.putArray("answers")
                .addObject()
                .put("id", question.get("id").textValue())
                .put("value", "Offers");
        JsonNode next = page.post(BOOK + "answers", asked);
        Map<String, String> columns = Map.of(
                "Einkauf!A1", "Supplier", "Einkauf!B1", "Item", "Einkauf!C1", "Pack size", "Einkauf!D1", "Price");
        asked.set("stamp", next.get("stamp"));
        asked.putArray("answers");
        for (String list : List.of("questions", "more")) {
            for (JsonNode one : next.get(list)) {
                String column = columns.get(one.get("where").textValue());
                if (column != null && one.get("kind").textValue().equals("column")) {
                    asked.withArray("answers")
                            .addObject()
                            .put("id", one.get("id").textValue())
                            .put("value", column);
                }
            }
        }
        assertThat(asked.get("answers")).hasSize(4);
        JsonNode answered = page.post(BOOK + "answers", asked);

        assertThat(answered.get("account").toString())
                .contains("\"sheet\":\"Einkauf\",\"table\":\"Einkauf!A1\",\"fate\":\"read\",\"as\":\"Offers\"");
        assertThat(Files.readAllBytes(folder.resolve("book.backup-2026-11-20-1.xlsx")))
                .isEqualTo(before);
        JsonNode check = json("check", book);
        assertThat(answered.get("account")).isEqualTo(check.get("reading"));
        assertThat(page.post(BOOK + "cost", Visitor.object()).get("answer")).isEqualTo(json("cost", book));

        asked.set("stamp", answered.get("stamp"));
        asked.putArray("answers").addObject().put("id", "no such").put("value", "Item");
        assertThat(page.refused(BOOK + "answers", asked))
                .isEqualTo("400 There is no question \"no such\" about this workbook.");
    }

    private static RawBook ownLayout() {
        return dated().sheet(
                        "Einkauf",
                        List.of("Wer", "Rohstoffname", "Inhalt", "Preis EUR"),
                        List.of("Tarnholt Oleo", "Argan oil", "5 kg", 90));
    }

    @Test
    void pictures_show_what_was_read_and_what_was_not() throws Exception {
        Files.write(book, ownLayout().bytes());
        JsonNode sheets = page.get(BOOK + "reading").get("sheets");
        List<String> states = new ArrayList<>();
        for (JsonNode sheet : sheets) {
            for (JsonNode picture : sheet.get("cells")) {
                for (JsonNode row : picture.get("rows")) {
                    for (JsonNode cell : row.get("cells")) {
                        states.add(sheet.get("sheet").textValue() + "!"
                                + cell.get("ref").textValue() + " "
                                + cell.get("text").textValue() + " "
                                + cell.get("state").textValue());
                    }
                }
            }
        }
        assertThat(states).contains("Offers!A1 Supplier heading", "Offers!F2 6.5 read", "Einkauf!B2 Argan oil notRead");
    }

    // two pages at once

    @Test
    void of_two_pages_that_change_the_same_workbook_the_second_is_told() throws Exception {
        Files.write(book, dated().bytes());
        Visitor other = served.visitor();
        JsonNode mine = page.post(BOOK + "cost", Visitor.object());
        JsonNode theirs = other.post(BOOK + "cost", Visitor.object());
        assertThat(mine).isEqualTo(theirs);

        other.post(BOOK + "edit", edit(theirs, "Offers", "F2", "8"));
        assertThat(page.refused(BOOK + "edit", edit(mine, "Offers", "F2", "9"))).startsWith("409 ");
        JsonNode again = page.post(BOOK + "cost", Visitor.object());
        page.post(BOOK + "edit", edit(again, "Offers", "F2", "9"));
        assertThat(other.post(BOOK + "cost", Visitor.object())
                        .at("/answer/runs/0/items/0/purchases/0/price")
                        .asText())
                .isEqualTo("9");
    }

    private static ObjectNode edit(JsonNode seen, String sheet, String cell, String value) {
        ObjectNode asked = Visitor.object();
        asked.set("stamp", seen.get("stamp"));
        asked.putArray("cells")
                .addObject()
                .put("sheet", sheet)
                .put("cell", cell)
                .put("value", value);
        return asked;
    }

    private static ObjectNode scenario(JsonNode seen, String name, String what, String change) {
        ObjectNode asked = Visitor.object().put("name", name);
        asked.set("stamp", seen.get("stamp"));
        asked.putArray("changes").addObject().put("what", what).put("change", change);
        return asked;
    }

    private void assertOnly(String... names) throws IOException {
        try (var files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrder(names);
        }
    }

    private static JsonNode json(String command, Path file) throws IOException {
        return MAPPER.readTree(CommandLineRun.of(command, file, "--json").out());
    }
}
