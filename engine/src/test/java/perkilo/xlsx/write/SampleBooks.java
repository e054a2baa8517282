package perkilo.xlsx.write;

import static java.nio.charset.StandardCharsets.UTF_16;
import static perkilo.xlsx.write.HandMadeBook.MAIN;
import static perkilo.xlsx.write.HandMadeBook.SHEET;
import static perkilo.xlsx.write.HandMadeBook.least;
import static perkilo.xlsx.write.HandMadeBook.link;
import static perkilo.xlsx.write.HandMadeBook.links;
import static perkilo.xlsx.write.HandMadeBook.offers;
import static perkilo.xlsx.write.HandMadeBook.override;
import static perkilo.xlsx.write.HandMadeBook.types;
import static perkilo.xlsx.write.HandMadeBook.workbook;

import java.util.List;
import java.util.Random;
import perkilo.xlsx.author.SampleReport;

/** Workbooks of many kinds, each with the cells that {@link SampleReport} refers to. */
final class SampleBooks {

    /**
     * One of them.
     *
     * @param what the feature that it shows
     * @param ending of its file's name
     * @param book its parts
     */
    record Sample(String what, String ending, HandMadeBook book) {

        @Override
        public String toString() {
            return what;
        }
    }

    private static final String STYLES = SHEET + "styles+xml";

    private SampleBooks() {}

    static List<Sample> handMade() {
        return List.of(
                new Sample("neither styles nor shared strings", "xlsx", least()),
                new Sample("styles with the least in them", "xlsx", withStyles(leastStyles())),
                new Sample(
                        "styles without anything in them", "xlsx", withStyles("<styleSheet xmlns=\"" + MAIN + "\"/>")),
                new Sample("style numbers without an entry", "xlsx", danglingStyles()),
                new Sample("a module of an old program", "xlsx", oldModule()),
                new Sample("prefixed names", "xlsx", prefixed()),
                new Sample("Strict names", "xlsx", strict()),
                new Sample("parts in UTF-16", "xlsx", utf16()),
                new Sample("targets from the root", "xlsx", targetsFromRoot()),
                new Sample("the workbook in an odd place", "xlsx", oddPlace()),
                new Sample("a chain of calculation", "xlsx", calcChain()),
                new Sample("macros", "xlsm", macros()),
                new Sample("links to another workbook", "xlsx", externalLinks()),
                new Sample("unknown parts and custom XML", "xlsx", unknownParts()),
                new Sample("a picture of more than a megabyte", "xlsx", longPicture()),
                new Sample("names, settings and extensions", "xlsx", namesAndExtensions()));
    }

    /** Cells, a row and a column with style 7, a condition with format 3; the style sheet has one of each. */
    static HandMadeBook danglingStyles() {
        return withStyles(leastStyles())
                .with(
                        "xl/worksheets/sheet1.xml",
                        "<sheetData>",
                        "<cols><col min=\"20\" max=\"20\" style=\"5\"/></cols><sheetData>")
                .with("xl/worksheets/sheet1.xml", "<c r=\"C2\">", "<c r='C2' s='7'>")
                .with(
                        "xl/worksheets/sheet1.xml",
                        "</sheetData>",
                        "</sheetData><conditionalFormatting sqref=\"C2\"><cfRule type=\"expression\" dxfId=\"3\""
                                + " priority=\"1\"><formula>FALSE</formula></cfRule></conditionalFormatting>");
    }

    /** A tab without a part, as programs of the last century wrote for a sheet of macros. */
    static HandMadeBook oldModule() {
        return least().with(
                        "xl/workbook.xml",
                        "</sheets>",
                        "<sheet name=\"Module1\" sheetId=\"2\" state=\"veryHidden\" r:id=\"\"/></sheets>");
    }

    private static HandMadeBook withStyles(String styles) {
        return least().part("xl/styles.xml", styles)
                .part("[Content_Types].xml", types(override("/xl/styles.xml", STYLES)))
                .part(
                        "xl/_rels/workbook.xml.rels",
                        links(link("r1", "worksheet", "worksheets/sheet1.xml") + link("r2", "styles", "styles.xml")));
    }

    private static String leastStyles() {
        return "<styleSheet xmlns=\"" + MAIN + "\"><fonts><font><sz val=\"10\"/><name val=\"Arial\"/></font></fonts>"
                + "<fills><fill><patternFill patternType=\"none\"/></fill></fills>"
                + "<cellXfs count=\"1\"><xf fontId=\"0\"/></cellXfs><dxfs count=\"0\"/></styleSheet>";
    }

    private static HandMadeBook prefixed() {
        String styles = leastStyles().replace("xmlns=", "xmlns:x=").replaceAll("<(/?)(\\w)", "<$1x:$2");
        String prefixedWorkbook = workbook("")
                .replace("xmlns=", "xmlns:x=")
                .replace("xmlns:r=", "xmlns:rel=")
                .replace("r:id", "rel:id")
                .replaceAll("<(/?)(\\w)", "<$1x:$2");
        return withStyles(styles)
                .part("xl/workbook.xml", prefixedWorkbook)
                .part(
                        "xl/worksheets/sheet1.xml",
                        offers().replace("xmlns=", "xmlns:x=").replaceAll("<(/?)(\\w)", "<$1x:$2"));
    }

    private static HandMadeBook strict() {
        HandMadeBook book = withStyles(leastStyles());
        for (String part : List.of(
                "_rels/.rels",
                "xl/workbook.xml",
                "xl/_rels/workbook.xml.rels",
                "xl/worksheets/sheet1.xml",
                "xl/styles.xml")) {
            book.with(part, MAIN, "http://purl.oclc.org/ooxml/spreadsheetml/main")
                    .with(part, HandMadeBook.LINKS, "http://purl.oclc.org/ooxml/officeDocument/relationships");
        }
        return book;
    }

    private static HandMadeBook utf16() {
        String declaration = "<?xml version=\"1.0\" encoding=\"UTF-16\"?>";
        return withStyles("")
                .part("xl/styles.xml", declaration + leastStyles(), UTF_16)
                .part("xl/workbook.xml", declaration + workbook(""), UTF_16);
    }

    private static HandMadeBook targetsFromRoot() {
        return least().part("_rels/.rels", links(link("r1", "officeDocument", "/xl/workbook.xml")))
                .part("xl/_rels/workbook.xml.rels", links(link("r1", "worksheet", "/xl/worksheets/sheet1.xml")));
    }

    private static HandMadeBook oddPlace() {
        return new HandMadeBook()
                .part(
                        "[Content_Types].xml",
                        types("")
                                .replace("/xl/workbook.xml", "/book/Book.xml")
                                .replace("/xl/worksheets/sheet1.xml", "/tabs/one.xml"))
                .part("_rels/.rels", links(link("r1", "officeDocument", "book/Book.xml")))
                .part("book/Book.xml", workbook(""))
                .part("book/_rels/Book.xml.rels", links(link("r1", "worksheet", "../tabs/one.xml")))
                .part("tabs/one.xml", offers());
    }

    private static HandMadeBook calcChain() {
        return least().part("xl/calcChain.xml", "<calcChain xmlns=\"" + MAIN + "\"><c r=\"A1\" i=\"1\"/></calcChain>")
                .part("[Content_Types].xml", types(override("/xl/calcChain.xml", SHEET + "calcChain+xml")))
                .part(
                        "xl/_rels/workbook.xml.rels",
                        links(link("r1", "worksheet", "worksheets/sheet1.xml")
                                + link("r2", "calcChain", "calcChain.xml")));
    }

    private static HandMadeBook macros() {
        return least().part("xl/vbaProject.bin", new byte[] {1, 2, 3, 0, (byte) 255})
                .part(
                        "[Content_Types].xml",
                        types("<Default Extension=\"bin\" ContentType=\"application/vnd.ms-office.vbaProject\"/>")
                                .replace(
                                        SHEET + "sheet.main+xml",
                                        "application/vnd.ms-excel.sheet.macroEnabled.main+xml"))
                .part(
                        "xl/_rels/workbook.xml.rels",
                        links(link("r1", "worksheet", "worksheets/sheet1.xml")
                                + "<Relationship Id=\"r2\" Type=\"http://schemas.microsoft.com/office/2006/relationships/vbaProject\""
                                + " Target=\"vbaProject.bin\"/>"));
    }

    private static HandMadeBook externalLinks() {
        return least().part(
                        "xl/workbook.xml",
                        workbook("<externalReferences><externalReference r:id=\"r2\"/></externalReferences>"))
                .part(
                        "[Content_Types].xml",
                        types(override("/xl/externalLinks/externalLink1.xml", SHEET + "externalLink+xml")))
                .part(
                        "xl/_rels/workbook.xml.rels",
                        links(link("r1", "worksheet", "worksheets/sheet1.xml")
                                + link("r2", "externalLink", "externalLinks/externalLink1.xml")))
                .part(
                        "xl/externalLinks/externalLink1.xml",
                        "<externalLink xmlns=\"" + MAIN + "\"><externalBook xmlns:r=\"" + HandMadeBook.LINKS
                                + "\" r:id=\"rId1\"/></externalLink>")
                .part(
                        "xl/externalLinks/_rels/externalLink1.xml.rels",
                        links(
                                "<Relationship Id=\"rId1\" Type=\"" + HandMadeBook.LINKS
                                        + "/externalLinkPath\" Target=\"file:///C:\\prices\\old.xlsx\" TargetMode=\"External\"/>"));
    }

    private static HandMadeBook unknownParts() {
        return least().part("customXml/item1.xml", "<mine xmlns=\"urn:mine\">ok</mine>")
                .part("xl/pivotCache/pivotCacheDefinition1.xml", "<any xmlns=\"" + MAIN + "\"/>")
                .part("xl/threadedComments/threadedComment1.xml", "<any/>")
                .part("docProps/app.xml", "<Properties><TitlesOfParts>Offers</TitlesOfParts></Properties>")
                .part("xl/worksheets/_rels/sheet1.xml.rels", links(link("r9", "mystery", "../../customXml/item1.xml")));
    }

    /** Its bytes are random, as the test does not look at the picture. */
    static HandMadeBook longPicture() {
        byte[] picture = new byte[(1 << 20) + 1];
        new Random(1).nextBytes(picture);
        return least().part("[Content_Types].xml", types(override("/xl/media/image1.png", "image/png")))
                .part("xl/media/image1.png", picture);
    }

    private static HandMadeBook namesAndExtensions() {
        return withStyles(leastStyles())
                .part(
                        "xl/workbook.xml",
                        workbook(
                                        "<definedNames><definedName name=\"_xlnm.Print_Area\" localSheetId=\"0\">Offers!$A$1:$E$5</definedName>"
                                                + "<definedName name=\"vat\">0.19</definedName></definedNames>"
                                                + "<calcPr calcId=\"191029\" iterate=\"1\" fullCalcOnLoad=\"0\"/>"
                                                + "<extLst><ext uri=\"{1}\"/></extLst>")
                                .replace(
                                        "<sheets>",
                                        "<workbookPr date1904=\"1\"/><!-- <sheets> is next --><bookViews><workbookView activeTab=\"0\"/></bookViews><sheets>"));
    }
}
