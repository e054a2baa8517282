package perkilo.costing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How much less than its nominal quantity a prepacked unit may hold: the tolerable negative error.
 *
 * <p>Directive 76/211/EEC, Annex I, 2.4, for nominal quantities from 5 g or mL to 10 kg or L. Errors stated in per cent
 * are rounded up to the next tenth of a gram or millilitre.
 *
 * @param from the class's smallest nominal quantity, in g or mL
 * @param to its largest
 * @param fraction of the nominal quantity; null if the class has a fixed error
 * @param fixed in g or mL; null if the class has a fraction
 */
public record TolerableError(
        BigDecimal from,
        BigDecimal to,
        @Nullable BigDecimal fraction,
        @Nullable BigDecimal fixed) {

    private static final List<TolerableError> CLASSES = load();

    /**
     * The class that a nominal quantity falls into.
     *
     * @param nominal in g or mL
     * @return empty outside 5 g or mL to 10 kg or L, to which the directive does not apply
     */
    public static Optional<TolerableError> forNominal(BigDecimal nominal) {
        return CLASSES.stream()
                .filter(one -> nominal.compareTo(one.from) >= 0 && nominal.compareTo(one.to) <= 0)
                .findFirst();
    }

    /** All classes, from the smallest nominal quantities to the largest. */
    public static List<TolerableError> classes() {
        return CLASSES;
    }

    /** The tolerable negative error of a nominal quantity in this class, in g or mL. */
    public BigDecimal of(BigDecimal nominal) {
        if (fraction == null) {
            return fixed == null ? BigDecimal.ZERO : fixed;
        }
        return fraction.multiply(nominal).setScale(1, RoundingMode.UP);
    }

    private static List<TolerableError> load() {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                TolerableError.class.getResourceAsStream("tolerable-negative-error.csv"), StandardCharsets.UTF_8))) {
            return lines.lines().skip(1).map(TolerableError::parse).toList();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static TolerableError parse(String line) {
        String[] fields = line.split(",", 5);
        return new TolerableError(
                new BigDecimal(fields[0]),
                new BigDecimal(fields[1]),
                fields[2].isEmpty() ? null : new BigDecimal(fields[2]).movePointLeft(2),
                fields[3].isEmpty() ? null : new BigDecimal(fields[3]));
    }
}
