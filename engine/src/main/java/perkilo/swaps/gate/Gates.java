package perkilo.swaps.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import perkilo.swaps.trial.Trial;

/** All gates, in the order in which they are asked: the cheap ones that keep most materials out come first. */
public final class Gates {

    /** Compares levels with the law. */
    public static final Gate LEGAL_MAXIMUM = new LegalLimitGate();

    /** Asks whether a material dissolves, melts or disperses in the phase. */
    public static final Gate PHASE = new PhaseGate();

    /** Compares levels with the usual range. */
    public static final Gate USE_RANGE = new UseRangeGate();

    /** Keeps apart what does not go together. */
    public static final Gate COMPATIBILITY = new CompatibilityGate();

    /** Keeps the HLB of the emulsifiers near that of the oils; a person may open it. */
    public static final Gate HLB = new HlbGate();

    /** Shows which fragrance allergens enter and leave the label. */
    public static final Gate ALLERGENS = new AllergenGate();

    /** Compares the tags of a material with those that the products require. */
    public static final Gate TAGS = new TagsGate();

    /** Every gate there is. */
    static final List<Gate> ALL = List.of(
            new RoleGate(),
            PHASE,
            new HeatGate(),
            new MeltingGate(),
            new TextureGate(),
            COMPATIBILITY,
            new DoseGate(),
            USE_RANGE,
            LEGAL_MAXIMUM,
            new PreservationGate(),
            new PhGate(),
            TAGS,
            new NaturalOriginGate(),
            ALLERGENS,
            new EmulsionGate(),
            HLB,
            new DifferenceGuide());

    private Gates() {}

    /** What every gate says. */
    public static List<Verdict> judge(Trial trial) {
        return judge(trial, gate -> true);
    }

    /**
     * What every gate says.
     *
     * @param anyHlb whether HLB keeps nothing out, but is a caution
     */
    public static List<Verdict> judge(Trial trial, boolean anyHlb) {
        return judge(trial).stream()
                .map(verdict -> anyHlb && verdict.gate().equals(HLB) ? verdict.opened() : verdict)
                .toList();
    }

    /**
     * What the gates say that do not depend on the level: whether a material fits the phase at all.
     *
     * @return the verdicts of role, phase, heat, melting, texture, compatibility, pH and tags
     */
    public static List<Verdict> judgeAtAnyLevel(Trial trial) {
        return judge(trial, gate -> !gate.dependsOnLevel());
    }

    /** What the gates say about a place in a formula: the phase, its temperature, the final pH. */
    public static List<Verdict> judgePlace(Trial trial) {
        return judge(trial, Gate::judgesPlace);
    }

    /** Whether it has the tags that the products require. */
    public static Verdict judgeTags(Trial trial) {
        return TAGS.judge(trial);
    }

    /**
     * What the gates say about a level: the verdicts of use range and legal maximum.
     *
     * @param trial its recipe after the change may differ in any number of lines
     */
    public static List<Verdict> judgeLevel(Trial trial) {
        return judge(trial, Gate::judgesLevel);
    }

    private static List<Verdict> judge(Trial trial, Predicate<Gate> asked) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Gate gate : ALL) {
            if (asked.test(gate)) {
                verdicts.add(gate.judge(trial));
            }
        }
        return verdicts;
    }
}
