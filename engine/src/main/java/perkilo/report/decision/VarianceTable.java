package perkilo.report.decision;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import perkilo.decision.Variance;
import perkilo.origin.Decimals;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** Why the cost of one changed, part by part: a row for each run. */
public final class VarianceTable {

    private static final int WIDTH = 14;
    private static final int DIGITS = 4;

    private final Column<Variance> run = Column.<Variance>of("run", "Run")
            .words(one -> one.title())
            .look(Look.LABEL)
            .width(34)
            .link(one -> one.needs().run().origin())
            .terminal(one -> one.title());

    private final Column<Variance> product = Column.<Variance>of("product", "")
            .json(one -> one.needs().product() == null ? null : one.needs().name())
            .notOnSheet();

    private final Column<Variance> formula = Column.<Variance>of("formula", "")
            .json(one -> one.needs().formula().name())
            .notOnSheet();

    private final Column<Variance> units =
            Column.<Variance>of("units", "").json(one -> one.needs().units()).notOnSheet();

    private final Column<Variance> before;
    private final Column<Variance> after;
    private final List<Column<Variance>> parts = new ArrayList<>();

    private final Column<Variance> allParts =
            Column.<Variance>of("parts", "").json(VarianceTable::byWords).notOnSheet();

    /**
     * The columns.
     *
     * @param home code of the home currency
     */
    public VarianceTable(String home) {
        NumberFormat money = NumberFormat.money(home, DIGITS);
        before = Column.<Variance>of("before", "Before")
                .value(Variance::ofOneBefore)
                .format(money)
                .width(WIDTH)
                .json()
                .terminal(one -> amount(one.ofOneBefore()));
        for (Variance.Part part : Variance.Part.values()) {
            String heading = part.words().substring(0, 1).toUpperCase(Locale.ROOT)
                    + part.words().substring(1);
            parts.add(Column.<Variance>of(part.name(), heading)
                    .value(one -> one.part(part))
                    .format(money)
                    .width(WIDTH)
                    .terminal(one -> amount(one.part(part))));
        }
        after = Column.<Variance>of("after", "After")
                .value(Variance::ofOneAfter)
                .formula(row -> row.ref(before()).plus(row.sum(parts)))
                .format(money)
                .look(Look.KEY)
                .width(WIDTH)
                .json()
                .terminal("After (" + home + ")", one -> amount(one.ofOneAfter()));
    }

    private Column<Variance> before() {
        return before;
    }

    /** The table as the sheet and the terminal show it. */
    public Table<Variance> onSheet() {
        List<Column<Variance>> columns = new ArrayList<>(List.of(run, before));
        columns.addAll(parts);
        columns.add(after);
        return new Table<>(columns);
    }

    /** The runs as JSON shows them. */
    public Table.Filled<Variance> inJson(List<Variance> runs) {
        return Table.of(product, formula, units, before, after, allParts).with(runs);
    }

    private static Map<String, Object> byWords(Variance one) {
        Map<String, Object> all = new LinkedHashMap<>();
        one.parts().forEach((part, amount) -> all.put(part.words(), amount));
        return all;
    }

    private static String amount(BigDecimal value) {
        return Decimals.amount(value, DIGITS);
    }

    /** One step of a waterfall. */
    record Step(String name, BigDecimal amount, boolean isTotal) {}

    /** The steps from before to after. */
    static List<Step> steps(BigDecimal before, Map<Variance.Part, BigDecimal> parts, BigDecimal after) {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step("Before", before, true));
        parts.forEach((part, amount) -> steps.add(new Step(part.words(), amount, false)));
        steps.add(new Step("After", after, true));
        return steps;
    }

    /** The columns of a waterfall: the running sum, and what of each step is drawn where. */
    static final class Waterfall {

        final Column<Step> name =
                Column.<Step>of("name", "Step").words(Step::name).look(Look.LABEL);
        final Column<Step> amount;
        final Column<Step> end;

        /** What is not drawn, and lifts the rest. */
        final Column<Step> base;

        final Column<Step> total;
        final Column<Step> more;
        final Column<Step> less;

        Waterfall(String home, int digits) {
            NumberFormat money = NumberFormat.money(home, digits);
            amount = Column.<Step>of("amount", "Amount").value(Step::amount).format(money);
            end = Column.<Step>of("end", "Up to here")
                    .formula(row -> row.entry().isTotal()
                            ? row.ref(amount())
                            : row.ref(amount()).plus(previous(row)))
                    .format(money);
            base = Column.<Step>of("base", "Not drawn")
                    .formula(row ->
                            row.entry().isTotal() ? Expr.of(0) : row.ref(end()).min(previous(row)))
                    .format(money)
                    .look(Look.HINT);
            total = Column.<Step>of("total", "Cost")
                    .formula(row -> row.entry().isTotal() ? row.ref(amount()) : Expr.of(0))
                    .format(money);
            more = Column.<Step>of("more", "More")
                    .formula(row -> row.entry().isTotal()
                            ? Expr.of(0)
                            : row.ref(amount()).max(Expr.of(0)))
                    .format(money);
            less = Column.<Step>of("less", "Less")
                    .formula(row -> row.entry().isTotal()
                            ? Expr.of(0)
                            : Expr.of(0).minus(row.ref(amount()).min(Expr.of(0))))
                    .format(money);
        }

        private Column<Step> amount() {
            return amount;
        }

        private Column<Step> end() {
            return end;
        }

        /** The running sum of the row above. */
        private Expr previous(Row<Step> row) {
            return row.table().ref(row.index() - 1, end());
        }

        Table<Step> onSheet() {
            return Table.of(name, amount, end, base, total, more, less);
        }
    }
}
