package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/**
 * Whether a formula needs something that preserves, and whether it has it.
 *
 * <p>Water needs preserving unless the product is hostile to microbes: more than 20 % alcohol, a pH below 3 or above
 * 10, or more than half humectants and sugars beside the water. Common practice; only a challenge test shows it.
 */
public final class Preserved {

    private static final BigDecimal LEAST_WATER = new BigDecimal("0.05");
    private static final BigDecimal ALCOHOL = new BigDecimal("0.2");
    private static final BigDecimal ACID = new BigDecimal("3");
    private static final BigDecimal ALKALINE = new BigDecimal("10");

    /** Names of other things that preserve, beside what roles and functions tell. */
    private static final Pattern PRESERVES = Pattern.compile(
            "caprylyl glycol|1,2-hexanediol|pentylene glycol|ethylhexylglycerin|phenethyl alcohol|phenylpropanol"
                    + "|levulinic acid|sodium levulinate|p-anisic acid|sodium anisate|glyceryl (caprylate|undecylenate)"
                    + "|caprylhydroxamic acid|hydroxyacetophenone|o-cymen-5-ol|lactobacillus ferment|leuconostoc.*"
                    + "|.*populus tremuloides bark extract.*|polyglyceryl-10 caprate|silver citrate|.*isothiazolinone"
                    + "|methylpropanediol|decylene glycol|undecyl alcohol|sodium benzoate|potassium sorbate|phenoxyethanol"
                    + "|benzyl alcohol|dehydroacetic acid|sodium dehydroacetate|.*paraben|chlorphenesin|.*preserv.*");

    private static final Pattern ALCOHOLS =
            Pattern.compile("alcohol|alcohol denat\\.?|ethanol|isopropyl alcohol|propyl alcohol");

    private static final Pattern WATERY =
            Pattern.compile(".* (flower|leaf|fruit|herb|distillate|leaf/stem|peel) water.*|.*leaf juice");

    private Preserved() {}

    /** Whether a formula is a home for microbes. */
    public static boolean needs(Recipe recipe) {
        BigDecimal water = sum(recipe, Preserved::isWatery);
        if (water.compareTo(LEAST_WATER) < 0) {
            return false;
        }
        Figure ph = recipe.formula().batching().finalPh();
        boolean hostile = sum(recipe, Preserved::isAlcohol).compareTo(ALCOHOL) > 0
                || (ph != null && (ph.value().compareTo(ACID) < 0 || ph.value().compareTo(ALKALINE) > 0))
                || sum(recipe, Preserved::bindsWater).compareTo(water) > 0;
        return !hostile;
    }

    /** Whether a formula has anything that preserves or helps to. */
    public static boolean is(Recipe recipe) {
        return sum(recipe, Preserved::preserves).signum() > 0;
    }

    private static boolean preserves(Material material) {
        return Roles.preserves(material)
                || Functions.does(material, Functions.PRESERVATIVE)
                || (Functions.does(material, "antimicrobial") && !isAlcohol(material)) // alcohol preserves by its level
                || MaterialClass.inci(material).stream()
                        .anyMatch(name -> PRESERVES.matcher(name).matches());
    }

    private static boolean isWatery(Material material) {
        return material.isWater()
                || MaterialClass.inci(material).stream()
                        .anyMatch(name -> WATERY.matcher(name).matches());
    }

    private static boolean isAlcohol(Material material) {
        return MaterialClass.inci(material).stream()
                .anyMatch(name -> ALCOHOLS.matcher(name).matches());
    }

    private static boolean bindsWater(Material material) {
        Role first = Roles.first(material).orElse(null);
        return (first != null && first.isOneOf("humectant"))
                || (first == null && Functions.work(material).equals("humectant"))
                || Names.key(material.inci()).equals("sucrose");
    }

    private static BigDecimal sum(Recipe recipe, Predicate<Material> of) {
        return recipe.portions().stream()
                .filter(portion -> of.test(portion.material()))
                .map(Portion::level)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
