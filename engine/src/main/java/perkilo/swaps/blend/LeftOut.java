package perkilo.swaps.blend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.model.Material;

/** Materials that a joint swap leaves out, by the reason: every material that drops out is listed. */
final class LeftOut {

    private final Map<String, List<String>> byReason = new LinkedHashMap<>();

    /**
     * Adds a material.
     *
     * @param why in sentences that fit several materials
     */
    void add(String why, Material material) {
        byReason.computeIfAbsent(why, absent -> new ArrayList<>()).add(material.name());
    }

    /** Names of materials by the reason, both in the order in which they came. */
    Map<String, List<String>> byReason() {
        Map<String, List<String>> all = new LinkedHashMap<>();
        byReason.forEach((why, names) -> all.put(why, List.copyOf(names)));
        return all;
    }
}
