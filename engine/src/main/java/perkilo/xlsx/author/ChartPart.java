package perkilo.xlsx.author;

import perkilo.sheet.Chart;
import perkilo.sheet.NumberFormat;

/** The part of one chart, which an office suite redraws whenever a cell changes. */
final class ChartPart {

    /** The numbers by which series refer to their axes. */
    private static final int ACROSS = 1;

    private static final int UP = 2;

    private final Chart chart;
    private final ChartValues values;
    private final PartXml xml =
            new PartXml("c:chartSpace", "xmlns:c", StandardNames.CHART, "xmlns:a", StandardNames.DRAWING);
    private final ChartInk ink = new ChartInk(xml);

    private ChartPart(Chart chart, ChartValues values) {
        this.chart = chart;
        this.values = values;
    }

    /** The part. */
    static byte[] xml(Chart chart, ChartValues values) {
        return new ChartPart(chart, values).xml();
    }

    private byte[] xml() {
        xml.leaf("c:roundedCorners", "val", false);
        xml.open("c:chart");
        ink.title(chart.title(), ChartInk.TITLE_SIZE, Palette.INK);
        xml.leaf("c:autoTitleDeleted", "val", false);
        xml.open("c:plotArea").leaf("c:layout");
        new ChartSeries(chart, values, acrossFormat(), xml, ink).write(ACROSS, UP);
        ChartAxes axes = new ChartAxes(xml, ink);
        if (chart.kind().isScatter()) {
            axes.numbersAcross(ACROSS, UP, chart.axes().across(), acrossFormat(), LogarithmicScale.of(chart, values));
        } else if (chart.kind() == Chart.Kind.STACKED_BARS) {
            axes.wordsDown(ACROSS, UP);
        } else {
            axes.wordsAcross(ACROSS, UP, chart.axes().across());
        }
        if (chart.kind() == Chart.Kind.STACKED_BARS) {
            axes.numbersBelow(UP, ACROSS, chart);
        } else {
            axes.up(UP, ACROSS, chart);
        }
        xml.close();
        if (chart.series().size() > 1) {
            xml.open("c:legend").leaf("c:legendPos", "val", "b");
            for (int number = 0; number < chart.series().size(); number++) {
                if (!chart.series().get(number).visible()) {
                    xml.open("c:legendEntry").leaf("c:idx", "val", number).leaf("c:delete", "val", true);
                    xml.close();
                }
            }
            xml.leaf("c:overlay", "val", false).close();
        }
        xml.leaf("c:plotVisOnly", "val", true)
                .leaf("c:dispBlanksAs", "val", "gap")
                .close();
        ink.frame();
        return xml.bytes();
    }

    private NumberFormat acrossFormat() {
        boolean whole = chart.series().stream()
                .flatMap(series -> values.values(series.across()).stream())
                .allMatch(value -> value == null || value % 1 == 0);
        return whole ? NumberFormat.WHOLE : NumberFormat.GENERAL;
    }
}
