package perkilo.costing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.DeliveryTerm;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.ProductFixture;
import perkilo.model.ProductKind;
import perkilo.model.Run;
import perkilo.model.Settings;
import perkilo.model.StockLot;
import perkilo.model.Supplier;
import perkilo.model.Traits;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.DutyBasis;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;
import perkilo.units.Measure;

/** A book in the making: everything is zero, absent or usual until a test says otherwise. */
final class Draft {

    static final LocalDate DAY = LocalDate.of(2026, 11, 19);
    static final CurrencyUnit EUR = Currencies.of("EUR");

    CurrencyUnit home = EUR;
    DutyBasis dutyBasis = DutyBasis.CIF;
    Figure conversionMargin = Figure.ZERO;
    Figure leftoverCredit = Figure.ZERO;
    Figure labourRate = Figure.ZERO;
    Figure overhead = Figure.ZERO;
    Figure processWater = Figure.ZERO;
    final List<Supplier> suppliers = new ArrayList<>();
    final List<Offer> offers = new ArrayList<>();
    final List<Material> materials = new ArrayList<>();
    final List<Formula> formulas = new ArrayList<>();
    final List<Product> products = new ArrayList<>();
    final List<Run> runs = new ArrayList<>();
    final List<StockLot> stock = new ArrayList<>();
    final List<DatedRate> rates = new ArrayList<>();

    Book book() {
        Settings settings = new Settings(
                new Settings.Currencies(home, List.of(), conversionMargin),
                DAY,
                new Settings.Buying(dutyBasis, leftoverCredit, Figure.ZERO, Settings.USUAL_PRICE_AGE_LIMIT),
                new Settings.Making(labourRate, overhead, processWater),
                new Settings.CashLimits(null, null));
        return new Book(
                settings,
                Book.byName(suppliers, Supplier::name),
                offers,
                Book.byName(materials, Material::name),
                Book.byName(formulas, Formula::name),
                Book.byName(products, Product::name),
                runs,
                List.of(),
                stock,
                new ExchangeRates(rates));
    }

    Draft rate(String from, String to, String rate) {
        rates.add(new DatedRate(Currencies.of(from), Currencies.of(to), Figure.of(rate), DAY, "test"));
        return this;
    }

    Draft material(Material material) {
        materials.add(material);
        return this;
    }

    Draft formula(String name, Batching batching, Formula.Line... lines) {
        formulas.add(new Formula(name, List.of(lines), batching, Origin.NONE));
        return this;
    }

    Draft offer(String supplier, String item, String size, Measure unit, String price, @Nullable Measure per) {
        offers.add(offerOf(supplier, item, size, unit, "EUR", price(price, per)));
        return this;
    }

    Draft run(String product, String units) {
        runs.add(new Run.OfProduct(product, Figure.of(units), Origin.NONE));
        return this;
    }

    Draft bulk(String formula, String kg) {
        runs.add(new Run.OfBulk(formula, Figure.of(kg), Origin.NONE));
        return this;
    }

    // parts

    static Origin cell(String sheet, String cell) {
        return new Origin("book.xlsx", sheet, cell);
    }

    static @Nullable Figure figure(@Nullable String decimal) {
        return decimal == null ? null : Figure.of(decimal);
    }

    static BigDecimal d(String decimal) {
        return new BigDecimal(decimal);
    }

    static Formula.Line line(String material, @Nullable String level) {
        return new Formula.Line("A", material, figure(level), null, Origin.NONE);
    }

    static Formula.Line line(String material, @Nullable String level, Origin origin) {
        return new Formula.Line("A", material, figure(level), null, origin);
    }

    static Material material(
            String name,
            String inci,
            @Nullable String density,
            @Nullable String housePrice,
            String handlingLoss,
            @Nullable String shelfLifeMonths) {
        return new Material(
                name,
                inci,
                List.of(),
                figure(density),
                figure(housePrice),
                Figure.of(handlingLoss),
                figure(shelfLifeMonths),
                Traits.UNKNOWN,
                Origin.NONE);
    }

    static Offer.PriceBreak price(String price, @Nullable Measure per) {
        return new Offer.PriceBreak(null, Figure.of(price), per, Origin.NONE);
    }

    static Offer.PriceBreak price(String from, String price, @Nullable Measure per) {
        return new Offer.PriceBreak(Figure.of(from), Figure.of(price), per, Origin.NONE);
    }

    static Offer offerOf(
            String supplier, String item, String size, Measure unit, String currency, Offer.PriceBreak... breaks) {
        return new Offer(
                supplier,
                item,
                Figure.of(size),
                unit,
                List.of(breaks),
                Currencies.of(currency),
                LineTerms.NONE,
                Validity.UNKNOWN,
                Origin.NONE);
    }

    static Batching batching(@Nullable String max, String min, String holdUp) {
        return new Batching(
                figure(max),
                Figure.of(min),
                Figure.of(holdUp),
                Figure.ZERO,
                Figure.ZERO,
                Figure.ZERO,
                null,
                ProductKind.LEAVE_ON,
                Origin.NONE);
    }

    static Supplier supplier(String name, String currency, @Nullable DeliveryTerm terms) {
        return new Supplier(
                name,
                Currencies.of(currency),
                terms,
                new Supplier.Minimum(null, null),
                new Supplier.Charges(Figure.of("50"), Figure.of("0.4"), Figure.of("0.01"), Figure.of("0.065")),
                Figure.ZERO,
                Origin.NONE);
    }

    /** A product of which all is usual but what it is filled with. */
    static Product product(String name, String formula, String fill, Measure unit, Product.Component... components) {
        return new ProductDraft(name, formula, fill, unit).product(components);
    }

    static Product.Component component(String name, String perUnit, String loss) {
        return component(name, perUnit, loss, null);
    }

    /**
     * A component.
     *
     * @param grams the weight of a piece; null if it is not known
     */
    static Product.Component component(String name, String perUnit, String loss, @Nullable String grams) {
        return new Product.Component(
                name, Figure.of(perUnit), Figure.of(loss), grams == null ? null : Figure.of(grams), Origin.NONE);
    }

    /** A product in the making. */
    static final class ProductDraft {
        final String name;
        final String formula;
        final String fill;
        final Measure unit;

        @Nullable String density;

        @Nullable String overfill;

        @Nullable String fillerSd;

        String fillLoss = "0";
        String setUpHours = "0";

        @Nullable String unitsPerHour;

        String people = "1";

        @Nullable String targetMargin;

        String distributorMargin = "0";
        String retailerMargin = "0";
        String vat = "0";

        @Nullable String targetRetail;

        String oneOffs = "0";

        @Nullable String spreadOver;

        @Nullable String yearlyUnits;

        ProductDraft(String name, String formula, String fill, Measure unit) {
            this.name = name;
            this.formula = formula;
            this.fill = fill;
            this.unit = unit;
        }

        Product product(Product.Component... components) {
            return ProductFixture.of(name, formula, fill, unit)
                    .filling(new Product.Filling(
                            Figure.of(fill),
                            unit,
                            figure(density),
                            figure(overfill),
                            figure(fillerSd),
                            Figure.of(fillLoss)))
                    .work(new Product.FillingWork(Figure.of(setUpHours), figure(unitsPerHour), Figure.of(people)))
                    .pricing(new Product.Pricing(
                            figure(targetMargin),
                            Figure.of(distributorMargin),
                            Figure.of(retailerMargin),
                            Figure.of(vat),
                            figure(targetRetail)))
                    .oneOffs(new Product.OneOffs(Figure.of(oneOffs), figure(spreadOver)))
                    .yearlyUnits(figure(yearlyUnits))
                    .components(List.of(components))
                    .product();
        }
    }
}
