package perkilo.swaps.blend;

import java.util.List;
import java.util.Map;

/**
 * The search for blends of the lines of one function, and its outcome.
 *
 * @param formula its name
 * @param function of the lines, in words
 * @param phase the phases of the lines, as typed
 * @param refusal why no blend was sought; empty where one was
 * @param kept the rules that every blend keeps, and which band could not be applied, each in full sentences
 * @param leftOut materials that can do the same work and are in no blend, or at a level that stays, by the reason
 * @param notOffered blends that were found and are not offered, each with the reason in full sentences
 * @param blends those that save at some run size
 */
public record BlendStudy(
        String formula,
        String function,
        String phase,
        String refusal,
        List<String> kept,
        Map<String, List<String>> leftOut,
        List<String> notOffered,
        List<Blend> blends) {

    public BlendStudy {
        kept = List.copyOf(kept);
        notOffered = List.copyOf(notOffered);
        blends = List.copyOf(blends);
    }

    /** A study that was refused. */
    static BlendStudy refused(String formula, String function, String phase, String refusal) {
        return new BlendStudy(formula, function, phase, refusal, List.of(), Map.of(), List.of(), List.of());
    }

    /** Whether a blend was sought. */
    public boolean isSought() {
        return refusal.isEmpty();
    }
}
