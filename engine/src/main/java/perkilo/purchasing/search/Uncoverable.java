package perkilo.purchasing.search;

import java.util.ArrayList;
import java.util.List;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanOutcome.Shortfall;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;

/**
 * Explains why a need cannot be covered, and what would help.
 *
 * <p>More than is needed may always be bought. So a need cannot be covered only if the item has no offer, if nothing
 * can arrive in time and still be usable, or if the only vendor refuses small orders and has only free goods, which
 * never reach the minimum.
 */
final class Uncoverable {
    private final SearchMarket market;
    private final PurchaseProblem problem;

    private final Planning planning;

    Uncoverable(Planning planning) {
        this.planning = planning;
        this.market = planning.market;
        this.problem = market.problem;
    }

    /** One for each item whose needs cannot be covered, at the first period that is short; empty if there is none. */
    List<Shortfall> shortfalls() {
        List<Shortfall> found = new ArrayList<>();
        for (int i = 0; i < market.items.size(); i++) {
            if (!planning.canCover(i)) {
                found.add(shortfall(i, firstShort(i)));
            }
        }
        return found;
    }

    /** The first period with a need that no purchase can cover, or else the first with a need. */
    private int firstShort(int item) {
        SupplyGrid grid = market.items.get(item).grid();
        int firstNeed = 0;
        for (int t = market.periods - 1; t >= 0; t--) {
            firstNeed = grid.needs(t) ? t : firstNeed;
        }
        for (int t = firstNeed; t < market.periods; t++) {
            if (grid.needs(t) && !canBeBought(item, t)) {
                return t;
            }
        }
        return firstNeed;
    }

    private boolean canBeBought(int item, int period) {
        for (int t = 0; t <= period; t++) {
            for (Link link : market.items.get(item).linksByPeriod().get(t)) {
                if (link.last() >= period) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a quote can be ordered so that it can be used in a period. */
    private static boolean serves(Quote quote, Need need, int period) {
        for (int t = 0; t <= period; t++) {
            if (quote.isFor(t) && quote.lastUse(need, t) >= period) {
                return true;
            }
        }
        return false;
    }

    private Shortfall shortfall(int item, int period) {
        Need need = problem.needs().get(item);
        List<Quote> quotes =
                problem.quotes().stream().filter(quote -> quote.item() == item).toList();
        if (quotes.isEmpty()) {
            return new Shortfall(
                    item,
                    period,
                    "%s has no offer".formatted(need.item()),
                    "add an offer for %s".formatted(need.item()));
        }
        List<Quote> inTime =
                quotes.stream().filter(quote -> serves(quote, need, period)).toList();
        return inTime.isEmpty() ? notInTime(item, period, quotes) : refused(item, period, inTime);
    }

    private Shortfall notInTime(int item, int period, List<Quote> quotes) {
        String name = problem.needs().get(item).item();
        int earliest = quotes.stream().mapToInt(Quote::firstPeriod).min().orElse(0);
        if (earliest > period) {
            return new Shortfall(
                    item,
                    period,
                    "%s cannot arrive before period %d, and is needed in period %d"
                            .formatted(name, earliest + 1, period + 1),
                    earliest < market.periods
                            ? "move what needs it to period %d or later".formatted(earliest + 1)
                            : "move what needs it beyond the last period");
        }
        int usable = problem.needs().get(item).usablePeriods();
        int latest = quotes.stream()
                .mapToInt(Quote::lastPeriod)
                .filter(last -> last < period)
                .max()
                .orElse(0);
        return new Shortfall(
                item,
                period,
                "%s can be had in period %d at the latest and is usable for %d periods, too short for period %d"
                        .formatted(name, latest + 1, usable, period + 1),
                "move what needs it to period %d, or add an offer that is valid longer".formatted(latest + usable));
    }

    private Shortfall refused(int item, int period, List<Quote> quotes) {
        String vendor = problem.vendorOf(quotes.get(0)).name();
        return new Shortfall(
                item,
                period,
                "%s refuses orders below its minimum order value, which goods without a price can never reach"
                        .formatted(vendor),
                "state a small-order charge for %s, or the prices of its goods".formatted(vendor));
    }
}
