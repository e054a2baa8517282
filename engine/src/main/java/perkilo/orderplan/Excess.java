package perkilo.orderplan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import perkilo.costing.Market;
import perkilo.origin.Finding;
import perkilo.purchasing.Quote;

/** What packs and minimums make a plan buy beyond what it needs. */
final class Excess {

    private final OrderPlan plan;
    private final String home;

    Excess(Market market, OrderPlan plan) {
        this.plan = plan;
        this.home = market.book().settings().home().getCurrencyCode();
    }

    /**
     * A warning for each item of which at least one pack more is bought than the needs and the safety stock take, with
     * what was there, and is left unused.
     */
    List<Finding> warnings() {
        List<Finding> warnings = new ArrayList<>();
        for (StockFlow flow : plan.stock()) {
            List<LotUse> bought = flow.lots().stream().filter(LotUse::isBought).toList();
            BigDecimal unused = sum(bought.stream().map(LotUse::left).toList());
            BigDecimal left = sum(flow.lots().stream()
                            .filter(lot -> lot.arrivesIn(plan.basis().horizon()))
                            .map(LotUse::quantity)
                            .toList())
                    .subtract(flow.item().total())
                    .subtract(flow.item().safety().quantity())
                    .min(unused);
            if (!bought.isEmpty() && left.compareTo(smallestPack(bought)) >= 0) {
                warnings.add(warning(flow, bought, left));
            }
        }
        return warnings;
    }

    private BigDecimal smallestPack(List<LotUse> bought) {
        return bought.stream()
                .map(lot -> quote(lot).packSize())
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    private Quote quote(LotUse lot) {
        LotUse.Bought bought = (LotUse.Bought) lot.source();
        return plan.basis().problem().quotes().get(bought.line().line().quote());
    }

    private Finding warning(StockFlow flow, List<LotUse> bought, BigDecimal left) {
        LotUse dearest = bought.stream()
                .max(Comparator.comparing(LotUse::left).thenComparing(LotUse::from))
                .orElseThrow();
        LotUse.Bought line = (LotUse.Bought) dearest.source();
        BigDecimal cost = line.line().goods().multiply(left).divide(dearest.quantity(), MathContext.DECIMAL128);
        LocalDate last = dearest.lastDay();
        return Finding.warning(
                line.listing().offer().origin(),
                OrderMessages.moreThanNeeded(
                        flow.item().name(),
                        Quantities.of(flow.item().total(), flow.item().item()),
                        Quantities.of(
                                sum(bought.stream().map(LotUse::quantity).toList()),
                                flow.item().item()),
                        Quantities.of(left, flow.item().item()),
                        Quantities.amount(cost),
                        home,
                        last == null ? OrderMessages.leftKeeps() : OrderMessages.leftExpires(last.plusDays(1))));
    }

    private static BigDecimal sum(List<BigDecimal> amounts) {
        return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
