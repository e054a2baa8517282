package perkilo.swaps.role;

import java.util.List;

/**
 * One fact that materials in a role are compared by.
 *
 * @param oneOf its keys: a constant of {@link perkilo.model.Fact}, or a trait that follows from several; the first that
 *     both materials have counts
 * @param deciding whether a material of which it is not known can be ranked
 * @param weight the most that it adds to closeness
 * @param far the ratio or difference at which nothing of it is left; zero where it is not a figure
 */
public record RoleFact(List<String> oneOf, Deciding deciding, int weight, double far) {

    public RoleFact {
        oneOf = List.copyOf(oneOf);
    }

    /** Whether a fact has to be known. */
    public enum Deciding {
        YES,
        NO,
        /** Only in formulas with water and oil. */
        IN_EMULSIONS
    }

    /** Whether it has to be known. */
    public boolean decides(boolean inEmulsion) {
        return deciding == Deciding.YES || (deciding == Deciding.IN_EMULSIONS && inEmulsion);
    }
}
