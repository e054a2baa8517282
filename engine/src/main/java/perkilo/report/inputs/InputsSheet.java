package perkilo.report.inputs;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.origin.SeenTable;
import perkilo.report.inputs.Effects.Effect;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;
import perkilo.sheet.Sign;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/** Inputs as computed: what the engine read of every cell that matters, and how much of it the cells no longer hold. */
final class InputsSheet {

    static final String NAME = Report.INPUTS;

    private static final String CHANGED = Sign.ATTENTION + " Inputs changed since this was computed: ";
    private static final int NOTICE_ROW = 2;
    private static final int FIRST_COUNT = 3;
    private static final int COUNTS = 2;
    private static final int WIDTH = 16;
    private static final int WHERE_NAMED = 60;

    private final InputsWatch watch;
    private final List<Compared> columns = new ArrayList<>();
    private final SheetBuilder sheet = new SheetBuilder(NAME);
    private final IdentityHashMap<SeenTable.Part, String> thens = new IdentityHashMap<>();
    private final Expr notFollowed;
    private final Expr choice;
    private final Expr changed;
    private final List<Expr> ownCounts = new ArrayList<>();
    private final Expr wrong;

    private final Column<Compared> changes = Column.<Compared>of("changed", "Changed")
            .formula(row -> formula(changedOf(row.entry())))
            .format(NumberFormat.WHOLE)
            .width(WIDTH);
    private final Column<Compared> said = Column.<Compared>of("notFollowed", "Not followed")
            .formula(row -> row.entry().isSaid() ? row.ref(changes) : saidOf(row.entry()))
            .format(NumberFormat.WHOLE)
            .width(WIDTH);
    private final Column<Compared> chosen = Column.<Compared>of("choice", "May change the choice")
            .formula(row -> row.entry().isChoice() ? row.ref(changes) : null)
            .format(NumberFormat.WHOLE)
            .width(WIDTH);
    private final Table<Compared> table = Table.of(
            Column.<Compared>of("sheet", "Sheet")
                    .words(column -> column.table().sheet())
                    .link(InputsSheet::head)
                    .look(Look.LABEL)
                    .width(24),
            Column.<Compared>of("column", "Column").words(InputsSheet::name).width(24),
            changes.mark(Mark.where(ResultSheet.Condition.ABOVE_ZERO, Look.NOTICE)),
            said.mark(Mark.where(ResultSheet.Condition.ABOVE_ZERO, Look.WARNING)),
            chosen.mark(Mark.where(ResultSheet.Condition.ABOVE_ZERO, Look.NOTICE)),
            Column.<Compared>of("follows", "What follows a change")
                    .words(InputsSheet::follows)
                    .width(60));

    InputsSheet(InputsWatch watch, List<SeenTable> tables, Referenced referenced) {
        this.watch = watch;
        List<List<Compared>> ofTables = new ArrayList<>();
        for (SeenTable one : tables) {
            List<Compared> ofOne = new ArrayList<>();
            for (SeenTable.Part part : one.parts()) {
                Compared column = Compared.of(one, part, watch.effects(), referenced);
                if (Comparison.counts(column)) {
                    ofOne.add(column);
                }
            }
            columns.add(new Compared(one, null, Effect.BOTH, false, false));
            columns.addAll(ofOne);
            ofTables.add(ofOne);
        }
        sheet.title(0, NAME);
        sheet.hint(1, InputsMessages.explanation(watch.command()));
        int first = FIRST_COUNT + COUNTS + 2;
        int next = first + columns.size() + 2;
        for (int i = 0; i < tables.size(); i++) {
            next = block(tables.get(i), ofTables.get(i), next);
        }
        Placed<Compared> placed = table.at(sheet, first, columns);
        placed.write();
        placed.filter();
        sheet.freeze(0, 0).landscape();
        Placed<InputsSheet> totals = totals(placed);
        changed = totals.ref(0, all);
        notFollowed = totals.ref(0, allSaid);
        choice = totals.ref(0, allChosen);
        wrong = wrong();
        notice(placed);
    }

    /** Writes what else may be wrong, and returns the cell of the number of all that is. */
    private Expr wrong() {
        int place = totalsEnd;
        Expr sum = notFollowed.plus(choice);
        for (InputsWatch.Own own : watch.own()) {
            sheet.text(FIRST_COUNT, place, own.name(), Look.HEADER);
            Expr count = sheet.value(FIRST_COUNT + 1, place++, own.count(), NumberFormat.WHOLE, Look.PLAIN);
            ownCounts.add(count);
            sum = sum.plus(count);
        }
        sheet.text(FIRST_COUNT, place, "Said in all", Look.HEADER);
        return sheet.value(FIRST_COUNT + 1, place, sum, NumberFormat.WHOLE, Look.PLAIN);
    }

    private int totalsEnd;
    private final Column<InputsSheet> all = Column.of("changed", "Changed");
    private final Column<InputsSheet> allSaid = Column.of("notFollowed", "Not followed");
    private final Column<InputsSheet> allChosen = Column.of("choice", "May change the choice");

    private Placed<InputsSheet> totals(Placed<Compared> placed) {
        all.formula(row -> placed.sum(changes));
        allSaid.formula(row -> placed.sum(said));
        allChosen.formula(row -> placed.sum(chosen));
        Table<InputsSheet> sums = Table.of(
                Column.<InputsSheet>of("all", "All sheets")
                        .words(any -> "in all")
                        .look(Look.LABEL),
                Column.<InputsSheet>of("columns", "").words(any -> null),
                all,
                allSaid,
                allChosen);
        Placed<InputsSheet> line = sums.at(sheet, FIRST_COUNT, List.of(this)).write();
        totalsEnd = line.nextColumn();
        return line;
    }

    /** Writes what a table held, and returns the next row. */
    private int block(SeenTable one, List<Compared> ofOne, int row) {
        sheet.section(row, one.sheet(), new Origin("", one.sheet(), ""));
        int column = 0;
        int most = 0;
        Map<String, Integer> places = new LinkedHashMap<>();
        for (Compared compared : ofOne) {
            SeenTable.Part part = compared.part();
            List<Object> cells = part == null ? null : part.cells();
            if (part == null || cells == null) {
                continue;
            }
            String key = part.column() + " " + (one.kind().equals("Settings") ? "" : part.name());
            Integer known = places.get(key);
            int place = known == null ? column++ : known;
            places.putIfAbsent(key, place);
            if (known == null) {
                sheet.text(
                        row + 1,
                        place,
                        one.kind().equals("Settings") && cells.size() == 1 ? "Value" : part.name(),
                        Look.HEADER);
            }
            int from = row + 2 + part.firstRow() - Math.max(0, one.frame().headerRow() + 1);
            for (int i = 0; i < cells.size(); i++) {
                write(from + i, place, cells.get(i));
            }
            thens.put(
                    part, SheetNames.absolute(from, place) + ":" + SheetNames.absolute(from + cells.size() - 1, place));
            most = Math.max(most, from + cells.size());
        }
        return Math.max(row + 1, most) + 1;
    }

    private void write(int row, int column, Object cell) {
        if (cell instanceof BigDecimal number) {
            sheet.value(row, column, Expr.of(number), NumberFormat.GENERAL, Look.PLAIN);
        } else if (cell instanceof LocalDate day) {
            sheet.value(row, column, Expr.day(day), NumberFormat.DATE, Look.PLAIN);
        } else if (cell instanceof String words && !words.isEmpty()) {
            sheet.text(row, column, words, Look.PLAIN);
        }
    }

    private String changedOf(Compared column) {
        Comparison comparison = new Comparison(column.table());
        SeenTable.Part part = column.part();
        if (part == null) {
            return comparison.extent();
        }
        return part.sums() != null
                ? comparison.changedSums(part, part.sums())
                : comparison.changed(part, Objects.requireNonNull(thens.get(part)));
    }

    private @Nullable Expr saidOf(Compared column) {
        SeenTable.Part part = column.part();
        if (part == null || part.sums() != null || column.effect() == Effect.CHOICE) {
            return null;
        }
        String then = Objects.requireNonNull(thens.get(part));
        return formula(new Comparison(column.table()).notFollowed(column, part, then));
    }

    private static Expr formula(String formula) {
        return Expr.written(BigDecimal.ZERO, names -> formula);
    }

    private static Origin head(Compared column) {
        SeenTable.Frame frame = column.table().frame();
        SeenTable.Part part = column.part();
        int row = Math.max(0, part != null && part.rows() == 1 ? part.firstRow() : frame.headerRow());
        return Origin.ofCell("", column.table().sheet(), row, part == null ? frame.firstColumn() : part.column());
    }

    private static String name(Compared column) {
        SeenTable.Part part = column.part();
        return part == null ? "rows and headings" : part.name();
    }

    private static String follows(Compared column) {
        SeenTable.Part part = column.part();
        boolean onlyWords = part != null
                && part.cells() != null
                && !column.blanksFollow()
                && part.cells().stream().allMatch(cell -> cell instanceof String);
        String words = column.isSaid() || (onlyWords && column.effect() != Effect.CHOICE)
                ? "needs a new run"
                : column.effect() == Effect.CHOICE
                        ? "no figure depends on it; the purchase is not chosen again"
                        : column.isChoice()
                                ? "the figures follow numbers; the purchase is not chosen again"
                                : "the figures follow numbers";
        return part != null && part.sums() != null ? words + "; compared by its totals, as the table is long" : words;
    }

    /** Writes what the other sheets show. */
    private void notice(Placed<Compared> placed) {
        sheet.text(NOTICE_ROW, SheetBuilder.FIRST_COLUMN, "", Look.PLAIN);
        List<ResultSheet.Part> parts = new ArrayList<>();
        List<ResultSheet.Part> changedHere = new ArrayList<>();
        changedHere.add(new ResultSheet.Words(CHANGED));
        changedHere.add(new ResultSheet.Rounded(notFollowed, 0));
        changedHere.add(new ResultSheet.Words(", on"));
        changedHere.addAll(where(placed));
        changedHere.add(new ResultSheet.Words(". " + InputsMessages.runAgain(watch.command()) + " "));
        parts.add(new ResultSheet.Notice(notFollowed, "", changedHere));
        for (int i = 0; i < ownCounts.size(); i++) {
            parts.add(new ResultSheet.Notice(
                    ownCounts.get(i),
                    "",
                    List.of(
                            new ResultSheet.Words(
                                    Sign.ATTENTION + " " + watch.own().get(i).name() + ": "),
                            new ResultSheet.Rounded(ownCounts.get(i), 0),
                            new ResultSheet.Words(". " + watch.own().get(i).words() + " "))));
        }
        Expr onlyChoice = Expr.ifLess(Expr.of(0), notFollowed, Expr.of(0), choice);
        parts.add(new ResultSheet.Notice(
                onlyChoice,
                "",
                List.of(new ResultSheet.Words(Sign.ATTENTION + " " + InputsMessages.choice(watch.command())))));
        sheet.sentence(NOTICE_ROW, SheetBuilder.FIRST_COLUMN, Look.ANSWER, Origin.NONE, parts);
        sheet.markAttention(NOTICE_ROW, NOTICE_ROW, Look.ERROR);
    }

    /** The sheets on which something is not followed. */
    private List<ResultSheet.Part> where(Placed<Compared> placed) {
        Map<String, int[]> rows = new LinkedHashMap<>();
        for (int index = 0; index < columns.size(); index++) {
            int at = index;
            rows.computeIfAbsent(columns.get(index).table().sheet(), sheetName -> new int[] {at, at})[1] = index;
        }
        List<ResultSheet.Part> words = new ArrayList<>();
        int named = 0;
        for (Map.Entry<String, int[]> each : rows.entrySet()) {
            if (named++ < WHERE_NAMED) {
                int[] range = each.getValue();
                words.add(new ResultSheet.Notice(
                        placed.sum(said, range[0], range[1]),
                        "",
                        List.of(new ResultSheet.Words(" \"" + each.getKey() + "\""))));
            }
        }
        return words;
    }

    /** The second line of a sheet whose figures follow. */
    ResultSheet.Part notice(String words) {
        String cell = SheetNames.cell(NOTICE_ROW, SheetBuilder.FIRST_COLUMN);
        return new ResultSheet.Notice(besideBook(wrong), words, List.of(new ResultSheet.WordsOf(NAME, cell, "")));
    }

    /** The second line of a sheet with values that do not follow. */
    ResultSheet.Part fixed(String words) {
        return new ResultSheet.Notice(
                besideBook(changed),
                words,
                List.of(
                        new ResultSheet.Words(CHANGED),
                        new ResultSheet.Rounded(changed, 0),
                        new ResultSheet.Words(". " + InputsMessages.fixedHere(watch.command()))));
    }

    /** A cell of this sheet, which is only there beside the person's own sheets. */
    private static Expr besideBook(Expr cell) {
        return Expr.written(cell.value(), cell::formula);
    }

    ResultSheet sheet() {
        return sheet.build();
    }
}
