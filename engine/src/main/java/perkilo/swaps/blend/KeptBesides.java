package perkilo.swaps.blend;

import java.util.List;
import java.util.function.ToDoubleFunction;
import perkilo.swaps.facts.Functions;

/** What the blend does besides its main work, such as stabilising an emulsion or boosting foam, keeps its share. */
final class KeptBesides implements Keeps {

    private final List<String> words;
    private final double tolerance;
    private final ToDoubleFunction<Ingredient> measure;

    /**
     * A rule.
     *
     * @param words functions that the blend has now besides its main one
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
                ? "it does nothing besides that would have to be kept"
                : "the share of what does %s as well falls by no more than %.0f %% of itself, each"
                        .formatted(String.join(", ", words), tolerance * 100);
    }
}
