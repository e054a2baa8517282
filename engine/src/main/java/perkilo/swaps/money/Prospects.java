package perkilo.swaps.money;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Item;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.costing.RunNeeds;
import perkilo.model.Material;
import perkilo.model.Names;
import perkilo.purchasing.OrderCost;
import perkilo.swaps.trial.Trial;

/**
 * Tells without a purchase plan which swaps cannot pay.
 *
 * <p>The most that a swap can give back is what the replaced material costs now, and every charge for an order as a
 * whole. The least that it takes is the cheapest line of the new material that covers the need, with no such charge.
 * Where that is more at every run size, for what is used and for what is paid, no plan is sought. Knock-on effects on
 * the price breaks of other items are not looked at.
 */
public final class Prospects {

    private final RunsOfFormula runs;
    private final LinePrices prices;

    /** Prospects of swaps in a formula. */
    public Prospects(RunsOfFormula runs, LinePrices prices) {
        this.runs = runs;
        this.prices = prices;
    }

    /** Whether a swap may pay at some run size. */
    public boolean mayPay(Trial trial) {
        for (Map.Entry<String, RunCost> run : runs.base().entrySet()) {
            RunNeeds needs = runs.needs(run.getKey(), trial.after().formula());
            if (mayPay(trial, run.getValue(), needs)) {
                return true;
            }
        }
        return false;
    }

    private boolean mayPay(Trial trial, RunCost before, RunNeeds after) {
        BigDecimal charges = orderCharges(before);
        ItemCost old = cost(before, trial.from());
        ItemCost already = cost(before, trial.to());
        BigDecimal need = need(after, trial.to());
        BigDecimal stillNeeded = need(after, trial.from());
        Optional<LinePrices.Line> line = prices.cheapest(trial.to(), need);
        if (old == null || line.isEmpty() || stillNeeded.signum() > 0) {
            return true;
        }
        BigDecimal paidNow = old.landed().add(already == null ? ZERO : already.landed());
        BigDecimal usedNow = old.used().add(old.wasted()).add(already == null ? ZERO : already.used());
        BigDecimal leastUsed =
                prices.lowestPerKg(trial.to()).map(need::multiply).orElse(ZERO);
        return line.get().landed().compareTo(paidNow.add(charges)) < 0 || leastUsed.compareTo(usedNow.add(charges)) < 0;
    }

    /** Everything that is charged for orders as a whole, generously: all that comes on top of goods and is no duty. */
    private static BigDecimal orderCharges(RunCost run) {
        BigDecimal sum = ZERO;
        for (OrderCost order : run.purchase().cost().orders()) {
            BigDecimal goods = order.lines().stream().map(line -> line.goods()).reduce(ZERO, BigDecimal::add);
            sum = sum.add(order.landed().subtract(goods));
        }
        return sum;
    }

    private static @Nullable ItemCost cost(RunCost run, Material material) {
        String key = Names.key(material.name());
        return run.items().stream()
                .filter(item -> item.item().isMaterial()
                        && Names.key(item.item().name()).equals(key))
                .findFirst()
                .orElse(null);
    }

    private static BigDecimal need(RunNeeds needs, Material material) {
        String key = Names.key(material.name());
        return needs.items().stream()
                .filter(item -> item.isMaterial() && Names.key(item.name()).equals(key))
                .map(Item::needed)
                .reduce(ZERO, BigDecimal::add);
    }
}
