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
 * The cost of a run. Amounts are in home currency.
 *
 * @param home the currency
 * @param needs the product and the needs
 * @param items by item, in the order of the needs
 * @param purchase the purchases
 * @param work hours and their cost
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

    /** The landed cost of what went into the product. */
    public BigDecimal used() {
        HomeSum used = new HomeSum();
        for (ItemCost item : items) {
            used.add(item.usedUnconverted(), item.toHome());
        }
        return used.total();
    }

    /** The landed cost of what was bought and will expire on the shelf. */
    public BigDecimal wasted() {
        return sum(items, ItemCost::wasted);
    }

    /** The share of the one-off costs if the run had given so many units. */
    public BigDecimal oneOffShareOf(BigDecimal units) {
        return RunCosting.oneOffShare(needs.product(), units, oneOffs);
    }

    /** Everything paid for materials and components. */
    public BigDecimal outlay() {
        BigDecimal fromHouse = sum(items, item -> item.housePrice() == null ? ZERO : item.landed());
        BigDecimal bought = purchase.cost().outlay();
        return fromHouse.signum() == 0 ? bought : bought.add(fromHouse);
    }

    /** The cost of what is left on the shelf and can be used: {@code outlay − used − wasted}. */
    public BigDecimal stockLeft() {
        return outlay().subtract(used()).subtract(wasted());
    }

    /** The total cost of the run: items used and wasted, the work, and its share of the one-off costs. */
    public BigDecimal total() {
        return used().add(work.total().add(oneOffShare).add(wasted()));
    }

    /** The cost by head, in the order of the heads; they add up to {@link #total()}. */
    public Map<Head, BigDecimal> heads() {
        return Breakdown.of(this);
    }

    /** All payments for the run, with all one-off costs. */
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

    /** Cost of one unit as a {@link MonetaryAmount}; empty for bulk that is not filled. */
    public Optional<MonetaryAmount> unitCostAmount() {
        return unitCost().map(amount -> Currencies.money(amount, home));
    }

    /** The price ladder; null for bulk, and if neither a margin nor a target price is given. */
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

    /** The cost of the bulk: materials used, making with its overhead, quality control. */
    public BigDecimal bulkTotal() {
        BigDecimal materials = sum(items, item -> item.item().isMaterial() ? item.used() : ZERO);
        return materials.add(work.making()).add(work.makingOverhead()).add(work.qualityControl());
    }

    /** Cost of one kilogram of bulk as it leaves the kettle. */
    public BigDecimal bulkPerKg() {
        return bulkTotal().divide(needs.batches().output(), MathContext.DECIMAL128);
    }

    /** The cost of a unit's fill above the nominal, at the bulk's cost; empty for bulk that is not filled. */
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
