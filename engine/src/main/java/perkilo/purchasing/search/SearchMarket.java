package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Need;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;

/** A purchase problem in the form that the search works on: orders, items, the links between them, and offers. */
final class SearchMarket {
    /** Relative cost of leftover, small enough to break ties only. */
    private static final double TIE = 1e-8;

    final PurchaseProblem problem;
    final int periods;
    final Orders orders;
    final List<WantedItem> items = new ArrayList<>();
    final List<Link> links = new ArrayList<>();
    final List<PackChoice> offers = new ArrayList<>();
    /** By order: the links into it. */
    final List<List<Link>> linksOf = new ArrayList<>();
    /** By offer: the link it belongs to. */
    final List<Link> linkOf = new ArrayList<>();
    /** The part of the objective that does not depend on the purchases. */
    final double constant;
    /** By limit, and then in total: the most that may be paid; infinite without a limit. */
    final double[] cash;

    private final List<LineCosts> costs;
    /** By vendor: whether an order may be so small that more goods pay because they lower the duty on its charges. */
    private final boolean[] tiny;

    SearchMarket(PurchaseProblem problem) {
        this.problem = problem;
        periods = problem.periods();
        orders = new Orders(problem);
        costs = problem.quotes().stream()
                .map(quote -> new LineCosts(quote, problem.vendorOf(quote)))
                .toList();
        tiny = tiny(problem, orders, costs);
        for (int j = 0; j < orders.count; j++) {
            linksOf.add(new ArrayList<>());
        }
        double fixed = 0;
        for (int i = 0; i < problem.needs().size(); i++) {
            WantedItem item = item(i);
            items.add(item);
            fixed += item.holdingOfNeeds();
        }
        constant = fixed;
        cash = new double[orders.limits + 1];
        java.util.Arrays.fill(cash, limit(problem.cashPerPeriod()));
        cash[orders.limits] = limit(problem.cashTotal());
    }

    private static double limit(@Nullable BigDecimal most) {
        return most == null ? Double.POSITIVE_INFINITY : most.doubleValue();
    }

    /** A line of an item's purchases, in the form of a plan. */
    PurchasePlan.Line line(Picks picks, int index) {
        PackChoice offer = offers.get(picks.offer(index));
        long packs = picks.steps(index) * problem.quotes().get(offer.quote).multiple();
        return new PurchasePlan.Line(offer.quote, offer.period, packs);
    }

    boolean limitsCash() {
        return cash[0] < Double.POSITIVE_INFINITY || cash[orders.limits] < Double.POSITIVE_INFINITY;
    }

    /** The most that a possible plan can cost: all the cash, and keeping the longest lines. */
    double ceiling() {
        double keeping = 0;
        for (PackChoice offer : offers) {
            keeping += offer.keepingPerStep * offer.mostSteps;
        }
        double own = problem.orderCost().doubleValue() * orders.count;
        return 1 + constant + keeping + own + Math.min(cash[orders.limits], cash[0] * orders.limits);
    }

    /** The least that a plan can cost, whatever is bought. */
    double floor() {
        double most = 0;
        for (Need need : problem.needs()) {
            most += need.creditPerUnit().multiply(need.creditable()).doubleValue();
        }
        return constant - most;
    }

    private WantedItem item(int index) {
        Need need = problem.needs().get(index);
        List<Integer> quotes = new ArrayList<>();
        List<BigDecimal> steps = new ArrayList<>();
        for (int q = 0; q < problem.quotes().size(); q++) {
            if (problem.quotes().get(q).item() == index) {
                quotes.add(q);
                steps.add(step(problem.quotes().get(q)));
            }
        }
        SupplyGrid grid = new SupplyGrid(need, steps, lasts(need, quotes));
        List<List<Link>> byPeriod = new ArrayList<>();
        for (int t = 0; t < periods; t++) {
            byPeriod.add(links(index, t, quotes, grid));
        }
        return new WantedItem(grid, byPeriod, holdingOfNeeds(need));
    }

    /** The last periods of use of all purchases of an item. */
    private SortedSet<Integer> lasts(Need need, List<Integer> quotes) {
        SortedSet<Integer> lasts = new TreeSet<>();
        for (int q : quotes) {
            for (int t = 0; t < periods; t++) {
                if (problem.quotes().get(q).isFor(t)) {
                    lasts.add(problem.quotes().get(q).lastUse(need, t));
                }
            }
        }
        return lasts;
    }

    private static BigDecimal step(Quote quote) {
        return quote.packSize().multiply(BigDecimal.valueOf(quote.multiple()));
    }

    private static boolean[] tiny(PurchaseProblem problem, Orders orders, List<LineCosts> costs) {
        boolean[] tiny = new boolean[problem.vendors().size()];
        for (int q = 0; orders.anyMixed() && q < costs.size(); q++) {
            int vendor = problem.quotes().get(q).vendor();
            int order = orders.of(vendor, 0);
            tiny[vendor] |= orders.isMixed(order) && costs.get(q).leastGoods() < orders.mostExtraDuty(order);
        }
        return tiny;
    }

    private long longest(int quote, int vendor, long usefulSteps) {
        int order = orders.of(vendor, 0);
        double extra = orders.isMixed(order) ? orders.mostExtraDuty(order) : 0;
        return LongestLine.steps(costs.get(quote), usefulSteps, extra, tiny[vendor]);
    }

    /** The orders of a period that an item may be in; those come first whose goods expire first. */
    private List<Link> links(int item, int period, List<Integer> quotes, SupplyGrid grid) {
        List<Link> found = new ArrayList<>();
        for (int v : vendors(item, period, quotes)) {
            List<PackChoice> here = new ArrayList<>();
            for (int q : quotes) {
                Quote quote = problem.quotes().get(q);
                if (quote.vendor() == v && quote.isFor(period)) {
                    int cap = grid.capOf(quote.lastUse(problem.needs().get(item), period));
                    long most = longest(q, v, grid.usefulSteps(period, cap, step(quote)));
                    if (most > 0 && !refused(v)) {
                        here.add(offer(q, period, grid, most));
                    }
                }
            }
            if (!here.isEmpty()) {
                int last = here.get(0).last;
                boolean covers = grid.canCover(period, here.get(0).cap);
                Link link = new Link(links.size(), item, orders.of(v, period), here, last, covers, tiny[v]);
                links.add(link);
                linksOf.get(link.order()).add(link);
                here.forEach(offer -> linkOf.add(link));
                found.add(link);
            }
        }
        return found;
    }

    /** The vendors of an item in a period, those first whose goods expire first. */
    private List<Integer> vendors(int item, int period, List<Integer> quotes) {
        NavigableMap<Integer, Integer> lasts = new TreeMap<>();
        for (int q : quotes) {
            Quote quote = problem.quotes().get(q);
            if (quote.isFor(period)) {
                lasts.put(quote.vendor(), quote.lastUse(problem.needs().get(item), period));
            }
        }
        return lasts.keySet().stream().sorted(Comparator.comparing(lasts::get)).toList();
    }

    /** Whether a vendor refuses small orders, and has only goods that cost nothing. */
    private boolean refused(int vendor) {
        return problem.vendors().get(vendor).refusesSmallOrders()
                && problem.quotes().stream()
                        .filter(quote -> quote.vendor() == vendor)
                        .flatMap(quote -> quote.tiers().stream())
                        .allMatch(tier -> tier.pricePerPack().signum() == 0);
    }

    private PackChoice offer(int index, int period, SupplyGrid grid, long most) {
        Quote quote = problem.quotes().get(index);
        Need need = problem.needs().get(quote.item());
        BigDecimal step = step(quote);
        double perStep = step.doubleValue();
        double needed = Math.max(grid.netNeed().doubleValue(), perStep);
        double keeping = need.holdingPerUnit().doubleValue() * perStep * (need.untilEnd(period) + quote.early(period))
                + TIE * perStep / needed;
        PackChoice offer = new PackChoice(
                offers.size(),
                index,
                period,
                quote.lastUse(need, period),
                grid.capOf(quote.lastUse(need, period)),
                orders.of(quote.vendor(), period),
                costs.get(index),
                grid.unitsOf(step),
                keeping,
                most);
        offers.add(offer);
        return offer;
    }

    private static double holdingOfNeeds(Need need) {
        BigDecimal kept = BigDecimal.ZERO;
        int periods = need.perPeriod().size();
        for (int t = 0; t < periods; t++) {
            kept = kept.subtract(need.perPeriod().get(t).multiply(BigDecimal.valueOf(need.untilEnd(t))));
        }
        for (Need.Lot lot : need.stock()) {
            int time = lot.arrival() < periods ? need.untilEnd(lot.arrival()) + lot.early() : 0;
            kept = kept.add(lot.quantity().multiply(BigDecimal.valueOf(time)));
        }
        return kept.multiply(need.holdingPerUnit()).doubleValue();
    }
}
