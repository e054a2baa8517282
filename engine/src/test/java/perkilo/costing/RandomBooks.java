package perkilo.costing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.DeliveryTerm;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.ProductKind;
import perkilo.model.Run;
import perkilo.model.Supplier;
import perkilo.model.Traits;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.DutyBasis;
import perkilo.units.Currencies;
import perkilo.units.Measure;

/**
 * Books of a small maker, drawn at random: a cream of two to four materials, up to two parts of packaging, up to three
 * suppliers in their own currencies and on their own terms. The same seed gives the same book.
 */
public final class RandomBooks {

    private static final List<String> CURRENCIES = List.of("EUR", "USD", "GBP", "JPY");

    private final Random random;
    /** Its own, so that the other figures stay the same. */
    private final Random trade;

    private final Draft draft = new Draft();
    private final boolean exactCents;
    private BigDecimal bulkKg = BigDecimal.ONE;

    private RandomBooks(long seed, boolean exactCents) {
        this.random = new Random(seed);
        this.trade = new Random(~seed);
        this.exactCents = exactCents;
    }

    /** Anything that a book may hold. */
    public static Book any(long seed) {
        return new RandomBooks(seed, false).book();
    }

    /** All in home currency, every pack priced in whole cents: no line is ever rounded. */
    public static Book inWholeCents(long seed) {
        return new RandomBooks(seed, true).book();
    }

    private Book book() {
        settings();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            draft.suppliers.add(supplier("Supplier " + i));
        }
        Product product = product();
        List<Formula.Line> lines = lines();
        draft.formulas.add(new Formula("Cream", lines, batching(), Origin.NONE));
        draft.products.add(product);
        BigDecimal units = decimal(20, 2000, 0);
        bulkKg = units.multiply(FillTarget.of(product).targetKg());
        draft.runs.add(
                chance(0.85)
                        ? new Run.OfProduct("Jar", Figure.of(units), Origin.NONE)
                        : new Run.OfBulk("Cream", Figure.of(bulkKg.max(BigDecimal.TEN)), Origin.NONE));
        for (Material material : draft.materials) {
            if (material.housePrice() == null && !material.isWater()) {
                offers(material.name(), material.density() != null, false, bulkKg.multiply(shareOf(material, lines)));
            }
        }
        product.components()
                .forEach(component -> offers(
                        component.name(),
                        false,
                        true,
                        units.multiply(component.perUnit().value())));
        return draft.book();
    }

    private void settings() {
        if (!exactCents) {
            draft.home = Currencies.of(CURRENCIES.get(random.nextInt(CURRENCIES.size())));
            draft.conversionMargin = Figure.of(decimal(0, 0.04, 3));
            draft.rate("EUR", "USD", "1.0664").rate("EUR", "GBP", "0.87925").rate("EUR", "JPY", "143.76");
        }
        draft.dutyBasis = chance(0.5) ? DutyBasis.CIF : DutyBasis.FOB;
        draft.leftoverCredit = chance(0.5) ? Figure.ZERO : Figure.of(decimal(0, 0.9, 2));
        draft.labourRate = Figure.of(decimal(10, 60, 2));
        draft.overhead = Figure.of(decimal(0, 0.6, 2));
        draft.processWater = Figure.of(decimal(0, 0.02, 3));
    }

    private Supplier supplier(String name) {
        CurrencyUnit currency =
                exactCents ? draft.home : Currencies.of(CURRENCIES.get(random.nextInt(CURRENCIES.size())));
        DeliveryTerm[] terms = DeliveryTerm.values();
        return new Supplier(
                name,
                currency,
                chance(0.3) ? null : terms[random.nextInt(terms.length)],
                new Supplier.Minimum(
                        chance(0.5) ? null : Figure.of(decimal(0, 150, 2)),
                        chance(0.3) ? null : Figure.of(decimal(0, 40, 2))),
                new Supplier.Charges(figure(0, 60, 2), figure(0, 3, 2), figure(0, 0.02, 3), figure(0, 0.12, 3)),
                Figure.ZERO,
                Origin.NONE);
    }

    private Product product() {
        Measure[] units = {Measure.G, Measure.ML, Measure.US_FL_OZ};
        Measure unit = units[random.nextInt(units.length)];
        Draft.ProductDraft product = new Draft.ProductDraft(
                "Jar",
                "Cream",
                (unit == Measure.US_FL_OZ ? decimal(1, 8, 1) : decimal(10, 250, 0)).toPlainString(),
                unit);
        product.density = decimal(0.85, 1.1, 3).toPlainString();
        product.overfill = maybe(decimal(0, 0.05, 3));
        product.fillerSd = chance(0.6) ? null : decimal(0.1, 5, 1).toPlainString();
        product.fillLoss = decimal(0, 0.08, 2).toPlainString();
        product.setUpHours = decimal(0, 3, 2).toPlainString();
        product.unitsPerHour = maybe(decimal(50, 600, 0));
        product.people = decimal(1, 4, 0).toPlainString();
        product.targetMargin = maybe(decimal(0.2, 0.7, 2));
        product.distributorMargin = trade.nextBoolean() ? "0" : "0." + (10 + trade.nextInt(30));
        product.retailerMargin = decimal(0, 0.6, 2).toPlainString();
        product.vat = decimal(0, 0.25, 2).toPlainString();
        product.targetRetail = maybe(decimal(5, 60, 2));
        product.oneOffs = decimal(0, 3000, 0).toPlainString();
        product.spreadOver = maybe(decimal(100, 5000, 0));
        product.yearlyUnits = maybe(decimal(100, 20000, 0));
        List<Product.Component> components = new ArrayList<>();
        for (int i = 0; i < random.nextInt(3); i++) {
            components.add(Draft.component(
                    "Part " + i,
                    chance(0.8) ? "1" : "2",
                    decimal(0, 0.05, 2).toPlainString(),
                    maybe(decimal(1, 300, 1))));
        }
        return product.product(components.toArray(new Product.Component[0]));
    }

    private Batching batching() {
        BigDecimal holdUp = chance(0.5) ? BigDecimal.ZERO : decimal(0.05, 1.5, 2);
        return new Batching(
                chance(0.4) ? null : Figure.of(decimal(15, 120, 1)),
                chance(0.5) ? Figure.ZERO : Figure.of(decimal(2, 15, 1)),
                Figure.of(holdUp),
                figure(0, 4, 2),
                figure(0, 0.1, 3),
                figure(0, 80, 2),
                null,
                ProductKind.LEAVE_ON,
                Origin.NONE);
    }

    /** Up to four materials, the first in two phases, water or another taking the balance. */
    private List<Formula.Line> lines() {
        List<Formula.Line> lines = new ArrayList<>();
        int count = 1 + random.nextInt(2);
        for (int i = 0; i < count; i++) {
            Material material = material("Material " + i);
            draft.materials.add(material);
            lines.add(Draft.line(material.name(), decimal(0.01, 0.3, 4).toPlainString()));
        }
        if (chance(0.5)) {
            lines.add(Draft.line("Material 0", decimal(0.01, 0.1, 4).toPlainString()));
        }
        boolean water = chance(0.6);
        if (water) {
            draft.materials.add(Draft.material("Water", "Aqua", null, maybe(decimal(0, 0.05, 3)), "0", null));
        } else {
            draft.materials.add(material("Base"));
        }
        lines.add(Draft.line(water ? "Water" : "Base", null));
        return lines;
    }

    private Material material(String name) {
        return new Material(
                name,
                "",
                List.of(),
                chance(0.5) ? null : Figure.of(decimal(0.8, 1.3, 3)),
                null,
                figure(0, 0.05, 2),
                chance(0.5) ? null : Figure.of(decimal(3, 36, 0)),
                Traits.UNKNOWN,
                Origin.NONE);
    }

    private static BigDecimal shareOf(Material material, List<Formula.Line> lines) {
        BigDecimal share = BigDecimal.ZERO;
        BigDecimal rest = BigDecimal.ONE;
        boolean balance = false;
        for (Formula.Line line : lines) {
            Figure level = line.level();
            BigDecimal part = level == null ? BigDecimal.ZERO : level.value();
            rest = rest.subtract(part);
            if (line.material().equals(material.name())) {
                share = share.add(part);
                balance |= level == null;
            }
        }
        return balance ? share.add(rest) : share;
    }

    private void offers(String item, boolean hasDensity, boolean pieces, BigDecimal roughNeed) {
        for (int i = 0; i < 1 + random.nextInt(2); i++) {
            draft.offers.add(offer(item, unit(hasDensity, pieces), roughNeed));
        }
    }

    private Measure unit(boolean hasDensity, boolean pieces) {
        if (pieces) {
            return Measure.EACH;
        }
        Measure[] units = hasDensity
                ? new Measure[] {Measure.KG, Measure.G, Measure.LB, Measure.L, Measure.US_GAL}
                : new Measure[] {Measure.KG, Measure.G, Measure.LB, Measure.OZ};
        return units[random.nextInt(units.length)];
    }

    /** A pack of about a third of the need up to all of it, with up to two price breaks. */
    private Offer offer(String item, Measure unit, BigDecimal roughNeed) {
        Supplier supplier = draft.suppliers.get(random.nextInt(draft.suppliers.size()));
        CurrencyUnit currency = exactCents || chance(0.8)
                ? supplier.currency()
                : Currencies.of(CURRENCIES.get(random.nextInt(CURRENCIES.size())));
        BigDecimal size = roughNeed
                .multiply(decimal(0.35, 1.2, 2))
                .divide(unit.inBase(), unit == Measure.EACH || unit == Measure.G ? 0 : 1, RoundingMode.UP);
        Measure per = exactCents || chance(0.3) ? null : perUnit(unit);
        BigDecimal price = per == null
                ? decimal(5, 400, 2)
                : unit == Measure.EACH ? decimal(0.05, 1, 3) : decimal(1, 40, 2).multiply(perKg(per));
        List<Offer.PriceBreak> breaks = new ArrayList<>();
        breaks.add(new Offer.PriceBreak(null, Figure.of(price), per, Origin.NONE));
        if (chance(0.4)) {
            BigDecimal lower = price.multiply(decimal(0.7, 0.99, 2)).setScale(price.scale(), RoundingMode.DOWN);
            BigDecimal from = size.multiply(BigDecimal.valueOf(2));
            breaks.add(new Offer.PriceBreak(Figure.of(from), Figure.of(lower), per, Origin.NONE));
        }
        return new Offer(
                supplier.name(),
                item,
                Figure.of(size),
                unit,
                breaks,
                currency,
                LineTerms.of(
                        chance(0.8) ? null : Figure.of(size.multiply(new BigDecimal("1.5"))),
                        chance(0.8) ? Figure.ONE : Figure.of("2"),
                        chance(0.7) ? null : Figure.of(decimal(0, 0.1, 3))),
                Validity.UNKNOWN,
                Origin.NONE);
    }

    private Measure perUnit(Measure unit) {
        if (unit == Measure.EACH) {
            return Measure.EACH;
        }
        Measure[] per = unit.kind() == Measure.Kind.MASS
                ? new Measure[] {Measure.KG, Measure.LB, Measure.G, unit}
                : new Measure[] {Measure.KG, Measure.LB, Measure.L, unit};
        return per[random.nextInt(per.length)];
    }

    /** So that a price for a gram is not that of a kilogram. */
    private static BigDecimal perKg(Measure per) {
        return per.inBase().setScale(3, RoundingMode.UP);
    }

    private @Nullable String maybe(BigDecimal decimal) {
        return chance(0.5) ? null : decimal.toPlainString();
    }

    private Figure figure(double from, double to, int scale) {
        return chance(0.3) ? Figure.ZERO : Figure.of(decimal(from, to, scale));
    }

    private BigDecimal decimal(double from, double to, int scale) {
        return BigDecimal.valueOf(from + random.nextDouble() * (to - from)).setScale(scale, RoundingMode.HALF_UP);
    }

    private boolean chance(double probability) {
        return random.nextDouble() < probability;
    }
}
