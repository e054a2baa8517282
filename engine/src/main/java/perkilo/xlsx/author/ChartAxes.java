package perkilo.xlsx.author;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Chart;
import perkilo.sheet.NumberFormat;

/** The two axes of a chart. */
final class ChartAxes {

    private final PartXml xml;
    private final ChartInk ink;

    ChartAxes(PartXml xml, ChartInk ink) {
        this.xml = xml;
        this.ink = ink;
    }

    /** A horizontal axis of words. */
    void wordsAcross(int number, int other, String title) {
        begin("c:catAx", number, "b", null);
        ink.title(title, ChartInk.USUAL_SIZE, Palette.MUTED);
        look(Palette.MUTED);
        xml.leaf("c:crossAx", "val", other).leaf("c:crosses", "val", "autoZero").close();
    }

    /**
     * A horizontal axis of numbers.
     *
     * @param scale null for a linear one
     */
    void numbersAcross(int number, int other, String title, NumberFormat format, @Nullable LogarithmicScale scale) {
        begin("c:valAx", number, "b", scale);
        ink.title(title, ChartInk.USUAL_SIZE, Palette.MUTED);
        xml.leaf("c:numFmt", "formatCode", format.code(), "sourceLinked", false);
        look(Palette.MUTED);
        xml.leaf("c:crossAx", "val", other).leaf("c:crosses", "val", "autoZero");
        xml.leaf("c:crossBetween", "val", "midCat").close();
    }

    /** The vertical axis, with lines across the chart. */
    void up(int number, int other, Chart chart) {
        boolean scatter = chart.kind().isScatter();
        begin("c:valAx", number, "l", null, "minMax", chart.axes().upFrom());
        xml.open("c:majorGridlines");
        ink.thinLine(Palette.RULE);
        xml.close();
        ink.title(chart.axes().up(), ChartInk.USUAL_SIZE, Palette.MUTED);
        xml.leaf("c:numFmt", "formatCode", chart.axes().upFormat().code(), "sourceLinked", false);
        look(Palette.RULE);
        xml.leaf("c:crossAx", "val", other).leaf("c:crosses", "val", scatter ? "min" : "autoZero");
        xml.leaf("c:crossBetween", "val", scatter ? "midCat" : "between").close();
    }

    /** An axis of words down the left side, the first at the top, each of them written. */
    void wordsDown(int number, int other) {
        begin("c:catAx", number, "l", null, "maxMin");
        look(Palette.MUTED);
        xml.leaf("c:crossAx", "val", other).leaf("c:crosses", "val", "autoZero");
        xml.leaf("c:tickLblSkip", "val", 1).close();
    }

    /** An axis of numbers below bars that lie, with lines across the chart. */
    void numbersBelow(int number, int other, Chart chart) {
        begin("c:valAx", number, "b", null);
        xml.open("c:majorGridlines");
        ink.thinLine(Palette.RULE);
        xml.close();
        ink.title(chart.axes().up(), ChartInk.USUAL_SIZE, Palette.MUTED);
        xml.leaf("c:numFmt", "formatCode", chart.axes().upFormat().code(), "sourceLinked", false);
        xml.leaf("c:majorTickMark", "val", "none").leaf("c:minorTickMark", "val", "none");
        xml.leaf("c:tickLblPos", "val", "nextTo");
        ink.thinLine(Palette.RULE);
        xml.leaf("c:crossAx", "val", other).leaf("c:crosses", "val", "max");
        xml.leaf("c:crossBetween", "val", "between").close();
    }

    private void begin(String element, int number, String place, @Nullable LogarithmicScale scale) {
        begin(element, number, place, scale, "minMax");
    }

    private void begin(String element, int number, String place, @Nullable LogarithmicScale scale, String orientation) {
        begin(element, number, place, scale, orientation, null);
    }

    private void begin(
            String element,
            int number,
            String place,
            @Nullable LogarithmicScale scale,
            String orientation,
            @Nullable BigDecimal from) {
        xml.open(element).leaf("c:axId", "val", number).open("c:scaling");
        if (scale != null) {
            xml.leaf("c:logBase", "val", scale.base());
        }
        xml.leaf("c:orientation", "val", orientation);
        if (scale != null) {
            xml.leaf("c:max", "val", scale.to()).leaf("c:min", "val", scale.from());
        }
        if (from != null) {
            xml.leaf("c:min", "val", from.toPlainString());
        }
        xml.close().leaf("c:delete", "val", false).leaf("c:axPos", "val", place);
    }

    private void look(String color) {
        xml.leaf("c:majorTickMark", "val", "none").leaf("c:minorTickMark", "val", "none");
        xml.leaf("c:tickLblPos", "val", "low");
        ink.thinLine(color);
    }
}
