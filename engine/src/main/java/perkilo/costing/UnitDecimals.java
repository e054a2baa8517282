package perkilo.costing;

import java.math.BigDecimal;
import java.util.List;

/** The number of decimals for costs of one unit: two are too few for a unit that costs less than one. */
public final class UnitDecimals {

    private static final int OF_SMALL_COSTS = 4;

    private UnitDecimals() {}

    /**
     * The number of decimals for runs that are shown side by side.
     *
     * @param usual for costs of one and more
     */
    public static int of(List<RunCost> runs, int usual) {
        for (RunCost run : runs) {
            BigDecimal cost = run.unitCost().orElse(BigDecimal.ONE);
            if (cost.compareTo(BigDecimal.ONE) < 0) {
                return Math.max(usual, OF_SMALL_COSTS);
            }
        }
        return usual;
    }
}
