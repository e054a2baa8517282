package perkilo.decision;

import java.util.Objects;

/**
 * One thing that a cost depends on.
 *
 * @param kind what it is
 * @param name of the item or the currency; for other kinds the kind's words
 */
public record Factor(Kind kind, String name) {

    /** What can be moved. */
    public enum Kind {
        /** All prices of one item. */
        ITEM("price"),
        /** The value of one currency in home currency. */
        CURRENCY("exchange rate"),
        LABOUR_RATE("Labour rate"),
        FILL("Fill"),
        FILL_LOSS("Fill loss"),
        /** Of all materials. */
        HANDLING_LOSSES("Handling losses"),
        /** Of all components. */
        COMPONENT_LOSSES("Component losses"),
        RUN_SIZE("Run size");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The kind in words. */
        public String words() {
            return words;
        }
    }

    public Factor {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(name, "name");
    }

    /** A factor that needs no name. */
    static Factor of(Kind kind) {
        return new Factor(kind, kind.words());
    }
}
