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
import perkilo.swaps.facts.Functions;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.money.LinePrices;
import perkilo.swaps.trial.Dosing;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/** What may be in a blend: what is in it now, and every other material of its work that fits the phase. */
final class Pantry {

    private final Book book;
    private final LinePrices prices;
    private final Recipe recipe;
    private final Group group;

    Pantry(Book book, LinePrices prices, Recipe recipe, Group group) {
        this.book = book;
        this.prices = prices;
        this.recipe = recipe;
        this.group = group;
    }

    /** The ingredients with their straight-line prices at a run. */
    List<Ingredient> ingredients(RunCost run) {
        Map<String, Ingredient> byName = new LinkedHashMap<>();
        BigDecimal total = BigDecimal.ZERO;
        for (int line : group.lines()) {
            Portion portion = recipe.portions().get(line);
            total = total.add(portion.level());
            byName.merge(Names.key(portion.material().name()), now(portion, run), Pantry::together);
        }
        BigDecimal typical = total.divide(BigDecimal.valueOf(group.lines().size()), MathContext.DECIMAL64);
        for (Material material : book.materials().values()) {
            if (!byName.containsKey(Names.key(material.name())) && fits(material)) {
                other(material, run, typical).ifPresent(one -> byName.put(Names.key(material.name()), one));
            }
        }
        return new ArrayList<>(byName.values());
    }

    private static Ingredient together(Ingredient one, Ingredient other) {
        return new Ingredient(one.material(), one.now().add(other.now()), one.least(), one.most(), one.perKg());
    }

    private Ingredient now(Portion portion, RunCost run) {
        String key = Names.key(portion.material().name());
        BigDecimal perKg = run.items().stream()
                .filter(item -> Names.key(item.item().name()).equals(key))
                .map(ItemCost::landedPerUnit)
                .findFirst()
                .orElse(BigDecimal.ZERO);
        Material material = portion.material();
        double level = recipe.levelOf(material).doubleValue();
        return new Ingredient(
                material, portion.level(), Math.min(level, least(material)), Math.max(level, most(material)), perKg);
    }

    private Optional<Ingredient> other(Material material, RunCost run, BigDecimal typical) {
        BigDecimal kg = run.needs().batches().charged().multiply(typical);
        return prices.cheapest(material, kg)
                .map(line -> new Ingredient(
                        material,
                        BigDecimal.ZERO,
                        least(material),
                        most(material),
                        // what is bought beyond the need is paid for, but the recipe is priced by what it uses
                        line.perKg()));
    }

    /** Whether a material does this work mainly and passes every gate that does not depend on its level. */
    private boolean fits(Material material) {
        boolean known = material.traits().useMax() != null
                && BlendFinder.spreads(material)
                && Functions.work(material).equals(group.function())
                && prices.isAvailable(material)
                && recipe.levelOf(material).signum() == 0;
        return known
                && Gates.judgeAtAnyLevel(new Dosing(recipe).of(group.lines().get(0), material)).stream()
                        .allMatch(Verdict::ok);
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
