package perkilo.xlsx.author;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.openxmlformats.schemas.drawingml.x2006.chart.ChartSpaceDocument;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.WsDrDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.StyleSheetDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;
import perkilo.origin.Origin;
import perkilo.sheet.Choices;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/** Each part conforms to the published schema of the standard (ECMA-376, as included in Apache POI). */
final class StandardTest {

    /** XML's own attribute, which the schema of sheets does not name and office suites write nevertheless. */
    private static final String BLANKS_KEPT = "space@http://www.w3.org/XML/1998/namespace";

    private static final Links LINKS = new Links("book.xlsx", List.of("Offers"), Map.of());
    private static final ResultSheet.Fixed FIGURE = new ResultSheet.Fixed(Expr.of(new BigDecimal("1.5")), 2);

    private interface Parser {
        XmlObject parse(ByteArrayInputStream xml) throws IOException, XmlException;
    }

    private static final Map<String, Parser> PARSERS = Map.of(
            "/xl/workbook.xml", WorkbookDocument.Factory::parse,
            "/xl/styles.xml", StyleSheetDocument.Factory::parse,
            "/xl/worksheets/sheet", WorksheetDocument.Factory::parse,
            "/xl/drawings/drawing", WsDrDocument.Factory::parse,
            "/xl/charts/chart", ChartSpaceDocument.Factory::parse);

    @TestFactory
    Stream<DynamicTest> each_part_conforms_to_the_standard() {
        return conforming(SampleReport.build());
    }

    @TestFactory
    Stream<DynamicTest> odd_words_conform_as_well() {
        SheetBuilder sheet = new SheetBuilder("O'Neil & <Söhne>")
                .filter(0, 0, 3, 30)
                .freeze(1, 1)
                .highlight(0, 30, 3, 30, ResultSheet.Condition.LOWEST_OF_RANGE, Look.KEY)
                .text(0, 30, "a\u0007b\uD800c_x000D_ ]]>", Look.PLAIN)
                .sentence(1, 0, Look.ANSWER, new ResultSheet.Words("Balm\u0007 & \"co\" "), FIGURE)
                .sentence(2, 0, Look.ANSWER, new ResultSheet.Words("x".repeat(40_000)), FIGURE);
        return conforming(new Report(List.of(sheet.build())));
    }

    @TestFactory
    Stream<DynamicTest> cells_to_be_filled_in_conform_as_well() {
        SheetBuilder lists = new SheetBuilder("Lists & more").hidden().text(0, 0, "25 kg, drum", Look.HINT);
        SheetBuilder sheet = new SheetBuilder("Questions")
                .freeze(1, 0)
                .filter(0, 0, 3, 0)
                .highlight(0, 0, 3, 0, ResultSheet.Condition.ABOVE_ZERO, Look.KEY)
                .text(0, 0, "link", Look.LABEL, new Origin("", "Questions", "A2"))
                .fillIn(1, 0, "", new Choices.Words(List.of("5\" & more", "yes")))
                .fillIn(2, 0, "yes", new Choices.Words(List.of("5\" & more", "yes")))
                .fillIn(2, 2, "yes", new Choices.Words(List.of("5\" & more", "yes")))
                .fillIn(3, 0, "free", null)
                .fillIn(4, 0, "25 kg, drum", new Choices.Listed("Lists & more", 0, 1));
        return conforming(new Report(List.of(sheet.build(), lists.build())));
    }

    @Test
    void long_words_in_a_formula_are_joined_of_pieces_that_are_read() throws Exception {
        String words = "a\"b ".repeat(200);
        SheetBuilder sheet = new SheetBuilder("S").sentence(0, 0, Look.ANSWER, new ResultSheet.Words(words), FIGURE);
        try (XSSFWorkbook workbook = Written.read(new Report(List.of(sheet.build())), LINKS)) {
            XSSFCell cell = workbook.getSheetAt(0).getRow(0).getCell(0);
            String formula = cell.getCellFormula();
            assertThat(formula.split("&")).hasSizeGreaterThan(3).allMatch(piece -> piece.length() < 400);
            workbook.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(cell);
            assertThat(cell.getStringCellValue()).isEqualTo(words + "1.50");
        }
    }

    private static Stream<DynamicTest> conforming(Report report) {
        return new ResultPackage(report, LINKS)
                .parts().entrySet().stream()
                        .flatMap(part -> parser(part.getKey()).stream()
                                .map(parser -> DynamicTest.dynamicTest(
                                        part.getKey(),
                                        () -> assertThat(faults(parser, part.getValue()))
                                                .isEmpty())));
    }

    @Test
    void a_part_that_does_not_conform_is_found() throws Exception {
        PartXml xml = new PartXml("worksheet", "xmlns", StandardNames.MAIN)
                .leaf("sheetData")
                .leaf("cols");
        assertThat(faults(WorksheetDocument.Factory::parse, xml.bytes())).isNotEmpty();
    }

    private static Optional<Parser> parser(String part) {
        return PARSERS.entrySet().stream()
                .filter(entry -> part.startsWith(entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    private static List<String> faults(Parser parser, byte[] xml) throws IOException, XmlException {
        List<XmlError> errors = new ArrayList<>();
        parser.parse(new ByteArrayInputStream(xml)).validate(new XmlOptions().setErrorListener(errors));
        return errors.stream()
                .filter(error -> !error.getMessage().contains(BLANKS_KEPT))
                .map(error -> error.getMessage() + " at " + error.getCursorLocation())
                .toList();
    }
}
