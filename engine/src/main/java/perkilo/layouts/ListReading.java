package perkilo.layouts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.offers.Validity;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;

/**
 * A whole list, with all its tables and sheets.
 *
 * @param lines its lines
 * @param facts what the lines around its first table say; the days of other tables are in their own lines
 * @param columns what the columns of each table are used for
 * @param questions what is open, each once
 * @param notRead columns, lines and sheets that are not used
 */
public record ListReading(
        List<ListLine> lines,
        TitleFacts facts,
        List<ListColumns> columns,
        List<Question> questions,
        List<NotRead> notRead) {

    /**
     * Reads all tables of a list.
     *
     * @param layouts at least one
     */
    public static ListReading of(List<ListLayout> layouts, Mapping mapping, Findings findings) {
        List<ListColumns> columns = new ArrayList<>();
        List<TitleFacts> facts = new ArrayList<>();
        List<ListDates> dates = new ArrayList<>();
        Map<String, Question> questions = new LinkedHashMap<>();
        Set<NotRead> notRead = new LinkedHashSet<>();
        for (ListLayout layout : layouts) {
            ListColumns one = ListColumns.of(layout, mapping);
            List<LooseLine> loose = LooseLine.of(one);
            ListDates ofTable = TitleFacts.dates(mapping, one, loose);
            TitleFacts own = TitleFacts.of(loose, ofTable, mapping, findings);
            dates.add(ofTable);
            columns.add(one);
            facts.add(above(own, layout, layouts, facts));
            add(questions, one.questions());
            add(questions, own.questions());
            notRead.addAll(one.notRead());
            notRead.addAll(own.notRead());
        }
        TitleFacts first = facts.get(0);
        for (TitleFacts other : facts) {
            first = first.orOf(other);
        }
        List<ListLine> lines = new ArrayList<>();
        for (int at = 0; at < layouts.size(); at++) {
            ListSense sense = ListSense.of(columns.get(at), mapping);
            ListRows rows = new ListRows(
                    columns.get(at),
                    mapping,
                    sense,
                    facts.get(at),
                    own(facts.get(at), first),
                    dates.get(at),
                    findings);
            lines.addAll(rows.read());
            add(questions, sense.questions());
            add(questions, rows.questions());
        }
        layouts.get(0).others().forEach(grid -> {
            if (!grid.rows().isEmpty()) {
                notRead.add(new NotRead(grid.origin(), grid.sheet(), NotReadMessages.sheetNotUnderstood()));
            }
        });
        check(first, layouts.get(0), findings);
        return new ListReading(lines, first, columns, List.copyOf(questions.values()), List.copyOf(notRead));
    }

    /** What a table does not say itself is taken from the tables above it on the same sheet. */
    private static TitleFacts above(
            TitleFacts own, ListLayout layout, List<ListLayout> layouts, List<TitleFacts> before) {
        TitleFacts facts = own;
        for (int at = before.size() - 1; at >= 0; at--) {
            if (layouts.get(at).grid().equals(layout.grid())) {
                facts = facts.orOf(before.get(at));
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
            Origin sheet = layout.grid().origin();
            findings.error(
                    sheet,
                    RowMessages.endBeforeBegin(
                            facts.validUntil().toString(), facts.quotedOn().toString()));
        }
    }

    private static void add(Map<String, Question> all, List<Question> more) {
        more.forEach(question -> all.putIfAbsent(question.field() + "\n" + question.key(), question));
    }
}
