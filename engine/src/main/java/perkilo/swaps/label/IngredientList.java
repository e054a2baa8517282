package perkilo.swaps.label;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/**
 * The list of ingredients as Regulation (EC) No 1223/2009, Article 19(1)(g), orders it.
 *
 * <p>By falling weight at the time of addition; ingredients below 1 % may follow in any order (here: falling too);
 * colourants may follow all others in any order. Weight is that of the ingredient itself: level times active matter
 * where that is stated. A material of several ingredients is split where its INCI name states the shares, as in
 * {@code Glyceryl Stearate 60 % (and) PEG-100 Stearate 40 %}; elsewhere its ingredients stay together.
 *
 * @param entries in the order of the label
 * @param notes what a person has to decide
 */
public record IngredientList(List<Entry> entries, List<String> notes) {

    private static final BigDecimal ONE_PERCENT = new BigDecimal("0.01");

    public IngredientList {
        entries = List.copyOf(entries);
        notes = List.copyOf(notes);
    }

    /** The part of the list that an ingredient is in. */
    public enum Part {
        /** More than 1 %: the order is the law's. */
        ABOVE_ONE_PERCENT,
        /** 1 % or less: any order after the ingredients above 1 %. */
        UP_TO_ONE_PERCENT,
        /** Colourants: any order after all others. */
        COLOURANT
    }

    /**
     * One ingredient.
     *
     * @param name as the label has it
     * @param level as a fraction of the formula
     * @param part of the list
     */
    public record Entry(String name, BigDecimal level, Part part) {}

    /** The list for a recipe. */
    public static IngredientList of(Recipe recipe) {
        Map<String, Entry> byName = new LinkedHashMap<>();
        List<String> notes = new ArrayList<>();
        for (Portion portion : recipe.portions()) {
            boolean colour = Functions.work(portion.material()).equals(Functions.COLORANT);
            for (Component part : Component.of(name(portion.material(), notes), notes)) {
                BigDecimal level = portion.level().multiply(active(portion.material(), notes));
                Entry entry = new Entry(
                        part.name(), level.multiply(part.share()), colour ? Part.COLOURANT : Part.UP_TO_ONE_PERCENT);
                byName.merge(Names.key(part.name()), entry, IngredientList::together);
            }
        }
        List<Entry> entries = byName.values().stream()
                .filter(entry -> entry.level().signum() > 0)
                .map(IngredientList::placed)
                .sorted(Comparator.comparing(Entry::part)
                        .thenComparing(Entry::level, Comparator.reverseOrder())
                        .thenComparing(Entry::name))
                .toList();
        return new IngredientList(entries, notes.stream().distinct().toList());
    }

    /** The names alone. */
    public List<String> names() {
        return entries.stream().map(Entry::name).toList();
    }

    /** The list as the label has it. */
    public String text() {
        return String.join(", ", names());
    }

    private static Entry together(Entry one, Entry other) {
        return new Entry(one.name(), one.level().add(other.level()), one.part());
    }

    private static Entry placed(Entry entry) {
        boolean above = entry.part() != Part.COLOURANT && entry.level().compareTo(ONE_PERCENT) > 0;
        return above ? new Entry(entry.name(), entry.level(), Part.ABOVE_ONE_PERCENT) : entry;
    }

    private static String name(Material material, List<String> notes) {
        if (material.isWater()) {
            return "Aqua";
        }
        if (material.inci().isBlank()) {
            notes.add(LabelMessages.inciUnknown(material.name()));
            return material.name();
        }
        return material.inci().strip();
    }

    private static BigDecimal active(Material material, List<String> notes) {
        Figure active = material.traits().active();
        if (active == null) {
            return BigDecimal.ONE;
        }
        if (active.value().compareTo(new BigDecimal("0.95")) < 0) {
            notes.add(LabelMessages.onlyActiveMatterCounts(material.name()));
        }
        return active.value();
    }
}
