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
 * What one item of a run costs. Amounts are in home currency, quantities in kilograms or pieces.
 *
 * <p>What most don't ask for is worked out for those who do.
 *
 * @param item what is needed
 * @param lines what is bought; none where it has a house price
 * @param housePrice what one costs that is made in the house; null where it is bought
 * @param mostUsable the most that can be used of what is left before it expires; null where nothing limits it
 * @param usedUnconverted {@link #used} in the currency that it is paid in, the home currency for several
 * @param toHome home currency for one unit of that
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
     * @param lines that buy it; none where nothing of it is needed
     * @param mostUsable the most that can be used of what is left before it expires; null where nothing limits it
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

    /** What went into the product: {@code needed × landedPerUnit}. */
    public BigDecimal used() {
        return usedUnconverted.multiply(toHome);
    }

    /** What is bought. */
    public BigDecimal ordered() {
        return housePrice == null ? sum(lines, LineCost::quantity) : item.needed();
    }

    /** What is paid for everything that is bought; for a house price what is used. */
    public BigDecimal landed() {
        return housePrice == null ? sum(lines, LineCost::landed) : used();
    }

    /** The goods' part of {@link #landed}. */
    public BigDecimal goods() {
        return housePrice == null ? sum(lines, LineCost::goods) : used();
    }

    /**
     * What will expire on the shelf, at landed cost: to the last digit all that is not used, where nothing else is
     * left.
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

    /** The goods' part of {@link #used()}: all of it where nothing came on top, to the last digit. */
    public BigDecimal usedGoods() {
        BigDecimal goods = goods();
        return housePrice != null || goods.compareTo(landed()) == 0 ? used() : part(goods, item.needed(), ordered());
    }

    /** What of an amount falls to a part of the whole that it is for. */
    private static BigDecimal part(BigDecimal amount, BigDecimal part, BigDecimal whole) {
        return whole.signum() == 0 || part.signum() == 0 ? ZERO : Quotient.of(amount.multiply(part), whole);
    }

    /** What is left over; nothing where it has a house price. */
    public BigDecimal leftover() {
        return housePrice == null ? ordered().subtract(item.needed()) : ZERO;
    }

    /** How much of what is left can be used before it expires. */
    public BigDecimal usableLeftover() {
        return mostUsable == null ? leftover() : leftover().min(mostUsable);
    }

    /** How much of what is left expires. */
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
