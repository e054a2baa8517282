package perkilo.workbook.author;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.report.Chart;

/**
 * An axis with the same distance between a value and its tenfold, from one power of ten to another.
 *
 * @param base the factor between two marks
 * @param from the first mark
 * @param to the last mark
 */
record LogarithmicScale(double base, double from, double to) {

    private static final double BASE = 10;

    /** The scale of a chart's horizontal axis; null for a linear one, as where a value has no logarithm. */
    static @Nullable LogarithmicScale of(Chart chart, ChartValues values) {
        if (!chart.logarithmicAcross()) {
            return null;
        }
        List<Double> across = chart.series().stream()
                .flatMap(series -> values.values(series.across()).stream())
                .filter(Objects::nonNull)
                .toList();
        double least = across.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double greatest = across.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        if (least <= 0) {
            return null;
        }
        double from = Math.pow(BASE, Math.floor(Math.log10(least)));
        double to = Math.pow(BASE, Math.ceil(Math.log10(greatest)));
        return new LogarithmicScale(BASE, from, to > from ? to : from * BASE);
    }
}
