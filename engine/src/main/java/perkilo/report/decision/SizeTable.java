package perkilo.report.decision;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.costing.Purchase;
import perkilo.costing.RunCost;
import perkilo.decision.SizeAdvice;
import perkilo.decision.SizeStep;
import perkilo.purchasing.LineCost;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** The cost of a product at its smallest and largest run, and on both sides of each step between them. */
public final class SizeTable {

    private static final int WIDE = 80;

    final Column<Size> units = Column.<Size>of("units", "Units in a run")
            .value(size -> size.cost().needs().units())
            .format(NumberFormat.WHOLE)
            .look(size -> size.isStep() ? Look.KEY : Look.PLAIN)
            .width(16)
            .json();

    final Column<Size> unitCost;

    private final Column<Size> fall = Column.<Size>of("fallPercent", "Fall from one unit less")
            .value(size -> size.step() == null ? null : size.step().fall())
            .format(NumberFormat.PERCENT)
            .width(14)
            .json(size -> size.step() == null ? null : size.step().fall().movePointRight(2));

    private final Column<Size> cash;

    private final Column<Size> outlay;

    private final Column<Size> changes = Column.<Size>of("changes", "What is bought from there on")
            .words(size -> size.step() == null ? size.words() : String.join(" ", changes(size.step())))
            .width(WIDE)
            .json(size -> size.step() == null ? List.of() : changes(size.step()));

    /**
     * A row.
     *
     * @param cost the run of that size
     * @param step null for a row beside a step
     * @param words what is said of a row that is no step
     */
    record Size(RunCost cost, @Nullable SizeStep step, String words) {

        boolean isStep() {
            return step != null;
        }
    }

    /**
     * The columns.
     *
     * @param home code of the home currency
     */
    public SizeTable(String home) {
        NumberFormat fine = NumberFormat.money(home, 4);
        NumberFormat money = NumberFormat.money(home, 2);
        unitCost = Column.<Size>of("unitCost", "Unit cost")
                .value(size -> size.cost().unitCost().orElse(null))
                .format(fine)
                .width(14)
                .json();
        cash = Column.<Size>of("cash", "Cash for the run")
                .value(size -> size.cost().cash())
                .format(money)
                .width(16)
                .json();
        outlay = Column.<Size>of("outlay", "Outlay for items")
                .value(size -> size.cost().outlay())
                .format(money)
                .width(16)
                .json();
    }

    /** The table as the sheet shows it. */
    Table<Size> onSheet() {
        return Table.of(units, unitCost, fall, outlay, cash, changes);
    }

    /** The steps as JSON shows them. */
    public Table.Filled<?> inJson(SizeAdvice advice) {
        List<Size> steps = advice.steps().stream()
                .map(step -> new Size(step.at(), step, ""))
                .toList();
        return onSheet().with(steps);
    }

    /** All rows of a product, by rising size. */
    static List<Size> rows(SizeAdvice advice) {
        List<Size> rows = new ArrayList<>();
        rows.add(new Size(advice.smallest(), null, "the smallest run named"));
        for (SizeStep step : advice.steps()) {
            if (!isSame(step.before(), rows.get(rows.size() - 1).cost())) {
                rows.add(new Size(step.before(), null, "one unit less"));
            }
            rows.add(new Size(step.at(), step, ""));
        }
        if (!isSame(advice.largest(), rows.get(rows.size() - 1).cost())) {
            rows.add(new Size(advice.largest(), null, "the largest run named"));
        }
        return rows;
    }

    private static boolean isSame(RunCost one, RunCost other) {
        BigDecimal units = one.needs().units();
        BigDecimal others = other.needs().units();
        return units != null && others != null && units.compareTo(others) == 0;
    }

    /** What is bought in place of what, item by item. */
    private static List<String> changes(SizeStep step) {
        Map<String, List<String>> before = byItem(step.before().purchase());
        Map<String, List<String>> now = byItem(step.at().purchase());
        List<String> words = new ArrayList<>();
        now.forEach((item, packs) -> {
            List<String> had = before.getOrDefault(item, List.of());
            if (!had.equals(packs)) {
                words.add(DecisionMessages.boughtInstead(
                        item, String.join(" + ", packs), had.isEmpty() ? "nothing" : String.join(" + ", had)));
            }
        });
        return words;
    }

    private static Map<String, List<String>> byItem(Purchase purchase) {
        Map<String, List<String>> all = new LinkedHashMap<>();
        for (LineCost line : purchase.cost().lines()) {
            Listing listing = purchase.listing(line);
            all.computeIfAbsent(listing.offer().item(), item -> new ArrayList<>())
                    .add(line.line().packs() + " × " + listing.offer().pack() + " ("
                            + listing.offer().supplier() + ")");
        }
        return all;
    }
}
