package perkilo.orderplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.TreeMap;
import perkilo.costing.Listing;
import perkilo.offers.Offer;
import perkilo.origin.Decimals;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;

/** The costs of small changes of a plan, with everything else unchanged. */
final class ChangedPlans {

    private final OrderPlan plan;
    private final PurchaseProblem problem;

    ChangedPlans(OrderPlan plan) {
        this.plan = plan;
        this.problem = plan.basis().problem();
    }

    /** Each order for the day with needs before, and for the day after. */
    List<Reasons.Shift> shifts() {
        List<Reasons.Shift> shifts = new ArrayList<>();
        for (int order = 0; order < plan.orders().size(); order++) {
            for (int by : new int[] {-1, 1}) {
                int to = plan.orders().get(order).period() + by;
                if (to >= 0 && to < problem.periods()) {
                    shifts.add(shift(order, by));
                }
            }
        }
        return shifts;
    }

    /** Each line with the next larger number of packs, and with enough packs for its next price break. */
    List<Reasons.MorePacks> morePacks() {
        List<Reasons.MorePacks> more = new ArrayList<>();
        for (int order = 0; order < plan.orders().size(); order++) {
            SupplierOrder to = plan.orders().get(order);
            for (int index = 0; index < to.listings().size(); index++) {
                LineCost line = to.cost().lines().get(index);
                Listing listing = to.listings().get(index);
                Quote quote = problem.quotes().get(line.line().quote());
                more.add(more(order, line, listing, line.line().packs() + quote.multiple(), false));
                OptionalLong next = packsAtNextBreak(quote, line);
                if (next.isPresent()) {
                    more.add(more(order, line, listing, next.getAsLong(), true));
                }
            }
        }
        return more;
    }

    private Reasons.Shift shift(int index, int by) {
        SupplierOrder order = plan.orders().get(index);
        int to = order.period() + by;
        OptionalInt joined = joined(order, to);
        LocalDate day = plan.basis().horizon().day(to);
        int vendor = joined.orElse(plan.basis().supplierOf(order.cost().vendor()));
        return new Reasons.Shift(index, by, day, joined.isPresent(), moved(order, vendor, to));
    }

    /** The vendor of the supplier's order that an order for another day joins: the last one for that day. */
    private OptionalInt joined(SupplierOrder order, int to) {
        int supplier = plan.basis().supplierOf(order.cost().vendor());
        return plan.orders().stream()
                .filter(other -> other.period() == to
                        && plan.basis().supplierOf(other.cost().vendor()) == supplier)
                .mapToInt(other -> other.cost().vendor())
                .reduce((first, second) -> second);
    }

    /**
     * An order for another day, at the prices of the day on which it is placed then, together with the supplier's order
     * of that day if there is one.
     */
    private Difference moved(SupplierOrder order, int usual, int to) {
        int vendor = order.cost().vendor();
        Map<Integer, Long> packs = new TreeMap<>();
        List<PurchasePlan.Line> lines = new ArrayList<>();
        for (PurchasePlan.Line line : plan.plan().lines()) {
            int of = problem.quotes().get(line.quote()).vendor();
            boolean moves = of == vendor && line.period() == order.period();
            if (moves || (of == usual && line.period() == to)) {
                Optional<Integer> then = plan.basis().quoteFor(line.quote(), usual, to, line.packs());
                if (then.isEmpty()) {
                    return new Difference.NotPossible(whyNot(usual, line, to));
                }
                packs.merge(then.orElseThrow(), line.packs(), Long::sum);
            } else {
                lines.add(line);
            }
        }
        packs.forEach((quote, count) -> lines.add(new PurchasePlan.Line(quote, to, count)));
        return compare(new PurchasePlan(lines));
    }

    private String whyNot(int vendor, PurchasePlan.Line line, int to) {
        boolean inTime = plan.basis().slots().get(vendor).days().get(to) != null;
        Offer offer = plan.basis().listings().get(line.quote()).offer();
        return inTime
                ? WhyMessages.noPriceThen(offer.item(), offer.pack())
                : WhyMessages.cannotArriveBy(plan.basis().horizon().name(to));
    }

    private Reasons.MorePacks more(int order, LineCost line, Listing listing, long packs, boolean toNextBreak) {
        List<PurchasePlan.Line> lines = new ArrayList<>(plan.plan().lines());
        lines.remove(line.line());
        lines.add(new PurchasePlan.Line(line.line().quote(), line.line().period(), packs));
        return new Reasons.MorePacks(order, line, listing, packs, toNextBreak, compare(new PurchasePlan(lines)));
    }

    private static OptionalLong packsAtNextBreak(Quote quote, LineCost line) {
        int next = line.tier() + 1;
        return next < quote.tiers().size()
                ? OptionalLong.of(quote.packsFor(quote.tiers().get(next).from()))
                : OptionalLong.empty();
    }

    private Difference compare(PurchasePlan changed) {
        List<String> broken = PlanCheck.violations(problem, changed);
        if (!broken.isEmpty()) {
            return new Difference.NotPossible(why(changed));
        }
        PlanCost cost = PlanCost.of(problem, changed);
        return new Difference.Costs(
                cost.objective().subtract(plan.cost().objective()),
                cost.outlay().subtract(plan.outlay()),
                true);
    }

    /** The rule that the changed plan breaks: a first price, an item's need, or a limit. */
    private String why(PurchasePlan changed) {
        return belowFirstPrice(changed).or(() -> missing(changed)).orElse(WhyMessages.breaksLimit());
    }

    /** The first line that is too small for the first price; a plan with such a line cannot be costed. */
    private Optional<String> belowFirstPrice(PurchasePlan changed) {
        return changed.lines().stream()
                .filter(line -> problem.quotes().get(line.quote()).tierFor(line.packs()) < 0)
                .findFirst()
                .map(line -> {
                    Offer offer = plan.basis().listings().get(line.quote()).offer();
                    return WhyMessages.belowFirstPrice(
                            line.packs(),
                            offer.pack(),
                            offer.item(),
                            Decimals.readable(offer.breaks().get(0).fromQuantity(), 3),
                            offer.packUnit().symbol());
                });
    }

    /** The first item whose need would not be covered. */
    private Optional<String> missing(PurchasePlan changed) {
        for (int item = 0; item < plan.stock().size(); item++) {
            List<LotUse.Bought> bought = new ArrayList<>();
            for (LineCost line : PlanCost.of(problem, changed).lines()) {
                if (problem.quotes().get(line.line().quote()).item() == item) {
                    bought.add(new LotUse.Bought(
                            line, plan.basis().listings().get(line.line().quote())));
                }
            }
            HorizonItem needed = plan.basis().items().get(item);
            StockFlow flow = StockFlow.of(plan.basis(), needed, bought);
            for (int period = 0; period < problem.periods(); period++) {
                if (flow.days().get(period).used().compareTo(needed.needed().get(period)) < 0) {
                    return Optional.of(WhyMessages.wouldBeMissing(
                            needed.name(), plan.basis().horizon().name(period)));
                }
            }
        }
        return Optional.empty();
    }
}
