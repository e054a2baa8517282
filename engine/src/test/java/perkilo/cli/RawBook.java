package perkilo.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.util.CellReference;

/**
 * A small workbook written as XML, so that a test can put anything into it that some program, or some person with ill
 * will, could: a balm of shea butter and sunflower oil, 30 g each, 500 made.
 */
final class RawBook {

    static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    static final String LINKS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
    static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    /** Styles by number: 1 a day, 2 a percentage, 3 euros by the number format alone. */
    private static final String STYLES = "<styleSheet xmlns=\"" + MAIN + "\">"
            + "<numFmts count=\"1\"><numFmt numFmtId=\"170\" formatCode=\"#,##0.00 [$€-407]\"/></numFmts>"
            + "<fonts count=\"1\"><font><sz val=\"11\"/><name val=\"Calibri\"/></font></fonts>"
            + "<fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill>"
            + "<fill><patternFill patternType=\"gray125\"/></fill></fills><borders count=\"1\"><border/></borders>"
            + "<cellStyleXfs count=\"1\"><xf/></cellStyleXfs><cellXfs count=\"4\"><xf/><xf numFmtId=\"14\"/>"
            + "<xf numFmtId=\"10\"/><xf numFmtId=\"170\"/></cellXfs></styleSheet>";

    private final Map<String, TreeMap<Integer, TreeMap<Integer, String>>> sheets = new LinkedHashMap<>();
    private final Map<String, String> rowAttributes = new LinkedHashMap<>();
    private final Map<String, String> before = new LinkedHashMap<>();
    private final Map<String, String> behind = new LinkedHashMap<>();
    private final Map<String, String> tabAttributes = new LinkedHashMap<>();
    private final Map<String, byte[]> more = new LinkedHashMap<>();
    private final Map<String, UnaryOperator<String>> changes = new LinkedHashMap<>();
    private String workbookProperties = "";
    private String behindTabs = "";

    /** The workbook that has nothing wrong. */
    static RawBook sound() {
        return new RawBook()
                .sheet("Settings", List.of("Setting", "Value"), List.of("Home currency", "EUR"))
                .set("Settings", "A3", text("Costing date"))
                .set("Settings", "B3", "<c s=\"1\"><v>46346</v></c>")
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "From quantity", "Price", "Price per"),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", "", 6.5, "kg"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", "", 3.2, "kg"))
                .set("Offers", "H1", text("Currency"))
                .set("Offers", "H2", text("EUR"))
                .set("Offers", "H3", text("EUR"))
                .sheet(
                        "Balm",
                        List.of("Phase", "Material", "% w/w"),
                        List.of("A", "Shea butter", 40),
                        List.of("A", "Sunflower oil", 60))
                .sheet(
                        "Products",
                        List.of("Product", "Formula", "Fill", "Fill unit"),
                        List.of("Balm 30", "Balm", 30, "g"))
                .sheet("Runs", List.of("Product", "Units"), List.of("Balm 30", 500));
    }

    /** Another sheet, or other rows for one that is there. */
    RawBook sheet(String name, List<?>... rows) {
        sheets.put(name, new TreeMap<>());
        for (int row = 0; row < rows.length; row++) {
            for (int column = 0; column < rows[row].size(); column++) {
                Object value = rows[row].get(column);
                String cell = value instanceof Number number ? number(number) : text(String.valueOf(value));
                set(name, new CellReference(row, column).formatAsString(), value.equals("") ? "" : cell);
            }
        }
        return this;
    }

    /** One more row of numbers. */
    RawBook row(String sheet, List<?> numbers) {
        TreeMap<Integer, TreeMap<Integer, String>> rows = sheets.computeIfAbsent(sheet, any -> new TreeMap<>());
        int row = rows.isEmpty() ? 0 : rows.lastKey() + 1;
        StringBuilder cells = new StringBuilder();
        numbers.forEach(number -> cells.append("<c><v>").append(number).append("</v></c>"));
        rows.put(row, new TreeMap<>(Map.of(0, cells.toString())));
        return this;
    }

    /** Another cell, as XML without the place: {@code <c><v>1</v></c>}; nothing for a blank one. */
    RawBook set(String sheet, String cell, String xml) {
        CellReference place = new CellReference(cell);
        sheets.computeIfAbsent(sheet, any -> new TreeMap<>())
                .computeIfAbsent(place.getRow(), any -> new TreeMap<>())
                .put((int) place.getCol(), xml.replaceFirst("^<c", "<c r=\"" + cell + "\""));
        return this;
    }

    /** With attributes at a row, counted from one. */
    RawBook row(String sheet, int row, String attributes) {
        rowAttributes.put(sheet + "!" + row, " " + attributes);
        return this;
    }

    /** With elements before the cells, such as columns. */
    RawBook before(String sheet, String xml) {
        before.put(sheet, xml);
        return this;
    }

    /** With elements behind the cells, such as merged blocks. */
    RawBook behind(String sheet, String xml) {
        behind.put(sheet, xml);
        return this;
    }

    /** With attributes at a tab, such as {@code state="hidden"}. */
    RawBook tab(String sheet, String attributes) {
        tabAttributes.put(sheet, " " + attributes);
        return this;
    }

    /** With {@code <workbookPr>}. */
    RawBook properties(String xml) {
        workbookProperties = xml;
        return this;
    }

    /** With elements behind the list of tabs. */
    RawBook behindTabs(String xml) {
        behindTabs = xml;
        return this;
    }

    /** With a part of its own. */
    RawBook part(String name, byte[] bytes) {
        more.put(name, bytes);
        return this;
    }

    /** With the text of a part changed. */
    RawBook change(String part, UnaryOperator<String> change) {
        changes.put(part, change);
        return this;
    }

    /** The part that a sheet stands in. */
    String partOf(String sheet) {
        return "xl/worksheets/sheet" + (List.copyOf(sheets.keySet()).indexOf(sheet) + 1) + ".xml";
    }

    static String text(String words) {
        return "<c t=\"inlineStr\"><is><t xml:space=\"preserve\">" + escaped(words) + "</t></is></c>";
    }

    static String number(Number number) {
        return "<c><v>" + number + "</v></c>";
    }

    static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;");
    }

    /** All parts by their names. */
    Map<String, byte[]> parts() {
        Map<String, String> texts = new LinkedHashMap<>();
        StringBuilder types = new StringBuilder();
        StringBuilder tabs = new StringBuilder();
        StringBuilder links = new StringBuilder();
        int number = 1;
        for (String sheet : sheets.keySet()) {
            types.append("<Override PartName=\"/%s\" ContentType=\"%sworksheet+xml\"/>".formatted(partOf(sheet), TYPE));
            tabs.append("<sheet name=\"%s\" sheetId=\"%d\" r:id=\"s%d\"%s/>"
                    .formatted(escaped(sheet), number, number, tabAttributes.getOrDefault(sheet, "")));
            links.append("<Relationship Id=\"s%d\" Type=\"%s/worksheet\" Target=\"worksheets/sheet%d.xml\"/>"
                    .formatted(number, LINKS, number));
            number++;
        }
        texts.put(
                "[Content_Types].xml",
                "<Types xmlns=\"" + PACKAGE + "content-types\">"
                        + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                        + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>"
                        + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"" + TYPE + "sheet.main+xml\"/>"
                        + "<Override PartName=\"/xl/styles.xml\" ContentType=\"" + TYPE + "styles+xml\"/>" + types
                        + "</Types>");
        texts.put(
                "_rels/.rels",
                "<Relationships xmlns=\"" + PACKAGE + "relationships\"><Relationship Id=\"r1\" Type=\"" + LINKS
                        + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
        texts.put(
                "xl/workbook.xml",
                "<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + LINKS + "\">" + workbookProperties + "<sheets>" + tabs
                        + "</sheets>" + behindTabs + "</workbook>");
        texts.put(
                "xl/_rels/workbook.xml.rels",
                "<Relationships xmlns=\"" + PACKAGE + "relationships\">" + links + "<Relationship Id=\"r1\" Type=\""
                        + LINKS + "/styles\" Target=\"styles.xml\"/></Relationships>");
        texts.put("xl/styles.xml", STYLES);
        sheets.keySet().forEach(sheet -> texts.put(partOf(sheet), sheetXml(sheet)));
        Map<String, byte[]> parts = new LinkedHashMap<>();
        texts.forEach((name, text) -> parts.put(
                name,
                changes.getOrDefault(name, UnaryOperator.identity()).apply(text).getBytes(UTF_8)));
        parts.putAll(more);
        return parts;
    }

    private String sheetXml(String sheet) {
        StringBuilder xml = new StringBuilder("<worksheet xmlns=\"" + MAIN + "\" xmlns:r=\"" + LINKS + "\">");
        xml.append(before.getOrDefault(sheet, "")).append("<sheetData>");
        sheets.getOrDefault(sheet, new TreeMap<>()).forEach((row, cells) -> {
            xml.append("<row r=\"").append(row + 1).append('"');
            xml.append(rowAttributes.getOrDefault(sheet + "!" + (row + 1), "")).append('>');
            cells.values().forEach(xml::append);
            xml.append("</row>");
        });
        return xml.append("</sheetData>")
                .append(behind.getOrDefault(sheet, ""))
                .append("</worksheet>")
                .toString();
    }

    /** The workbook as a file's bytes. */
    byte[] bytes() {
        return zip(parts());
    }

    static byte[] zip(Map<String, byte[]> parts) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
