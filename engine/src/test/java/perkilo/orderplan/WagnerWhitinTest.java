package perkilo.orderplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.units.Measure;

/**
 * One item in unit packs with a fixed cost for each order is the dynamic lot-size problem, here from the book on.
 *
 * <p>Demand of the first: H. M. Wagner and T. M. Whitin, Dynamic Version of the Economic Lot Size Model, Management
 * Science 5(1), 1958, 89–96, here with constant costs. The second: W. Hopp and M. Spearman, Factory Physics, section on
 * dynamic lot sizing. Periods are 70 days, which begin on a Monday; at a price of 1 for a kilogram, holding of h for a
 * kilogram and period is h × 365 / 70 a year.
 */
final class WagnerWhitinTest {

    @ParameterizedTest(name = "set-up {1}, holding {2} a period: {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "69 29 36 61 61 26 34 67 45 67 79 56 | 54 | 0.4 | 431.6 |",
                "20 50 10 50 50 10 20 40 20 30 | 100 | 1 | 580 | 1 4 8",
            })
    void the_cheapest_lots(String demand, String setUp, BigDecimal holding, BigDecimal cost, String periods) {
        BigDecimal perYear =
                holding.multiply(BigDecimal.valueOf(365)).divide(BigDecimal.valueOf(70), MathContext.DECIMAL64);
        Trade trade = new Trade("2027-01-04")
                .holding(perYear.toPlainString())
                .supplier("Mill", "EUR", 0, setUp, null, null, "0", "0", "0")
                .material("Clay", null, "0")
                .offer("Mill", "Clay", "1", Measure.KG, "1")
                .product("Mask", List.of(), "Clay", "1");
        LocalDate day = LocalDate.parse("2027-01-04");
        BigDecimal goods = BigDecimal.ZERO;
        for (String units : demand.strip().split(" ", -1)) {
            trade.demand("Mask", units, day.toString());
            day = day.plusDays(70);
            goods = goods.add(new BigDecimal(units));
        }
        OrderOutcome outcome = new OrderBook(new CheapestPlan(), SearchLimits.usual()).plan(trade.book());
        assertThat(outcome).isInstanceOf(OrderOutcome.Planned.class);
        OrderPlan plan = ((OrderOutcome.Planned) outcome).plan();
        assertThat(plan.proven()).isTrue();
        assertThat(plan.cost().objective().subtract(goods)).isCloseTo(cost, Offset.offset(new BigDecimal("1e-9")));
        if (periods != null) {
            assertThat(plan.orders().stream()
                            .map(order -> Integer.toString(order.period() + 1))
                            .collect(Collectors.joining(" ")))
                    .isEqualTo(periods);
        }
    }
}
