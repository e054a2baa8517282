package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.Item;
import perkilo.costing.ItemCost;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.costing.RunCost;
import perkilo.costing.RunNeeds;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.model.Supplier;
import perkilo.names.Names;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;

/**
 * Replaces the inputs of a run by those of another, one group after the other, and costs what is between.
 *
 * <p>Quantities first: what each item is needed, times what it cost before. Then the packs that were bought before are
 * costed again, at the new prices, then at the new rates, then with the new charges; an offer that is no longer there
 * keeps its price. What is left to the new landed cost of each item is the choice of the purchase.
 */
final class VarianceSteps {

    private final CostOutcome.Costed earlier;
    private final RunCost before;
    private final CostOutcome.Costed later;
    private final RunCost after;
    private final Map<String, BigDecimal> priceBefore;
    private final Map<String, BigDecimal> priceAfter;

    VarianceSteps(CostOutcome.Costed earlier, RunCost before, CostOutcome.Costed later, RunCost after) {
        this.earlier = earlier;
        this.before = before;
        this.later = later;
        this.after = after;
        this.priceBefore = landed(before);
        this.priceAfter = landed(after);
    }

    private static Map<String, BigDecimal> landed(RunCost cost) {
        Map<String, BigDecimal> prices = new HashMap<>();
        for (ItemCost item : cost.items()) {
            prices.put(item.item().key(), item.landedPerUnit());
        }
        return prices;
    }

    /** The parts. */
    Variance variance() {
        BigDecimal was = Measure.ofOne(before);
        BigDecimal rest = ofOne(before, before.wasted().add(before.oneOffShare()));
        BigDecimal workBefore = ofOne(before, before.work().total());
        BigDecimal workAfter = ofOne(after, after.work().total());
        BigDecimal recipe = used(withRecipe(), priceBefore).add(rest).add(workBefore);
        BigDecimal process = used(after.needs(), priceBefore).add(rest).add(workAfter);
        List<Offer> bought = bought();
        List<Offer> repriced = repriced(bought);
        Book prices = earlier.book().withOffers(repriced);
        ExchangeRates newRates = ratesOfBoth();
        Book rates = prices.withRates(newRates)
                .withSettings(prices.settings().on(later.book().settings().costingDate()));
        Book charges = withSuppliersOfBoth(later.book()).withRates(newRates).withOffers(withDuty(repriced));
        BigDecimal price = used(after.needs(), again(prices)).add(rest).add(workAfter);
        BigDecimal rate = used(after.needs(), again(rates)).add(rest).add(workAfter);
        BigDecimal charge = used(after.needs(), again(charges)).add(rest).add(workAfter);
        BigDecimal oneOffs = ofOne(before, before.oneOffShare());
        BigDecimal choice = used(after.needs(), priceAfter)
                .add(ofOne(after, after.wasted()))
                .add(oneOffs)
                .add(workAfter);
        List<BigDecimal> states = List.of(was, recipe, process, price, rate, charge, choice, Measure.ofOne(after));
        return Variance.of(after.needs().title(), after.needs(), Measure.of(after), states);
    }

    private static BigDecimal ofOne(RunCost cost, BigDecimal amount) {
        return amount.divide(Measure.of(cost), MathContext.DECIMAL128);
    }

    /** What a run's needs cost for one; an item that was not bought before has only its new price. */
    private BigDecimal used(RunNeeds needs, Map<String, BigDecimal> prices) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Item item : needs.items()) {
            BigDecimal price = prices.get(item.key());
            BigDecimal known = price == null || isNew(item) ? priceAfter.get(item.key()) : price;
            if (known != null) {
                sum = sum.add(item.needed().multiply(known));
            }
        }
        BigDecimal units = needs.units();
        return sum.divide(units == null ? needs.batches().output() : units, MathContext.DECIMAL128);
    }

    /** Whether none of it was bought before, so that it has no old price. */
    private boolean isNew(Item item) {
        return before.items().stream()
                .noneMatch(
                        old -> old.item().key().equals(item.key()) && old.item().isNeeded());
    }

    /** The new recipe and list of components, made and filled as before. */
    private RunNeeds withRecipe() {
        Formula formula = after.needs().formula();
        Batching batching = before.needs().formula().batching();
        Formula mixed = new Formula(before.needs().formula().name(), formula.lines(), batching, formula.origin());
        Map<String, Material> materials = new LinkedHashMap<>(later.book().materials());
        materials.putAll(earlier.book().materials());
        Book book = earlier.book().withMaterials(materials).withFormula(mixed);
        Product old = before.needs().product();
        Product now = after.needs().product();
        if (old != null && now != null) {
            Map<String, Product> products = new LinkedHashMap<>(book.products());
            products.put(Names.key(old.name()), withComponents(old, now));
            book = book.withProducts(products);
        }
        Run run = before.needs().run();
        return RunNeeds.of(book, run);
    }

    private static Product withComponents(Product old, Product now) {
        Map<String, Figure> losses = new HashMap<>();
        old.components().forEach(part -> losses.put(Names.key(part.name()), part.loss()));
        return old.with(now.components().stream()
                .map(part -> new Product.Component(
                        part.name(),
                        part.perUnit(),
                        losses.getOrDefault(Names.key(part.name()), part.loss()),
                        part.weight(),
                        part.origin()))
                .toList());
    }

    // the packs of before, costed again

    /** The offers of the lines, in the order of the lines; valid on any day. */
    private List<Offer> bought() {
        List<Offer> offers = new ArrayList<>();
        for (LineCost line : before.purchase().cost().lines()) {
            Offer offer = before.purchase().listing(line).offer();
            offers.add(with(offer, offer.breaks(), offer.terms()));
        }
        return offers;
    }

    private static Offer with(Offer offer, List<Offer.PriceBreak> breaks, LineTerms terms) {
        return new Offer(
                offer.supplier(),
                offer.item(),
                offer.packSize(),
                offer.packUnit(),
                breaks,
                offer.currency(),
                terms,
                Validity.UNKNOWN,
                offer.origin());
    }

    /**
     * The same packs at their new prices; those that are no longer offered, or not in such a small quantity, or in
     * another currency, keep theirs.
     */
    private List<Offer> repriced(List<Offer> bought) {
        List<LineCost> lines = before.purchase().cost().lines();
        List<Offer> offers = new ArrayList<>();
        for (int at = 0; at < bought.size(); at++) {
            Offer offer = bought.get(at);
            Offer now = now(offer);
            BigDecimal quantity = offer.packSize()
                    .value()
                    .multiply(BigDecimal.valueOf(lines.get(at).line().packs()));
            boolean priced = now != null && now.breaks().get(0).fromQuantity().compareTo(quantity) <= 0;
            offers.add(now == null || !priced ? offer : with(offer, now.breaks(), offer.terms()));
        }
        return offers;
    }

    private List<Offer> withDuty(List<Offer> bought) {
        return bought.stream()
                .map(offer -> {
                    Offer now = now(offer);
                    return now == null ? offer : with(offer, offer.breaks(), now.terms());
                })
                .toList();
    }

    private @Nullable Offer now(Offer offer) {
        for (Listing listing : later.market().currentListings(offer.item())) {
            Offer one = listing.offer();
            if (Names.key(one.supplier()).equals(Names.key(offer.supplier()))
                    && one.packUnit() == offer.packUnit()
                    && one.packSize().value().compareTo(offer.packSize().value()) == 0
                    && one.currency().equals(offer.currency())) {
                return one;
            }
        }
        return null;
    }

    /** The new rates; a currency that they do not have keeps its old ones. */
    private ExchangeRates ratesOfBoth() {
        LocalDate day = later.book().settings().costingDate();
        CurrencyUnit home = later.book().settings().home();
        List<DatedRate> all = new ArrayList<>(later.book().rates().rates());
        Set<CurrencyUnit> missing = new LinkedHashSet<>();
        for (LineCost line : before.purchase().cost().lines()) {
            Listing listing = before.purchase().listing(line);
            for (CurrencyUnit currency :
                    List.of(listing.offer().currency(), listing.supplier().currency())) {
                if (later.book().rates().on(day, currency, home).isEmpty()) {
                    missing.add(currency);
                }
            }
        }
        for (DatedRate rate : earlier.book().rates().rates()) {
            if (missing.contains(rate.from()) || missing.contains(rate.to())) {
                all.add(rate);
            }
        }
        return new ExchangeRates(all);
    }

    /** The new book, with those suppliers of before that it does not have. */
    private Book withSuppliersOfBoth(Book book) {
        Map<String, Supplier> suppliers = new LinkedHashMap<>(earlier.book().suppliers());
        suppliers.putAll(book.suppliers());
        return book.withSuppliers(suppliers);
    }

    /**
     * The landed cost of a kilogram or piece of each item in the packs of before, by the prices and charges of a book.
     */
    private Map<String, BigDecimal> again(Book book) {
        Map<String, BigDecimal> prices = new HashMap<>(priceBefore);
        for (ItemCost item : before.items()) {
            ItemCost now = itemAfter(item);
            if (item.housePrice() != null && now != null && now.housePrice() != null) {
                prices.put(item.item().key(), now.landedPerUnit());
            }
        }
        Market market = new Market(book);
        List<LineCost> lines = before.purchase().cost().lines();
        List<Need> needs = new ArrayList<>();
        List<Quote> quotes = new ArrayList<>();
        List<PurchasePlan.Line> plan = new ArrayList<>();
        List<String> keys = new ArrayList<>();
        for (LineCost line : lines) {
            Listing old = before.purchase().listing(line);
            Listing listing = same(market, old);
            if (listing != null) {
                needs.add(Need.once(old.offer().item(), line.quantity()));
                quotes.add(listing.quote(needs.size() - 1, 0, 0));
                plan.add(new PurchasePlan.Line(quotes.size() - 1, 0, line.line().packs()));
                keys.add(Names.key(old.offer().item()));
            }
        }
        PlanCost cost = PlanCost.of(PurchaseProblem.once(needs, market.vendors(), quotes), new PurchasePlan(plan));
        Map<String, BigDecimal> paid = new HashMap<>();
        Map<String, BigDecimal> quantity = new HashMap<>();
        for (LineCost line : cost.lines()) {
            String key = keys.get(line.line().quote());
            paid.merge(key, line.landed(), BigDecimal::add);
            quantity.merge(key, line.quantity(), BigDecimal::add);
        }
        paid.forEach((key, amount) ->
                prices.put(key, amount.divide(quantity.getOrDefault(key, BigDecimal.ONE), MathContext.DECIMAL128)));
        return prices;
    }

    private @Nullable ItemCost itemAfter(ItemCost item) {
        return after.items().stream()
                .filter(now -> now.item().key().equals(item.item().key()))
                .findFirst()
                .orElse(null);
    }

    /** The listing of a pack that was bought before. */
    private static @Nullable Listing same(Market market, Listing old) {
        for (Listing listing : market.listings(old.offer().item())) {
            Offer one = listing.offer();
            if (Names.key(one.supplier()).equals(Names.key(old.offer().supplier()))
                    && one.packUnit() == old.offer().packUnit()
                    && one.packSize().value().compareTo(old.offer().packSize().value()) == 0) {
                return listing;
            }
        }
        return null;
    }
}
