package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Levels rounded so that a person can weigh them. */
final class Levels {

    /** A hundred-thousandth of a per cent. */
    private static final int DECIMALS = 7;

    private Levels() {}

    /**
     * Levels rounded to a hundred-thousandth of a per cent.
     *
     * @param answer has a level for each
     * @param totalKept whether they add up to the present blend: the largest then takes the rounding difference
     */
    static List<BigDecimal> rounded(List<Ingredient> ingredients, BlendSearch.Answer answer, boolean totalKept) {
        BigDecimal left = BigDecimal.ZERO;
        int largest = 0;
        List<BigDecimal> levels = new ArrayList<>();
        for (int i = 0; i < ingredients.size(); i++) {
            BigDecimal level = BigDecimal.valueOf(answer.level(i)).setScale(DECIMALS, RoundingMode.HALF_UP);
            levels.add(level.max(BigDecimal.ZERO));
            left = left.add(ingredients.get(i).now()).subtract(levels.get(i));
            largest = level.compareTo(levels.get(largest)) > 0 ? i : largest;
        }
        if (totalKept) {
            levels.set(largest, levels.get(largest).add(left));
        }
        return levels;
    }
}
