package perkilo.swaps.next;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.swaps.AppliedSwap;
import perkilo.swaps.ChangedLine;

/**
 * A trial batch of a formula, weighed to a hundredth of a gram.
 *
 * <p>Each weight is the level times the batch, rounded; what rounding leaves goes to one line, so that the weights add
 * up to the batch exactly: the q.s. line, else the largest line of water, else the largest line.
 *
 * @param formula what is made
 * @param original the formula that it was made from; empty name for a formula as it is
 * @param grams the size of the batch
 * @param weights one per line, in the order of the formula
 * @param out materials that went out, with their levels in words
 * @param cautions of the check of the formula and of the swap, each in full sentences
 */
public record BenchBatch(
        Formula formula,
        String original,
        BigDecimal grams,
        List<Weight> weights,
        List<String> out,
        List<String> cautions) {

    /** The decimals of a bench balance. */
    public static final int DECIMALS = 2;

    /** The size of a trial where none is named, in grams. Common practice. */
    public static final BigDecimal USUAL_GRAMS = new BigDecimal(200);

    /** Less than this cannot be weighed well to a hundredth of a gram: the error is more than a tenth of it. */
    private static final BigDecimal SMALL = new BigDecimal("0.05");

    public BenchBatch {
        weights = List.copyOf(weights);
        out = List.copyOf(out);
        cautions = List.copyOf(cautions);
    }

    /**
     * What is weighed for one line.
     *
     * @param line of the formula, with what changed in it
     * @param material what is known of it
     * @param grams rounded to a hundredth
     * @param takesRest whether this line takes what rounding leaves
     */
    public record Weight(ChangedLine line, Material material, BigDecimal grams, boolean takesRest) {

        /** Whether it is too little for a balance with two decimals. */
        public boolean isSmall() {
            return line.level().signum() > 0 && grams.compareTo(SMALL) < 0;
        }
    }

    /**
     * The batch of a formula as it is.
     *
     * @param checked what the check of the formula warns of, each in full sentences
     */
    public static BenchBatch of(Book book, Formula formula, BigDecimal grams, List<String> checked) {
        List<ChangedLine> lines = ChangedLine.ofUnchanged(formula);
        return new BenchBatch(formula, "", grams, weights(lines, materials(book, formula), grams), List.of(), checked);
    }

    /**
     * The batch of a formula with a swap or blend.
     *
     * @param checked what the check of the new formula warns of, each in full sentences
     */
    public static BenchBatch of(AppliedSwap applied, BigDecimal grams, List<String> checked) {
        List<String> cautions = new ArrayList<>(checked);
        cautions.addAll(applied.cautions());
        return new BenchBatch(
                applied.formula(),
                applied.original().name(),
                grams,
                weights(applied.lines(), applied.materials(), grams),
                applied.out(),
                cautions);
    }

    /** The index of the line that takes what rounding leaves. */
    public int rest() {
        for (int i = 0; i < weights.size(); i++) {
            if (weights.get(i).takesRest()) {
                return i;
            }
        }
        throw new AssertionError("a batch has a line that takes the rest");
    }

    private static List<Material> materials(Book book, Formula formula) {
        return formula.lines().stream()
                .map(line -> book.material(line.material()).orElseGet(() -> Material.of(line.material())))
                .toList();
    }

    private static List<Weight> weights(List<ChangedLine> lines, List<Material> materials, BigDecimal grams) {
        int rest = rest(lines, materials);
        List<BigDecimal> rounded = new ArrayList<>();
        BigDecimal others = BigDecimal.ZERO;
        for (int i = 0; i < lines.size(); i++) {
            BigDecimal weight = lines.get(i).level().multiply(grams).setScale(DECIMALS, RoundingMode.HALF_UP);
            rounded.add(weight);
            others = i == rest ? others : others.add(weight);
        }
        rounded.set(rest, grams.subtract(others));
        List<Weight> weights = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            weights.add(new Weight(lines.get(i), materials.get(i), rounded.get(i), i == rest));
        }
        return weights;
    }

    private static int rest(List<ChangedLine> lines, List<Material> materials) {
        int largest = 0;
        int water = -1;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).line().isBalance()) {
                return i;
            }
            largest = isMore(lines, i, largest) ? i : largest;
            if (materials.get(i).isWater() && (water < 0 || isMore(lines, i, water))) {
                water = i;
            }
        }
        return water >= 0 ? water : largest;
    }

    private static boolean isMore(List<ChangedLine> lines, int one, int other) {
        return lines.get(one).level().compareTo(lines.get(other).level()) > 0;
    }
}
