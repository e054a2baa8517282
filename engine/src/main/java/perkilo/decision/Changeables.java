package perkilo.decision;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.money.CurrencyUnit;
import perkilo.costing.CostOutcome;
import perkilo.costing.ItemCost;
import perkilo.costing.Purchase;
import perkilo.costing.RunCost;
import perkilo.decision.Changeable.Kind;
import perkilo.model.Book;
import perkilo.model.Run;
import perkilo.model.Settings;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.purchasing.LineCost;

/** The numbers that costs depend on and a scenario can change, in the words of the sheet Scenarios. */
public final class Changeables {

    private final Book book;
    private final String home;
    private final Map<String, Changeable> all = new LinkedHashMap<>();

    private Changeables(Book book) {
        this.book = book;
        this.home = book.settings().home().getCurrencyCode();
    }

    /** All of them, each once: sizes and work first, then currencies, what is bought, and who sells it. */
    public static List<Changeable> of(CostOutcome.Costed costed) {
        Changeables all = new Changeables(costed.book());
        all.making();
        costed.runs().forEach(all::currencies);
        costed.runs().forEach(all::items);
        costed.runs().forEach(all::suppliers);
        return List.copyOf(all.all.values());
    }

    private void add(Changeable one) {
        all.putIfAbsent(Names.key(one.what()), one);
    }

    private void making() {
        Set<BigDecimal> units = new LinkedHashSet<>();
        for (Run run : book.runs()) {
            if (run instanceof Run.OfProduct product) {
                units.add(product.units().value());
            }
        }
        if (!units.isEmpty()) {
            BigDecimal one = units.size() == 1 ? units.iterator().next() : null;
            add(new Changeable("Run size", Kind.UNITS, one, one == null ? "" : "units", false));
        }
        Figure rate = book.settings().making().labourRate();
        add(new Changeable("Labour rate", Kind.WAGE, rate.value(), home + " per hour", false));
        if (book.suppliers().values().stream()
                .anyMatch(one ->
                        !one.freightPerOrder().isZero() || !one.freightPerKg().isZero())) {
            add(new Changeable("Freight", Kind.FREIGHT, null, "", true));
        }
        if (!book.products().isEmpty()) {
            add(new Changeable("Fill", Kind.FILL, null, "", true));
        }
        if (book.products().values().stream()
                .anyMatch(one -> !one.filling().loss().isZero())) {
            add(new Changeable("Fill loss", Kind.FILL, null, "", true));
        }
    }

    private void currencies(RunCost cost) {
        Settings settings = book.settings();
        for (LineCost line : cost.purchase().cost().lines()) {
            CurrencyUnit currency = cost.purchase().listing(line).offer().currency();
            if (!currency.equals(settings.home())) {
                book.rates()
                        .on(settings.costingDate(), currency, settings.home())
                        .ifPresent(way -> add(new Changeable(
                                currency.getCurrencyCode(),
                                Kind.RATE,
                                way.factor(),
                                home + " for 1 " + currency.getCurrencyCode(),
                                true)));
            }
        }
    }

    private void items(RunCost cost) {
        for (ItemCost item : cost.items()) {
            Figure house = item.housePrice();
            if (house != null && !house.isZero()) {
                add(new Changeable(item.item().name(), Kind.PRICE, house.value(), home + " per kg", true));
            } else if (!item.lines().isEmpty()) {
                add(bought(item, cost.purchase()));
            }
        }
    }

    /** An item at the price of its first line. */
    private static Changeable bought(ItemCost item, Purchase purchase) {
        LineCost line = item.lines().get(0);
        Offer offer = purchase.listing(line).offer();
        Offer.PriceBreak price = offer.breaks().get(line.tier());
        String per = price.per() == null ? "pack" : price.per().symbol();
        return new Changeable(
                item.item().name(),
                Kind.PRICE,
                price.price().value(),
                offer.currency().getCurrencyCode() + " per " + per,
                true);
    }

    private void suppliers(RunCost cost) {
        List<LineCost> lines = new ArrayList<>(cost.purchase().cost().lines());
        for (LineCost line : lines) {
            String name = cost.purchase().listing(line).offer().supplier();
            add(new Changeable(name, Kind.SUPPLIER, null, "", true));
        }
    }
}
