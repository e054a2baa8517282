package perkilo.model;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;

/** The known properties of a material: a value for each {@link Fact}. Null and an empty text or list mean unknown. */
public final class Traits {

    /** Nothing is known. */
    public static final Traits UNKNOWN = new Traits(new EnumMap<>(Fact.class));

    /** Figures, words, lists of words and of allergens, by {@link Fact#kind}; unknown facts are left out. */
    private final Map<Fact, Object> known;

    private Traits(Map<Fact, Object> known) {
        this.known = known;
    }

    /** A new set of facts. */
    public static Builder builder() {
        return new Builder(new EnumMap<>(Fact.class));
    }

    /** A builder that starts with these facts. */
    public Builder toBuilder() {
        return new Builder(new EnumMap<>(known));
    }

    /** Whether anything is known. */
    public boolean isAnyKnown() {
        return !known.isEmpty();
    }

    /** A number or a fraction; null if unknown. */
    public @Nullable Figure figure(Fact fact) {
        check(fact, fact.kind().isFigure());
        return (Figure) known.get(fact);
    }

    /** A word; empty if unknown. */
    public String word(Fact fact) {
        check(fact, fact.kind() == Fact.Kind.WORD);
        return known.get(fact) instanceof String word ? word : "";
    }

    /** Several words; none if unknown. */
    @SuppressWarnings("unchecked") // the builder accepts nothing else
    public List<String> words(Fact fact) {
        check(fact, fact.kind() == Fact.Kind.WORDS);
        return (List<String>) known.getOrDefault(fact, List.of());
    }

    /** Names with their shares; none if unknown. */
    @SuppressWarnings("unchecked") // the builder accepts nothing else
    public List<Allergen> shares(Fact fact) {
        check(fact, fact.kind() == Fact.Kind.SHARES);
        return (List<Allergen>) known.getOrDefault(fact, List.of());
    }

    private static void check(Fact fact, boolean fits) {
        if (!fits) {
            throw new IllegalArgumentException(fact + " is of the kind " + fact.kind());
        }
    }

    /** {@link Fact#ACTIVE}. */
    public @Nullable Figure active() {
        return figure(Fact.ACTIVE);
    }

    /** {@link Fact#SOLUBLE_IN}. */
    public String solubleIn() {
        return word(Fact.SOLUBLE_IN);
    }

    /** {@link Fact#MAX_PROCESS_C}. */
    public @Nullable Figure maxProcessC() {
        return figure(Fact.MAX_PROCESS_C);
    }

    /** {@link Fact#MELTS_AT_C}. */
    public @Nullable Figure meltsAtC() {
        return figure(Fact.MELTS_AT_C);
    }

    /** {@link Fact#CHARGE}. */
    public String charge() {
        return word(Fact.CHARGE);
    }

    /** {@link Fact#SPREADING_CLASS}. */
    public String spreadingClass() {
        return word(Fact.SPREADING_CLASS);
    }

    /** {@link Fact#SPREADING_VALUE}. */
    public @Nullable Figure spreadingValue() {
        return figure(Fact.SPREADING_VALUE);
    }

    /** {@link Fact#VISCOSITY}. */
    public @Nullable Figure viscosity() {
        return figure(Fact.VISCOSITY);
    }

    /** {@link Fact#REQUIRED_HLB}. */
    public @Nullable Figure requiredHlb() {
        return figure(Fact.REQUIRED_HLB);
    }

    /** {@link Fact#HLB}. */
    public @Nullable Figure hlb() {
        return figure(Fact.HLB);
    }

    /** {@link Fact#USE_MIN}. */
    public @Nullable Figure useMin() {
        return figure(Fact.USE_MIN);
    }

    /** {@link Fact#USE_MAX}. */
    public @Nullable Figure useMax() {
        return figure(Fact.USE_MAX);
    }

    /** {@link Fact#LEGAL_MAX}. */
    public @Nullable Figure legalMax() {
        return figure(Fact.LEGAL_MAX);
    }

    /** {@link Fact#PH_MIN}. */
    public @Nullable Figure phMin() {
        return figure(Fact.PH_MIN);
    }

    /** {@link Fact#PH_MAX}. */
    public @Nullable Figure phMax() {
        return figure(Fact.PH_MAX);
    }

    /** {@link Fact#NATURAL_ORIGIN_INDEX}. */
    public @Nullable Figure naturalOriginIndex() {
        return figure(Fact.NATURAL_ORIGIN_INDEX);
    }

    /** {@link Fact#TAGS}. */
    public List<String> tags() {
        return words(Fact.TAGS);
    }

    /** {@link Fact#ALLERGENS}. */
    public List<Allergen> allergens() {
        return shares(Fact.ALLERGENS);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Traits traits && known.equals(traits.known);
    }

    @Override
    public int hashCode() {
        return known.hashCode();
    }

    @Override
    public String toString() {
        return known.toString();
    }

    /**
     * A fragrance allergen in a material.
     *
     * @param name its INCI name
     * @param share of the material, as a fraction; null if unknown
     */
    public record Allergen(String name, @Nullable Figure share) {}

    /** Collects facts. */
    public static final class Builder {

        private final EnumMap<Fact, Object> known;

        private Builder(EnumMap<Fact, Object> known) {
            this.known = known;
        }

        /** A number or a fraction; null if unknown. */
        public Builder figure(Fact fact, @Nullable Figure figure) {
            return put(fact, fact.kind().isFigure(), figure, figure == null);
        }

        /** A word; empty if unknown. */
        public Builder word(Fact fact, String word) {
            return put(fact, fact.kind() == Fact.Kind.WORD, word, word.isEmpty());
        }

        /** Several words; none if unknown. */
        public Builder words(Fact fact, List<String> words) {
            return put(fact, fact.kind() == Fact.Kind.WORDS, List.copyOf(words), words.isEmpty());
        }

        /** Names with their shares; none if unknown. */
        public Builder shares(Fact fact, List<Allergen> shares) {
            return put(fact, fact.kind() == Fact.Kind.SHARES, List.copyOf(shares), shares.isEmpty());
        }

        /** The collected facts. */
        public Traits build() {
            return known.isEmpty() ? UNKNOWN : new Traits(new EnumMap<>(known));
        }

        private Builder put(Fact fact, boolean fits, @Nullable Object value, boolean unknown) {
            check(fact, fits);
            if (unknown || value == null) {
                known.remove(fact);
            } else {
                known.put(fact, value);
            }
            return this;
        }
    }
}
