package perkilo.report.portfolio;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Head;
import perkilo.costing.RunCost;

/**
 * The figures of one run that a portfolio shows, in the book's home currency; small, as there may be many.
 *
 * @param product the product's name; the formula's name for bulk
 * @param title the product with its size
 * @param units null for bulk
 * @param bulkKg bulk that leaves the kettle
 * @param bulkPerKg cost of a kilogram of it
 * @param unitCost cost of a unit; null for bulk
 * @param cashPerUnit cash for a unit; null for bulk
 * @param outlay all payments for items
 * @param stockLeft the part that stays in stock
 * @param heads cost of a unit, or of a kilogram of bulk, by head
 * @param proven whether the purchase is proven cheapest
 */
public record PortfolioRun(
        String product,
        String title,
        @Nullable BigDecimal units,
        BigDecimal bulkKg,
        BigDecimal bulkPerKg,
        @Nullable BigDecimal unitCost,
        @Nullable BigDecimal cashPerUnit,
        BigDecimal outlay,
        BigDecimal stockLeft,
        Map<Head, BigDecimal> heads,
        boolean proven) {

    public PortfolioRun {
        heads = Collections.unmodifiableMap(new EnumMap<>(heads));
    }

    static PortfolioRun of(RunCost run) {
        BigDecimal output = run.needs().batches().output();
        BigDecimal per = run.needs().units() == null ? output : run.needs().units();
        Map<Head, BigDecimal> heads = new EnumMap<>(Head.class);
        run.heads().forEach((head, amount) -> heads.put(head, amount.divide(per, MathContext.DECIMAL128)));
        return new PortfolioRun(
                run.needs().name(),
                run.needs().title(),
                run.needs().units(),
                output,
                run.bulkPerKg(),
                run.unitCost().orElse(null),
                run.cashPerUnit().orElse(null),
                run.outlay(),
                run.stockLeft(),
                heads,
                run.purchase().proven());
    }

    /** The size of the run: units, or kilograms of bulk. */
    BigDecimal size() {
        return units == null ? bulkKg : units;
    }
}
