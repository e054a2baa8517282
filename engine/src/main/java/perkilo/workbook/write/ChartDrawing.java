package perkilo.workbook.write;

import java.util.List;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFChartAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import perkilo.report.Chart;
import perkilo.report.NumberFormat;

/** Charts that an office suite draws anew whenever a cell changes. */
final class ChartDrawing {

    private final Chart chart;
    private final XSSFChart drawn;
    private final ChartValues values;

    private ChartDrawing(Chart chart, XSSFChart drawn, ChartValues values) {
        this.chart = chart;
        this.drawn = drawn;
        this.values = values;
    }

    static void draw(List<Chart> charts, XSSFSheet target, ChartValues values) {
        if (charts.isEmpty()) {
            return;
        }
        XSSFDrawing drawing = target.createDrawingPatriarch();
        for (Chart chart : charts) {
            XSSFChart drawn = drawing.createChart(
                    drawing.createAnchor(0, 0, 0, 0, chart.left(), chart.top(), chart.right() + 1, chart.bottom() + 1));
            new ChartDrawing(chart, drawn, values).draw();
        }
    }

    private void draw() {
        drawn.setTitleText(chart.title());
        drawn.setTitleOverlay(false);
        drawn.displayBlanksAs(DisplayBlanks.GAP);
        if (chart.series().size() > 1) {
            drawn.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        }
        XDDFChartAxis across = across();
        XDDFValueAxis up = drawn.createValueAxis(AxisPosition.LEFT);
        up.setTitle(chart.up());
        up.setNumberFormat(chart.upFormat().code());
        up.crossAxis(across);
        across.crossAxis(up);
        up.setCrosses(isScatter() ? AxisCrosses.MIN : AxisCrosses.AUTO_ZERO);
        XDDFChartData data = data(across, up);
        SeriesStyle.apply(data, up, chart.kind() == Chart.Kind.SCATTER_WITH_LINES);
        drawn.plot(data);
        ChartStyle.apply(drawn, across, up);
    }

    private XDDFChartAxis across() {
        if (!isScatter()) {
            XDDFChartAxis words = drawn.createCategoryAxis(AxisPosition.BOTTOM);
            words.setTitle(chart.across());
            return words;
        }
        XDDFValueAxis numbers = drawn.createValueAxis(AxisPosition.BOTTOM);
        numbers.setTitle(chart.across());
        numbers.setNumberFormat(acrossFormat().code());
        if (chart.logarithmicAcross()) {
            LogarithmicAxis.apply(numbers, chart, values);
        }
        return numbers;
    }

    private NumberFormat acrossFormat() {
        boolean whole = chart.series().stream()
                .flatMap(series -> values.values(series.across()).stream())
                .allMatch(value -> value == null || value % 1 == 0);
        return whole ? NumberFormat.WHOLE : NumberFormat.GENERAL;
    }

    private boolean isScatter() {
        return switch (chart.kind()) {
            case SCATTER, SCATTER_WITH_LINES -> true;
            case STACKED_COLUMNS, LINES -> false;
        };
    }

    private XDDFChartData data(XDDFChartAxis across, XDDFValueAxis up) {
        XDDFChartData data = drawn.createData(type(), across, up);
        data.setVaryColors(false);
        for (Chart.Series series : chart.series()) {
            XDDFChartData.Series added = isScatter()
                    ? data.addSeries(
                            values.numbers(series.across(), acrossFormat()),
                            values.numbers(series.up(), chart.upFormat()))
                    : data.addSeries(values.words(series.across()), values.numbers(series.up(), chart.upFormat()));
            added.setTitle(series.name(), null);
        }
        return data;
    }

    private ChartTypes type() {
        return switch (chart.kind()) {
            case SCATTER, SCATTER_WITH_LINES -> ChartTypes.SCATTER;
            case STACKED_COLUMNS -> ChartTypes.BAR;
            case LINES -> ChartTypes.LINE;
        };
    }
}
