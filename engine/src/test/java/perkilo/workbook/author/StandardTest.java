package perkilo.workbook.author;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
import perkilo.report.Report;

/** Whether each part conforms to the published schema of the standard (ECMA-376, as Apache POI carries it). */
final class StandardTest {

    /** XML's own attribute, which the schema of sheets does not name and office suites write nevertheless. */
    private static final String BLANKS_KEPT = "space@http://www.w3.org/XML/1998/namespace";

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
        Report report = SampleReport.build();
        Links links = new Links("book.xlsx", List.of("Offers"), Map.of());
        return new ResultPackage(report, links)
                .parts().entrySet().stream()
                        .flatMap(part -> parser(part.getKey()).stream()
                                .map(parser -> DynamicTest.dynamicTest(
                                        part.getKey(),
                                        () -> assertThat(faults(parser, part.getValue()))
                                                .isEmpty())));
    }

    @Test
    void a_part_that_does_not_conform_is_found() throws Exception {
        Xml xml = new Xml("worksheet", "xmlns", Names.MAIN).leaf("sheetData").leaf("cols");
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
