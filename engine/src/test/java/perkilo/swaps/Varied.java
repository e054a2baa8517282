package perkilo.swaps;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.origin.Figure;

/** Materials, and what is known of them, with one thing changed. */
public final class Varied {

    private Varied() {}

    /**
     * The material with another trait.
     *
     * @param trait as {@link Traits} calls it, such as {@code useMax}
     * @param value null, and an empty text, for one that is not known
     */
    public static Material trait(Material material, String trait, @Nullable Object value) {
        return of(material, "traits", of(material.traits(), trait, value));
    }

    /**
     * The traits with another one.
     *
     * @param trait as its accessor is called
     * @param value null, and an empty text or list, for one that is not known
     */
    @SuppressWarnings("unchecked") // a list of the fact's own kind
    public static Traits of(Traits traits, String trait, @Nullable Object value) {
        Fact fact = Fact.valueOf(trait.replaceAll("(?=[A-Z])", "_").toUpperCase(Locale.ROOT));
        Traits.Builder facts = traits.toBuilder();
        return (switch (fact.kind()) {
                    case NUMBER, PERCENT -> facts.figure(fact, (Figure) value);
                    case WORD -> facts.word(fact, value == null ? "" : (String) value);
                    case WORDS -> facts.words(fact, value == null ? List.of() : (List<String>) value);
                    case SHARES -> facts.shares(fact, value == null ? List.of() : (List<Traits.Allergen>) value);
                })
                .build();
    }

    /**
     * The record with another value.
     *
     * @param component as the record calls it
     */
    public static <R extends Record> R of(R record, String component, @Nullable Object value) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        if (Arrays.stream(components).noneMatch(one -> one.getName().equals(component))) {
            throw new IllegalArgumentException(record.getClass() + " has no " + component);
        }
        try {
            @Nullable Object[] values = new Object[components.length];
            for (int i = 0; i < values.length; i++) {
                boolean other = components[i].getName().equals(component);
                values[i] = other ? value : components[i].getAccessor().invoke(record);
            }
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            @SuppressWarnings("unchecked")
            Class<R> type = (Class<R>) record.getClass();
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(component + " can't be " + value, e);
        }
    }
}
