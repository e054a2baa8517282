package perkilo.orderplan;

import static java.math.BigDecimal.ZERO;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.Shelf;
import perkilo.purchasing.Steps;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.report.order.OrderReport;

/** Plans of random trades, each figure computed again on paper. */
final class OrderBookProperties {

    @Property(tries = 40)
    void a_plan_adds_up(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
        Book book = RandomTrades.of(seed).book();
        OrderOutcome outcome = new OrderBook(new CheapestPlan(), Steps.most(40)).plan(book);
        if (outcome instanceof OrderOutcome.Planned planned) {
            OrderPlan plan = planned.plan();
            assertThat(PlanCheck.violations(plan.basis().problem(), plan.plan()))
                    .isEmpty();
            needsAreThoseOnPaper(new OnPaper(book, planned.unmet()), plan);
            stockIsThatOnPaper(new OnPaper(book, planned.unmet()), plan);
            ordersCostWhatTheyDoOnPaper(book, planned);
            ordersAreInTime(book, plan);
            // each figure on the sheets is compared with the engine's as it is written
            assertThat(OrderReport.of(planned, Reasons.NONE, planned.findings()).sheets())
                    .hasSize(plan.orders().isEmpty() ? 5 : 6);
        } else {
            assertThat(outcome.findings()).anyMatch(Finding::isError);
        }
    }

    /** Needs that are late are planned for another day. */
    @Example
    void a_plan_with_late_needs_adds_up() {
        a_plan_adds_up(43_416);
    }

    private static void needsAreThoseOnPaper(OnPaper paper, OrderPlan plan) {
        for (HorizonItem item : plan.basis().items()) {
            for (int period = 0; period < plan.days().size(); period++) {
                assertThat(item.needed().get(period))
                        .isEqualByComparingTo(
                                paper.needed(item.name(), plan.days().get(period)));
            }
        }
    }

    private static void stockIsThatOnPaper(OnPaper paper, OrderPlan plan) {
        for (int index = 0; index < plan.stock().size(); index++) {
            StockFlow flow = plan.stock().get(index);
            List<OnPaper.Lot> bought = new ArrayList<>();
            for (LotUse lot : flow.lots()) {
                if (lot.source() instanceof LotUse.Bought one) {
                    LocalDate last = lot.lastDay();
                    LocalDate from = plan.basis().arrival(one.line().line());
                    bought.add(new OnPaper.Lot(lot.quantity(), from, last == null ? LocalDate.MAX : last, true));
                }
            }
            OnPaper.Shelf shelf = paper.shelf(flow.item().name(), plan.days(), bought);
            assertThat(shelf.missing()).isZero();
            assertThat(leftByDay(flow)).usingRecursiveComparison().isEqualTo(normal(shelf.left()));
            sameAsTheEnginesShelf(plan, index, flow);
        }
    }

    private static Map<LocalDate, BigDecimal> leftByDay(StockFlow flow) {
        Map<LocalDate, BigDecimal> left = new TreeMap<>();
        for (LotUse lot : flow.lots()) {
            if (lot.left().signum() > 0) {
                LocalDate last = lot.lastDay();
                left.merge(last == null ? LocalDate.MAX : last, lot.left(), BigDecimal::add);
            }
        }
        return normal(left);
    }

    private static Map<LocalDate, BigDecimal> normal(Map<LocalDate, BigDecimal> amounts) {
        Map<LocalDate, BigDecimal> normal = new TreeMap<>();
        amounts.forEach((day, amount) -> normal.put(day, amount.stripTrailingZeros()));
        return normal;
    }

    private static void sameAsTheEnginesShelf(OrderPlan plan, int index, StockFlow flow) {
        Shelf shelf = Shelf.withPurchases(
                plan.basis().problem().needs().get(index),
                PlanCost.purchases(plan.basis().problem(), plan.plan(), index));
        for (int period = 0; period < plan.days().size(); period++) {
            StockFlow.Day day = flow.days().get(period);
            assertThat(day.onShelf()).isEqualByComparingTo(shelf.closing().get(period));
            assertThat(day.expired()).isEqualByComparingTo(shelf.expired().get(period));
        }
    }

    private static void ordersCostWhatTheyDoOnPaper(Book book, OrderOutcome.Planned planned) {
        OnPaper paper = new OnPaper(book, planned.unmet());
        BigDecimal all = ZERO;
        for (SupplierOrder order : planned.plan().orders()) {
            boolean foreign =
                    !order.supplier().currency().equals(book.settings().home());
            BigDecimal rate = foreign ? new BigDecimal("0.9137") : BigDecimal.ONE;
            assertThat(order.landed().round(MathContext.DECIMAL64))
                    .isEqualByComparingTo(paper.landed(order, rate).round(MathContext.DECIMAL64));
            all = all.add(order.landed());
        }
        assertThat(planned.plan().outlay()).isEqualByComparingTo(all);
    }

    private static void ordersAreInTime(Book book, OrderPlan plan) {
        LocalDate before = book.settings().costingDate();
        for (SupplierOrder order : plan.orders()) {
            assertThat(order.orderBy()).isAfterOrEqualTo(before);
            assertThat(order.orderBy().getDayOfWeek()).isNotIn(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);
            assertThat(order.orderBy().plusDays(HorizonProblem.leadDays(order.supplier())))
                    .isEqualTo(order.arrivesOn());
            assertThat(order.arrivesOn()).isBeforeOrEqualTo(order.neededBy());
            before = order.orderBy();
        }
    }
}
