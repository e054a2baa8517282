package perkilo.xlsx.author;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Chart;
import perkilo.sheet.NumberFormat;

/** The series of a chart, with the values of their cells. Each series has its own colour and its own marker. */
final class ChartSeries {

    /** Two points, in English metric units. */
    private static final int LINE_WIDTH = 25_400;

    private static final int MARKER_POINTS = 7;
    private static final int GAP_PERCENT = 60;
    private static final int FULL_OVERLAP = 100;
    private static final List<String> MARKERS = List.of("circle", "square", "diamond", "triangle");

    private final Chart chart;
    private final ChartValues values;
    private final NumberFormat acrossFormat;
    private final PartXml xml;
    private final ChartInk ink;

    ChartSeries(Chart chart, ChartValues values, NumberFormat acrossFormat, PartXml xml, ChartInk ink) {
        this.chart = chart;
        this.values = values;
        this.acrossFormat = acrossFormat;
        this.xml = xml;
        this.ink = ink;
    }

    /** Writes all series. */
    void write(int acrossAxis, int upAxis) {
        switch (chart.kind()) {
            case STACKED_COLUMNS -> bars("col");
            case STACKED_BARS -> bars("bar");
            case LINES -> {
                xml.open("c:lineChart").leaf("c:grouping", "val", "standard");
                series();
                xml.leaf("c:marker", "val", true);
            }
            case SCATTER, SCATTER_WITH_LINES -> {
                xml.open("c:scatterChart").leaf("c:scatterStyle", "val", "lineMarker");
                series();
            }
        }
        xml.leaf("c:axId", "val", acrossAxis).leaf("c:axId", "val", upAxis).close();
    }

    private void bars(String direction) {
        xml.open("c:barChart").leaf("c:barDir", "val", direction).leaf("c:grouping", "val", "stacked");
        series();
        xml.leaf("c:gapWidth", "val", GAP_PERCENT).leaf("c:overlap", "val", FULL_OVERLAP);
    }

    private void series() {
        xml.leaf("c:varyColors", "val", false);
        for (int i = 0; i < chart.series().size(); i++) {
            series(i, chart.series().get(i));
        }
    }

    private void series(int number, Chart.Series series) {
        xml.open("c:ser").leaf("c:idx", "val", number).leaf("c:order", "val", number);
        xml.open("c:tx").words("c:v", CellText.storable(series.name())).close();
        look(number, series.visible());
        if (chart.kind().isScatter()) {
            numbers("c:xVal", series.across(), acrossFormat);
            numbers("c:yVal", series.up(), chart.axes().upFormat());
        } else {
            words(series.across());
            numbers("c:val", series.up(), chart.axes().upFormat());
        }
        if (!chart.kind().isOfBars()) {
            xml.leaf("c:smooth", "val", false);
        }
        xml.close();
    }

    private void look(int number, boolean visible) {
        String color = Palette.series(number);
        xml.open("c:spPr");
        switch (chart.kind()) {
            case STACKED_COLUMNS, STACKED_BARS -> {
                if (visible) {
                    ink.fill(color);
                } else {
                    xml.leaf("a:noFill");
                }
            }
            case SCATTER -> xml.open("a:ln").leaf("a:noFill").close();
            case SCATTER_WITH_LINES, LINES -> ink.line(color, LINE_WIDTH);
        }
        xml.close();
        if (chart.kind().isOfBars()) {
            xml.leaf("c:invertIfNegative", "val", false);
        } else {
            marker(color, MARKERS.get(number % MARKERS.size()));
        }
    }

    private void marker(String color, String symbol) {
        xml.open("c:marker").leaf("c:symbol", "val", symbol).leaf("c:size", "val", MARKER_POINTS);
        xml.open("c:spPr");
        ink.fill(color);
        ink.line("FFFFFF", ChartInk.THIN);
        xml.close(2);
    }

    private void words(Chart.Range range) {
        List<String> words = values.words(range);
        xml.open("c:cat").open("c:strRef").words("c:f", values.reference(range));
        xml.open("c:strCache").leaf("c:ptCount", "val", words.size());
        for (int i = 0; i < words.size(); i++) {
            xml.open("c:pt", "idx", i).words("c:v", words.get(i)).close();
        }
        xml.close(3);
    }

    private void numbers(String element, Chart.Range range, NumberFormat format) {
        List<@Nullable Double> numbers = values.values(range);
        xml.open(element).open("c:numRef").words("c:f", values.reference(range));
        xml.open("c:numCache").words("c:formatCode", format.code()).leaf("c:ptCount", "val", numbers.size());
        for (int i = 0; i < numbers.size(); i++) {
            Double number = numbers.get(i);
            if (number != null) {
                xml.open("c:pt", "idx", i).words("c:v", number.toString()).close();
            }
        }
        xml.close(3);
    }
}
