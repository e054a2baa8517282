package perkilo.costing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.origin.Figure;

/**
 * Greenhouse gases of the raw materials that a run uses: the sum of kilograms needed times each material's footprint.
 * Packaging, energy and transport are not counted.
 *
 * @param known the needed materials with a known footprint
 * @param unknown names of the needed materials with an unknown footprint
 */
public record CarbonFootprint(List<ItemCost> known, List<String> unknown) {

    public CarbonFootprint {
        known = List.copyOf(known);
        unknown = List.copyOf(unknown);
    }

    /** The footprint of a run. */
    public static CarbonFootprint of(RunCost cost) {
        List<ItemCost> known = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        for (ItemCost item : cost.items()) {
            Material material = item.item().material();
            if (material == null || !item.item().isNeeded()) {
                continue;
            }
            if (material.traits().figure(Fact.CARBON_FOOTPRINT) == null) {
                unknown.add(item.item().name());
            } else {
                known.add(item);
            }
        }
        return new CarbonFootprint(known, unknown);
    }

    /** Whether every material's footprint is known. */
    public boolean isComplete() {
        return unknown.isEmpty();
    }

    /** Kilograms of carbon dioxide equivalent for the whole run; null if a footprint is unknown. */
    public @Nullable BigDecimal wholeRun() {
        if (!isComplete()) {
            return null;
        }
        BigDecimal sum = BigDecimal.ZERO;
        for (ItemCost item : known) {
            sum = sum.add(item.item().needed().multiply(perKg(item).value()));
        }
        return sum;
    }

    /** Kilograms of carbon dioxide equivalent for one unit; null for bulk, and if a footprint is unknown. */
    public @Nullable BigDecimal perUnit(@Nullable BigDecimal units) {
        BigDecimal all = wholeRun();
        return all == null || units == null ? null : all.divide(units, MathContext.DECIMAL128);
    }

    /** The footprint typed for a material, in kg CO2e per kg. */
    public static Figure perKg(ItemCost item) {
        Material material = item.item().material();
        Figure typed = material == null ? null : material.traits().figure(Fact.CARBON_FOOTPRINT);
        if (typed == null) {
            throw new IllegalArgumentException("the footprint of " + item.item().name() + " is not known");
        }
        return typed;
    }
}
