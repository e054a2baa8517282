package perkilo.xlsx.author;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.xlsx.parts.PartNames;

/**
 * A report as a workbook that holds the result sheets and nothing else.
 *
 * <p>Its formulas may refer to sheets that only the person's workbook has; they are written unchanged.
 */
public final class ResultPackage {

    private static final String WORKBOOK = "/xl/workbook.xml";
    private static final String STYLES = "/xl/styles.xml";

    /** Every part's time, so that the same report gives the same bytes. */
    private static final LocalDateTime ANY_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final Report report;
    private final Links links;
    private final UnaryOperator<String> names;

    /**
     * A report to be written.
     *
     * @param links the places that its cells may link to, and the final names of its sheets
     */
    public ResultPackage(Report report, Links links) {
        this.report = report;
        this.links = links;
        this.names = name -> links.resultSheets().getOrDefault(name, name);
    }

    /** The workbook as an XLSX file. */
    public void writeTo(OutputStream out) throws IOException {
        write(parts(), out);
    }

    /** Parts as an XLSX file. */
    public static void write(Map<String, byte[]> parts, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out);
        for (Map.Entry<String, byte[]> part : parts.entrySet()) {
            ZipEntry entry = new ZipEntry(part.getKey().substring(1));
            entry.setTimeLocal(ANY_TIME);
            zip.putNextEntry(entry);
            zip.write(part.getValue());
            zip.closeEntry();
        }
        zip.finish();
    }

    /** The parts by their names, such as {@code /xl/workbook.xml}. */
    public Map<String, byte[]> parts() {
        PartList parts = new PartList();
        StyleSheet styles = new StyleSheet();
        Relationships relationships = new Relationships(WORKBOOK);
        ChartValues values = new ChartValues(report, names);
        for (ResultSheet sheet : report.sheets()) {
            String part = parts.free("/xl/worksheets/sheet1.xml");
            new SheetPart(HeadFit.of(NumberFit.of(sheet)), styles, links, names).write(part, values, parts);
            relationships.add("worksheet", part);
        }
        relationships.add("styles", STYLES);
        parts.add(STYLES, StandardNames.STYLES_TYPE, styles.xml(), new Relationships(STYLES));
        parts.add(WORKBOOK, StandardNames.WORKBOOK_TYPE, NewWorkbookPart.xml(report.sheets(), names), relationships);
        Relationships ofPackage = new Relationships(PartNames.PACKAGE);
        ofPackage.add("officeDocument", WORKBOOK);
        parts.addRelationships(PartNames.PACKAGE, ofPackage);
        return parts.finished();
    }
}
