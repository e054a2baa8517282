package perkilo.cli;

import java.math.BigDecimal;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.costing.RunCost;
import perkilo.costing.UnitDecimals;
import perkilo.origin.Decimals;
import perkilo.units.Currencies;

/** Costs as a short table: a line for each run. */
final class CostTable {

    private static final List<String> HEADS =
            List.of("Run", "Bulk per kg", "Unit cost", "Cash per unit", "Outlay", "Stock left");

    private CostTable() {}

    /** The table of one book. */
    static TextTable of(CostOutcome.Costed costed) {
        String home = costed.book().settings().home().getCurrencyCode();
        TextTable table = new TextTable(withLast(HEADS, "(all in " + home + ")"));
        lines(costed).forEach(table::row);
        return table;
    }

    /** An empty table for several books. */
    static TextTable ofSeveral() {
        return new TextTable(withLast(HEADS, ""));
    }

    /** The lines of a book, a line for each run. */
    static List<List<String>> lines(CostOutcome.Costed costed) {
        int minor = Currencies.minorDigits(costed.book().settings().home());
        int ofUnits = UnitDecimals.of(costed.runs(), minor);
        return costed.runs().stream().map(run -> line(run, minor, ofUnits)).toList();
    }

    private static List<String> line(RunCost run, int minor, int ofUnits) {
        return List.of(
                run.needs().title(),
                Decimals.amount(run.bulkPerKg(), minor),
                run.unitCost().map(cost -> Decimals.amount(cost, ofUnits)).orElse("–"),
                run.cashPerUnit().map(cost -> Decimals.amount(cost, ofUnits)).orElse("–"),
                Decimals.amount(run.outlay(), minor),
                Decimals.amount(run.stockLeft(), minor),
                provenOrGap(run));
    }

    private static String provenOrGap(RunCost run) {
        if (run.purchase().proven()) {
            return "";
        }
        BigDecimal gap =
                run.purchase().cost().objective().subtract(run.purchase().bound());
        return "not proven cheapest: gap " + Decimals.amount(gap, 2);
    }

    private static String[] withLast(List<String> heads, String last) {
        String[] all = heads.toArray(new String[heads.size() + 1]);
        all[heads.size()] = last;
        return all;
    }
}
