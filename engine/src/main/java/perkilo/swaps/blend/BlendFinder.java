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
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.model.Book;
import perkilo.swaps.label.LabelChange;
import perkilo.swaps.money.LinePrices;
import perkilo.swaps.money.RunsOfFormula;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/**
 * Finds joint swaps in a formula: where at least two materials of a {@link Kind} stand together, the levels that cost
 * least.
 *
 * <p>For each run size and each number of materials that may change, straight-line prices give one proven blend; all of
 * them are costed with full purchase plans, and the best at each run size are kept. What is not blended anew, such as
 * preservatives, says why.
 */
public final class BlendFinder {

    private final Book book;
    private final LinePrices prices;
    private final RunsOfFormula runs;
    private final SolveLinear solver;
    private final Bounds bounds;

    /**
     * A finder for one formula.
     *
     * @param book free of errors
     * @param prices straight-line prices
     * @param runs of the formula
     * @param solver of linear programs
     * @param bounds of the search
     */
    public BlendFinder(Book book, LinePrices prices, RunsOfFormula runs, SolveLinear solver, Bounds bounds) {
        this.book = book;
        this.prices = prices;
        this.runs = runs;
        this.solver = solver;
        this.bounds = bounds;
    }

    /**
     * What a blend has to keep.
     *
     * @param mostChanged at most so many materials come in, and as many go out
     * @param spreadingTolerance how much the shares of the spreading classes, of charges and of what the blend does
     *     besides may move, as a fraction of the blend
     * @param hlbBand how far HLB may move
     * @param leastCloseness what comes in is at least so close to one of the materials that are in
     */
    public record Bounds(
            int mostChanged, BigDecimal spreadingTolerance, BigDecimal hlbBand, BigDecimal leastCloseness) {}

    /**
     * Studies the lines of each function.
     *
     * @param formula its name
     * @param function only of this; null for all
     * @return one study for each kind of material that stands there at least twice, or that is asked for
     */
    public List<BlendStudy> find(String formula, @Nullable String function) {
        Recipe recipe = Recipe.of(book, book.formula(formula).orElseThrow());
        List<BlendStudy> studies = new ArrayList<>();
        new Groups(recipe, function).sought().forEach(group -> studies.add(study(recipe, group)));
        studies.addAll(new Groups(recipe, function).refused());
        return studies;
    }

    private BlendStudy study(Recipe recipe, Group group) {
        BlendRules rules = new BlendRules(recipe, group, bounds);
        List<Keeps> kept = rules.rules();
        String name = recipe.formula().name();
        Optional<String> impossible =
                kept.stream().flatMap(rule -> rule.impossible().stream()).findFirst();
        if (impossible.isPresent()) {
            return BlendStudy.refused(name, group.kind().title(), group.phase(), impossible.get());
        }
        Pantry pantry = new Pantry(book, prices, recipe, group, kept, bounds.leastCloseness());
        return new BlendStudy(
                name,
                group.kind().title(),
                group.phase(),
                "",
                kept.stream().map(Keeps::words).toList(),
                pantry.leftOut(),
                of(recipe, group, pantry, rules));
    }

    private List<Blend> of(Recipe recipe, Group group, Pantry pantry, BlendRules rules) {
        Set<Map<String, BigDecimal>> seen = new LinkedHashSet<>();
        List<Blend> blends = new ArrayList<>();
        for (Map.Entry<String, RunCost> run : runs.base().entrySet()) {
            List<Ingredient> ingredients = pantry.ingredients(run.getValue());
            for (int changed = 0; changed <= bounds.mostChanged(); changed++) {
                blend(recipe, group, run.getKey(), ingredients, rules, changed)
                        .filter(Blend::saves)
                        .filter(blend -> seen.add(Blend.levels(blend.parts())))
                        .ifPresent(blends::add);
            }
        }
        return bestAtEachRun(blends);
    }

    private static List<Blend> bestAtEachRun(List<Blend> blends) {
        Set<Blend> best = new LinkedHashSet<>();
        int sizes = blends.isEmpty() ? 0 : blends.get(0).runs().size();
        for (int i = 0; i < sizes; i++) {
            int run = i;
            blends.stream()
                    .min(Comparator.comparing(blend -> blend.runs().get(run).total()))
                    .filter(blend -> blend.runs().get(run).isCheaper())
                    .ifPresent(best::add);
        }
        return List.copyOf(best);
    }

    private Optional<Blend> blend(
            Recipe recipe, Group group, String run, List<Ingredient> ingredients, BlendRules rules, int mostChanged) {
        LinearProgram program = new BlendProgram(ingredients, rules.rules()).program(mostChanged);
        Optional<BlendSearch.Answer> answer = BlendSearch.find(program, solver);
        if (answer.isEmpty()) {
            return Optional.empty();
        }
        Portion giver = rules.giver(recipe);
        List<BigDecimal> levels = Levels.rounded(ingredients, answer.get(), giver == null);
        Recipe after = new BlendedRecipe(recipe, group, giver).with(ingredients, levels);
        List<Blend.Part> parts = parts(ingredients, levels);
        if (!parts.stream().allMatch(part -> BlendCheck.holds(recipe, after, part))) {
            return Optional.empty();
        }
        return runs.changes(after.formula())
                .map(changes -> new Blend(
                        recipe,
                        after,
                        group.kind().title(),
                        group.phase(),
                        parts,
                        run,
                        cost(parts, Blend.Part::before),
                        cost(parts, Blend.Part::after),
                        changes,
                        LabelChange.of(recipe, after),
                        BlendCautions.of(
                                recipe, after, group.kind(), parts, answer.get().proven()),
                        mostChanged,
                        answer.get().proven()));
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
