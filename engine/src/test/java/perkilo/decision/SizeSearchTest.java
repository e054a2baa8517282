package perkilo.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.costing.RandomBooks;
import perkilo.costing.RunCost;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.ProductFixture;
import perkilo.model.Run;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.model.Traits;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.units.Currencies;
import perkilo.units.ExchangeRates;
import perkilo.units.Measure;

/** The sizes that halving finds are those that trying every size finds. */
final class SizeSearchTest {

    private static final long RANGE = 120;

    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
    void halving_finds_what_trying_every_size_finds(@ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed) {
        Book book = RandomBooks.inWholeCents(seed);
        Assume.that(book.settings().leftoverCredit().isZero());
        Assume.that(book.runs().get(0) instanceof Run.OfProduct);
        Run.OfProduct named = (Run.OfProduct) book.runs().get(0);
        long from = named.units().value().longValueExact();
        CostOutcome.Costed costed = costed(book.withRuns(List.of(named, sized(named, from + RANGE))));
        Assume.that(costed.runs().size() == 2);

        SizeAdvice advice = only(costed);

        List<RunCost> every = new ArrayList<>();
        for (long units = from; units <= from + RANGE; units++) {
            every.addAll(costed(book.withRuns(List.of(sized(named, units)))).runs());
        }
        assertThat(every).hasSize((int) RANGE + 1);
        List<BigDecimal> expected = new ArrayList<>();
        int smaller = 0;
        BigDecimal lowest = cost(every.get(0));
        for (int at = 1; at < every.size(); at++) {
            RunCost before = every.get(at - 1);
            RunCost now = every.get(at);
            boolean changed = !bought(before).equals(bought(now))
                    || before.needs().batches().count() != now.needs().batches().count();
            if (!changed) {
                continue;
            }
            lowest = lowest.min(cost(before));
            if (cost(now).compareTo(lowest) < 0) {
                BigDecimal limit = cost(before).multiply(new BigDecimal("0.995"));
                if (cost(now).compareTo(limit) <= 0) {
                    expected.add(now.needs().units());
                } else {
                    smaller++;
                }
            }
        }
        assertThat(advice.isExact()).isTrue();
        assertThat(advice.steps())
                .extracting(step -> step.at().needs().units())
                .usingElementComparator(BigDecimal::compareTo)
                .isEqualTo(expected);
        assertThat(advice.smaller()).isEqualTo(smaller);
    }

    /**
     * By hand: 0.1 kg each; a can of 5 kg costs 100, a drum of 25 kg 240. One can is enough up to 50 units, two cans up
     * to 100, all at 2.00 each. From 101 units on the drum is cheaper than three cans: 0.96 each.
     */
    @Test
    void a_drum_in_place_of_cans_by_hand() {
        SizeAdvice advice = only(costed(cans(null, null)));

        assertThat(advice.steps()).singleElement().satisfies(step -> {
            assertThat(step.before().unitCost().orElseThrow()).isEqualByComparingTo("2");
            assertThat(step.at().needs().units()).isEqualByComparingTo("101");
            assertThat(step.at().unitCost().orElseThrow()).isEqualByComparingTo("0.96");
            assertThat(step.fall()).isEqualByComparingTo("0.52");
        });
        assertThat(advice.limit()).isNull();
        assertThat(advice.unknown()).isEqualTo(SizeAdvice.Unknown.NO_YEARLY_UNITS);
    }

    /** 300 units a year and a shelf life of 9 months: after 225 units the next run comes in 9 months. */
    @Test
    void how_large_a_run_may_be() {
        SizeAdvice advice = only(costed(cans("300", "9")));
        assertThat(advice.limit()).isEqualTo(new SizeAdvice.Limit(225, "Oil"));
        assertThat(only(costed(cans("300", null))).unknown()).isEqualTo(SizeAdvice.Unknown.NO_SHELF_LIFE);
    }

    /** 171 sizes, one step. */
    @Test
    void sizes_far_apart_take_few_plans() {
        Book book = cans(null, null);
        Run.OfProduct small = (Run.OfProduct) book.runs().get(0);
        CostOutcome.Costed costed = costed(book.withRuns(List.of(small, sized(small, 180))));
        int[] plans = new int[1];
        SizeAdvice advice = SizeSearch.of(
                        costed,
                        (problem, limits) -> {
                            plans[0]++;
                            return new CheapestPlan().plan(problem, limits);
                        },
                        SearchLimits.usual())
                .get(0);

        assertThat(advice.steps()).hasSize(1);
        assertThat(plans[0]).isLessThan(40);
    }

    @Test
    void one_size_alone_has_nothing_between() {
        Book book = cans(null, null);
        CostOutcome.Costed costed = costed(book.withRuns(List.of(book.runs().get(0))));

        assertThat(SizeSearch.of(costed, new CheapestPlan(), SearchLimits.usual()))
                .isEmpty();
    }

    @Test
    void a_search_that_is_stopped_says_so() {
        SearchLimits stopped = SearchLimits.usual(() -> true);
        List<SizeAdvice> all = SizeSearch.of(costed(cans(null, null)), new CheapestPlan(), stopped);

        assertThat(all).allMatch(advice -> !advice.isExact());
    }

    /** Oil in cans and drums, 100 g a unit, runs of 10 and 240 units. */
    private static Book cans(@Nullable String yearly, @Nullable String shelfLife) {
        Offer.PriceBreak can = new Offer.PriceBreak(null, Figure.of("100"), null, Origin.NONE);
        Offer.PriceBreak drum = new Offer.PriceBreak(null, Figure.of("240"), null, Origin.NONE);
        Formula.Line line = new Formula.Line("A", "Oil", Figure.of("1"), null, Origin.NONE);
        Material oil = new Material(
                "Oil",
                "",
                List.of(),
                null,
                null,
                Figure.ZERO,
                shelfLife == null ? null : Figure.of(shelfLife),
                Traits.UNKNOWN,
                Origin.NONE);
        Supplier supplier = Supplier.of("Tarnholt Oleo", Currencies.of("EUR"));
        return new Book(
                Settings.of(Currencies.of("EUR"), LocalDate.of(2026, 11, 19)),
                Book.byName(List.of(supplier), Supplier::name),
                List.of(offer("5", can), offer("25", drum)),
                Book.byName(List.of(oil), Material::name),
                Book.byName(List.of(new Formula("F", List.of(line), Batching.ANY, Origin.NONE)), Formula::name),
                Book.byName(
                        List.of(ProductFixture.of("P", "F", "100", Measure.G)
                                .yearlyUnits(yearly == null ? null : Figure.of(yearly))
                                .product()),
                        product -> product.name()),
                List.of(
                        new Run.OfProduct("P", Figure.of("10"), Origin.NONE),
                        new Run.OfProduct("P", Figure.of("240"), Origin.NONE)),
                List.of(),
                List.of(),
                ExchangeRates.NONE);
    }

    private static Offer offer(String kg, Offer.PriceBreak price) {
        return new Offer(
                "Tarnholt Oleo",
                "Oil",
                Figure.of(kg),
                Measure.KG,
                List.of(price),
                Currencies.of("EUR"),
                LineTerms.NONE,
                Validity.UNKNOWN,
                Origin.NONE);
    }

    private static Run sized(Run.OfProduct run, long units) {
        return new Run.OfProduct(run.product(), Figure.of(BigDecimal.valueOf(units)), run.origin());
    }

    private static Map<String, Long> bought(RunCost cost) {
        Map<String, Long> packs = new TreeMap<>();
        cost.purchase()
                .cost()
                .lines()
                .forEach(line -> packs.put(
                        cost.purchase().listing(line).offer().toString(),
                        line.line().packs()));
        return packs;
    }

    private static BigDecimal cost(RunCost cost) {
        return cost.unitCost().orElseThrow();
    }

    private static SizeAdvice only(CostOutcome.Costed costed) {
        List<SizeAdvice> all = SizeSearch.of(costed, new CheapestPlan(), SearchLimits.usual());
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static CostOutcome.Costed costed(Book book) {
        CostOutcome outcome = new CostRuns(new CheapestPlan(), SearchLimits.usual()).cost(book);
        Assume.that(outcome instanceof CostOutcome.Costed);
        return (CostOutcome.Costed) outcome;
    }
}
