package perkilo.swaps.gate;

import java.util.ArrayList;
import java.util.List;
import perkilo.model.Material;
import perkilo.swaps.trial.Trial;

/** All gates, in the order in which they are worth asking: the cheap ones that keep most out come first. */
public final class Gates {

    private static final List<Gate> ALL = List.of(
            new FunctionGate(),
            new SolubilityGate(),
            new HeatGate(),
            new MeltingGate(),
            new ChargeGate(),
            new DoseGate(),
            new UseRangeGate(),
            new LegalLimitGate(),
            new PreservationGate(),
            new PhGate(),
            new TagsGate(),
            new NaturalOriginGate(),
            new AllergenGate(),
            new HlbGuide());

    /** The name of the gate that holds levels against the law. */
    public static final String LEGAL_MAXIMUM = "legal maximum";

    /** The name of the gate that keeps opposite charges apart. */
    public static final String CHARGE = "charge";

    private static final List<Gate> OF_A_PLACE =
            List.of(new HeatGate(), new MeltingGate(), new ChargeGate(), new PhGate());

    private Gates() {}

    /** Whether a material shares the function of what it would replace: the gate that keeps most out. */
    public static boolean sharesFunction(Material from, Material to) {
        return FunctionGate.isOpen(from, to);
    }

    /** What every gate says. */
    public static List<Verdict> judge(Trial trial) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Gate gate : ALL) {
            verdicts.add(gate.judge(trial));
        }
        return verdicts;
    }

    /**
     * What the gates say that don't depend on the level: whether a material may stand in the phase at all.
     *
     * @return the verdicts of function, solubility, heat, melting, charge, pH and tags
     */
    public static List<Verdict> judgeAtAnyLevel(Trial trial) {
        return ALL.stream()
                .filter(gate -> !(gate instanceof DependsOnLevel))
                .map(gate -> gate.judge(trial))
                .toList();
    }

    /** What the gates say about a material's place: the phase's temperature, the others' charges, the final pH. */
    public static List<Verdict> judgePlace(Trial trial) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Gate gate : OF_A_PLACE) {
            verdicts.add(gate.judge(trial));
        }
        return verdicts;
    }

    /** Whether it has the tags that the products require. */
    public static Verdict judgeTags(Trial trial) {
        return new TagsGate().judge(trial);
    }

    /**
     * What the gates say that hold a level against its bounds: the verdicts of use range and legal maximum.
     *
     * @param trial whose recipe after the change may differ in any number of lines
     */
    public static List<Verdict> judgeLevel(Trial trial) {
        return List.of(new UseRangeGate().judge(trial), new LegalLimitGate().judge(trial));
    }
}
