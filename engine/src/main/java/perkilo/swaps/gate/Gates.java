package perkilo.swaps.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import perkilo.swaps.trial.Trial;

/** All gates, in the order in which they are asked: the cheap ones that keep most materials out come first. */
public final class Gates {

    /** Compares levels with the law. */
    public static final Gate LEGAL_MAXIMUM = new LegalLimitGate();

    /** Keeps opposite charges apart. */
    public static final Gate CHARGE = new ChargeGate();

    /** Shows which fragrance allergens enter and leave the label. */
    public static final Gate ALLERGENS = new AllergenGate();

    /** Compares the tags of a material with those that the products require. */
    public static final Gate TAGS = new TagsGate();

    /** Every gate there is. */
    static final List<Gate> ALL = List.of(
            new RoleGate(),
            new SolubilityGate(),
            new HeatGate(),
            new MeltingGate(),
            CHARGE,
            new DoseGate(),
            new UseRangeGate(),
            LEGAL_MAXIMUM,
            new PreservationGate(),
            new PhGate(),
            TAGS,
            new NaturalOriginGate(),
            ALLERGENS,
            new HlbGuide());

    private Gates() {}

    /** What every gate says. */
    public static List<Verdict> judge(Trial trial) {
        return judge(trial, gate -> true);
    }

    /**
     * What the gates say that do not depend on the level: whether a material fits the phase at all.
     *
     * @return the verdicts of role, solubility, heat, melting, charge, pH and tags
     */
    public static List<Verdict> judgeAtAnyLevel(Trial trial) {
        return judge(trial, gate -> !gate.dependsOnLevel());
    }

    /** What the gates say about a place in a formula: the phase's temperature, the other charges, the final pH. */
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
