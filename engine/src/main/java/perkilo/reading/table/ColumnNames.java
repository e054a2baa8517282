package perkilo.reading.table;

import java.util.List;
import java.util.Optional;
import perkilo.schema.InputColumn;

/** Which of some columns, or settings, a text names. */
public final class ColumnNames {

    private final HeaderIndex index;

    /** Names of some columns. */
    public ColumnNames(List<InputColumn> columns) {
        this.index = new HeaderIndex(columns);
    }

    /** The column that a text names, by any of its spellings; empty if it names none. */
    public Optional<Named> find(String text) {
        return index.match(HeaderText.of(text))
                .map(match -> new Named(match.column(), match.unit(), match.notUnderstood()));
    }

    /**
     * A column that was named.
     *
     * @param column which one
     * @param unit what the name says of the unit; empty for nothing
     * @param notUnderstood a unit that is not one of this column; empty where there is none
     */
    public record Named(InputColumn column, String unit, String notUnderstood) {}
}
