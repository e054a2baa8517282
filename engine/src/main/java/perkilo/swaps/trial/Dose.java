package perkilo.swaps.trial;

import java.math.BigDecimal;
import java.util.List;

/**
 * How much of another material replaces what a line has.
 *
 * @param from level now, as a fraction
 * @param to level of the other material, as a fraction
 * @param balanced whether a line takes the difference, and has enough to give
 * @param why in full sentences
 * @param cautions what a person should check, each in full sentences
 */
public record Dose(BigDecimal from, BigDecimal to, boolean balanced, String why, List<String> cautions) {

    public Dose {
        cautions = List.copyOf(cautions);
    }
}
