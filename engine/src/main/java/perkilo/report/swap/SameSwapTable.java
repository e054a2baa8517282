package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.money.RunChange;
import perkilo.swaps.next.NextSteps;
import perkilo.swaps.next.SameSwap;

/** The table of swaps that can be made in several formulas: each run bought alone, and all of them together. */
public final class SameSwapTable {

    /**
     * A row: a run that is bought alone, all of those added up, or all of them bought together.
     *
     * @param swap what is swapped
     * @param alone the run; null for the other kinds of rows
     * @param of the runs that belong together
     * @param together whether they are bought together; false also for a run alone
     */
    record Entry(SameSwap swap, @Nullable RunChange alone, SameSwap.Rank of, boolean together) {

        boolean isSum() {
            return alone == null && !together;
        }

        BigDecimal now(Function<RunCost, BigDecimal> amount) {
            if (alone != null) {
                return amount.apply(alone.before());
            }
            return together ? amount.apply(of.now()) : sum(run -> amount.apply(run.before()));
        }

        BigDecimal then(Function<RunCost, BigDecimal> amount) {
            if (alone != null) {
                return amount.apply(alone.after());
            }
            return together ? amount.apply(of.then()) : sum(run -> amount.apply(run.after()));
        }

        private BigDecimal sum(Function<RunChange, BigDecimal> amount) {
            return of.alone().stream().map(amount).reduce(BigDecimal.ZERO, BigDecimal::add);
        }
    }

    private final Table<Entry> table;
    private final List<Entry> rows = new ArrayList<>();
    private final List<SameSwap> swaps;

    /** The swaps of an answer that can be made in several formulas. */
    public SameSwapTable(SwapOutcome.Found found, NextSteps next) {
        swaps = next.everywhere();
        for (SameSwap swap : swaps) {
            for (SameSwap.Rank rank : swap.ranks()) {
                rank.alone().forEach(run -> rows.add(new Entry(swap, run, rank, false)));
                rows.add(new Entry(swap, null, rank, false));
                rows.add(new Entry(swap, null, rank, true));
            }
        }
        NumberFormat money = NumberFormat.money(found.book().settings().home().getCurrencyCode(), 2);
        Column<Entry> outlayNow = amount("outlayNow", "Outlay now", entry -> entry.now(RunCost::outlay), money);
        Column<Entry> outlayThen = amount("outlayThen", "Outlay then", entry -> entry.then(RunCost::outlay), money);
        Column<Entry> usedNow = amount("usedNow", "Used up now", entry -> entry.now(RunCost::used), money);
        Column<Entry> usedThen = amount("usedThen", "Used up then", entry -> entry.then(RunCost::used), money);
        table = Table.of(
                Column.<Entry>of("swap", "Same swap")
                        .words(row -> row.swap().from().name() + " → "
                                + row.swap().to().name())
                        .look(Look.LABEL)
                        .width(52),
                Column.<Entry>of("run", "Bought")
                        .words(SameSwapTable::bought)
                        .look(row -> row.alone() == null ? Look.LABEL : Look.PLAIN)
                        .width(40),
                outlayNow,
                outlayThen,
                saving("outlaySaving", "Outlay saved", outlayNow, outlayThen, money),
                usedNow,
                usedThen,
                saving("usedSaving", "Used up saved", usedNow, usedThen, money));
    }

    private static String bought(Entry entry) {
        RunChange alone = entry.alone();
        if (alone != null) {
            return "alone: " + alone.before().needs().title();
        }
        return entry.together() ? "all together, in one purchase" : "each alone, added up";
    }

    private static Column<Entry> amount(
            String key, String heading, Function<Entry, BigDecimal> amount, NumberFormat money) {
        Column<Entry> column = Column.<Entry>of(key, heading).value(amount);
        return column.formula(row -> row.entry().isSum() ? sumAbove(row, column) : Expr.of(amount.apply(row.entry())))
                .format(money)
                .width(15);
    }

    private static Expr sumAbove(Row<Entry> row, Column<Entry> column) {
        int runs = row.entry().of().alone().size();
        return row.table().sum(column, row.index() - runs, row.index() - 1);
    }

    private static Column<Entry> saving(
            String key, String heading, Column<Entry> now, Column<Entry> then, NumberFormat money) {
        return Column.<Entry>of(key, heading)
                .value(entry -> orZero(now.valueOf(entry)).subtract(orZero(then.valueOf(entry))))
                .formula(row -> row.ref(now).minus(row.ref(then)))
                .format(money)
                .look(row -> row.together() ? Look.ANSWER : Look.KEY)
                .width(15);
    }

    private static BigDecimal orZero(@Nullable BigDecimal amount) {
        return amount == null ? BigDecimal.ZERO : amount;
    }

    /** Whether there is any. */
    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** The table on a sheet. */
    Placed<Entry> at(SheetBuilder sheet, int headRow) {
        return table.at(sheet, headRow, rows);
    }

    /** One row per swap, for JSON. */
    public Table.Filled<?> inJson() {
        Table<SameSwap.Rank> ranks = Table.of(
                Column.<SameSwap.Rank>of("runs", "")
                        .json(rank -> rank.alone().stream()
                                .map(run -> run.before().needs().title())
                                .toList()),
                Column.<SameSwap.Rank>of("outlaySavedAlone", "")
                        .json(rank -> rank.alone().stream()
                                .map(run -> run.outlay().negate())
                                .toList()),
                Column.<SameSwap.Rank>of("outlaySavedAloneTogether", "").json(SameSwap.Rank::savedAlone),
                Column.<SameSwap.Rank>of("outlaySavedInOnePurchase", "").json(SameSwap.Rank::savedTogether),
                Column.<SameSwap.Rank>of("proven", "")
                        .json(rank -> rank.now().purchase().proven()
                                && rank.then().purchase().proven()));
        return Table.of(
                        Column.<SameSwap>of("material", "")
                                .json(swap -> swap.from().name()),
                        Column.<SameSwap>of("candidate", "")
                                .json(swap -> swap.to().name()),
                        Column.<SameSwap>of("swaps", "").json(SameSwap::numbers),
                        Column.<SameSwap>of("formulas", "")
                                .json(swap -> swap.parts().stream()
                                        .map(part ->
                                                part.trial().before().formula().name())
                                        .toList()),
                        Column.<SameSwap>of("notIn", "")
                                .json(swap -> swap.left().stream()
                                        .collect(Collectors.toMap(
                                                SameSwap.Left::formula, SameSwap.Left::why, (one, two) -> one))),
                        Column.<SameSwap>of("ranks", "").json(swap -> ranks.with(swap.ranks())))
                .with(swaps);
    }
}
