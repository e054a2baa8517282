package perkilo.cli;

import java.util.ArrayList;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.report.cost.RunTable;

/** A short table of costs for the terminal, with a line for each run. */
final class CostTable {

    private CostTable() {}

    /** The table of one book. */
    static TextTable of(CostOutcome.Costed costed) {
        return TextTable.of(new RunTable(costed).onTerminal());
    }

    /** An empty table for several books. */
    static TextTable ofSeveral() {
        List<String> heads = new ArrayList<>(RunTable.ON_TERMINAL);
        heads.add("");
        return new TextTable(heads.toArray(String[]::new));
    }

    /** The lines of a book, a line for each run. */
    static List<List<String>> lines(CostOutcome.Costed costed) {
        return of(costed).lines();
    }
}
