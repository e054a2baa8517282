package perkilo.sheet;

import java.util.ArrayList;
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
 * @param name as its tab shows it, unless a sheet of the person has this name
 * @param cells by row, then column, both from zero
 * @param columnWidths in characters, by column from zero; other columns keep the usual width. A column is widened if a
 *     number needs more
 * @param layout what stays in sight, what can be filtered, and how it is printed
 * @param charts drawn on the sheet
 * @param highlights cells whose look depends on their value
 * @param dropDowns cells that offer answers to choose from
 */
public record ResultSheet(
        String name,
        SortedMap<Integer, SortedMap<Integer, Cell>> cells,
        SortedMap<Integer, Integer> columnWidths,
        Layout layout,
        List<Chart> charts,
        List<Highlight> highlights,
        List<DropDown> dropDowns) {

    public ResultSheet {
        cells = new TreeMap<>(cells);
        columnWidths = new TreeMap<>(columnWidths);
        charts = List.copyOf(charts);
        highlights = List.copyOf(highlights);
        dropDowns = List.copyOf(dropDowns);
    }

    /** The same sheet with other widths of its columns. */
    public ResultSheet withColumnWidths(SortedMap<Integer, Integer> widths) {
        return new ResultSheet(name, cells, widths, layout, charts, highlights, dropDowns);
    }

    /** The same sheet with other cells. */
    public ResultSheet withCells(SortedMap<Integer, SortedMap<Integer, Cell>> others) {
        return new ResultSheet(name, others, columnWidths, layout, charts, highlights, dropDowns);
    }

    /** The same sheet with another cell; row and column from zero. */
    public ResultSheet withCell(int row, int column, Cell cell) {
        SortedMap<Integer, SortedMap<Integer, Cell>> others = new TreeMap<>(cells);
        SortedMap<Integer, Cell> inRow = new TreeMap<>(others.getOrDefault(row, new TreeMap<>()));
        inRow.put(column, cell);
        others.put(row, inRow);
        return withCells(others);
    }

    /** The same sheet with one more highlight. */
    public ResultSheet withHighlight(Highlight more) {
        List<Highlight> all = new ArrayList<>(highlights);
        all.add(more);
        return new ResultSheet(name, cells, columnWidths, layout, charts, all, dropDowns);
    }

    /**
     * What stays in sight, what can be filtered, and how a sheet is printed.
     *
     * @param frozenRows rows at the top that stay in sight
     * @param frozenColumns columns at the left that stay in sight
     * @param filter the cells that can be filtered, such as {@code A5:K40}; null for none
     * @param pageBreaksBefore rows from zero that always begin a new page in print
     * @param landscape whether it is printed in landscape format
     * @param pages how a sheet that is wider than a page is printed; null to fit it to the width of one page
     * @param hidden whether its tab is hidden
     * @param onePage whether it is printed on one page, however much it holds
     * @param repeatedRow the row from zero that is printed again at the top of each page after it, if no rows stay in
     *     sight; null for none
     * @param numbered whether each printed page shows the sheet's name and the page's number
     */
    public record Layout(
            int frozenRows,
            int frozenColumns,
            @Nullable String filter,
            List<Integer> pageBreaksBefore,
            boolean landscape,
            @Nullable Pages pages,
            boolean hidden,
            boolean onePage,
            @Nullable Integer repeatedRow,
            boolean numbered) {

        public Layout {
            pageBreaksBefore = List.copyOf(pageBreaksBefore);
        }
    }

    /**
     * One cell.
     *
     * @param content the content
     * @param look the look
     * @param format how its number is shown
     * @param link the cell that a click opens; null for none
     */
    public record Cell(
            Content content,
            Look look,
            NumberFormat format,
            @Nullable Origin link) {}

    /** The content of a cell. */
    public sealed interface Content {}

    /** Words; never a formula, even if they begin with an equals sign. */
    public record Text(String text) implements Content {}

    /** A figure: a formula with its value if it is live, and a number otherwise. */
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

        /** The sentence with its current figures. */
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
         * @param names maps the name that a result sheet was built with to its final name
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

        /** The part with its current figure. */
        String text();

        /** The part as a formula writes it. */
        String formula(UnaryOperator<String> names);

        /** The same part without references to the person's own cells. */
        default Part alone() {
            return this;
        }

        /** The figure that it shows or depends on; null for words. */
        default @Nullable Expr figure() {
            return null;
        }
    }

    /** Words of a sentence. */
    public record Words(String text) implements Part {

        /** The longest text in a formula that office suites accept; from memory. */
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
     * A figure in a sentence, with separated thousands.
     *
     * @param expr the figure
     * @param decimals the number of decimals shown
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

        @Override
        public Expr figure() {
            return expr;
        }
    }

    /**
     * A figure before further words of a sentence, without zeros at its end.
     *
     * @param expr the figure
     * @param decimals the most decimals that are shown
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

        @Override
        public Expr figure() {
            return expr;
        }
    }

    /**
     * Words that depend on a figure.
     *
     * @param figure the figure that decides
     * @param belowZero the words if the figure is below zero
     * @param elsewhere the words otherwise
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

    /**
     * Words that stand in the place of others while a figure is zero.
     *
     * @param figure the figure that decides; it is zero when the sheet is made
     * @param words the words while it is zero
     * @param notice otherwise
     */
    public record Notice(Expr figure, String words, List<Part> notice) implements Part {

        public Notice {
            notice = List.copyOf(notice);
        }

        @Override
        public String text() {
            return words;
        }

        @Override
        public String formula(UnaryOperator<String> names) {
            return "IF(" + figure.formula(names) + "=0," + new Words(words).formula(names) + ","
                    + new Sentence(notice).formula(names) + ")";
        }

        @Override
        public Part alone() {
            Expr without = figure.alone();
            return without.isLive()
                    ? new Notice(
                            without, words, notice.stream().map(Part::alone).toList())
                    : new Words(words);
        }
    }

    /** The words of a cell of a result sheet, as a part of a sentence. */
    public record WordsOf(String sheet, String cell, String text) implements Part {

        @Override
        public String formula(UnaryOperator<String> names) {
            return SheetNames.quoted(names.apply(sheet)) + "!" + cell;
        }
    }

    /** An empty cell with a look. */
    public record Blank() implements Content {}

    /**
     * A cell that offers answers to choose from; others may be typed.
     *
     * @param row from zero
     * @param column from zero
     * @param choices the answers
     */
    public record DropDown(int row, int column, Choices choices) {}

    /**
     * Cells whose look depends on their value.
     *
     * @param range such as {@code D5:D12}
     * @param condition when the look applies
     * @param look the look that then applies
     */
    public record Highlight(String range, When condition, Look look) {}

    /** The condition under which a look applies. */
    public sealed interface When {}

    /**
     * A formula that is true.
     *
     * @param formula for the range's first cell, without its equals sign; its references move along with the cells
     */
    public record Holds(String formula) implements When {}

    /**
     * How a wide table is printed: on several pages side by side, with its heads and first columns on each page.
     *
     * @param lastRow the last row that is printed, from zero
     * @param lastColumn the last column that is printed, from zero
     * @param headRow the row with the table's heads
     * @param headColumns how many columns at the left are repeated on each page
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
