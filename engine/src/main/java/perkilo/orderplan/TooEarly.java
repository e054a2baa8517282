package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.origin.Finding;

/** Months whose goods cannot arrive in time. */
final class TooEarly {

    private final Market market;
    private final Horizon horizon;

    TooEarly(Market market, Horizon horizon) {
        this.market = market;
        this.horizon = horizon;
    }

    /**
     * An error for an item that the stock does not cover in a month, and that no supplier delivers by that month's
     * first day. It names the months, the fastest supplier, and the first day on which they can deliver.
     */
    Optional<Finding> problem(HorizonItem item) {
        Optional<Listing> fastest = fastest(item);
        if (fastest.isEmpty()) {
            return Optional.empty();
        }
        List<BigDecimal> missing =
                item.asNeed(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO).net();
        int first = horizon.firstPeriodFrom(OrderMonths.arrival(market.prices(), fastest.orElseThrow()));
        List<Integer> late = shortPeriods(missing, first);
        return late.isEmpty()
                ? Optional.empty()
                : Optional.of(problem(item, fastest.orElseThrow(), late, missing, first));
    }

    private Optional<Listing> fastest(HorizonItem item) {
        return market.listings(item.name()).stream()
                .min(Comparator.comparing(listing -> OrderMonths.arrival(market.prices(), listing)));
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
        List<String> sentences = new ArrayList<>();
        sentences.add(OrderMessages.cannotArrive(item.name(), months, Quantities.of(quantity, item)));
        sentences.add(earliest(fastest));
        sentences.add(OrderMessages.planForLater(horizon.name(first)));
        sentences.addAll(onOrder(item, periods.get(0)));
        String text = String.join(" ", sentences);
        return Finding.error(use.run().demand().origin(), text);
    }

    private String earliest(Listing fastest) {
        LocalDate arrival = OrderMonths.arrival(market.prices(), fastest);
        LocalDate ordered = OrderMonths.firstOrderDay(market.prices(), fastest.offer());
        String supplier = fastest.supplier().name();
        return ordered.isAfter(horizon.today())
                ? OrderMessages.earliestOnceAnnounced(arrival, supplier, ordered)
                : OrderMessages.earliest(arrival, supplier, ordered);
    }

    /** A sentence for each lot on order that arrives too late. */
    private static List<String> onOrder(HorizonItem item, int from) {
        return item.stock().stream()
                .filter(stock -> stock.lot().isOnOrder() && stock.arrival() > from)
                .map(stock -> OrderMessages.onOrderTooLate(
                        Quantities.of(stock.quantity(), item),
                        String.valueOf(stock.lot().expected())))
                .toList();
    }
}
