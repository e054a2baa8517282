package perkilo.report.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.decision.ScenarioCosts;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** The cost of one unit today and in each scenario, run by run. */
public final class ScenarioTable {

    private static final int WIDTH = 16;

    private final ScenarioCosts costs;

    final Column<Run> run = Column.<Run>of("run", "Run")
            .words(row -> row.today().needs().title())
            .look(Look.LABEL)
            .width(36);

    final Column<Run> today;

    /** The cost in each scenario. */
    final List<Column<Run>> each = new ArrayList<>();

    private final List<Column<Run>> changes = new ArrayList<>();

    /**
     * A row.
     *
     * @param at the number of the run, from zero
     * @param today its cost as it is
     * @param figures its cells
     */
    record Run(int at, RunCost today, RunFigures figures) {}

    ScenarioTable(ScenarioCosts costs, String home) {
        this.costs = costs;
        NumberFormat money = NumberFormat.money(home, 4);
        today = Column.<Run>of("today", "Today")
                .formula(row -> row.entry().figures().ofOne())
                .format(money)
                .width(WIDTH);
        for (ScenarioCosts.Costed scenario : costs.scenarios()) {
            String name = scenario.scenario().name();
            Column<Run> cost = Column.<Run>of(name, name)
                    .value(row -> ofOne(scenario, row.at()))
                    .words(row -> scenario.runs().get(row.at()) == null ? "not complete" : null)
                    .wordsLook(Look.HINT)
                    .format(money)
                    .width(WIDTH);
            each.add(cost);
            changes.add(Column.<Run>of(name + " change", name + ", change")
                    .formula(row ->
                            row.has(cost) ? row.ref(cost).over(row.ref(today())).minus(Expr.of(1)) : null)
                    .format(NumberFormat.PERCENT)
                    .width(WIDTH));
        }
    }

    private Column<Run> today() {
        return today;
    }

    private static @Nullable BigDecimal ofOne(ScenarioCosts.Costed scenario, int at) {
        RunCost cost = scenario.runs().get(at);
        return cost == null ? null : ScenarioCosts.ofOne(cost);
    }

    Table<Run> onSheet() {
        List<Column<Run>> columns = new ArrayList<>(List.of(run, today));
        columns.addAll(each);
        columns.addAll(changes);
        return new Table<>(columns);
    }

    /** The rows, with the cells of today's runs in the same order. */
    List<Run> rows(List<RunFigures> figures) {
        List<Run> rows = new ArrayList<>();
        for (int at = 0; at < figures.size(); at++) {
            rows.add(new Run(at, costs.today().get(at), figures.get(at)));
        }
        return rows;
    }

    /** The runs of one scenario as JSON shows them. */
    public static Table.Filled<?> inJson(ScenarioCosts costs, ScenarioCosts.Costed scenario) {
        List<InScenario> rows = new ArrayList<>();
        for (int at = 0; at < costs.today().size(); at++) {
            RunCost cost = scenario.runs().get(at);
            rows.add(new InScenario(costs.today().get(at), cost));
        }
        return Table.of(
                        Column.<InScenario>of("product", "")
                                .json(row -> row.today().needs().product() == null
                                        ? null
                                        : row.today().needs().name()),
                        Column.<InScenario>of("formula", "")
                                .json(row -> row.today().needs().formula().name()),
                        Column.<InScenario>of("units", "")
                                .json(row -> row.today().needs().units()),
                        Column.<InScenario>of("unitsInScenario", "")
                                .json(row -> row.now() == null
                                        ? null
                                        : row.now().needs().units()),
                        Column.<InScenario>of("today", "").json(row -> ScenarioCosts.ofOne(row.today())),
                        Column.<InScenario>of("cost", "")
                                .json(row -> row.now() == null ? null : ScenarioCosts.ofOne(row.now())),
                        Column.<InScenario>of("changePercent", "").json(InScenario::change))
                .with(rows);
    }

    /** A run today and in a scenario. */
    private record InScenario(RunCost today, @Nullable RunCost now) {

        private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

        @Nullable BigDecimal change() {
            RunCost cost = now;
            BigDecimal before = ScenarioCosts.ofOne(today);
            return cost == null || before.signum() == 0
                    ? null
                    : ScenarioCosts.ofOne(cost)
                            .subtract(before)
                            .multiply(HUNDRED)
                            .divide(before, MathContext.DECIMAL128);
        }
    }
}
