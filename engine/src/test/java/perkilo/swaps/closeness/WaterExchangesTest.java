package perkilo.swaps.closeness;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Material;
import perkilo.swaps.Kit;
import perkilo.swaps.SwapOptions;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;

/**
 * The catalogue's water phase, emulsifiers and powders against exchanges that textbooks and the trade name. Common
 * practice.
 */
final class WaterExchangesTest {

    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource({
        "Triethanolamine, Sodium hydroxide 10 % solution",
        "Triethanolamine, Tromethamine",
        "Triethanolamine, Arginine",
        "Citric acid, Lactic acid 80 %",
        "Disodium EDTA, Tetrasodium glutamate diacetate solution",
        "Disodium EDTA, Sodium phytate solution",
        "Glycerin, Propanediol",
        "Glycerin, Butylene glycol",
        "Xanthan gum, Sclerotium gum",
        "Hydroxyethylcellulose, Hydroxypropyl methylcellulose",
        "Carbomer, Acrylates/C10-30 alkyl acrylate crosspolymer",
        "Sodium laureth sulfate 70 %, Sodium lauryl sulfate",
        "Sodium laureth sulfate 70 %, Sodium coco-sulfate",
        "Sodium laureth sulfate 70 %, Ammonium lauryl sulfate solution",
        "Cocamidopropyl betaine 30 %, Coco-betaine 30 %",
        "Cocamidopropyl betaine 30 %, Sodium cocoamphoacetate solution",
        "Decyl glucoside, Coco-glucoside",
        "Polysorbate 20, PEG-40 hydrogenated castor oil",
        "Ceteareth-20, Steareth-21",
        "Polyglyceryl-3 diisostearate, PEG-30 dipolyhydroxystearate",
        "Sorbitan stearate, Glyceryl stearate",
        "Behentrimonium methosulfate, Cetrimonium chloride solution",
        "Cocamide MEA, Lauramine oxide 30 %",
        "Glycol distearate, PEG-3 distearate",
        "Sodium benzoate, Potassium sorbate",
        "Ethylhexylglycerin, Caprylyl glycol",
        "PEG-150 distearate, PEG-120 methyl glucose dioleate",
        "Walnut shell powder, Apricot seed powder",
        "Corn starch, Tapioca starch",
        "Butane, Propane",
        "Sodium citrate, Potassium citrate",
        "PVP, VP/VA copolymer 50 % solution",
        "Bentonite, Hectorite",
        "PEG-7 glyceryl cocoate, PEG-7 olivate",
        "Sodium metabisulfite, Sodium sulfite",
        "Polyquaternium-10, Guar hydroxypropyltrimonium chloride",
        "Alcohol denat., Isopropyl alcohol",
        "Sodium cocoyl isethionate, Sodium lauroyl methyl isethionate"
    })
    void are_offered_both_ways(String one, String other) {
        assertThat(worst(one, other)).isGreaterThanOrEqualTo(SwapOptions.USUAL_CLOSENESS.doubleValue());
        assertThat(worst(other, one)).isGreaterThanOrEqualTo(SwapOptions.USUAL_CLOSENESS.doubleValue());
    }

    /** They share a role, but not what decides in it. */
    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource({
        "Ceteareth-20, Potassium cetyl phosphate",
        "Sorbitan laurate, Steareth-20",
        "Alcohol denat., Propylene glycol",
        "Sclerotium gum, Gellan gum",
        "Polyquaternium-7 solution, Guar hydroxypropyltrimonium chloride",
        "PVP, Polyquaternium-11 20 % solution",
        "Talc, Microcrystalline cellulose",
        "Titanium dioxide, Glycol distearate",
        "Pumice, Jojoba wax beads",
        "p-Anisic acid, Ethylhexylglycerin",
        "Glycolic acid 70 %, Salicylic acid",
        "Niacinamide, Caffeine"
    })
    void are_too_far_apart(String one, String other) {
        assertThat(worst(one, other)).isLessThan(SwapOptions.USUAL_CLOSENESS.doubleValue());
        assertThat(worst(other, one)).isLessThan(SwapOptions.USUAL_CLOSENESS.doubleValue());
    }

    /** In the first role of a material that the other can play too. */
    private static double worst(String from, String to) {
        Material one = Kit.catalogued(from);
        Material other = Kit.catalogued(to);
        Role shared = Roles.of(one).stream()
                .filter(role ->
                        Roles.of(other).stream().anyMatch(its -> its.name().equals(role.name())))
                .findFirst()
                .orElseThrow(() -> new AssertionError(from + " and " + to + " share no role"));
        return Closeness.of(shared, one, other).worst().doubleValue();
    }
}
