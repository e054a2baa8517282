package perkilo.layouts;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * The cells of one row at a time, with what it takes over from the row above: a cell with a ditto mark the cell above
 * it; a row that goes on with the item above also what its blank cells would only say again.
 */
final class RowCells {

    /** What describes an item or a pack, so that a row that goes on need not say it again. */
    private static final Set<Meaning> DESCRIBING = EnumSet.of(
            Meaning.SUPPLIER,
            Meaning.INCI,
            Meaning.CAS,
            Meaning.GRADE,
            Meaning.PACK,
            Meaning.PACK_UNIT,
            Meaning.PER,
            Meaning.CURRENCY,
            Meaning.QUOTED_ON,
            Meaning.VALID_UNTIL);

    /** What changes a price: a person says whether a blank cell means the same as the cell above. */
    private static final Set<Meaning> CHANGING =
            EnumSet.of(Meaning.DISCOUNT, Meaning.SURCHARGE_PERCENT, Meaning.SURCHARGE, Meaning.DUTY);

    private static final String BLANK_CELLS = "blank cells in ";
    private static final String AS_ABOVE = "as above";
    private static final String NONE = "none";

    private final ListColumns columns;
    private final Grid grid;
    private final Mapping mapping;
    private final Consumer<Question> ask;
    private final Set<Integer> dittos = new HashSet<>();
    private NavigableMap<Integer, Cell> above = new TreeMap<>();
    private NavigableMap<Integer, Cell> cells = new TreeMap<>();
    private boolean own;
    private int row = -1;

    RowCells(ListColumns columns, Mapping mapping, Consumer<Question> ask) {
        this.columns = columns;
        this.grid = columns.layout().grid();
        this.mapping = mapping;
        this.ask = ask;
    }

    /** How the field of a question about blank cells begins. */
    static String beginning() {
        return BLANK_CELLS;
    }

    /** Whether a text says that a cell is as the one above it. */
    static boolean isDitto(Cell cell) {
        return cell.kind() == Cell.Kind.TEXT && ListWords.is("ditto", cell.text());
    }

    /** Begins with the next row: its own cells, and those above in the place of ditto marks. */
    void begin(int next) {
        row = next;
        dittos.clear();
        own = false;
        cells = grid.row(next);
        for (int column : grid.row(next).keySet()) {
            Cell before = isDitto(grid.at(next, column)) ? above.get(column) : null;
            if (before != null) {
                take(column, before);
                dittos.add(column);
            }
        }
    }

    /** The cells of a row: those of the one that was begun with, or the own cells of another. */
    NavigableMap<Integer, Cell> of(int other) {
        return other == row ? cells : grid.row(other);
    }

    /** Whether a cell of the row holds a ditto mark. */
    boolean isDitto(int column) {
        return dittos.contains(column);
    }

    /** The row goes on with the item above: its blank cells say the same, or what a person says. */
    void goOn() {
        columns.uses().forEach((column, use) -> {
            Cell before = above.get(column);
            boolean blank =
                    !cells.containsKey(column) && grid.mergedAt(row, column).isEmpty();
            if (before == null || !blank) {
                return;
            }
            if (DESCRIBING.contains(use.meaning())) {
                take(column, before);
            } else if (CHANGING.contains(use.meaning()) && says(before)) {
                String header = columns.layout().headers().getOrDefault(column, "");
                String field = BLANK_CELLS + "\"" + header + "\"";
                Optional<String> answer = mapping.answer(field);
                if (answer.filter(AS_ABOVE::equalsIgnoreCase).isPresent()) {
                    take(column, before);
                } else if (answer.filter(NONE::equalsIgnoreCase).isEmpty()) {
                    ask.accept(Question.of(
                            field,
                            grid.origin(row, column),
                            QuestionMessages.blankBelow(header, ListRows.shortened(before.text())),
                            AS_ABOVE,
                            NONE));
                }
            }
        });
    }

    private static boolean says(Cell cell) {
        boolean zero = cell.kind() == Cell.Kind.NUMBER
                && cell.number() != null
                && cell.number().signum() == 0;
        return !zero && !ListWords.is("nothing said", cell.text()) && !ListWords.is("free of charge", cell.text());
    }

    private void take(int column, Cell before) {
        if (!own) {
            cells = new TreeMap<>(cells);
            own = true;
        }
        cells.put(column, before);
    }

    /** The row is the one above for those that follow. */
    void end() {
        above = cells;
    }
}
