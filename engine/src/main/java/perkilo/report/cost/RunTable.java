package perkilo.report.cost;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CarbonFootprint;
import perkilo.costing.CostOutcome;
import perkilo.costing.FillTarget;
import perkilo.costing.Head;
import perkilo.costing.ItemCost;
import perkilo.costing.Purchase;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.costing.UnitDecimals;
import perkilo.origin.Decimals;
import perkilo.report.part.Inputs;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;
import perkilo.units.Conversion;
import perkilo.units.Currencies;

/** The cost of each run: a row on the summary, an object in JSON, a line on the terminal. */
public final class RunTable {

    private static final String RUN = "Run";
    private static final String BULK_PER_KG = "Bulk per kg";
    private static final String UNIT_COST = "Unit cost";
    private static final String CASH_PER_UNIT = "Cash per unit";
    private static final String OUTLAY = "Outlay";
    private static final String STOCK_LEFT = "Stock left";

    /** The headings of the terminal's table except the last, which names the currency. */
    public static final List<String> ON_TERMINAL =
            List.of(RUN, BULK_PER_KG, UNIT_COST, CASH_PER_UNIT, OUTLAY, STOCK_LEFT);

    private static final int DECIMALS = 2;
    private static final int WIDTH = 13;
    private static final BigDecimal GRAMS = new BigDecimal(1000);

    private final CostOutcome.Costed costed;
    private final CurrencyUnit home;
    private final int unitDecimals;
    private final int minor;
    private final int minorOfUnits;
    private final IdentityHashMap<RunCost, RunCells> cells = new IdentityHashMap<>();
    private final Map<String, Conversion> currencies = new LinkedHashMap<>();

    final Column<RunCost> run = Column.<RunCost>of("run", RUN)
            .words(cost -> cost.needs().name())
            .look(Look.LABEL)
            .link(cost -> cells(cost).title())
            .width(30)
            .terminal(cost -> cost.needs().title());

    final Column<RunCost> product = Column.<RunCost>of("product", "")
            .json(cost -> cost.needs().product() == null
                    ? null
                    : cost.needs().product().name())
            .notOnSheet();

    final Column<RunCost> formula = Column.<RunCost>of("formula", "")
            .json(cost -> cost.needs().formula().name())
            .notOnSheet();

    final Column<RunCost> units = Column.<RunCost>of("units", "Units")
            .value(cost -> cost.needs().units())
            .formula(live(cell -> cell.making().units()))
            .format(NumberFormat.WHOLE)
            .width(10)
            .json();

    final Column<RunCost> batches = Column.<RunCost>of("batches", "Batches")
            .value(cost -> BigDecimal.valueOf(cost.needs().batches().count()))
            .formula(live(cell -> cell.making().batches()))
            .format(NumberFormat.WHOLE)
            .width(9)
            .json(cost -> cost.needs().batches().count());

    final Column<RunCost> bulk = Column.<RunCost>of("bulkKg", "Bulk made, kg")
            .value(cost -> cost.needs().batches().output())
            .formula(live(cell -> cell.making().output()))
            .format(new NumberFormat("#,##0.00"))
            .width(12);

    final Column<RunCost> batchKg = Column.<RunCost>of("batchKg", "")
            .value(cost -> cost.needs().batches().batchKg())
            .json()
            .notOnSheet();

    final Column<RunCost> bulkOverKg = Column.<RunCost>of("bulkOverKg", "")
            .value(cost -> cost.needs().batches().over())
            .json()
            .notOnSheet();

    final Column<RunCost> targetFillG = Column.<RunCost>of("targetFillG", "")
            .value(RunTable::targetFillG)
            .json()
            .notOnSheet();

    final Column<RunCost> rawMaterialPerKg = money("rawMaterialPerKg", "Raw material per kg")
            .value(RunCost::rawMaterialPerKg)
            .formula(live(cell -> cell.bulk().rawMaterial()))
            .json(cost -> inCurrencies(cost.rawMaterialPerKg()));

    final Column<RunCost> bulkPerKg = money("bulkPerKg", BULK_PER_KG)
            .value(RunCost::bulkPerKg)
            .formula(live(cell -> cell.bulk().made()))
            .json(cost -> inCurrencies(cost.bulkPerKg()))
            .terminal(cost -> amount(cost.bulkPerKg()));

    final Column<RunCost> unitCost = money("unitCost", UNIT_COST)
            .value(cost -> cost.unitCost().orElse(null))
            .formula(live(RunCells::unitCost))
            .look(Look.KEY)
            .json(cost -> inCurrencies(cost.unitCost().orElse(null)))
            .terminal(cost -> unitAmount(cost.unitCost().orElse(null)));

    final Column<RunCost> cashPerUnit = money("cashPerUnit", CASH_PER_UNIT)
            .value(cost -> cost.cashPerUnit().orElse(null))
            .formula(live(RunCells::cashPerUnit))
            .json(cost -> inCurrencies(cost.cashPerUnit().orElse(null)))
            .terminal(cost -> unitAmount(cost.cashPerUnit().orElse(null)));

    final Column<RunCost> outlay = money("outlay", "Outlay for items")
            .value(RunCost::outlay)
            .formula(live(cell -> cell.cash().outlay()))
            .json(cost -> inCurrencies(cost.outlay()))
            .terminal(OUTLAY, cost -> amount(cost.outlay()));

    final Column<RunCost> used =
            Column.<RunCost>of("used", "").value(RunCost::used).json().notOnSheet();

    private final Column<RunCost> cash =
            Column.<RunCost>of("cash", "").value(RunCost::cash).json().notOnSheet();

    private final Column<RunCost> oneOffCosts =
            Column.<RunCost>of("oneOffCosts", "").value(RunCost::oneOffs).json().notOnSheet();

    final Column<RunCost> stockLeft = money("stockLeft", STOCK_LEFT)
            .value(RunCost::stockLeft)
            .formula(live(cell -> cell.cash().stockLeft()))
            .json()
            .terminal(cost -> amount(cost.stockLeft()));

    final Column<RunCost> wasted = money("wasted", "Wasted")
            .value(RunCost::wasted)
            .formula(live(cell -> cell.cash().wasted()))
            .json();

    /** On the sheet only if any material has a footprint. */
    final Column<RunCost> carbon = Column.<RunCost>of("carbonPerUnit", "Raw materials, kg CO2e per unit")
            .value(cost -> CarbonFootprint.of(cost).perUnit(cost.needs().units()))
            .formula(this::carbonOf)
            .words(RunTable::unknownFootprints)
            .wordsLook(Look.HINT)
            .format(NumberFormat.QUANTITY)
            .width(32)
            .json(cost -> CarbonFootprint.of(cost).perUnit(cost.needs().units()));

    final Column<RunCost> carbonUnknown = Column.<RunCost>of("carbonUnknown", "")
            .json(cost -> CarbonFootprint.of(cost).unknown())
            .notOnSheet();

    private final Column<RunCost> complete =
            Column.<RunCost>of("complete", "").json(cost -> true).notOnSheet();

    private final Column<RunCost> missing =
            Column.<RunCost>of("missing", "").json(cost -> List.of()).notOnSheet();

    final Column<RunCost> heads =
            Column.<RunCost>of("heads", "").json(RunTable::byHead).notOnSheet();

    final Column<RunCost> ladder =
            Column.<RunCost>of("ladder", "").json(LadderTable::inJson).notOnSheet();

    final Column<RunCost> items = Column.<RunCost>of("items", "")
            .json(cost -> new ItemTable(cost).inJson())
            .notOnSheet();

    final Column<RunCost> plan =
            Column.<RunCost>of("plan", "").json(RunTable::plan).notOnSheet();

    final Column<RunCost> gap = Column.<RunCost>of("gap", "").notOnSheet();

    /** The columns for JSON and the terminal only, without cells. */
    public RunTable(CostOutcome.Costed costed) {
        this(costed, List.of());
    }

    /**
     * The columns.
     *
     * @param blocks the cells of each run on the detail sheet
     */
    RunTable(CostOutcome.Costed costed, List<RunCells> blocks) {
        this.costed = costed;
        this.home = costed.book().settings().home();
        this.unitDecimals = UnitDecimals.of(costed.runs(), DECIMALS);
        this.minor = Currencies.minorDigits(home);
        this.minorOfUnits = UnitDecimals.of(costed.runs(), minor);
        for (RunCells block : blocks) {
            cells.put(block.cost(), block);
        }
        currencies.put(home.getCurrencyCode(), new Conversion(home, home, List.of()));
        for (CurrencyUnit other : costed.book().settings().reportCurrencies()) {
            currencies.put(other.getCurrencyCode(), costed.market().conversion(home, other));
        }
        NumberFormat money = NumberFormat.money(home.getCurrencyCode(), DECIMALS);
        for (Column<RunCost> one : List.of(rawMaterialPerKg, bulkPerKg, outlay, stockLeft, wasted)) {
            one.format(money);
        }
        unitCost.format(unitMoney(home));
        cashPerUnit.format(unitMoney(home));
        gap.terminal("(all in " + home.getCurrencyCode() + ")", RunTable::gap);
        stockLeft.mark(Mark.belowZero(stockLeft, Look.ERROR));
    }

    /** The format of a cost per unit. */
    NumberFormat unitMoney(CurrencyUnit currency) {
        return NumberFormat.money(currency.getCurrencyCode(), unitDecimals);
    }

    /** The number of decimals of a cost per unit. */
    int unitDecimals() {
        return unitDecimals;
    }

    /** The table for the summary. */
    Table<RunCost> onSheet() {
        List<Column<RunCost>> columns = new ArrayList<>(List.of(
                run,
                units,
                batches,
                bulk,
                rawMaterialPerKg,
                bulkPerKg,
                unitCost,
                cashPerUnit,
                outlay,
                stockLeft,
                wasted));
        for (CurrencyUnit currency : costed.book().settings().reportCurrencies()) {
            columns.add(unitCostIn(currency));
        }
        if (isAnyFootprintTyped()) {
            columns.add(carbon);
        }
        return new Table<>(columns);
    }

    /** The runs for JSON. */
    public Table.Filled<RunCost> inJson() {
        return Table.of(
                        product,
                        formula,
                        units,
                        batches,
                        batchKg,
                        bulkOverKg,
                        targetFillG,
                        rawMaterialPerKg,
                        bulkPerKg,
                        unitCost,
                        cashPerUnit,
                        outlay,
                        used,
                        wasted,
                        stockLeft,
                        cash,
                        oneOffCosts,
                        heads,
                        ladder,
                        items,
                        plan,
                        carbon,
                        carbonUnknown,
                        complete,
                        missing)
                .with(costed.runs());
    }

    /** The runs that are not complete, for JSON; the table above holds the others. */
    public Table<RunAnswer> incompleteInJson() {
        return incomplete(List.of()).inJson();
    }

    /**
     * The columns of runs that are not complete.
     *
     * @param blocks the cells of each on the detail sheet; none for JSON
     */
    IncompleteTable incomplete(List<PartCells> blocks) {
        return new IncompleteTable(home.getCurrencyCode(), this::inCurrencies, blocks);
    }

    /** The runs for the terminal. */
    public Table.Filled<RunCost> onTerminal() {
        return columnsOnTerminal().with(costed.runs());
    }

    private Table<RunCost> columnsOnTerminal() {
        return Table.of(run, bulkPerKg, unitCost, cashPerUnit, outlay, stockLeft, gap);
    }

    private Column<RunCost> unitCostIn(CurrencyUnit currency) {
        return Column.<RunCost>of(
                        "unitCost " + currency.getCurrencyCode(), "Unit cost in " + currency.getCurrencyCode())
                .formula(row -> in(currency, row))
                .format(unitMoney(currency))
                .width(WIDTH);
    }

    private @Nullable Expr in(CurrencyUnit currency, Row<RunCost> row) {
        Expr cost = cells(row.entry()).unitCost();
        return cost == null ? null : cost.times(Inputs.rate(costed.market().conversion(home, currency)));
    }

    private RunCells cells(RunCost cost) {
        return requireNonNull(cells.get(cost));
    }

    /** A figure of the run's block. */
    private Function<Row<RunCost>, @Nullable Expr> live(Function<RunCells, @Nullable Expr> which) {
        return row -> which.apply(cells(row.entry()));
    }

    private static Column<RunCost> money(String key, String heading) {
        return Column.<RunCost>of(key, heading).width(WIDTH);
    }

    private String amount(BigDecimal amount) {
        return Decimals.amount(amount, minor);
    }

    private String unitAmount(@Nullable BigDecimal amount) {
        return amount == null ? "–" : Decimals.amount(amount, minorOfUnits);
    }

    private Map<String, BigDecimal> inCurrencies(@Nullable BigDecimal amount) {
        Map<String, BigDecimal> all = new LinkedHashMap<>();
        if (amount != null) {
            currencies.forEach((code, conversion) -> all.put(code, conversion.convert(amount)));
        }
        return all;
    }

    static @Nullable BigDecimal targetFillG(RunCost cost) {
        FillTarget fill = cost.needs().fill();
        return fill == null ? null : fill.targetKg().multiply(GRAMS);
    }

    private boolean isAnyFootprintTyped() {
        for (RunCost cost : costed.runs()) {
            if (!CarbonFootprint.of(cost).known().isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private @Nullable Expr carbonOf(Row<RunCost> row) {
        RunCells run = cells(row.entry());
        CarbonFootprint footprint = CarbonFootprint.of(row.entry());
        Expr units = run.making().units();
        if (units == null || !footprint.isComplete()) {
            return null;
        }
        List<Expr> parts = new ArrayList<>();
        for (ItemCost item : footprint.known()) {
            parts.add(run.needed(item).times(Expr.input(CarbonFootprint.perKg(item))));
        }
        return Expr.sum(parts).over(units);
    }

    private static @Nullable String unknownFootprints(RunCost cost) {
        List<String> unknown = CarbonFootprint.of(cost).unknown();
        return cost.needs().units() == null || unknown.isEmpty() ? null : "unknown: " + String.join(", ", unknown);
    }

    private static Map<String, BigDecimal> byHead(RunCost cost) {
        Map<String, BigDecimal> all = new LinkedHashMap<>();
        for (Map.Entry<Head, BigDecimal> head : cost.heads().entrySet()) {
            all.put(head.getKey().words(), head.getValue());
        }
        return all;
    }

    private static Map<String, Object> plan(RunCost cost) {
        Purchase purchase = cost.purchase();
        Map<String, Object> plan = new LinkedHashMap<>();
        plan.put("objective", purchase.cost().objective());
        plan.put("bound", purchase.bound());
        plan.put("proven", purchase.proven());
        return plan;
    }

    private static String gap(RunCost cost) {
        Purchase purchase = cost.purchase();
        if (purchase.proven()) {
            return "";
        }
        return "not proven cheapest: gap "
                + Decimals.amount(purchase.cost().objective().subtract(purchase.bound()), DECIMALS);
    }
}
