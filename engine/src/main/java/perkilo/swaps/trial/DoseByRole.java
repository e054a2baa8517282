package perkilo.swaps.trial;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.role.Role;

/**
 * How much of one material takes the place of another, by what both are there for.
 *
 * @param level as a fraction of the formula, before rounding
 * @param why in full sentences
 * @param cautions in full sentences
 */
record DoseByRole(BigDecimal level, String why, List<String> cautions) {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    DoseByRole {
        cautions = List.copyOf(cautions);
    }

    /**
     * The dose.
     *
     * @param role of the line; null if it is not known: then active matter is kept
     * @param now the level of the replaced material, as a fraction
     */
    static DoseByRole of(@Nullable Role role, BigDecimal now, Material from, Material to) {
        boolean sameSubstance = !from.inci().isBlank() && Names.key(from.inci()).equals(Names.key(to.inci()));
        boolean asGrades = sameSubstance && (positive(from, Fact.ACTIVE) != null || positive(to, Fact.ACTIVE) != null);
        Role.Dosed dosed = role == null || asGrades || (sameSubstance && role.dosed() != Role.Dosed.EQUAL_LEVEL)
                ? Role.Dosed.EQUAL_ACTIVE
                : role.dosed();
        return switch (dosed) {
            case EQUAL_ACTIVE -> byActive(now, from, to);
            case EQUIVALENTS, MOLES -> byEquivalents(now, from, to, dosed);
            case MIDPOINT -> byMidpoint(now, from, to);
            case EQUAL_LEVEL -> new DoseByRole(now, DoseMessages.equalLevel(), List.of());
            case SYSTEM -> bySystem(now, from, to);
        };
    }

    private static DoseByRole byActive(BigDecimal now, Material from, Material to) {
        BigDecimal active = positive(from, Fact.ACTIVE);
        BigDecimal other = positive(to, Fact.ACTIVE);
        if (active == null && other == null) {
            String caution = DoseMessages.noActiveMatter();
            return new DoseByRole(now, caution, List.of(caution));
        }
        if (active == null || other == null) {
            return unknown(now, DoseMessages.activeMatterUnknown((active == null ? from : to).name()));
        }
        return active.compareTo(other) == 0
                ? new DoseByRole(now, DoseMessages.sameActiveMatter(), List.of())
                : new DoseByRole(
                        now.multiply(active).divide(other, MathContext.DECIMAL64),
                        DoseMessages.byActiveMatter(now, active, other),
                        List.of());
    }

    /** {@code w' = w · (A / E) / (A' / E')}: as many moles of acid, of base, or of bound metal. */
    private static DoseByRole byEquivalents(BigDecimal now, Material from, Material to, Role.Dosed dosed) {
        BigDecimal active = positive(from, Fact.ACTIVE);
        BigDecimal weight = positive(from, Fact.EQUIVALENT_WEIGHT);
        BigDecimal otherActive = positive(to, Fact.ACTIVE);
        BigDecimal otherWeight = positive(to, Fact.EQUIVALENT_WEIGHT);
        if (active == null || weight == null || otherActive == null || otherWeight == null) {
            return unknown(now, DoseMessages.equivalentsUnknown((active == null || weight == null ? from : to).name()));
        }
        BigDecimal level =
                now.multiply(active).multiply(otherWeight).divide(otherActive.multiply(weight), MathContext.DECIMAL64);
        return new DoseByRole(
                level,
                dosed == Role.Dosed.MOLES
                        ? DoseMessages.byMoles(now, active, weight, otherActive, otherWeight)
                        : DoseMessages.byEquivalents(now, active, weight, otherActive, otherWeight),
                dosed == Role.Dosed.MOLES ? List.of() : List.of(DoseMessages.adjustToPh()));
    }

    /** The same place within the usual levels; a starting point for the bench. */
    private static DoseByRole byMidpoint(BigDecimal now, Material from, Material to) {
        BigDecimal middle = middle(from, to);
        BigDecimal otherMiddle = middle(to, from);
        if (middle == null || otherMiddle == null) {
            return unknown(now, DoseMessages.usualLevelUnknown((middle == null ? from : to).name()));
        }
        String why = DoseMessages.byMidpoint(now, middle, otherMiddle);
        return new DoseByRole(
                now.multiply(otherMiddle).divide(middle, MathContext.DECIMAL64),
                why,
                middle.compareTo(otherMiddle) == 0 ? List.of() : List.of(why));
    }

    /**
     * By usual levels, but never less than there was, so that no preservative is cheaper by a lower level; where the
     * highest usual level of the other is lower still, that level.
     */
    private static DoseByRole bySystem(BigDecimal now, Material from, Material to) {
        DoseByRole usual = byMidpoint(now, from, to);
        if (usual.level.compareTo(now) >= 0) {
            return usual;
        }
        BigDecimal most = positive(to, Fact.USE_MAX);
        BigDecimal level = most == null ? now : now.min(most);
        return new DoseByRole(level, DoseMessages.notLessPreservative(level), List.of());
    }

    private static DoseByRole unknown(BigDecimal now, String caution) {
        return new DoseByRole(now, caution, List.of(caution));
    }

    /** The middle of the usual levels; the highest where the lowest is not known of both. */
    private static @Nullable BigDecimal middle(Material material, Material other) {
        BigDecimal most = positive(material, Fact.USE_MAX);
        Figure least = material.traits().useMin();
        boolean both = least != null && other.traits().useMin() != null;
        return most == null || least == null || !both
                ? most
                : most.add(least.value()).divide(TWO);
    }

    private static @Nullable BigDecimal positive(Material material, Fact fact) {
        Traits traits = material.traits();
        Figure figure = traits.figure(fact);
        return figure == null || figure.value().signum() <= 0 ? null : figure.value();
    }

    /** The same with one more caution. */
    DoseByRole warning(String caution) {
        List<String> all = new ArrayList<>(cautions);
        all.add(caution);
        return new DoseByRole(level, why, all);
    }
}
