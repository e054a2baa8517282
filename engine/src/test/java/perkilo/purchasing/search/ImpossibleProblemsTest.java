package perkilo.purchasing.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanOutcome.Shortfall;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.Vendor;

/** What the planner says where no plan covers every need. */
final class ImpossibleProblemsTest {
    private static final Vendor VENDOR = Buying.vendor("Maker", "10");

    @Test
    void nobody_offers_the_item() {
        assertThat(shortfalls(problem(List.of(Buying.need("squalane", "0", 5)), List.of(VENDOR), List.of())))
                .containsExactly(new Shortfall(0, 0, "squalane has no offer", "add an offer for squalane"));
    }

    @Test
    void every_item_that_is_short_is_named() {
        List<Need> needs = List.of(Buying.need("squalane", "0", 5), Buying.need("jar", "0", 100));
        assertThat(shortfalls(problem(needs, List.of(VENDOR), List.of())))
                .extracting(Shortfall::item)
                .containsExactly(0, 1);
    }

    @Test
    void it_cannot_arrive_in_time() {
        Quote late = Buying.quote(0, 0, "5", "0", List.of(Buying.tier("0", "20")), 2, 2);
        assertThat(shortfalls(problem(List.of(Buying.need("squalane", "0", 0, 5, 5)), List.of(VENDOR), List.of(late))))
                .containsExactly(new Shortfall(
                        0,
                        1,
                        "squalane cannot arrive before period 3, and is needed in period 2",
                        "move what needs it to period 3 or later"));
    }

    @Test
    void it_expires_before_it_is_needed() {
        Need need = new Need(
                "extract",
                List.of(BigDecimal.ONE, BigDecimal.ZERO, BigDecimal.ONE),
                List.of(),
                2,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO);
        Quote early = Buying.quote(0, 0, "1", "0", List.of(Buying.tier("0", "20")), 0, 0);
        assertThat(shortfalls(problem(List.of(need), List.of(VENDOR), List.of(early))))
                .containsExactly(new Shortfall(
                        0,
                        2,
                        "extract can be had in period 1 at the latest and is usable for 2 periods, too short for period 3",
                        "move what needs it to period 2, or add an offer that is valid longer"));
    }

    @Test
    void free_goods_never_make_up_a_minimum_order_value() {
        Vendor refuses = Buying.vendor("Samples Ltd", "10", "50", null);
        assertThat(shortfalls(problem(
                        List.of(Buying.need("sample", "0", 1)),
                        List.of(refuses),
                        List.of(Buying.quote(0, 0, "1", "0")))))
                .extracting(Shortfall::reason)
                .containsExactly(
                        "Samples Ltd refuses orders below its minimum order value, which goods without a price can never"
                                + " reach");
    }

    @Test
    void the_money_in_all_is_too_little() {
        PurchaseProblem problem = new PurchaseProblem(
                1,
                List.of(Buying.need("squalane", "0", 12)),
                List.of(VENDOR),
                List.of(Buying.quote(0, 0, "5", "20")),
                null,
                new BigDecimal("60"));
        assertThat(shortfalls(problem))
                .containsExactly(new Shortfall(
                        -1,
                        0,
                        "covering all needs takes 70.00, and no more than 60.00 may be paid out in all",
                        "allow 10.00 more in all"));
    }

    @Test
    void the_money_of_a_period_is_too_little() {
        PurchaseProblem problem = new PurchaseProblem(
                2,
                List.of(Buying.need("squalane", "0", 5, 5)),
                List.of(VENDOR),
                List.of(Buying.quote(0, 0, "5", "20")),
                new BigDecimal("29"),
                null);
        assertThat(shortfalls(problem))
                .containsExactly(new Shortfall(
                        -1,
                        0,
                        "no plan covers all needs with payments of at most 29.00 in each period",
                        "allow 30.00 in each period"));
    }

    @Test
    void a_search_without_time_claims_nothing() {
        PlanOutcome outcome =
                new CheapestPlan().plan(Instance.read("multi-1").problem(), SearchLimits.within(Duration.ZERO));
        assertThat(outcome).isNotInstanceOfAny(PlanOutcome.Proven.class, PlanOutcome.Impossible.class);
    }

    private static PurchaseProblem problem(List<Need> needs, List<Vendor> vendors, List<Quote> quotes) {
        return new PurchaseProblem(needs.get(0).perPeriod().size(), needs, vendors, quotes, null, null);
    }

    private static List<Shortfall> shortfalls(PurchaseProblem problem) {
        PlanOutcome outcome = new CheapestPlan().plan(problem, SearchLimits.usual());
        assertThat(outcome).isInstanceOf(PlanOutcome.Impossible.class);
        return ((PlanOutcome.Impossible) outcome).shortfalls();
    }
}
