package perkilo.orderplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.assertj.core.data.Offset;
import perkilo.model.Book;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.units.Measure;

/** Plans of small random books by day cost as little as any plan on any working days. */
final class EveryDayProperties {

    private static final int MOST_PACKS = 4;

    @Property(tries = 250)
    void no_plan_on_any_working_days_is_cheaper(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Book book = small(seed);
        OrderOutcome outcome = new OrderBook(new CheapestPlan(), SearchLimits.within(Duration.ofHours(1))).plan(book);
        EveryDay every = new EveryDay(book, MOST_PACKS);
        double least = every.least();
        if (outcome instanceof OrderOutcome.Planned planned && planned.unmet().isEmpty()) {
            OrderPlan plan = planned.plan();
            assertThat(PlanCheck.violations(plan.basis().problem(), plan.plan()))
                    .isEmpty();
            assertThat(plan.proven()).isTrue();
            double cost = plan.cost().objective().doubleValue();
            long packs =
                    plan.plan().lines().stream().mapToLong(line -> line.packs()).sum();
            if (packs <= MOST_PACKS) {
                assertThat(cost).as("seed " + seed + ": " + every.plan()).isCloseTo(least, Offset.offset(0.005));
            } else {
                assertThat(cost).as("seed " + seed).isLessThan(least + 0.005);
            }
        } else {
            assertThat(least).as("seed " + seed).isEqualTo(Double.POSITIVE_INFINITY);
        }
    }

    /** Stock that expires before the first day of the plan is no safety stock. */
    @Example
    void expired_stock_is_no_safety_stock() {
        no_plan_on_any_working_days_is_cheaper(10_390);
    }

    static Book small(long seed) {
        return new Small(seed).book();
    }

    /** A book of one or two materials that are needed on two or three days within three weeks. */
    private static final class Small {
        private final Random random;
        private final LocalDate today;
        private final Trade trade;

        Small(long seed) {
            random = new Random(seed);
            today = LocalDate.parse("2027-02-15").plusDays(random.nextInt(14));
            trade = new Trade(today.toString());
        }

        Book book() {
            trade.holding(pick("0", "0.3", "2", "6")).costPerOrder(pick("0", "0", "3"));
            boolean two = random.nextInt(3) == 0;
            List<String> items = two ? List.of("Oil", "Wax") : List.of("Oil");
            trade.supplier(
                    "S0", "EUR", random.nextInt(4), pick("0", "5"), pick("30", "60"), pick("4", "9"), "0", "0", "0");
            trade.supplier("S1", "EUR", random.nextInt(6), pick("0", "2"), null, null, "0", "0", "0");
            for (String item : items) {
                trade.safety(random.nextInt(4) == 0 ? pick("2", "5") : null)
                        .material(item, random.nextInt(3) == 0 ? pick("0.2", "0.3", "0.5") : null, "0");
                offers(item, "S" + random.nextInt(2), two);
            }
            if (two) {
                trade.product("Balm", List.of(), "Oil", "0.5", "Wax", "0.5");
            } else {
                trade.product("Balm", List.of(), "Oil", "1");
            }
            int lead = pickInt(0, 0, 2);
            trade.makingLeadDays(lead == 0 ? null : Integer.toString(lead));
            for (int i = 0; i < (two ? 2 : 2 + random.nextInt(2)); i++) {
                LocalDate day = today.plusDays(lead + 8L + random.nextInt(two ? 5 : 9));
                trade.demand("Balm", Integer.toString(4 + random.nextInt(8)), day.toString());
            }
            if (random.nextBoolean()) {
                trade.stock("Oil", pick("3", "8"), Measure.KG, orNone(today.plusDays(random.nextInt(18))));
            }
            if (random.nextInt(3) == 0) {
                LocalDate expected = today.plusDays(random.nextInt(16) - 1L);
                trade.onOrder(
                        "Oil",
                        pick("4", "9"),
                        Measure.KG,
                        orNone(expected.plusDays(random.nextInt(8))),
                        expected.toString());
            }
            for (int i = random.nextInt(3); i > 0; i--) {
                trade.dayOff(today.plusDays(random.nextInt(14)).toString());
            }
            return trade.book();
        }

        private void offers(String item, String supplier, boolean two) {
            String pack = two ? "9" : pick("6", "9");
            trade.offer(supplier, item, pack, Measure.KG, null, 1, null, "0", pick("30", "40"), "18", pick("25", "29"));
            if (random.nextBoolean()) {
                trade.quoted("2027-01-02");
                trade.offer(supplier, item, pack, Measure.KG, "0", 1, null, "0", pick("22", "33", "60"))
                        .quoted(today.plusDays(1L + random.nextInt(12)).toString());
            }
        }

        private @org.jspecify.annotations.Nullable String orNone(LocalDate day) {
            return random.nextInt(3) == 0 ? null : day.toString();
        }

        private String pick(String... choices) {
            return choices[random.nextInt(choices.length)];
        }

        private int pickInt(int... choices) {
            return choices[random.nextInt(choices.length)];
        }
    }
}
