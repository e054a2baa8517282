package perkilo.purchasing;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A buyer's choice between two plans of the same cost: fewer orders, then fewer lines, then fewer lines ordered after
 * their price has ended; then the one that pays later, and then the one that buys less.
 *
 * @param orders to suppliers
 * @param lines of all orders
 * @param unheld lines that are ordered after their price has ended
 * @param outlay payments of each period, in home currency; of two plans, the one that pays less in the first period
 *     that differs pays later
 * @param bought of all items together, each in its base unit
 */
public record Preference(int orders, int lines, int unheld, List<BigDecimal> outlay, BigDecimal bought) {

    public Preference {
        outlay = List.copyOf(outlay);
        requireNonNull(bought, "bought");
    }

    /**
     * The figures of a plan that a buyer compares.
     *
     * @param cost of this plan
     */
    public static Preference of(PurchaseProblem problem, PurchasePlan plan, PlanCost cost) {
        List<BigDecimal> outlay = new ArrayList<>();
        for (int period = 0; period < problem.periods(); period++) {
            outlay.add(cost.outlay(period));
        }
        int unheld = 0;
        BigDecimal bought = BigDecimal.ZERO;
        for (PurchasePlan.Line line : plan.lines()) {
            Quote quote = problem.quotes().get(line.quote());
            unheld += line.period() > quote.heldUntil() ? 1 : 0;
            bought = bought.add(quote.quantity(line.packs()));
        }
        return new Preference(cost.orders().size(), plan.lines().size(), unheld, outlay, bought);
    }

    /** Whether a buyer prefers this plan, if both cost the same. */
    public boolean isBetterThan(Preference other) {
        return compareTo(other) < 0;
    }

    private int compareTo(Preference other) {
        int[] first = {
            Integer.compare(orders, other.orders),
            Integer.compare(lines, other.lines),
            Integer.compare(unheld, other.unheld),
            comparePayments(other),
            bought.compareTo(other.bought)
        };
        for (int difference : first) {
            if (difference != 0) {
                return difference;
            }
        }
        return 0;
    }

    private int comparePayments(Preference other) {
        for (int period = 0; period < outlay.size(); period++) {
            int difference = outlay.get(period).compareTo(other.outlay.get(period));
            if (difference != 0) {
                return difference;
            }
        }
        return 0;
    }
}
