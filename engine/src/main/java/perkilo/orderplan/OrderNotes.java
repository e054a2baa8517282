package perkilo.orderplan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.model.Book;
import perkilo.model.StockLot;
import perkilo.offers.Offer;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/** What a person should know about a plan. */
final class OrderNotes {

    private OrderNotes() {}

    static List<Finding> of(Market market, OrderPlan plan) {
        Set<Finding> notes = new LinkedHashSet<>();
        gap(market, plan, notes);
        freeStock(market, notes);
        quotes(plan, notes);
        plan.orders().forEach(order -> twoDays(order, notes));
        notes.addAll(new AnnouncedPrices(market, plan.basis()).gaps());
        plan.orders().forEach(order -> freight(order, notes));
        plan.stock().forEach(flow -> expired(market.book(), plan, flow, notes));
        plan.stock().forEach(flow -> tooLate(market.book(), plan, flow, notes));
        neverOrdered(market, plan, notes);
        return List.copyOf(notes);
    }

    private static void gap(Market market, OrderPlan plan, Set<Finding> notes) {
        if (!plan.proven()) {
            notes.add(Finding.warning(
                    Origin.NONE,
                    "the orders are the best found in the time allowed; no plan can be cheaper by more than %s %s"
                            .formatted(
                                    Quantities.amount(plan.gap()),
                                    market.book().settings().home())));
        }
    }

    /** Stock that costs nothing is bought months ahead wherever that saves an order. */
    private static void freeStock(Market market, Set<Finding> notes) {
        Figure holding = market.book().settings().holdingPerYear();
        if (holding.isZero()) {
            notes.add(Finding.note(
                    holding.origin(),
                    "Holding % per year is blank or 0, so stock costs nothing in this plan, and may be bought months ahead;"
                            + " type what capital, space and risk cost you"));
        }
    }

    /** One warning for each offer that holds no longer when it is ordered, at the first order that this is true of. */
    private static void quotes(OrderPlan plan, Set<Finding> notes) {
        Set<Offer> said = new HashSet<>();
        for (SupplierOrder order : plan.orders()) {
            for (int line : order.expiredOffers()) {
                Offer offer = order.listings().get(line).offer();
                if (said.add(offer)) {
                    notes.add(Finding.warning(offer.origin(), expiredQuote(offer, order)));
                }
            }
        }
    }

    private static String expiredQuote(Offer offer, SupplierOrder order) {
        return "%s's price for \"%s\" holds until %s, but some is to be ordered by %s: it is planned at that price, ask for a new quote"
                .formatted(offer.supplier(), offer.item(), offer.validUntil(), order.orderBy());
    }

    /**
     * A warning for each line of an order that cannot be placed on the day of the others, as its price begins later.
     */
    private static void twoDays(SupplierOrder order, Set<Finding> notes) {
        for (int line : order.notYetOffered()) {
            Offer offer = order.listings().get(line).offer();
            notes.add(Finding.warning(
                    offer.origin(),
                    "the order from %s for %s is to be placed by %s, before a price in it rises or ends, but \"%s\" only from %s on at the price it is planned at: place two orders; what %s charges for each order is planned once"
                            .formatted(
                                    offer.supplier(),
                                    order.neededBy(),
                                    order.orderBy(),
                                    offer.item(),
                                    offer.quotedOn(),
                                    offer.supplier())));
        }
    }

    private static void freight(SupplierOrder order, Set<Finding> notes) {
        boolean pieces = order.listings().stream().anyMatch(Listing::isByPiece);
        if (pieces && Market.charges(order.supplier()).freightPerKg().value().signum() > 0) {
            notes.add(Finding.warning(
                    order.supplier().origin(),
                    "%s charges freight by weight, but sells pieces whose weight is not known: none is counted for them"
                            .formatted(order.supplier().name())));
        }
    }

    private static void expired(Book book, OrderPlan plan, StockFlow flow, Set<Finding> notes) {
        for (LotUse lot : flow.lots()) {
            if (lot.source() instanceof LotUse.Held held
                    && !lot.outlives(plan.basis().horizon())
                    && lot.left().signum() > 0
                    && (lot.expected() == null || lot.arrivesIn(plan.basis().horizon()))
                    && !isToldOfStock(held.stock().lot(), book)) {
                notes.add(Finding.warning(
                        held.stock().lot().origin(),
                        "%s of \"%s\" cannot be used before it expires on %s"
                                .formatted(
                                        Quantities.of(lot.left(), flow.item()),
                                        flow.item().name(),
                                        lot.lastDay())));
            }
        }
    }

    /** Whether a lot is expired, or expires before it comes: that was told when the stock was read. */
    private static boolean isToldOfStock(StockLot lot, Book book) {
        Day expires = lot.expires();
        Day expected = lot.expected();
        return expires != null
                && (expires.date().isBefore(book.settings().costingDate())
                        || (expected != null && expires.date().isBefore(expected.date())));
    }

    /** A note for goods on order that come too late for anything that is planned. */
    private static void tooLate(Book book, OrderPlan plan, StockFlow flow, Set<Finding> notes) {
        for (LotUse lot : flow.onOrder()) {
            Day expected = lot.expected();
            boolean told = lot.source() instanceof LotUse.Held held
                    && isToldOfStock(held.stock().lot(), book);
            if (expected != null && !told && !lot.arrivesIn(plan.basis().horizon())) {
                notes.add(Finding.note(
                        expected.origin(),
                        "%s of \"%s\" are expected on %s, too late for the last month that is planned for, and are not used"
                                .formatted(
                                        Quantities.of(lot.quantity(), flow.item()),
                                        flow.item().name(),
                                        expected)));
            }
        }
    }

    private static void neverOrdered(Market market, OrderPlan plan, Set<Finding> notes) {
        List<String> house = new ArrayList<>(plan.basis().runs().stream()
                .flatMap(run -> run.needs().items().stream())
                .filter(item -> market.housePrice(item).isPresent())
                .map(item -> "\"" + item.name() + "\"")
                .collect(Collectors.toCollection(LinkedHashSet::new)));
        if (!house.isEmpty()) {
            notes.add(Finding.note(
                    Origin.NONE,
                    "%s: made in the house, or taken as process water; never ordered"
                            .formatted(String.join(", ", house))));
        }
    }
}
