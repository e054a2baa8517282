package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.facts.FactTable;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/**
 * What does not go together in one formula, by classes of materials, levels and pH.
 *
 * @param a a class
 * @param b another class; empty if the rule is about one material and the pH
 * @param conditions all of which have to hold
 * @param shut whether it keeps a material out; otherwise it is a caution
 * @param words a sentence about {@code {a}} and {@code {b}}
 */
public record Compatibility(String a, String b, List<Condition> conditions, boolean shut, String words) {

    private static final List<Compatibility> ALL = FactTable.read(Compatibility.class, "compatibility.csv").stream()
            .map(row -> new Compatibility(
                    row.get(0),
                    row.get(1),
                    row.get(2).isEmpty()
                            ? List.of()
                            : Arrays.stream(row.get(2).split(";", 0))
                                    .map(Condition::parse)
                                    .toList(),
                    row.get(3).equals("shut"),
                    row.get(4)))
            .toList();

    public Compatibility {
        conditions = List.copyOf(conditions);
    }

    /**
     * A condition, such as {@code b > 0.5 %}.
     *
     * @param of a or b for a level, ph, or water
     * @param sign how it compares
     * @param bound a fraction or a pH; null for water
     */
    record Condition(String of, String sign, @Nullable BigDecimal bound) {

        static Condition parse(String text) {
            String[] words = text.strip().toLowerCase(Locale.ROOT).split(" ", -1);
            if (words.length == 1) {
                return new Condition(words[0], "", null);
            }
            BigDecimal bound = new BigDecimal(words[2]);
            return new Condition(words[0], words[1], words.length > 3 ? bound.movePointLeft(2) : bound);
        }

        private boolean holds(Recipe recipe, BigDecimal levelA, BigDecimal levelB) {
            Figure ph = recipe.formula().batching().finalPh();
            BigDecimal border = bound;
            if (border == null) {
                return recipe.hasWater();
            }
            BigDecimal value = switch (of) {
                case "a" -> levelA;
                case "b" -> levelB;
                default -> ph == null ? null : ph.value();
            };
            if (value == null) {
                return false;
            }
            int compared = value.compareTo(border);
            return switch (sign) {
                case ">" -> compared > 0;
                case "<" -> compared < 0;
                case "<=" -> compared <= 0;
                default -> compared >= 0;
            };
        }
    }

    /**
     * A rule that a formula meets.
     *
     * @param rule which one
     * @param a the materials of the first class
     * @param b those of the second; none for a rule about the pH
     */
    public record Conflict(Compatibility rule, List<Material> a, List<Material> b) {

        public Conflict {
            a = List.copyOf(a);
            b = List.copyOf(b);
        }

        /** Whether the two must not be together. */
        public boolean isShut() {
            return rule.shut();
        }

        /** What happens, in a full sentence. */
        public String words() {
            String text = rule.words().replace("{a}", names(a)).replace("{b}", names(b));
            return Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
        }

        /** Whether a material takes part in it. */
        public boolean isAbout(Material material) {
            String key = Names.key(material.name());
            return a.stream().anyMatch(one -> Names.key(one.name()).equals(key))
                    || b.stream().anyMatch(one -> Names.key(one.name()).equals(key));
        }

        private boolean isLike(Conflict other, Material own, Material others) {
            return rule.equals(other.rule) && others(own).equals(other.others(others));
        }

        private Set<String> others(Material except) {
            Map<String, Material> all = new LinkedHashMap<>();
            a.forEach(one -> all.put(Names.key(one.name()), one));
            b.forEach(one -> all.put(Names.key(one.name()), one));
            all.remove(Names.key(except.name()));
            return Set.copyOf(all.keySet());
        }

        private static String names(List<Material> materials) {
            return materials.stream().map(Material::name).collect(Collectors.joining(", "));
        }
    }

    /** Every rule that a formula meets, once each. */
    public static List<Conflict> conflicts(Recipe recipe) {
        Map<String, BigDecimal> levels = new LinkedHashMap<>();
        Map<String, Material> materials = new LinkedHashMap<>();
        for (Portion portion : recipe.portions()) {
            if (portion.level().signum() > 0) {
                String key = Names.key(portion.material().name());
                materials.putIfAbsent(key, portion.material());
                levels.merge(key, portion.level().multiply(active(portion.material())), BigDecimal::add);
            }
        }
        Map<String, List<Material>> members = new HashMap<>();
        for (Material material : materials.values()) {
            for (String name : MaterialClass.of(material)) {
                members.computeIfAbsent(name, key -> new ArrayList<>()).add(material);
            }
        }
        List<Conflict> found = new ArrayList<>();
        for (Compatibility rule : ALL) {
            List<Material> a = members.getOrDefault(rule.a, List.of());
            List<Material> b = rule.b.isEmpty() ? List.of() : members.getOrDefault(rule.b, List.of());
            if (a.isEmpty() || (!rule.b.isEmpty() && b.isEmpty())) {
                continue;
            }
            if (rule.b.isEmpty()) {
                a = a.stream().filter(Compatibility::hasNoPhRange).toList();
            } else {
                List<Material> both = b;
                a = a.stream()
                        .filter(one -> both.stream().anyMatch(other -> !other.equals(one)))
                        .toList();
            }
            if (a.isEmpty() || (!rule.b.isEmpty() && b.isEmpty())) {
                continue;
            }
            BigDecimal levelA = sum(a, levels);
            BigDecimal levelB = sum(b, levels);
            if (rule.conditions.stream().allMatch(condition -> condition.holds(recipe, levelA, levelB))) {
                List<Material> first = a;
                List<Material> second = b.stream()
                        .filter(one -> first.size() > 1 || !first.get(0).equals(one))
                        .toList();
                found.add(new Conflict(rule, a, second));
            }
        }
        return found;
    }

    /** Whether a conflict was there before a material took the place of another. */
    static boolean wasThere(Conflict now, Material to, List<Conflict> before, Material from) {
        return before.stream().anyMatch(old -> old.isAbout(from) && now.isLike(old, to, from));
    }

    /** The classes that the table names; for its test. */
    static Set<String> classes() {
        return ALL.stream()
                .flatMap(rule -> List.of(rule.a, rule.b).stream())
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toSet());
    }

    /** A typed pH range counts in the gate for pH; there is one message for one cause. */
    private static boolean hasNoPhRange(Material material) {
        return material.traits().phMin() == null && material.traits().phMax() == null;
    }

    private static BigDecimal sum(List<Material> materials, Map<String, BigDecimal> levels) {
        return materials.stream()
                .map(one -> levels.getOrDefault(Names.key(one.name()), BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal active(Material material) {
        Figure active = material.traits().active();
        return active == null ? BigDecimal.ONE : active.value();
    }
}
