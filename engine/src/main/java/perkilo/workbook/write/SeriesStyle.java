package perkilo.workbook.write;

import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTMarker;

/** The colours, lines and markers of a chart's series; what differs in colour differs in its marker too. */
final class SeriesStyle {

    private static final double LINE_POINTS = 2;
    private static final short MARKER_POINTS = 7;
    private static final int GAP_PERCENT = 60;
    private static final byte FULL_OVERLAP = 100;

    private static final MarkerStyle[] MARKERS = {
        MarkerStyle.CIRCLE, MarkerStyle.SQUARE, MarkerStyle.DIAMOND, MarkerStyle.TRIANGLE
    };

    private SeriesStyle() {}

    /** Gives every series of a chart its look. */
    static void apply(XDDFChartData data, XDDFValueAxis up, boolean joined) {
        if (data instanceof XDDFBarChartData columns) {
            columns(columns, up);
        } else if (data instanceof XDDFLineChartData lines) {
            lines(lines, up);
        } else if (data instanceof XDDFScatterChartData points) {
            points(points, up, joined);
        }
    }

    /** Stacked columns. */
    private static void columns(XDDFBarChartData data, XDDFValueAxis up) {
        data.setBarDirection(BarDirection.COL);
        data.setBarGrouping(BarGrouping.STACKED);
        data.setOverlap(FULL_OVERLAP);
        data.setGapWidth(GAP_PERCENT);
        up.setCrossBetween(AxisCrossBetween.BETWEEN);
        for (int i = 0; i < data.getSeriesCount(); i++) {
            data.getSeries(i).setFillProperties(ChartStyle.solid(Palette.series(i)));
        }
    }

    /** Lines over words. */
    private static void lines(XDDFLineChartData data, XDDFValueAxis up) {
        up.setCrossBetween(AxisCrossBetween.BETWEEN);
        for (int i = 0; i < data.getSeriesCount(); i++) {
            XDDFLineChartData.Series series = (XDDFLineChartData.Series) data.getSeries(i);
            series.setSmooth(false);
            series.setMarkerStyle(MARKERS[i % MARKERS.length]);
            series.setMarkerSize(MARKER_POINTS);
            series.setLineProperties(line(i));
            marker(series.getCTLineSer().getMarker(), i);
        }
    }

    /** Points, joined by lines or not. */
    private static void points(XDDFScatterChartData data, XDDFValueAxis up, boolean joined) {
        data.setStyle(ScatterStyle.LINE_MARKER);
        up.setCrossBetween(AxisCrossBetween.MIDPOINT_CATEGORY);
        for (int i = 0; i < data.getSeriesCount(); i++) {
            XDDFScatterChartData.Series series = (XDDFScatterChartData.Series) data.getSeries(i);
            series.setSmooth(false);
            series.setMarkerStyle(MARKERS[i % MARKERS.length]);
            series.setMarkerSize(MARKER_POINTS);
            series.setLineProperties(joined ? line(i) : new XDDFLineProperties(new XDDFNoFillProperties()));
            marker(series.getCTScatterSer().getMarker(), i);
        }
    }

    private static XDDFLineProperties line(int series) {
        XDDFLineProperties line = new XDDFLineProperties(ChartStyle.solid(Palette.series(series)));
        line.setWidth(LINE_POINTS);
        return line;
    }

    private static void marker(CTMarker marker, int series) {
        XDDFShapeProperties shape =
                new XDDFShapeProperties(marker.isSetSpPr() ? marker.getSpPr() : marker.addNewSpPr());
        shape.setFillProperties(ChartStyle.solid(Palette.series(series)));
        shape.setLineProperties(ChartStyle.line("FFFFFF"));
    }
}
