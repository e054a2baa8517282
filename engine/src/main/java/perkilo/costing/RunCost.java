package perkilo.costing;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import org.jspecify.annotations.Nullable;
import perkilo.model.Product;
import perkilo.units.Currencies;

/**
 * What a run costs. Amounts are in home currency.
 *
 * @param home the currency
 * @param needs what is made and needed
 * @param items by item, in the order of the needs
 * @param purchase what is bought
 * @param work hours and what they cost
 * @param oneOffs all one-off costs of the product
 * @param oneOffShare this run's share of them
 */
public record RunCost(
        CurrencyUnit home,
        RunNeeds needs,
        List<ItemCost> items,
        Purchase purchase,
        Work work,
        BigDecimal oneOffs,
        BigDecimal oneOffShare) {

    public RunCost {
        items = List.copyOf(items);
    }

    /** What went into the product, at landed cost. */
    public BigDecimal used() {
        HomeSum used = new HomeSum();
        for (ItemCost item : items) {
            used.add(item.usedUnconverted(), item.toHome());
        }
        return used.total();
    }

    /** What was bought and will expire on the shelf, at landed cost. */
    public BigDecimal wasted() {
        return sum(items, ItemCost::wasted);
    }

    /** Everything paid for materials and components. */
    public BigDecimal outlay() {
        BigDecimal fromHouse = sum(items, item -> item.housePrice() == null ? ZERO : item.landed());
        BigDecimal bought = purchase.cost().outlay();
        return fromHouse.signum() == 0 ? bought : bought.add(fromHouse);
    }

    /** What is left on the shelf and can be used, at cost: {@code outlay − used − wasted}. */
    public BigDecimal stockLeft() {
        return outlay().subtract(used()).subtract(wasted());
    }

    /** Everything that the run costs: what was used and wasted, the work, and its share of the one-off costs. */
    public BigDecimal total() {
        return used().add(work.total().add(oneOffShare).add(wasted()));
    }

    /** What the money is spent on: all heads, in their order; they add up to {@link #total()}. */
    public Map<Head, BigDecimal> heads() {
        return Breakdown.of(this);
    }

    /** Everything that leaves the bank for the run, all one-off costs included. */
    public BigDecimal cash() {
        return outlay().add(work.total()).add(oneOffs);
    }

    /** Cost of one unit; empty for bulk that is not filled. */
    public Optional<BigDecimal> unitCost() {
        return perUnit(total());
    }

    /** Cash for one unit; empty for bulk that is not filled. */
    public Optional<BigDecimal> cashPerUnit() {
        return perUnit(cash());
    }

    /** Cost of one unit as the standard's type; empty for bulk that is not filled. */
    public Optional<MonetaryAmount> unitCostAmount() {
        return unitCost().map(amount -> Currencies.money(amount, home));
    }

    /** What it must sell for; null for bulk, and where no margin and no target price is given. */
    public @Nullable PriceLadder ladder() {
        Product product = needs.product();
        BigDecimal units = needs.units();
        return product == null || units == null
                ? null
                : PriceLadder.of(
                        product,
                        total().divide(units, MathContext.DECIMAL128),
                        oneOffShare.divide(units, MathContext.DECIMAL128));
    }

    /** An amount of the run, for one unit; empty for bulk that is not filled. */
    public Optional<BigDecimal> perUnit(BigDecimal amount) {
        return Optional.ofNullable(needs.units()).map(units -> amount.divide(units, MathContext.DECIMAL128));
    }

    /** Cost of the recipe for one kilogram, without any loss: {@code Σ w_i × landed per kg_i}. */
    public BigDecimal rawMaterialPerKg() {
        return sum(items, item -> item.item().isMaterial() ? item.item().share().multiply(item.landedPerUnit()) : ZERO);
    }

    /** Everything that the bulk costs: materials used, making with its overhead, quality control. */
    public BigDecimal bulkTotal() {
        BigDecimal materials = sum(items, item -> item.item().isMaterial() ? item.used() : ZERO);
        return materials.add(work.making()).add(work.makingOverhead()).add(work.qualityControl());
    }

    /** Cost of one kilogram of bulk as it leaves the kettle. */
    public BigDecimal bulkPerKg() {
        return bulkTotal().divide(needs.batches().output(), MathContext.DECIMAL128);
    }

    /** What a unit's fill above the nominal costs, at the bulk's cost; empty for bulk that is not filled. */
    public Optional<BigDecimal> giveawayPerUnit() {
        FillTarget fill = needs.fill();
        return Optional.ofNullable(fill).map(target -> target.giveawayKg().multiply(bulkPerKg()));
    }

    private static <T> BigDecimal sum(Collection<T> things, Function<T, BigDecimal> amount) {
        BigDecimal sum = ZERO;
        for (T thing : things) {
            BigDecimal more = amount.apply(thing);
            sum = more.signum() == 0 ? sum : sum.add(more);
        }
        return sum;
    }
}
