package perkilo.costing;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.jspecify.annotations.Nullable;
import perkilo.Ratio;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.ProductFixture;
import perkilo.model.ProductKind;
import perkilo.model.Run;
import perkilo.model.Settings;
import perkilo.model.StockLot;
import perkilo.model.Supplier;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.SearchLimits;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;
import perkilo.units.Measure;

/** What holds of the cost of any run, whatever is made, bought and charged. */
final class RunCostProperties {

    private static final BigDecimal TEN = BigDecimal.TEN;

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void a_run_costs_what_it_costs_on_paper(@ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed) {
        Book book = RandomBooks.any(seed);
        RunCost cost = cost(book);
        OnPaper paper = onPaper(book, cost);

        assertThat(cost.needs().batches().count()).isEqualTo(paper.batches);
        paper.charged.assertIs(cost.needs().batches().charged(), "charged");
        paper.output.assertIs(cost.needs().batches().output(), "output");
        paper.over.assertIs(cost.needs().batches().over(), "bulk over");
        assertThat(cost.items()).hasSameSizeAs(paper.items.keySet());
        for (ItemCost item : cost.items()) {
            OnPaper.Line line = paper.items.get(item.item().name());
            assertThat(line).as(item.item().name()).isNotNull();
            line.needed.assertIs(item.item().needed(), "needed");
            line.perUnit().assertIs(item.landedPerUnit(), "landed per unit");
            line.used().assertIs(item.used(), "used");
            line.wasted().assertIs(item.wasted(), "wasted");
        }
        paper.used().assertIs(cost.used(), "used");
        paper.wasted().assertIs(cost.wasted(), "wasted");
        paper.outlay().assertIs(cost.outlay(), "outlay");
        paper.stockLeft().assertIs(cost.stockLeft(), "stock left");
        paper.rawMaterials().assertIs(head(cost, Head.RAW_MATERIALS), "raw materials");
        paper.packaging().assertIs(head(cost, Head.PACKAGING), "packaging");
        paper.inbound().assertIs(head(cost, Head.INBOUND), "inbound");
        paper.making.assertIs(head(cost, Head.MAKING), "making");
        paper.filling.assertIs(head(cost, Head.FILLING), "filling");
        paper.qualityControl.assertIs(head(cost, Head.QUALITY_CONTROL), "quality control");
        paper.overhead.assertIs(head(cost, Head.OVERHEAD), "overhead");
        paper.oneOffShare.assertIs(head(cost, Head.ONE_OFFS), "one-offs");
        paper.total().assertIs(cost.total(), "total");
        paper.cash().assertIs(cost.cash(), "cash");
        paper.rawMaterialPerKg().assertIs(cost.rawMaterialPerKg(), "raw material per kg");
        paper.bulkPerKg().assertIs(cost.bulkPerKg(), "bulk per kg");
    }

    /** The books drawn at random hold what they are drawn for. */
    @Example
    void random_books_reach_every_case() {
        Map<String, Integer> seen = new LinkedHashMap<>();
        for (long seed = 0; seed < 120; seed++) {
            Book book = RandomBooks.any(seed);
            CostOutcome outcome = outcome(book);
            if (!(outcome instanceof CostOutcome.Costed costed) || !costed.isComplete()) {
                continue;
            }
            RunCost cost = costed.runs().get(0);
            PlanCost purchase = cost.purchase().cost();
            count(seen, "costed", true);
            count(seen, "several batches", cost.needs().batches().count() > 1);
            count(seen, "bulk over", cost.needs().batches().over().signum() > 0);
            count(seen, "wasted", cost.wasted().signum() > 0);
            count(seen, "stock left", cost.stockLeft().signum() > 0);
            count(seen, "credit", purchase.credit().signum() > 0);
            count(seen, "several orders", purchase.orders().size() > 1);
            count(
                    seen,
                    "several lines",
                    purchase.orders().stream().anyMatch(one -> one.lines().size() > 1));
            count(
                    seen,
                    "small order",
                    purchase.orders().stream()
                            .anyMatch(one -> one.smallOrderCharge().signum() > 0));
            count(
                    seen,
                    "duty",
                    purchase.orders().stream().anyMatch(one -> one.duty().signum() > 0));
            count(seen, "price break", purchase.lines().stream().anyMatch(one -> one.tier() > 0));
            count(seen, "house price", cost.items().stream().anyMatch(one -> one.housePrice() != null));
            count(seen, "packaging", head(cost, Head.PACKAGING).signum() > 0);
            count(
                    seen,
                    "giveaway",
                    cost.giveawayPerUnit().map(BigDecimal::signum).orElse(0) > 0);
            count(seen, "bulk", cost.needs().product() == null);
            count(seen, "ladder", cost.ladder() != null);
        }
        assertThat(seen.get("costed")).isGreaterThan(60);
        assertThat(seen).allSatisfy((what, times) -> assertThat(times).as(what).isGreaterThan(2));
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void figures_for_one_unit_are_those_of_the_run(@ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed) {
        Book book = RandomBooks.any(seed);
        RunCost cost = cost(book);
        OnPaper paper = onPaper(book, cost);
        Assume.that(cost.needs().product() != null);
        Product product = requireNonNull(cost.needs().product());

        paper.perUnit(paper.total()).assertIs(cost.unitCost().orElseThrow(), "unit cost");
        paper.perUnit(paper.cash()).assertIs(cost.cashPerUnit().orElseThrow(), "cash per unit");
        Ratio giveaway = paper.fillKg.times(
                Ratio.ONE.minus(Ratio.of(product.fill().value()).by(paper.targetFill)));
        giveaway.times(paper.bulkPerKg()).assertIs(cost.giveawayPerUnit().orElseThrow(), "giveaway");
        PriceLadder ladder = cost.ladder();
        Figure margin = product.targetMargin();
        if (margin != null) {
            assertThat(ladder).isNotNull();
            Ratio wholesale = paper.perUnit(paper.total()).by(Ratio.ONE.minus(Ratio.of(margin.value())));
            wholesale.assertIs(requireNonNull(ladder.upwards()).wholesale(), "wholesale");
            PriceLadder.Sale atMargin = ladder.ladderSale() == null ? ladder.sale() : ladder.ladderSale();
            earns(paper, wholesale, atMargin);
        } else if (product.targetRetailPrice() == null) {
            assertThat(ladder).isNull();
        }
        Figure retail = product.targetRetailPrice();
        if (retail != null) {
            Ratio shelf = Ratio.of(retail.value())
                    .by(Ratio.ONE.plus(Ratio.of(product.vat().value())));
            Ratio wholesale = shelf.times(
                            Ratio.ONE.minus(Ratio.of(product.retailerMargin().value())))
                    .times(Ratio.ONE.minus(Ratio.of(product.distributorMargin().value())));
            wholesale.assertIs(
                    requireNonNull(requireNonNull(ladder).downwards()).wholesale(), "wholesale at target");
            earns(paper, wholesale, ladder.sale());
        }
    }

    private static void earns(OnPaper paper, Ratio wholesale, PriceLadder.Sale sale) {
        wholesale.minus(paper.perUnit(paper.total())).assertIs(sale.profitPerUnit(), "profit per unit");
        Ratio earned = wholesale.minus(paper.perUnit(paper.total().minus(paper.oneOffShare)));
        if (earned.compareTo(Ratio.ZERO) > 0) {
            paper.oneOffs.by(earned).assertIs(requireNonNull(sale.breakEvenUnits()), "break-even");
        } else {
            assertThat(sale.breakEvenUnits()).isNull();
        }
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void parts_add_up_exactly(@ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed) {
        RunCost cost = cost(RandomBooks.any(seed));

        assertThat(cost.heads().keySet()).containsExactly(Head.values());
        assertThat(sum(List.copyOf(cost.heads().values()))).isEqualByComparingTo(cost.total());
        assertThat(cost.used().add(cost.wasted()).add(cost.work().total()).add(cost.oneOffShare()))
                .isEqualByComparingTo(cost.total());
        assertThat(cost.used().add(cost.wasted()).add(cost.stockLeft())).isEqualByComparingTo(cost.outlay());
        BigDecimal house = sum(cost.items().stream()
                .filter(item -> item.housePrice() != null)
                .map(ItemCost::used)
                .toList());
        assertThat(cost.purchase().cost().outlay().add(house)).isEqualByComparingTo(cost.outlay());
        assertThat(sum(cost.items().stream().map(ItemCost::used).toList())).isEqualByComparingTo(cost.used());
        assertThat(sum(cost.items().stream().map(ItemCost::landed).toList())).isEqualByComparingTo(cost.outlay());
        BigDecimal units = cost.needs().units();
        if (units != null) {
            Ratio.of(cost.total()).assertIs(cost.unitCost().orElseThrow().multiply(units), "unit cost × units");
            Ratio.of(cost.cash()).assertIs(cost.cashPerUnit().orElseThrow().multiply(units), "cash × units");
        }
    }

    @Property(tries = 600, edgeCases = EdgeCasesMode.NONE)
    void nothing_is_negative_and_no_item_is_short(@ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed) {
        RunCost cost = cost(RandomBooks.any(seed));

        assertThat(cost.heads().values()).allMatch(amount -> amount.signum() >= 0);
        assertThat(cost.stockLeft().signum()).isNotNegative();
        for (ItemCost item : cost.items()) {
            assertThat(item.ordered()).isGreaterThanOrEqualTo(item.item().needed());
            assertThat(item.usableLeftover()).isBetween(BigDecimal.ZERO, item.leftover());
        }
    }

    /** Ten times or a thousandth of every amount: a power of ten keeps every digit, so the costs follow exactly. */
    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void costs_follow_the_currency(
            @ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed,
            @ForAll @IntRange(min = 1, max = 4) int zeros) {
        Book book = RandomBooks.inWholeCents(seed);
        BigDecimal times = TEN.pow(zeros);

        RunCost once = cost(book);
        RunCost scaled = cost(scaled(book, times));

        assertThat(scaled.purchase().plan()).isEqualTo(once.purchase().plan());
        for (Head head : Head.values()) {
            assertThat(head(scaled, head)).isEqualByComparingTo(head(once, head).multiply(times));
        }
        assertThat(scaled.outlay()).isEqualByComparingTo(once.outlay().multiply(times));
        assertThat(scaled.bulkPerKg()).isEqualByComparingTo(once.bulkPerKg().multiply(times));
        assertThat(scaled.rawMaterialPerKg())
                .isEqualByComparingTo(once.rawMaterialPerKg().multiply(times));
    }

    /**
     * Suppliers who all invoice abroad, and a home currency worth a third of itself: three times as much of it for
     * everything, but for the last of 34 digits. Lines are rounded in the suppliers' currencies, so no cent changes.
     */
    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
    void costs_follow_the_rate_of_the_home_currency(
            @ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed,
            @ForAll @IntRange(min = 2, max = 9) int factor) {
        Book book = RandomBooks.any(seed);
        Assume.that(book.offers().stream()
                .noneMatch(offer -> offer.currency().equals(book.settings().home())));
        Assume.that(book.suppliers().values().stream()
                .noneMatch(
                        supplier -> supplier.currency().equals(book.settings().home())));
        BigDecimal times = BigDecimal.valueOf(factor);

        RunCost once = cost(book);
        RunCost dearer = cost(devalued(book, times));

        assertThat(dearer.purchase().plan()).isEqualTo(once.purchase().plan());
        Ratio.of(once.total()).times(Ratio.of(times)).assertIs(dearer.total(), "total");
        Ratio.of(once.outlay()).times(Ratio.of(times)).assertIs(dearer.outlay(), "outlay");
        Ratio.of(once.bulkPerKg()).times(Ratio.of(times)).assertIs(dearer.bulkPerKg(), "bulk per kg");
    }

    /**
     * More units never raise the cost of a kilogram of bulk where charges for an order and for a batch are all that
     * does not grow with it. That asks for a lot: one offer at one price for each item, in whole cents; no vessel that
     * fills up; nothing lost, as a hold-up is made up for in every batch. With price breaks, a second pack size or
     * another batch a kilogram may well become dearer. Leftovers play no part: what is used is charged at the landed
     * cost of what is bought.
     */
    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void more_units_never_make_a_kilogram_of_bulk_dearer(
            @ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed,
            @ForAll @IntRange(min = 1, max = 40) int some,
            @ForAll @IntRange(min = 1, max = 40) int more) {
        Book book = singlePriced(RandomBooks.inWholeCents(seed));

        RunCost few = cost(withUnits(book, some * 10));
        RunCost many = cost(withUnits(book, (some + more) * 10));

        assertThat(many.bulkPerKg())
                .isLessThanOrEqualTo(few.bulkPerKg().add(few.bulkPerKg().multiply(new BigDecimal("1e-30"))));
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void stock_on_hand_plays_no_part(@ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed) {
        Book book = RandomBooks.any(seed);
        List<StockLot> shelf = book.materials().values().stream()
                .map(material -> new StockLot(material.name(), Figure.of("1000"), Measure.KG, null, null, Origin.NONE))
                .toList();

        RunCost without = cost(book);
        RunCost with = cost(withStock(book, shelf));

        assertThat(with.heads()).isEqualTo(without.heads());
        assertThat(with.outlay()).isEqualByComparingTo(without.outlay());
    }

    // the same book, changed in one respect

    private static Book withStock(Book book, List<StockLot> shelf) {
        return new Book(
                book.settings(),
                book.suppliers(),
                book.offers(),
                book.materials(),
                book.formulas(),
                book.products(),
                book.runs(),
                book.demand(),
                shelf,
                book.rates());
    }

    private static Book withUnits(Book book, int units) {
        return book.withRuns(List.of(new Run.OfProduct("Jar", Figure.of(BigDecimal.valueOf(units)), Origin.NONE)));
    }

    /** One offer at one price for each item, one batch of any size, nothing lost. */
    private static Book singlePriced(Book book) {
        Map<String, Offer> first = new LinkedHashMap<>();
        for (Offer offer : book.offers()) {
            first.putIfAbsent(
                    offer.item(),
                    new Offer(
                            offer.supplier(),
                            offer.item(),
                            offer.packSize(),
                            offer.packUnit(),
                            List.of(offer.breaks().get(0)),
                            offer.currency(),
                            LineTerms.of(null, Figure.ONE, offer.duty()),
                            Validity.UNKNOWN,
                            Origin.NONE));
        }
        Formula formula = book.formulas().values().iterator().next();
        Batching old = formula.batching();
        Batching batching = new Batching(
                null,
                Figure.ZERO,
                Figure.ZERO,
                old.hoursPerBatch(),
                old.hoursPerKg(),
                old.qualityControlPerBatch(),
                null,
                ProductKind.LEAVE_ON,
                Origin.NONE);
        List<Material> lossless = book.materials().values().stream()
                .map(material -> Draft.material(
                        material.name(),
                        material.inci(),
                        text(material.density()),
                        text(material.housePrice()),
                        "0",
                        null))
                .toList();
        List<Supplier> suppliers = book.suppliers().values().stream()
                .map(supplier -> new Supplier(
                        supplier.name(),
                        supplier.currency(),
                        supplier.terms(),
                        new Supplier.Minimum(
                                supplier.smallOrderCharge() == null ? null : supplier.minimumOrderValue(),
                                supplier.smallOrderCharge()),
                        new Supplier.Charges(
                                supplier.freightPerOrder(),
                                supplier.freightPerKg(),
                                supplier.insurance(),
                                supplier.duty()),
                        supplier.leadTimeDays(),
                        Origin.NONE))
                .toList();
        return new Book(
                book.settings(),
                Book.byName(suppliers, Supplier::name),
                List.copyOf(first.values()),
                Book.byName(lossless, Material::name),
                Book.byName(List.of(new Formula("Cream", formula.lines(), batching, Origin.NONE)), Formula::name),
                book.products(),
                book.runs(),
                List.of(),
                List.of(),
                book.rates());
    }

    private static @Nullable String text(@Nullable Figure figure) {
        return figure == null ? null : figure.value().toPlainString();
    }

    private static Book scaled(Book book, BigDecimal times) {
        List<Supplier> suppliers = book.suppliers().values().stream()
                .map(supplier -> new Supplier(
                        supplier.name(),
                        supplier.currency(),
                        supplier.terms(),
                        new Supplier.Minimum(
                                maybe(supplier.minimumOrderValue(), times), maybe(supplier.smallOrderCharge(), times)),
                        new Supplier.Charges(
                                by(supplier.freightPerOrder(), times),
                                by(supplier.freightPerKg(), times),
                                supplier.insurance(),
                                supplier.duty()),
                        supplier.leadTimeDays(),
                        Origin.NONE))
                .toList();
        List<Offer> offers = book.offers().stream()
                .map(offer -> new Offer(
                        offer.supplier(),
                        offer.item(),
                        offer.packSize(),
                        offer.packUnit(),
                        offer.breaks().stream()
                                .map(price -> new Offer.PriceBreak(
                                        price.from(), by(price.price(), times), price.per(), Origin.NONE))
                                .toList(),
                        offer.currency(),
                        LineTerms.of(offer.minimumOrder(), offer.orderMultiple(), offer.duty()),
                        Validity.UNKNOWN,
                        Origin.NONE))
                .toList();
        return rebuilt(book, suppliers, offers, times, book.rates());
    }

    /** Everything that is stated in home currency times a factor, and home currency for any other as well. */
    private static Book devalued(Book book, BigDecimal times) {
        List<DatedRate> rates = book.rates().rates().stream()
                .map(rate -> rate.to().equals(book.settings().home())
                        ? new DatedRate(rate.from(), rate.to(), by(rate.rate(), times), rate.date(), rate.source())
                        : rate)
                .toList();
        if (book.settings().home().equals(Draft.EUR)) {
            rates = book.rates().rates().stream()
                    .map(rate -> new DatedRate(
                            rate.to(),
                            rate.from(),
                            Figure.of(times.divide(rate.rate().value(), MathContext.DECIMAL128)),
                            rate.date(),
                            rate.source()))
                    .toList();
        }
        return rebuilt(book, List.copyOf(book.suppliers().values()), book.offers(), times, new ExchangeRates(rates));
    }

    private static Book rebuilt(
            Book book, List<Supplier> suppliers, List<Offer> offers, BigDecimal times, ExchangeRates rates) {
        Settings old = book.settings();
        Settings settings = new Settings(
                new Settings.Currencies(old.home(), old.reportCurrencies(), old.conversionMargin()),
                old.costingDate(),
                new Settings.Buying(
                        old.dutyBasis(), old.leftoverCredit(), old.holdingPerYear(), old.priceAgeLimitDays()),
                new Settings.Making(by(old.labourRate(), times), old.overhead(), by(old.processWaterPerKg(), times)),
                new Settings.CashLimits(null, null));
        List<Material> materials = book.materials().values().stream()
                .map(material -> new Material(
                        material.name(),
                        material.inci(),
                        material.functions(),
                        material.density(),
                        maybe(material.housePrice(), times),
                        material.handlingLoss(),
                        material.shelfLifeMonths(),
                        material.traits(),
                        Origin.NONE))
                .toList();
        List<Formula> formulas = book.formulas().values().stream()
                .map(formula ->
                        new Formula(formula.name(), formula.lines(), scaled(formula.batching(), times), Origin.NONE))
                .toList();
        List<Product> products = book.products().values().stream()
                .map(product -> scaled(product, times))
                .toList();
        return new Book(
                settings,
                Book.byName(suppliers, Supplier::name),
                offers,
                Book.byName(materials, Material::name),
                Book.byName(formulas, Formula::name),
                Book.byName(products, Product::name),
                book.runs(),
                List.of(),
                List.of(),
                rates);
    }

    private static Batching scaled(Batching batching, BigDecimal times) {
        return new Batching(
                batching.vesselMax(),
                batching.vesselMin(),
                batching.holdUp(),
                batching.hoursPerBatch(),
                batching.hoursPerKg(),
                by(batching.qualityControlPerBatch(), times),
                null,
                ProductKind.LEAVE_ON,
                Origin.NONE);
    }

    private static Product scaled(Product product, BigDecimal times) {
        Product.Pricing pricing = product.pricing();
        return ProductFixture.like(product)
                .pricing(new Product.Pricing(
                        pricing.targetMargin(),
                        pricing.distributorMargin(),
                        pricing.retailerMargin(),
                        pricing.vat(),
                        maybe(pricing.targetRetailPrice(), times)))
                .oneOffs(new Product.OneOffs(by(product.oneOffCosts(), times), product.spreadOver()))
                .product();
    }

    private static Figure by(Figure figure, BigDecimal times) {
        return figure.withValue(figure.value().multiply(times));
    }

    private static @Nullable Figure maybe(@Nullable Figure figure, BigDecimal times) {
        return figure == null ? null : by(figure, times);
    }

    // costing

    /** The cost of the book's run; a book whose purchase is too much to try is drawn again. */
    private static RunCost cost(Book book) {
        CostOutcome outcome = outcome(book);
        Assume.that(outcome instanceof CostOutcome.Costed costed && costed.isComplete());
        return ((CostOutcome.Costed) outcome).runs().get(0);
    }

    private static CostOutcome outcome(Book book) {
        return new CostRuns(new EveryPurchase(2_000), SearchLimits.usual()).cost(book);
    }

    private static void count(Map<String, Integer> seen, String what, boolean happened) {
        seen.merge(what, happened ? 1 : 0, Integer::sum);
    }

    private static OnPaper onPaper(Book book, RunCost cost) {
        Map<Offer, Long> bought = new LinkedHashMap<>();
        for (LineCost line : cost.purchase().cost().lines()) {
            bought.put(cost.purchase().listing(line).offer(), line.line().packs());
        }
        return new OnPaper(book, book.runs().get(0), bought);
    }

    private static BigDecimal head(RunCost cost, Head head) {
        return requireNonNull(cost.heads().get(head));
    }

    private static BigDecimal sum(List<BigDecimal> amounts) {
        return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
