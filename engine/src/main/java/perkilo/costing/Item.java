package perkilo.costing;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.origin.Origin;

/**
 * An item that a run needs: a material in kilograms, or a component in pieces.
 *
 * @param name as in the formula or the list of components
 * @param key the same for all spellings of the name
 * @param material null for a component
 * @param lines of the formula that name it; none for a component
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

    /** Whether it is a raw material; otherwise packaging. */
    public boolean isMaterial() {
        return material != null;
    }

    /** Whether any of this item is needed: a line of a formula may have 0 %. */
    public boolean isNeeded() {
        return needed.signum() > 0;
    }

    /** The unit of its quantities: {@code kg} or {@code each}. */
    public String unit() {
        return isMaterial() ? "kg" : "each";
    }

    /** The first cell that needs it. */
    public Origin origin() {
        return component != null ? component.origin() : lines.get(0).origin();
    }
}
