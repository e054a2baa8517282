package perkilo.workbook.read.table;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.workbook.read.grid.Cell;
import perkilo.workbook.schema.Column;

/**
 * What a number would mean that is typed into a cell of a column of percentages: what the column's other numbers mean,
 * which are typed as 2.5 for 2.5 %, or formatted as percentages.
 */
final class PercentCells {

    /** A number as it is typed: 2.5 for 2.5 %. */
    static final BigDecimal TYPED = new BigDecimal("0.01");

    /** A number in a cell that is formatted as a percentage: 0.025. */
    static final BigDecimal FORMATTED = BigDecimal.ONE;

    /** Whose columns hold all kinds of values, so that one says nothing of another. */
    static final PercentCells UNKNOWN = new PercentCells(null);

    /** How many rows are looked at. */
    private static final int ENOUGH = 1000;

    private enum Meaning {
        NO_NUMBER,
        TYPED,
        FORMATTED,
        BOTH
    }

    private final @Nullable Table table;
    private final Map<Column, Meaning> known = new HashMap<>();

    private PercentCells(@Nullable Table table) {
        this.table = table;
    }

    /** The columns of a table; each is looked through when it is first asked for. */
    static PercentCells of(Table table) {
        return new PercentCells(table);
    }

    /**
     * What a number in a column is multiplied by.
     *
     * @param withoutNumbers what holds where the column has none
     * @return null where the column has numbers of both kinds
     */
    @Nullable BigDecimal perNumber(Column column, @Nullable BigDecimal withoutNumbers) {
        Meaning meaning = known.get(column);
        if (meaning == null) {
            meaning = look(column);
            known.put(column, meaning);
        }
        return switch (meaning) {
            case NO_NUMBER -> withoutNumbers;
            case TYPED -> TYPED;
            case FORMATTED -> FORMATTED;
            case BOTH -> null;
        };
    }

    private Meaning look(Column column) {
        Table.Place place = table == null ? null : table.columns().get(column);
        if (table == null || place == null) {
            return Meaning.NO_NUMBER;
        }
        boolean typed = false;
        boolean formatted = false;
        int last = Math.min(table.lastRow(), table.headerRow() + ENOUGH);
        for (int row : table.grid().rows().between(table.headerRow(), last + 1)) {
            Cell cell = table.grid().at(row, place.index());
            boolean number = cell.kind() == Cell.Kind.NUMBER;
            formatted |= cell.isPercentFormat();
            typed |= number && !cell.isPercentFormat();
        }
        if (typed) {
            return formatted ? Meaning.BOTH : Meaning.TYPED;
        }
        return formatted ? Meaning.FORMATTED : Meaning.NO_NUMBER;
    }
}
