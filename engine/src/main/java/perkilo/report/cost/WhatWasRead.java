package perkilo.report.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.origin.Account;
import perkilo.origin.Account.Entry;
import perkilo.origin.Account.Fate;
import perkilo.origin.Account.Subject;
import perkilo.origin.Origin;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** What was read: what became of each sheet, column, group of rows and line of the person's files. */
public final class WhatWasRead {

    private static final String NAME = "What was read";
    private static final int HEADS = 3;

    private static final Table<Entry> TABLE = Table.of(
            Column.<Entry>of("file", "File or sheet").words(WhatWasRead::tab).width(24),
            Column.<Entry>of("where", "Where")
                    .words(entry -> entry.place().where())
                    .link(Entry::place)
                    .width(26),
            Column.<Entry>of("what", "What")
                    .words(entry -> entry.subject().word())
                    .look(entry -> isWhole(entry) ? Look.LABEL : Look.PLAIN)
                    .width(10),
            Column.<Entry>of("text", "In the file").words(Entry::text).width(34),
            Column.<Entry>of("fate", "Became")
                    .words(entry -> entry.fate().words())
                    .look(entry -> entry.fate() == Fate.NOT_UNDERSTOOD ? Look.WARNING : Look.PLAIN)
                    .width(16),
            Column.<Entry>of("as", "Read as").words(Entry::as).width(24),
            Column.<Entry>of("rows", "Rows")
                    .value(entry -> counts(entry) ? BigDecimal.valueOf(entry.rows()) : null)
                    .format(NumberFormat.WHOLE)
                    .width(8),
            Column.<Entry>of("why", "Why, or what to do").words(Entry::why).width(90));

    /** One column or group of rows, for JSON. */
    private static final Table<Entry> PARTS = Table.of(
            Column.<Entry>of("where", "").json(entry -> entry.place().where()),
            Column.<Entry>of("what", "").json(entry -> entry.subject().word().toLowerCase(java.util.Locale.ROOT)),
            Column.<Entry>of("text", "").json(Entry::text),
            Column.<Entry>of("fate", "").json(entry -> entry.fate().words()),
            Column.<Entry>of("as", "").json(entry -> entry.isRead() ? entry.as() : null),
            Column.<Entry>of("rows", "").json(Entry::rows),
            Column.<Entry>of("why", "").json(entry -> entry.why().isEmpty() ? null : entry.why()));

    /** Tables, and sheets without one, for JSON. */
    public static final Table<Account.Group> JSON = Table.of(
            Column.<Account.Group>of("file", "")
                    .json(group -> group.whole().place().file()),
            Column.<Account.Group>of("sheet", "")
                    .json(group -> group.whole().place().sheet()),
            Column.<Account.Group>of("table", "")
                    .json(group -> group.whole().subject() == Subject.TABLE
                            ? group.whole().place().where()
                            : null),
            Column.<Account.Group>of("fate", "")
                    .json(group -> group.whole().fate().words()),
            Column.<Account.Group>of("as", "")
                    .json(group -> group.whole().isRead() ? group.whole().as() : null),
            Column.<Account.Group>of("rows", "").json(group -> group.whole().rows()),
            Column.<Account.Group>of("why", "")
                    .json(group ->
                            group.whole().why().isEmpty() ? null : group.whole().why()),
            Column.<Account.Group>of("columnsNotRead", "").json(Account.Group::columnsNotRead),
            Column.<Account.Group>of("parts", "").json(group -> PARTS.with(group.parts())));

    private WhatWasRead() {}

    /**
     * The sheet for an account; empty if nothing was read from files. Results of earlier runs are left out, so that a
     * second run writes the same.
     */
    public static Optional<ResultSheet> of(Account account) {
        if (account.entries().isEmpty()) {
            return Optional.empty();
        }
        SheetBuilder sheet = new SheetBuilder(NAME).freeze(HEADS + 1, 0).landscape();
        sheet.title(0, NAME);
        sheet.answer(1, answer(account));
        List<Entry> shown = account.entries().stream()
                .filter(entry -> entry.subject() != Subject.RESULT)
                .toList();
        TABLE.at(sheet, HEADS, shown).write().filter();
        return Optional.of(sheet.build());
    }

    /** Adds the sheet for an account, if there is one, to sheets of results. */
    public static void add(List<ResultSheet> sheets, Account account) {
        of(account).ifPresent(sheets::add);
    }

    private static String answer(Account account) {
        Map<Fate, Integer> counts = new LinkedHashMap<>();
        account.entries().stream()
                .filter(entry -> entry.subject() == Subject.TABLE || entry.fate() == Fate.NOT_UNDERSTOOD)
                .forEach(entry -> counts.merge(entry.fate(), 1, Integer::sum));
        int unclear = counts.getOrDefault(Fate.NOT_UNDERSTOOD, 0);
        List<String> parts = new ArrayList<>();
        parts.add(perkilo.origin.Counted.of(counts.getOrDefault(Fate.READ, 0), "table") + " read");
        parts.add(
                unclear == 0
                        ? "everything else is not needed"
                        : perkilo.origin.Counted.of(unclear, "part") + " not understood (marked below)");
        return String.join("; ", parts) + ".";
    }

    private static boolean isWhole(Entry entry) {
        return entry.subject() != Subject.COLUMN && entry.subject() != Subject.ROWS && entry.subject() != Subject.CELLS;
    }

    /** Whether its rows are worth showing: those of a column are the table's. */
    private static boolean counts(Entry entry) {
        return entry.rows() > 0 && entry.subject() != Subject.COLUMN;
    }

    private static String tab(Entry entry) {
        Origin place = entry.place();
        return place.sheet().isEmpty() ? place.file() : place.sheet();
    }
}
