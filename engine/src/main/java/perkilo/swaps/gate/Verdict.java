package perkilo.swaps.gate;

import java.util.List;

/**
 * What a gate says.
 *
 * @param gate which one
 * @param ok whether the material passes
 * @param why in words
 * @param cautions what a person should look at although it passes
 */
public record Verdict(Gate gate, boolean ok, String why, List<String> cautions) {

    public Verdict {
        cautions = List.copyOf(cautions);
    }

    static Verdict pass(Gate gate, String why) {
        return new Verdict(gate, true, why, List.of());
    }

    /** It passes, but a person has to look: the reason is the caution. */
    static Verdict passWithCaution(Gate gate, String caution) {
        return new Verdict(gate, true, caution, List.of(caution));
    }

    static Verdict fail(Gate gate, String why) {
        return new Verdict(gate, false, why, List.of());
    }
}
