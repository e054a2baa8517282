package perkilo.report.cost;

import java.util.ArrayList;
import java.util.List;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.origin.Origin;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.Sign;
import perkilo.sheet.table.Placed;

/** Price ladder: the table with its title. */
final class LadderSheet {

    private static final String NAME = "Price ladder";
    private static final int HEADS = 4;

    private LadderSheet() {}

    static ResultSheet of(String home, List<RunCells> runs, List<RunAnswer> incomplete) {
        SheetBuilder sheet = new SheetBuilder(NAME).freeze(HEADS + 1, 1).landscape();
        sheet.title(0, NAME);
        LadderTable ladder = new LadderTable(home, runs);
        sheet.hint(
                1,
                "Upwards: wholesale = unit cost ÷ (1 − margin), "
                        + (ladder.hasDistributor()
                                ? "distributor's price = wholesale ÷ (1 − distributor margin), retail without VAT ="
                                        + " distributor's price ÷ (1 − retailer margin)."
                                : "retail without VAT = wholesale ÷ (1 − retailer margin).")
                        + " Downwards: from the target retail price to the margin that is left. All in " + home + ".");
        sheet.hint(
                2,
                "Break-even and profit: at the target retail price if there is one, else at the target margin. Profit per unit ="
                        + " wholesale − unit cost.");
        Placed<RunCost> table = ladder.onSheet().at(sheet, HEADS, priced(runs)).write();
        if (table.rows().isEmpty()) {
            sheet.hint(
                    table.next(),
                    incomplete.isEmpty()
                            ? "No product has a target margin or a target retail price."
                            : "No complete run has a target margin or a target retail price.");
        }
        int next = table.next() + 2;
        for (RunAnswer answer : incomplete) {
            String words = Sign.ATTENTION + " " + answer.title() + ": " + answer.lacks(DetailSheet.NAMED);
            Origin first = answer.missing().get(0).origin();
            sheet.text(next++, SheetBuilder.FIRST_COLUMN, words, Look.ERROR, first);
        }
        return sheet.build();
    }

    private static List<RunCost> priced(List<RunCells> runs) {
        List<RunCost> priced = new ArrayList<>();
        for (RunCells run : runs) {
            if (run.unitCost() != null && run.cost().ladder() != null) {
                priced.add(run.cost());
            }
        }
        return priced;
    }
}
