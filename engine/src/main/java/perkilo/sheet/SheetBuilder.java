package perkilo.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Decimals;
import perkilo.origin.Origin;
import perkilo.sheet.ResultSheet.Cell;

/** A builder that fills a sheet cell by cell; rows and columns count from zero. */
public final class SheetBuilder {

    /** The column of titles, sections and sentences. */
    public static final int FIRST_COLUMN = 0;

    private static final BigDecimal TOLERANCE = new BigDecimal("1e-9");

    private final String name;
    private final TreeMap<Integer, SortedMap<Integer, Cell>> cells = new TreeMap<>();
    private final TreeMap<Integer, Integer> widths = new TreeMap<>();
    private final List<Integer> pageBreaks = new ArrayList<>();
    private final List<Chart> charts = new ArrayList<>();
    private final List<ResultSheet.Highlight> highlights = new ArrayList<>();
    private final List<ResultSheet.DropDown> dropDowns = new ArrayList<>();
    private ResultSheet.@Nullable Pages pages;
    private int frozenRows;
    private @Nullable Integer repeatedRow;
    private boolean numbered = true;
    private int frozenColumns;
    private boolean landscape;
    private boolean hidden;
    private boolean onePage;
    private @Nullable String filter;

    /**
     * An empty sheet.
     *
     * @param name as its tab shows it
     */
    public SheetBuilder(String name) {
        this.name = name;
    }

    /** The name that the sheet was built with. */
    public String name() {
        return name;
    }

    /** Writes the sheet's title, in its first column. */
    public SheetBuilder title(int row, String text) {
        return text(row, FIRST_COLUMN, text, Look.TITLE);
    }

    /** Writes an explanation, in the first column. */
    public SheetBuilder hint(int row, String text) {
        return text(row, FIRST_COLUMN, text, Look.HINT);
    }

    /** Writes the title of a part of the sheet, in the first column. */
    public SheetBuilder section(int row, String text) {
        return text(row, FIRST_COLUMN, text, Look.SECTION);
    }

    /** Writes the title of a part of the sheet that leads to a cell, in the first column. */
    public SheetBuilder section(int row, String text, Origin link) {
        return text(row, FIRST_COLUMN, text, Look.SECTION, link);
    }

    /** Writes the sentence that answers the question, in the first column. */
    public SheetBuilder answer(int row, String text) {
        return text(row, FIRST_COLUMN, text, Look.ANSWER);
    }

    /** Writes the sentence that answers the question, with live figures, in the first column. */
    public SheetBuilder answer(int row, Origin link, List<ResultSheet.Part> parts) {
        return sentence(row, FIRST_COLUMN, Look.ANSWER, link, parts);
    }

    /** The cell of a row in the first column, for others to lead to. */
    public Origin inFirstColumn(int row) {
        return new Origin("", name, SheetNames.cell(row, FIRST_COLUMN));
    }

    /** Highlights sentences in the first column that need attention; both rows included. */
    public SheetBuilder markAttention(int fromRow, int toRow, Look look) {
        ResultSheet.Holds signed = new ResultSheet.Holds(Sign.isIn(SheetNames.cell(fromRow, FIRST_COLUMN)));
        return highlight(fromRow, FIRST_COLUMN, toRow, FIRST_COLUMN, signed, look);
    }

    /** Writes words. */
    public SheetBuilder text(int row, int column, String text, Look look) {
        return put(row, column, new Cell(new ResultSheet.Text(text), look, NumberFormat.GENERAL, null));
    }

    /** Writes words with a link to a cell. */
    public SheetBuilder text(int row, int column, String text, Look look, Origin link) {
        return put(row, column, new Cell(new ResultSheet.Text(text), look, NumberFormat.GENERAL, linkTo(link)));
    }

    /**
     * Writes words with a link to another file as a whole.
     *
     * @param address of the file, as a link writes it
     */
    public SheetBuilder fileName(int row, int column, String text, Look look, String address) {
        Origin file = new Origin(address, "", "");
        return put(row, column, new Cell(new ResultSheet.Text(text), look, NumberFormat.GENERAL, file));
    }

    /**
     * Writes a cell that a person fills in.
     *
     * @param answer what is filled in already; empty for nothing
     * @param choices the answers to choose from; null for none
     */
    public SheetBuilder fillIn(int row, int column, String answer, @Nullable Choices choices) {
        ResultSheet.Content content = answer.isEmpty() ? new ResultSheet.Blank() : new ResultSheet.Text(answer);
        if (choices != null) {
            dropDowns.add(new ResultSheet.DropDown(row, column, choices));
        }
        return put(row, column, new Cell(content, Look.FILL_IN, NumberFormat.GENERAL, null));
    }

    /** Writes a sentence with live figures. */
    public SheetBuilder sentence(int row, int column, Look look, ResultSheet.Part... parts) {
        return sentence(row, column, look, Origin.NONE, List.of(parts));
    }

    /** Writes a sentence with live figures and a link to a cell. */
    public SheetBuilder sentence(int row, int column, Look look, Origin link, List<ResultSheet.Part> parts) {
        ResultSheet.Sentence sentence = new ResultSheet.Sentence(parts);
        return put(row, column, new Cell(sentence, look, NumberFormat.GENERAL, linkTo(link)));
    }

    /**
     * Writes a figure.
     *
     * @return the cell, for use in other figures
     */
    public Expr value(int row, int column, Expr expr, NumberFormat format, Look look) {
        put(row, column, new Cell(new ResultSheet.Value(expr), look, format, null));
        return Expr.cell(name, SheetNames.cell(row, column), expr.value());
    }

    /**
     * Writes a figure with a link to the cell that it comes from.
     *
     * @return the cell, for use in other figures
     */
    public Expr value(int row, int column, Expr expr, NumberFormat format, Look look, Origin link) {
        put(row, column, new Cell(new ResultSheet.Value(expr), look, format, linkTo(link)));
        return Expr.cell(name, SheetNames.cell(row, column), expr.value());
    }

    /**
     * Writes a figure that the engine has also computed by itself.
     *
     * @param engine the engine's value
     * @return the cell, for use in other figures
     * @throws IllegalStateException if the sheet's figure differs from the engine's by more than 1e-9
     */
    public Expr checked(int row, int column, Expr expr, BigDecimal engine, NumberFormat format, Look look) {
        return checked(row, column, expr, engine, format, look, Origin.NONE);
    }

    /**
     * Writes a figure that the engine has also computed by itself, with a link to the cell that it comes from.
     *
     * @param engine the engine's value
     * @return the cell, for use in other figures
     * @throws IllegalStateException if the sheet's figure differs from the engine's by more than 1e-9
     */
    public Expr checked(
            int row, int column, Expr expr, BigDecimal engine, NumberFormat format, Look look, Origin link) {
        BigDecimal allowed =
                engine.abs().multiply(TOLERANCE, MathContext.DECIMAL64).add(new BigDecimal("1e-12"));
        if (expr.value().subtract(engine).abs().compareTo(allowed) > 0) {
            throw new IllegalStateException("%s!%s computes %s, but the engine %s"
                    .formatted(
                            name, SheetNames.cell(row, column), Decimals.plain(expr.value()), Decimals.plain(engine)));
        }
        return value(row, column, expr, format, look, link);
    }

    /** The sum of cells in one column, from one row to another, both included. */
    public Expr sumOfColumn(int column, int fromRow, int toRow) {
        BigDecimal sum = BigDecimal.ZERO;
        for (BigDecimal value : numbers(column, fromRow, toRow)) {
            sum = sum.add(value);
        }
        return Expr.sumOf(name, rectangle(fromRow, column, toRow, column), sum);
    }

    private List<BigDecimal> numbers(int column, int fromRow, int toRow) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (int row = fromRow; row <= toRow; row++) {
            Cell cell = cells.getOrDefault(row, new TreeMap<>()).get(column);
            if (cell != null && cell.content() instanceof ResultSheet.Value value) {
                numbers.add(value.expr().value());
            }
        }
        return numbers;
    }

    private static String rectangle(int fromRow, int fromColumn, int toRow, int toColumn) {
        return SheetNames.cell(fromRow, fromColumn) + ":" + SheetNames.cell(toRow, toColumn);
    }

    /** A rectangle of this sheet, for a chart; both corners included. */
    public Chart.Range range(int fromRow, int fromColumn, int toRow, int toColumn) {
        return new Chart.Range(name, rectangle(fromRow, fromColumn, toRow, toColumn));
    }

    /** Sets the widths of the first columns, in characters. */
    public SheetBuilder widths(int... characters) {
        for (int column = 0; column < characters.length; column++) {
            widths.put(column, characters[column]);
        }
        return this;
    }

    /** Sets the width of one column, in characters. */
    public SheetBuilder width(int column, int characters) {
        widths.put(column, characters);
        return this;
    }

    /** Widens one column to a number of characters, if it is narrower. */
    public SheetBuilder widthAtLeast(int column, int characters) {
        widths.merge(column, characters, Math::max);
        return this;
    }

    /** Keeps the first rows and columns in view. */
    public SheetBuilder freeze(int rows, int columns) {
        frozenRows = rows;
        frozenColumns = columns;
        return this;
    }

    /** Lets a table be filtered; both corners included. */
    public SheetBuilder filter(int fromRow, int fromColumn, int toRow, int toColumn) {
        filter = rectangle(fromRow, fromColumn, toRow, toColumn);
        return this;
    }

    /** Begins a new page in print before a row. */
    public SheetBuilder pageBreakBefore(int row) {
        pageBreaks.add(row);
        return this;
    }

    /** Prints the sheet in landscape format. */
    public SheetBuilder landscape() {
        landscape = true;
        return this;
    }

    /** Prints the sheet on one page, however much it holds. */
    public SheetBuilder onePage() {
        onePage = true;
        return this;
    }

    /** Prints a row again at the top of each page after it; for a sheet on which no rows stay in sight. */
    public SheetBuilder repeat(int row) {
        repeatedRow = row;
        return this;
    }

    /** Prints no name and no number on the pages. */
    public SheetBuilder unnumbered() {
        numbered = false;
        return this;
    }

    /** Hides the sheet's tab. */
    public SheetBuilder hidden() {
        hidden = true;
        return this;
    }

    /** Prints a wide table on several pages side by side. */
    public SheetBuilder pages(ResultSheet.Pages sideBySide) {
        pages = sideBySide;
        return this;
    }

    /** Draws a chart. */
    public SheetBuilder chart(Chart chart) {
        charts.add(chart);
        return this;
    }

    /** Makes the look of cells depend on their value; both corners included. */
    public SheetBuilder highlight(
            int fromRow, int fromColumn, int toRow, int toColumn, ResultSheet.When condition, Look look) {
        highlights.add(new ResultSheet.Highlight(rectangle(fromRow, fromColumn, toRow, toColumn), condition, look));
        return this;
    }

    /** The finished sheet. */
    public ResultSheet build() {
        return new ResultSheet(
                name,
                TableRules.drawn(cells),
                widths,
                new ResultSheet.Layout(
                        frozenRows,
                        frozenColumns,
                        filter,
                        pageBreaks,
                        landscape,
                        pages,
                        hidden,
                        onePage,
                        repeatedRow,
                        numbered),
                charts,
                highlights,
                dropDowns);
    }

    private SheetBuilder put(int row, int column, Cell cell) {
        cells.computeIfAbsent(row, any -> new TreeMap<>()).put(column, cell);
        return this;
    }

    private static @Nullable Origin linkTo(Origin link) {
        return link.isKnown() && !link.sheet().isEmpty() ? link : null;
    }
}
