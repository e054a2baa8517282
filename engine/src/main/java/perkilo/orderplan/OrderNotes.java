package perkilo.orderplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.costing.Item;
import perkilo.costing.Market;
import perkilo.costing.PieceWeights;
import perkilo.model.Book;
import perkilo.model.StockLot;
import perkilo.offers.Offer;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/** Notes and warnings about a plan. */
final class OrderNotes {

    private OrderNotes() {}

    static List<Finding> of(Market market, OrderPlan plan) {
        Set<Finding> notes = new LinkedHashSet<>();
        gap(market, plan, notes);
        freeStock(market, notes);
        quotes(plan, notes);
        notes.addAll(new AnnouncedPrices(market, plan.basis()).gaps());
        notes.addAll(PieceWeights.unknown(plan.orders().stream().flatMap(order -> order.listings().stream())));
        plan.stock().forEach(flow -> expired(market.book(), plan, flow, notes));
        plan.stock().forEach(flow -> tooLate(market.book(), plan, flow, notes));
        notes.addAll(new Excess(market, plan).warnings());
        neverOrdered(market, plan, notes);
        return List.copyOf(notes);
    }

    private static void gap(Market market, OrderPlan plan, Set<Finding> notes) {
        if (!plan.proven()) {
            notes.add(Finding.warning(
                    Origin.NONE,
                    OrderMessages.notProven(
                            Quantities.amount(plan.gap()),
                            market.book().settings().home().getCurrencyCode())));
        }
    }

    /** A note if holding costs nothing: then goods are bought months ahead wherever that saves an order. */
    private static void freeStock(Market market, Set<Finding> notes) {
        Figure holding = market.book().settings().holdingPerYear();
        if (holding.isZero()) {
            notes.add(Finding.note(holding.origin(), OrderMessages.stockIsFree()));
        }
    }

    /** A warning for each offer that has expired by the day of an order, at the first such order. */
    private static void quotes(OrderPlan plan, Set<Finding> notes) {
        Set<Offer> said = new HashSet<>();
        for (SupplierOrder order : plan.orders()) {
            for (int line : order.expiredOffers()) {
                Offer offer = order.listings().get(line).offer();
                if (said.add(offer)) {
                    LocalDate last = order.prices().get(line).last();
                    notes.add(Finding.warning(offer.origin(), expiredQuote(offer, String.valueOf(last), order)));
                }
            }
        }
    }

    private static String expiredQuote(Offer offer, String last, SupplierOrder order) {
        return OrderMessages.priceEndsBeforeOrder(offer.supplier(), offer.item(), last, order.orderBy());
    }

    private static void expired(Book book, OrderPlan plan, StockFlow flow, Set<Finding> notes) {
        for (LotUse lot : flow.lots()) {
            if (lot.source() instanceof LotUse.Held held
                    && !lot.outlives(plan.basis().horizon())
                    && lot.left().signum() > 0
                    && (lot.expected() == null || lot.arrivesIn(plan.basis().horizon()))
                    && !isReportedAlready(held.stock().lot(), book)) {
                notes.add(Finding.warning(
                        held.stock().lot().origin(),
                        OrderMessages.stockExpires(
                                Quantities.of(lot.left(), flow.item().item()),
                                flow.item().name(),
                                String.valueOf(lot.lastDay()))));
            }
        }
    }

    /** Whether a lot has expired, or expires before it arrives: then the reader of the stock has reported it. */
    private static boolean isReportedAlready(StockLot lot, Book book) {
        Day expires = lot.expires();
        Day expected = lot.expected();
        return expires != null
                && (expires.date().isBefore(book.settings().costingDate())
                        || (expected != null && expires.date().isBefore(expected.date())));
    }

    /** A note for goods on order that arrive after the last day of the plan. */
    private static void tooLate(Book book, OrderPlan plan, StockFlow flow, Set<Finding> notes) {
        for (LotUse lot : flow.onOrder()) {
            Day expected = lot.expected();
            boolean reported = lot.source() instanceof LotUse.Held held
                    && isReportedAlready(held.stock().lot(), book);
            if (expected != null && !reported && !lot.arrivesIn(plan.basis().horizon())) {
                notes.add(Finding.note(
                        expected.origin(),
                        OrderMessages.notUsedAsExpectedTooLate(
                                Quantities.of(lot.quantity(), flow.item().item()),
                                flow.item().name(),
                                expected.date())));
            }
        }
    }

    private static void neverOrdered(Market market, OrderPlan plan, Set<Finding> notes) {
        List<String> house = new ArrayList<>(plan.basis().runs().stream()
                .flatMap(run -> run.needs().items().stream())
                .filter(item -> market.housePrice(item).isPresent())
                .map(Item::name)
                .collect(Collectors.toCollection(LinkedHashSet::new)));
        if (!house.isEmpty()) {
            notes.add(Finding.note(Origin.NONE, OrderMessages.neverOrdered(house)));
        }
    }
}
