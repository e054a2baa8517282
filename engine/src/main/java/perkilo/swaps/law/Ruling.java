package perkilo.swaps.law;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the law says about a group of substances in a formula.
 *
 * @param group the group
 * @param outcome whether its rules are kept
 * @param rule the rule that is broken, or that may be; the strictest one that is kept otherwise; null if no rule has a
 *     number for this kind of product
 * @param level of the group in the formula, as the rule expresses it, as a fraction; as far as known
 * @param materials those that bring it, by their names, the largest share first
 * @param words why, in full sentences
 * @param cautions conditions that no figure shows, and rules of a later day, in full sentences
 */
public record Ruling(
        String group,
        Outcome outcome,
        @Nullable LegalRule rule,
        BigDecimal level,
        List<String> materials,
        String words,
        List<String> cautions) {

    public Ruling {
        materials = List.copyOf(materials);
        cautions = List.copyOf(cautions);
    }

    /** Whether rules are kept. */
    public enum Outcome {
        KEPT,
        /** It depends on something that is not known: the part of the body, or a share in a blend. */
        UNCLEAR,
        BROKEN
    }
}
