package perkilo.costing;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.origin.Origin;

/**
 * Something that a run needs: a material in kilograms, or a component in pieces.
 *
 * @param name as the formula or the list of components has it
 * @param key what all spellings of the name have in common
 * @param material null for a component
 * @param lines where the formula names it; none for a component
 * @param component null for a material
 * @param share of the bulk, as a fraction, all lines together; zero for a component
 * @param needed in kilograms or pieces
 */
public record Item(
        String name,
        String key,
        @Nullable Material material,
        List<Formula.Line> lines,
        Product.@Nullable Component component,
        BigDecimal share,
        BigDecimal needed) {

    public Item {
        lines = List.copyOf(lines);
    }

    /** Whether it is a raw material, rather than packaging. */
    public boolean isMaterial() {
        return material != null;
    }

    /** Whether any of it is needed: a line of a formula may stand at 0 %. */
    public boolean isNeeded() {
        return needed.signum() > 0;
    }

    /** The unit that it is counted in: {@code kg} or {@code each}. */
    public String unit() {
        return isMaterial() ? "kg" : "each";
    }

    /** The cell that first asks for it. */
    public Origin origin() {
        return component != null ? component.origin() : lines.get(0).origin();
    }
}
