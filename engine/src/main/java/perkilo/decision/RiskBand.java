package perkilo.decision;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;

/**
 * What one unit, or one kilogram of bulk that is not filled, would cost some days from now if rates and prices moved as
 * they did before, with today's purchase. Amounts are in home currency.
 *
 * @param cost the run
 * @param horizonDays how many days ahead
 * @param figures null if too little is known of the past
 * @param moved what moves, and how far each did alone
 * @param still the bought items whose prices stay, because there are too few lists of them
 * @param lacking why there are no figures; none if there are
 */
public record RiskBand(
        RunCost cost,
        int horizonDays,
        @Nullable Figures figures,
        Map<Factor, Spread> moved,
        List<String> still,
        List<Lack> lacking) {

    public RiskBand {
        moved = Map.copyOf(moved);
        still = List.copyOf(still);
        lacking = List.copyOf(lacking);
    }

    /**
     * The costs of all windows, in three percentiles.
     *
     * @param p5 at most this in 5 % of the windows
     * @param p50 the median
     * @param p95 at most this in 95 % of the windows
     * @param windows how many there are
     * @param from the day on which the first one begins
     * @param to the day on which the last one ends
     */
    public record Figures(BigDecimal p5, BigDecimal p50, BigDecimal p95, int windows, LocalDate from, LocalDate to) {}

    /**
     * How far a factor moved within the horizon.
     *
     * @param low the change at the 5th percentile, as a fraction; below zero for a fall
     * @param high the change at the 95th percentile
     */
    public record Spread(BigDecimal low, BigDecimal high) {}

    /** Something of which too little is known. */
    public sealed interface Lack {

        /**
         * A currency with too few days.
         *
         * @param code ISO 4217
         * @param days on which its value is known
         */
        record Rates(String code, int days) implements Lack {}

        /** No window of this horizon fits into the days on which all these currencies are known. */
        record Windows(List<String> codes) implements Lack {

            public Windows {
                codes = List.copyOf(codes);
            }
        }

        /** Everything is paid in home currency, and no item has enough lists. */
        record Anything() implements Lack {}
    }
}
