package perkilo.cli;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static perkilo.cli.RawBook.LINKS;
import static perkilo.cli.RawBook.MAIN;
import static perkilo.cli.RawBook.PACKAGE;
import static perkilo.cli.RawBook.TYPE;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.ComparisonOperator;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Workbooks that can be costed and hold, each, something that people keep in workbooks beside numbers. */
final class FeatureBooks {

    private static final String OFFICE = "http://schemas.microsoft.com/office/";

    private FeatureBooks() {}

    /** All of them, by what they show; the name's ending is that of the file. */
    static Map<String, byte[]> all() {
        Map<String, byte[]> books = new LinkedHashMap<>();
        books.put("plain.xlsx", RawBook.sound().bytes());
        books.put("pivot.xlsx", pivot().bytes());
        books.put("threaded-comments.xlsx", threadedComments().bytes());
        books.put("macros.xlsm", macros().bytes());
        books.put("external-link.xlsx", OddBooksTest.linked().bytes());
        books.put("custom-xml.xlsx", customXml().bytes());
        books.put("names-and-chain.xlsx", namesAndChain().bytes());
        books.put("no-styles.xlsx", noStyles());
        books.put("alternate-styles.xlsx", alternateStyles().bytes());
        books.put("strict.xlsx", OddBooksTest.strict().bytes());
        books.put("prefixed.xlsx", prefixed().bytes());
        books.put("utf-16.xlsx", utf16().bytes());
        books.put("backslash-links.xlsx", backslashLinks().bytes());
        books.put("sparklines.xlsx", sparklines().bytes());
        books.put("days-from-1904.xlsx", from1904().bytes());
        books.put("hidden-sheets.xlsx", hiddenSheets().bytes());
        books.put("own-cost-summary.xlsx", ownCostSummary().bytes());
        books.put("library.xlsx", library());
        return books;
    }

    private static RawBook sound() {
        return RawBook.sound();
    }

    private static byte[] xml(String text) {
        return text.getBytes(UTF_8);
    }

    private static byte[] links(String... idTypeTarget) {
        StringBuilder all = new StringBuilder("<Relationships xmlns=\"" + PACKAGE + "relationships\">");
        for (int i = 0; i < idTypeTarget.length; i += 3) {
            String type = idTypeTarget[i + 1];
            all.append("<Relationship Id=\"%s\" Type=\"%s\" Target=\"%s\"/>"
                    .formatted(
                            idTypeTarget[i], type.startsWith("http") ? type : LINKS + "/" + type, idTypeTarget[i + 2]));
        }
        return xml(all + "</Relationships>");
    }

    /** Also refers to a part from the workbook, and says of what kind it is. */
    private static RawBook with(RawBook book, String type, String target, String contentType) {
        String relationship = type.startsWith("http") ? type : LINKS + "/" + type;
        return also(
                also(
                        book,
                        "xl/_rels/workbook.xml.rels",
                        "</Relationships>",
                        "<Relationship Id=\"more\" Type=\"%s\" Target=\"%s\"/>".formatted(relationship, target)),
                "[Content_Types].xml",
                "</Types>",
                override("/xl/" + target, contentType));
    }

    private static RawBook also(RawBook book, String part, String before, String more) {
        return book.change(part, text -> text.replace(before, more + before));
    }

    private static String override(String part, String type) {
        return "<Override PartName=\"" + part + "\" ContentType=\"" + type + "\"/>";
    }

    private static RawBook pivot() {
        RawBook book = with(
                sound().behindTabs("<pivotCaches><pivotCache cacheId=\"7\" r:id=\"more\"/></pivotCaches>"),
                "pivotCacheDefinition",
                "pivotCache/pivotCacheDefinition1.xml",
                TYPE + "pivotCacheDefinition+xml");
        return book.part(
                        "xl/pivotCache/pivotCacheDefinition1.xml",
                        xml("<pivotCacheDefinition xmlns=\"" + MAIN + "\" xmlns:r=\"" + LINKS
                                + "\" r:id=\"rId1\" recordCount=\"2\"><cacheSource type=\"worksheet\">"
                                + "<worksheetSource ref=\"B1:C3\" sheet=\"Balm\"/></cacheSource><cacheFields count=\"2\">"
                                + "<cacheField name=\"Material\" numFmtId=\"0\"><sharedItems/></cacheField>"
                                + "<cacheField name=\"% w/w\" numFmtId=\"0\"><sharedItems containsNumber=\"1\"/></cacheField>"
                                + "</cacheFields></pivotCacheDefinition>"))
                .part(
                        "xl/pivotCache/_rels/pivotCacheDefinition1.xml.rels",
                        links("rId1", "pivotCacheRecords", "pivotCacheRecords1.xml"))
                .part(
                        "xl/pivotCache/pivotCacheRecords1.xml",
                        xml("<pivotCacheRecords xmlns=\"" + MAIN
                                + "\" count=\"2\"><r><s v=\"Shea butter\"/><n v=\"40\"/></r>"
                                + "<r><s v=\"Sunflower oil\"/><n v=\"60\"/></r></pivotCacheRecords>"))
                .part(
                        "xl/pivotTables/pivotTable1.xml",
                        xml("<pivotTableDefinition xmlns=\"" + MAIN
                                + "\" name=\"Levels\" cacheId=\"7\"><location ref=\"H1:I4\" firstHeaderRow=\"1\" firstDataRow=\"1\" firstDataCol=\"1\"/>"
                                + "</pivotTableDefinition>"))
                .part(
                        "xl/pivotTables/_rels/pivotTable1.xml.rels",
                        links("rId1", "pivotCacheDefinition", "../pivotCache/pivotCacheDefinition1.xml"))
                .part(
                        "xl/worksheets/_rels/sheet3.xml.rels",
                        links("rId1", "pivotTable", "../pivotTables/pivotTable1.xml"));
    }

    private static RawBook threadedComments() {
        RawBook book = with(
                sound().behind("Offers", "<legacyDrawing r:id=\"rId2\"/>"),
                OFFICE + "2017/10/relationships/person",
                "persons/person.xml",
                "application/vnd.ms-excel.person+xml");
        return book.part(
                        "xl/persons/person.xml",
                        xml(
                                "<personList xmlns=\"" + OFFICE
                                        + "spreadsheetml/2018/threadedcomments\"><person displayName=\"Ada\" id=\"{1}\" userId=\"a\" providerId=\"None\"/></personList>"))
                .part(
                        "xl/threadedComments/threadedComment1.xml",
                        xml(
                                "<ThreadedComments xmlns=\"" + OFFICE
                                        + "spreadsheetml/2018/threadedcomments\"><threadedComment ref=\"F2\" dT=\"2026-11-01T08:00:00.00\" personId=\"{1}\" id=\"{2}\"><text>ask again?</text></threadedComment></ThreadedComments>"))
                .part(
                        "xl/comments1.xml",
                        xml(
                                "<comments xmlns=\"" + MAIN
                                        + "\"><authors><author>tc={2}</author></authors><commentList><comment ref=\"F2\" authorId=\"0\"><text><t>ask again?</t></text></comment></commentList></comments>"))
                .part(
                        "xl/drawings/vmlDrawing1.vml",
                        xml("<xml xmlns:v=\"urn:schemas-microsoft-com:vml\"><v:shape/></xml>"))
                .part(
                        "xl/worksheets/_rels/sheet2.xml.rels",
                        links(
                                "rId1",
                                "comments",
                                "../comments1.xml",
                                "rId2",
                                "vmlDrawing",
                                "../drawings/vmlDrawing1.vml",
                                "rId3",
                                OFFICE + "2017/10/relationships/threadedComment",
                                "../threadedComments/threadedComment1.xml"));
    }

    private static RawBook macros() {
        return sound().change(
                        "[Content_Types].xml",
                        text -> text.replace(
                                        TYPE + "sheet.main+xml", "application/vnd.ms-excel.sheet.macroEnabled.main+xml")
                                .replace(
                                        "<Default Extension=\"xml\"",
                                        "<Default Extension=\"bin\" ContentType=\"application/vnd.ms-office.vbaProject\"/><Default Extension=\"xml\""))
                .change(
                        "xl/_rels/workbook.xml.rels",
                        text -> text.replace(
                                "</Relationships>",
                                "<Relationship Id=\"v1\" Type=\"" + OFFICE
                                        + "2006/relationships/vbaProject\" Target=\"vbaProject.bin\"/></Relationships>"))
                .part("xl/vbaProject.bin", new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 1, 2, 3});
    }

    private static RawBook customXml() {
        return also(
                        sound(),
                        "_rels/.rels",
                        "</Relationships>",
                        "<Relationship Id=\"a1\" Type=\"" + LINKS
                                + "/extended-properties\" Target=\"docProps/app.xml\"/><Relationship Id=\"c1\" Type=\""
                                + LINKS + "/customXml\" Target=\"customXml/item1.xml\"/>")
                .part("customXml/item1.xml", xml("<mine xmlns=\"urn:mine\">  kept &amp; kept  </mine>"))
                .part("customXml/itemProps1.xml", xml("<any/>"))
                .part("docProps/app.xml", xml("<Properties><TitlesOfParts>Settings</TitlesOfParts></Properties>"))
                .part("mystery/of unknown kind.dat", new byte[] {0, 1, 2});
    }

    private static RawBook namesAndChain() {
        return with(
                        sound().behindTabs(
                                        "<definedNames><definedName name=\"_xlnm.Print_Area\" localSheetId=\"1\">Offers!$A$1:$H$3</definedName>"
                                                + "<definedName name=\"gone\">#REF!</definedName><definedName name=\"vat\">0.19</definedName></definedNames>"
                                                + "<calcPr calcId=\"191029\" iterate=\"1\"/>"),
                        "calcChain",
                        "calcChain.xml",
                        TYPE + "calcChain+xml")
                .set("Balm", "C4", "<c><f>SUM(C2:C3)</f><v>100</v></c>")
                .part("xl/calcChain.xml", xml("<calcChain xmlns=\"" + MAIN + "\"><c r=\"C4\" i=\"3\"/></calcChain>"));
    }

    private static byte[] noStyles() {
        Map<String, byte[]> parts = sound().set("Settings", "B3", RawBook.text("2026-11-20"))
                .change("xl/_rels/workbook.xml.rels", text -> text.replaceAll("<Relationship Id=\"r1\"[^>]*>", ""))
                .change(
                        "[Content_Types].xml",
                        text -> text.replaceAll("<Override PartName=\"/xl/styles.xml\"[^>]*>", ""))
                .parts();
        parts.remove("xl/styles.xml");
        return RawBook.zip(parts);
    }

    private static RawBook alternateStyles() {
        return sound().change(
                        "xl/styles.xml",
                        text -> text.replace(
                                        "<styleSheet ",
                                        "<styleSheet xmlns:mc=\"http://schemas.openxmlformats.org/markup-compatibility/2006\" mc:Ignorable=\"x14ac\""
                                                + " xmlns:x14ac=\"" + OFFICE + "spreadsheetml/2009/9/ac\" ")
                                .replace("<fonts count=\"1\">", "<fonts count=\"1\" x14ac:knownFonts=\"1\">")
                                .replace(
                                        "</styleSheet>",
                                        "<extLst><ext uri=\"{EB79DEF2}\"><mc:AlternateContent><mc:Choice Requires=\"x14ac\"><x14ac:any/></mc:Choice>"
                                                + "<mc:Fallback/></mc:AlternateContent></ext></extLst></styleSheet>"));
    }

    private static RawBook prefixed() {
        RawBook book = sound();
        for (String part : List.of("xl/workbook.xml", "xl/styles.xml", sound().partOf("Offers"))) {
            book.change(
                    part,
                    text -> text.replaceAll("<(/?)(\\w)", "<$1x:$2")
                            .replace("xmlns=", "xmlns:x=")
                            .replace("xmlns:r=", "xmlns:rel=")
                            .replace("r:id=", "rel:id="));
        }
        return book;
    }

    private static RawBook utf16() {
        RawBook book = sound();
        for (String part : List.of("xl/workbook.xml", "xl/styles.xml", sound().partOf("Offers"))) {
            String text = new String(sound().parts().getOrDefault(part, new byte[0]), UTF_8);
            book.part(part, ("<?xml version=\"1.0\" encoding=\"UTF-16\"?>" + text).getBytes(UTF_16));
        }
        return book;
    }

    private static RawBook backslashLinks() {
        return sound().behind("Offers", "<hyperlinks><hyperlink ref=\"A2\" r:id=\"h1\"/></hyperlinks>")
                .part(
                        "xl/worksheets/_rels/sheet2.xml.rels",
                        xml(
                                "<Relationships xmlns=\"" + PACKAGE + "relationships\"><Relationship Id=\"h1\" Type=\""
                                        + LINKS
                                        + "/hyperlink\" Target=\"..\\old prices\\autumn.xlsx\" TargetMode=\"External\"/></Relationships>"));
    }

    private static RawBook sparklines() {
        return sound().behind(
                        "Offers",
                        "<extLst><ext xmlns:x14=\"" + OFFICE
                                + "spreadsheetml/2009/9/main\" uri=\"{05C60535-1F16-4fd2-B633-F4F36F0B64E0}\"><x14:sparklineGroups xmlns:xm=\""
                                + OFFICE
                                + "excel/2006/main\"><x14:sparklineGroup><x14:sparklines><x14:sparkline><xm:f>Offers!F2:F3</xm:f><xm:sqref>I2</xm:sqref></x14:sparkline></x14:sparklines></x14:sparklineGroup></x14:sparklineGroups></ext></extLst>");
    }

    private static RawBook from1904() {
        return sound().properties("<workbookPr date1904=\"1\"/>").set("Settings", "B3", "<c s=\"1\"><v>44884</v></c>");
    }

    private static RawBook hiddenSheets() {
        return sound().sheet("Notes", List.of("mine"))
                .tab("Notes", "state=\"hidden\"")
                .sheet("Secrets", List.of("mine too"))
                .tab("Secrets", "state=\"veryHidden\"");
    }

    private static RawBook ownCostSummary() {
        return sound().sheet("Cost summary", List.of("my own costs"), List.of(17));
    }

    /** What a library writes: a chart, a comment, a picture, rules, a table, names, a protected sheet. */
    private static byte[] library() {
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(sound().bytes()));
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            XSSFSheet offers = workbook.getSheet("Offers");
            var drawing = offers.createDrawingPatriarch();
            var chart = drawing.createChart(new XSSFClientAnchor(0, 0, 0, 0, 10, 0, 16, 9));
            var data = chart.createData(
                    ChartTypes.BAR,
                    chart.createCategoryAxis(AxisPosition.BOTTOM),
                    chart.createValueAxis(AxisPosition.LEFT));
            data.addSeries(
                    XDDFDataSourcesFactory.fromStringCellRange(offers, CellRangeAddress.valueOf("B2:B3")),
                    XDDFDataSourcesFactory.fromNumericCellRange(offers, CellRangeAddress.valueOf("F2:F3")));
            chart.plot(data);
            var comment = drawing.createCellComment(new XSSFClientAnchor(0, 0, 0, 0, 4, 1, 6, 4));
            comment.setString("ask for a better price");
            offers.getRow(1).getCell(5).setCellComment(comment);
            byte[] picture = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 1, 2, 3};
            drawing.createPicture(
                    new XSSFClientAnchor(0, 0, 0, 0, 10, 10, 12, 12),
                    workbook.addPicture(picture, Workbook.PICTURE_TYPE_PNG));
            var helper = new XSSFDataValidationHelper(offers);
            offers.addValidationData(helper.createValidation(
                    helper.createExplicitListConstraint(new String[] {"kg", "g"}),
                    new CellRangeAddressList(1, 9, 3, 3)));
            var conditions = offers.getSheetConditionalFormatting();
            var rule = conditions.createConditionalFormattingRule(ComparisonOperator.GT, "5");
            rule.createFontFormatting().setFontStyle(true, true);
            conditions.addConditionalFormatting(new CellRangeAddress[] {CellRangeAddress.valueOf("F2:F3")}, rule);
            offers.createTable(new AreaReference("A1:H3", SpreadsheetVersion.EXCEL2007));
            offers.protectSheet("balm");
            var name = workbook.createName();
            name.setNameName("prices");
            name.setRefersToFormula("Offers!$F$2:$F$3");
            workbook.write(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
