package perkilo.report.cost;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.PriceLadder;
import perkilo.costing.RunCost;
import perkilo.decision.Share;
import perkilo.model.Product;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.sheet.Expr;
import perkilo.sheet.ResultSheet;

/**
 * What one page says of a product, to decide by. Amounts are in home currency.
 *
 * @param product its name
 * @param home the currency
 * @param sizes its complete runs, the smallest first; at least one
 */
public record Glance(String product, String home, List<RunCost> sizes) {

    private static final int ITEMS = 5;

    public Glance {
        sizes = List.copyOf(sizes);
    }

    /** A page for each product of which units are costed, in the order of the runs. */
    public static List<Glance> of(CostOutcome.Costed costed) {
        Map<String, List<RunCost>> byProduct = new LinkedHashMap<>();
        for (RunCost run : costed.runs()) {
            if (run.unitCost().isPresent()) {
                byProduct
                        .computeIfAbsent(Names.key(run.needs().name()), key -> new ArrayList<>())
                        .add(run);
            }
        }
        String home = costed.book().settings().home().getCurrencyCode();
        List<Glance> pages = new ArrayList<>();
        for (List<RunCost> runs : byProduct.values()) {
            runs.sort(Comparator.comparing(
                    run -> Objects.requireNonNull(run.needs().units())));
            pages.add(new Glance(runs.get(0).needs().name(), home, runs));
        }
        return pages;
    }

    /** What a unit costs at each size, in a sentence. */
    public String sentence() {
        List<Expr> costs = new ArrayList<>();
        List<Expr> units = new ArrayList<>();
        for (RunCost run : sizes) {
            costs.add(Expr.of(run.unitCost().orElseThrow()));
            units.add(Expr.of(Objects.requireNonNull(run.needs().units())));
        }
        StringBuilder text = new StringBuilder();
        sentence(home, costs, units).forEach(part -> text.append(part.text()));
        return text.toString();
    }

    /** The sentence, of figures that may be live. */
    static List<ResultSheet.Part> sentence(String home, List<? extends Expr> costs, List<? extends Expr> units) {
        List<ResultSheet.Part> parts = new ArrayList<>();
        parts.add(new ResultSheet.Words("A unit costs "));
        for (int at = 0; at < costs.size(); at++) {
            parts.add(new ResultSheet.Words(at == 0 ? "" : at == costs.size() - 1 ? " and " : ", "));
            parts.add(new ResultSheet.Fixed(costs.get(at), 2));
            parts.add(new ResultSheet.Words(" " + home + " at "));
            parts.add(new ResultSheet.Fixed(units.get(at), 0));
        }
        parts.add(new ResultSheet.Words("."));
        return parts;
    }

    /** The items that cost most. */
    static List<Share> most(RunCost run) {
        return Share.of(run).stream()
                .filter(share -> share.item() != null)
                .limit(ITEMS)
                .toList();
    }

    // the price that the person named: the target retail price, else the one of the target margin

    static @Nullable BigDecimal wholesale(RunCost cost) {
        PriceLadder ladder = cost.ladder();
        if (ladder == null) {
            return null;
        }
        PriceLadder.Downwards down = ladder.downwards();
        PriceLadder.Upwards up = ladder.upwards();
        return down != null ? down.wholesale() : up == null ? null : up.wholesale();
    }

    static @Nullable BigDecimal retail(RunCost cost) {
        PriceLadder ladder = cost.ladder();
        Product product = cost.needs().product();
        if (ladder == null || product == null) {
            return null;
        }
        Figure named = product.targetRetailPrice();
        PriceLadder.Upwards up = ladder.upwards();
        return named != null ? named.value() : up == null ? null : up.retail();
    }

    /** What is left of the wholesale price, as a fraction of it. */
    static @Nullable BigDecimal margin(RunCost cost) {
        BigDecimal wholesale = wholesale(cost);
        return wholesale == null || wholesale.signum() == 0
                ? null
                : wholesale.subtract(cost.unitCost().orElseThrow()).divide(wholesale, MathContext.DECIMAL128);
    }

    /** What the whole run earns. */
    static @Nullable BigDecimal profit(RunCost cost) {
        BigDecimal wholesale = wholesale(cost);
        BigDecimal units = cost.needs().units();
        return wholesale == null || units == null
                ? null
                : wholesale.subtract(cost.unitCost().orElseThrow()).multiply(units);
    }

    static @Nullable BigDecimal breakEven(RunCost cost) {
        PriceLadder ladder = cost.ladder();
        return ladder == null ? null : ladder.breakEvenUnits();
    }
}
