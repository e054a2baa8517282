package perkilo.costing;

import static java.math.BigDecimal.ONE;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import perkilo.model.Batching;
import perkilo.origin.Figure;
import perkilo.purchasing.Quotient;

/**
 * The bulk of a run and its batches. All weights are in kilograms.
 *
 * <p>For bulk B to fill, vessel maximum Vmax, minimum Vmin and hold-up H: {@code n = ⌈ B / (Vmax − H) ⌉} batches, one
 * if the vessel has no maximum; batch size {@code b = max( B / n + H , Vmin )}.
 *
 * @param bulkToFill B: the bulk that must leave the kettle
 * @param count n
 * @param batchKg b: the weight of each batch
 * @param charged {@code n · b}: the weight of all batches
 * @param output {@code n (b − H)}: the bulk that leaves the kettle
 * @param over what leaves the kettle beyond the need, because of the vessel's minimum
 */
public record Batches(
        BigDecimal bulkToFill, long count, BigDecimal batchKg, BigDecimal charged, BigDecimal output, BigDecimal over) {

    /**
     * Batches for units of a product: {@code B = U · m / (1 − φ)}.
     *
     * @param units U
     * @param targetKg m: target fill of one unit
     * @param fillLoss φ: bulk lost in filling, as a fraction below one
     * @throws IllegalArgumentException if the vessel holds no more than its hold-up
     */
    public static Batches forUnits(BigDecimal units, BigDecimal targetKg, BigDecimal fillLoss, Batching batching) {
        BigDecimal filled = units.multiply(targetKg);
        BigDecimal kept = ONE.subtract(fillLoss);
        BigDecimal holdUp = batching.holdUp().value();
        Figure max = batching.vesselMax();
        long count = max == null ? 1 : roundedUp(filled, kept.multiply(usable(max.value(), holdUp)));
        return of(Quotient.of(filled, kept), count, batching);
    }

    /**
     * Batches for bulk that is not filled.
     *
     * @param batchKg the weight, hold-up included; if the vessel is too small, several batches are made
     * @throws IllegalArgumentException if the vessel holds no more than its hold-up
     */
    public static Batches forBulk(BigDecimal batchKg, Batching batching) {
        BigDecimal holdUp = batching.holdUp().value();
        Figure max = batching.vesselMax();
        if (max != null) {
            usable(max.value(), holdUp);
        }
        long count = max == null ? 1 : roundedUp(batchKg, max.value());
        BigDecimal bulk = batchKg.subtract(holdUp.multiply(BigDecimal.valueOf(count)));
        return of(bulk, count, batching);
    }

    /** Why bulk that is not filled cannot be made; empty if it can. */
    static Optional<String> whyNot(BigDecimal batchKg, Batching batching) {
        try {
            forBulk(batchKg, batching);
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    /**
     * If the minimum does not apply, totals come from the bulk itself: n times a rounded n-th part is not the whole.
     */
    private static Batches of(BigDecimal bulk, long count, Batching batching) {
        BigDecimal times = BigDecimal.valueOf(count);
        BigDecimal holdUp = batching.holdUp().value();
        BigDecimal minimum = batching.vesselMin().value();
        BigDecimal even = Quotient.of(bulk, times).add(holdUp);
        boolean raised = even.compareTo(minimum) < 0;
        BigDecimal batchKg = raised ? minimum : even;
        BigDecimal output = raised ? minimum.subtract(holdUp).multiply(times) : bulk;
        if (output.signum() <= 0) {
            throw new IllegalArgumentException(CostMessages.nothingBeyondHoldUp(batchKg, holdUp));
        }
        return new Batches(bulk, count, batchKg, output.add(holdUp.multiply(times)), output, output.subtract(bulk));
    }

    private static BigDecimal usable(BigDecimal max, BigDecimal holdUp) {
        BigDecimal usable = max.subtract(holdUp);
        if (usable.signum() <= 0) {
            throw new IllegalArgumentException(CostMessages.vesselHoldsOnlyHoldUp(max, holdUp));
        }
        return usable;
    }

    /** The quotient rounded up, at least one: exact, as both are decimals. */
    private static long roundedUp(BigDecimal dividend, BigDecimal divisor) {
        return Math.max(1, dividend.divide(divisor, 0, RoundingMode.CEILING).longValueExact());
    }
}
