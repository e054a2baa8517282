package perkilo.swaps.label;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import perkilo.swaps.facts.InciName;

/**
 * One ingredient of a material.
 *
 * @param name as the label has it
 * @param share of the material, as a fraction
 */
record Component(String name, BigDecimal share) {

    /** The ingredients in a material's INCI name; one alone where the name has several without their shares. */
    static List<Component> of(String inci, List<String> notes) {
        List<InciName.Part> names = InciName.parts(inci);
        if (names.size() < 2) {
            return List.of(new Component(inci, BigDecimal.ONE));
        }
        List<Component> parts = new ArrayList<>();
        for (InciName.Part name : names) {
            BigDecimal share = name.share();
            if (share == null) {
                notes.add(LabelMessages.sharesUnknown(inci));
                return List.of(new Component(inci, BigDecimal.ONE));
            }
            parts.add(new Component(name.name(), share));
        }
        return parts;
    }
}
