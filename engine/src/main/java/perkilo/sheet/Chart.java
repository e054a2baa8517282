package perkilo.sheet;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A chart that an office suite draws from the cells of result sheets.
 *
 * @param kind the kind of chart
 * @param title in a person's words
 * @param axes the axes
 * @param series the series, at least one
 * @param place where it is drawn
 */
public record Chart(Kind kind, String title, Axes axes, List<Series> series, Place place) {

    public Chart {
        series = List.copyOf(series);
    }

    /**
     * The axes.
     *
     * @param across title of the horizontal axis, with its unit
     * @param up title of the vertical axis, with its unit
     * @param upFormat the number format of the vertical axis
     * @param logarithmicAcross whether the horizontal axis is logarithmic; for scatter charts
     * @param upFrom where the vertical axis begins; null to let the office suite decide
     */
    public record Axes(
            String across,
            String up,
            NumberFormat upFormat,
            boolean logarithmicAcross,
            @Nullable BigDecimal upFrom) {

        /** Axes that begin where the office suite decides. */
        public Axes(String across, String up, NumberFormat upFormat, boolean logarithmicAcross) {
            this(across, up, upFormat, logarithmicAcross, null);
        }
    }

    /**
     * The cells that a chart covers.
     *
     * @param top first row from zero
     * @param left first column from zero
     * @param bottom last row from zero
     * @param right last column from zero
     */
    public record Place(int top, int left, int bottom, int right) {}

    /** The kind of chart. */
    public enum Kind {
        /** Points joined by straight lines; both axes show numbers. */
        SCATTER_WITH_LINES,
        /** Points only; both axes show numbers. */
        SCATTER,
        /** Stacked columns; the horizontal axis shows words. */
        STACKED_COLUMNS,
        /** Stacked bars that lie; words stand beside them, the first at the top. */
        STACKED_BARS,
        /** Lines; the horizontal axis shows words. */
        LINES;

        /** Whether both axes show numbers. */
        public boolean isScatter() {
            return this == SCATTER || this == SCATTER_WITH_LINES;
        }

        /** Whether it draws columns or bars. */
        public boolean isOfBars() {
            return this == STACKED_COLUMNS || this == STACKED_BARS;
        }
    }

    /**
     * One series.
     *
     * @param name its name in the legend
     * @param across the cells of the horizontal axis
     * @param up the cells of the vertical axis, as many as {@code across}
     * @param visible whether it is drawn; if not, it only lifts those that are stacked on it
     */
    public record Series(String name, Range across, Range up, boolean visible) {

        /** A series that is drawn. */
        public Series(String name, Range across, Range up) {
            this(name, across, up, true);
        }
    }

    /**
     * A rectangle of cells on a result sheet.
     *
     * @param sheet the name that the sheet was built with
     * @param range such as {@code B5:B9}
     */
    public record Range(String sheet, String range) {}
}
