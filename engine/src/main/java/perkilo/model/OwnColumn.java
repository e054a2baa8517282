package perkilo.model;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A column of a person's formula sheet that costing does not read: remarks, codes, INCI names.
 *
 * @param heading as typed
 * @param kind what its cells speak of
 * @param cells one per line of the formula, in their order
 */
public record OwnColumn(String heading, Kind kind, List<Typed> cells) {

    public OwnColumn {
        cells = List.copyOf(cells);
    }

    /** What the cells of a column speak of. */
    public enum Kind {
        /** The material's name in the ingredient list. */
        INCI,
        /** The line, whatever its material is, such as its role: it stays if the material changes. */
        LINE,
        /** The material, such as its code. */
        MATERIAL
    }

    /**
     * What a cell holds.
     *
     * @param text as a person sees it; empty for a blank cell
     * @param number null for words
     */
    public record Typed(String text, @Nullable BigDecimal number) {

        /** A blank cell. */
        public static final Typed NOTHING = new Typed("", null);
    }
}
