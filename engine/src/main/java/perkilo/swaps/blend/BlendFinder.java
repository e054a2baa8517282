package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.model.Names;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.label.LabelChange;
import perkilo.swaps.money.LinePrices;
import perkilo.swaps.money.RunChange;
import perkilo.swaps.money.RunsOfFormula;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/**
 * Finds joint swaps in a formula: where at least two emollients that spread share a phase, the levels that cost least.
 *
 * <p>What melts above room temperature gives a product its body: it stays as it is and is no candidate. For each run
 * size and each number of materials that may change, straight-line prices give one proven blend; all of them are costed
 * with full purchase plans, and the best at each run size are kept.
 */
public final class BlendFinder {

    private static final BigDecimal ROOM = new BigDecimal(25);

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
     * @param spreadingTolerance how much the shares of the spreading classes may move, as a fraction of the blend
     * @param hlbBand how far required HLB may move
     */
    public record Bounds(int mostChanged, BigDecimal spreadingTolerance, BigDecimal hlbBand) {}

    /**
     * Finds blends.
     *
     * @param formula its name
     * @param function only of this; null for all
     * @return those that save at some run size, the largest saving first within each function
     */
    public List<Blend> find(String formula, @Nullable String function) {
        Recipe recipe = Recipe.of(book, book.formula(formula).orElseThrow());
        List<Blend> blends = new ArrayList<>();
        for (Group group : groups(recipe)) {
            if (function == null || Names.key(function).equals(group.function())) {
                blends.addAll(of(recipe, group));
            }
        }
        return blends;
    }

    private List<Group> groups(Recipe recipe) {
        Map<List<String>, List<Integer>> lines = new LinkedHashMap<>();
        for (int line = 0; line < recipe.portions().size(); line++) {
            Portion portion = recipe.portions().get(line);
            String work = Functions.work(portion.material());
            if (work.equals(Functions.EMOLLIENT) && portion.level().signum() > 0 && spreads(portion.material())) {
                lines.computeIfAbsent(List.of(work, Names.key(portion.line().phase())), absent -> new ArrayList<>())
                        .add(line);
            }
        }
        return lines.entrySet().stream()
                .filter(entry -> entry.getValue().size() > 1)
                .map(entry -> new Group(
                        entry.getKey().get(0),
                        recipe.portions().get(entry.getValue().get(0)).line().phase(),
                        entry.getValue()))
                .toList();
    }

    private List<Blend> of(Recipe recipe, Group group) {
        Set<List<BigDecimal>> seen = new LinkedHashSet<>();
        List<Blend> blends = new ArrayList<>();
        for (Map.Entry<String, RunCost> run : runs.base().entrySet()) {
            List<Ingredient> ingredients = new Pantry(book, prices, recipe, group).ingredients(run.getValue());
            for (int changed = 0; changed <= bounds.mostChanged(); changed++) {
                blend(recipe, group, run.getKey(), ingredients, changed)
                        .filter(blend -> seen.add(
                                blend.parts().stream().map(Blend.Part::after).toList()))
                        .filter(Blend::saves)
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

    /** Whether a material spreads at room temperature, so far as its melting point is known. */
    static boolean spreads(Material material) {
        Figure melts = material.traits().meltsAtC();
        return melts == null || melts.value().compareTo(ROOM) <= 0;
    }

    private Optional<Blend> blend(
            Recipe recipe, Group group, String run, List<Ingredient> ingredients, int mostChanged) {
        LinearProgram program =
                new BlendProgram(ingredients, bounds).program(mostChanged, NaturalKept.of(recipe, group));
        Optional<BlendSearch.Answer> answer = BlendSearch.find(program, solver);
        if (answer.isEmpty()) {
            return Optional.empty();
        }
        List<BigDecimal> levels = Levels.rounded(ingredients, answer.get());
        Recipe after = new BlendedRecipe(recipe, group).with(ingredients, levels);
        Optional<List<RunChange>> changes = runs.changes(after.formula());
        if (changes.isEmpty()) {
            return Optional.empty();
        }
        List<Blend.Part> parts = new ArrayList<>();
        for (int i = 0; i < ingredients.size(); i++) {
            Ingredient one = ingredients.get(i);
            if (one.isIn() || levels.get(i).signum() > 0) {
                parts.add(new Blend.Part(one.material(), one.now(), levels.get(i), one.perKg()));
            }
        }
        return Optional.of(new Blend(
                recipe,
                after,
                group.function(),
                group.phase(),
                parts,
                run,
                cost(parts, Blend.Part::before),
                cost(parts, Blend.Part::after),
                changes.get(),
                LabelChange.of(recipe, after),
                BlendCautions.of(recipe, after, answer.get().proven())));
    }

    private static BigDecimal cost(List<Blend.Part> parts, Function<Blend.Part, BigDecimal> level) {
        return parts.stream()
                .map(part -> level.apply(part).multiply(part.perKg()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
