package perkilo.sheet;

import java.util.List;

/**
 * A chart that an office suite draws from the cells of result sheets.
 *
 * @param kind what is drawn
 * @param title in a person's words
 * @param across title of the horizontal axis, with its unit
 * @param up title of the vertical axis, with its unit
 * @param upFormat how the vertical axis shows its numbers
 * @param logarithmicAcross whether the horizontal axis is logarithmic; for scatter charts
 * @param series what is drawn, at least one
 * @param top first row from zero
 * @param left first column from zero
 * @param bottom last row from zero
 * @param right last column from zero
 */
public record Chart(
        Kind kind,
        String title,
        String across,
        String up,
        NumberFormat upFormat,
        boolean logarithmicAcross,
        List<Series> series,
        int top,
        int left,
        int bottom,
        int right) {

    public Chart {
        series = List.copyOf(series);
    }

    /** What is drawn. */
    public enum Kind {
        /** Points joined by straight lines, both axes numbers. */
        SCATTER_WITH_LINES,
        /** Points alone, both axes numbers. */
        SCATTER,
        /** Columns of parts on top of each other, the horizontal axis words. */
        STACKED_COLUMNS,
        /** Lines over words. */
        LINES;

        /** Whether both axes are numbers. */
        public boolean isScatter() {
            return this == SCATTER || this == SCATTER_WITH_LINES;
        }
    }

    /**
     * One series.
     *
     * @param name what the legend calls it
     * @param across the cells of the horizontal axis
     * @param up the cells of the vertical axis, as many as {@code across}
     */
    public record Series(String name, Range across, Range up) {}

    /**
     * A rectangle of cells on a result sheet.
     *
     * @param sheet the name it was built with
     * @param range such as {@code B5:B9}
     */
    public record Range(String sheet, String range) {}
}
