package perkilo.costing;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import perkilo.model.Product;
import perkilo.model.Settings;
import perkilo.origin.Figure;
import perkilo.purchasing.LineCost;

/** Adds up what a run costs, once it is known what is bought for it. */
final class RunCosting {

    private final Market market;
    private final Settings settings;

    RunCosting(Market market) {
        this.market = market;
        this.settings = market.book().settings();
    }

    RunCost cost(RunNeeds needs, Purchase purchase) {
        List<ItemCost> items = items(needs, purchase);
        Work work = Work.of(settings, needs);
        Product product = needs.product();
        BigDecimal oneOffs = product == null ? ZERO : product.oneOffCosts().value();
        BigDecimal share = oneOffShare(product, needs.units(), oneOffs);
        Map<Head, BigDecimal> heads = heads(items, work, share);
        BigDecimal total = sum(heads.values(), head -> head);
        return new RunCost(
                settings.home(),
                needs,
                items,
                purchase,
                work,
                oneOffs,
                share,
                heads,
                ladder(product, needs.units(), total, share));
    }

    private List<ItemCost> items(RunNeeds needs, Purchase purchase) {
        List<List<LineCost>> lines = purchase.linesByNeed();
        List<ItemCost> items = new ArrayList<>(needs.items().size());
        int need = 0;
        for (Item item : needs.items()) {
            Figure house = market.housePrice(item).orElse(null);
            if (house != null) {
                items.add(fromHouse(item, house));
            } else {
                items.add(bought(needs, item, item.isNeeded() ? lines.get(need++) : List.of()));
            }
        }
        return items;
    }

    private static ItemCost fromHouse(Item item, Figure price) {
        BigDecimal cost = item.needed().multiply(price.value());
        return new ItemCost(item, List.of(), price, item.needed(), ZERO, cost, cost, price.value(), cost, cost, ZERO);
    }

    private static ItemCost bought(RunNeeds needs, Item item, List<LineCost> lines) {
        BigDecimal ordered = sum(lines, LineCost::quantity);
        BigDecimal landed = sum(lines, LineCost::landed);
        BigDecimal goods = sum(lines, LineCost::goods);
        BigDecimal leftover = ordered.subtract(item.needed());
        BigDecimal usable = UsableLeftover.limit(needs, item).map(leftover::min).orElse(leftover);
        BigDecimal perUnit = ordered.signum() == 0 ? ZERO : landed.divide(ordered, MathContext.DECIMAL128);
        return new ItemCost(
                item,
                lines,
                null,
                ordered,
                usable,
                landed,
                goods,
                perUnit,
                part(landed, item.needed(), ordered),
                part(goods, item.needed(), ordered),
                part(landed, leftover.subtract(usable), ordered));
    }

    private static BigDecimal part(BigDecimal amount, BigDecimal part, BigDecimal whole) {
        return whole.signum() == 0 || part.signum() == 0
                ? ZERO
                : amount.multiply(part).divide(whole, MathContext.DECIMAL128);
    }

    /** A run carries the one-off costs by its units, and never more than all of them. */
    private static BigDecimal oneOffShare(@Nullable Product product, @Nullable BigDecimal units, BigDecimal oneOffs) {
        Figure spread = product == null ? null : product.spreadOver();
        if (spread == null || units == null || units.compareTo(spread.value()) >= 0) {
            return oneOffs;
        }
        return oneOffs.multiply(units).divide(spread.value(), MathContext.DECIMAL128);
    }

    private static Map<Head, BigDecimal> heads(List<ItemCost> items, Work work, BigDecimal oneOffShare) {
        Map<Head, BigDecimal> heads = new EnumMap<>(Head.class);
        BigDecimal materials = sumIf(items, item -> item.item().isMaterial(), ItemCost::usedGoods);
        BigDecimal packaging = sumIf(items, item -> !item.item().isMaterial(), ItemCost::usedGoods);
        heads.put(Head.RAW_MATERIALS, materials);
        heads.put(Head.PACKAGING, packaging);
        heads.put(Head.INBOUND, sum(items, ItemCost::used).subtract(materials).subtract(packaging));
        heads.put(Head.MAKING, work.making());
        heads.put(Head.FILLING, work.filling());
        heads.put(Head.QUALITY_CONTROL, work.qualityControl());
        heads.put(Head.OVERHEAD, work.overhead());
        heads.put(Head.WASTED_STOCK, sum(items, ItemCost::wasted));
        heads.put(Head.ONE_OFFS, oneOffShare);
        return heads;
    }

    private static @Nullable PriceLadder ladder(
            @Nullable Product product, @Nullable BigDecimal units, BigDecimal total, BigDecimal oneOffShare) {
        if (product == null || units == null) {
            return null;
        }
        return PriceLadder.of(
                product,
                total.divide(units, MathContext.DECIMAL128),
                oneOffShare.divide(units, MathContext.DECIMAL128));
    }

    private static <T> BigDecimal sum(Collection<T> things, Function<T, BigDecimal> amount) {
        return sumIf(things, thing -> true, amount);
    }

    private static <T> BigDecimal sumIf(Collection<T> things, Predicate<T> which, Function<T, BigDecimal> amount) {
        BigDecimal sum = ZERO;
        for (T thing : things) {
            if (which.test(thing)) {
                sum = sum.add(amount.apply(thing));
            }
        }
        return sum;
    }
}
