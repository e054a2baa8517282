package perkilo.swaps.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.gate.Preserved;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.FormulaSystem;
import perkilo.swaps.trial.Portion;

/** What a product needs: something that preserves, an emulsifier of the right kind, a base for a polymer. */
final class SystemCheck implements FormulaCheck {

    /** Water-in-oil emulsions with less oil than this are rare. Common practice. */
    private static final BigDecimal LEAST_OIL_OUTSIDE = new BigDecimal("0.2");

    private static final String WATER_IN_OIL = "W/O emulsifier";

    private static final BigDecimal LEAST_OILS = new BigDecimal("0.03");

    private static final Pattern NEEDS_BASE = Pattern.compile(
            "carbomer|acrylates/c10-30 alkyl acrylate crosspolymer|acrylates copolymer|acrylates/.*crosspolymer.*");

    private static final Pattern BASE = Pattern.compile(
            "(sodium|potassium|ammonium|lithium) hydroxide|triethanolamine|tromethamine|arginine|lysine|aminomethyl"
                    + " propanol|triisopropanolamine|tetrahydroxypropyl ethylenediamine|(sodium|potassium)"
                    + " (carbonate|bicarbonate)|tetrasodium edta|sodium metasilicate|.*amidopropyl dimethylamine");

    private static final Pattern SOAP = Pattern.compile(
            "(sodium|potassium|tea)[ -](stearate|palmate|cocoate|oleate|olivate|palmitate|tallowate).*");

    private static final Pattern POLYMERIC_EMULSIFIER = Pattern.compile(
            "acrylates/c10-30 alkyl acrylate crosspolymer|.*crosspolymer.*|lecithin|hydrogenated lecithin|saponins"
                    + "|quillaja saponaria.*|sodium polyacrylate|.*acryloyldimethyl.*|cera alba|lanolin.*|.*caseinate"
                    + "|sodium acrylates.*|polyacrylamide|polyquaternium-37|.*starch octenylsuccinate|.*gum arabic.*"
                    + "|acacia senegal gum|sodium surfactin|.*lactylate");

    @Override
    public List<Finding> of(Checked formula) {
        List<Finding> findings = new ArrayList<>();
        Origin origin = formula.recipe().formula().origin();
        if (formula.isAllKnown()) {
            if (Preserved.needs(formula.recipe()) && !Preserved.is(formula.recipe())) {
                findings.add(Finding.warning(origin, CheckMessages.noPreservative(formula.name())));
            }
            emulsion(formula, origin, findings);
        }
        neutralised(formula, findings);
        return findings;
    }

    private static void emulsion(Checked formula, Origin origin, List<Finding> findings) {
        FormulaSystem system = formula.recipe().system();
        BigDecimal oils = formula.level(SystemCheck::isOil);
        if (!system.isEmulsion() || oils.compareTo(LEAST_OILS) < 0) {
            return;
        }
        boolean surfactants = system.isSurfactantSystem();
        boolean carried = surfactants
                || formula.has(
                        "O/W emulsifier", "W/O emulsifier", "solubiliser", "cationic conditioner", "primary surfactant")
                || isSoap(formula)
                || formula.level(SystemCheck::emulsifiesBesides).signum() > 0;
        if (!carried) {
            Set<String> helpers = formula.names("co-emulsifier", "fatty alcohol");
            findings.add(Finding.warning(
                    origin,
                    helpers.isEmpty()
                            ? CheckMessages.noEmulsifier(formula.name())
                            : CheckMessages.onlyCoEmulsifier(formula.name(), List.copyOf(helpers))));
            return;
        }
        boolean onlyWaterInOil = !surfactants
                && !formula.first(WATER_IN_OIL).isEmpty()
                && !formula.has("O/W emulsifier", "solubiliser", "cationic conditioner", "primary surfactant")
                && !isSoap(formula);
        boolean looksLikeOilInWater = oils.compareTo(LEAST_OIL_OUTSIDE) < 0
                || formula.has("gum", "neutralised polymer thickener", "nonionic polymer thickener");
        if (onlyWaterInOil && looksLikeOilInWater) {
            List<String> waterInOil = List.copyOf(formula.first(WATER_IN_OIL));
            findings.add(Finding.warning(origin, CheckMessages.onlyWaterInOil(formula.name(), waterInOil)));
        }
    }

    private static boolean isOil(Material material) {
        Role first = Roles.first(material).orElse(null);
        return first == null
                ? Functions.work(material).equals(Functions.EMOLLIENT)
                : first.isOneOf(
                        "emollient ester",
                        "triglyceride oil",
                        "hydrocarbon",
                        "silicone",
                        "volatile emollient",
                        "butter",
                        "wax",
                        "organic UV filter");
    }

    /** A fatty acid and a base make a soap, which emulsifies; so do soaps as they are bought. */
    private static boolean isSoap(Checked formula) {
        boolean acid = formula.has("fatty acid")
                || formula.level(material -> inci(material).matches(".*(stearic|palmitic|oleic|myristic|lauric) acid"))
                                .signum()
                        > 0;
        return (acid && hasBase(formula))
                || formula.level(material -> SOAP.matcher(inci(material)).matches())
                                .signum()
                        > 0
                || (formula.level(material -> inci(material).equals("cera alba"))
                                        .signum()
                                > 0
                        && formula.level(material -> inci(material).equals("sodium borate"))
                                        .signum()
                                > 0);
    }

    private static boolean hasBase(Checked formula) {
        return formula.has("base")
                || formula.level(material -> BASE.matcher(inci(material)).matches())
                                .signum()
                        > 0;
    }

    private static boolean emulsifiesBesides(Material material) {
        return POLYMERIC_EMULSIFIER.matcher(inci(material)).matches()
                || (Roles.of(material).isEmpty() && Functions.does(material, Functions.EMULSIFYING));
    }

    private static void neutralised(Checked formula, List<Finding> findings) {
        if (hasBase(formula) || !formula.isAllKnown()) {
            return;
        }
        for (Portion portion : formula.materials()) {
            if (NEEDS_BASE.matcher(inci(portion.material())).matches()) {
                findings.add(Finding.warning(
                        portion.line().origin(),
                        CheckMessages.notNeutralised(portion.material().name(), formula.name())));
                return;
            }
        }
    }

    private static String inci(Material material) {
        return Names.key(material.inci().isBlank() ? material.name() : material.inci());
    }
}
