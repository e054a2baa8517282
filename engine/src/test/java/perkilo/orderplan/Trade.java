package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.DayOff;
import perkilo.model.Demand;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.ProductFixture;
import perkilo.model.Settings;
import perkilo.model.StockLot;
import perkilo.model.Supplier;
import perkilo.model.Traits;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.DutyBasis;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;
import perkilo.units.Measure;

/**
 * A book in the making: what a maker of cosmetics wants, has, and can buy, said in few words. Each figure has a cell.
 */
final class Trade {

    static final CurrencyUnit EUR = Currencies.of("EUR");

    private final LocalDate today;
    private final Map<String, Supplier> suppliers = new LinkedHashMap<>();
    private final List<Offer> offers = new ArrayList<>();
    private final Map<String, Material> materials = new LinkedHashMap<>();
    private final Map<String, Formula> formulas = new LinkedHashMap<>();
    private final Map<String, Product> products = new LinkedHashMap<>();
    private final List<Demand> demand = new ArrayList<>();
    private final List<StockLot> stock = new ArrayList<>();
    private final List<DatedRate> rates = new ArrayList<>();
    private Figure holding = Figure.ZERO;
    private Figure credit = Figure.ZERO;
    private Figure margin = Figure.ZERO;
    private @Nullable Figure cashPerMonth;
    private @Nullable Figure cashTotal;
    private final List<DayOff> daysOff = new ArrayList<>();
    private Figure costPerOrder = Figure.ZERO;
    private @Nullable Figure makingLeadDays;
    private @Nullable Figure safety;
    private int row = 1;

    /** A trade on a day, in euros. */
    Trade(String today) {
        this.today = LocalDate.parse(today);
    }

    Trade holding(String perYear) {
        holding = cell("Settings", "B4", perYear);
        return this;
    }

    Trade credit(String fraction) {
        credit = cell("Settings", "B5", fraction);
        return this;
    }

    Trade margin(String fraction) {
        margin = cell("Settings", "B6", fraction);
        return this;
    }

    Trade cash(@Nullable String perMonth, @Nullable String total) {
        cashPerMonth = perMonth == null ? null : cell("Settings", "B7", perMonth);
        cashTotal = total == null ? null : cell("Settings", "B8", total);
        return this;
    }

    Trade costPerOrder(String euros) {
        costPerOrder = cell("Settings", "B9", euros);
        return this;
    }

    Trade makingLeadDays(@Nullable String days) {
        makingLeadDays = days == null ? null : cell("Settings", "B10", days);
        return this;
    }

    /** The safety stock of the materials that follow; null for none. */
    Trade safety(@Nullable String kg) {
        safety = kg == null ? null : cell("Materials", "H" + (row + 1), kg);
        return this;
    }

    Trade dayOff(String day) {
        Origin origin = new Origin("trade.xlsx", "Days off", "A" + ++row);
        daysOff.add(new DayOff(new Day(LocalDate.parse(day), origin, true), ""));
        return this;
    }

    /** A rate of the costing date. */
    Trade rate(String from, String to, String rate) {
        rates.add(new DatedRate(
                Currencies.of(from), Currencies.of(to), cell("Rates", "C" + ++row, rate), today, "a bank"));
        return this;
    }

    /** A supplier with a lead time and nothing on top. */
    Trade supplier(String name, int leadDays) {
        return supplier(name, "EUR", leadDays, "0", null, null, "0", "0", "0");
    }

    Trade supplier(
            String name,
            String currency,
            int leadDays,
            String freightPerOrder,
            @Nullable String minimum,
            @Nullable String smallOrder,
            String freightPerKg,
            String insurance,
            String duty) {
        int at = ++row;
        Supplier supplier = new Supplier(
                name,
                Currencies.of(currency),
                null,
                new Supplier.Minimum(
                        minimum == null ? null : cell("Suppliers", "D" + at, minimum),
                        smallOrder == null ? null : cell("Suppliers", "E" + at, smallOrder)),
                new Supplier.Charges(
                        cell("Suppliers", "F" + at, freightPerOrder),
                        cell("Suppliers", "G" + at, freightPerKg),
                        cell("Suppliers", "H" + at, insurance),
                        cell("Suppliers", "I" + at, duty)),
                cell("Suppliers", "J" + at, Integer.toString(leadDays)),
                new Origin("trade.xlsx", "Suppliers", "A" + at));
        suppliers.put(name.toLowerCase(java.util.Locale.ROOT), supplier);
        return this;
    }

    /** An offer at one price for a pack. */
    Trade offer(String supplier, String item, String pack, Measure unit, String pricePerPack) {
        return offer(supplier, item, pack, unit, null, 1, null, "0", pricePerPack);
    }

    /**
     * An offer with price breaks.
     *
     * @param breaks from and price per pack, in turn
     */
    Trade offer(
            String supplier,
            String item,
            String pack,
            Measure unit,
            @Nullable String minimum,
            int multiple,
            @Nullable String validUntil,
            String... breaks) {
        List<Offer.PriceBreak> prices = new ArrayList<>();
        int first = row + 1;
        for (int i = 0; i < breaks.length; i += 2) {
            int at = ++row;
            Figure from = cell("Offers", "E" + at, breaks[i]);
            prices.add(new Offer.PriceBreak(
                    i == 0 && from.value().signum() == 0 ? null : from,
                    cell("Offers", "F" + at, breaks[i + 1]),
                    null,
                    new Origin("trade.xlsx", "Offers", "A" + at)));
        }
        Supplier from = suppliers.get(supplier.toLowerCase(java.util.Locale.ROOT));
        offers.add(new Offer(
                supplier,
                item,
                cell("Offers", "C" + first, pack),
                unit,
                prices,
                from == null ? EUR : from.currency(),
                LineTerms.of(
                        minimum == null ? null : cell("Offers", "H" + first, minimum),
                        Figure.of(Integer.toString(multiple)),
                        null),
                new Validity(null, validUntil == null ? null : LocalDate.parse(validUntil)),
                new Origin("trade.xlsx", "Offers", "A" + first)));
        return this;
    }

    /** Gives the last offer its own rate of duty. */
    Trade duty(String rate) {
        Offer last = offers.remove(offers.size() - 1);
        offers.add(new Offer(
                last.supplier(),
                last.item(),
                last.packSize(),
                last.packUnit(),
                last.breaks(),
                last.currency(),
                LineTerms.of(last.minimumOrder(), last.orderMultiple(), cell("Offers", "I" + row, rate)),
                last.validity(),
                last.origin()));
        return this;
    }

    /** Gives the last offer its day. */
    Trade quoted(String day) {
        Offer last = offers.remove(offers.size() - 1);
        offers.add(new Offer(
                last.supplier(),
                last.item(),
                last.packSize(),
                last.packUnit(),
                last.breaks(),
                last.currency(),
                LineTerms.of(last.minimumOrder(), last.orderMultiple(), last.duty()),
                new Validity(LocalDate.parse(day), last.validUntil()),
                last.origin()));
        return this;
    }

    /** A material with a shelf life in months; null where it is not known. */
    Trade material(String name, @Nullable String shelfLife, String handlingLoss) {
        return material(name, Figure.of("0.9"), shelfLife, handlingLoss);
    }

    /** A material of which no density is known. */
    Trade materialWithoutDensity(String name) {
        return material(name, null, null, "0");
    }

    private Trade material(String name, @Nullable Figure density, @Nullable String shelfLife, String handlingLoss) {
        materials.put(
                name.toLowerCase(java.util.Locale.ROOT),
                new Material(
                        name,
                        "",
                        List.of(),
                        density,
                        null,
                        cell("Materials", "F" + ++row, handlingLoss),
                        shelfLife == null ? null : cell("Materials", "G" + row, shelfLife),
                        safety,
                        Traits.UNKNOWN,
                        new Origin("trade.xlsx", "Materials", "A" + row)));
        return this;
    }

    /**
     * A product of one kilogram a unit, without any loss, so that 100 units need 100 kg of bulk.
     *
     * @param shares material and fraction, in turn
     */
    Trade product(String name, List<Product.Component> components, String... shares) {
        List<Formula.Line> lines = new ArrayList<>();
        for (int i = 0; i < shares.length; i += 2) {
            Figure level = cell(name, "C" + ++row, shares[i + 1]);
            lines.add(new Formula.Line("", shares[i], level, null, level.origin()));
        }
        String key = name.toLowerCase(java.util.Locale.ROOT);
        formulas.put(key, new Formula(name, lines, Batching.ANY, new Origin("trade.xlsx", name, "A1")));
        products.put(key, product(name, components));
        return this;
    }

    static Product.Component component(String name, String perUnit, String loss) {
        return component(name, perUnit, loss, null);
    }

    /**
     * A packaging part.
     *
     * @param grams the weight of a piece; null if it is not known
     */
    static Product.Component component(String name, String perUnit, String loss, @Nullable String grams) {
        return new Product.Component(
                name,
                Figure.of(perUnit),
                Figure.of(loss),
                grams == null ? null : cell("Components", "D2", grams),
                new Origin("trade.xlsx", "Components", "B2"));
    }

    Trade demand(String product, String units, String neededBy) {
        int at = ++row;
        demand.add(new Demand(
                product,
                cell("Demand", "B" + at, units),
                new Day(LocalDate.parse(neededBy), new Origin("trade.xlsx", "Demand", "C" + at), true),
                new Origin("trade.xlsx", "Demand", "A" + at)));
        return this;
    }

    Trade stock(String item, String quantity, Measure unit, @Nullable String expires) {
        return onOrder(item, quantity, unit, expires, null);
    }

    Trade onOrder(String item, String quantity, Measure unit, @Nullable String expires, @Nullable String expected) {
        int at = ++row;
        stock.add(new StockLot(
                item,
                cell("Stock", "B" + at, quantity),
                unit,
                day("D" + at, expires),
                day("E" + at, expected),
                new Origin("trade.xlsx", "Stock", "A" + at)));
        return this;
    }

    private static @Nullable Day day(String cell, @Nullable String date) {
        return date == null ? null : new Day(LocalDate.parse(date), new Origin("trade.xlsx", "Stock", cell), true);
    }

    Book book() {
        Settings settings = new Settings(
                        new Settings.Currencies(EUR, List.of(), margin),
                        today,
                        new Settings.Buying(DutyBasis.CIF, credit, holding, Settings.USUAL_PRICE_AGE_LIMIT),
                        new Settings.Making(Figure.ZERO, Figure.ZERO, Figure.ZERO),
                        new Settings.CashLimits(cashPerMonth, cashTotal))
                .withOrdering(new Settings.Ordering(costPerOrder, makingLeadDays));
        return new Book(
                        settings,
                        suppliers,
                        offers,
                        materials,
                        formulas,
                        products,
                        List.of(),
                        demand,
                        stock,
                        new ExchangeRates(rates))
                .withDaysOff(daysOff);
    }

    private static Figure cell(String sheet, String cell, String value) {
        return new Figure(new BigDecimal(value), new Origin("trade.xlsx", sheet, cell), BigDecimal.ONE);
    }

    private static Product product(String name, List<Product.Component> components) {
        return ProductFixture.of(name, name, "1", Measure.KG)
                .components(components)
                .origin(new Origin("trade.xlsx", "Products", "A2"))
                .product();
    }
}
