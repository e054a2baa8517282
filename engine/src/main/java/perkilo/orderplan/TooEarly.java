package perkilo.orderplan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.offers.Offer;
import perkilo.origin.Finding;

/** Months that come too soon: what is needed in them cannot be there in time. */
final class TooEarly {

    private final Market market;
    private final HorizonProblem basis;
    private final Horizon horizon;

    TooEarly(Market market, HorizonProblem basis) {
        this.market = market;
        this.basis = basis;
        this.horizon = basis.horizon();
    }

    /**
     * An error for each item that the shelf does not cover in a month, and that no supplier delivers by that month's
     * first day. It names the months, the supplier who is fastest, and the first day that he can be there.
     */
    List<Finding> problems() {
        List<Finding> problems = new ArrayList<>();
        for (int index = 0; index < basis.items().size(); index++) {
            HorizonItem item = basis.items().get(index);
            Optional<Listing> fastest = fastest(item);
            if (fastest.isPresent()) {
                List<BigDecimal> missing = basis.problem().needs().get(index).net();
                int first = horizon.firstPeriodFrom(OrderMonths.arrival(horizon, fastest.orElseThrow()));
                List<Integer> late = shortPeriods(missing, first);
                if (!late.isEmpty()) {
                    problems.add(problem(item, fastest.orElseThrow(), late, missing, first));
                }
            }
        }
        return problems;
    }

    private Optional<Listing> fastest(HorizonItem item) {
        return market.listings(item.name()).stream()
                .min(Comparator.comparing(listing -> OrderMonths.arrival(horizon, listing)));
    }

    private List<Integer> shortPeriods(List<BigDecimal> missing, int before) {
        List<Integer> periods = new ArrayList<>();
        for (int period = 0; period < Math.min(before, horizon.periods()); period++) {
            if (missing.get(period).signum() > 0) {
                periods.add(period);
            }
        }
        return periods;
    }

    private Finding problem(
            HorizonItem item, Listing fastest, List<Integer> periods, List<BigDecimal> missing, int first) {
        String months = periods.stream().map(period -> horizon.name(period)).collect(Collectors.joining(", "));
        BigDecimal quantity = periods.stream().map(missing::get).reduce(BigDecimal.ZERO, BigDecimal::add);
        HorizonItem.Use use = item.uses().stream()
                .filter(one -> periods.contains(one.run().period()))
                .findFirst()
                .orElse(item.uses().get(0));
        return Finding.error(
                use.run().demand().origin(),
                ("\"%s\" cannot be there in time for %s: %s are missing, and the earliest is %s from %s, ordered on %s."
                                + " Goods have to be there on the first of the month they are used in; make it in %s or"
                                + " later, or find a supplier with a shorter lead time.%s")
                        .formatted(
                                item.name(),
                                months,
                                Quantities.of(quantity, item),
                                OrderMonths.arrival(horizon, fastest),
                                fastest.supplier().name(),
                                ordered(fastest.offer()),
                                horizon.name(first),
                                onOrder(item, periods.get(0))));
    }

    /** What is on order and comes later than it is needed. */
    private String onOrder(HorizonItem item, int from) {
        return item.stock().stream()
                .filter(stock -> stock.lot().isOnOrder() && stock.arrival() > from)
                .map(stock -> " %s are on order, but expected only on %s."
                        .formatted(
                                Quantities.of(stock.quantity(), item),
                                stock.lot().expected()))
                .collect(Collectors.joining());
    }

    private String ordered(Offer offer) {
        String day = OrderMonths.firstOrderDay(horizon, offer).toString();
        return offer.isAnnouncedOn(horizon.today()) ? day + ", when the price holds that he has announced" : day;
    }
}
