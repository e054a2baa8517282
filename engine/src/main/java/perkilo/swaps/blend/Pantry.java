package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.money.LinePrices;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/** The materials that may be in a blend: those in it now, and every other of its kind that fits. */
final class Pantry {

    private final LinePrices prices;
    private final Recipe recipe;
    private final Group group;
    private final List<Keeps> rules;
    private final Map<Material, Integer> homes = new LinkedHashMap<>();
    private final LeftOut leftOut = new LeftOut();

    Pantry(Book book, LinePrices prices, Recipe recipe, Group group, List<Keeps> rules, BigDecimal leastClose) {
        this.prices = prices;
        this.recipe = recipe;
        this.group = group;
        this.rules = rules;
        for (int line : group.lines()) {
            Material material = recipe.portions().get(line).material();
            whyFixed(material).ifPresent(why -> leftOut.add(BlendMessages.keepsLevel() + " " + why, material));
        }
        Entry entry = new Entry(recipe, group, rules, leastClose);
        for (Material material : book.materials().values()) {
            if (isAsked(material)) {
                Entry.Answer answer = prices.isAvailable(material)
                        ? entry.of(material)
                        : new Entry.Answer(-1, BlendMessages.notOffered());
                if (answer.home() >= 0) {
                    homes.put(material, answer.home());
                } else {
                    leftOut.add(answer.why(), material);
                }
            }
        }
    }

    /** Whether a material is considered: it can play a role of the blend, and is not in it. */
    private boolean isAsked(Material material) {
        return !material.isWater() && !isInGroup(material) && group.isPlayedBy(material);
    }

    /**
     * Every material that can play a role of the blend and is in none of the blends found, by the reason; it includes
     * those whose level has to stay.
     *
     * @param blends that were found
     */
    Map<String, List<String>> leftOut(List<Blend> blends) {
        LeftOut considered = new LeftOut();
        Set<String> entered = blends.stream()
                .flatMap(blend -> blend.entering().stream())
                .map(Names::key)
                .collect(Collectors.toSet());
        homes.keySet().stream()
                .filter(material -> !entered.contains(Names.key(material.name())))
                .forEach(material -> considered.add(
                        blends.isEmpty() ? BlendMessages.triedNoneCheaper() : BlendMessages.triedNotCheaper(),
                        material));
        Map<String, List<String>> all = new LinkedHashMap<>(leftOut.byReason());
        all.putAll(considered.byReason());
        return all;
    }

    /** The ingredients with their straight-line prices at a run. */
    List<Ingredient> ingredients(RunCost run) {
        Map<String, Ingredient> byName = new LinkedHashMap<>();
        BigDecimal total = BigDecimal.ZERO;
        for (int line : group.lines()) {
            Portion portion = recipe.portions().get(line);
            total = total.add(portion.level());
            byName.merge(Names.key(portion.material().name()), now(line, run), Pantry::together);
        }
        BigDecimal typical = total.divide(BigDecimal.valueOf(group.lines().size()), MathContext.DECIMAL64);
        BigDecimal kg = run.needs().batches().charged().multiply(typical);
        homes.forEach((material, home) -> byName.put(Names.key(material.name()), other(material, kg, home)));
        return new ArrayList<>(byName.values());
    }

    private boolean isInGroup(Material material) {
        return group.lines().stream()
                .anyMatch(line ->
                        Names.key(recipe.portions().get(line).material().name()).equals(Names.key(material.name())));
    }

    private boolean isFixed(Material material) {
        return whyFixed(material).isPresent();
    }

    /** The unknown value because of which the level of a material of the blend has to stay. */
    private Optional<String> whyFixed(Material material) {
        return rules.stream()
                .filter(rule -> rule.fixes(material))
                .findFirst()
                .map(rule -> rule.keepsOut(material).orElse(BlendMessages.tooLittleKnown()));
    }

    private static Ingredient together(Ingredient one, Ingredient other) {
        return new Ingredient(
                one.material(), one.now().add(other.now()), one.least(), one.most(), one.perKg(), one.home());
    }

    private Ingredient now(int line, RunCost run) {
        Portion portion = recipe.portions().get(line);
        Material material = portion.material();
        String key = Names.key(material.name());
        BigDecimal perKg = run.items().stream()
                .filter(item -> Names.key(item.item().name()).equals(key))
                .map(ItemCost::landedPerUnit)
                .findFirst()
                .orElse(BigDecimal.ZERO);
        double level = group.lines().stream()
                .map(other -> recipe.portions().get(other))
                .filter(other -> Names.key(other.material().name()).equals(key))
                .mapToDouble(other -> other.level().doubleValue())
                .sum();
        return isFixed(material)
                ? new Ingredient(material, portion.level(), level, level, perKg, line)
                : new Ingredient(
                        material,
                        portion.level(),
                        Math.min(level, least(material)),
                        Math.max(level, most(material)),
                        perKg,
                        line);
    }

    private Ingredient other(Material material, BigDecimal kg, int home) {
        // surplus is paid for, but the recipe is priced by what it uses
        BigDecimal perKg = prices.cheapest(material, kg).orElseThrow().perKg();
        return new Ingredient(material, BigDecimal.ZERO, least(material), most(material), perKg, home);
    }

    /** The lowest usual level, as a fraction; zero where it is not known. */
    static double least(Material material) {
        Figure least = material.traits().useMin();
        return least == null ? 0 : least.value().doubleValue();
    }

    /** The highest level that is usual and legal, as a fraction; zero where it is not known. */
    static double most(Material material) {
        Figure usual = material.traits().useMax();
        Figure legal = material.traits().legalMax();
        double most = usual == null ? 0 : usual.value().doubleValue();
        return legal == null ? most : Math.min(most, legal.value().doubleValue());
    }
}
