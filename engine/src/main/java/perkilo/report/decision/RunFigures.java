package perkilo.report.decision;

import java.util.List;
import perkilo.costing.Head;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.ResultSheet;

/** The cells of a run that sheets to decide by refer to. Amounts are in home currency. */
public interface RunFigures {

    /** The run. */
    RunCost cost();

    /** The run's title, with its live units or kilograms. */
    List<ResultSheet.Part> title();

    /** The cell that has everything about the run. */
    Origin origin();

    /** Cost of one unit, or of one kilogram of bulk that is not filled. */
    Expr ofOne();

    /** Units, or the kilograms that leave the kettle. */
    Expr measure();

    /** What was used and wasted of an item. */
    Expr counted(ItemCost item);

    /** A head, for the whole run. */
    Expr head(Head head);

    /** The part of an item's cost, used and wasted, that moves with its price. */
    Expr withPrice(ItemCost item);

    /**
     * The part of an item's cost, used and wasted, that moves with the value of a currency.
     *
     * @param code of the currency, ISO 4217
     */
    Expr withCurrency(ItemCost item, String code);
}
