package perkilo.cli;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static perkilo.cli.RawBook.text;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Workbooks that open, but hold what a careless reader takes for something else: each gives the costs of the plain
 * workbook, with a warning where a person should look, or is refused with the cell and what to do.
 */
final class OddBooksTest {
    private static final List<Object> OFFERS =
            List.of("Supplier", "Item", "Pack size", "Pack unit", "From quantity", "Price", "Price per", "Currency");

    private static final int STEPS = 20_000;

    private static final long MOST_MEGABYTES = 1_000;

    @TempDir
    private Path folder = Path.of("");

    private static RawBook sound() {
        return RawBook.sound();
    }

    static Stream<Arguments> booksThatCostTheSame() {
        return Stream.of(
                odd("a dimension that lies", lyingDimension()),
                odd("cells and rows without a place", sound().change(part("Balm"), OddBooksTest::withoutPlaces)),
                odd("text in several formats", sound().set("Offers", "B2", rich("Shea ", "butter"))),
                odd(
                        "a formula that gives a text",
                        sound().set("Offers", "B2", formula("\"Shea \"&amp;\"butter\"", "str", "Shea butter"))),
                odd("spaces that nobody sees", sound().set("Balm", "B2", text("\u00A0Shea\u00A0\u200Bbutter "))),
                odd(
                        "numbers as text, with a comma",
                        sound().set("Offers", "F2", text("6,50")).set("Balm", "C2", text("40,0 %"))),
                odd(
                        "the currency told by the number format alone",
                        sound().set("Offers", "H2", "").set("Offers", "F2", "<c s=\"3\"><v>6.5</v></c>")),
                odd(
                        "the supplier merged over his rows",
                        sound().set("Offers", "A3", "")
                                .behind("Offers", "<mergeCells><mergeCell ref=\"A2:A3\"/></mergeCells>")),
                odd(
                        "a row of totals",
                        sound().set("Balm", "B4", text("Total")).set("Balm", "C4", formula("SUM(C2:C3)", "", "100"))),
                odd("titles over the headers", titled()),
                odd("headers in two rows", twoRowHeaders()),
                odd("headers in two rows, the upper ones merged", mergedHeaders()),
                odd(
                        "days that count from 1904",
                        sound().properties("<workbookPr date1904=\"1\"/>")
                                .set("Settings", "B3", "<c s=\"1\"><v>44884</v></c>")),
                odd(
                        "a circle of formulas with values",
                        sound().set("Offers", "F2", formula("F4", "", "6.5"))
                                .set("Offers", "F4", formula("F2", "", "6.5"))),
                odd("a long chain of formulas with values", chain(true, true)),
                odd("a long chain of formulas without values", chain(true, false)),
                odd("a long chain of formulas without values, last first", chain(false, false)),
                odd("16,384 columns", wide()),
                odd("Strict names", strict()),
                odd("prefixed names", sound().change(part("Offers"), OddBooksTest::prefixed)),
                odd("parts in UTF-16", sound().part(part("Offers"), utf16(part("Offers")))),
                odd("20,000 merged blocks", merged()),
                odd("a day as ISO 8601", sound().set("Settings", "B3", "<c t=\"d\"><v>2026-11-20T00:00:00</v></c>")),
                odd(
                        "a hidden column",
                        sound().before("Offers", "<cols><col min=\"6\" max=\"6\" hidden=\"1\"/></cols>"),
                        "warning Offers!F1: The column \"Price\" is hidden but is read. Unhide and check it."),
                odd(
                        "a hidden sheet of lower prices",
                        lowerPrices("hidden"),
                        "warning Old offers: This sheet is hidden, so it is not read. Unhide it if it counts."),
                odd(
                        "a very hidden sheet of lower prices",
                        lowerPrices("veryHidden"),
                        "warning Old offers: This sheet is hidden, so it is not read. Unhide it if it counts."),
                odd(
                        "a hidden row with a lower price",
                        sound().set("Offers", "A4", text("Tarnholt Oleo"))
                                .set("Offers", "B4", text("Shea butter"))
                                .set("Offers", "C4", "<c><v>25</v></c>")
                                .set("Offers", "D4", text("kg"))
                                .set("Offers", "F4", "<c><v>1</v></c>")
                                .set("Offers", "G4", text("kg"))
                                .row("Offers", 4, "hidden=\"1\""),
                        "warning Offers: Row 4 is hidden, perhaps by a filter, so it is not read. Show all rows if it counts."),
                odd(
                        "a link to another workbook",
                        linked(),
                        "warning Offers!F2: The formula refers to another workbook, so its last saved value is used. Check that it is up to date."));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("booksThatCostTheSame")
    void a_book_that_only_looks_different_costs_the_same(String what, byte[] book, List<String> warnings)
            throws IOException {
        Ran plain = Ran.of(Files.createDirectory(folder.resolve("plain")), sound().bytes(), "cost");
        Ran ran = Ran.of(Files.createDirectory(folder.resolve("odd")), book, "cost");

        assertThat(ran.messages()).isEqualTo(warnings);
        assertThat(ran.out()).isEqualTo(plain.out()).contains("500 × Balm 30");
        assertThat(ran.exit()).isEqualTo(Exit.DONE);
        assertThat(ran.files()).containsExactly("book-costed.xlsx", Ran.BOOK);
        assertThat(ran.untouched()).isTrue();
        assertThat(ran.megabytes()).isLessThan(MOST_MEGABYTES);
    }

    static Stream<Arguments> booksWithErrors() {
        return Stream.of(
                odd(
                        "two numbers that are none",
                        sound().set("Offers", "F2", "<c><v>1E400</v></c>").set("Offers", "F3", "<c><v>NaN</v></c>"),
                        "error Offers!F2: Price is a number too large to be meant.",
                        "error Offers!F3: Price is \"NaN\", which is not a number; type it again."),
                odd(
                        "what can mean two things",
                        sound().set("Offers", "F2", text("1,250")).set("Settings", "B3", text("03/04/2026")),
                        "error Settings!B3: Costing date is \"03/04/2026\", which can mean 2026-04-03 or 2026-03-04. "
                                + "Type the one that you mean.",
                        "error Offers!F2: Price is \"1,250\", which can mean 1250 or 1.25. Type the one that you mean."),
                odd(
                        "a text that is not there",
                        sound().set("Offers", "B2", "<c t=\"s\"><v>7777</v></c>"),
                        "error Offers!B2: Item is a reference to a text that is missing in the workbook, so the file is damaged; type the text again."),
                odd(
                        "an error value.",
                        sound().set("Offers", "F2", "<c t=\"e\"><v>#N/A</v></c>"),
                        "error Offers!F2: Price is #N/A, an error value."),
                odd(
                        "a circle of formulas without values",
                        sound().set("Offers", "F2", "<c><f>F4</f></c>").set("Offers", "F4", "<c><f>F2</f></c>"),
                        "error Offers!F2: Price is a formula that refers to itself."),
                odd(
                        "a link without a value",
                        linked().set("Offers", "F2", "<c><f>[1]Prices!B2</f></c>"),
                        "error Offers!F2: Price is a formula without a saved value that cannot be computed here; "
                                + "open the workbook in your spreadsheet program and save it."),
                odd(
                        "a letter of another alphabet",
                        sound().set("Balm", "B2", text("She\u0430 butter")),
                        "error Balm!B2: The material \"She\u0430 butter\" has neither an offer nor a row in Materials. "
                                + "Did you mean \"Shea butter\"? The two only look alike: some letters are of another alphabet or "
                                + "invisible."),
                odd(
                        "a million letters",
                        essay(),
                        "error Offers!A2: Supplier is a text of 1,000,000 characters, more than a cell can hold; shorten it."),
                odd(
                        "an essay in a cell for a number",
                        sound().set("Offers", "F2", text("as agreed ".repeat(3_000))),
                        "error Offers!F2: Price is \"%s…\", which is not a number. Type the figure alone, such as 1.74."
                                .formatted("as agreed ".repeat(8))),
                odd(
                        "a cell twice",
                        sound().set("Offers", "F2", "<c><v>6.5</v></c><c r=\"F2\"><v>1.5</v></c>"),
                        "error Offers!F2: Price is in the file twice, so the file is damaged; type it again."));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("booksWithErrors")
    void a_book_that_cannot_be_trusted_has_no_complete_run_and_names_its_cells(
            String what, byte[] book, List<String> errors) throws IOException {
        Ran ran = Ran.of(folder, book, "cost");

        assertThat(ran.messages()).containsAll(errors);
        assertThat(ran.messages()).allSatisfy(line -> assertThat(line).hasSizeLessThan(300));
        assertThat(ran.exit()).isIn(Exit.BAD_INPUT, Exit.PARTLY);
        if (ran.exit() == Exit.BAD_INPUT) {
            assertThat(ran.messages().get(ran.messages().size() - 1)).endsWith("; nothing was written.");
            assertThat(ran.files()).containsExactly(Ran.BOOK);
        } else {
            Path again = folder.resolve("again.xlsx");
            CommandLineRun answer = CommandLineRun.of("cost", folder.resolve(Ran.BOOK), "--json", "-o", again);
            assertThat(answer.out()).contains("\"complete\" : false").doesNotContain("\"unitCost\"");
        }
        assertThat(ran.untouched()).isTrue();
        assertThat(ran.megabytes()).isLessThan(MOST_MEGABYTES);
    }

    @Test
    void price_breaks_in_any_order_mean_the_same() throws IOException {
        RawBook rising = sound().sheet(
                        "Offers",
                        OFFERS,
                        List.of("Tarnholt Oleo", "Shea butter", 5, "kg", "", 9.5, "kg", "EUR"),
                        List.of("Tarnholt Oleo", "Shea butter", 5, "kg", 10, 6.5, "kg", "EUR"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", "", 3.2, "kg", "EUR"));
        RawBook falling = sound().sheet(
                        "Offers",
                        OFFERS,
                        List.of("Tarnholt Oleo", "Shea butter", 5, "kg", 10, 6.5, "kg", "EUR"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", "", 3.2, "kg", "EUR"),
                        List.of("Tarnholt Oleo", "Shea butter", 5, "kg", "", 9.5, "kg", "EUR"));

        Ran one = Ran.of(Files.createDirectory(folder.resolve("rising")), rising.bytes(), "cost");
        Ran other = Ran.of(Files.createDirectory(folder.resolve("falling")), falling.bytes(), "cost");
        assertThat(one.exit()).isEqualTo(Exit.DONE);
        assertThat(other.out()).isEqualTo(one.out());
        assertThat(other.messages()).isEmpty();
    }

    private static Arguments odd(String what, RawBook book, String... messages) {
        return Arguments.of(what, book.bytes(), List.of(messages));
    }

    private static String part(String sheet) {
        return sound().partOf(sheet);
    }

    private static String rich(String... runs) {
        StringBuilder xml = new StringBuilder("<c t=\"inlineStr\"><is>");
        for (String run : runs) {
            xml.append("<r><rPr><b/></rPr><t xml:space=\"preserve\">")
                    .append(run)
                    .append("</t></r>");
        }
        return xml + "<rPh sb=\"0\" eb=\"1\"><t>said so</t></rPh></is></c>";
    }

    private static String formula(String formula, String type, String value) {
        String attribute = type.isEmpty() ? "" : " t=\"" + type + "\"";
        return "<c" + attribute + "><f>" + formula + "</f><v>" + value + "</v></c>";
    }

    private static String withoutPlaces(String xml) {
        return xml.replaceAll(" r=\"[A-Z]*\\d+\"", "");
    }

    private static String prefixed(String xml) {
        return xml.replaceAll("<(/?)(\\w)", "<$1x:$2").replace("xmlns=", "xmlns:x=");
    }

    private static byte[] utf16(String part) {
        String xml = new String(sound().parts().getOrDefault(part, new byte[0]), UTF_8);
        return ("<?xml version=\"1.0\" encoding=\"UTF-16\"?>" + xml).getBytes(UTF_16);
    }

    static RawBook strict() {
        RawBook book = sound();
        for (Map.Entry<String, byte[]> part : sound().parts().entrySet()) {
            book.part(
                    part.getKey(),
                    new String(part.getValue(), UTF_8)
                            .replace(RawBook.MAIN, "http://purl.oclc.org/ooxml/spreadsheetml/main")
                            .replace(RawBook.LINKS, "http://purl.oclc.org/ooxml/officeDocument/relationships")
                            .getBytes(UTF_8));
        }
        return book;
    }

    static RawBook lyingDimension() {
        return sound().before("Offers", "<dimension ref=\"A1:XFD1048576\"/>");
    }

    static RawBook essay() {
        return sound().set("Offers", "A2", text("x".repeat(1_000_000)));
    }

    private static RawBook lowerPrices(String state) {
        return sound().sheet(
                        "Old offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per", "Currency"),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", 0.5, "kg", "EUR"))
                .tab("Old offers", "state=\"" + state + "\"");
    }

    static RawBook linked() {
        return sound().set("Offers", "F2", formula("[1]Prices!B2", "", "6.5"))
                .behindTabs("<externalReferences><externalReference r:id=\"x1\"/></externalReferences>")
                .change(
                        "xl/_rels/workbook.xml.rels",
                        links -> links.replace(
                                "</Relationships>",
                                "<Relationship Id=\"x1\" Type=\"" + RawBook.LINKS
                                        + "/externalLink\" Target=\"externalLinks/externalLink1.xml\"/></Relationships>"))
                .part(
                        "xl/externalLinks/externalLink1.xml",
                        ("<externalLink xmlns=\"" + RawBook.MAIN + "\"><externalBook xmlns:r=\"" + RawBook.LINKS
                                        + "\" r:id=\"rId1\"/></externalLink>")
                                .getBytes(UTF_8))
                .part(
                        "xl/externalLinks/_rels/externalLink1.xml.rels",
                        ("<Relationships xmlns=\"" + RawBook.PACKAGE
                                        + "relationships\"><Relationship Id=\"rId1\" Type=\""
                                        + RawBook.LINKS
                                        + "/externalLinkPath\" Target=\"http://prices.invalid/book.xlsx\" TargetMode=\"External\"/></Relationships>")
                                .getBytes(UTF_8));
    }

    /** The price stands at the end of a chain of formulas, each of which takes it from the one before. */
    static RawBook chain(boolean downwards, boolean saved) {
        RawBook book = sound();
        for (int step = 1; step <= STEPS; step++) {
            int row = downwards ? step : STEPS + 1 - step;
            int before = downwards ? row - 1 : row + 1;
            String value = saved ? "<v>6.5</v>" : "";
            book.set(
                    "Steps", "A" + row, step == 1 ? "<c><v>6.5</v></c>" : "<c><f>A" + before + "</f>" + value + "</c>");
        }
        String last = "Steps!A" + (downwards ? STEPS : 1);
        return book.set("Offers", "F2", "<c><f>" + last + "</f>" + (saved ? "<v>6.5</v>" : "") + "</c>");
    }

    static RawBook wide() {
        RawBook book = sound();
        for (int column = 8; column < 16_384; column++) {
            for (int row = 0; row < 3; row++) {
                book.set("Offers", new CellReference(row, column).formatAsString(), text("more " + column));
            }
        }
        return book;
    }

    private static RawBook merged() {
        List<String> blocks = new ArrayList<>();
        RawBook book = sound();
        for (int row = 10; row < 20_010; row++) {
            blocks.add("<mergeCell ref=\"J%d:K%d\"/>".formatted(row, row));
        }
        return book.behind("Offers", "<mergeCells>" + String.join("", blocks) + "</mergeCells>");
    }

    private static RawBook titled() {
        return sound().sheet(
                        "Offers",
                        List.of("Raw materials, autumn", "", "Pack", "", "", "Price"),
                        OFFERS,
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", "", 6.5, "kg", "EUR"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", "", 3.2, "kg", "EUR"));
    }

    private static RawBook mergedHeaders() {
        return twoRowHeaders()
                .set("Offers", "D1", "")
                .set("Offers", "A1", text("Supplier"))
                .set("Offers", "A2", "")
                .behind("Offers", "<mergeCells><mergeCell ref=\"C1:D1\"/><mergeCell ref=\"A1:A2\"/></mergeCells>");
    }

    private static RawBook twoRowHeaders() {
        return sound().sheet(
                        "Offers",
                        List.of("", "", "Pack", "Pack", "", "Price"),
                        List.of("Supplier", "Item", "size", "unit", "From quantity", "Price", "Price per", "Currency"),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", "", 6.5, "kg", "EUR"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", "", 3.2, "kg", "EUR"));
    }
}
