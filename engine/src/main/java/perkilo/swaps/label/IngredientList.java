package perkilo.swaps.label;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.facts.AllergenThreshold;
import perkilo.swaps.facts.Allergens;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/**
 * The list of ingredients as Regulation (EC) No 1223/2009, Article 19(1)(g), orders it.
 *
 * <p>By falling weight at the time of addition; ingredients below 1 % may follow in any order (here: falling too);
 * colourants may follow all others in any order. Weight is that of the ingredient itself: level times active matter
 * where that is stated. A material of several ingredients is split, as in {@code Glyceryl Stearate 60 % (and) PEG-100
 * Stearate 40 %}; where a share is not stated, its ingredient is placed by the most that it can be.
 *
 * <p>A fragrance allergen of Annex III, as amended by Regulation (EU) 2023/1545, is an ingredient of its own if all
 * materials together bring more of it than the threshold; what contains it (Parfum, an essential oil) stays.
 *
 * @param entries in the order of the label
 * @param notes what a person has to decide
 */
public record IngredientList(List<Entry> entries, List<String> notes) {

    private static final BigDecimal ONE_PERCENT = new BigDecimal("0.01");

    /** A colourant by its number in the Colour Index. */
    private static final Pattern COLOUR_INDEX = Pattern.compile("ci \\d{5}.*");

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
     * @param atMost whether the level is not known, and this is the most that it can be
     * @param allergen whether it is named because it is a fragrance allergen above the threshold
     */
    public record Entry(String name, BigDecimal level, Part part, boolean atMost, boolean allergen) {}

    /** The list for a recipe. */
    public static IngredientList of(Recipe recipe) {
        return new Collected(recipe.formula().batching().rinseOff()).of(recipe);
    }

    /** The list while it is put together. */
    private static final class Collected {

        private final Map<String, Entry> byName = new LinkedHashMap<>();

        /** What materials bring as a part of another ingredient, by allergen. */
        private final Map<String, BigDecimal> within = new LinkedHashMap<>();

        private final Map<String, String> spelling = new LinkedHashMap<>();
        private final Allergens unknown = new Allergens();
        private final List<String> notes = new ArrayList<>();
        private final boolean rinseOff;

        Collected(boolean rinseOff) {
            this.rinseOff = rinseOff;
        }

        IngredientList of(Recipe recipe) {
            for (Portion portion : recipe.portions()) {
                if (portion.level().signum() > 0) {
                    add(portion.material(), portion.level());
                }
            }
            nameAllergens();
            List<Entry> entries = byName.values().stream()
                    .filter(entry -> entry.level().signum() > 0)
                    .map(Collected::placed)
                    .sorted(Comparator.comparing(Entry::part)
                            .thenComparing(Entry::level, Comparator.reverseOrder())
                            .thenComparing(Entry::name))
                    .toList();
            List<String> open = unknown.ofUnknownShare().stream()
                    .filter(name -> !byName.containsKey(Names.key(name)))
                    .toList();
            if (!open.isEmpty()) {
                notes.add(LabelMessages.allergenOfUnknownShare(open));
            }
            return new IngredientList(entries, notes.stream().distinct().toList());
        }

        private void add(Material material, BigDecimal level) {
            boolean colour = Functions.work(material).equals(Functions.COLORANT);
            List<Component> components = components(material);
            for (Component part : components) {
                boolean last =
                        colour || COLOUR_INDEX.matcher(Names.key(part.name())).matches();
                Entry entry = new Entry(
                        part.name(),
                        level.multiply(part.share()),
                        last ? Part.COLOURANT : Part.UP_TO_ONE_PERCENT,
                        part.atMost(),
                        false);
                byName.merge(Names.key(part.name()), entry, Collected::together);
            }
            List<String> own =
                    components.stream().map(part -> Names.key(part.name())).toList();
            for (Traits.Allergen allergen : material.traits().allergens()) {
                String key = Names.key(allergen.name());
                Figure share = allergen.share();
                spelling.putIfAbsent(key, allergen.name());
                if (share != null && !own.contains(key)) {
                    within.merge(key, level.multiply(share.value()), BigDecimal::add);
                }
            }
            unknown.add(level, material.traits().allergens());
            if (Functions.work(material).equals(Functions.PERFUMING)
                    && material.traits().allergens().isEmpty()) {
                notes.add(LabelMessages.noAllergensKnown(material.name()));
            }
        }

        /** An allergen that is an ingredient already has what other materials bring of it added. */
        private void nameAllergens() {
            BigDecimal threshold = AllergenThreshold.of(rinseOff);
            within.forEach((key, brought) -> {
                Entry own = byName.get(key);
                BigDecimal all = own == null ? brought : own.level().add(brought);
                if (own != null) {
                    byName.put(key, new Entry(own.name(), all, own.part(), own.atMost(), all.compareTo(threshold) > 0));
                } else if (all.compareTo(threshold) > 0) {
                    String name = spelling.getOrDefault(key, key);
                    byName.put(key, new Entry(name, all, Part.UP_TO_ONE_PERCENT, false, true));
                }
            });
        }

        private List<Component> components(Material material) {
            if (material.isWater()) {
                return List.of(new Component("Aqua", BigDecimal.ONE, false));
            }
            Figure active = material.traits().active();
            boolean partly = active != null && active.value().compareTo(new BigDecimal("0.95")) < 0;
            if (material.inci().isBlank()) {
                notes.add(LabelMessages.inciUnknown(material.name()));
                if (partly) {
                    notes.add(LabelMessages.onlyActiveMatterCounts(material.name()));
                }
                return List.of(new Component(material.name(), active == null ? BigDecimal.ONE : active.value(), false));
            }
            if (partly && Component.leavesOut(material)) {
                notes.add(LabelMessages.onlyActiveMatterCounts(material.name()));
            }
            return Component.of(material, notes);
        }

        private static Entry together(Entry one, Entry other) {
            return new Entry(
                    one.name(), one.level().add(other.level()), one.part(), one.atMost() || other.atMost(), false);
        }

        private static Entry placed(Entry entry) {
            boolean above = entry.part() != Part.COLOURANT && entry.level().compareTo(ONE_PERCENT) > 0;
            return above
                    ? new Entry(entry.name(), entry.level(), Part.ABOVE_ONE_PERCENT, entry.atMost(), entry.allergen())
                    : entry;
        }
    }

    /** The names alone. */
    public List<String> names() {
        return entries.stream().map(Entry::name).toList();
    }

    /** The list as the label has it. */
    public String text() {
        return String.join(", ", names());
    }
}
