package perkilo.layouts;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import perkilo.offers.Validity;
import perkilo.reading.table.Findings;
import perkilo.xlsx.grid.Grid;

/**
 * A whole list, with all its tables and sheets.
 *
 * @param lines its lines
 * @param facts what the lines around its first table say; the days of other tables are in their own lines
 * @param tables each table with what it leaves open
 * @param notRead columns, lines and sheets that are not used
 * @param items what its rows with prices name, whether their prices can be read yet or not
 * @param faults cells with which something is wrong
 */
public record ListReading(
        List<ListLine> lines,
        TitleFacts facts,
        List<Table> tables,
        List<NotRead> notRead,
        List<ListedItem> items,
        List<CellFault> faults) {

    /**
     * One table.
     *
     * @param columns what its columns are used for
     * @param facts what the lines around it say, and those of tables above it where it does not say so itself
     * @param questions what is open
     */
    public record Table(ListColumns columns, TitleFacts facts, List<Question> questions) {}

    /** A table before its rows are read. */
    private record Begun(ListColumns columns, Mapping mapping, TitleFacts facts, ListDates dates) {}

    /**
     * Reads all tables of a list.
     *
     * @param layouts at least one
     * @param mappings what a person said of each
     */
    public static ListReading of(List<ListLayout> layouts, Function<ListLayout, Mapping> mappings, Findings findings) {
        List<Begun> begun = new ArrayList<>();
        Set<NotRead> notRead = new LinkedHashSet<>();
        for (ListLayout layout : layouts) {
            Mapping mapping = mappings.apply(layout);
            ListColumns columns = ListColumns.of(layout, mapping);
            List<LooseLine> loose = LooseLine.of(columns);
            ListDates dates = TitleFacts.dates(mapping, columns, loose);
            TitleFacts own = TitleFacts.of(loose, dates, mapping, findings, columns);
            notRead.addAll(columns.notRead());
            notRead.addAll(own.notRead());
            begun.add(new Begun(columns, mapping, withOthers(own, layout, begun), dates));
        }
        TitleFacts first = begun.get(0).facts();
        for (Begun other : begun) {
            first = first.orOf(other.facts());
        }
        List<ListLine> lines = new ArrayList<>();
        List<Table> tables = new ArrayList<>();
        List<ListedItem> items = new ArrayList<>();
        List<CellFault> faults = new ArrayList<>();
        Map<LineAdjustment, Set<String>> found = new LinkedHashMap<>();
        for (Begun one : begun) {
            ListSense sense = ListSense.of(one.columns(), one.mapping());
            ListRows rows = new ListRows(
                    one.columns(), one.mapping(), sense, one.facts(), own(one.facts(), first), one.dates(), findings);
            lines.addAll(rows.read());
            List<Question> questions = new ArrayList<>(one.columns().questions());
            questions.addAll(one.facts().questions());
            questions.addAll(sense.questions());
            questions.addAll(rows.questions());
            items.addAll(rows.items());
            faults.addAll(rows.faults());
            one.facts()
                    .adjustments()
                    .forEach(line ->
                            found.computeIfAbsent(line, any -> new HashSet<>()).addAll(rows.found(line)));
            tables.add(new Table(one.columns(), one.facts(), List.copyOf(questions)));
        }
        askAgain(found, tables);
        for (Grid grid : layouts.get(0).others()) {
            if (!grid.rows().isEmpty()) {
                notRead.add(new NotRead(grid.origin(), grid.sheet(), NotReadMessages.sheetNotUnderstood()));
            }
        }
        check(first, layouts.get(0), findings);
        return new ListReading(lines, first, tables, List.copyOf(notRead), List.copyOf(items), List.copyOf(faults));
    }

    /** A change of some items' prices is asked about again if the answer names an item that is not on the list. */
    private static void askAgain(Map<LineAdjustment, Set<String>> found, List<Table> tables) {
        found.forEach((line, words) -> {
            if (!words.containsAll(line.only())) {
                Table first = tables.get(0);
                List<Question> questions = new ArrayList<>(first.questions());
                questions.add(line.asked());
                tables.set(0, new Table(first.columns(), first.facts(), List.copyOf(questions)));
            }
        });
    }

    /**
     * What a table does not say itself is taken from the tables above it on the same sheet, and from what the first
     * table took from sheets without a table.
     */
    private static TitleFacts withOthers(TitleFacts own, ListLayout layout, List<Begun> before) {
        TitleFacts facts = own;
        for (int at = before.size() - 1; at >= 0; at--) {
            ListLayout other = before.get(at).columns().layout();
            if (other.grid().equals(layout.grid()) || !other.others().isEmpty()) {
                facts = facts.orOf(before.get(at).facts());
            }
        }
        return facts;
    }

    /** The days of a table where they are not those of the list. */
    private static Validity own(TitleFacts facts, TitleFacts list) {
        boolean sameFirst = facts.quotedOn() == null || facts.quotedOn().equals(list.quotedOn());
        var last = facts.untilFrom(facts.quotedOn());
        boolean sameLast = last == null || last.equals(list.untilFrom(list.quotedOn()));
        return sameFirst && sameLast ? Validity.UNKNOWN : new Validity(facts.quotedOn(), last);
    }

    private static void check(TitleFacts facts, ListLayout layout, Findings findings) {
        if (facts.quotedOn() != null
                && facts.validUntil() != null
                && facts.validUntil().isBefore(facts.quotedOn())) {
            findings.error(
                    layout.grid().origin(),
                    RowMessages.endBeforeBegin(
                            facts.validUntil().toString(), facts.quotedOn().toString()));
        }
    }
}
