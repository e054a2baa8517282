package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.costing.RunCoster;
import perkilo.costing.RunNeeds;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.SearchLimits;

/**
 * Finds the run sizes from which a unit of a product really costs less.
 *
 * <p>Between two sizes with the same purchase and the same number of batches lies no step: a larger run needs no less
 * of anything, so a purchase that is cheapest at both ends and covers both is cheapest in between. So every step is
 * found by halving, however far the sizes are apart. This holds while leftovers are worth nothing, or worth the same
 * whatever the size; where a credit for leftovers is limited by their shelf life, a step can be missed.
 */
public final class SizeSearch {

    /** A smaller fall is not listed. Own choice. */
    public static final BigDecimal LEAST_FALL = new BigDecimal("0.005");

    private static final BigDecimal MONTHS = BigDecimal.valueOf(12);

    private final Book book;
    private final RunCoster coster;
    private final SearchLimits limits;

    private SizeSearch(CostOutcome.Costed costed, PlanPurchases planner, SearchLimits limits) {
        this.book = costed.book();
        this.coster = new RunCoster(costed.market(), planner, limits);
        this.limits = limits;
    }

    /**
     * The advice for each product that was costed completely at two sizes or more.
     *
     * @param planner finds the purchase of each size
     * @param limits for the search of each purchase; once it is cancelled, what is not looked at is not exact
     */
    public static List<SizeAdvice> of(CostOutcome.Costed costed, PlanPurchases planner, SearchLimits limits) {
        Map<String, TreeSet<BigDecimal>> named = new LinkedHashMap<>();
        for (RunCost cost : costed.runs()) {
            BigDecimal units = cost.needs().units();
            if (units != null) {
                named.computeIfAbsent(Names.key(cost.needs().name()), key -> new TreeSet<>())
                        .add(units);
            }
        }
        SizeSearch search = new SizeSearch(costed, planner, limits);
        List<SizeAdvice> all = new ArrayList<>();
        named.forEach((key, sizes) -> {
            Product product = costed.book().products().get(key);
            if (product != null && sizes.size() > 1) {
                SizeAdvice advice = search.advice(product, sizes.first(), sizes.last());
                if (advice != null) {
                    all.add(advice);
                }
            }
        });
        return all;
    }

    /** What is the same at two sizes if there is no step between them. */
    private record Way(PurchasePlan plan, long batches) {

        static Way of(RunCost cost) {
            return new Way(cost.purchase().plan(), cost.needs().batches().count());
        }
    }

    private @Nullable SizeAdvice advice(Product product, BigDecimal from, BigDecimal to) {
        Sizes sizes = new Sizes(product);
        long first = from.longValueExact();
        long last = to.longValueExact();
        RunCost smallest = sizes.at(first);
        RunCost largest = sizes.at(last);
        if (smallest == null || largest == null) {
            return null;
        }
        List<Long> changes = new ArrayList<>();
        boolean whole = sizes.find(first, last, changes);
        List<SizeStep> steps = new ArrayList<>();
        int smaller = 0;
        BigDecimal lowest = Measure.ofOne(smallest);
        for (long size : changes) {
            RunCost before = sizes.at(size - 1);
            RunCost at = sizes.at(size);
            if (before == null || at == null) {
                whole = false;
                continue;
            }
            lowest = lowest.min(Measure.ofOne(before));
            SizeStep step = new SizeStep(before, at);
            if (Measure.ofOne(at).compareTo(lowest) < 0) {
                if (step.fall().compareTo(LEAST_FALL) >= 0) {
                    steps.add(step);
                } else {
                    smaller++;
                }
            }
        }
        SizeAdvice.Limit limit = limit(product, largest);
        SizeAdvice.Unknown unknown = limit != null
                ? null
                : product.yearlyUnits() == null ? SizeAdvice.Unknown.NO_YEARLY_UNITS : SizeAdvice.Unknown.NO_SHELF_LIFE;
        boolean exact = whole && !isCreditLimited(largest);
        return new SizeAdvice(product, smallest, largest, steps, smaller, limit, unknown, exact);
    }

    /** Whether what a leftover is worth depends on the size. */
    private boolean isCreditLimited(RunCost cost) {
        return !book.settings().leftoverCredit().isZero()
                && cost.items().stream().anyMatch(item -> item.mostUsable() != null);
    }

    private static SizeAdvice.@Nullable Limit limit(Product product, RunCost cost) {
        Figure yearly = product.yearlyUnits();
        if (yearly == null) {
            return null;
        }
        BigDecimal shortest = null;
        String name = "";
        for (ItemCost item : cost.items()) {
            Material material = item.item().material();
            Figure life = material == null ? null : material.shelfLifeMonths();
            if (life != null
                    && item.housePrice() == null
                    && item.item().isNeeded()
                    && (shortest == null || life.value().compareTo(shortest) < 0)) {
                shortest = life.value();
                name = item.item().name();
            }
        }
        return shortest == null
                ? null
                : new SizeAdvice.Limit(
                        yearly.value()
                                .multiply(shortest)
                                .divide(MONTHS, MathContext.DECIMAL128)
                                .setScale(0, RoundingMode.FLOOR)
                                .longValueExact(),
                        name);
    }

    /** The costs of one product by size, each found once. */
    private final class Sizes {

        private final Product product;
        private final Map<Long, RunCost> known = new HashMap<>();

        Sizes(Product product) {
            this.product = product;
        }

        @Nullable RunCost at(long units) {
            RunCost cost = known.get(units);
            if (cost == null) {
                Figure size = Figure.of(BigDecimal.valueOf(units));
                Run run = new Run.OfProduct(product.name(), size, Origin.NONE);
                cost = coster.cost(RunNeeds.of(book, run)).cost();
                if (cost != null) {
                    known.put(units, cost);
                }
            }
            return cost;
        }

        /**
         * Finds the sizes at which the way changes, rising.
         *
         * @return whether every change was found
         */
        boolean find(long from, long to, List<Long> changes) {
            RunCost first = at(from);
            RunCost last = at(to);
            if (first == null || last == null || limits.cancelled().getAsBoolean()) {
                return false;
            }
            if (Way.of(first).equals(Way.of(last))) {
                return true;
            }
            if (to - from == 1) {
                changes.add(to);
                return true;
            }
            long middle = from + (to - from) / 2;
            boolean left = find(from, middle, changes);
            return find(middle, to, changes) && left;
        }
    }
}
