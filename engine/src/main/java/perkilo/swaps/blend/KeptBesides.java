package perkilo.swaps.blend;

import java.util.List;
import java.util.function.ToDoubleFunction;
import perkilo.swaps.facts.Functions;

/** The rule that secondary functions, such as stabilising an emulsion or boosting foam, keep their share. */
final class KeptBesides implements Keeps {

    private final List<String> words;
    private final double tolerance;
    private final ToDoubleFunction<Ingredient> measure;

    /**
     * A rule.
     *
     * @param words functions that the blend has now, without its main one
     * @param tolerance by how much a share may fall, as a fraction of itself
     * @param measure what counts of an ingredient: its level or its active matter
     */
    KeptBesides(List<String> words, double tolerance, ToDoubleFunction<Ingredient> measure) {
        this.words = List.copyOf(words);
        this.tolerance = tolerance;
        this.measure = measure;
    }

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        for (String word : words) {
            ToDoubleFunction<Ingredient> does =
                    one -> Functions.does(one.material(), word) ? measure.applyAsDouble(one) : 0;
            rows.between(rows.now(does) * (1 - tolerance), does, Double.POSITIVE_INFINITY);
        }
    }

    @Override
    public String words() {
        return words.isEmpty()
                ? KeptMessages.noOtherFunction()
                : KeptMessages.otherFunctions(words, Math.round(tolerance * 100));
    }
}
