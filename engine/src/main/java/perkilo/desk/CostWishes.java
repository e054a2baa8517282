package perkilo.desk;

import java.util.List;
import perkilo.model.ScenarioLine;

/**
 * What is asked for besides the costs, and takes time of its own.
 *
 * @param replanned whether the purchase is planned anew for everything that moves a cost
 * @param sizes whether the run sizes are searched from which a unit costs less
 * @param whatIfs scenarios besides those of the workbook
 */
public record CostWishes(boolean replanned, boolean sizes, List<ScenarioLine> whatIfs) {

    public CostWishes {
        whatIfs = List.copyOf(whatIfs);
    }

    /** Nothing more. */
    public static final CostWishes NONE = new CostWishes(false, false, List.of());
}
