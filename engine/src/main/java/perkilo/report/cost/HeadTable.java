package perkilo.report.cost;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import perkilo.costing.Head;
import perkilo.costing.RunCost;
import perkilo.report.part.RunTitle;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** The unit cost of each run, a column for each head; per kilogram for bulk. */
final class HeadTable {

    private final IdentityHashMap<RunCost, RunCells> cells = new IdentityHashMap<>();
    private final List<Column<RunCost>> byHead = new ArrayList<>();
    private final Column<RunCost> total;

    final Column<RunCost> run =
            Column.<RunCost>of("run", "Run").sentence(row -> title(cells(row))).look(Look.LABEL);

    /**
     * The columns.
     *
     * @param runs the cells of each run on the detail sheet
     * @param money how amounts are shown
     */
    HeadTable(List<RunCells> runs, NumberFormat money) {
        for (RunCells one : runs) {
            cells.put(one.cost(), one);
        }
        for (Head head : Head.values()) {
            byHead.add(Column.<RunCost>of(head.name(), head.words())
                    .formula(row -> requireNonNull(cells(row).heads().get(head)).over(per(cells(row))))
                    .format(money));
        }
        total = Column.<RunCost>of("total", "total")
                .formula(row -> cells(row).total().over(per(cells(row))))
                .format(money)
                .look(Look.TOTAL);
    }

    Table<RunCost> onSheet() {
        List<Column<RunCost>> columns = new ArrayList<>();
        columns.add(run);
        columns.addAll(byHead);
        columns.add(total);
        return new Table<>(columns);
    }

    /** The columns of the heads, in the order of the heads. */
    List<Column<RunCost>> byHead() {
        return byHead;
    }

    private static Expr per(RunCells run) {
        Expr units = run.making().units();
        return units == null ? run.making().output() : units;
    }

    private static List<ResultSheet.Part> title(RunCells run) {
        return RunTitle.of(run.cost().needs(), run.making(), run.making().units() == null ? " (per kg)" : "");
    }

    private RunCells cells(Row<RunCost> row) {
        return requireNonNull(cells.get(row.entry()));
    }
}
