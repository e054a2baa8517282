package perkilo.reading.table;

import static perkilo.schema.ValueKind.LEVEL;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** One row of a table: the values of its cells by column, and what is wrong with them. */
public final class TableRow {

    private final FoundTable table;
    private final int row;
    private final NumberMarks marks;
    private final Findings findings;

    TableRow(FoundTable table, int row, NumberMarks marks, Findings findings) {
        this.table = table;
        this.row = row;
        this.marks = marks;
        this.findings = findings;
    }

    /** The table that the row belongs to. */
    public FoundTable table() {
        return table;
    }

    /** Which row of the sheet it is, from zero. */
    public int number() {
        return row;
    }

    /** Where problems are reported. */
    public Findings findings() {
        return findings;
    }

    /**
     * The same row, with the value in one column read as that of another: the value of a setting as the setting needs
     * it.
     *
     * @param at the column of the value
     * @param as the column to read it as
     */
    public TableRow reading(InputColumn at, ColumnNames.Named as) {
        FoundTable.Place place = table.columns().get(at);
        Map<InputColumn, FoundTable.Place> columns =
                place == null ? Map.of() : Map.of(as.column(), new FoundTable.Place(place.index(), as.unit()));
        FoundTable other = new FoundTable(
                table.schema(), table.grid(), table.headerRow(), table.lastRow(), columns, table.region());
        return new TableRow(other, row, marks, findings);
    }

    /** The cell in a column; blank if there is no such column. A cell merged downwards counts for each of its rows. */
    public Cell cell(InputColumn column) {
        FoundTable.Place place = table.columns().get(column);
        if (place == null) {
            return Cell.BLANK;
        }
        Cell cell = table.grid().at(row, place.index());
        if (!cell.isBlank() || column.kind() == LEVEL || table.grid().merged().isEmpty()) {
            return cell;
        }
        return table.grid()
                .mergedAt(row, place.index())
                .filter(block -> block.firstRow() > table.headerRow())
                .map(block -> table.grid().at(block.firstRow(), block.firstColumn()))
                .orElse(Cell.BLANK);
    }

    /** The place of a column's cell; that of the row where there is no such column. */
    public Origin origin(InputColumn column) {
        FoundTable.Place place = table.columns().get(column);
        if (place == null) {
            return origin();
        }
        Grid grid = table.grid();
        if (grid.merged().isEmpty()) {
            return grid.origin(row, place.index());
        }
        Grid.Block merged = grid.mergedAt(row, place.index()).orElse(null);
        boolean above = merged != null
                && merged.firstRow() > table.headerRow()
                && grid.at(row, place.index()).isBlank();
        return above && merged != null
                ? grid.origin(merged.firstRow(), merged.firstColumn())
                : grid.origin(row, place.index());
    }

    /** The place of the row: its first cell that has a column; the cell that an arranged row was made for. */
    public Origin origin() {
        Optional<Origin> arranged = table.grid().rowPlace(row);
        if (arranged.isPresent()) {
            return arranged.get();
        }
        for (InputColumn key : table.schema().keys()) {
            FoundTable.Place place = table.columns().get(key);
            if (place != null && !isBlank(key)) {
                return table.grid().origin(row, place.index());
            }
        }
        return table.grid().origin(row, table.firstColumn());
    }

    /** Whether a column is blank, or holds a dash. */
    public boolean isBlank(InputColumn column) {
        Cell cell = cell(column);
        return cell.isBlank() || (column.kind() != LEVEL && Values.isDash(cell));
    }

    /** Whether a cell holds a plain number, without a per cent format and without words beside it. */
    public boolean isBareNumber(InputColumn column) {
        Cell cell = cell(column);
        return cell.kind() == Cell.Kind.TEXT
                ? NumberText.parse(cell.text()) instanceof NumberText.Parsed parsed
                        && parsed.words().isEmpty()
                : cell.kind() == Cell.Kind.NUMBER && !cell.isPercentFormat();
    }

    /**
     * Reports each of these columns that is blank; true if none is. A column that the whole table lacks is reported at
     * its headers.
     */
    public boolean require(InputColumn... columns) {
        boolean all = true;
        for (InputColumn column : columns) {
            if (isBlank(column)) {
                all = false;
                reportBlank(column);
            }
        }
        return all;
    }

    private void reportBlank(InputColumn column) {
        if (table.has(column) || !table.schema().required().contains(column)) {
            findings.error(
                    origin(column),
                    CellMessages.blank(table.called(column), column.kind().words(), column.example()));
        }
    }

    /** The words in a column; empty where it is blank. */
    public String text(InputColumn column) {
        Cell cell = cell(column);
        if (cell.kind() == Cell.Kind.ERROR) {
            findings.error(origin(column), CellMessages.fault(table.called(column), cell.text()));
            return "";
        }
        return isBlank(column) ? "" : cell.text();
    }

    /** The words in a column with their line breaks; empty where it is blank. */
    public String lines(InputColumn column) {
        String text = text(column);
        String lines = cell(column).lines();
        return text.isEmpty() || lines.isEmpty() ? text : lines;
    }

    /** The words of a list, separated by semicolons, or by commas if there is no semicolon. */
    public List<String> list(InputColumn column) {
        String text = text(column);
        String separator = text.contains(";") ? ";" : "[,\n]";
        return Arrays.stream(text.split(separator))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** The number in a column, with its unit; null where it is blank or was reported. */
    public @Nullable Amount amount(InputColumn column) {
        return values(column).amount();
    }

    /** The number in a column; null where it is blank or was reported. */
    public @Nullable Figure figure(InputColumn column) {
        Amount amount = amount(column);
        return amount == null ? null : amount.figure();
    }

    /** The number in a column, or the default if it is blank. */
    public Figure figure(InputColumn column, Figure byDefault) {
        Figure figure = figure(column);
        return figure == null ? standIn(column, byDefault) : figure;
    }

    /**
     * The default for a blank cell. It refers to the cell if the meaning of a number there is known, so that results
     * follow when one is typed.
     */
    public Figure standIn(InputColumn column, Figure byDefault) {
        if (!isLive(column) || !isBlank(column)) {
            return byDefault;
        }
        BigDecimal perCell = values(column).perNumber();
        Figure.Held held = cell(column).isBlank() ? Figure.Held.NOTHING : Figure.Held.WORDS;
        return perCell == null ? byDefault : new Figure(byDefault.value(), origin(column), perCell, held);
    }

    /** The day in a column; null where it is blank or was reported. */
    public @Nullable LocalDate date(InputColumn column) {
        return values(column).date();
    }

    /** The day in a column with its place; null where it is blank or was reported. */
    public @Nullable Day day(InputColumn column) {
        LocalDate date = date(column);
        boolean live = isLive(column) && cell(column).kind() == Cell.Kind.DATE;
        return date == null ? null : new Day(date, origin(column), live);
    }

    /** The unit in a column; null where it is blank or was reported. */
    public @Nullable Measure measure(InputColumn column) {
        String text = text(column);
        if (text.isEmpty()) {
            return null;
        }
        Measure measure = Measure.parse(text).orElse(null);
        if (measure == null) {
            findings.error(origin(column), CellMessages.notAUnit(table.called(column), text));
        }
        return measure;
    }

    /** The currency in a column; null where it is blank or was reported. */
    public @Nullable CurrencySign currency(InputColumn column) {
        String text = text(column);
        if (text.isEmpty()) {
            return null;
        }
        CurrencySign sign = CurrencySign.parse(text).orElse(null);
        if (sign == null) {
            findings.error(origin(column), CellMessages.notACurrency(table.called(column), text));
        }
        return sign;
    }

    private Values values(InputColumn column) {
        return new Values(table, column, cell(column), unit(column), origin(column), isLive(column), marks, findings);
    }

    /** Whether formulas in the results can refer to the cell in a column. */
    private boolean isLive(InputColumn column) {
        FoundTable.Place place = table.columns().get(column);
        return place != null && table.grid().isLive(row, place.index());
    }

    private String unit(InputColumn column) {
        FoundTable.Place place = table.columns().get(column);
        if (place == null) {
            return "";
        }
        boolean said =
                column.equals(OffersSheet.PRICE) && !table.region().priceLines().isEmpty();
        return said ? table.region().priceUnit(row, place.unit()) : place.unit();
    }
}
