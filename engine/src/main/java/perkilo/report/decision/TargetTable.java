package perkilo.report.decision;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import perkilo.decision.TargetCost;
import perkilo.decision.TargetMove;
import perkilo.model.Product;
import perkilo.origin.Decimals;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** What a unit may cost, what it costs, and what would bring it there: a row for each run. */
public final class TargetTable {

    private static final int WIDTH = 12;
    private static final int DIGITS = 2;

    private final Column<TargetCost> product = Column.<TargetCost>of("product", "Product")
            .words(one -> one.cost().needs().name())
            .look(Look.LABEL)
            .width(24)
            .link(one -> one.targetRetail().origin())
            .json()
            .terminal("Run", one -> one.cost().needs().title());

    private final Column<TargetCost> units = Column.<TargetCost>of("units", "Units")
            .value(one -> one.cost().needs().units())
            .format(NumberFormat.WHOLE)
            .width(8)
            .json();

    private final Column<TargetCost> retail;
    private final Column<TargetCost> allowed;
    private final Column<TargetCost> unitCost;
    private final Column<TargetCost> gap;
    private final Column<TargetCost> rawMaterial;
    private final Column<TargetCost> allowedRawMaterial;
    private final Column<TargetCost> moves;
    private final Column<TargetCost> after;
    private final Column<TargetCost> cash;
    private final Column<TargetCost> cashAfter;

    private final Column<TargetCost> reached =
            Column.<TargetCost>of("reached", "").json(TargetCost::isReached).notOnSheet();

    private final Column<TargetCost> planned = Column.<TargetCost>of("setsPlanned", "")
            .json(one -> one.sets().planned())
            .notOnSheet();

    private final Column<TargetCost> possible = Column.<TargetCost>of("setsPossible", "")
            .json(one -> one.sets().possible())
            .notOnSheet();

    private final Column<TargetCost> chosen = Column.<TargetCost>of("moves", "")
            .json(one -> MOVES.with(one.chosen()))
            .notOnSheet();

    private final Column<TargetCost> candidates = Column.<TargetCost>of("candidates", "")
            .json(one -> MOVES.with(one.candidates()))
            .notOnSheet();

    private static final Table<TargetMove> MOVES = Table.of(
            Column.<TargetMove>of("what", "").words(TargetMove::what).json(),
            Column.<TargetMove>of("kind", "")
                    .json(move -> move.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ')),
            Column.<TargetMove>of("effect", "").json(TargetMove::effect),
            Column.<TargetMove>of("cash", "").json(move -> move.alone().cash()),
            Column.<TargetMove>of("cautions", "").json(TargetMove::cautions));

    /**
     * The columns.
     *
     * @param home code of the home currency
     */
    public TargetTable(String home) {
        NumberFormat fine = NumberFormat.money(home, 4);
        NumberFormat money = NumberFormat.money(home, 2);
        retail = Column.<TargetCost>of("targetRetail", "Target retail price")
                .value(one -> one.targetRetail().value())
                .formula(row -> Expr.input(row.entry().targetRetail()))
                .format(money)
                .width(WIDTH)
                .json();
        allowed = Column.<TargetCost>of("allowedUnitCost", "Allowed unit cost")
                .value(TargetCost::allowed)
                .formula(this::allowedOf)
                .format(fine)
                .look(Look.KEY)
                .width(WIDTH)
                .json()
                .terminal("Allowed", one -> amount(one.allowed()));
        unitCost = Column.<TargetCost>of("unitCost", "Unit cost")
                .value(TargetCost::unitCost)
                .format(fine)
                .width(WIDTH)
                .json()
                .terminal("Unit cost", one -> amount(one.unitCost()));
        gap = Column.<TargetCost>of("gap", "Gap")
                .value(TargetCost::gap)
                .formula(row -> row.ref(unitCost()).minus(row.ref(allowed())))
                .format(fine)
                .width(WIDTH)
                .json()
                .terminal("Gap", one -> amount(one.gap()));
        rawMaterial = Column.<TargetCost>of("rawMaterialPerKg", "Raw material per kg")
                .value(one -> one.cost().rawMaterialPerKg())
                .format(fine)
                .width(WIDTH)
                .json();
        allowedRawMaterial = Column.<TargetCost>of("allowedRawMaterialPerKg", "Allowed raw material per kg")
                .value(TargetCost::allowedRawMaterialPerKg)
                .words(one -> one.allowedRawMaterialPerKg() == null ? "not enough alone" : null)
                .wordsLook(Look.HINT)
                .format(fine)
                .width(WIDTH)
                .json(TargetCost::allowedRawMaterialPerKg);
        moves = Column.<TargetCost>of("what", "What brings it there with the least cash")
                .words(TargetTable::words)
                .width(44);
        after = Column.<TargetCost>of("unitCostAfter", "Unit cost then")
                .value(TargetCost::unitCostAfter)
                .format(fine)
                .width(WIDTH)
                .json()
                .terminal("Then", one -> amount(one.unitCostAfter()));
        cash = Column.<TargetCost>of("cash", "Cash for the run")
                .value(one -> one.cost().cash())
                .format(money)
                .width(WIDTH)
                .json();
        cashAfter = Column.<TargetCost>of("cashAfter", "Cash then")
                .value(one -> one.after().cash())
                .format(money)
                .width(WIDTH)
                .json()
                .terminal("(all in " + home + ")", TargetTable::words);
        gap.mark(Mark.belowZero(gap, Look.PLAIN));
    }

    private Column<TargetCost> unitCost() {
        return unitCost;
    }

    private Column<TargetCost> allowed() {
        return allowed;
    }

    /** The table as the sheet and the terminal show it. */
    public Table<TargetCost> onSheet() {
        return Table.of(
                product,
                units,
                retail,
                allowed,
                unitCost,
                gap,
                rawMaterial,
                allowedRawMaterial,
                after,
                cash,
                cashAfter,
                moves);
    }

    /** The runs as JSON shows them. */
    public Table.Filled<TargetCost> inJson(List<TargetCost> targets) {
        return Table.of(
                        product,
                        units,
                        retail,
                        allowed,
                        unitCost,
                        gap,
                        rawMaterial,
                        allowedRawMaterial,
                        chosen,
                        after,
                        reached,
                        cash,
                        cashAfter,
                        planned,
                        possible,
                        candidates)
                .with(targets);
    }

    private Expr allowedOf(Row<TargetCost> row) {
        Product made = row.entry().cost().needs().product();
        if (made == null || made.targetMargin() == null) {
            return Expr.of(row.entry().allowed());
        }
        Expr one = Expr.of(1);
        return row.ref(retail)
                .over(one.plus(Expr.input(made.vat())))
                .times(one.minus(Expr.input(made.retailerMargin())))
                .times(one.minus(Expr.input(made.distributorMargin())))
                .times(one.minus(Expr.input(made.targetMargin())));
    }

    private static String words(TargetCost one) {
        if (one.isMet()) {
            return "reached as it is";
        }
        String set =
                String.join(" + ", one.chosen().stream().map(TargetMove::what).toList());
        if (one.isReached()) {
            return set;
        }
        return set.isEmpty() ? "nothing was found" : "not reached; the most is: " + set;
    }

    private static String amount(@Nullable BigDecimal value) {
        return value == null ? "" : Decimals.amount(value, DIGITS);
    }
}
