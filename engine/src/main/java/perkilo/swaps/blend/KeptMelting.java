package perkilo.swaps.blend;

import java.util.List;
import perkilo.model.Material;
import perkilo.origin.Figure;

/** The rule that the mean melting point stays within a band: a guide to body, as a blend does not melt at the mean. */
final class KeptMelting implements Keeps {

    /** How far the mean may move. Own choice. */
    private static final double BAND_C = 3;

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        double mean = rows.now(one -> melts(one.material())) / rows.now(one -> 1);
        rows.between(Double.NEGATIVE_INFINITY, one -> melts(one.material()) - mean - BAND_C, 0);
        rows.between(0, one -> melts(one.material()) - mean + BAND_C, Double.POSITIVE_INFINITY);
    }

    private static double melts(Material material) {
        Figure melts = material.traits().meltsAtC();
        return melts == null ? 0 : melts.value().doubleValue();
    }

    @Override
    public String words() {
        return KeptMessages.melting(Math.round(BAND_C));
    }
}
