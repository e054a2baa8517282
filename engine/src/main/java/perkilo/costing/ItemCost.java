package perkilo.costing;

import static java.math.BigDecimal.ONE;
import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.Quotient;

/**
 * The cost of one item of a run. Amounts are in home currency, quantities in kilograms or pieces.
 *
 * <p>Rarely used figures are computed on demand.
 *
 * @param item the item
 * @param lines the purchases; empty for a house price
 * @param housePrice price of one kilogram that is made in the house; null if it is bought
 * @param mostUsable the most of the leftover that can be used before it expires; null for no limit
 * @param usedUnconverted {@link #used} in the currency of payment; in home currency if there are several
 * @param toHome home currency for one unit of that currency
 */
public record ItemCost(
        Item item,
        List<LineCost> lines,
        @Nullable Figure housePrice,
        @Nullable BigDecimal mostUsable,
        BigDecimal usedUnconverted,
        BigDecimal toHome) {

    public ItemCost {
        lines = List.copyOf(lines);
    }

    /** An item at its house price. */
    static ItemCost fromHouse(Item item, Figure price) {
        return new ItemCost(item, List.of(), price, null, item.needed().multiply(price.value()), ONE);
    }

    /**
     * An item that is bought.
     *
     * @param lines the purchases; empty if none is needed
     * @param mostUsable the most of the leftover that can be used before it expires; null for no limit
     */
    static ItemCost bought(Item item, List<LineCost> lines, @Nullable BigDecimal mostUsable) {
        if (lines.isEmpty()) {
            return new ItemCost(item, lines, null, mostUsable, ZERO, ONE);
        }
        BigDecimal rate = lines.get(0).toHome();
        boolean alike = lines.size() == 1
                || lines.stream().allMatch(line -> line.toHome().compareTo(rate) == 0);
        return alike
                ? new ItemCost(item, lines, null, mostUsable, used(item, lines, LineCost::landedUnconverted), rate)
                : new ItemCost(item, lines, null, mostUsable, used(item, lines, LineCost::landed), ONE);
    }

    private static BigDecimal used(Item item, List<LineCost> lines, Function<LineCost, BigDecimal> landed) {
        BigDecimal quantity = sum(lines, LineCost::quantity);
        if (item.needed().compareTo(quantity) == 0) {
            return sum(lines, landed); // to the last digit, which a price per unit may not have
        }
        BigDecimal perUnit = lines.size() == 1 ? lines.get(0).landedPerUnit() : null;
        return perUnit == null
                ? part(sum(lines, landed), item.needed(), quantity)
                : item.needed().multiply(perUnit);
    }

    /** Whether its cost is known: it is bought, or has a house price, or none of it is needed. */
    public boolean isKnown() {
        return housePrice != null || !lines.isEmpty() || !item.isNeeded();
    }

    /** The cost of what went into the product: {@code needed × landedPerUnit}. */
    public BigDecimal used() {
        return usedUnconverted.multiply(toHome);
    }

    /** The quantity bought. */
    public BigDecimal ordered() {
        return housePrice == null ? sum(lines, LineCost::quantity) : item.needed();
    }

    /** The cost of everything bought; for a house price, of what is used. */
    public BigDecimal landed() {
        return housePrice == null ? sum(lines, LineCost::landed) : used();
    }

    /** The goods' part of {@link #landed}. */
    public BigDecimal goods() {
        return housePrice == null ? sum(lines, LineCost::goods) : used();
    }

    /**
     * The cost of what will expire on the shelf, at landed cost; if nothing else is left, exactly the cost of all that
     * is not used.
     */
    public BigDecimal wasted() {
        if (mostUsable == null) {
            return ZERO;
        }
        return usableLeftover().signum() == 0 ? landed().subtract(used()) : part(landed(), expiring(), ordered());
    }

    /** Landed cost of one kilogram or piece. */
    public BigDecimal landedPerUnit() {
        if (housePrice != null) {
            return housePrice.value();
        }
        return lines.isEmpty() ? ZERO : Quotient.of(landed(), ordered());
    }

    /** The goods' part of {@link #used()}; exactly the same if there are no other costs. */
    public BigDecimal usedGoods() {
        BigDecimal goods = goods();
        return housePrice != null || goods.compareTo(landed()) == 0 ? used() : part(goods, item.needed(), ordered());
    }

    /** The share of an amount for a part of the whole. */
    private static BigDecimal part(BigDecimal amount, BigDecimal part, BigDecimal whole) {
        return whole.signum() == 0 || part.signum() == 0 ? ZERO : Quotient.of(amount.multiply(part), whole);
    }

    /** The quantity left over; zero for a house price. */
    public BigDecimal leftover() {
        return housePrice == null ? ordered().subtract(item.needed()) : ZERO;
    }

    /** The part of the leftover that can be used before it expires. */
    public BigDecimal usableLeftover() {
        return mostUsable == null ? leftover() : leftover().min(mostUsable);
    }

    /** The part of the leftover that expires. */
    public BigDecimal expiring() {
        return leftover().subtract(usableLeftover());
    }

    private static BigDecimal sum(List<LineCost> lines, Function<LineCost, BigDecimal> amount) {
        if (lines.size() == 1) {
            return amount.apply(lines.get(0));
        }
        BigDecimal sum = ZERO;
        for (LineCost line : lines) {
            sum = sum.add(amount.apply(line));
        }
        return sum;
    }
}
