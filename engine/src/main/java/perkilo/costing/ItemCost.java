package perkilo.costing;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.purchasing.LineCost;

/**
 * What one item of a run costs. Amounts are in home currency, quantities in kilograms or pieces.
 *
 * @param item what is needed
 * @param lines what is bought; none where it has a house price
 * @param housePrice what one costs that is made in the house; null where it is bought
 * @param ordered what is bought
 * @param usableLeftover how much of what is left can be used before it expires
 * @param landed for everything that is bought; for a house price what is used
 * @param goods the goods' part of {@code landed}
 * @param used what went into the product: {@code needed × landedPerUnit}
 * @param wasted what will expire on the shelf, at landed cost
 */
public record ItemCost(
        Item item,
        List<LineCost> lines,
        @Nullable Figure housePrice,
        BigDecimal ordered,
        BigDecimal usableLeftover,
        BigDecimal landed,
        BigDecimal goods,
        BigDecimal used,
        BigDecimal wasted) {

    public ItemCost {
        lines = List.copyOf(lines);
    }

    /** Landed cost of one kilogram or piece. */
    public BigDecimal landedPerUnit() {
        if (housePrice != null) {
            return housePrice.value();
        }
        return ordered.signum() == 0 ? BigDecimal.ZERO : Quotient.of(landed, ordered);
    }

    /** The goods' part of {@link #used()}. */
    public BigDecimal usedGoods() {
        return housePrice == null ? part(goods, item.needed(), ordered) : goods;
    }

    /** What of an amount falls to a part of the whole that it is for. */
    static BigDecimal part(BigDecimal amount, BigDecimal part, BigDecimal whole) {
        return whole.signum() == 0 || part.signum() == 0 ? BigDecimal.ZERO : Quotient.of(amount.multiply(part), whole);
    }

    /** What is left over; nothing where it has a house price. */
    public BigDecimal leftover() {
        return housePrice == null ? ordered.subtract(item.needed()) : BigDecimal.ZERO;
    }

    /** How much of what is left expires. */
    public BigDecimal expiring() {
        return leftover().subtract(usableLeftover);
    }
}
