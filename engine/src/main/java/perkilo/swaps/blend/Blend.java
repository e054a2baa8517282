package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.swaps.label.LabelChange;
import perkilo.swaps.money.RunChange;
import perkilo.swaps.trial.Recipe;

/**
 * All materials of one function, at the cheapest levels that keep the character of the blend.
 *
 * @param before the recipe as it is
 * @param after the recipe with the blend
 * @param function of the materials, in words
 * @param phase the phases of the materials, as typed
 * @param parts every material that is in the blend before or after
 * @param pricedAt the key of the run whose straight-line prices it was found with
 * @param straightLineBefore cost of the materials for one kilogram of bulk at these prices, in home currency
 * @param straightLineAfter the same with the blend: no blend within the bounds costs less at these prices
 * @param runs what it changes at each run size, each from a full purchase plan
 * @param label what it changes in the list of ingredients
 * @param cautions what a person should check, each in full sentences
 * @param mostChanged the most materials that were allowed to come in, and to go out
 * @param proven whether no other blend within the bounds costs less at the straight-line prices
 */
public record Blend(
        Recipe before,
        Recipe after,
        String function,
        String phase,
        List<Part> parts,
        String pricedAt,
        BigDecimal straightLineBefore,
        BigDecimal straightLineAfter,
        List<RunChange> runs,
        LabelChange label,
        List<String> cautions,
        int mostChanged,
        boolean proven) {

    public Blend {
        parts = List.copyOf(parts);
        runs = List.copyOf(runs);
        cautions = List.copyOf(cautions);
    }

    /**
     * A material of the blend.
     *
     * @param material what it is
     * @param before its level now, as a fraction of the formula
     * @param after its level in the blend, as a fraction of the formula
     * @param perKg its straight-line price, in home currency
     */
    public record Part(Material material, BigDecimal before, BigDecimal after, BigDecimal perKg) {}

    /** The formula as it is. */
    public Formula formula() {
        return before.formula();
    }

    /** The identity of a blend: the level of each material in it, by the material's name as it is compared. */
    static Map<String, BigDecimal> levels(List<Part> parts) {
        Map<String, BigDecimal> levels = new TreeMap<>();
        for (Part part : parts) {
            if (part.after().signum() > 0) {
                levels.merge(Names.key(part.material().name()), part.after().stripTrailingZeros(), BigDecimal::add);
            }
        }
        return levels;
    }

    /**
     * Whether no level of the blend is kept out by its use range or the law in a recipe that other changes are in too.
     */
    public boolean holdsIn(Recipe recipe) {
        return parts.stream()
                .allMatch(part -> BlendCheck.shut(before, recipe, part).isEmpty());
    }

    /** What it changes at the run where it saves most, of the whole run's cost. */
    public RunChange atBestRun() {
        return runs.stream().min(Comparator.comparing(RunChange::total)).orElseThrow();
    }

    /** Names of what comes in, in the order of the parts. */
    public List<String> entering() {
        return names(part -> part.before().signum() == 0);
    }

    /** Names of what goes out, in the order of the parts. */
    public List<String> leaving() {
        return names(part -> part.after().signum() == 0);
    }

    private List<String> names(Predicate<Part> which) {
        return parts.stream().filter(which).map(part -> part.material().name()).toList();
    }

    /**
     * Whether it makes a run cheaper, or takes less cash, by at least a part of the raw material cost, at some run
     * size.
     *
     * @param least as a fraction of the raw material cost of the run
     */
    public boolean saves(BigDecimal least) {
        return runs.stream().anyMatch(run -> run.savesAtLeast(least));
    }

    /** Whether it makes a run cheaper, or takes less cash, at some run size. */
    public boolean saves() {
        return runs.stream().anyMatch(run -> run.isCheaper() || run.takesLessCash());
    }
}
