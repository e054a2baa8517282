package perkilo.sheet;

import java.util.List;
import java.util.SortedMap;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Decimals;
import perkilo.origin.Origin;

/**
 * One sheet of results.
 *
 * @param name as its tab shows it, unless a person's own sheet is called so
 * @param cells by row, then column, both from zero
 * @param columnWidths in characters, by column from zero; columns that are not named keep the usual width. Where a
 *     number needs more, it gets more
 * @param frozenRows rows at the top that stay in sight
 * @param frozenColumns columns at the left that stay in sight
 * @param filter the table that can be filtered, such as {@code A5:K40}; null for none
 * @param pageBreaksBefore rows from zero that begin a new page in print, whatever fits on the page before
 * @param landscape whether it is printed across
 * @param pages how a sheet that is wider than a page is printed; null for as wide as one page
 * @param charts drawn on the sheet
 * @param highlights cells that change their look by their value
 */
public record ResultSheet(
        String name,
        SortedMap<Integer, SortedMap<Integer, Cell>> cells,
        SortedMap<Integer, Integer> columnWidths,
        int frozenRows,
        int frozenColumns,
        @Nullable String filter,
        List<Integer> pageBreaksBefore,
        boolean landscape,
        @Nullable Pages pages,
        List<Chart> charts,
        List<Highlight> highlights) {

    public ResultSheet {
        cells = new TreeMap<>(cells);
        columnWidths = new TreeMap<>(columnWidths);
        pageBreaksBefore = List.copyOf(pageBreaksBefore);
        charts = List.copyOf(charts);
        highlights = List.copyOf(highlights);
    }

    /** The same sheet with other widths of its columns. */
    public ResultSheet withColumnWidths(SortedMap<Integer, Integer> widths) {
        return new ResultSheet(
                name,
                cells,
                widths,
                frozenRows,
                frozenColumns,
                filter,
                pageBreaksBefore,
                landscape,
                pages,
                charts,
                highlights);
    }

    /**
     * One cell.
     *
     * @param content what stands in it
     * @param look what it looks like
     * @param format how its number is shown
     * @param link the cell that a click leads to; null for none
     */
    public record Cell(
            Content content,
            Look look,
            NumberFormat format,
            @Nullable Origin link) {}

    /** What stands in a cell. */
    public sealed interface Content {}

    /** Words; never a formula, whatever they begin with. */
    public record Text(String text) implements Content {}

    /** A figure: a formula with its value where it is live, a number elsewhere. */
    public record Value(Expr expr) implements Content {}

    /**
     * A sentence with figures in it, written as a formula that keeps them true.
     *
     * @param parts words and figures in order
     */
    public record Sentence(List<Part> parts) implements Content {

        public Sentence {
            parts = List.copyOf(parts);
        }

        /** The sentence as it reads now. */
        public String text() {
            StringBuilder text = new StringBuilder();
            for (Part part : parts) {
                text.append(part.text());
            }
            return text.toString();
        }

        /**
         * The formula, without its equals sign.
         *
         * @param names gives the name that a result sheet finally got for the name it was built with
         */
        public String formula(UnaryOperator<String> names) {
            StringJoiner formula = new StringJoiner("&");
            for (Part part : parts) {
                formula.add(part.formula(names));
            }
            return formula.toString();
        }
    }

    /** A part of a sentence. */
    public sealed interface Part {

        /** The part as it reads now. */
        String text();

        /** The part in a formula. */
        String formula(UnaryOperator<String> names);

        /** The same part without any reference to a person's own cells. */
        default Part alone() {
            return this;
        }
    }

    /** Words of a sentence. */
    public record Words(String text) implements Part {

        /** Words in a formula are no longer than this in office suites; from memory. */
        private static final int LONGEST = 255;

        @Override
        public String formula(UnaryOperator<String> names) {
            StringJoiner pieces = new StringJoiner("&");
            int from = 0;
            do {
                int to = Math.min(text.length(), from + LONGEST);
                boolean splitsPair = to < text.length() && Character.isHighSurrogate(text.charAt(to - 1));
                to -= splitsPair ? 1 : 0;
                pieces.add("\"" + text.substring(from, to).replace("\"", "\"\"") + "\"");
                from = to;
            } while (from < text.length());
            return pieces.toString();
        }
    }

    /**
     * A figure in a sentence, thousands set apart.
     *
     * @param expr the figure
     * @param decimals how many are shown
     */
    public record Fixed(Expr expr, int decimals) implements Part {

        @Override
        public String text() {
            return Decimals.amount(expr.value(), decimals);
        }

        @Override
        public String formula(UnaryOperator<String> names) {
            return "FIXED(" + expr.formula(names) + "," + decimals + ")";
        }

        @Override
        public Part alone() {
            return new Fixed(expr.alone(), decimals);
        }
    }

    /**
     * A figure before further words of a sentence, with no more decimals than it has.
     *
     * @param expr the figure
     * @param decimals how many are shown at the most
     */
    public record Rounded(Expr expr, int decimals) implements Part {

        @Override
        public String text() {
            return Decimals.plain(expr.rounded(decimals).value());
        }

        @Override
        public String formula(UnaryOperator<String> names) {
            return expr.rounded(decimals).formula(names);
        }

        @Override
        public Part alone() {
            return new Rounded(expr.alone(), decimals);
        }
    }

    /**
     * Words that hang on a figure.
     *
     * @param figure what decides
     * @param belowZero what is said where the figure is below zero
     * @param elsewhere what is said where it is not
     */
    public record Depending(Expr figure, String belowZero, String elsewhere) implements Part {

        @Override
        public String text() {
            return figure.value().signum() < 0 ? belowZero : elsewhere;
        }

        @Override
        public String formula(UnaryOperator<String> names) {
            return "IF(" + figure.formula(names) + "<0," + new Words(belowZero).formula(names) + ","
                    + new Words(elsewhere).formula(names) + ")";
        }

        @Override
        public Part alone() {
            return new Depending(figure.alone(), belowZero, elsewhere);
        }
    }

    /** Nothing, but with a look. */
    public record Blank() implements Content {}

    /**
     * Cells that change their look by their value.
     *
     * @param range such as {@code D5:D12}
     * @param condition when they do
     * @param look what they then look like
     */
    public record Highlight(String range, When condition, Look look) {}

    /** When cells change their look. */
    public sealed interface When {}

    /**
     * Where a formula holds.
     *
     * @param formula for the range's first cell, without its equals sign; what it refers to moves along with the cells
     */
    public record Holds(String formula) implements When {

        /** Where the range's first cell, and so each of them, says certain words. */
        public static Holds saying(String firstCell, String words) {
            return new Holds("ISNUMBER(SEARCH(\"" + words + "\"," + firstCell + "))");
        }
    }

    /**
     * How a wide table is printed: on several pages side by side, its heads and first columns on each of them.
     *
     * @param lastRow the last row that is printed, from zero
     * @param lastColumn the last column that is printed, from zero
     * @param headRow the row with the table's heads
     * @param headColumns how many columns at the left stand on each page
     * @param breaksBefore columns that begin a new page
     */
    public record Pages(int lastRow, int lastColumn, int headRow, int headColumns, List<Integer> breaksBefore) {

        public Pages {
            breaksBefore = List.copyOf(breaksBefore);
        }
    }

    /** A comparison of a cell's value with zero, or with all of its range. */
    public enum Condition implements When {
        BELOW_ZERO,
        ABOVE_ZERO,
        LOWEST_OF_RANGE
    }
}
