package perkilo.workbook.write;

import java.util.Objects;
import java.util.stream.DoubleStream;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import perkilo.report.Chart;

/** A logarithmic axis from the power of ten below the least value to the one above the greatest. */
final class LogarithmicAxis {

    private static final double BASE = 10;

    private LogarithmicAxis() {}

    /** Leaves the axis as it is where a value has no logarithm. */
    static void apply(XDDFValueAxis axis, Chart chart, ChartValues values) {
        double least = values(chart, values).min().orElse(0);
        double greatest = values(chart, values).max().orElse(0);
        if (least <= 0) {
            return;
        }
        double from = Math.pow(BASE, Math.floor(Math.log10(least)));
        double to = Math.pow(BASE, Math.ceil(Math.log10(greatest)));
        axis.setLogBase(BASE);
        axis.setMinimum(from);
        axis.setMaximum(to > from ? to : from * BASE);
    }

    private static DoubleStream values(Chart chart, ChartValues values) {
        return chart.series().stream()
                .flatMap(series -> values.values(series.across()).stream())
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue);
    }
}
