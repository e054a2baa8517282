package perkilo.costing;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.model.Product;
import perkilo.model.Settings;
import perkilo.origin.Figure;
import perkilo.purchasing.LineCost;

/** Adds up the cost of a run from its purchase. */
final class RunCosting {

    private final Settings settings;

    RunCosting(Market market) {
        this.settings = market.book().settings();
    }

    /**
     * The cost of a run.
     *
     * @param sources of the run's items
     */
    RunCost cost(RunNeeds needs, List<Source> sources, Purchase purchase) {
        return cost(needs, sources, purchase, Set.of());
    }

    /**
     * The cost of a run as far as it is known.
     *
     * @param sources of the run's items
     * @param unsold those that the purchase leaves out
     */
    RunCost cost(RunNeeds needs, List<Source> sources, Purchase purchase, Set<Source> unsold) {
        List<ItemCost> items = items(needs, sources, purchase, unsold);
        Work work = Work.of(settings, needs);
        Product product = needs.product();
        BigDecimal oneOffs = product == null ? ZERO : product.oneOffCosts().value();
        BigDecimal share = oneOffShare(product, needs.units(), oneOffs);
        return new RunCost(settings.home(), needs, items, purchase, work, oneOffs, share);
    }

    private static List<ItemCost> items(RunNeeds needs, List<Source> sources, Purchase purchase, Set<Source> unsold) {
        List<List<LineCost>> lines = purchase.linesByNeed();
        List<ItemCost> items = new ArrayList<>(sources.size());
        int need = 0;
        for (Source source : sources) {
            Figure house = source.housePrice();
            items.add(
                    house != null
                            ? ItemCost.fromHouse(source.item(), house)
                            : ItemCost.bought(
                                    source.item(),
                                    source.isBought() && !unsold.contains(source) ? lines.get(need++) : List.of(),
                                    UsableLeftover.limit(needs, source.item())));
        }
        return items;
    }

    /** The share of the one-off costs for a run's units; never more than all of them. */
    static BigDecimal oneOffShare(@Nullable Product product, @Nullable BigDecimal units, BigDecimal oneOffs) {
        Figure spread = product == null ? null : product.spreadOver();
        if (spread == null || units == null || units.compareTo(spread.value()) >= 0) {
            return oneOffs;
        }
        return oneOffs.multiply(units).divide(spread.value(), MathContext.DECIMAL128);
    }
}
