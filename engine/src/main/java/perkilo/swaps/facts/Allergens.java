package perkilo.swaps.facts;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import perkilo.model.Traits;
import perkilo.names.Names;

/** Fragrance allergens of a formula, by name, and which of them the label has to name. */
public final class Allergens {

    private final Map<String, BigDecimal> shares = new LinkedHashMap<>();
    private final Map<String, String> spelling = new LinkedHashMap<>();
    private final Set<String> unknown = new TreeSet<>();

    /**
     * Adds the allergens of a material.
     *
     * @param level of the material in the formula, as a fraction
     * @param allergens of the material
     */
    public void add(BigDecimal level, List<Traits.Allergen> allergens) {
        for (Traits.Allergen allergen : allergens) {
            String key = Names.key(allergen.name());
            spelling.putIfAbsent(key, allergen.name());
            if (allergen.share() == null) {
                unknown.add(key);
            } else {
                shares.merge(key, level.multiply(allergen.share().value()), BigDecimal::add);
            }
        }
    }

    /** The share of an allergen in the formula, as a fraction, as far as it is known. */
    public BigDecimal shareOf(String name) {
        return shares.getOrDefault(Names.key(name), BigDecimal.ZERO);
    }

    /** The allergens that the label has to name, because their share exceeds the threshold; by name. */
    public List<String> toBeNamed(boolean rinseOff) {
        BigDecimal threshold = AllergenThreshold.of(rinseOff);
        return shares.entrySet().stream()
                .filter(entry -> entry.getValue().compareTo(threshold) > 0)
                .map(entry -> spelling.getOrDefault(entry.getKey(), entry.getKey()))
                .sorted()
                .toList();
    }

    /** The allergens whose share is not stated for some material; by name. */
    public List<String> ofUnknownShare() {
        return unknown.stream().map(key -> spelling.getOrDefault(key, key)).toList();
    }
}
