package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.swaps.money.LinePrices;
import perkilo.swaps.money.RunsOfFormula;
import perkilo.swaps.trial.Recipe;

/**
 * Finds joint swaps in a formula: the cheapest levels of at least two materials of one {@link Kind}.
 *
 * <p>For each run size and each number of materials that may change, straight-line prices lead to one proven blend; all
 * of them are costed with full purchase plans, and the best at each run size are kept. For materials that are not
 * blended anew, such as preservatives, the study has the reason.
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
     * @param mostChanged the most materials that come in, and that go out
     * @param spreadingTolerance how much the shares of spreading classes, charges and secondary functions may move, as
     *     a fraction of the blend
     * @param hlbBand how far HLB may move
     * @param leastCloseness how close a new material has to be to one of those in the blend, 0 to 100
     */
    public record Bounds(
            int mostChanged, BigDecimal spreadingTolerance, BigDecimal hlbBand, BigDecimal leastCloseness) {}

    /**
     * Studies the lines of each function.
     *
     * @param formula its name
     * @param function only of this; null for all
     * @param material only groups that it is in; null for all
     * @return one study for each kind of material that is there at least twice, or that is requested
     */
    public List<BlendStudy> find(String formula, @Nullable String function, @Nullable String material) {
        Recipe recipe = Recipe.of(book, book.formula(formula).orElseThrow());
        List<BlendStudy> studies = new ArrayList<>();
        Groups groups = new Groups(recipe, function, material);
        groups.sought().forEach(group -> studies.add(study(recipe, group)));
        studies.addAll(groups.refused());
        return studies;
    }

    private BlendStudy study(Recipe recipe, Group group) {
        BlendRules rules = new BlendRules(recipe, group, bounds);
        List<Keeps> kept = rules.rules();
        String name = recipe.formula().name();
        Optional<String> impossible =
                kept.stream().flatMap(rule -> rule.impossible().stream()).findFirst();
        if (impossible.isPresent()) {
            return BlendStudy.refused(name, group.title(), group.phase(), impossible.get());
        }
        Pantry pantry = new Pantry(book, prices, recipe, group, kept, bounds.leastCloseness());
        GroupSearch search = new GroupSearch(
                recipe,
                group,
                rules,
                runs,
                solver,
                book.settings().leastSaving().value());
        List<Blend> blends = search.blends(pantry, bounds.mostChanged());
        return new BlendStudy(
                name,
                group.title(),
                group.phase(),
                "",
                kept.stream().map(Keeps::words).toList(),
                pantry.leftOut(blends),
                search.notOffered(),
                blends);
    }
}
