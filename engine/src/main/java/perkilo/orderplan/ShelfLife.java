package perkilo.orderplan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Item;
import perkilo.model.Material;
import perkilo.origin.Figure;

/**
 * How long goods can be used from the day they arrive, that day included.
 *
 * @param months whole months
 * @param days on top
 */
public record ShelfLife(int months, int days) {

    /** Days of a month, for a part of it. Own choice. */
    private static final BigDecimal DAYS_A_MONTH = BigDecimal.valueOf(30);

    /** The shelf life of an item; null if it is not known. */
    static @Nullable ShelfLife of(Item item) {
        Material material = item.material();
        Figure life = material == null ? null : material.shelfLifeMonths();
        if (life == null) {
            return null;
        }
        BigDecimal whole = life.value().setScale(0, RoundingMode.DOWN);
        BigDecimal part = life.value().subtract(whole).multiply(DAYS_A_MONTH);
        return new ShelfLife(
                whole.intValueExact(), part.setScale(0, RoundingMode.DOWN).intValueExact());
    }

    /** The last day of use of goods that arrive on a day. */
    public LocalDate lastDay(LocalDate arrival) {
        LocalDate last = arrival.plusMonths(months).plusDays(days).minusDays(1);
        return last.isBefore(arrival) ? arrival : last;
    }
}
