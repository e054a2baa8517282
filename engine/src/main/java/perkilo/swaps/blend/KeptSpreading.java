package perkilo.swaps.blend;

import java.util.List;
import perkilo.model.Material;

/** The rule that the share of each spreading class stays within a tolerance, and the unknown share does not rise. */
final class KeptSpreading implements Keeps {

    private static final String UNKNOWN = "unknown";

    private final double tolerance;
    private final List<Material> unknown;
    private final int all;

    KeptSpreading(double tolerance) {
        this(tolerance, List.of());
    }

    /**
     * A rule.
     *
     * @param present the materials of the blend as it is
     */
    KeptSpreading(double tolerance, List<Material> present) {
        this.tolerance = tolerance;
        this.unknown = present.stream()
                .filter(material -> material.traits().spreadingClass().isBlank())
                .toList();
        this.all = present.size();
    }

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        double allowed = tolerance * rows.now(one -> 1);
        ingredients.stream().map(KeptSpreading::spreading).distinct().forEach(spreading -> {
            double share = rows.now(one -> spreading(one).equals(spreading) ? 1 : 0);
            // unknown spreading never counts as equal: its share may fall like that of any class, but not rise
            double more = spreading.equals(UNKNOWN) ? 0 : allowed;
            rows.between(share - allowed, one -> spreading(one).equals(spreading) ? 1 : 0, share + more);
        });
    }

    private static String spreading(Ingredient one) {
        String spreading = one.spreading();
        return spreading.isEmpty() ? UNKNOWN : spreading;
    }

    @Override
    public String words() {
        String kept = KeptMessages.spreading(Math.round(tolerance * 100));
        return unknown.isEmpty() ? kept : kept + " " + KeptMessages.spreadingUnknown(unknown.size(), all);
    }
}
