package perkilo.xlsx.author;

import org.jspecify.annotations.Nullable;
import perkilo.sheet.Chart;

/**
 * The scale of an axis on which each power of ten takes the same length.
 *
 * @param base the factor between two marks
 * @param from the first mark
 * @param to the last mark
 */
record LogarithmicScale(double base, double from, double to) {

    private static final double BASE = 10;

    /** The scale of a chart's horizontal axis; null for a linear one, which is used if a value has no logarithm. */
    static @Nullable LogarithmicScale of(Chart chart, ChartValues values) {
        if (!chart.axes().logarithmicAcross()) {
            return null;
        }
        double least = Double.POSITIVE_INFINITY;
        double greatest = 0;
        for (Chart.Series series : chart.series()) {
            for (Double value : values.values(series.across())) {
                if (value != null) {
                    least = Math.min(least, value);
                    greatest = Math.max(greatest, value);
                }
            }
        }
        if (least <= 0 || greatest == 0) {
            return null;
        }
        double from = Math.pow(BASE, Math.floor(Math.log10(least)));
        double to = Math.pow(BASE, Math.ceil(Math.log10(greatest)));
        return new LogarithmicScale(BASE, from, to > from ? to : from * BASE);
    }
}
