package perkilo.swaps.blend;

import java.util.List;
import java.util.Optional;
import perkilo.model.Material;

/** Something that a blend keeps: rows of the program, and a sentence for the person. */
interface Keeps {

    /** Adds its rows. */
    void addRows(List<Ingredient> ingredients, BlendRows rows);

    /** What is kept, or why it could not be. */
    String words();

    /** Why a material that is not in the blend can't come in; empty where it can. */
    default Optional<String> keepsOut(Material candidate) {
        return Optional.empty();
    }

    /** Whether too little is known of a material of the blend, so that its level has to stay. */
    default boolean fixes(Material present) {
        return false;
    }

    /** Why nothing can be said about any blend; empty where something can. */
    default Optional<String> impossible() {
        return Optional.empty();
    }
}
