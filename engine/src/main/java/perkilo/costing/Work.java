package perkilo.costing;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;
import perkilo.model.Batching;
import perkilo.model.Product;
import perkilo.model.Settings;
import perkilo.origin.Figure;

/**
 * Hours of a run and their cost, in home currency.
 *
 * @param makingHours {@code n × hours per batch + n · b × hours per kg}
 * @param fillingHours {@code set-up + U / (units per hour) × people}
 * @param making making hours at the labour rate
 * @param filling filling hours at the labour rate
 * @param overheadRate on labour, as a fraction
 * @param qualityControl {@code n × cost per batch}
 */
public record Work(
        BigDecimal makingHours,
        BigDecimal fillingHours,
        BigDecimal making,
        BigDecimal filling,
        BigDecimal overheadRate,
        BigDecimal qualityControl) {

    /** The work of a run. */
    public static Work of(Settings settings, RunNeeds needs) {
        Batching batching = needs.formula().batching();
        BigDecimal count = BigDecimal.valueOf(needs.batches().count());
        BigDecimal makingHours = count.multiply(batching.hoursPerBatch().value())
                .add(needs.batches().charged().multiply(batching.hoursPerKg().value()));
        BigDecimal fillingHours = fillingHours(needs.product(), needs.units());
        BigDecimal rate = settings.labourRate().value();
        return new Work(
                makingHours,
                fillingHours,
                makingHours.multiply(rate),
                fillingHours.multiply(rate),
                settings.overhead().value(),
                count.multiply(batching.qualityControlPerBatch().value()));
    }

    /** Overhead on making. */
    public BigDecimal makingOverhead() {
        return making.multiply(overheadRate);
    }

    /** Overhead on making and filling. */
    public BigDecimal overhead() {
        return making.add(filling).multiply(overheadRate);
    }

    /** Labour, its overhead and quality control. */
    public BigDecimal total() {
        return making.add(filling).add(overhead()).add(qualityControl);
    }

    private static BigDecimal fillingHours(@Nullable Product product, @Nullable BigDecimal units) {
        if (product == null || units == null) {
            return BigDecimal.ZERO;
        }
        Figure speed = product.unitsPerHour();
        BigDecimal running = speed == null
                ? BigDecimal.ZERO
                : units.multiply(product.fillingPeople().value()).divide(speed.value(), MathContext.DECIMAL128);
        return product.setUpHours().value().add(running);
    }
}
