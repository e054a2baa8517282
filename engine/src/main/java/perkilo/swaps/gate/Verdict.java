package perkilo.swaps.gate;

import java.util.List;
import perkilo.swaps.trial.TrialWords;

/**
 * What a gate says.
 *
 * @param gate which one
 * @param ok whether the material passes
 * @param why in full sentences
 * @param cautions what a person should check although the material passes, each in full sentences
 */
public record Verdict(Gate gate, boolean ok, String why, List<String> cautions) {

    public Verdict {
        cautions = List.copyOf(cautions);
    }

    static Verdict pass(Gate gate, String why) {
        return new Verdict(gate, true, why, List.of());
    }

    /** A pass that a person has to check: the reason is the caution. */
    static Verdict passWithCaution(Gate gate, String caution) {
        return new Verdict(gate, true, caution, List.of(caution));
    }

    static Verdict fail(Gate gate, String why) {
        return new Verdict(gate, false, why, List.of());
    }

    /** The same as a caution, if a person opens the gate. */
    Verdict opened() {
        return ok ? this : passWithCaution(gate, why);
    }

    /** The reason after the name of its gate, such as {@code Melting: Melts at 60 °C, but the phase is at 25 °C.} */
    public String withName() {
        return TrialWords.capital(gate.name()) + ": " + why;
    }
}
