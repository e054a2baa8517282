package perkilo.swaps.closeness;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.facts.Polarity;

/** A trait that two materials are compared by. */
enum Trait {
    MAIN_FUNCTION("main function"),
    OTHER_FUNCTIONS("other functions"),
    SPREADING_CLASS("spreading class"),
    SPREADING_VALUE("spreading value"),
    VISCOSITY("viscosity"),
    MELTING_POINT("melting point"),
    POLARITY("polarity"),
    REQUIRED_HLB("required HLB"),
    HLB("HLB"),
    CHARGE("charge"),
    SOLUBILITY("solubility"),
    ACTIVE_MATTER("active matter"),
    USUAL_LEVEL("usual level"),
    PH_RANGE("pH range"),
    SCENT("scent"),
    SHADE("shade"),
    PROTECTION("what it protects from");

    /** How alike neighbouring classes are, such as light and medium. Own choice. */
    private static final double NEIGHBOURS = 0.3;

    /** How alike a material that dissolves in both is to one that dissolves in one of the two. Own choice. */
    private static final double HALF_SOLUBLE = 0.5;

    private final String words;

    Trait(String words) {
        this.words = words;
    }

    /** The trait as a person reads it. */
    String words() {
        return words;
    }

    /** The trait that a table names. */
    static Trait named(String words) {
        return Arrays.stream(values())
                .filter(trait -> trait.words.equals(words))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no trait " + words));
    }

    /**
     * How alike two materials are in this trait.
     *
     * @param far the factor or difference that counts as nothing in common
     * @return 0 to 1; empty if it is not known for both
     */
    OptionalDouble likeness(Material one, Material other, double far) {
        Traits a = one.traits();
        Traits b = other.traits();
        return switch (this) {
            case MAIN_FUNCTION -> sameWork(one, other);
            case OTHER_FUNCTIONS -> otherFunctions(one, other);
            case SPREADING_CLASS -> classes(a.spreadingClass(), b.spreadingClass());
            case SPREADING_VALUE -> ratio(a.spreadingValue(), b.spreadingValue(), far);
            case VISCOSITY -> ratio(a.viscosity(), b.viscosity(), far);
            case MELTING_POINT -> difference(a.meltsAtC(), b.meltsAtC(), far);
            case POLARITY -> polarity(one, other);
            case REQUIRED_HLB -> difference(a.requiredHlb(), b.requiredHlb(), far);
            case HLB -> difference(a.hlb(), b.hlb(), far);
            case CHARGE -> same(a.charge(), b.charge());
            case SOLUBILITY -> solubility(a.solubleIn(), b.solubleIn());
            case ACTIVE_MATTER -> ratio(a.active(), b.active(), far);
            case USUAL_LEVEL -> ratio(a.useMax(), b.useMax(), far);
            case PH_RANGE -> overlap(a, b);
            // no material states these; unknown counts as far
            case SCENT, SHADE, PROTECTION -> OptionalDouble.empty();
        };
    }

    private static OptionalDouble sameWork(Material one, Material other) {
        String work = Functions.work(one);
        return work.isEmpty() || Functions.work(other).isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(work.equals(Functions.work(other)) ? 1 : 0);
    }

    /** The share of secondary functions that the two have in common; having none is no likeness. */
    private static OptionalDouble otherFunctions(Material one, Material other) {
        String work = Functions.work(one);
        if (work.isEmpty() || Functions.of(other).isEmpty()) {
            return OptionalDouble.empty();
        }
        Set<String> both = new HashSet<>(Functions.besides(one, work));
        Set<String> either = new HashSet<>(both);
        List<String> theirs = Functions.besides(other, work);
        both.retainAll(theirs);
        either.addAll(theirs);
        return either.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of((double) both.size() / either.size());
    }

    private static OptionalDouble same(String one, String other) {
        return one.isBlank() || other.isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Names.key(one).equals(Names.key(other)) ? 1 : 0);
    }

    private static OptionalDouble classes(String one, String other) {
        int a = rank(one);
        int b = rank(other);
        return a < 0 || b < 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(a == b ? 1 : Math.abs(a - b) == 1 ? NEIGHBOURS : 0);
    }

    private static int rank(String spreadingClass) {
        return switch (Names.key(spreadingClass)) {
            case "light" -> 0;
            case "medium" -> 1;
            case "heavy" -> 2;
            default -> -1;
        };
    }

    private static OptionalDouble solubility(String one, String other) {
        OptionalDouble same = same(one, other);
        boolean powder = Names.key(one).equals("powder") || Names.key(other).equals("powder");
        boolean both = Names.key(one).equals("both") || Names.key(other).equals("both");
        return same.isPresent() && same.getAsDouble() == 0 && both && !powder ? OptionalDouble.of(HALF_SOLUBLE) : same;
    }

    private static OptionalDouble ratio(@Nullable Figure one, @Nullable Figure other, double far) {
        if (one == null
                || other == null
                || one.value().signum() <= 0
                || other.value().signum() <= 0) {
            return OptionalDouble.empty();
        }
        double factor = one.value().doubleValue() / other.value().doubleValue();
        return OptionalDouble.of(Math.max(0, 1 - Math.abs(Math.log(factor)) / Math.log(far)));
    }

    private static OptionalDouble difference(@Nullable Figure one, @Nullable Figure other, double far) {
        if (one == null || other == null) {
            return OptionalDouble.empty();
        }
        double apart = Math.abs(one.value().doubleValue() - other.value().doubleValue());
        return OptionalDouble.of(Math.max(0, 1 - apart / far));
    }

    private static OptionalDouble polarity(Material one, Material other) {
        Polarity mine = Polarity.of(one.inci()).orElse(null);
        Polarity theirs = Polarity.of(other.inci()).orElse(null);
        if (mine == null || theirs == null) {
            return OptionalDouble.empty();
        }
        OptionalDouble distance = mine.distance(theirs);
        return distance.isPresent() ? OptionalDouble.of(1 - distance.getAsDouble()) : distance;
    }

    /** The part of the first pH range that the other covers. */
    private static OptionalDouble overlap(Traits one, Traits other) {
        Figure min = one.phMin();
        Figure max = one.phMax();
        Figure otherMin = other.phMin();
        Figure otherMax = other.phMax();
        if (min == null || max == null || otherMin == null || otherMax == null) {
            return OptionalDouble.empty();
        }
        double width = max.value().subtract(min.value()).doubleValue();
        double common = max.value()
                .min(otherMax.value())
                .subtract(min.value().max(otherMin.value()))
                .doubleValue();
        return OptionalDouble.of(width <= 0 ? (common >= 0 ? 1 : 0) : Math.max(0, Math.min(1, common / width)));
    }
}
