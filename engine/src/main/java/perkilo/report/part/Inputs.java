package perkilo.report.part;

import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.sheet.Expr;
import perkilo.units.Conversion;
import perkilo.units.Measure;

/** Expressions over cells that a person typed in, used by many figures. */
public final class Inputs {

    private Inputs() {}

    /** Whether a figure is zero and no cell can change it. */
    public static boolean isNone(Figure figure) {
        return figure.isZero() && (figure.perCell() == null || !figure.origin().isKnown());
    }

    /** What was typed, or zero. */
    public static Expr orZero(@Nullable Figure figure) {
        return figure == null ? Expr.of(0) : Expr.input(figure);
    }

    /** One plus a fraction. */
    public static Expr onePlus(Figure fraction) {
        return Expr.of(1).plus(Expr.input(fraction));
    }

    /** One less a fraction. */
    public static Expr oneLess(Figure fraction) {
        return Expr.of(1).minus(Expr.input(fraction));
    }

    /** Units of the target currency for one unit of the source currency. */
    public static Expr rate(Conversion conversion) {
        Expr rate = Expr.of(1);
        boolean first = true;
        for (Conversion.Leg leg : conversion.legs()) {
            Expr table = Expr.input(leg.rate().rate());
            if (leg.inverted()) {
                rate = rate.over(table);
            } else {
                rate = first ? table : rate.times(table);
            }
            first = false;
        }
        return rate;
    }

    /**
     * Kilograms, or pieces, in one of a unit.
     *
     * @param density needed for a volume
     */
    public static Expr basePer(Measure unit, @Nullable Figure density) {
        Expr factor = Expr.of(unit.inBase());
        if (unit.kind() != Measure.Kind.VOLUME) {
            return factor;
        }
        if (density == null) {
            throw new IllegalArgumentException("a volume needs a density");
        }
        return unit.isBase() ? Expr.input(density) : factor.times(Expr.input(density));
    }
}
