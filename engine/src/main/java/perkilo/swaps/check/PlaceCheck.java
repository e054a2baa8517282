package perkilo.swaps.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Finding;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Trial;

/** Each line in its place: phase, temperature, melting, pH. */
final class PlaceCheck implements FormulaCheck {

    private static final BigDecimal MOSTLY = new BigDecimal("0.5");

    @Override
    public List<Finding> of(Checked formula) {
        List<Finding> findings = new ArrayList<>();
        List<Portion> portions = formula.recipe().portions();
        for (int line = 0; line < portions.size(); line++) {
            Portion portion = portions.get(line);
            if (portion.level().signum() <= 0) {
                continue;
            }
            if (separatesFromOil(portion.material(), formula)) {
                findings.add(Finding.warning(
                        portion.line().origin(),
                        CheckMessages.separatesFromOil(portion.material().name(), formula.name())));
                continue;
            }
            for (Verdict verdict : Gates.judgePlace(Trial.ofNothing(formula.recipe(), line))) {
                if (!verdict.ok() && !(verdict.gate().equals(Gates.PHASE) && mayBeThere(portion.material(), formula))) {
                    String about = CheckMessages.about(
                            portion.material().name(),
                            formula.name(),
                            verdict.gate().name());
                    findings.add(Finding.warning(portion.line().origin(), about + ' ' + verdict.why()));
                }
            }
        }
        return findings;
    }

    /**
     * Whether a material may be in a phase that does not dissolve it. Preservatives and what protects oils are used at
     * levels that dissolve. Without water, salts, sugars and acids are powders that oil binds; only liquids such as
     * glycerin separate from a product that is mostly oil.
     */
    private static boolean mayBeThere(Material material, Checked formula) {
        if (Checked.hasRole(material, "preservative", "preservative booster", "propellant", "abrasive", "powder")) {
            return true;
        }
        if (formula.recipe().hasWater()) {
            return false;
        }
        return true;
    }

    /** Whether a liquid that dissolves in water only, such as glycerin, is in a product of oils, in whatever phase. */
    private static boolean separatesFromOil(Material material, Checked formula) {
        boolean inOil = formula.level(one -> Names.key(one.traits().solubleIn()).equals("oil"))
                        .compareTo(MOSTLY)
                >= 0;
        return inOil
                && !formula.recipe().hasWater()
                && !formula.has("O/W emulsifier", "W/O emulsifier", "solubiliser")
                && Names.key(material.traits().solubleIn()).equals("water")
                && Checked.hasRole(material, "humectant", "solvent");
    }
}
