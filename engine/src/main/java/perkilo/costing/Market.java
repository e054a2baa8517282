package perkilo.costing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.model.DeliveryTerm;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.offers.OfferHistory;
import perkilo.origin.Figure;
import perkilo.purchasing.Vendor;
import perkilo.units.Conversion;

/**
 * The offers on the costing date, or from it to a later day, and the suppliers' charges.
 *
 * <p>The delivery term decides which charges the buyer pays: those that the seller pays are left out, even if the
 * supplier's row has them.
 */
public final class Market {

    private final Book book;
    private final OfferHistory prices;
    /** By item: the weight of a piece in grams, where it is known. */
    private final Map<String, Figure> pieceWeights;

    private final List<Supplier> suppliers;
    private final List<Vendor> vendors;
    private final Map<String, List<Listing>> byItem = new LinkedHashMap<>();
    private final Map<String, Assortment> assortments = new ConcurrentHashMap<>();
    private final Map<List<CurrencyUnit>, Conversion> conversions = new ConcurrentHashMap<>();

    /**
     * The market of a book on its costing date.
     *
     * @param book free of errors
     * @throws IllegalArgumentException if a rate is missing
     */
    public Market(Book book) {
        this(book, book.prices(), book.settings().costingDate());
    }

    /**
     * The market of orders: the offers of the costing date, and those announced for a later day on which an order may
     * be placed.
     *
     * @param book free of errors
     * @param lastDay the last day on which an order may be placed
     * @throws IllegalArgumentException if a rate is missing
     */
    public static Market forOrdersUntil(Book book, LocalDate lastDay) {
        return new Market(book, book.prices(), lastDay);
    }

    private Market(Book book, OfferHistory prices, LocalDate lastDay) {
        this.book = book;
        this.prices = prices;
        this.pieceWeights = pieceWeights(book);
        Map<String, Integer> indexes = new LinkedHashMap<>();
        List<Supplier> sellers = new ArrayList<>();
        for (Offer offer : prices.orderableUntil(lastDay)) {
            if (canBeMeasured(offer)) {
                int vendor = indexes.computeIfAbsent(Names.key(offer.supplier()), key -> {
                    sellers.add(supplierOf(offer));
                    return sellers.size() - 1;
                });
                byItem.computeIfAbsent(Names.key(offer.item()), key -> new ArrayList<>())
                        .add(listing(offer, sellers.get(vendor), vendor));
            }
        }
        this.suppliers = List.copyOf(sellers);
        this.vendors = List.copyOf(sellers.stream().map(this::vendor).toList());
    }

    private static Map<String, Figure> pieceWeights(Book book) {
        Map<String, Figure> weights = new LinkedHashMap<>();
        for (Product product : book.products().values()) {
            for (Product.Component component : product.components()) {
                Figure weight = component.weight();
                if (weight != null) {
                    weights.putIfAbsent(Names.key(component.name()), weight);
                }
            }
        }
        return weights;
    }

    /** The book of the market. */
    public Book book() {
        return book;
    }

    /** The history of the book's offers, as seen on the costing date. */
    public OfferHistory prices() {
        return prices;
    }

    /** The offers of an item, in the order of the sheets. */
    public List<Listing> listings(String item) {
        return assortment(Names.key(item)).listings();
    }

    /** The offers of an item on the costing date; if there are none, all announced ones. */
    public List<Listing> currentListings(String item) {
        return assortment(Names.key(item)).current();
    }

    /**
     * The assortment of an item, which is the same for every run; computed on first use.
     *
     * @param key of the item's name
     */
    Assortment assortment(String key) {
        Assortment known = assortments.get(key);
        return known == null ? assortments.computeIfAbsent(key, this::assort) : known;
    }

    private Assortment assort(String key) {
        List<Listing> listings = byItem.get(key);
        return listings == null
                ? Assortment.NONE
                : Assortment.of(
                        listings,
                        vendors,
                        offer -> prices.isOrderableOn(book.settings().costingDate(), offer));
    }

    /** The suppliers with offers, by vendor index. */
    public List<Supplier> suppliers() {
        return suppliers;
    }

    /** The suppliers' charges, by vendor index. */
    public List<Vendor> vendors() {
        return vendors;
    }

    /** The price of a kilogram of an item that is not bought; empty if it has to be bought. */
    public Optional<Figure> housePrice(Item item) {
        return Optional.ofNullable(housePrice(item, assortment(item.key())));
    }

    @Nullable Figure housePrice(Item item, Assortment offered) {
        Material material = item.material();
        if (material == null || offered.isOffered()) {
            return null;
        }
        Figure house = material.housePrice();
        return house == null && material.isWater() ? book.settings().processWaterPerKg() : house;
    }

    /** The lowest goods price of a kilogram or piece of the current listings, in home currency; empty for none. */
    public Optional<BigDecimal> lowestPrice(String item) {
        return Optional.ofNullable(assortment(Names.key(item)).lowestPrice());
    }

    /**
     * The conversion between two currencies on the costing date.
     *
     * @throws IllegalArgumentException if there is no rate for it
     */
    public Conversion conversion(CurrencyUnit from, CurrencyUnit to) {
        return conversions.computeIfAbsent(List.of(from, to), pair -> findConversion(from, to));
    }

    private Conversion findConversion(CurrencyUnit from, CurrencyUnit to) {
        Settings settings = book.settings();
        return book.rates()
                .on(settings.costingDate(), from, to)
                .orElseThrow(() -> new IllegalArgumentException(
                        "no rate from %s to %s on or before %s".formatted(from, to, settings.costingDate())));
    }

    /** The charges of a supplier that the buyer pays under the delivery term; duty is each listing's own. */
    public static Charges charges(Supplier supplier) {
        DeliveryTerm terms = supplier.terms();
        boolean freight = terms == null || terms.buyerPaysFreight();
        return new Charges(
                freight ? supplier.freightPerOrder() : Figure.ZERO,
                freight ? supplier.freightPerKg() : Figure.ZERO,
                terms == null || terms.buyerPaysInsurance() ? supplier.insurance() : Figure.ZERO);
    }

    /** The bank's margin on payments to a supplier: zero if they invoice in home currency. */
    public Figure margin(Supplier supplier) {
        Settings settings = book.settings();
        return supplier.currency().equals(settings.home()) ? Figure.ZERO : settings.conversionMargin();
    }

    /**
     * The most that a plan can buy: the whole need, and for each offer enough for its last price break, its minimum and
     * its supplier's minimum order value.
     */
    public BigDecimal mostThatIsBought(String item, BigDecimal need) {
        return need.add(assortment(Names.key(item)).beyondNeed());
    }

    /** All listings of several items. */
    public List<Listing> listings(Collection<String> items) {
        return items.stream().flatMap(item -> listings(item).stream()).toList();
    }

    private Supplier supplierOf(Offer offer) {
        return book.supplier(offer.supplier()).orElseGet(() -> Supplier.of(offer.supplier(), offer.currency()));
    }

    private boolean canBeMeasured(Offer offer) {
        return !offer.needsDensity() || density(offer) != null;
    }

    private @Nullable Figure density(Offer offer) {
        return book.material(offer.item()).map(Material::density).orElse(null);
    }

    private Listing listing(Offer offer, Supplier supplier, int vendor) {
        Figure density = density(offer);
        return new Listing(
                offer,
                supplier,
                vendor,
                density,
                offer.packUnit().isCount() ? pieceWeights.get(Names.key(offer.item())) : null,
                Listing.basePer(offer.packUnit(), density),
                conversion(offer.currency(), book.settings().home()),
                conversion(offer.currency(), supplier.currency()));
    }

    private Vendor vendor(Supplier supplier) {
        Charges charges = charges(supplier);
        Figure minimum = supplier.minimumOrderValue();
        Figure smallOrder = supplier.smallOrderCharge();
        return new Vendor(
                supplier.name(),
                conversion(supplier.currency(), book.settings().home()).factor(),
                margin(supplier).value(),
                charges.freightPerOrder().value(),
                charges.freightPerKg().value(),
                charges.insurance().value(),
                minimum == null ? BigDecimal.ZERO : minimum.value(),
                smallOrder == null ? null : smallOrder.value(),
                book.settings().dutyBasis());
    }

    /**
     * The charges of a supplier that the buyer pays.
     *
     * @param freightPerOrder in the supplier's currency
     * @param freightPerKg in the supplier's currency
     * @param insurance as a fraction
     */
    public record Charges(Figure freightPerOrder, Figure freightPerKg, Figure insurance) {}
}
