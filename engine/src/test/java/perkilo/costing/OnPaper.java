package perkilo.costing;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.Ratio;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.purchasing.DutyBasis;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.units.Measure;

/**
 * The cost of a run worked out once more from the book and from what is bought, in exact fractions, with its own tables
 * of units, tolerable errors and delivery terms. Only the names of the figures are shared with the engine.
 */
final class OnPaper {

    private static final Ratio POUND = Ratio.of("0.45359237");
    private static final Ratio GALLON = Ratio.of("3.785411784");
    private static final Set<String> BUYER_S_FREIGHT = Set.of("EXW", "FCA", "FAS", "FOB", "CFR", "CIF");
    private static final Set<String> BUYER_S_INSURANCE = Set.of("EXW", "FCA", "FAS", "FOB", "CFR", "CPT");

    private final Book book;

    /** What is known of one item. */
    static final class Line {
        boolean isMaterial;
        Ratio share = Ratio.ZERO;
        Ratio needed = Ratio.ZERO;
        Ratio ordered = Ratio.ZERO;
        Ratio goods = Ratio.ZERO;
        Ratio landed = Ratio.ZERO;
        Ratio usable = Ratio.ZERO;

        @Nullable Ratio housePrice;

        Ratio perUnit() {
            if (housePrice != null) {
                return housePrice;
            }
            return ordered.isZero() ? Ratio.ZERO : landed.by(ordered);
        }

        Ratio used() {
            return needed.times(perUnit());
        }

        Ratio usedGoods() {
            if (housePrice != null) {
                return used();
            }
            return ordered.isZero() ? Ratio.ZERO : needed.times(goods).by(ordered);
        }

        Ratio paid() {
            return housePrice == null ? landed : used();
        }

        Ratio wasted() {
            return housePrice == null ? ordered.minus(needed).minus(usable).times(perUnit()) : Ratio.ZERO;
        }
    }

    final Map<String, Line> items = new LinkedHashMap<>();
    final @Nullable Product product;
    final @Nullable Ratio units;
    final Ratio targetFill;
    final Ratio fillKg;
    final long batches;
    final Ratio charged;
    final Ratio output;
    final Ratio over;
    final Ratio making;
    final Ratio filling;
    final Ratio overhead;
    final Ratio qualityControl;
    final Ratio oneOffs;
    final Ratio oneOffShare;

    /**
     * A run and its purchase.
     *
     * @param bought packs of each offer
     */
    OnPaper(Book book, Run run, Map<Offer, Long> bought) {
        this.book = book;
        Formula formula;
        Ratio bulk;
        if (run instanceof Run.OfProduct ofProduct) {
            product = book.product(ofProduct.product()).orElseThrow();
            formula = book.formula(product.formula()).orElseThrow();
            units = of(ofProduct.units());
            targetFill = target(product);
            fillKg = targetFill.times(kg(product.fillUnit(), product.density()));
            bulk = units.times(fillKg).by(Ratio.ONE.minus(of(product.fillLoss())));
        } else {
            formula = book.formula(((Run.OfBulk) run).formula()).orElseThrow();
            product = null;
            units = null;
            targetFill = Ratio.ZERO;
            fillKg = Ratio.ZERO;
            bulk = of(((Run.OfBulk) run).batchKg());
        }
        Batching batching = formula.batching();
        Ratio holdUp = of(batching.holdUp());
        Figure max = batching.vesselMax();
        Ratio fits = max == null ? Ratio.ONE : product == null ? of(max) : of(max).minus(holdUp);
        batches = max == null ? 1 : Math.max(1, bulk.by(fits).ceiling());
        Ratio n = Ratio.of(batches);
        Ratio toFill = product == null ? bulk.minus(n.times(holdUp)) : bulk;
        Ratio batch = toFill.by(n).plus(holdUp).max(of(batching.vesselMin()));
        charged = n.times(batch);
        output = n.times(batch.minus(holdUp));
        over = output.minus(toFill);

        Ratio makingHours = n.times(of(batching.hoursPerBatch())).plus(charged.times(of(batching.hoursPerKg())));
        making = makingHours.times(of(book.settings().labourRate()));
        filling = fillingHours().times(of(book.settings().labourRate()));
        overhead = making.plus(filling).times(of(book.settings().overhead()));
        qualityControl = n.times(of(batching.qualityControlPerBatch()));
        oneOffs = product == null ? Ratio.ZERO : of(product.oneOffCosts());
        Figure spread = product == null ? null : product.spreadOver();
        oneOffShare = spread == null || units == null
                ? oneOffs
                : oneOffs.min(oneOffs.times(units).by(of(spread)));

        need(formula);
        buy(bought);
        house();
        expire();
    }

    Ratio used() {
        return sum(items.values().stream().map(Line::used));
    }

    Ratio wasted() {
        return sum(items.values().stream().map(Line::wasted));
    }

    Ratio outlay() {
        return sum(items.values().stream().map(Line::paid));
    }

    Ratio stockLeft() {
        return sum(items.values().stream()
                .filter(line -> line.housePrice == null)
                .map(line -> line.usable.times(line.perUnit())));
    }

    Ratio rawMaterials() {
        return sum(items.values().stream().filter(line -> line.isMaterial).map(Line::usedGoods));
    }

    Ratio packaging() {
        return sum(items.values().stream().filter(line -> !line.isMaterial).map(Line::usedGoods));
    }

    Ratio inbound() {
        return sum(items.values().stream().map(line -> line.used().minus(line.usedGoods())));
    }

    Ratio total() {
        return used().plus(wasted())
                .plus(making)
                .plus(filling)
                .plus(overhead)
                .plus(qualityControl)
                .plus(oneOffShare);
    }

    Ratio cash() {
        return outlay().plus(making)
                .plus(filling)
                .plus(overhead)
                .plus(qualityControl)
                .plus(oneOffs);
    }

    Ratio rawMaterialPerKg() {
        return sum(items.values().stream().map(line -> line.share.times(line.perUnit())));
    }

    Ratio bulkPerKg() {
        Ratio materials =
                sum(items.values().stream().filter(line -> line.isMaterial).map(Line::used));
        Ratio makingOverhead = making.times(of(book.settings().overhead()));
        return materials.plus(making).plus(makingOverhead).plus(qualityControl).by(output);
    }

    private Ratio fillingHours() {
        if (product == null || units == null) {
            return Ratio.ZERO;
        }
        Figure speed = product.unitsPerHour();
        Ratio running = speed == null ? Ratio.ZERO : units.by(of(speed)).times(of(product.fillingPeople()));
        return of(product.setUpHours()).plus(running);
    }

    private void need(Formula formula) {
        Ratio stated = sum(formula.lines().stream().map(line -> line.level() == null ? Ratio.ZERO : of(line.level())));
        for (Formula.Line line : formula.lines()) {
            Line item = item(line.material());
            Figure level = line.level();
            item.isMaterial = true;
            item.share = item.share.plus(level == null ? Ratio.ONE.minus(stated) : of(level));
        }
        items.forEach((name, item) -> {
            Ratio sticks = book.material(name)
                    .map(material -> of(material.handlingLoss()))
                    .orElse(Ratio.ZERO);
            item.needed = charged.times(item.share).by(Ratio.ONE.minus(sticks));
        });
        if (product != null && units != null) {
            for (Product.Component component : product.components()) {
                Ratio pieces = units.times(of(component.perUnit())).by(Ratio.ONE.minus(of(component.loss())));
                item(component.name()).needed = Ratio.of(pieces.ceiling());
            }
        }
    }

    /** One order to each supplier. */
    private void buy(Map<Offer, Long> bought) {
        Map<String, Map<Offer, Long>> orders = new LinkedHashMap<>();
        bought.forEach((offer, packs) -> orders.computeIfAbsent(offer.supplier(), any -> new LinkedHashMap<>())
                .put(offer, packs));
        orders.forEach(this::order);
    }

    private void order(String name, Map<Offer, Long> lines) {
        Supplier supplier = book.supplier(name).orElseThrow();
        String terms = supplier.terms() == null ? "EXW" : supplier.terms().name();
        Ratio perOrder = BUYER_S_FREIGHT.contains(terms) ? of(supplier.freightPerOrder()) : Ratio.ZERO;
        Ratio perKg = BUYER_S_FREIGHT.contains(terms) ? of(supplier.freightPerKg()) : Ratio.ZERO;
        Ratio insurance = BUYER_S_INSURANCE.contains(terms) ? of(supplier.insurance()) : Ratio.ZERO;
        boolean dutiable = !terms.equals("DDP");
        boolean cif = book.settings().dutyBasis() == DutyBasis.CIF;
        CurrencyUnit home = book.settings().home();
        Ratio margin = supplier.currency().equals(home)
                ? Ratio.ZERO
                : of(book.settings().conversionMargin());
        Ratio toHome = rate(supplier.currency(), home);

        Map<Offer, Ratio> values = new LinkedHashMap<>();
        lines.forEach((offer, packs) ->
                values.put(offer, goods(offer, packs).times(rate(offer.currency(), supplier.currency()))));
        Ratio all = sum(values.values().stream());
        Figure minimum = supplier.minimumOrderValue();
        Figure charge = supplier.smallOrderCharge();
        Ratio small = minimum != null && charge != null && all.compareTo(of(minimum)) < 0 ? of(charge) : Ratio.ZERO;
        Ratio supplierDuty = dutiable ? of(supplier.duty()) : Ratio.ZERO;

        lines.forEach((offer, packs) -> {
            Ratio value = requireNonNull(values.get(offer));
            Ratio quantity = Ratio.of(packs).times(of(offer.packSize())).times(inBase(offer, offer.packUnit()));
            Ratio freight = kg(offer, quantity).times(perKg);
            Ratio insured = value.times(insurance);
            Figure own = offer.duty();
            Ratio dutyRate = !dutiable ? Ratio.ZERO : own == null ? supplierDuty : of(own);
            Ratio duty = dutyRate.times(cif ? value.plus(insured).plus(freight) : value);
            Ratio share = all.isZero() ? Ratio.ONE.by(Ratio.of(lines.size())) : value.by(all);
            Ratio shared = share.times(perOrder.plus(small));
            Ratio sharedDuty = share.times(dutyRate).times(cif ? perOrder.plus(small) : small);
            Ratio paid = value.plus(insured).plus(freight).plus(shared).times(Ratio.ONE.plus(margin));
            Line item = item(offer.item());
            item.ordered = item.ordered.plus(quantity);
            item.goods = item.goods.plus(value.times(toHome));
            item.landed = item.landed.plus(paid.plus(duty).plus(sharedDuty).times(toHome));
        });
    }

    /** Pieces weigh what is typed for the component, or nothing. */
    private Ratio kg(Offer offer, Ratio quantity) {
        if (offer.packUnit() != Measure.EACH) {
            return quantity;
        }
        return book.products().values().stream()
                .flatMap(product -> product.components().stream())
                .filter(component -> component.name().equals(offer.item()))
                .map(Product.Component::weight)
                .filter(weight -> weight != null)
                .findFirst()
                .map(weight -> quantity.times(of(weight)).by(Ratio.of(1000)))
                .orElse(Ratio.ZERO);
    }

    /** A line as it is invoiced: the price of the highest break that its quantity reaches, to the minor unit. */
    private Ratio goods(Offer offer, long packs) {
        Ratio inPackUnits = Ratio.of(packs).times(of(offer.packSize()));
        Offer.PriceBreak holds = null;
        for (Offer.PriceBreak price : offer.breaks()) {
            Figure from = price.from();
            if (from == null || of(from).compareTo(inPackUnits) <= 0) {
                holds = price;
            }
        }
        if (holds == null) {
            throw new IllegalStateException("no price for " + packs);
        }
        Measure per = holds.per();
        Ratio times = per == null
                ? Ratio.of(packs)
                : inPackUnits.times(inBase(offer, offer.packUnit())).by(inBase(offer, per));
        return of(holds.price()).times(times).halfUp(Currencies.minorDigits(offer.currency()));
    }

    private Ratio inBase(Offer offer, Measure unit) {
        return unit == Measure.EACH
                ? Ratio.ONE
                : kg(unit, book.material(offer.item()).map(Material::density).orElse(null));
    }

    private void house() {
        items.forEach((name, item) -> {
            Material material = book.material(name).orElse(null);
            boolean offered = book.offers().stream()
                    .anyMatch(offer -> offer.item().equals(name)
                            && !offer.isAnnouncedOn(book.settings().costingDate())
                            && !offer.isExpiredOn(book.settings().costingDate()));
            if (item.isMaterial && !offered) {
                Figure house = material == null ? null : material.housePrice();
                item.housePrice = house == null ? of(book.settings().processWaterPerKg()) : of(house);
            }
        });
    }

    private void expire() {
        items.forEach((name, item) -> {
            Ratio left = item.ordered.minus(item.needed);
            Figure shelfLife =
                    book.material(name).map(Material::shelfLifeMonths).orElse(null);
            Figure yearly = product == null ? null : product.yearlyUnits();
            item.usable = left;
            if (item.isMaterial && shelfLife != null && yearly != null && units != null) {
                Ratio perYear = item.needed.times(of(yearly)).by(units);
                Ratio within = perYear.times(of(shelfLife)).by(Ratio.of(12)).minus(item.needed);
                item.usable = left.min(within.max(Ratio.ZERO));
            }
        });
    }

    private Line item(String name) {
        return items.computeIfAbsent(name, any -> new Line());
    }

    /** Units of one currency for one of another; all rates of the table are for one euro and of the costing date. */
    private Ratio rate(CurrencyUnit from, CurrencyUnit to) {
        return perEuro(to).by(perEuro(from));
    }

    private Ratio perEuro(CurrencyUnit currency) {
        if (currency.equals(Draft.EUR)) {
            return Ratio.ONE;
        }
        DatedRate found = book.rates().rates().stream()
                .filter(rate -> rate.to().equals(currency))
                .findFirst()
                .orElseThrow();
        return of(found.rate());
    }

    private static Ratio kg(Measure unit, @Nullable Figure density) {
        Ratio perLitre = density == null ? Ratio.ONE : of(density);
        return switch (unit) {
            case KG -> Ratio.ONE;
            case G -> Ratio.of("0.001");
            case LB -> POUND;
            case OZ -> POUND.by(Ratio.of(16));
            case L -> perLitre;
            case ML -> perLitre.by(Ratio.of(1000));
            case US_GAL -> GALLON.times(perLitre);
            case US_FL_OZ -> GALLON.by(Ratio.of(128)).times(perLitre);
            default -> throw new IllegalArgumentException(unit + " is no unit of these books");
        };
    }

    private static Ratio target(Product product) {
        Ratio nominal = of(product.fill());
        Figure sd = product.fillerSd();
        Figure overfill = product.overfill();
        if (sd != null) {
            Ratio small = product.fillUnit() == Measure.US_FL_OZ
                    ? GALLON.by(Ratio.of(128)).times(Ratio.of(1000))
                    : Ratio.ONE;
            Ratio error = tolerable(nominal.times(small)).by(small);
            return nominal.max(nominal.minus(error).plus(Ratio.of("1.96").times(of(sd))))
                    .max(nominal.minus(error).minus(error).plus(Ratio.of("3.72").times(of(sd))));
        }
        return overfill == null ? nominal : nominal.times(Ratio.ONE.plus(of(overfill)));
    }

    /** Directive 76/211/EEC, Annex I, 2.4, for 5 to 1,000 g or mL. */
    private static Ratio tolerable(Ratio nominal) {
        if (nominal.compareTo(Ratio.of(50)) <= 0) {
            return tenthsUp(nominal.times(Ratio.of("0.09")));
        }
        if (nominal.compareTo(Ratio.of(100)) <= 0) {
            return Ratio.of("4.5");
        }
        if (nominal.compareTo(Ratio.of(200)) <= 0) {
            return tenthsUp(nominal.times(Ratio.of("0.045")));
        }
        if (nominal.compareTo(Ratio.of(300)) <= 0) {
            return Ratio.of(9);
        }
        return nominal.compareTo(Ratio.of(500)) <= 0 ? tenthsUp(nominal.times(Ratio.of("0.03"))) : Ratio.of(15);
    }

    private static Ratio tenthsUp(Ratio error) {
        return Ratio.of(error.times(Ratio.of(10)).ceiling()).by(Ratio.of(10));
    }

    private static Ratio of(Figure figure) {
        return Ratio.of(figure.value());
    }

    private static Ratio sum(Stream<Ratio> terms) {
        return Ratio.sum(terms);
    }

    /** An amount for one unit. */
    Ratio perUnit(Ratio amount) {
        return amount.by(units == null ? Ratio.ONE : units);
    }
}
