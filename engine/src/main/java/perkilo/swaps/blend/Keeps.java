package perkilo.swaps.blend;

import java.util.List;
import java.util.Optional;
import perkilo.model.Material;

/** A rule that a blend keeps: rows of the linear program, and a sentence for people. */
interface Keeps {

    /** Adds its rows. */
    void addRows(List<Ingredient> ingredients, BlendRows rows);

    /** What is kept, or why it could not be kept, in full sentences. */
    String words();

    /** Why a material that is not in the blend cannot come in; empty if it can. */
    default Optional<String> keepsOut(Material candidate) {
        return Optional.empty();
    }

    /** Whether too little is known about a material of the blend, so that its level has to stay. */
    default boolean fixes(Material present) {
        return false;
    }

    /** Why no blend can be judged; empty if one can. */
    default Optional<String> impossible() {
        return Optional.empty();
    }
}
