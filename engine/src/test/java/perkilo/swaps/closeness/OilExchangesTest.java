package perkilo.swaps.closeness;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Material;
import perkilo.swaps.Kit;
import perkilo.swaps.SwapOptions;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;

/** The catalogue's oil phase against exchanges that textbooks and the trade name. Common practice. */
final class OilExchangesTest {

    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource({
        "Isopropyl palmitate, Isopropyl myristate",
        "Isopropyl palmitate, Coco-caprylate",
        "Isopropyl palmitate, Caprylic/capric triglyceride",
        "Coco-caprylate, Dicaprylyl carbonate",
        "Ethylhexyl palmitate, Cetearyl isononanoate",
        "Octyldodecanol, Hexyldecanol",
        "Isocetyl stearate, Octyldodecyl myristate",
        "Cyclopentasiloxane, Undecane and tridecane",
        "Cyclopentasiloxane, Isododecane",
        "Cyclopentasiloxane, C13-15 alkane",
        "Mineral oil light grade, Hydrogenated polydecene",
        "Hydrogenated polydecene, Squalane from sugar cane or olive",
        "Mineral oil heavy grade, Squalane from sugar cane or olive",
        "Sweet almond oil, Apricot kernel oil",
        "Sunflower oil high oleic, Safflower oil high oleic",
        "Evening primrose oil, Borage seed oil",
        "Coconut oil refined, Babassu oil",
        "Shea butter refined, Mango butter",
        "Shea butter refined, Cupuacu butter",
        "Cocoa butter, Kokum butter",
        "Cocoa butter, Illipe butter",
        "Lanolin, Bis-diglyceryl polyacyladipate-2",
        "Cetyl alcohol, Cetearyl alcohol",
        "Cetearyl alcohol, Stearyl alcohol",
        "Stearic acid, Palmitic acid",
        "Beeswax white, Synthetic beeswax",
        "Beeswax white, Candelilla wax",
        "Beeswax white, Sunflower wax",
        "Candelilla wax, Rice bran wax",
        "Carnauba wax, Rice bran wax",
        "Ozokerite, Ceresin",
        "Dimethicone 100 cSt, Dimethicone 350 cSt",
        "Glyceryl behenate, Tribehenin",
        "BHT, BHA",
        "Tocopherol, Tocopherol 50 % in sunflower oil"
    })
    void are_offered_both_ways(String one, String other) {
        assertThat(worst(one, other)).isGreaterThanOrEqualTo(SwapOptions.USUAL_CLOSENESS.doubleValue());
        assertThat(worst(other, one)).isGreaterThanOrEqualTo(SwapOptions.USUAL_CLOSENESS.doubleValue());
    }

    /** They share a role, but not what decides in it. */
    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource({
        "Dimethicone 5 cSt, Dimethicone 12500 cSt",
        "Dicaprylyl ether, Isostearyl isostearate",
        "Isononyl isononanoate, Diisostearyl malate",
        "Isohexadecane, Petrolatum",
        "Cetearyl alcohol, Lauryl alcohol",
        "Stearic acid, Oleic acid",
        "Carnauba wax, Myristyl myristate",
        "Cocoa butter, Coconut oil refined",
        "Caprylic/capric triglyceride, Castor oil"
    })
    void are_too_far_apart(String one, String other) {
        assertThat(shared(one, other)).isNotEmpty();
        assertThat(worst(one, other)).isLessThan(SwapOptions.USUAL_CLOSENESS.doubleValue());
        assertThat(worst(other, one)).isLessThan(SwapOptions.USUAL_CLOSENESS.doubleValue());
    }

    /** Nobody would try these, though most share a function of the glossary. */
    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource({
        "Isopropyl palmitate, Olive oil refined",
        "Isopropyl palmitate, Cetyl alcohol",
        "Isododecane, Isopropyl palmitate",
        "Cyclopentasiloxane, Dimethicone 100 cSt",
        "Castor oil, Hydrogenated castor oil",
        "Beeswax white, Shea butter refined",
        "Stearic acid, Stearyl alcohol",
        "Stearic acid, Sodium cocoyl isethionate",
        "Tocopherol, Tocopheryl acetate",
        "Tocopherol, Ascorbic acid",
        "Retinyl palmitate, Isopropyl palmitate",
        "Lavender oil, Sunflower oil high oleic",
        "Squalane from sugar cane or olive, Dimethicone 100 cSt",
        "Cetearyl alcohol, Cetearyl glucoside"
    })
    void play_no_role_in_common(String one, String other) {
        assertThat(Roles.of(Kit.catalogued(one))).isNotEmpty();
        assertThat(Roles.of(Kit.catalogued(other))).isNotEmpty();
        assertThat(shared(one, other)).isEmpty();
    }

    private static Set<String> shared(String one, String other) {
        List<String> others =
                Roles.of(Kit.catalogued(other)).stream().map(Role::name).toList();
        return Roles.of(Kit.catalogued(one)).stream()
                .map(Role::name)
                .filter(others::contains)
                .collect(Collectors.toSet());
    }

    private static double worst(String from, String to) {
        Material one = Kit.catalogued(from);
        return Closeness.of(Roles.first(one).orElseThrow(), one, Kit.catalogued(to))
                .worst()
                .doubleValue();
    }
}
