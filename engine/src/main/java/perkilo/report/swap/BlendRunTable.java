package perkilo.report.swap;

import java.util.List;
import perkilo.sheet.Look;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;
import perkilo.swaps.money.RunChange;

/** The table of what a blend changes at each run. */
final class BlendRunTable {

    private final Table<RunChange> table;

    /**
     * The table.
     *
     * @param currency the home currency
     */
    BlendRunTable(String currency) {
        RunColumns<RunChange> columns = new RunColumns<>(run -> run, currency, "");
        Column<RunChange> unitCostNow = columns.unitCostNow();
        Column<RunChange> unitCostThen = columns.unitCostThen();
        Column<RunChange> outlayNow = columns.outlayNow();
        Column<RunChange> outlayThen = columns.outlayThen();
        table = Table.of(
                columns.run().look(Look.LABEL),
                unitCostNow,
                unitCostThen,
                columns.unitCostChange(unitCostNow, unitCostThen),
                outlayNow,
                outlayThen,
                columns.outlayChange().formula(row -> row.ref(outlayThen).minus(row.ref(outlayNow))));
    }

    /** The table on a sheet. */
    Placed<RunChange> at(SheetBuilder sheet, int headRow, List<RunChange> runs) {
        return table.at(sheet, headRow, runs);
    }
}
