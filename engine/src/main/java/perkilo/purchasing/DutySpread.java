package perkilo.purchasing;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/**
 * The lowest and the highest rate of duty among the quotes of one vendor, as fractions.
 *
 * <p>Each line pays its own rate on its share of the order's charges. So an order pays the average rate of its lines,
 * weighted by goods value, which lies between these two.
 */
public record DutySpread(BigDecimal lowest, BigDecimal highest) {

    private static final DutySpread NONE = new DutySpread(ZERO, ZERO);

    /** The rates by vendor; zero for a vendor without quotes. */
    public static DutySpread[] of(int vendors, List<Quote> quotes) {
        BigDecimal[] lowest = new BigDecimal[vendors];
        BigDecimal[] highest = new BigDecimal[vendors];
        for (Quote quote : quotes) {
            int vendor = quote.vendor();
            BigDecimal rate = quote.duty();
            boolean first = lowest[vendor] == null;
            lowest[vendor] = first || rate.compareTo(lowest[vendor]) < 0 ? rate : lowest[vendor];
            highest[vendor] = first || rate.compareTo(highest[vendor]) > 0 ? rate : highest[vendor];
        }
        DutySpread[] spreads = new DutySpread[vendors];
        Arrays.setAll(spreads, v -> lowest[v] == null ? NONE : new DutySpread(lowest[v], highest[v]));
        return spreads;
    }

    /** Whether there are several rates. */
    public boolean isMixed() {
        return lowest.compareTo(highest) != 0;
    }
}
