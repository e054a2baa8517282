package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.model.Names;
import perkilo.origin.Figure;
import perkilo.swaps.money.LinePrices;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/** What may be in a blend: what is in it now, and every other material of its kind that fits. */
final class Pantry {

    private final LinePrices prices;
    private final Recipe recipe;
    private final Group group;
    private final List<Keeps> rules;
    private final Map<Material, Integer> homes = new LinkedHashMap<>();
    private final Map<String, List<String>> leftOut = new LinkedHashMap<>();

    Pantry(Book book, LinePrices prices, Recipe recipe, Group group, List<Keeps> rules, BigDecimal leastClose) {
        this.prices = prices;
        this.recipe = recipe;
        this.group = group;
        this.rules = rules;
        Entry entry = new Entry(recipe, group, rules, leastClose);
        for (Material material : book.materials().values()) {
            boolean ofKind = Kind.of(material).filter(group.kind()::equals).isPresent();
            if (ofKind && !isInGroup(material) && prices.isAvailable(material)) {
                Entry.Answer answer = entry.of(material);
                if (answer.home() >= 0) {
                    homes.put(material, answer.home());
                } else {
                    leftOut.computeIfAbsent(answer.why(), absent -> new ArrayList<>())
                            .add(material.name());
                }
            }
        }
    }

    /** Materials of the kind that can't be considered, by the reason; those whose level has to stay among them. */
    Map<String, List<String>> leftOut() {
        Map<String, List<String>> all = new LinkedHashMap<>();
        for (int line : group.lines()) {
            Material material = recipe.portions().get(line).material();
            if (isFixed(material)) {
                all.computeIfAbsent("in the blend, but too little is known: the level stays", a -> new ArrayList<>())
                        .add(material.name());
            }
        }
        all.putAll(leftOut);
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
        homes.forEach((material, home) ->
                other(material, kg, home).ifPresent(one -> byName.put(Names.key(material.name()), one)));
        return new ArrayList<>(byName.values());
    }

    private boolean isInGroup(Material material) {
        return group.lines().stream()
                .anyMatch(line ->
                        Names.key(recipe.portions().get(line).material().name()).equals(Names.key(material.name())));
    }

    private boolean isFixed(Material material) {
        return rules.stream().anyMatch(rule -> rule.fixes(material));
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

    private Optional<Ingredient> other(Material material, BigDecimal kg, int home) {
        // what is bought beyond the need is paid for, but the recipe is priced by what it uses
        return prices.cheapest(material, kg)
                .map(line ->
                        new Ingredient(material, BigDecimal.ZERO, least(material), most(material), line.perKg(), home));
    }

    private static double least(Material material) {
        Figure least = material.traits().useMin();
        return least == null ? 0 : least.value().doubleValue();
    }

    private static double most(Material material) {
        Figure usual = material.traits().useMax();
        Figure legal = material.traits().legalMax();
        double most = usual == null ? 0 : usual.value().doubleValue();
        return legal == null ? most : Math.min(most, legal.value().doubleValue());
    }
}
