package perkilo.swaps;

import java.util.List;
import perkilo.model.Material;

/**
 * Facts of a material that have to be known before it can be compared with others.
 *
 * @param material whose facts they are
 * @param columns of the Materials sheet in which they are typed
 * @param neededFor what it would be compared for, each in a full sentence
 */
public record MissingFact(Material material, List<String> columns, List<String> neededFor) {

    public MissingFact {
        columns = List.copyOf(columns);
        neededFor = List.copyOf(neededFor);
    }

    /** Where to type them, in a full sentence. */
    public String where() {
        return material.origin().isKnown()
                ? SwapMessages.typeInRow(columns, material.origin().where())
                : SwapMessages.addRow(columns, material.name());
    }
}
