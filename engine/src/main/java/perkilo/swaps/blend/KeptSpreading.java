package perkilo.swaps.blend;

import java.util.List;

/** The share of each spreading class, the unknown one too, stays within a tolerance. */
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
            // what is not known to spread alike never counts as equal: it may fall as any class may, but not rise
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
        return "the shares of light, medium and heavy spreading stay within %.0f %% of the blend; what spreads in an unknown way falls by no more than that, and does not become more"
                .formatted(tolerance * 100);
    }
}
