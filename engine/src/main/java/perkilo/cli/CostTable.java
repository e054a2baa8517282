package perkilo.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.costing.RunAnswer;
import perkilo.report.cost.RunTable;

/** A short table of costs for the terminal, with a line for each run. */
final class CostTable {

    private CostTable() {}

    /** The table of one book. */
    static TextTable of(CostOutcome.Costed costed) {
        RunTable columns = new RunTable(costed);
        TextTable table = TextTable.of(columns.onTerminal().table().with(List.of()));
        Iterator<List<String>> complete =
                TextTable.of(columns.onTerminal()).lines().iterator();
        for (RunAnswer answer : costed.answers()) {
            table.row(answer.isComplete() ? complete.next() : incomplete(answer));
        }
        return table;
    }

    /** The line of a run that is not complete: no figures, and what is missing. */
    private static List<String> incomplete(RunAnswer answer) {
        List<String> cells = new ArrayList<>(Collections.nCopies(RunTable.ON_TERMINAL.size(), "–"));
        cells.set(0, answer.title());
        cells.add("not complete: " + String.join(", ", answer.missingNames()));
        return cells;
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
