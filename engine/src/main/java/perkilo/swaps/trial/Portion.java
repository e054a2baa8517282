package perkilo.swaps.trial;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.model.Fact;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.names.Names;

/**
 * One line of a recipe with what is known about its material.
 *
 * @param line as typed
 * @param material what it names
 * @param level as a fraction; the balance for the q.s. line
 */
public record Portion(Formula.Line line, Material material, BigDecimal level) {

    /** Whether it is to be kept: what the line says, else what its material says; null if neither says anything. */
    public @Nullable Boolean keep() {
        Boolean ofLine = line.wish().keep();
        String ofMaterial = material.traits().word(Fact.KEEP);
        return ofLine != null
                ? ofLine
                : ofMaterial.isBlank() ? null : (Boolean) Names.key(ofMaterial).equals("yes");
    }

    /** Whether a person says that it is to be kept. */
    public boolean isKept() {
        Boolean wish = keep();
        return wish != null && wish;
    }
}
