package perkilo.swaps.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/** The rules that a blend of each kind keeps. */
final class BlendRules {

    private final Recipe recipe;
    private final Group group;
    private final BlendFinder.Bounds bounds;
    private final double tolerance;
    private final @Nullable Portion giver;

    BlendRules(Recipe recipe, Group group, BlendFinder.Bounds bounds) {
        this.recipe = recipe;
        this.group = group;
        this.bounds = bounds;
        this.tolerance = bounds.spreadingTolerance().doubleValue();
        this.giver =
                group.kind() == Kind.HUMECTANTS || group.kind() == Kind.CHELATORS || group.kind() == Kind.SURFACTANTS
                        ? giver()
                        : null;
    }

    /** The line that takes a difference in level; null if no line does, or if there is no difference. */
    @Nullable Portion giver(Recipe of) {
        return giver == null ? null : water(of);
    }

    private @Nullable Portion giver() {
        return water(recipe);
    }

    private static @Nullable Portion water(Recipe of) {
        Portion most = null;
        for (Portion portion : of.portions()) {
            boolean larger = most == null || portion.level().compareTo(most.level()) > 0;
            if (portion.material().isWater() && (portion.line().isBalance() || larger)) {
                most = portion;
            }
        }
        return most;
    }

    /** The rules. */
    List<Keeps> rules() {
        List<Keeps> rules = new ArrayList<>(ofKind());
        KeptNatural natural = KeptNatural.of(recipe, giver);
        if (natural != null) {
            rules.add(natural);
        }
        return rules;
    }

    private List<Keeps> ofKind() {
        ToDoubleFunction<Ingredient> level = one -> 1;
        ToDoubleFunction<Ingredient> active = one -> KeptActive.active(one.material());
        return switch (group.kind()) {
            case OILS ->
                oils(new KeptTotal(), new KeptLiquid(), new KeptSpreading(tolerance, present()), new KeptViscosity());
            case BODY ->
                oils(
                        new KeptTotal(),
                        new KeptMelting(),
                        new KeptBesides(besides(), tolerance, level),
                        new KeptSpreading(tolerance, present()));
            case EMULSIFIERS ->
                List.of(
                        new KeptTotal(),
                        new KeptEmulsifierHlb(
                                recipe.requiredHlb(),
                                recipe.emulsifierHlb(),
                                bounds.hlbBand().doubleValue()),
                        new KeptCharges(charges(), tolerance, level));
            case HUMECTANTS -> List.of(new KeptActive(giver));
            case THICKENERS ->
                List.of(
                        new KeptTotal(),
                        new KeptStrength("thickens", tolerance),
                        new KeptBesides(besides(), tolerance, level),
                        new KeptCharges(charges(), tolerance, level));
            case ANTIOXIDANTS -> List.of(new KeptTotal(), new KeptStrength("protects", tolerance));
            case CHELATORS -> List.of(new KeptActive(giver), new KeptStrength("binds", tolerance));
            case SURFACTANTS ->
                List.of(
                        new KeptActive(giver),
                        new KeptBesides(besides(), tolerance, active),
                        new KeptCharges(charges(), tolerance, active));
        };
    }

    /** Without water nothing is emulsified, so the HLB that the oils would require does not matter. */
    private List<Keeps> oils(Keeps... rules) {
        List<Keeps> all = new ArrayList<>(List.of(rules));
        if (recipe.hasWater()) {
            all.add(new KeptRequiredHlb(recipe.requiredHlb(), bounds.hlbBand().doubleValue()));
        }
        return all;
    }

    private List<String> besides() {
        Set<String> words = new TreeSet<>();
        present()
                .forEach(material ->
                        words.addAll(Functions.besides(material, group.kind().work())));
        return List.copyOf(words);
    }

    private Set<String> charges() {
        return present().stream()
                .map(KeptCharges::charge)
                .filter(charge -> !charge.isEmpty())
                .collect(Collectors.toSet());
    }

    private List<Material> present() {
        return group.lines().stream()
                .map(line -> recipe.portions().get(line).material())
                .toList();
    }
}
