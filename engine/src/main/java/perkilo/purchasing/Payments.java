package perkilo.purchasing;

import java.math.BigDecimal;
import java.util.List;

/**
 * Which limit on cash the payments for an order count towards. Limits are numbered from zero, for example by month.
 *
 * @param limits how many there are
 * @param parts by vendor, then by period of the order: its payments
 */
public record Payments(int limits, List<List<List<Part>>> parts) {

    public Payments {
        parts = parts.stream()
                .map(byPeriod -> byPeriod.stream().map(List::copyOf).toList())
                .toList();
    }

    /**
     * A payment.
     *
     * @param limit that it counts towards
     * @param invoiced the part of an order's landed cost without duty; one if it is all of it
     * @param duty the part of an order's duty
     */
    public record Part(int limit, BigDecimal invoiced, BigDecimal duty) {}
}
