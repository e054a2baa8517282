package perkilo.reading.table;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.names.Spelling;
import perkilo.schema.Column;

/**
 * Warns of headers that are not read but resemble a missing column. A misspelt header, or one with an unexpected unit,
 * would otherwise distort costs unnoticed.
 */
final class NearHeaders {

    /** Units that no column converts; a header that ends with one is not read. */
    private static final Pattern ANOTHER_UNIT = Pattern.compile(
            "(per )?(min|minutes?|h|hours?|days?|weeks?|months?|years?|t|tons?|tonnes?|stones?|gal|gallons?|pallets?)",
            Pattern.CASE_INSENSITIVE);

    private final Findings findings;

    NearHeaders(Findings findings) {
        this.findings = findings;
    }

    /**
     * Warns of each header that is like one of a column which the table lacks.
     *
     * @param unread the places of words that are not a header
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
                        TableMessages.nearlyAColumn(header, meant.header(), meant.explanation()));
            }
        }
    }

    /** The column whose name a header resembles, or has with another unit at its end. */
    private static @Nullable Column nearest(String header, List<Column> columns) {
        Map<String, Column> byName = new LinkedHashMap<>();
        for (Column column : columns) {
            byName.put(column.header(), column);
            byName.put(column.bareHeader(), column);
            column.synonyms().keySet().forEach(name -> byName.put(name, column));
        }
        return Spelling.nearest(header, byName.keySet())
                .map(byName::get)
                .orElseGet(() -> withAnotherUnit(header, byName));
    }

    private static @Nullable Column withAnotherUnit(String header, Map<String, Column> byName) {
        for (HeaderText.Cut cut : HeaderText.of(header).cuts()) {
            if (!ANOTHER_UNIT.matcher(cut.rest()).matches()) {
                continue;
            }
            for (Map.Entry<String, Column> named : byName.entrySet()) {
                if (HeaderText.key(named.getKey()).equals(cut.name())) {
                    return named.getValue();
                }
            }
        }
        return null;
    }
}
