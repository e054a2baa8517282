package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import perkilo.origin.Finding;

/** Needs whose goods cannot arrive in time. */
final class TooEarly {

    private final LocalDate today;
    private final Wanted item;
    private final ItemOffers offers;

    TooEarly(LocalDate today, Wanted item, ItemOffers offers) {
        this.today = today;
        this.item = item;
        this.offers = offers;
    }

    /**
     * An error for the needs of an item that neither stock nor an order can meet on their day, if somebody sells it. It
     * names the days, the fastest supplier, and the first day on which they can deliver.
     *
     * @param late the needs that are planned for a later day
     */
    Optional<Finding> problem(List<HorizonItem.Use> late) {
        List<HorizonItem.Use> waiting = late.stream()
                .filter(use ->
                        !use.run().goodsNeeded().isBefore(today) || use.day().isAfter(today))
                .toList();
        return waiting.isEmpty() ? Optional.empty() : Optional.of(problemOf(waiting));
    }

    private Finding problemOf(List<HorizonItem.Use> waiting) {
        String days = waiting.stream()
                .map(use -> use.run().goodsNeeded().toString())
                .distinct()
                .collect(Collectors.joining(", "));
        BigDecimal quantity = waiting.stream().map(use -> use.item().needed()).reduce(BigDecimal.ZERO, BigDecimal::add);
        LocalDate last = waiting.stream()
                .map(HorizonItem.Use::day)
                .max(LocalDate::compareTo)
                .orElseThrow();
        List<String> sentences = new ArrayList<>();
        sentences.add(OrderMessages.cannotArrive(
                item.item().name(), days, Quantities.of(quantity, item.item()), waiting.size() > 1));
        offers.fastest().ifPresent(fastest -> sentences.add(earliest(fastest)));
        sentences.add(OrderMessages.planForLater(last, today));
        sentences.addAll(onOrder(waiting.get(0).run().goodsNeeded()));
        String text = String.join(" ", sentences);
        return Finding.error(waiting.get(0).run().demand().origin(), text);
    }

    private String earliest(ItemOffers.Fastest fastest) {
        String supplier = fastest.listing().supplier().name();
        return fastest.announced()
                ? OrderMessages.earliestOnceAnnounced(fastest.arrival(), supplier, fastest.ordered())
                : OrderMessages.earliest(fastest.arrival(), supplier, fastest.ordered());
    }

    /** A sentence for each lot on order that arrives too late. */
    private List<String> onOrder(LocalDate from) {
        return item.stock().stream()
                .filter(stock -> stock.lot().isOnOrder() && stock.from().isAfter(from))
                .map(stock -> OrderMessages.onOrderTooLate(
                        Quantities.of(stock.quantity(), item.item()),
                        String.valueOf(stock.lot().expected())))
                .toList();
    }
}
