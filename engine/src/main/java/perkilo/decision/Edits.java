package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;

/**
 * Books with one thing changed. Every figure keeps its cell. A factor is what the figure is multiplied by: 1.1 for 10 %
 * more.
 */
public final class Edits {

    private Edits() {}

    /** Every price of an item: all its offers, or its house price. Of water it is the price of process water. */
    public static Book price(Book book, String item, BigDecimal factor) {
        String key = Names.key(item);
        List<Offer> offers = book.offers().stream()
                .map(offer -> Names.key(offer.item()).equals(key) ? priced(offer, factor) : offer)
                .toList();
        Book edited = book.withOffers(offers);
        Material material = book.materials().get(key);
        Figure house = material == null ? null : material.housePrice();
        if (material != null && house != null) {
            return withMaterial(edited, key, housePriced(material, times(house, factor)));
        }
        boolean water = material == null ? Material.of(item).isWater() : material.isWater();
        return water ? edited.withSettings(waterPriced(book.settings(), factor)) : edited;
    }

    /** The value of a currency in all others. */
    public static Book currency(Book book, CurrencyUnit currency, BigDecimal factor) {
        List<DatedRate> rates = book.rates().rates().stream()
                .map(rate -> moved(rate, currency, factor))
                .toList();
        return book.withRates(new ExchangeRates(rates));
    }

    /** The labour rate. */
    public static Book wage(Book book, BigDecimal factor) {
        Settings settings = book.settings();
        Settings.Making making = settings.making();
        return book.withSettings(settings.withMaking(new Settings.Making(
                times(making.labourRate(), factor), making.overhead(), making.processWaterPerKg())));
    }

    /** Every price of a supplier. */
    public static Book pricesOf(Book book, String supplier, BigDecimal factor) {
        String key = Names.key(supplier);
        return book.withOffers(book.offers().stream()
                .map(offer -> Names.key(offer.supplier()).equals(key) ? priced(offer, factor) : offer)
                .toList());
    }

    /** All freight, per order and per kilogram. */
    public static Book freight(Book book, BigDecimal factor) {
        Map<String, Supplier> suppliers = new LinkedHashMap<>();
        book.suppliers()
                .forEach((key, old) -> suppliers.put(
                        key,
                        old.with(new Supplier.Charges(
                                times(old.freightPerOrder(), factor),
                                times(old.freightPerKg(), factor),
                                old.insurance(),
                                old.duty()))));
        return book.withSuppliers(suppliers);
    }

    /** The nominal fill of a product. */
    public static Book fill(Book book, String product, BigDecimal factor) {
        return filling(
                book,
                product,
                old -> new Product.Filling(
                        times(old.fill(), factor),
                        old.unit(),
                        old.density(),
                        old.overfill(),
                        old.fillerSd(),
                        old.loss()));
    }

    /** The fill loss of a product. */
    public static Book fillLoss(Book book, String product, BigDecimal factor) {
        return filling(
                book,
                product,
                old -> new Product.Filling(
                        old.fill(),
                        old.unit(),
                        old.density(),
                        old.overfill(),
                        old.fillerSd(),
                        times(old.loss(), factor)));
    }

    /** The part of each of a product's components that is spoiled. */
    public static Book componentLosses(Book book, String product, BigDecimal factor) {
        return product(
                book,
                product,
                old -> old.with(old.components().stream()
                        .map(part -> new Product.Component(
                                part.name(),
                                part.perUnit(),
                                times(part.loss(), factor),
                                part.weight(),
                                part.safetyStock(),
                                part.origin()))
                        .toList()));
    }

    /** The handling loss of every material of a formula. */
    public static Book handlingLosses(Book book, String formula, BigDecimal factor) {
        Book edited = book;
        List<Formula.Line> lines = book.formula(formula).map(Formula::lines).orElse(List.of());
        for (String key : lines.stream()
                .map(line -> Names.key(line.material()))
                .distinct()
                .toList()) {
            Material material = book.materials().get(key);
            if (material != null && !material.handlingLoss().isZero()) {
                edited = withMaterial(edited, key, handled(material, times(material.handlingLoss(), factor)));
            }
        }
        return edited;
    }

    /** The same run of another size, in units or kilograms. */
    public static Run sized(Run run, BigDecimal size) {
        if (run instanceof Run.OfProduct units) {
            return new Run.OfProduct(units.product(), units.units().withValue(size), units.origin());
        }
        if (run instanceof Run.OfBulk bulk) {
            return new Run.OfBulk(bulk.formula(), bulk.batchKg().withValue(size), bulk.origin());
        }
        throw new AssertionError(run);
    }

    /** The same run, larger or smaller; units are rounded to whole ones, at least one. */
    public static Run resized(Run run, BigDecimal factor) {
        if (run instanceof Run.OfProduct units) {
            return sized(run, whole(units.units().value().multiply(factor)));
        }
        if (run instanceof Run.OfBulk bulk) {
            return sized(run, bulk.batchKg().value().multiply(factor));
        }
        throw new AssertionError(run);
    }

    /** Whole units, rounded half up, at least one. */
    static BigDecimal whole(BigDecimal units) {
        return units.setScale(0, RoundingMode.HALF_UP).max(BigDecimal.ONE);
    }

    private static Offer priced(Offer offer, BigDecimal factor) {
        List<Offer.PriceBreak> breaks = offer.breaks().stream()
                .map(one -> new Offer.PriceBreak(one.from(), times(one.price(), factor), one.per(), one.origin()))
                .toList();
        return new Offer(
                offer.supplier(),
                offer.item(),
                offer.packSize(),
                offer.packUnit(),
                breaks,
                offer.currency(),
                offer.terms(),
                offer.validity(),
                offer.origin());
    }

    private static DatedRate moved(DatedRate rate, CurrencyUnit currency, BigDecimal factor) {
        if (rate.from().equals(currency)) {
            return with(rate, rate.rate().value().multiply(factor));
        }
        return rate.to().equals(currency)
                ? with(rate, rate.rate().value().divide(factor, MathContext.DECIMAL128))
                : rate;
    }

    private static DatedRate with(DatedRate rate, BigDecimal value) {
        return new DatedRate(rate.from(), rate.to(), rate.rate().withValue(value), rate.date(), rate.source());
    }

    private static Settings waterPriced(Settings settings, BigDecimal factor) {
        Settings.Making making = settings.making();
        return settings.withMaking(
                new Settings.Making(making.labourRate(), making.overhead(), times(making.processWaterPerKg(), factor)));
    }

    private static Material housePriced(Material old, Figure price) {
        return changed(old, price, old.handlingLoss());
    }

    private static Material handled(Material old, Figure loss) {
        return changed(old, old.housePrice(), loss);
    }

    private static Material changed(Material old, @Nullable Figure housePrice, Figure loss) {
        return new Material(
                old.name(),
                old.inci(),
                old.functions(),
                old.density(),
                housePrice,
                loss,
                old.shelfLifeMonths(),
                old.safetyStock(),
                old.traits(),
                old.origin());
    }

    private static Book filling(Book book, String product, UnaryOperator<Product.Filling> change) {
        return product(book, product, old -> old.with(change.apply(old.filling())));
    }

    private static Book product(Book book, String name, UnaryOperator<Product> change) {
        String key = Names.key(name);
        Product old = book.products().get(key);
        if (old == null) {
            return book;
        }
        Map<String, Product> products = new LinkedHashMap<>(book.products());
        products.put(key, change.apply(old));
        return book.withProducts(products);
    }

    private static Book withMaterial(Book book, String key, Material material) {
        Map<String, Material> materials = new LinkedHashMap<>(book.materials());
        materials.put(key, material);
        return book.withMaterials(materials);
    }

    private static Figure times(Figure figure, BigDecimal factor) {
        return figure.withValue(figure.value().multiply(factor));
    }
}
