package perkilo.swaps.closeness;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Polarity;
import perkilo.swaps.facts.Solids;
import perkilo.swaps.facts.Spectrum;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;

/**
 * What two materials are compared by, by its key in {@code role-facts.csv}: a {@link Fact}, or a trait that follows
 * from other facts.
 */
final class Compared {

    static final String MAIN_ROLE = "MAIN_ROLE";
    static final String USUAL_LEVEL = "USUAL_LEVEL";
    static final String PH_RANGE = "PH_RANGE";
    static final String SAME_SUBSTANCE = "SAME_SUBSTANCE";

    /** How alike neighbouring classes are, such as light and medium. Own choice. */
    private static final double NEIGHBOURS = 0.3;

    /** How alike a material that dissolves in both is to one that dissolves in one of the two. Own choice. */
    private static final double HALF_SOLUBLE = 0.5;

    /** The difference in melting point at which two solids have nothing in common as solids, in °C. Own choice. */
    private static final double FAR_SOLIDS = 25;

    /** Facts whose words stand in an order, so that neighbours are partly alike. */
    private static final Set<Fact> CLASSES = Set.of(
            Fact.SPREADING_CLASS,
            Fact.POLARITY,
            Fact.HARDNESS,
            Fact.OXIDATIVE_STABILITY,
            Fact.ELECTROLYTE_TOLERANCE,
            Fact.CLARITY,
            Fact.FOAM,
            Fact.MILDNESS);

    /** Figures that differ by an amount; all others differ by a factor. */
    private static final Set<Fact> DIFFERENCES =
            Set.of(Fact.MELTS_AT_C, Fact.HLB, Fact.REQUIRED_HLB, Fact.ACID_BASE_GROUPS);

    private Compared() {}

    /** Whether something is compared by a key. */
    static boolean isKey(String key) {
        return switch (key) {
            case MAIN_ROLE, USUAL_LEVEL, PH_RANGE, SAME_SUBSTANCE -> true;
            default -> Arrays.stream(Fact.values()).anyMatch(fact -> fact.name().equals(key));
        };
    }

    /** What it is called in a sentence. */
    static String words(String key) {
        return switch (key) {
            case MAIN_ROLE -> "main role";
            case USUAL_LEVEL -> "usual level";
            case PH_RANGE -> "pH range";
            case SAME_SUBSTANCE -> "INCI name";
            default -> lower(bare(Fact.valueOf(key)));
        };
    }

    /** The columns of the Materials sheet in which it is typed. */
    static List<String> columns(String key) {
        return switch (key) {
            case MAIN_ROLE -> List.of(Fact.ROLE.header());
            case USUAL_LEVEL -> List.of(Fact.USE_MAX.header());
            case PH_RANGE -> List.of(Fact.PH_MIN.header(), Fact.PH_MAX.header());
            case SAME_SUBSTANCE -> List.of("INCI name");
            default -> List.of(Fact.valueOf(key).header());
        };
    }

    /** Whether it is known of a material. */
    static boolean isKnown(String key, Material material) {
        Traits traits = material.traits();
        return switch (key) {
            case MAIN_ROLE -> !Roles.of(material).isEmpty();
            case USUAL_LEVEL -> isAboveZero(traits.useMax());
            case PH_RANGE -> traits.phMin() != null && traits.phMax() != null;
            case SAME_SUBSTANCE -> !material.inci().isBlank();
            default -> isKnown(Fact.valueOf(key), material);
        };
    }

    private static boolean isKnown(Fact fact, Material material) {
        Traits traits = material.traits();
        return switch (fact) {
            case MELTS_AT_C -> traits.meltsAtC() != null || Solids.isLiquid(material);
            case VISCOSITY -> isAboveZero(traits.viscosity()) || Solids.isSolid(material);
            case SPREADING_CLASS -> !traits.spreadingClass().isBlank() || Solids.isSolid(material);
            case POLARITY -> !polarity(material).isEmpty();
            default ->
                switch (fact.kind()) {
                    case NUMBER, PERCENT ->
                        DIFFERENCES.contains(fact) ? traits.figure(fact) != null : isAboveZero(traits.figure(fact));
                    case WORD -> rank(fact, traits.word(fact)) >= 0;
                    case WORDS -> !traits.words(fact).isEmpty();
                    case SHARES -> !traits.shares(fact).isEmpty();
                };
        };
    }

    /** What is known of a material, as a person reads it; empty for nothing. */
    static String value(String key, Material material) {
        Traits traits = material.traits();
        if (!isKnown(key, material)) {
            return "";
        }
        return switch (key) {
            case MAIN_ROLE -> Roles.first(material).map(Role::name).orElse("");
            case USUAL_LEVEL -> "up to " + percent(Objects.requireNonNull(traits.useMax()));
            case PH_RANGE ->
                plain(Objects.requireNonNull(traits.phMin())) + " to " + plain(Objects.requireNonNull(traits.phMax()));
            case SAME_SUBSTANCE -> material.inci();
            default -> value(Fact.valueOf(key), material);
        };
    }

    private static String value(Fact fact, Material material) {
        Traits traits = material.traits();
        if (fact == Fact.POLARITY) {
            return polarity(material);
        }
        if (fact == Fact.MELTS_AT_C && traits.meltsAtC() == null) {
            return "liquid";
        }
        return switch (fact.kind()) {
            case NUMBER, PERCENT -> {
                Figure figure = traits.figure(fact);
                yield figure == null
                        ? "solid"
                        : fact.kind() == Fact.Kind.PERCENT
                                ? percent(figure)
                                : (plain(figure) + " " + fact.unit()).strip();
            }
            case WORD -> traits.word(fact).isBlank() ? "solid" : traits.word(fact);
            case WORDS -> String.join(", ", traits.words(fact));
            case SHARES -> traits.shares(fact).size() + " named";
        };
    }

    /**
     * How alike two materials are, 0 to 1.
     *
     * @param key of what is {@linkplain #isKnown known} of both
     * @param role that both are compared in
     * @param far the factor or difference that counts as nothing in common
     */
    static double likeness(String key, Role role, Material from, Material to, double far) {
        Traits a = from.traits();
        Traits b = to.traits();
        return switch (key) {
            case MAIN_ROLE -> Roles.first(to).filter(role::equals).isPresent() ? 1 : 0;
            case USUAL_LEVEL -> ratio(number(a.useMax()), number(b.useMax()), far);
            case PH_RANGE -> overlap(a, b);
            case SAME_SUBSTANCE -> isSameSubstance(from, to) ? 1 : 0;
            default -> likeness(Fact.valueOf(key), from, to, far);
        };
    }

    private static double likeness(Fact fact, Material from, Material to, double far) {
        Traits a = from.traits();
        Traits b = to.traits();
        return switch (fact) {
            case MELTS_AT_C -> melting(from, to, far);
            case VISCOSITY ->
                a.viscosity() == null || b.viscosity() == null
                        ? asSolids(from, to)
                        : ratio(number(a.viscosity()), number(b.viscosity()), far);
            case SPREADING_CLASS ->
                a.spreadingClass().isBlank() || b.spreadingClass().isBlank()
                        ? asSolids(from, to)
                        : classes(fact, a.spreadingClass(), b.spreadingClass());
            case POLARITY -> polarity(from, to);
            case SOLUBLE_IN -> solubility(a.solubleIn(), b.solubleIn());
            case SPECTRUM -> covered(Spectrum.of(from), Spectrum.of(to));
            default ->
                switch (fact.kind()) {
                    case NUMBER, PERCENT -> {
                        double one = number(a.figure(fact));
                        double other = number(b.figure(fact));
                        yield DIFFERENCES.contains(fact) ? difference(one, other, far) : ratio(one, other, far);
                    }
                    case WORD ->
                        CLASSES.contains(fact)
                                ? classes(fact, a.word(fact), b.word(fact))
                                : same(a.word(fact), b.word(fact));
                    case WORDS -> shared(a.words(fact), b.words(fact));
                    case SHARES -> 0;
                };
        };
    }

    /** Whether two materials have one INCI name, unless it stands for any fragrance or flavour. */
    static boolean isSameSubstance(Material from, Material to) {
        String inci = Names.key(from.inci());
        return !inci.isEmpty() && !Solids.isAnyScent(inci) && inci.equals(Names.key(to.inci()));
    }

    /** A liquid and a solid have nothing in common; two liquids are both liquid. */
    private static double melting(Material from, Material to, double far) {
        boolean liquid = Solids.isLiquid(from);
        if (liquid != Solids.isLiquid(to)) {
            return 0;
        }
        return liquid
                ? 1
                : difference(
                        number(from.traits().meltsAtC()), number(to.traits().meltsAtC()), far);
    }

    /** Solids do not flow and do not spread: two of them are as alike as their melting points. */
    private static double asSolids(Material from, Material to) {
        return Solids.isSolid(from) && Solids.isSolid(to) ? melting(from, to, FAR_SOLIDS) : 0;
    }

    private static double same(String one, String other) {
        return Names.withoutMarks(one).equals(Names.withoutMarks(other)) ? 1 : 0;
    }

    private static double classes(Fact fact, String one, String other) {
        int apart = Math.abs(rank(fact, one) - rank(fact, other));
        return apart == 0 ? 1 : apart == 1 ? NEIGHBOURS : 0;
    }

    /** The place of a word among those that may be typed; −1 if it is none of them. */
    private static int rank(Fact fact, String word) {
        String key = Names.withoutMarks(word);
        for (int at = 0; at < fact.choices().size(); at++) {
            if (Names.withoutMarks(fact.choices().get(at)).equals(key)) {
                return at;
            }
        }
        return fact.choices().isEmpty() && !key.isEmpty() ? 0 : -1;
    }

    private static double solubility(String one, String other) {
        boolean powder = Names.key(one).equals("powder") || Names.key(other).equals("powder");
        boolean both = Names.key(one).equals("both") || Names.key(other).equals("both");
        double same = same(one, other);
        return same == 0 && both && !powder ? HALF_SOLUBLE : same;
    }

    /** The part of the first that the second has as well. */
    private static double covered(Set<String> one, Set<String> other) {
        long common = one.stream().filter(other::contains).count();
        return one.isEmpty() ? 0 : (double) common / one.size();
    }

    /** The part of all words that both have. */
    private static double shared(List<String> one, List<String> other) {
        Set<String> mine = new LinkedHashSet<>();
        one.forEach(word -> mine.add(Names.key(word)));
        Set<String> all = new LinkedHashSet<>(mine);
        Set<String> theirs = new LinkedHashSet<>();
        other.forEach(word -> theirs.add(Names.key(word)));
        all.addAll(theirs);
        mine.retainAll(theirs);
        return all.isEmpty() ? 0 : (double) mine.size() / all.size();
    }

    private static double ratio(double one, double other, double far) {
        return Math.max(0, 1 - Math.abs(Math.log(one / other)) / Math.log(far));
    }

    private static double difference(double one, double other, double far) {
        return Math.max(0, 1 - Math.abs(one - other) / far);
    }

    /** The polarity of an oil: as typed, else as published for its INCI name; empty for none. */
    private static String polarity(Material material) {
        String typed = material.traits().word(Fact.POLARITY);
        return typed.isBlank()
                ? Polarity.of(material.inci()).flatMap(Polarity::word).orElse("")
                : typed;
    }

    /** By published figures where neither is typed and both have one, else by the words. */
    private static double polarity(Material from, Material to) {
        if (from.traits().word(Fact.POLARITY).isBlank()
                && to.traits().word(Fact.POLARITY).isBlank()) {
            Polarity mine = Polarity.of(from.inci()).orElse(null);
            Polarity theirs = Polarity.of(to.inci()).orElse(null);
            OptionalDouble distance = mine == null || theirs == null ? OptionalDouble.empty() : mine.distance(theirs);
            if (distance.isPresent()) {
                return 1 - distance.getAsDouble();
            }
        }
        return classes(Fact.POLARITY, polarity(from), polarity(to));
    }

    /** The part of the first pH range that the other covers. */
    private static double overlap(Traits one, Traits other) {
        double min = number(one.phMin());
        double max = number(one.phMax());
        double common = Math.min(max, number(other.phMax())) - Math.max(min, number(other.phMin()));
        double width = max - min;
        return width <= 0 ? (common >= 0 ? 1 : 0) : Math.max(0, Math.min(1, common / width));
    }

    private static boolean isAboveZero(@Nullable Figure figure) {
        return figure != null && figure.value().signum() > 0;
    }

    private static double number(@Nullable Figure figure) {
        return Objects.requireNonNull(figure).value().doubleValue();
    }

    private static String percent(Figure fraction) {
        return plain(fraction.value().movePointRight(2)) + " %";
    }

    private static String plain(Figure figure) {
        return plain(figure.value());
    }

    private static String plain(BigDecimal value) {
        BigDecimal shortest = value.stripTrailingZeros();
        return (shortest.scale() < 0 ? shortest.setScale(0) : shortest).toPlainString();
    }

    private static String bare(Fact fact) {
        String header = fact.header();
        String unit = fact.unit();
        return !unit.isEmpty() && header.endsWith(" " + unit)
                ? header.substring(0, header.length() - unit.length() - 1)
                : header;
    }

    /** In lower case, unless it starts with an abbreviation. */
    private static String lower(String words) {
        return words.length() > 1 && Character.isUpperCase(words.charAt(1))
                ? words
                : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }
}
