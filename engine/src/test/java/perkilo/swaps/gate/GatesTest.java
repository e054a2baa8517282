package perkilo.swaps.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.swaps.Kit;
import perkilo.swaps.Varied;
import perkilo.swaps.trial.Dosing;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;

/** Each gate lets fitting materials through, and has a reason for the others. */
final class GatesTest {

    private static final Material WATER = Kit.catalogued("Water");
    private static final Material PALMITATE = Kit.catalogued("Isopropyl palmitate");
    private static final Material GLYCERIN = Kit.catalogued("Glycerin");
    private static final Material PHENOXYETHANOL = Kit.catalogued("Phenoxyethanol");

    private static Kit cream() {
        return new Kit()
                .line("A", "75", "q.s.", WATER)
                .line("A", "75", "5", GLYCERIN)
                .line("B", "75", "10", PALMITATE)
                .line("C", "40", "0.9", PHENOXYETHANOL)
                .ph("5.5");
    }

    private static Verdict of(String gate, Trial trial) {
        return Gates.judge(trial).stream()
                .filter(verdict -> verdict.gate().name().equals(gate))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void role() {
        assertThat(of("role", cream().trial(2, Kit.catalogued("Isopropyl myristate"))))
                .extracting(Verdict::ok, Verdict::why, Verdict::cautions)
                .containsExactly(true, "Both are put into formulas as emollient ester.", List.of());
        assertThat(of("role", cream().trial(2, Kit.catalogued("Polysorbate 60")))
                        .why())
                .isEqualTo(
                        "Isopropyl palmitate is here as emollient ester, and Polysorbate 60 is not known to be one.");
        assertThat(of("role", cream().trial(2, Material.of("Mystery oil"))).why())
                .isEqualTo("The role of Mystery oil in this formula is not known.");
        Material also =
                Varied.trait(Kit.catalogued("Castor oil"), "role", List.of("triglyceride oil", "emollient ester"));
        assertThat(of("role", cream().trial(2, also)).cautions())
                .containsExactly(
                        "Castor oil can be put into formulas as emollient ester, but usually is as triglyceride"
                                + " oil.");
    }

    @Test
    void it_dissolves_melts_or_disperses_in_the_phase() {
        assertThat(of("phase", cream().trial(1, Kit.catalogued("Propanediol"))).ok())
                .isTrue();
        assertThat(of("phase", cream().trial(1, Kit.catalogued("Isopropyl myristate"))))
                .extracting(Verdict::ok, Verdict::why)
                .containsExactly(false, "Soluble in oil; does not dissolve in the water phase.");
        assertThat(of("phase", cream().trial(3, Kit.catalogued("Potassium sorbate")))
                        .why())
                .isEqualTo("Soluble in water; fits the finished emulsion.");
        assertThat(of("phase", cream().trial(2, Material.of("Mystery oil"))).ok())
                .isFalse();
    }

    @Test
    void emulsifiers_melt_and_thickeners_disperse_in_the_oil_phase() {
        assertThat(of("phase", cream().trial(2, Kit.catalogued("Ceteareth-20"))).ok())
                .isTrue();
        assertThat(of("phase", cream().trial(2, Kit.catalogued("Xanthan gum"))).why())
                .startsWith("A thickener, which is dispersed in the oil phase");
        assertThat(of("phase", cream().trial(2, Kit.catalogued("Glycerin"))).why())
                .isEqualTo("Soluble in water; does not dissolve in the oil phase.");
    }

    /** Both have HLB 15.5 and 4.9; the oils require 11.5. */
    @Test
    void hlb_stays_near_that_of_the_oils() {
        Kit emulsion = new Kit()
                .line("A", "75", "q.s.", WATER)
                .line("B", "75", "2", Kit.catalogued("Steareth-21"))
                .line("B", "75", "1.2", Kit.catalogued("Steareth-2"))
                .line("B", "75", "10", PALMITATE);

        Trial far = emulsion.trial(1, Kit.catalogued("PEG-8 dioleate"));
        assertThat(of("HLB", far))
                .extracting(Verdict::ok, Verdict::why)
                .containsExactly(
                        false,
                        "The emulsifiers would have HLB 6.8, but the oils require 11.5, and more than 1.5 off is likely to"
                                + " separate. Use --any-hlb if you want to see such swaps.");
        assertThat(Gates.judge(far, true).stream()
                        .filter(verdict -> verdict.gate().equals(Gates.HLB))
                        .findFirst()
                        .orElseThrow())
                .extracting(Verdict::ok, verdict -> verdict.cautions().size())
                .containsExactly(true, 1);
        assertThat(of("HLB", emulsion.trial(1, Kit.catalogued("Steareth-20"))).ok())
                .isTrue();
    }

    @Test
    void an_emulsion_does_not_turn() {
        Kit emulsion = new Kit()
                .line("A", "75", "q.s.", WATER)
                .line("B", "75", "3", Kit.catalogued("Steareth-21"))
                .line("B", "75", "10", PALMITATE);

        assertThat(of("emulsion", emulsion.trial(1, Kit.catalogued("Polyglyceryl-3 diisostearate")))
                        .why())
                .isEqualTo("The emulsion is oil-in-water, and with these emulsifiers it becomes water-in-oil.");
        assertThat(of("emulsion", emulsion.trial(1, Kit.catalogued("Cetearyl alcohol")))
                        .why())
                .isEqualTo("No emulsifier is left that can carry the emulsion.");
    }

    @Test
    void something_that_preserves_stays() {
        assertThat(of("preservation", cream().trial(3, GLYCERIN)).why())
                .isEqualTo("Nothing would be left that preserves, and the formula holds water.");
    }

    @Test
    void without_water_the_sum_of_oils_decides() {
        Kit oil = new Kit()
                .line("A", "25", "q.s.", Kit.catalogued("Sunflower oil high oleic"))
                .line("A", "25", "5", PALMITATE);

        assertThat(of("use range", oil.trial(0, Kit.catalogued("Olive oil refined")))
                        .ok())
                .isTrue();
    }

    @Test
    void heat_sensitive_materials_go_in_at_cool_down() {
        assertThat(of("heat", cream().trial(2, Kit.catalogued("Isododecane"))))
                .extracting(Verdict::ok, Verdict::why)
                .containsExactly(
                        false, "It evaporates, and the phase is at 75 °C. It would have to be added at cool-down.");
        assertThat(of("heat", cream().trial(1, Kit.catalogued("Urea"))).why())
                .isEqualTo("Withstands only 40 °C, but the phase is at 75 °C. It would have to be added at cool-down.");
        Verdict unknown = of("heat", cream().trial(2, Material.of("Mystery oil")));
        assertThat(unknown.ok()).isTrue();
        assertThat(unknown.cautions())
                .containsExactly(
                        "The highest process temperature of Mystery oil is not known, and the phase is at 75 °C.");
    }

    @Test
    void a_liquid_in_the_place_of_a_solid_is_cautioned_against() {
        Kit balm = new Kit().line("A", "75", "100", Kit.catalogued("Shea butter refined"));

        Verdict verdict = of("other changes", balm.trial(0, Kit.catalogued("Sunflower oil high oleic")));

        assertThat(verdict.ok()).isTrue();
        assertThat(verdict.cautions().get(0)).contains("the product becomes softer");
    }

    @Test
    void a_thick_liquid_in_water_counts_by_its_share() {
        // 1400 to 45 mPa·s: exp(0.05 ln 31.1) = 1.19, exp(0.3 ln 31.1) = 2.8
        Verdict little = of("other changes", gel("5").trial(1, Kit.catalogued("Propylene glycol")));
        Verdict much = of("other changes", gel("30").trial(1, Kit.catalogued("Propylene glycol")));

        assertThat(little.cautions()).isEmpty();
        assertThat(much.cautions().get(0)).contains("thinner");
    }

    private static Kit gel(String glycerin) {
        return new Kit()
                .line("A", "25", "q.s.", Kit.catalogued("Water"))
                .line("A", "25", glycerin, Kit.catalogued("Glycerin"));
    }

    @Test
    void it_has_to_melt_in_the_phase() {
        Kit cold = new Kit().line("A", "25", "q.s.", PALMITATE).line("A", "25", "10", Kit.catalogued("Decyl oleate"));

        assertThat(of("melting", cold.trial(1, Kit.catalogued("Shea butter refined")))
                        .why())
                .isEqualTo("Melts at 37 °C, but the phase is at 25 °C.");
    }

    @Test
    void no_anionic_with_cationic() {
        Kit conditioner = new Kit()
                .line("A", "75", "q.s.", WATER)
                .line("A", "75", "2", Kit.catalogued("Behentrimonium methosulfate"))
                .line("A", "75", "0.3", Kit.catalogued("Hydroxyethylcellulose"));

        assertThat(of("compatibility", conditioner.trial(2, Kit.catalogued("Xanthan gum")))
                        .why())
                .isEqualTo("Behentrimonium methosulfate is cationic and Xanthan gum is anionic: the gum falls out as"
                        + " threads or gel lumps.");
        assertThat(of("compatibility", cream().trial(1, Kit.catalogued("Xanthan gum")))
                        .ok())
                .isTrue();
    }

    @Test
    void use_range_over_all_lines() {
        assertThat(of("use range", cream().trial(2, Kit.catalogued("Isopropyl isostearate")))
                        .ok())
                .isTrue();
        Material myristate = Varied.trait(Kit.catalogued("Isopropyl myristate"), "useMax", Figure.of("0.15"));
        Kit twice = cream().line("B", "75", "9", myristate);
        assertThat(of("use range", twice.trial(2, myristate)))
                .extracting(Verdict::ok, Verdict::why)
                .containsExactly(false, "The level is 19 %, but the usual range is 1 % to 15 %.");
    }

    /** 0.9 % sodium benzoate, 99 % pure, are 0.755 % as benzoic acid: 0.9 × 0.99 × 122.123 / 144.105. */
    @Test
    void limits_as_acid_are_converted() {
        Material benzoate = Varied.trait(
                Varied.trait(Kit.catalogued("Sodium benzoate"), "legalMax", null), "active", Figure.of("0.99"));

        Kit gel = new Kit().line("A", "", "q.s.", WATER).line("A", "", "0.9", benzoate);
        Material other = Varied.of(benzoate, "name", "Sodium benzoate B");

        assertThat(of("legal maximum", gel.trial(1, other)).ok()).isFalse();
        assertThat(of("legal maximum", gel.trial(1, other)).why())
                .startsWith(
                        "The formula contains 0.7551 % as benzoic acid (Sodium benzoate B), but allowed is at most 0.5 %");
        assertThat(of("legal maximum", gel.rinsedOff().trial(1, other)).ok()).isTrue();
    }

    @Test
    void a_legal_maximum_that_is_not_known_is_a_caution() {
        Verdict verdict = of("legal maximum", cream().trial(3, named("New preservative", "preservative")));

        assertThat(verdict.ok()).isTrue();
        assertThat(verdict.cautions())
                .containsExactly("The legal maximum of New preservative is not known. Look it up before use.");
    }

    @Test
    void a_preservative_needs_a_known_least_level_the_whole_spectrum_and_a_challenge_test() {
        Material same =
                Varied.trait(Varied.of(PHENOXYETHANOL, "name", "Phenoxyethanol B"), "role", List.of("preservative"));
        assertThat(of("preservation", cream().trial(3, Varied.trait(same, "useMin", null)))
                        .ok())
                .isFalse();
        Verdict verdict = of("preservation", cream().trial(3, same));
        assertThat(verdict.ok()).isTrue();
        assertThat(verdict.cautions().get(0)).contains("challenge");
        Material less = Varied.trait(same, "spectrum", List.of("yeast", "mould"));
        assertThat(of("preservation", cream().trial(3, less)).why())
                .startsWith("Phenoxyethanol B is not known to protect against gram-")
                .contains("Only a whole preservative system");
    }

    @Test
    void final_ph() {
        assertThat(of("pH", cream().ph("6.5").trial(3, Kit.catalogued("Sodium benzoate"))))
                .extracting(Verdict::ok, Verdict::why)
                .containsExactly(false, "Works from pH 3 to 5.5, but the final pH is 6.5.");
        assertThat(of("pH", cream().trial(3, Kit.catalogued("Sodium benzoate"))).ok())
                .isTrue();
    }

    @Test
    void required_tags_however_they_are_spelled() {
        Material shea = Kit.catalogued("Shea butter refined");
        Recipe asked = Varied.of(cream().recipe(), "requiredTags", Set.of("vegan", "palm free"));
        Dosing dosing = new Dosing(asked);
        Material spelledOtherwise = Varied.trait(shea, "tags", List.of("Vegan", "Palm-Free"));
        assertThat(of("required tags", dosing.of(2, spelledOtherwise)).ok()).isTrue();
        assertThat(of("required tags", dosing.of(2, Varied.trait(shea, "tags", List.of("vegan")))))
                .extracting(Verdict::ok, Verdict::why)
                .containsExactly(false, "Shea butter refined is not known to be palm free.");
    }

    @Test
    void newly_named_allergens_are_shown_and_keep_nothing_out() {
        Material fragrance = new Material(
                "Other fragrance",
                "Parfum",
                List.of("perfuming"),
                null,
                null,
                Figure.ZERO,
                null,
                withAllergen("Linalool", "0.05"),
                Origin.NONE);
        Kit scented = cream().line("C", "40", "0.3", named("Plain fragrance", "perfuming"));

        Verdict verdict = of("allergens", scented.trial(4, fragrance));

        assertThat(verdict.ok()).isTrue();
        assertThat(verdict.why()).isEqualTo("New on the label: Linalool.");
        assertThat(verdict.cautions()).containsExactly("The label has to name Linalool.");
    }

    private static Material named(String name, String function) {
        return new Material(name, "", List.of(function), null, null, Figure.ZERO, null, Traits.UNKNOWN, Origin.NONE);
    }

    private static Traits withAllergen(String name, String share) {
        Traits oil = Varied.of(Traits.UNKNOWN, "solubleIn", "oil");
        return Varied.of(oil, "allergens", List.of(new Traits.Allergen(name, Figure.of(share))));
    }
}
