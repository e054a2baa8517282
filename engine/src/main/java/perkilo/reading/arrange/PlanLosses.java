package perkilo.reading.arrange;

import java.util.List;
import java.util.Map;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.schema.DemandSheet;
import perkilo.schema.RunsSheet;
import perkilo.xlsx.grid.Cell;

/** Tells where the losses belong that a person puts on a plan, on which they are not read. */
public final class PlanLosses {

    private PlanLosses() {}

    /**
     * Warns of each column of losses on a plan.
     *
     * @param tables as they are on the person's sheets
     */
    public static void check(List<FoundTable> tables, Findings findings) {
        for (FoundTable table : tables) {
            boolean plan =
                    table.schema().equals(DemandSheet.SCHEMA) || table.schema().equals(RunsSheet.SCHEMA);
            if (!plan || table.headerRow() < 0) {
                continue;
            }
            for (Map.Entry<Integer, Cell> cell :
                    table.grid().row(table.headerRow()).entrySet()) {
                boolean loss = SheetCells.isText(cell.getValue())
                        && SheetWords.isLoss(cell.getValue().text());
                if (loss && tables.stream().noneMatch(other -> reads(other, table, cell.getKey()))) {
                    findings.warning(
                            table.grid().origin(table.headerRow(), cell.getKey()),
                            ArrangeMessages.lossOnPlan(cell.getValue().text()));
                }
            }
        }
    }

    /** Whether a table on the same rows reads a column. */
    private static boolean reads(FoundTable other, FoundTable table, int column) {
        return other.grid().sheet().equals(table.grid().sheet())
                && other.headerRow() == table.headerRow()
                && other.columns().values().stream().anyMatch(place -> place.index() == column);
    }
}
