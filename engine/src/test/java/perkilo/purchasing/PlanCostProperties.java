package perkilo.purchasing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import perkilo.Ratio;

/**
 * What a plan costs, against the formulas of landed cost worked out once more in exact fractions, order by order.
 *
 * <p>{@code landed = [ (G + S + I + F) (1 + margin) + duty ] × rate}, with duty on goods, insurance and freight (CIF)
 * or on goods alone (FOB).
 */
final class PlanCostProperties {

    @Provide
    Arbitrary<Problems.Case> cases() {
        return Problems.cases();
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void every_order_costs_what_its_formula_says(@ForAll("cases") Problems.Case random) {
        PlanCost cost = PlanCost.of(random.problem(), random.plan());

        Ratio outlay = Ratio.ZERO;
        int found = 0;
        for (int period = 0; period < random.problem().periods(); period++) {
            for (int vendor = 0; vendor < random.problem().vendors().size(); vendor++) {
                Bill bill = new Bill(random.problem(), random.plan(), vendor, period);
                if (bill.isEmpty()) {
                    continue;
                }
                OrderCost order = cost.orders().get(found++);
                assertThat(order.vendor()).isEqualTo(vendor);
                assertThat(order.period()).isEqualTo(period);
                bill.goods.assertIs(order.goods(), "goods");
                bill.small.assertIs(order.smallOrderCharge(), "small-order charge");
                bill.insurance.assertIs(order.insurance(), "insurance");
                bill.freight.assertIs(order.freight(), "freight");
                bill.duty.assertIs(order.duty(), "duty");
                bill.landed.assertIs(order.landed(), "landed");
                outlay = outlay.plus(bill.landed);
            }
        }
        assertThat(cost.orders()).hasSize(found);
        outlay.assertIs(cost.outlay(), "outlay");
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void every_line_bears_its_own_charges_and_its_share_of_the_order_s(@ForAll("cases") Problems.Case random) {
        for (OrderCost order : PlanCost.of(random.problem(), random.plan()).orders()) {
            Bill bill = new Bill(random.problem(), random.plan(), order.vendor(), order.period());
            for (int i = 0; i < order.lines().size(); i++) {
                bill.landedOf(i).assertIs(order.lines().get(i).landed(), "line " + i);
            }
        }
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void lines_add_up_to_the_order_and_orders_to_the_outlay(@ForAll("cases") Problems.Case random) {
        PlanCost cost = PlanCost.of(random.problem(), random.plan());

        BigDecimal all = BigDecimal.ZERO;
        BigDecimal periods = BigDecimal.ZERO;
        for (OrderCost order : cost.orders()) {
            BigDecimal lines = BigDecimal.ZERO;
            for (LineCost line : order.lines()) {
                lines = lines.add(line.landed());
                assertThat(line.goods().add(line.inbound())).isEqualByComparingTo(line.landed());
            }
            assertThat(lines).isEqualByComparingTo(order.landed());
            all = all.add(order.landed());
        }
        for (int period = 0; period < random.problem().periods(); period++) {
            periods = periods.add(cost.outlay(period));
        }
        assertThat(cost.outlay()).isEqualByComparingTo(all);
        assertThat(periods).isEqualByComparingTo(all);
        assertThat(cost.lines()).hasSameSizeAs(random.plan().lines());
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void holding_and_credit_follow_the_shelf(@ForAll("cases") Problems.Case random) {
        PurchaseProblem problem = random.problem();
        Ratio holding = Ratio.ZERO;
        Ratio credit = Ratio.ZERO;
        for (int item = 0; item < problem.needs().size(); item++) {
            Need need = problem.needs().get(item);
            Ledger shelf = new Ledger(need, bought(random, item));
            holding = holding.plus(Ratio.of(need.holdingPerUnit()).times(shelf.closingOfAllPeriods()));
            Ratio worth = shelf.leftFromPurchases().min(Ratio.of(need.creditable()));
            credit = credit.plus(Ratio.of(need.creditPerUnit()).times(worth));
        }

        PlanCost cost = PlanCost.of(problem, random.plan());

        holding.assertIs(cost.holding(), "holding");
        credit.assertIs(cost.credit(), "credit");
        assertThat(cost.objective())
                .isEqualByComparingTo(cost.outlay().add(cost.holding()).subtract(cost.credit()));
    }

    private static List<BigDecimal> bought(Problems.Case random, int item) {
        List<BigDecimal> bought = new ArrayList<>();
        for (int period = 0; period < random.problem().periods(); period++) {
            BigDecimal sum = BigDecimal.ZERO;
            for (PurchasePlan.Line line : random.plan().lines()) {
                Quote quote = random.problem().quotes().get(line.quote());
                if (quote.item() == item && line.period() == period) {
                    sum = sum.add(quote.packSize().multiply(BigDecimal.valueOf(line.packs())));
                }
            }
            bought.add(sum);
        }
        return bought;
    }

    /** One order as an accountant would write it down, in fractions of the vendor's currency. */
    private static final class Bill {
        private final Vendor vendor;
        private final List<Ratio> invoiced = new ArrayList<>();
        private final List<Ratio> weights = new ArrayList<>();
        private final List<Ratio> duties = new ArrayList<>();
        private final List<Ratio> rates = new ArrayList<>();
        private Ratio goods = Ratio.ZERO;
        private Ratio kg = Ratio.ZERO;
        private Ratio small = Ratio.ZERO;
        private Ratio insurance = Ratio.ZERO;
        private Ratio freight = Ratio.ZERO;
        private Ratio duty = Ratio.ZERO;
        private Ratio dutiable = Ratio.ZERO;
        private Ratio landed = Ratio.ZERO;

        Bill(PurchaseProblem problem, PurchasePlan plan, int vendorIndex, int period) {
            vendor = problem.vendors().get(vendorIndex);
            boolean cif = vendor.dutyBasis() == DutyBasis.CIF;
            for (PurchasePlan.Line line : plan.lines()) {
                Quote quote = problem.quotes().get(line.quote());
                if (line.period() != period || quote.vendor() != vendorIndex) {
                    continue;
                }
                Ratio packs = Ratio.of(line.packs());
                Ratio quantity = packs.times(Ratio.of(quote.packSize()));
                Ratio price = Ratio.ZERO;
                for (Tier tier : quote.tiers()) {
                    if (Ratio.of(tier.from()).compareTo(quantity) <= 0) {
                        price = Ratio.of(tier.pricePerPack());
                    }
                }
                int digits = quote.minorDigits() == null ? 20 : quote.minorDigits();
                Ratio value = price.times(packs).halfUp(digits).times(Ratio.of(quote.toVendorCurrency()));
                Ratio weight = packs.times(Ratio.of(quote.kgPerPack()));
                Ratio onGoods = Ratio.of(quote.duty()).times(value);
                Ratio onWay = Ratio.of(quote.duty())
                        .times(value.times(Ratio.of(vendor.insurance()))
                                .plus(weight.times(Ratio.of(vendor.freightPerKg()))));
                invoiced.add(value);
                weights.add(weight);
                rates.add(Ratio.of(quote.duty()));
                duties.add(cif ? onGoods.plus(onWay) : onGoods);
                goods = goods.plus(value);
                kg = kg.plus(weight);
                duty = duty.plus(duties.get(duties.size() - 1));
            }
            if (isEmpty()) {
                return;
            }
            BigDecimal charge = vendor.smallOrderCharge();
            if (charge != null && goods.compareTo(Ratio.of(vendor.minimumOrderValue())) < 0) {
                small = Ratio.of(charge);
            }
            insurance = goods.times(Ratio.of(vendor.insurance()));
            freight = Ratio.of(vendor.freightPerOrder()).plus(kg.times(Ratio.of(vendor.freightPerKg())));
            dutiable = cif ? small.plus(Ratio.of(vendor.freightPerOrder())) : small;
            for (int line = 0; line < invoiced.size(); line++) {
                duty = duty.plus(rates.get(line).times(dutiable).times(shareOf(line)));
            }
            landed = atHome(goods.plus(small).plus(insurance).plus(freight), duty);
        }

        boolean isEmpty() {
            return invoiced.isEmpty();
        }

        private Ratio shareOf(int line) {
            return goods.isZero()
                    ? Ratio.ONE.by(Ratio.of(invoiced.size()))
                    : invoiced.get(line).by(goods);
        }

        /**
         * A line's own goods, insurance, freight by weight and duty, its share of the rest by goods value, and its own
         * duty on that share.
         */
        Ratio landedOf(int line) {
            Ratio own = atHome(
                    invoiced.get(line)
                            .plus(invoiced.get(line).times(Ratio.of(vendor.insurance())))
                            .plus(weights.get(line).times(Ratio.of(vendor.freightPerKg()))),
                    duties.get(line));
            Ratio shared = atHome(Ratio.of(vendor.freightPerOrder()).plus(small), dutiable.times(rates.get(line)));
            return own.plus(shared.times(shareOf(line)));
        }

        private Ratio atHome(Ratio paid, Ratio duties) {
            return paid.times(Ratio.ONE.plus(Ratio.of(vendor.margin())))
                    .plus(duties)
                    .times(Ratio.of(vendor.toHome()));
        }
    }
}
