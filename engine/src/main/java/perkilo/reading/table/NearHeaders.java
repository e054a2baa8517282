package perkilo.reading.table;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.names.Spelling;
import perkilo.schema.InputColumn;

/**
 * Warns of headers that are not read but resemble a missing column. A misspelt header, or one with an unexpected unit,
 * would otherwise distort costs unnoticed.
 */
final class NearHeaders {

    /** Units that no column converts; a header that ends with one is not read. */
    private static final Pattern ANOTHER_UNIT = Pattern.compile(
            "(per )?(min|minutes?|h|hours?|days?|weeks?|months?|years?|t|tons?|tonnes?|stones?|gal|gallons?|pallets?)",
            Pattern.CASE_INSENSITIVE);

    /** A name that differs more in its length needs more corrections than a misspelling has. */
    private static final int LETTERS_PER_SLIP = 4;

    private static final int MOST_SLIPS = 5;

    private final Findings findings;
    private final CostWords words = new CostWords();

    NearHeaders(Findings findings) {
        this.findings = findings;
    }

    /**
     * Warns of each header that is like one of a column which the table lacks.
     *
     * @param unread the places of words that are not a header
     */
    void report(FoundTable table, List<Integer> unread) {
        if (unread.isEmpty()) {
            return;
        }
        BitSet near = table.region().nearHeaders();
        List<InputColumn> missing = table.schema().columns().stream()
                .filter(column -> !table.has(column) && !column.required())
                .toList();
        Map<String, InputColumn> byName = byName(missing);
        Map<String, String> skeletons = new HashMap<>();
        byName.keySet().forEach(name -> skeletons.put(name, Spelling.skeleton(name)));
        for (int index : unread) {
            String header = table.grid().at(table.headerRow(), index).text();
            InputColumn meant = nearest(header, byName, skeletons);
            boolean asked = words.in(header)
                    .filter(about -> UnreadColumn.isReported(table.schema(), about))
                    .isPresent();
            if (meant != null && !asked) {
                near.set(index);
                findings.warning(
                        table.grid().origin(table.headerRow(), index),
                        TableMessages.nearlyAColumn(header, meant.header(), meant.explanation()));
            }
        }
    }

    /** The column whose name a header resembles, or has with another unit at its end. */
    private static @Nullable InputColumn nearest(
            String header, Map<String, InputColumn> byName, Map<String, String> skeletons) {
        int slips = Math.min(MOST_SLIPS, 1 + header.length() / LETTERS_PER_SLIP);
        List<String> ofItsLength = new ArrayList<>();
        for (String name : byName.keySet()) {
            if (Math.abs(name.length() - header.length()) <= slips) {
                ofItsLength.add(name);
            }
        }
        return Spelling.nearest(header, ofItsLength, name -> Objects.requireNonNull(skeletons.get(name)))
                .map(byName::get)
                .orElseGet(() -> withAnotherUnit(header, byName));
    }

    private static Map<String, InputColumn> byName(List<InputColumn> columns) {
        Map<String, InputColumn> byName = new LinkedHashMap<>();
        for (InputColumn column : columns) {
            byName.put(column.header(), column);
            byName.put(column.bareHeader(), column);
            column.synonyms().keySet().forEach(name -> byName.put(name, column));
        }
        return byName;
    }

    private static @Nullable InputColumn withAnotherUnit(String header, Map<String, InputColumn> byName) {
        for (HeaderText.Cut cut : HeaderText.of(header).cuts()) {
            if (!ANOTHER_UNIT.matcher(cut.rest()).matches()) {
                continue;
            }
            for (Map.Entry<String, InputColumn> named : byName.entrySet()) {
                if (HeaderText.key(named.getKey()).equals(cut.name())) {
                    return named.getValue();
                }
            }
        }
        return null;
    }
}
