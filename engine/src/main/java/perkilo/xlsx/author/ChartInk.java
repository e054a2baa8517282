package perkilo.xlsx.author;

/** The look of a chart around its series: thin lines, small words, no frame. */
final class ChartInk {

    /** Sizes of words in hundredths of a point. */
    static final int TITLE_SIZE = 1200;

    static final int USUAL_SIZE = 900;

    /** A thin line, in English metric units: 12,700 a point. */
    static final int THIN = 9_525;

    private final PartXml xml;

    ChartInk(PartXml xml) {
        this.xml = xml;
    }

    /** The title of a chart or of an axis. */
    void title(String words, int size, String color) {
        xml.open("c:title").open("c:tx").open("c:rich").leaf("a:bodyPr").leaf("a:lstStyle");
        xml.open("a:p").open("a:r").open("a:rPr", "lang", "en", "sz", size, "b", size == TITLE_SIZE);
        fill(color);
        xml.close().words("a:t", words).close(4);
        xml.leaf("c:overlay", "val", false).close();
    }

    /** A fill in one colour. */
    void fill(String color) {
        xml.open("a:solidFill").leaf("a:srgbClr", "val", color).close();
    }

    /**
     * A line.
     *
     * @param width in English metric units
     */
    void line(String color, int width) {
        xml.open("a:ln", "w", width);
        fill(color);
        xml.close();
    }

    /** The look of an axis: a thin line. */
    void thinLine(String color) {
        xml.open("c:spPr");
        line(color, THIN);
        xml.close();
    }

    /** The look of the whole chart: white, without a frame, with small words. */
    void frame() {
        xml.open("c:spPr");
        fill("FFFFFF");
        xml.open("a:ln").leaf("a:noFill").close(2);
        xml.open("c:txPr").leaf("a:bodyPr").leaf("a:lstStyle").open("a:p").open("a:pPr");
        xml.open("a:defRPr", "sz", USUAL_SIZE, "b", false);
        fill(Palette.MUTED);
        xml.close(2).leaf("a:endParaRPr", "lang", "en").close(2);
    }
}
