package perkilo.workbook.read.table;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import perkilo.workbook.schema.Column;

/** Which column, or setting, a text names. */
public final class ColumnNames {

    private ColumnNames() {}

    /** The column that a text names, by any of its spellings; empty if it names none. */
    public static Optional<Named> find(List<Column> columns, String text) {
        return columns.stream()
                .flatMap(column -> HeaderText.match(column, text).stream())
                .min(Comparator.comparingInt(HeaderText.HeaderMatch::rank))
                .map(match -> new Named(
                        match.column(), match.notUnderstood().isEmpty() ? match.unit() : match.notUnderstood()));
    }

    /**
     * A column that was named.
     *
     * @param column which one
     * @param unit what the name says of the unit; empty for nothing
     */
    public record Named(Column column, String unit) {}
}
