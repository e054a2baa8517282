package perkilo.swaps.blend;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import perkilo.model.Material;
import perkilo.oracle.LpText;
import perkilo.swaps.Kit;

/**
 * A blend as a mixed-integer program, stated from the method alone: levels in per cent {@code x}, in or out {@code y}.
 *
 * <p>It knows nothing of how the engine writes its rows.
 */
final class BlendModel {

    private static final double TOLERANCE = 0.1;
    private static final double HLB_BAND = 1;

    private final List<Ingredient> pantry;
    private final LpText lp = new LpText();

    BlendModel(List<Ingredient> pantry) {
        this.pantry = pantry;
    }

    /**
     * Oils: the total, the shares of light, medium and heavy within a tenth, and where it is known the mean required
     * HLB within 1; what it is not known of not more.
     */
    BlendModel oils() {
        keep(one -> 1, 0);
        for (String spreading : List.of("light", "medium", "heavy")) {
            keep(one -> one.material().traits().spreadingClass().equals(spreading) ? 1 : 0, TOLERANCE * total());
        }
        ToDoubleFunction<Ingredient> known = one -> one.material().traits().requiredHlb() == null ? 0 : 1;
        if (now(known) > 0) {
            mean(known, one -> Kit.number(one.traits().requiredHlb()));
            sum(one -> 1 - known.applyAsDouble(one)).atMost(total() - now(known));
        }
        return this;
    }

    /** Emulsifiers: the total, the mean HLB within 1, the share of each charge within a tenth. */
    BlendModel emulsifiers() {
        keep(one -> 1, 0);
        mean(one -> 1, one -> Kit.number(one.traits().hlb()));
        charges(one -> 1);
        return this;
    }

    /** Surfactants: the active matter, and the share of each charge in it within a tenth. */
    BlendModel surfactants() {
        ToDoubleFunction<Ingredient> active =
                one -> Kit.number(one.material().traits().active());
        keep(active, 0);
        charges(active);
        return this;
    }

    private void charges(ToDoubleFunction<Ingredient> measure) {
        Stream.of("anionic", "cationic", "amphoteric", "nonionic").forEach(charge -> {
            ToDoubleFunction<Ingredient> ofCharge =
                    one -> one.material().traits().charge().equals(charge) ? measure.applyAsDouble(one) : 0;
            keep(ofCharge, TOLERANCE * now(measure));
        });
    }

    /** The text of the program, with at most so many in and as many out. */
    String text(int mostChanged) {
        LpText.Row in = lp.row();
        LpText.Row out = lp.row();
        long held = pantry.stream().filter(Ingredient::isIn).count();
        for (int i = 0; i < pantry.size(); i++) {
            Ingredient one = pantry.get(i);
            lp.cost("x" + i, one.perKg().doubleValue() / 100);
            lp.binary("y" + i);
            lp.row().plus(1, "x" + i).plus(-100 * one.most(), "y" + i).atMost(0);
            lp.row().plus(1, "x" + i).plus(-100 * lowest(one), "y" + i).atLeast(0);
            (one.isIn() ? out : in).plus(1, "y" + i);
        }
        in.atMost(mostChanged);
        out.atLeast((double) (held - mostChanged));
        return lp.text();
    }

    /** What stays keeps a hundredth of its level at least, also where no lowest usual level is known. */
    private static double lowest(Ingredient one) {
        return Math.max(one.least(), one.now().doubleValue() / 100);
    }

    /** What a solver's levels cost for one kilogram of bulk. */
    double cost(Map<String, Double> values) {
        double cost = 0;
        for (int i = 0; i < pantry.size(); i++) {
            cost += values.getOrDefault("x" + i, 0.0)
                    / 100
                    * pantry.get(i).perKg().doubleValue();
        }
        return cost;
    }

    private double total() {
        return now(one -> 1);
    }

    private double now(ToDoubleFunction<Ingredient> weight) {
        return pantry.stream()
                .mapToDouble(one -> weight.applyAsDouble(one) * 100 * one.now().doubleValue())
                .sum();
    }

    private void keep(ToDoubleFunction<Ingredient> weight, double allowed) {
        double now = now(weight);
        sum(weight).atLeast(now - allowed);
        sum(weight).atMost(now + allowed);
    }

    private void mean(ToDoubleFunction<Ingredient> known, ToDoubleFunction<Material> trait) {
        double mean = now(one -> above(known, trait, one, 0)) / now(known);
        sum(one -> above(known, trait, one, mean + HLB_BAND)).atMost(0);
        sum(one -> above(known, trait, one, mean - HLB_BAND)).atLeast(0);
    }

    private static double above(
            ToDoubleFunction<Ingredient> known, ToDoubleFunction<Material> trait, Ingredient one, double value) {
        return known.applyAsDouble(one) == 0 ? 0 : trait.applyAsDouble(one.material()) - value;
    }

    private LpText.Row sum(ToDoubleFunction<Ingredient> weight) {
        LpText.Row row = lp.row();
        for (int i = 0; i < pantry.size(); i++) {
            row.plus(weight.applyAsDouble(pantry.get(i)), "x" + i);
        }
        return row;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "a blend of %d materials", pantry.size());
    }
}
