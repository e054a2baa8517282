package perkilo.swaps.blend;

import java.util.List;

/** The rule that the share of each spreading class stays within a tolerance, and the unknown share does not rise. */
final class KeptSpreading implements Keeps {

    private static final String UNKNOWN = "unknown";

    private final double tolerance;

    KeptSpreading(double tolerance) {
        this.tolerance = tolerance;
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
        return KeptMessages.spreading(Math.round(tolerance * 100));
    }
}
