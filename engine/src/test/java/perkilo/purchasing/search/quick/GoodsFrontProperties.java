package perkilo.purchasing.search.quick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;

/** The choice of options that meets minimum order values, against trying out every choice. */
class GoodsFrontProperties {

    private static final double NEAR = 1e-6;

    /** Invented options of some items, as dear as their goods and something besides. */
    @SuppressWarnings("ArrayRecordComponent") // never compared and never shown
    private record Case(List<CoverOptions.Found> items, double[] minimum) {

        static Case of(int seed, int count, int optionsEach) {
            Random random = new Random(seed);
            double[] minimum = random.doubles(1 + random.nextInt(3), 50, 400).toArray();
            List<CoverOptions.Found> items = new ArrayList<>();
            for (int item = 0; item < count; item++) {
                List<Option> options = new ArrayList<>();
                for (int some = 0; some < optionsEach; some++) {
                    options.add(option(random, minimum));
                }
                items.add(new CoverOptions.Found(Option.best(options), true));
            }
            return new Case(items, minimum);
        }

        private static Option option(Random random, double[] minimum) {
            double[] goods = new double[minimum.length];
            double cost = 1 + random.nextInt(500) / 10.0;
            int vendor = random.nextInt(minimum.length);
            if (random.nextInt(4) > 0) {
                double worth = random.nextInt(2000) / 10.0;
                goods[vendor] = Math.min(minimum[vendor], worth);
                cost += worth * (1 + random.nextInt(40) / 100.0);
            }
            return new Option(List.of(), cost, goods);
        }

        /** The least that any choice costs which meets the minimums; infinite where none does. */
        double least() {
            return least(0, 0, new double[minimum.length]);
        }

        private double least(int at, double cost, double[] goods) {
            if (at == items.size()) {
                for (int vendor = 0; vendor < goods.length; vendor++) {
                    if (goods[vendor] < minimum[vendor] - 1e-9) {
                        return Double.POSITIVE_INFINITY;
                    }
                }
                return cost;
            }
            double least = Double.POSITIVE_INFINITY;
            for (Option option : items.get(at).options()) {
                double[] with = goods.clone();
                for (int vendor = 0; vendor < with.length; vendor++) {
                    with[vendor] += option.goods(vendor);
                }
                least = Math.min(least, least(at + 1, cost + option.cost(), with));
            }
            return least;
        }

        double costOf(List<Option> chosen) {
            assertThat(chosen).hasSameSizeAs(items);
            double cost = 0;
            double[] goods = new double[minimum.length];
            for (int item = 0; item < chosen.size(); item++) {
                assertThat(items.get(item).options()).contains(chosen.get(item));
                cost += chosen.get(item).cost();
                for (int vendor = 0; vendor < goods.length; vendor++) {
                    goods[vendor] += chosen.get(item).goods(vendor);
                }
            }
            for (int vendor = 0; vendor < goods.length; vendor++) {
                assertThat(goods[vendor]).isGreaterThanOrEqualTo(minimum[vendor] - NEAR);
            }
            return cost;
        }
    }

    @Property
    void the_choice_costs_what_the_cheapest_of_all_does(
            @ForAll int seed, @ForAll @IntRange(min = 1, max = 5) int count) {
        Case some = Case.of(seed, count, 3);
        GoodsFront front = new GoodsFront(some.items, some.minimum, Double.POSITIVE_INFINITY);
        List<Option> chosen = front.choose();
        double least = some.least();
        if (chosen == null) {
            assertThat(least).isInfinite();
        } else {
            assertThat(some.costOf(chosen)).isCloseTo(least, within(NEAR));
        }
    }

    @Property
    void what_is_not_below_the_limit_is_not_chosen(@ForAll int seed, @ForAll @IntRange(min = 1, max = 5) int count) {
        Case some = Case.of(seed, count, 3);
        double least = some.least();
        if (Double.isFinite(least)) {
            assertThat(new GoodsFront(some.items, some.minimum, least - NEAR).choose())
                    .isNull();
            assertThat(new GoodsFront(some.items, some.minimum, least + NEAR).choose())
                    .isNotNull();
        }
    }

    @Property
    void the_bound_is_below_and_the_quick_choice_above_the_least(
            @ForAll int seed, @ForAll @IntRange(min = 1, max = 5) int count) {
        Case some = Case.of(seed, count, 3);
        double least = some.least();
        QuickFill fill = new QuickFill(some.items, some.minimum);
        assertThat(fill.cost()).isGreaterThanOrEqualTo(least - NEAR);
        if (Double.isFinite(fill.cost())) {
            assertThat(some.costOf(fill.options())).isCloseTo(fill.cost(), within(NEAR));
        }
        double limit = Double.isFinite(least) ? least * 1.05 : Double.POSITIVE_INFINITY;
        assertThat(new GoodsPrices(some.items, some.minimum, limit).bound()).isLessThanOrEqualTo(least + NEAR);
    }

    /** Prices that would have to be very high to make up for very little swallow digits. */
    @Property
    void so_it_is_where_next_to_nothing_is_missing_of_a_large_minimum(
            @ForAll int seed, @ForAll @IntRange(min = 1, max = 5) int count) {
        Random random = new Random(seed);
        double[] minimum = random.doubles(1 + random.nextInt(2), 1e5, 1e6).toArray();
        List<CoverOptions.Found> items = new ArrayList<>();
        for (int item = 0; item < count; item++) {
            List<Option> options = new ArrayList<>();
            for (int some = 0; some < 3; some++) {
                double[] goods = new double[minimum.length];
                int vendor = random.nextInt(minimum.length);
                goods[vendor] = random.nextBoolean() ? minimum[vendor] : minimum[vendor] - random.nextInt(3) / 100.0;
                options.add(new Option(List.of(), 100 + random.nextInt(100_000) / 100.0, goods));
            }
            items.add(new CoverOptions.Found(Option.best(options), true));
        }
        Case some = new Case(items, minimum);
        double least = some.least();
        double limit = random.nextBoolean() || Double.isInfinite(least) ? Double.POSITIVE_INFINITY : least * 1.05;
        assertThat(new GoodsPrices(items, minimum, limit).bound()).isLessThanOrEqualTo(least + NEAR);
        List<Option> chosen = new GoodsFront(items, minimum, limit).choose();
        assertThat(chosen == null ? Double.POSITIVE_INFINITY : some.costOf(chosen))
                .satisfies(
                        cost -> assertThat(Double.isInfinite(least) ? cost.isInfinite() : Math.abs(cost - least) < NEAR)
                                .isTrue());
    }

    /** One vendor, and a choice to beat that takes more steps than there are items. */
    @Property(tries = 60)
    void many_small_packs_are_chosen_until_the_minimum_is_met(@ForAll int seed) {
        Random random = new Random(seed);
        double[] minimum = {1000};
        List<CoverOptions.Found> items = new ArrayList<>();
        double most = 0;
        for (int item = 0; item < 6; item++) {
            double price = 1 + random.nextInt(90) / 10.0;
            List<Option> options = new ArrayList<>();
            for (int packs = 1; packs <= 60; packs++) {
                options.add(new Option(List.of(), packs * price * 1.1, new double[] {packs * price}));
            }
            most += 60 * price;
            items.add(new CoverOptions.Found(options, true));
        }
        QuickFill fill = new QuickFill(items, minimum);
        if (most >= minimum[0]) {
            double cost = new Case(items, minimum).costOf(fill.options());
            assertThat(cost).isCloseTo(fill.cost(), within(NEAR));
            List<Option> chosen = new GoodsFront(items, minimum, Double.POSITIVE_INFINITY).choose();
            assertThat(chosen).isNotNull();
            assertThat(new Case(items, minimum).costOf(chosen)).isBetween(1100 - NEAR, cost + NEAR);
        } else {
            assertThat(fill.cost()).isInfinite();
        }
    }

    /** Six items with nine options have more partial choices than are carried on with. */
    @Property(tries = 60)
    void where_too_much_is_left_out_the_bound_says_so(@ForAll int seed) {
        Case some = Case.of(seed, 6, 9);
        GoodsFront front = new GoodsFront(some.items, some.minimum, Double.POSITIVE_INFINITY);
        List<Option> chosen = front.choose();
        double cost = chosen == null ? Double.POSITIVE_INFINITY : some.costOf(chosen);
        double least = some.least();
        assertThat(cost).isGreaterThanOrEqualTo(least - NEAR);
        assertThat(Math.min(front.bound(), cost)).isLessThanOrEqualTo(least + NEAR);
        Statistics.label("something left out")
                .collect(front.bound() < cost)
                .coverage(left -> left.check(true).count(cases -> cases > 0));
    }
}
