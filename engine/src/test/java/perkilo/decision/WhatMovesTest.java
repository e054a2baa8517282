package perkilo.decision;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.costing.Market;
import perkilo.costing.RandomBooks;
import perkilo.costing.RunCost;
import perkilo.costing.RunCoster;
import perkilo.costing.RunNeeds;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.ProductFixture;
import perkilo.model.Run;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;
import perkilo.units.Measure;

/** Shares add up to the cost; a swing is what a costing of the changed book gives. */
final class WhatMovesTest {

    private static final BigDecimal DOWN = new BigDecimal("0.9");
    private static final BigDecimal UP = new BigDecimal("1.1");

    /** What a rounded price of a line, ten per cent of it and everything in per cent on top can be off. */
    private static final BigDecimal CENT = new BigDecimal("0.012");

    /** More than enough yen for a euro. */
    private static final long YEN_PER_EURO = 200;

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void shares_add_up_to_the_cost(@ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed) {
        CostOutcome.Costed costed = costed(RandomBooks.any(seed));
        for (CostMoves moves : WhatMoves.kept(costed)) {
            BigDecimal whole = BigDecimal.ZERO;
            BigDecimal fractions = BigDecimal.ZERO;
            for (Share share : moves.shares()) {
                whole = whole.add(share.whole());
                fractions = fractions.add(requireNonNull(share.fraction()));
            }
            assertThat(whole).isCloseTo(moves.cost().total(), within(new BigDecimal("1e-25")));
            assertThat(fractions).isCloseTo(BigDecimal.ONE, within(new BigDecimal("1e-25")));
            BigDecimal unit = moves.cost().unitCost().orElse(null);
            BigDecimal sum = moves.shares().stream().map(Share::ofOne).reduce(BigDecimal.ZERO, BigDecimal::add);
            if (unit != null) {
                assertThat(sum).isCloseTo(unit, within(new BigDecimal("1e-25")));
            }
        }
    }

    /** The other way: the changed book is costed with the same packs. Orders without charges of their own. */
    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void a_swing_with_the_purchase_kept_is_the_cost_of_the_changed_book_with_the_same_packs(
            @ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed) {
        Book book = withoutOrderCharges(RandomBooks.any(seed));
        CostOutcome.Costed costed = costed(book);
        for (CostMoves moves : WhatMoves.kept(costed)) {
            RunCost cost = moves.cost();
            PlanPurchases same = (problem, limits) -> {
                PlanCost again = PlanCost.of(problem, cost.purchase().plan());
                return new PlanOutcome.Proven(cost.purchase().plan(), again, again.objective());
            };
            for (Swing swing : moves.swings()) {
                if (swing.moving() != null) {
                    isClose(swing, requireNonNull(swing.down()), cost, again(book, cost, swing, DOWN, same));
                    isClose(swing, requireNonNull(swing.up()), cost, again(book, cost, swing, UP, same));
                }
            }
        }
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void planned_anew_is_a_full_fresh_run_of_the_changed_book(
            @ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed) {
        Book book = RandomBooks.any(seed);
        CostOutcome.Costed costed = costed(book);
        Assume.that(costed.runs().size() == 1);
        List<CostMoves> all = WhatMoves.replanned(
                costed,
                new CheapestPlan(),
                SearchLimits.usual(),
                done -> assertThat(done).isOne());
        CostMoves moves = all.get(0);
        for (Swing swing : moves.swings()) {
            BigDecimal down = fresh(book, moves.cost(), swing.factor(), DOWN);
            BigDecimal up = fresh(book, moves.cost(), swing.factor(), UP);
            isSame(swing, swing.downReplanned(), down);
            isSame(swing, swing.upReplanned(), up);
        }
    }

    /**
     * By hand: 20 kg of a 25 kg drum at 10 USD per kg, from a supplier with 1 % insurance, freight of 50 USD per order
     * and 0.40 USD per kg, 6 % duty (CIF), a bank's margin of 2 %, 0.90 EUR for one USD.
     *
     * <pre>
     * goods 250, insurance 2.50, freight by weight 10; with margin 262.5 × 1.02 = 267.75; duty 6 % × 262.5 = 15.75
     * order: 50 × 1.02 + 6 % × 50 = 54; landed (267.75 + 15.75 + 54) × 0.9 = 303.75
     * with the price moves (252.5 × 1.02 + 6 % × 252.5) × 0.9 = 245.43, of which 20 of 25 kg: 196.344
     * with the dollar moves 303.75 × 20 / 25 = 243
     * </pre>
     */
    @Test
    void what_moves_with_a_price_and_with_a_currency_by_hand() {
        CostMoves moves = WhatMoves.kept(costed(drum())).get(0);

        assertThat(moves.cost().total()).isEqualByComparingTo("243");
        assertThat(moves.swings().get(0).factor()).isEqualTo(new Factor(Factor.Kind.CURRENCY, "USD"));
        assertThat(moves.swings().get(0).up()).isEqualByComparingTo("2.673"); // 243 × 1.1 / 100
        Swing price = of(moves, "Oil");
        assertThat(price.moving()).isEqualByComparingTo("1.96344");
        assertThat(price.down()).isEqualByComparingTo("2.233656");
        assertThat(price.up()).isEqualByComparingTo("2.626344");
    }

    /** 22 kg at 10 % more fill or units are inside the drum of 25 kg; at 30 % more, 26 kg are not. */
    @Test
    void what_is_not_bought_is_not_covered() {
        CostMoves little = WhatMoves.kept(costed(drum())).get(0);
        CostMoves much = WhatMoves.kept(costed(moved(drum(), "0.3"))).get(0);

        assertThat(of(little, "Fill").up()).isEqualByComparingTo("2.673"); // 22 kg at 12.15
        assertThat(of(little, "Run size").up()).isEqualByComparingTo("2.43"); // still 0.2 kg each
        assertThat(of(much, "Fill").up()).isNull();
        assertThat(of(much, "Run size").up()).isNull();
        assertThat(of(much, "Fill").down()).isEqualByComparingTo("1.701"); // 14 kg at 12.15
    }

    private static Swing of(CostMoves moves, String factor) {
        return moves.swings().stream()
                .filter(swing -> swing.factor().name().equals(factor))
                .findFirst()
                .orElseThrow();
    }

    private static Book moved(Book book, String by) {
        return book.withSettings(book.settings().moving(Figure.of(by)));
    }

    /** One oil, one drum, one supplier. */
    private static Book drum() {
        Settings usual = Settings.of(Currencies.of("EUR"), LocalDate.of(2026, 11, 19));
        Settings settings = new Settings(
                new Settings.Currencies(Currencies.of("EUR"), List.of(), Figure.of("0.02")),
                usual.costingDate(),
                usual.buying(),
                usual.making(),
                usual.cashLimits());
        Supplier supplier = new Supplier(
                "Tarnholt Oleo",
                Currencies.of("USD"),
                null,
                new Supplier.Minimum(null, null),
                new Supplier.Charges(Figure.of("50"), Figure.of("0.4"), Figure.of("0.01"), Figure.of("0.06")),
                null,
                Origin.NONE);
        Offer.PriceBreak price = new Offer.PriceBreak(null, Figure.of("10"), Measure.KG, Origin.NONE);
        Offer offer = new Offer(
                "Tarnholt Oleo",
                "Oil",
                Figure.of("25"),
                Measure.KG,
                List.of(price),
                Currencies.of("USD"),
                LineTerms.NONE,
                Validity.UNKNOWN,
                Origin.NONE);
        Formula.Line line = new Formula.Line("A", "Oil", Figure.of("1"), null, Origin.NONE);
        return new Book(
                settings,
                Book.byName(List.of(supplier), Supplier::name),
                List.of(offer),
                Map.of(),
                Book.byName(List.of(new Formula("F", List.of(line), Batching.ANY, Origin.NONE)), Formula::name),
                Book.byName(
                        List.of(ProductFixture.of("P", "F", "200", Measure.G).product()), product -> product.name()),
                List.of(new Run.OfProduct("P", Figure.of("100"), Origin.NONE)),
                List.of(),
                List.of(),
                new ExchangeRates(List.of(new DatedRate(
                        Currencies.of("USD"), Currencies.of("EUR"), Figure.of("0.90"), usual.costingDate(), "test"))));
    }

    private static void isClose(Swing swing, BigDecimal found, RunCost cost, RunCost again) {
        int lines = cost.purchase().cost().lines().size();
        BigDecimal most = CENT.multiply(BigDecimal.valueOf(lines))
                .divide(perkilo.decision.Measure.of(cost), MathContext.DECIMAL64)
                .multiply(BigDecimal.valueOf(cost.home().getCurrencyCode().equals("JPY") ? YEN_PER_EURO : 1))
                .add(new BigDecimal("1e-12"));
        assertThat(found).as(swing.toString()).isCloseTo(perkilo.decision.Measure.ofOne(again), within(most));
    }

    private static void isSame(Swing swing, @Nullable BigDecimal found, @Nullable BigDecimal expected) {
        if (expected == null) {
            assertThat(found).as(swing.toString()).isNull();
        } else {
            assertThat(requireNonNull(found)).as(swing.toString()).isCloseTo(expected, within(new BigDecimal("1e-25")));
        }
    }

    private static RunCost again(Book book, RunCost cost, Swing swing, BigDecimal factor, PlanPurchases same) {
        Book edited = edited(book, cost, swing.factor(), factor);
        return requireNonNull(new RunCoster(new Market(edited), same, SearchLimits.usual())
                .cost(RunNeeds.of(edited, cost.needs().run()))
                .cost());
    }

    private static @Nullable BigDecimal fresh(Book book, RunCost cost, Factor what, BigDecimal factor) {
        Run run = cost.needs().run();
        Book edited = edited(book, cost, what, factor);
        if (what.kind() == Factor.Kind.RUN_SIZE) {
            BigDecimal size = run instanceof Run.OfProduct units
                    ? units.units().value().multiply(factor).setScale(0, RoundingMode.HALF_UP)
                    : ((Run.OfBulk) run).batchKg().value().multiply(factor);
            edited = book.withRuns(List.of(Edits.sized(run, size)));
        }
        CostOutcome outcome = new CostRuns(new CheapestPlan(), SearchLimits.usual()).cost(edited);
        return outcome instanceof CostOutcome.Costed one && one.runs().size() == 1
                ? perkilo.decision.Measure.ofOne(one.runs().get(0))
                : null;
    }

    private static Book edited(Book book, RunCost cost, Factor what, BigDecimal factor) {
        String made = cost.needs().name();
        return switch (what.kind()) {
            case ITEM -> Edits.price(book, what.name(), factor);
            case CURRENCY -> Edits.currency(book, Currencies.of(what.name()), factor);
            case LABOUR_RATE -> Edits.wage(book, factor);
            case FILL -> Edits.fill(book, made, factor);
            case FILL_LOSS -> Edits.fillLoss(book, made, factor);
            case HANDLING_LOSSES ->
                Edits.handlingLosses(book, cost.needs().formula().name(), factor);
            case COMPONENT_LOSSES -> Edits.componentLosses(book, made, factor);
            case RUN_SIZE -> book;
        };
    }

    private static Book withoutOrderCharges(Book book) {
        Map<String, Supplier> suppliers = new LinkedHashMap<>();
        book.suppliers().forEach((key, old) -> {
            Supplier.Charges charges =
                    new Supplier.Charges(Figure.ZERO, old.freightPerKg(), old.insurance(), old.duty());
            suppliers.put(
                    key,
                    new Supplier(
                            old.name(),
                            old.currency(),
                            old.terms(),
                            new Supplier.Minimum(null, null),
                            charges,
                            old.leadTimeDays(),
                            old.origin()));
        });
        return new Book(
                book.settings(),
                suppliers,
                book.offers(),
                book.materials(),
                book.formulas(),
                book.products(),
                book.runs(),
                book.demand(),
                book.stock(),
                book.rates());
    }

    private static CostOutcome.Costed costed(Book book) {
        CostOutcome outcome = new CostRuns(new CheapestPlan(), SearchLimits.usual()).cost(book);
        Assume.that(outcome instanceof CostOutcome.Costed);
        return (CostOutcome.Costed) outcome;
    }
}
