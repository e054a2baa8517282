package perkilo.model;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.offers.OfferHistory;
import perkilo.origin.Account;
import perkilo.units.ExchangeRates;

/**
 * All data of one workbook, with the price lists and rates that go with it.
 *
 * @param settings those of the whole workbook
 * @param suppliers by {@link Names#key}
 * @param offers in the order of the sheets
 * @param materials by {@link Names#key}; also those that only a formula names
 * @param formulas by {@link Names#key}
 * @param products by {@link Names#key}
 * @param runs what to cost, in order
 * @param demand what to plan purchases for
 * @param stock goods on the shelf and on order
 * @param rates exchange rates
 * @param scenarios what-ifs that are costed beside today
 * @param past what is known of earlier days
 * @param gaps what could not be read
 * @param account what became of everything in the files
 */
public record Book(
        Settings settings,
        Map<String, Supplier> suppliers,
        List<Offer> offers,
        Map<String, Material> materials,
        Map<String, Formula> formulas,
        Map<String, Product> products,
        List<Run> runs,
        List<Demand> demand,
        List<StockLot> stock,
        ExchangeRates rates,
        List<ScenarioLine> scenarios,
        Past past,
        Gaps gaps,
        Account account) {

    public Book {
        offers = List.copyOf(offers);
        runs = List.copyOf(runs);
        demand = List.copyOf(demand);
        stock = List.copyOf(stock);
        scenarios = List.copyOf(scenarios);
    }

    /** A book that is in no file, and so read completely. */
    public Book(
            Settings settings,
            Map<String, Supplier> suppliers,
            List<Offer> offers,
            Map<String, Material> materials,
            Map<String, Formula> formulas,
            Map<String, Product> products,
            List<Run> runs,
            List<Demand> demand,
            List<StockLot> stock,
            ExchangeRates rates) {
        this(
                settings,
                suppliers,
                offers,
                materials,
                formulas,
                products,
                runs,
                demand,
                stock,
                rates,
                List.of(),
                Past.UNKNOWN,
                Gaps.NONE,
                Account.NONE);
    }

    /** The supplier with a name. */
    public Optional<Supplier> supplier(String name) {
        return Optional.ofNullable(suppliers.get(Names.key(name)));
    }

    /** The material with a name. */
    public Optional<Material> material(String name) {
        return Optional.ofNullable(materials.get(Names.key(name)));
    }

    /** The formula with a name. */
    public Optional<Formula> formula(String name) {
        return Optional.ofNullable(formulas.get(Names.key(name)));
    }

    /** The product with a name. */
    public Optional<Product> product(String name) {
        return Optional.ofNullable(products.get(Names.key(name)));
    }

    /** All offers for an item, in the order of the sheets. */
    public List<Offer> offersFor(String item) {
        String key = Names.key(item);
        return offers.stream()
                .filter(offer -> Names.key(offer.item()).equals(key))
                .toList();
    }

    /** The history of the offers, as seen on the costing date. Each call computes it again; call it once. */
    public OfferHistory prices() {
        return new OfferHistory(offers, settings.costingDate(), settings.priceAgeLimit());
    }

    /** The same book with the account of its reading. */
    public Book withAccount(Account other) {
        return new Book(
                settings, suppliers, offers, materials, formulas, products, runs, demand, stock, rates, scenarios, past,
                gaps, other);
    }

    /** The same book with other runs. */
    public Book withRuns(List<Run> others) {
        return new Book(
                settings, suppliers, offers, materials, formulas, products, others, demand, stock, rates, scenarios,
                past, gaps, account);
    }

    /** The same book with other offers. */
    public Book withOffers(List<Offer> others) {
        return new Book(
                settings, suppliers, others, materials, formulas, products, runs, demand, stock, rates, scenarios, past,
                gaps, account);
    }

    /** The same book with other demand. */
    public Book withDemand(List<Demand> others) {
        return new Book(
                settings, suppliers, offers, materials, formulas, products, runs, others, stock, rates, scenarios, past,
                gaps, account);
    }

    /** The same book without what could not be read. */
    public Book withGaps(Gaps others) {
        return new Book(
                settings, suppliers, offers, materials, formulas, products, runs, demand, stock, rates, scenarios, past,
                others, account);
    }

    /** The same book with other settings. */
    public Book withSettings(Settings others) {
        return new Book(
                others, suppliers, offers, materials, formulas, products, runs, demand, stock, rates, scenarios, past,
                gaps, account);
    }

    /** The same book with other formulas. */
    public Book withFormulas(Map<String, Formula> others) {
        return new Book(
                settings, suppliers, offers, materials, others, products, runs, demand, stock, rates, scenarios, past,
                gaps, account);
    }

    /** The same book with other materials. */
    public Book withMaterials(Map<String, Material> others) {
        return new Book(
                settings, suppliers, offers, others, formulas, products, runs, demand, stock, rates, scenarios, past,
                gaps, account);
    }

    /** The same book with other products. */
    public Book withProducts(Map<String, Product> others) {
        return new Book(
                settings, suppliers, offers, materials, formulas, others, runs, demand, stock, rates, scenarios, past,
                gaps, account);
    }

    /** The same book with other suppliers. */
    public Book withSuppliers(Map<String, Supplier> others) {
        return new Book(
                settings, others, offers, materials, formulas, products, runs, demand, stock, rates, scenarios, past,
                gaps, account);
    }

    /** The same book with other rates. */
    public Book withRates(ExchangeRates others) {
        return new Book(
                settings, suppliers, offers, materials, formulas, products, runs, demand, stock, others, scenarios,
                past, gaps, account);
    }

    /** The same book with other scenarios. */
    public Book withScenarios(List<ScenarioLine> others) {
        return new Book(
                settings, suppliers, offers, materials, formulas, products, runs, demand, stock, rates, others, past,
                gaps, account);
    }

    /** The same book with what is known of earlier days. */
    public Book withPast(Past other) {
        return new Book(
                settings, suppliers, offers, materials, formulas, products, runs, demand, stock, rates, scenarios,
                other, gaps, account);
    }

    /** The same book with a formula added, or replaced if it has one of that name. */
    public Book withFormula(Formula formula) {
        Map<String, Formula> others = new LinkedHashMap<>(formulas);
        others.put(Names.key(formula.name()), formula);
        return new Book(
                settings, suppliers, offers, materials, others, products, runs, demand, stock, rates, scenarios, past,
                gaps, account);
    }

    /**
     * Things by the key of their name, in their order; of two with the same name the first is kept.
     *
     * @param name the name of a thing
     */
    public static <T> Map<String, T> byName(Collection<T> things, Function<T, String> name) {
        Map<String, T> named = new LinkedHashMap<>();
        for (T thing : things) {
            named.putIfAbsent(Names.key(name.apply(thing)), thing);
        }
        return named;
    }
}
