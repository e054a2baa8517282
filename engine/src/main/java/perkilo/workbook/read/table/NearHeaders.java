package perkilo.workbook.read.table;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Spelling;
import perkilo.workbook.schema.Column;

/** Headers that are not read, but are spelled much like one that would be: a slip there costs money in silence. */
final class NearHeaders {

    /** Rather a warning too many: a header of a person's own that is this much like one of ours is rare. */
    private static final double NEAR = 0.7;

    private final Findings findings;

    NearHeaders(Findings findings) {
        this.findings = findings;
    }

    /**
     * Warns of each header that is like one of a column which the table lacks.
     *
     * @param unread where words stand that head no column
     */
    void report(Table table, List<Integer> unread) {
        if (unread.isEmpty()) {
            return;
        }
        List<Column> missing = table.schema().columns().stream()
                .filter(column -> !table.has(column) && !column.required())
                .toList();
        for (int index : unread) {
            String header = table.grid().at(table.headerRow(), index).text();
            Column meant = nearest(header, missing);
            if (meant != null) {
                findings.warning(
                        table.grid().origin(table.headerRow(), index),
                        "the column \"%s\" is not read. If it is meant for \"%s\" (%s), call it so"
                                .formatted(header, meant.header(), meant.explanation()));
            }
        }
    }

    private static @Nullable Column nearest(String header, List<Column> columns) {
        double most = NEAR;
        Column nearest = null;
        for (Column column : columns) {
            for (String name : names(column)) {
                double likeness = Spelling.likeness(header, name);
                if (likeness > most) {
                    most = likeness;
                    nearest = column;
                }
            }
        }
        return nearest;
    }

    private static List<String> names(Column column) {
        List<String> names = new ArrayList<>(column.synonyms().keySet());
        names.add(column.header());
        names.add(column.bareHeader());
        return names;
    }
}
