package perkilo.swaps.role;

import java.util.List;
import java.util.Locale;

/**
 * What a material is put into a formula for, such as {@code emollient ester}.
 *
 * @param name as people type it
 * @param place the phase that it belongs to
 * @param fits the formulas in which it can be played
 * @param dosed how much of one material takes the place of another
 * @param kept whether materials in this role are not swapped unless a person opens them: they carry the claim
 * @param watch what changes with any other substance in this role, a sentence without its full stop; empty for nothing
 * @param watchIn the formulas in which that is so
 * @param facts what two materials in this role are compared by; the weights add up to 100
 */
public record Role(
        String name,
        Place place,
        Fits fits,
        Dosed dosed,
        boolean kept,
        String watch,
        Fits watchIn,
        List<RoleFact> facts) {

    public Role {
        facts = List.copyOf(facts);
    }

    /** The phase that a role belongs to. */
    public enum Place {
        WATER,
        OIL,
        BOTH
    }

    /** The formulas in which a role can be played. */
    public enum Fits {
        ANY("any formula"),
        EMULSION("formulas with water and oil"),
        SURFACTANT_SYSTEM("formulas with cleansing surfactants"),
        OILY_SYSTEM("formulas without water and water-in-oil emulsions"),
        POWDER_PRODUCT("formulas that are mostly powder");

        private final String words;

        Fits(String words) {
            this.words = words;
        }

        /** The formulas as a person reads it. */
        public String words() {
            return words;
        }
    }

    /** What stays the same when a material takes the place of another. */
    public enum Dosed {
        /** Active matter. */
        EQUAL_ACTIVE,
        /** Moles of acid or base. */
        EQUIVALENTS,
        /** Moles of metal ions that it binds. */
        MOLES,
        /** The place within the usual levels. */
        MIDPOINT,
        /** The level. */
        EQUAL_LEVEL,
        /** Nothing alone: only a whole system takes the place of another. */
        SYSTEM
    }

    /** Whether this role is one of some names. */
    public boolean isOneOf(String... names) {
        for (String one : names) {
            if (name.equals(one)) {
                return true;
            }
        }
        return false;
    }

    @Override
    public String toString() {
        return name;
    }

    static <E extends Enum<E>> E word(Class<E> of, String text) {
        return Enum.valueOf(of, text.strip().toUpperCase(Locale.ROOT).replace(' ', '_'));
    }
}
