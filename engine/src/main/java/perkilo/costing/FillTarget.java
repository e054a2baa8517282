package perkilo.costing;

import static java.math.BigDecimal.ONE;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.model.Product;
import perkilo.origin.Figure;
import perkilo.units.Measure;

/**
 * The quantity to which the filler is set, so that a unit holds the quantity on its label.
 *
 * <p>The nominal fill; or with an overfill, {@code nominal × (1 + overfill)}; or if the filler's standard deviation σ
 * is given, the smallest mean that satisfies the packers' rules for the average quantity, {@code max(Qn, Qn − T + 1.96
 * σ, Qn − 2T + 3.72 σ)}: the mean is not below the nominal, at most 2.5 % are short by more than the tolerable negative
 * error T, and practically none (1 in 10,000) by more than twice that. Directive 76/211/EEC, Annex I; the factors are
 * those of the normal distribution.
 *
 * @param rule which of the three applies
 * @param nominal in the fill's unit
 * @param target in the fill's unit
 * @param tolerable the tolerable negative error in the fill's unit; null if it is not used
 * @param kgPerFillUnit kilograms of bulk in one of the fill's unit
 * @param targetKg kilograms of bulk in one unit
 */
public record FillTarget(
        Rule rule,
        BigDecimal nominal,
        BigDecimal target,
        @Nullable BigDecimal tolerable,
        BigDecimal kgPerFillUnit,
        BigDecimal targetKg) {

    /** The number of standard deviations by which 2.5 % of a normal distribution fall short. */
    public static final BigDecimal SHORT_BY_ONE = new BigDecimal("1.96");

    /** The number of standard deviations by which 1 in 10,000 of a normal distribution falls short. */
    public static final BigDecimal SHORT_BY_TWO = new BigDecimal("3.72");

    /** How a target is set. */
    public enum Rule {
        NOMINAL,
        OVERFILL,
        AVERAGE_QUANTITY
    }

    /**
     * The target fill of a product.
     *
     * @throws IllegalArgumentException if the fill is a volume and no density is known
     */
    public static FillTarget of(Product product) {
        BigDecimal nominal = product.fill().value();
        Figure density = product.density();
        BigDecimal kgPerFillUnit = product.fillUnit()
                .inKg(density == null ? null : density.value())
                .orElseThrow(() ->
                        new IllegalArgumentException(product.name() + " is filled by volume and needs a density"));
        Figure sd = product.fillerSd();
        if (sd != null) {
            Optional<BigDecimal> tolerable = tolerable(nominal, product.fillUnit());
            BigDecimal target =
                    tolerable.map(t -> smallestMean(nominal, t, sd.value())).orElse(nominal);
            return new FillTarget(
                    Rule.AVERAGE_QUANTITY,
                    nominal,
                    target,
                    tolerable.orElse(null),
                    kgPerFillUnit,
                    target.multiply(kgPerFillUnit));
        }
        Figure overfill = product.overfill();
        BigDecimal target = overfill == null ? nominal : nominal.multiply(ONE.add(overfill.value()));
        return new FillTarget(
                overfill == null ? Rule.NOMINAL : Rule.OVERFILL,
                nominal,
                target,
                null,
                kgPerFillUnit,
                target.multiply(kgPerFillUnit));
    }

    /** The fill of a unit above the nominal, in the fill's unit. */
    public BigDecimal giveaway() {
        return target.subtract(nominal);
    }

    /** The fill of a unit above the nominal, in kilograms. */
    public BigDecimal giveawayKg() {
        return giveaway().multiply(kgPerFillUnit);
    }

    private static BigDecimal smallestMean(BigDecimal nominal, BigDecimal tolerable, BigDecimal sd) {
        BigDecimal second = nominal.subtract(tolerable).add(SHORT_BY_ONE.multiply(sd));
        BigDecimal third = nominal.subtract(tolerable.add(tolerable)).add(SHORT_BY_TWO.multiply(sd));
        return nominal.max(second).max(third);
    }

    /** The tolerable negative error in the fill's unit; the directive uses grams and millilitres. */
    private static Optional<BigDecimal> tolerable(BigDecimal nominal, Measure unit) {
        BigDecimal perUnit = unit.inBase().movePointRight(3);
        BigDecimal small = nominal.multiply(perUnit);
        return TolerableError.forNominal(small).map(one -> one.of(small).divide(perUnit, MathContext.DECIMAL128));
    }
}
