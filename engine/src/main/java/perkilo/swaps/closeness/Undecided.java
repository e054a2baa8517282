package perkilo.swaps.closeness;

import java.util.ArrayList;
import java.util.List;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.RoleFact;

/** The facts that decide whether materials can be compared in a role, and are not known. */
public final class Undecided {

    private Undecided() {}

    /**
     * The columns of the Materials sheet that have to be filled in before a material can be compared with any other;
     * none if all is known. Of facts that stand for each other the first is named.
     *
     * @param inEmulsion whether the formula holds water and oil
     */
    public static List<String> alone(Role role, boolean inEmulsion, Material material) {
        List<String> columns = new ArrayList<>();
        for (RoleFact fact : role.facts()) {
            if (fact.decides(inEmulsion) && fact.oneOf().stream().noneMatch(key -> Compared.isKnown(key, material))) {
                columns.addAll(Compared.columns(fact.oneOf().get(0)));
            }
        }
        return columns;
    }

    /**
     * The columns to fill in for a candidate before it can be compared with a material of which all is known.
     *
     * @param from the material that it would replace
     */
    public static List<String> of(Role role, boolean inEmulsion, Material from, Material to) {
        List<String> columns = new ArrayList<>();
        for (RoleFact fact : role.facts()) {
            List<String> keys = fact.oneOf();
            boolean both = keys.stream().anyMatch(key -> Compared.isKnown(key, from) && Compared.isKnown(key, to));
            if (fact.decides(inEmulsion) && !both) {
                String key = keys.stream()
                        .filter(one -> Compared.isKnown(one, from))
                        .findFirst()
                        .orElse(keys.get(0));
                columns.addAll(Compared.columns(key));
            }
        }
        String active = Fact.ACTIVE.header();
        if (needsActive(role, from, to) && !columns.contains(active)) {
            columns.add(active);
        }
        return columns;
    }

    /** Whether two materials have one INCI name, unless it stands for any fragrance or flavour. */
    public static boolean isSameSubstance(Material from, Material to) {
        return Compared.isSameSubstance(from, to);
    }

    /** Whether active matter is dosed by, and known of the replaced material only. */
    private static boolean needsActive(Role role, Material from, Material to) {
        return role.dosed() == Role.Dosed.EQUAL_ACTIVE
                && Compared.isKnown(Fact.ACTIVE.name(), from)
                && !Compared.isKnown(Fact.ACTIVE.name(), to);
    }

    /** Whether active matter is dosed by, and known of the candidate only: then the line's own has to be typed. */
    public static boolean lacksOwnActive(Role role, Material from, Material to) {
        return needsActive(role, to, from);
    }
}
