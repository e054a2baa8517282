package perkilo.swaps.trial;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;

/**
 * What kind of system a formula is, as far as roles go by it. Levels are fractions of the formula; all bounds are own
 * choices.
 *
 * @param water process water
 * @param oils what dissolves or melts in the oil phase; unknown solubility does not count
 * @param surfactants cleansing surfactants, as active matter; unknown active matter counts in full
 * @param powders what stays a powder in the formula
 * @param waterInOil whether its emulsifiers make water-in-oil emulsions: their mean HLB is below 7 where it is known of
 *     all; else there are only water-in-oil emulsifiers
 */
public record FormulaSystem(
        BigDecimal water, BigDecimal oils, BigDecimal surfactants, BigDecimal powders, boolean waterInOil) {

    private static final BigDecimal LEAST_WATER = new BigDecimal("0.05");
    private static final BigDecimal LEAST_OILS = new BigDecimal("0.02");
    private static final BigDecimal LEAST_SURFACTANTS = new BigDecimal("0.03");
    private static final BigDecimal MOSTLY = new BigDecimal("0.5");
    private static final BigDecimal BORDER_HLB = BigDecimal.valueOf(7);

    /** The system of a recipe. */
    public static FormulaSystem of(Recipe recipe) {
        BigDecimal water = BigDecimal.ZERO;
        BigDecimal oils = BigDecimal.ZERO;
        BigDecimal surfactants = BigDecimal.ZERO;
        BigDecimal powders = BigDecimal.ZERO;
        for (Portion portion : recipe.portions()) {
            Material material = portion.material();
            if (material.isWater()) {
                water = water.add(portion.level());
            } else if (Names.key(material.traits().solubleIn()).equals("oil")) {
                oils = oils.add(portion.level());
            } else if (Names.key(material.traits().solubleIn()).equals("powder")) {
                powders = powders.add(portion.level());
            }
            if (Roles.first(material).filter(Roles::isSurfactant).isPresent()) {
                surfactants = surfactants.add(active(portion));
            }
        }
        return new FormulaSystem(water, oils, surfactants, powders, isWaterInOil(recipe.portions()));
    }

    /** Whether it holds water and oil. */
    public boolean isEmulsion() {
        return water.compareTo(LEAST_WATER) >= 0 && oils.compareTo(LEAST_OILS) >= 0;
    }

    /** Whether it holds cleansing surfactants: at least 3 %. */
    public boolean isSurfactantSystem() {
        return surfactants.compareTo(LEAST_SURFACTANTS) >= 0;
    }

    /** Whether oil is outside: there is no process water, or the emulsifiers make water-in-oil emulsions. */
    public boolean isOily() {
        return water.signum() == 0 || waterInOil;
    }

    /** Whether most of it is powder. */
    public boolean isPowder() {
        return powders.compareTo(MOSTLY) > 0;
    }

    /** Whether a role can be played in it. */
    public boolean fits(Role role) {
        return is(role.fits());
    }

    /** Whether it is one of some formulas. */
    public boolean is(Role.Fits formulas) {
        return switch (formulas) {
            case ANY -> true;
            case EMULSION -> isEmulsion();
            case SURFACTANT_SYSTEM -> isSurfactantSystem();
            case OILY_SYSTEM -> isOily();
            case POWDER_PRODUCT -> isPowder();
        };
    }

    private static boolean isWaterInOil(List<Portion> portions) {
        BigDecimal level = BigDecimal.ZERO;
        BigDecimal sum = BigDecimal.ZERO;
        boolean allKnown = true;
        boolean any = false;
        boolean onlyWaterInOil = true;
        for (Portion portion : portions) {
            Role first = Roles.first(portion.material()).orElse(null);
            if (first == null || !Roles.isEmulsifier(first) || portion.level().signum() <= 0) {
                continue;
            }
            boolean makesWaterInOil = first.isOneOf("W/O emulsifier");
            any |= makesWaterInOil;
            onlyWaterInOil &= makesWaterInOil;
            Figure hlb = portion.material().traits().hlb();
            allKnown &= hlb != null;
            if (hlb != null) {
                level = level.add(portion.level());
                sum = sum.add(portion.level().multiply(hlb.value()));
            }
        }
        if (!any) {
            return false;
        }
        return allKnown ? sum.divide(level, MathContext.DECIMAL64).compareTo(BORDER_HLB) < 0 : onlyWaterInOil;
    }

    private static BigDecimal active(Portion portion) {
        Figure active = portion.material().traits().active();
        return active == null ? portion.level() : portion.level().multiply(active.value());
    }
}
