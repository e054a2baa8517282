package perkilo.report.cost;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.PriceLadder;
import perkilo.costing.RunAnswer;
import perkilo.decision.RiskBand;
import perkilo.decision.Share;
import perkilo.model.Product;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.report.decision.BandWords;
import perkilo.report.decision.Decisions;
import perkilo.report.decision.RunFigures;
import perkilo.report.part.Lines;
import perkilo.sheet.Chart;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.Sign;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** At a glance: one page for each product, to decide by. */
final class ProductPages {

    private static final String NAME = "At a glance";
    private static final int LOOKS = 5;
    private static final int CHART_ROWS = 14;
    private static final int LEFT_CHART = 4;
    private static final int RIGHT_CHART = 4;
    private static final int FIRST = 26;
    private static final int WIDTH = 13;

    private final CostOutcome.Costed costed;
    private final Decisions decisions;
    private final Concerns concerns;
    private final Set<String> said = new HashSet<>();
    private final String home;
    private final NumberFormat money;
    private final NumberFormat fine;
    private final SheetBuilder sheet = new SheetBuilder(NAME);
    private final Lines lines = new Lines(sheet, 3);
    private final Column<RunCells> units;
    private final Column<RunCells> unitCost;
    private final Column<RunCells> wholesale;
    private final Table<RunCells> table;

    private ProductPages(CostOutcome.Costed costed, Decisions decisions, List<Finding> findings) {
        this.costed = costed;
        this.decisions = decisions;
        this.concerns = new Concerns(costed, findings);
        this.home = costed.book().settings().home().getCurrencyCode();
        this.money = NumberFormat.money(home, 2);
        this.fine = NumberFormat.money(home, 4);
        units = Column.<RunCells>of("units", "Units in a run")
                .value(run -> run.cost().needs().units())
                .formula(row -> row.entry().making().units())
                .format(NumberFormat.WHOLE)
                .width(FIRST);
        unitCost = amount("unitCost", "Unit cost", fine)
                .value(run -> run.cost().unitCost().orElse(null))
                .formula(row -> row.entry().unitCost())
                .look(Look.KEY);
        Column<RunCells> cash = amount("cash", "Cash for the run", money)
                .value(run -> run.cost().cash())
                .formula(row -> requireNonNull(row.entry().cashPerUnit()).times(row.ref(units())));
        Column<RunCells> left = amount("left", "of it for stock that is left", money)
                .value(run -> run.cost().stockLeft())
                .formula(row -> row.entry().cash().stockLeft());
        wholesale = amount("wholesale", "Wholesale price", fine)
                .value(run -> Glance.wholesale(run.cost()))
                .formula(this::wholesaleOf);
        Column<RunCells> retail = amount("retail", "Shop price", money)
                .value(run -> Glance.retail(run.cost()))
                .formula(this::retailOf);
        Column<RunCells> margin = amount("margin", "Margin", NumberFormat.PERCENT)
                .value(run -> Glance.margin(run.cost()))
                .formula(row -> row.has(wholesale())
                                && row.ref(wholesale()).value().signum() != 0
                        ? row.ref(wholesale()).minus(row.ref(unitCost())).over(row.ref(wholesale()))
                        : null);
        Column<RunCells> profit = amount("profit", "Profit per run", money)
                .value(run -> Glance.profit(run.cost()))
                .formula(row -> row.has(wholesale())
                        ? row.ref(wholesale()).minus(row.ref(unitCost())).times(row.ref(units()))
                        : null);
        Column<RunCells> breakEven = amount("breakEven", "Break-even, units", NumberFormat.WHOLE)
                .value(run -> Glance.breakEven(run.cost()))
                .formula(this::breakEvenOf)
                .words(run ->
                        run.cost().ladder() != null && run.cost().ladder().breakEvenUnits() == null ? "never" : null);
        table = Table.of(units, unitCost, cash, left, wholesale, retail, margin, profit, breakEven);
    }

    /** Null if no unit of any product is costed. */
    static @Nullable ResultSheet of(
            CostOutcome.Costed costed,
            Decisions decisions,
            List<RunCells> runs,
            List<RunFigures> figures,
            List<Finding> findings) {
        Map<String, List<RunCells>> byProduct = new LinkedHashMap<>();
        Map<RunCells, RunFigures> ofRun = new LinkedHashMap<>();
        for (int at = 0; at < runs.size(); at++) {
            RunCells run = runs.get(at);
            ofRun.put(run, figures.get(at));
            if (run.unitCost() != null) {
                byProduct
                        .computeIfAbsent(Names.key(run.cost().needs().name()), key -> new ArrayList<>())
                        .add(run);
            }
        }
        if (byProduct.isEmpty()) {
            return null;
        }
        ProductPages pages = new ProductPages(costed, decisions, findings);
        pages.sheet.title(0, NAME);
        pages.sheet.hint(
                1,
                "One page for each product. Shop price: your target retail price, else the one that follows from your target"
                        + " margin; margin, profit and break-even at that price. All formulas are live.");
        boolean first = true;
        for (List<RunCells> ofProduct : byProduct.values()) {
            if (!first) {
                pages.sheet.pageBreakBefore(pages.lines.next());
            }
            ofProduct.sort(Comparator.comparing(
                    run -> requireNonNull(run.cost().needs().units())));
            pages.page(ofProduct, requireNonNull(ofRun.get(ofProduct.get(0))), first);
            first = false;
        }
        return pages.sheet.build();
    }

    private void page(List<RunCells> runs, RunFigures smallest, boolean isFirst) {
        Product product = requireNonNull(runs.get(0).cost().needs().product());
        lines.section(product.name());
        sheet.answer(lines.next(), runs.get(0).title(), answer(runs));
        lines.skip(1);
        Placed<RunCells> placed = lines.write(lines.place(table, runs));
        lines.skip(1);
        List<Share> shares = Glance.most(smallest.cost());
        Column<Share> item = Column.<Share>of("item", "Costs most per unit, at the smallest run")
                .words(Share::name)
                .look(Look.LABEL);
        Column<Share> ofOne = Column.<Share>of("perUnit", "Per unit")
                .value(Share::ofOne)
                .formula(row ->
                        smallest.counted(requireNonNull(row.entry().item())).over(smallest.measure()))
                .format(fine);
        Column<Share> fraction = Column.<Share>of("share", "Share")
                .value(Share::fraction)
                .formula(row -> row.ref(ofOne).over(smallest.ofOne()))
                .format(NumberFormat.PERCENT);
        Placed<Share> most = lines.write(lines.place(Table.of(item, ofOne, fraction), shares));
        lines.skip(1);
        band(runs);
        looks(product, isFirst);
        charts(product, placed, most, item, ofOne);
    }

    private List<ResultSheet.Part> answer(List<RunCells> runs) {
        return Glance.sentence(
                home,
                runs.stream().map(run -> requireNonNull(run.unitCost())).toList(),
                runs.stream().map(run -> requireNonNull(run.making().units())).toList());
    }

    /** What a unit could cost some days from now, in one line: of the smallest run for which that is known. */
    private void band(List<RunCells> runs) {
        List<RiskBand> bands = runs.stream()
                .map(run -> decisions.band(run.cost()))
                .filter(Objects::nonNull)
                .toList();
        for (RiskBand band : bands) {
            RiskBand.Figures known = band.figures();
            if (known != null) {
                BigDecimal units = requireNonNull(band.cost().needs().units());
                lines.hint(BandWords.inShort(band, known, units.longValue()));
                return;
            }
        }
        for (RiskBand band : bands) {
            String why = BandWords.missing(band);
            if (!(band.lacking().get(0) instanceof RiskBand.Lack.Anything) && said.add(why)) {
                lines.hint(why);
                return;
            }
        }
    }

    /** What needs a look: runs that are not complete, then errors and warnings; those of the whole workbook once. */
    private void looks(Product product, boolean isFirst) {
        int shown = 0;
        for (RunAnswer answer : costed.incomplete()) {
            if (Names.key(answer.name()).equals(Names.key(product.name()))) {
                String words = Sign.ATTENTION + " " + answer.title() + ": " + answer.lacks(DetailSheet.NAMED);
                sheet.text(
                        lines.next(),
                        SheetBuilder.FIRST_COLUMN,
                        words,
                        Look.ERROR,
                        answer.missing().get(0).origin());
                lines.skip(1);
                shown++;
            }
        }
        List<Finding> all = new ArrayList<>(concerns.of(product));
        List<Finding> general = concerns.ofAll();
        if (isFirst) {
            all.addAll(general);
        }
        int room = Math.max(0, LOOKS - shown);
        for (Finding finding : all.subList(0, Math.min(room, all.size()))) {
            String words = Sign.ATTENTION + " " + finding.text();
            sheet.text(lines.next(), SheetBuilder.FIRST_COLUMN, words, Look.WARNING, finding.origin());
            lines.skip(1);
            shown++;
        }
        if (all.size() > room) {
            lines.hint("There is more on Messages.");
        } else if (!isFirst && !general.isEmpty()) {
            lines.hint("What concerns the whole workbook is on the first page.");
        } else if (shown == 0) {
            lines.hint("Nothing needs a look. Notes are on Messages.");
        }
    }

    private void charts(
            Product product, Placed<RunCells> runs, Placed<Share> most, Column<Share> item, Column<Share> ofOne) {
        int top = lines.next() + 1;
        int left = SheetBuilder.FIRST_COLUMN;
        sheet.chart(new Chart(
                Chart.Kind.SCATTER_WITH_LINES,
                "Unit cost by run size",
                new Chart.Axes("Units in a run (logarithmic)", home + " per unit", new NumberFormat("0.00"), true),
                List.of(new Chart.Series(product.name(), runs.range(units), runs.range(unitCost))),
                new Chart.Place(top, left, top + CHART_ROWS - 1, left + LEFT_CHART - 1)));
        if (!most.rows().isEmpty()) {
            int right = left + LEFT_CHART;
            sheet.chart(new Chart(
                    Chart.Kind.STACKED_BARS,
                    "What costs most per unit, at the smallest run",
                    new Chart.Axes("", home + " per unit", new NumberFormat("0.00"), false),
                    List.of(new Chart.Series("Per unit", most.range(item), most.range(ofOne))),
                    new Chart.Place(top, right, top + CHART_ROWS - 1, right + RIGHT_CHART - 1)));
        }
        lines.skip(CHART_ROWS + 2);
    }

    private static Column<RunCells> amount(String key, String heading, NumberFormat format) {
        return Column.<RunCells>of(key, heading).format(format).width(WIDTH);
    }

    private Column<RunCells> units() {
        return units;
    }

    private Column<RunCells> unitCost() {
        return unitCost;
    }

    private Column<RunCells> wholesale() {
        return wholesale;
    }

    private @Nullable Expr wholesaleOf(Row<RunCells> row) {
        Product product = row.entry().cost().needs().product();
        if (product == null || row.entry().cost().ladder() == null) {
            return null;
        }
        Expr one = Expr.of(1);
        Figure named = product.targetRetailPrice();
        Figure margin = product.targetMargin();
        if (named != null) {
            return Expr.input(named)
                    .over(one.plus(Expr.input(product.vat())))
                    .times(one.minus(Expr.input(product.retailerMargin())))
                    .times(one.minus(Expr.input(product.distributorMargin())));
        }
        return margin == null ? null : row.ref(unitCost).over(one.minus(Expr.input(margin)));
    }

    private @Nullable Expr retailOf(Row<RunCells> row) {
        Product product = row.entry().cost().needs().product();
        if (product == null || row.entry().cost().ladder() == null) {
            return null;
        }
        Expr one = Expr.of(1);
        Figure named = product.targetRetailPrice();
        return named != null
                ? Expr.input(named)
                : row.ref(wholesale)
                        .over(one.minus(Expr.input(product.distributorMargin())))
                        .over(one.minus(Expr.input(product.retailerMargin())))
                        .times(one.plus(Expr.input(product.vat())));
    }

    private @Nullable Expr breakEvenOf(Row<RunCells> row) {
        PriceLadder ladder = row.entry().cost().ladder();
        Product product = row.entry().cost().needs().product();
        RunCells.PerUnit unit = row.entry().unit();
        if (ladder == null || product == null || unit == null || ladder.breakEvenUnits() == null) {
            return null;
        }
        Expr earned = row.ref(wholesale).minus(row.ref(unitCost)).plus(unit.oneOffs());
        return Expr.input(product.oneOffCosts()).over(earned);
    }
}
