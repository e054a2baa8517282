package perkilo.corpus;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a list says, without its layout.
 *
 * @param supplier who it is from
 * @param quotedOn its day
 * @param validUntil the last day of its prices; null for none
 * @param currency of all prices
 * @param prices each break of each pack
 */
record Truth(String supplier, LocalDate quotedOn, @Nullable LocalDate validUntil, String currency, List<Price> prices) {

    Truth {
        prices = List.copyOf(prices);
    }

    /**
     * A price.
     *
     * @param item as the list names it
     * @param size of a pack
     * @param unit of the size
     * @param from the quantity from which it holds, in the pack's unit; zero for the first pack
     * @param price the amount
     * @param per how much it is for, in the pack's unit; null for a pack
     */
    record Price(
            String item,
            BigDecimal size,
            String unit,
            BigDecimal from,
            BigDecimal price,
            @Nullable BigDecimal per) {

        /** The price of a whole pack. */
        BigDecimal ofPack() {
            return per == null ? price : price.multiply(size).divide(per);
        }
    }
}
