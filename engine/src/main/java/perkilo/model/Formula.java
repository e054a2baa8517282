package perkilo.model;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/**
 * A recipe in per cent by weight, of the materials as supplied.
 *
 * @param name the sheet's name, or the one in the Formula column
 * @param lines in the order of the sheet, at least one
 * @param batching how it is made
 * @param origin the table's header
 */
public record Formula(String name, List<Line> lines, Batching batching, Origin origin) {

    /** How far the sum may be from 100 %, as a fraction: 0.005 %. */
    public static final BigDecimal TOLERANCE = new BigDecimal("0.00005");

    public Formula {
        lines = List.copyOf(lines);
    }

    /** The sum of all stated levels, as a fraction; the q.s. line counts as zero. */
    public BigDecimal stated() {
        BigDecimal stated = BigDecimal.ZERO;
        for (Line line : lines) {
            Figure level = line.level();
            stated = level == null ? stated : stated.add(level.value());
        }
        return stated;
    }

    /** Whether one line takes the balance. */
    public boolean hasBalanceLine() {
        return lines.stream().anyMatch(Line::isBalance);
    }

    /** The level of a line, as a fraction; for the q.s. line the rest to 100 %. */
    public BigDecimal levelOf(Line line) {
        Figure level = line.level();
        return level == null ? BigDecimal.ONE.subtract(stated()) : level.value();
    }

    /**
     * One line of the recipe.
     *
     * @param phase as typed; empty for none
     * @param material the material's name
     * @param level as a fraction; null for the line that takes the balance (q.s.)
     * @param phaseC the phase's temperature in °C; null if not given
     * @param wish what is said of it for swaps
     * @param origin the cell of the level
     */
    public record Line(
            String phase,
            String material,
            @Nullable Figure level,
            @Nullable Figure phaseC,
            LineWish wish,
            Origin origin) {

        /** A line of which nothing is said for swaps. */
        public Line(String phase, String material, @Nullable Figure level, @Nullable Figure phaseC, Origin origin) {
            this(phase, material, level, phaseC, LineWish.NONE, origin);
        }

        /** The same line with another material or level. */
        public Line with(String other, @Nullable Figure otherLevel) {
            return new Line(phase, other, otherLevel, phaseC, wish, origin);
        }

        /** Whether this line takes the balance (q.s.). */
        public boolean isBalance() {
            return level == null;
        }
    }
}
