package perkilo.swaps.gate;

import java.util.ArrayList;
import java.util.List;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Trial;

/**
 * The gate that keeps apart what does not go together: the table of classes of materials, with its levels and pH.
 *
 * <p>A caution that the formula had before for the same reason is not repeated.
 */
final class CompatibilityGate implements Gate {

    private static final String CATIONIC = "cationic";

    @Override
    public String name() {
        return "compatibility";
    }

    @Override
    public Verdict judge(Trial trial) {
        Material to = trial.to();
        List<Compatibility.Conflict> after = Compatibility.conflicts(trial.after()).stream()
                .filter(conflict -> conflict.isAbout(to))
                .toList();
        List<Compatibility.Conflict> before = after.isEmpty() ? List.of() : Compatibility.conflicts(trial.before());
        List<String> shut = new ArrayList<>();
        List<String> cautions = new ArrayList<>();
        for (Compatibility.Conflict conflict : after) {
            if (conflict.isShut()) {
                shut.add(conflict.words());
            } else if (!Compatibility.wasThere(conflict, to, before, trial.from())) {
                cautions.add(conflict.words());
            }
        }
        if (!shut.isEmpty()) {
            return Verdict.fail(this, String.join(" ", shut));
        }
        List<String> cationic = cationic(trial);
        if (MaterialClass.of(to).isEmpty() && to.traits().charge().isEmpty() && !cationic.isEmpty()) {
            cautions.add(GateMessages.chargeUnknown(to.name(), cationic));
        }
        return new Verdict(
                this, true, cautions.isEmpty() ? GateMessages.goesTogether() : String.join(" ", cautions), cautions);
    }

    private static List<String> cationic(Trial trial) {
        List<String> names = new ArrayList<>();
        List<Portion> portions = trial.after().portions();
        for (int line = 0; line < portions.size(); line++) {
            Material material = portions.get(line).material();
            if (line != trial.line()
                    && Names.key(material.traits().charge()).equals(CATIONIC)
                    && !names.contains(material.name())) {
                names.add(material.name());
            }
        }
        return names;
    }
}
