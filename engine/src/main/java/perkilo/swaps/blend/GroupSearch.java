package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import perkilo.costing.RunCost;
import perkilo.swaps.label.LabelChange;
import perkilo.swaps.money.RunChange;
import perkilo.swaps.money.RunsOfFormula;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/** The search for blends of one group of lines: one for each run size and number of changes, all of them costed. */
final class GroupSearch {

    private final Recipe recipe;
    private final Group group;
    private final BlendRules rules;
    private final RunsOfFormula runs;
    private final SolveLinear solver;
    private final BigDecimal leastSaving;
    private final Set<String> notOffered = new LinkedHashSet<>();

    /**
     * A search.
     *
     * @param leastSaving the smallest saving that is offered, as a fraction of the raw material cost
     */
    GroupSearch(
            Recipe recipe,
            Group group,
            BlendRules rules,
            RunsOfFormula runs,
            SolveLinear solver,
            BigDecimal leastSaving) {
        this.recipe = recipe;
        this.group = group;
        this.rules = rules;
        this.runs = runs;
        this.solver = solver;
        this.leastSaving = leastSaving;
    }

    /** Blends that cost least at straight-line prices and are not offered, each with the reason in full sentences. */
    List<String> notOffered() {
        return List.copyOf(notOffered);
    }

    /**
     * The best blends at each run size.
     *
     * @param mostChanged at most so many materials come in, and as many go out
     */
    List<Blend> blends(Pantry pantry, int mostChanged) {
        Set<Map<String, BigDecimal>> seen = new LinkedHashSet<>();
        List<Blend> blends = new ArrayList<>();
        for (Map.Entry<String, RunCost> run : runs.base().entrySet()) {
            List<Ingredient> ingredients = pantry.ingredients(run.getValue());
            for (int changed = 0; changed <= mostChanged; changed++) {
                blend(run.getKey(), ingredients, changed)
                        .filter(this::savesEnough)
                        .filter(blend -> seen.add(Blend.levels(blend.parts())))
                        .ifPresent(blends::add);
            }
        }
        return bestAtEachRun(blends);
    }

    private boolean savesEnough(Blend blend) {
        if (blend.saves() && !blend.saves(leastSaving)) {
            notOffered.add(BlendMessages.blendNotOffered(names(blend.parts())) + " "
                    + BlendMessages.savesTooLittle(leastSaving));
        }
        return blend.saves(leastSaving);
    }

    private List<Blend> bestAtEachRun(List<Blend> blends) {
        Set<Blend> best = new LinkedHashSet<>();
        int sizes = blends.isEmpty() ? 0 : blends.get(0).runs().size();
        for (int i = 0; i < sizes; i++) {
            int run = i;
            blends.stream()
                    .min(Comparator.comparing(blend -> blend.runs().get(run).total()))
                    .filter(blend -> blend.runs().get(run).isCheaper()
                            && blend.runs().get(run).savesAtLeast(leastSaving))
                    .ifPresent(best::add);
        }
        return List.copyOf(best);
    }

    private Optional<Blend> blend(String run, List<Ingredient> ingredients, int mostChanged) {
        LinearProgram program = new BlendProgram(ingredients, rules.rules()).program(mostChanged);
        Optional<BlendSearch.Answer> answer = BlendSearch.find(program, solver);
        if (answer.isEmpty()) {
            notOffered.add(BlendMessages.noLevels(run));
            return Optional.empty();
        }
        Portion giver = rules.giver(recipe);
        List<BigDecimal> levels = Levels.rounded(ingredients, answer.get(), giver == null);
        Recipe after = new BlendedRecipe(recipe, group, giver).with(ingredients, levels);
        List<Blend.Part> parts = parts(ingredients, levels);
        Optional<String> shut = parts.stream()
                .flatMap(part -> BlendCheck.shut(recipe, after, part).stream())
                .findFirst();
        if (shut.isPresent()) {
            notOffered.add(BlendMessages.blendNotOffered(names(parts)) + " " + shut.get());
            return Optional.empty();
        }
        Optional<List<RunChange>> changes = runs.changes(after.formula());
        if (changes.isEmpty()) {
            notOffered.add(BlendMessages.cannotBeBought(names(parts)));
        }
        return changes.map(all -> new Blend(
                recipe,
                after,
                group.title(),
                group.phase(),
                parts,
                run,
                cost(parts, Blend.Part::before),
                cost(parts, Blend.Part::after),
                all,
                LabelChange.of(recipe, after),
                BlendCautions.of(
                        recipe, after, group.kind(), parts, answer.get().proven()),
                mostChanged,
                answer.get().proven()));
    }

    private static List<String> names(List<Blend.Part> parts) {
        return parts.stream()
                .filter(part -> part.after().signum() > 0)
                .map(part -> part.material().name())
                .toList();
    }

    private static List<Blend.Part> parts(List<Ingredient> ingredients, List<BigDecimal> levels) {
        List<Blend.Part> parts = new ArrayList<>();
        for (int i = 0; i < ingredients.size(); i++) {
            Ingredient one = ingredients.get(i);
            if (one.isIn() || levels.get(i).signum() > 0) {
                parts.add(new Blend.Part(one.material(), one.now(), levels.get(i), one.perKg()));
            }
        }
        return parts;
    }

    private static BigDecimal cost(List<Blend.Part> parts, Function<Blend.Part, BigDecimal> level) {
        return parts.stream()
                .map(part -> level.apply(part).multiply(part.perKg()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
