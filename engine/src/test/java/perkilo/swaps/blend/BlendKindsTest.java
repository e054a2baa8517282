package perkilo.swaps.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.origin.Figure;
import perkilo.swaps.Kit;
import perkilo.swaps.Varied;
import perkilo.swaps.lp.OjalgoSolver;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/** What a blend of each kind keeps, measured on the blended recipe itself. Prices are invented. */
final class BlendKindsTest {

    private static final BlendFinder.Bounds BOUNDS =
            new BlendFinder.Bounds(2, new BigDecimal("0.1"), BigDecimal.ONE, new BigDecimal(30));

    private static Kit gel() {
        return new Kit()
                .line("A", "", "q.s.", Kit.catalogued("Water"))
                .line("A", "", "12", Kit.catalogued("Sodium laureth sulfate 70 %"))
                .line("A", "", "8", Kit.catalogued("Cocamidopropyl betaine 30 %"))
                .line("A", "", "4", Kit.catalogued("Decyl glucoside"))
                .line("B", "", "0.4", Kit.catalogued("Sodium benzoate"))
                .line("B", "", "0.3", Kit.catalogued("Potassium sorbate"));
    }

    /** What shows that an oil is liquid. */
    private static final String[] LIQUID = {"viscosity", "meltsAtC", "spreadingClass"};

    /** A humectant of which nobody knows the active matter. */
    private static final Material HONEY =
            Varied.trait(Varied.trait(Kit.catalogued("Honey"), "role", List.of("humectant")), "active", null);

    private static Kit cream() {
        return new Kit()
                .line("A", "75", "q.s.", Kit.catalogued("Water"))
                .line("B", "75", "10", Kit.catalogued("Isopropyl myristate"))
                .line("B", "75", "5", Kit.catalogued("Caprylic/capric triglyceride"))
                .line("B", "75", "2.3", Kit.catalogued("Sorbitan stearate"))
                .line("A", "75", "2.7", Kit.catalogued("Polysorbate 60"));
    }

    private static Group only(Recipe recipe, Kind kind) {
        return new Groups(recipe, null, null)
                .sought().stream()
                        .filter(group -> group.kind() == kind)
                        .findFirst()
                        .orElseThrow();
    }

    /**
     * The cheapest blend where what is in costs 20 and every other material costs from 2 upwards, one after another.
     */
    private static Recipe blended(Recipe recipe, Kind kind) {
        return blended(recipe, kind, 2);
    }

    private static Recipe blended(Recipe recipe, Kind kind, int mostChanged) {
        Group group = only(recipe, kind);
        BlendRules rules = new BlendRules(recipe, group, BOUNDS);
        Entry entry = new Entry(recipe, group, rules.rules(), BOUNDS.leastCloseness());
        List<Ingredient> pantry = new ArrayList<>();
        for (int line : group.lines()) {
            Portion portion = recipe.portions().get(line);
            pantry.add(ingredient(portion.material(), portion.level(), 2000, line));
        }
        for (Material material : Kit.catalogue()) {
            boolean ofKind = Kind.of(material).filter(kind::equals).isPresent();
            if (ofKind && entry.of(material).home() >= 0) {
                pantry.add(ingredient(
                        material,
                        BigDecimal.ZERO,
                        200 + pantry.size(),
                        entry.of(material).home()));
            }
        }
        BlendSearch.Answer answer = BlendSearch.find(
                        new BlendProgram(pantry, rules.rules()).program(mostChanged), new OjalgoSolver())
                .orElseThrow();
        assertThat(answer.proven()).isTrue();
        Portion giver = rules.giver(recipe);
        return new BlendedRecipe(recipe, group, giver).with(pantry, Levels.rounded(pantry, answer, giver == null));
    }

    private static Ingredient ingredient(Material material, BigDecimal now, int cents, int home) {
        Figure usual = material.traits().useMin();
        double least = usual == null ? 0 : usual.value().doubleValue();
        Figure highest = material.traits().useMax();
        double most = highest == null ? 0 : highest.value().doubleValue();
        return new Ingredient(
                material,
                now,
                now.signum() > 0 ? Math.min(now.doubleValue(), least) : least,
                Math.max(now.doubleValue(), most),
                BigDecimal.valueOf(cents, 2),
                home);
    }

    private static double sum(Recipe recipe, Kind kind, ToDoubleFunction<Material> weight) {
        return recipe.portions().stream()
                .filter(portion ->
                        Kind.of(portion.material()).filter(kind::equals).isPresent())
                .mapToDouble(portion -> portion.level().doubleValue() * weight.applyAsDouble(portion.material()))
                .sum();
    }

    private static double active(Material material, String charge) {
        return material.traits().charge().equals(charge)
                ? Kit.number(material.traits().active())
                : 0;
    }

    private static List<String> materials(Recipe recipe) {
        return recipe.portions().stream()
                .map(portion -> portion.material().name())
                .toList();
    }

    @Test
    void surfactants_keep_their_active_matter_and_water_takes_the_difference() {
        Recipe before = gel().recipe();
        Recipe after = blended(before, Kind.SURFACTANTS);

        assertThat(materials(after)).isNotEqualTo(materials(before));
        // 12 × 0.70 + 8 × 0.30 + 4 × 0.52 = 12.88 %
        assertThat(sum(after, Kind.SURFACTANTS, KeptActive::active)).isCloseTo(0.1288, within(1e-6));
        assertThat(after.portions().stream().map(Portion::level).reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(BigDecimal.ONE);
        assertThat(after.formula().levelOf(after.formula().lines().get(0)))
                .isEqualByComparingTo(after.portions().get(0).level());
    }

    @ParameterizedTest
    @CsvSource({"anionic", "amphoteric", "nonionic"})
    void surfactants_keep_the_share_of_each_charge(String charge) {
        Recipe before = gel().recipe();
        Recipe after = blended(before, Kind.SURFACTANTS);

        assertThat(sum(after, Kind.SURFACTANTS, material -> active(material, charge)))
                .isCloseTo(
                        sum(before, Kind.SURFACTANTS, material -> active(material, charge)),
                        within(0.1 * 0.1288 + 1e-6));
    }

    /** Without a lowest usual level, a material that stays could have the level zero. */
    @ParameterizedTest
    @CsvSource({"0", "1", "2"})
    void no_more_goes_out_than_is_allowed_where_no_lowest_level_is_known(int mostChanged) {
        Recipe before = new Kit()
                .line("A", "", "25", withoutLowest("Isopropyl myristate"))
                .line("A", "", "25", withoutLowest("Isopropyl palmitate"))
                .line("A", "", "25", withoutLowest("Caprylic/capric triglyceride"))
                .line("A", "", "25", withoutLowest("Ethylhexyl palmitate"))
                .recipe();
        Recipe after = blended(before, Kind.OILS, mostChanged);

        List<String> left = materials(after);
        assertThat(materials(before).stream().filter(name -> !left.contains(name)))
                .hasSizeLessThanOrEqualTo(mostChanged);
        assertThat(after.portions()).allMatch(portion -> portion.level().signum() > 0);
    }

    private static Material withoutLowest(String name) {
        Material light = Varied.trait(Kit.catalogued(name), "spreadingClass", "light");
        return Varied.trait(Varied.trait(light, "useMin", null), "useMax", Figure.of("1"));
    }

    @Test
    void two_blends_at_equal_levels_of_other_materials_are_two() {
        Blend.Part stays = part("Isopropyl myristate", "0.1", "0.06");

        assertThat(Blend.levels(List.of(stays, part("Decyl oleate", "0", "0.04"))))
                .isNotEqualTo(Blend.levels(List.of(stays, part("Oleyl oleate", "0", "0.04"))))
                .isEqualTo(Blend.levels(List.of(part("Decyl oleate", "0", "0.040"), stays)));
    }

    private static Blend.Part part(String name, String before, String after) {
        return new Blend.Part(Material.of(name), new BigDecimal(before), new BigDecimal(after), BigDecimal.ONE);
    }

    @Test
    void emulsifiers_keep_their_level_and_the_hlb_that_the_oils_require() {
        Recipe before = cream().recipe();
        Recipe after = blended(before, Kind.EMULSIFIERS);

        // required: (10 × 11.5 + 5 × 5) / 15 = 9.33; there is: (2.3 × 4.7 + 2.7 × 14.9) / 5 = 10.21
        assertThat(before.requiredHlb().mean().orElseThrow().doubleValue()).isCloseTo(140 / 15.0, within(1e-9));
        assertThat(materials(after)).isNotEqualTo(materials(before));
        assertThat(sum(after, Kind.EMULSIFIERS, one -> 1)).isCloseTo(0.05, within(1e-9));
        assertThat(after.emulsifierHlb().mean().orElseThrow().doubleValue())
                .isBetween(140 / 15.0 - 1.00001, 140 / 15.0 + 1.00001);
    }

    @Test
    void emulsifiers_count_together_in_all_phases() {
        assertThat(only(cream().recipe(), Kind.EMULSIFIERS).lines()).containsExactly(3, 4);
    }

    private static Material unknown(String name, String... figures) {
        Material material = Kit.catalogued(name);
        for (String figure : figures) {
            material = Varied.trait(material, figure, figure.equals("spreadingClass") ? "" : null);
        }
        return material;
    }

    @Test
    void the_sheet_says_when_the_band_could_not_be_set_around_what_the_oils_require() {
        Recipe known = cream().recipe();
        Recipe unknown = cream().line("B", "75", "3", unknown("Coco-caprylate", "requiredHlb"))
                .recipe();

        assertThat(words(known)).anyMatch(words -> words.contains("stays within 1 of 9.3, which the oils require"));
        assertThat(words(unknown))
                .anyMatch(words -> words.contains("A band around what the oils require could not be applied")
                        && words.contains("not known for all of them")
                        && words.contains("10.2, its present value"));
    }

    private static List<String> words(Recipe recipe) {
        return new BlendRules(recipe, only(recipe, Kind.EMULSIFIERS), BOUNDS)
                .rules().stream().map(Keeps::words).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "Sorbitan olivate, Their HLB is not known.",
        "Glyceryl stearate SE, The formula contains no other anionic material.",
        "Cetrimonium chloride solution, 'They can be put into formulas for this, but usually are for something else.'",
        "Lecithin, The formula contains no other amphoteric material.",
        "Ceteareth-20, ''"
    })
    void each_candidate_says_why_it_is_left_out(String candidate, String why) {
        Recipe recipe = cream().recipe();
        Group group = only(recipe, Kind.EMULSIFIERS);
        List<Keeps> rules = new BlendRules(recipe, group, BOUNDS).rules();

        Entry.Answer answer = new Entry(recipe, group, rules, BOUNDS.leastCloseness()).of(emulsifier(candidate));

        assertThat(answer.why()).isEqualTo(why);
        assertThat(answer.home() >= 0).isEqualTo(why.isEmpty());
    }

    /** The catalogue's own, but nobody knows the HLB of the olivate. */
    private static Material emulsifier(String name) {
        Material material = Kit.catalogued(name);
        return name.equals("Sorbitan olivate") ? Varied.trait(material, "hlb", null) : material;
    }

    @Test
    void preservatives_are_refused_with_the_reason() {
        List<BlendStudy> refused = new Groups(gel().recipe(), null, null).refused();

        assertThat(refused).singleElement().satisfies(study -> {
            assertThat(study.isSought()).isFalse();
            assertThat(study.blends()).isEmpty();
            assertThat(study.function()).isEqualTo("preservative");
            assertThat(study.refusal()).contains("challenge").contains("qualified safety assessor");
        });
        assertThat(new Groups(gel().recipe(), "preservatives", null).sought()).isEmpty();
    }

    @Test
    void nothing_that_preserves_has_a_kind() {
        assertThat(Kit.catalogue().stream()
                        .filter(material -> material.functions().contains("preservative")))
                .anyMatch(material -> material.functions().get(0).equals("antioxidant"))
                .allMatch(material -> Kind.of(material).isEmpty());
    }

    @Test
    void less_of_what_works_against_microbes_asks_for_a_challenge_test() {
        Blend.Part less = new Blend.Part(
                Kit.catalogued("Ferulic acid"), new BigDecimal("0.005"), new BigDecimal("0.002"), BigDecimal.ONE);
        Blend.Part more = new Blend.Part(
                Kit.catalogued("Ferulic acid"), new BigDecimal("0.002"), new BigDecimal("0.005"), BigDecimal.ONE);
        Recipe recipe = cream().recipe();

        assertThat(BlendCautions.of(recipe, recipe, Kind.ANTIOXIDANTS, List.of(less), true))
                .anyMatch(caution -> caution.contains("Ferulic acid") && caution.contains("challenge"));
        assertThat(BlendCautions.of(recipe, recipe, Kind.ANTIOXIDANTS, List.of(more), true))
                .noneMatch(caution -> caution.contains("challenge"));
    }

    @Test
    void what_comes_in_with_an_unknown_charge_is_pointed_out_beside_what_is_charged() {
        Material blank = Material.of("New humectant");
        List<Blend.Part> parts =
                List.of(new Blend.Part(blank, BigDecimal.ZERO, new BigDecimal("0.01"), BigDecimal.ONE));
        Recipe charged = gel().recipe();
        Recipe not = cream().recipe();

        assertThat(BlendCautions.of(charged, charged, Kind.HUMECTANTS, parts, true))
                .anyMatch(caution -> caution.contains("The charge of New humectant is not known")
                        && caution.contains("Cocamidopropyl betaine 30 % is amphoteric"));
        assertThat(BlendCautions.of(not, not, Kind.HUMECTANTS, parts, true))
                .noneMatch(caution -> caution.contains("New humectant is not known"));
    }

    /**
     * Isopropyl myristate and the triglyceride spread in a known way; of isopropyl stearate nothing of the kind is
     * known.
     */
    @Test
    void what_may_be_solid_is_no_oil_that_spreads() {
        Recipe before = new Kit()
                .line("A", "", "50", Kit.catalogued("Isopropyl myristate"))
                .line("A", "", "30", Kit.catalogued("Caprylic/capric triglyceride"))
                .line("A", "", "20", unknown("Isopropyl stearate", LIQUID))
                .recipe();
        List<Keeps> rules = new BlendRules(before, only(before, Kind.OILS), BOUNDS).rules();

        assertThat(rules.stream().flatMap(rule -> rule.keepsOut(unknown("Ethyl oleate", LIQUID)).stream()))
                .singleElement()
                .satisfies(why -> assertThat(why).contains("It is not known whether they are liquid"));
        assertThat(blended(before, Kind.OILS).levelOf(Kit.catalogued("Isopropyl stearate")))
                .isEqualByComparingTo("0.2");
    }

    @Test
    void oils_of_unknown_required_hlb_do_not_become_more() {
        List<Ingredient> pantry = List.of(
                ingredient(Kit.catalogued("Isopropyl myristate"), new BigDecimal("0.1"), 2000, 0),
                ingredient(unknown("Coco-caprylate", "requiredHlb"), BigDecimal.ZERO, 200, 0));
        Keeps rule = new KeptRequiredHlb(cream().recipe().requiredHlb(), 1);

        BlendSearch.Answer answer = BlendSearch.find(
                        new BlendProgram(pantry, List.of(new KeptTotal(), rule)).program(2), new OjalgoSolver())
                .orElseThrow();

        assertThat(Levels.rounded(pantry, answer, true).get(1)).isEqualByComparingTo("0");
    }

    /** The unknown index may be 1, so a material of index 0 in its place could lower the content. */
    @Test
    void an_unknown_natural_index_is_not_zero() {
        Recipe plain = new Kit()
                .line("A", "", "50", natural("Isopropyl myristate", "0.8"))
                .line("A", "", "50", natural("Isopropyl palmitate", null))
                .recipe();
        Recipe before =
                new Recipe(plain.formula(), plain.portions(), plain.requiredTags(), new BigDecimal("0.9"), plain.day());
        Recipe after = blended(before, Kind.OILS);

        assertThat(after.levelOf(Kit.catalogued("Isopropyl palmitate"))).isEqualByComparingTo("0.5");
        assertThat(new BlendRules(before, only(before, Kind.OILS), BOUNDS)
                        .rules().stream().map(Keeps::words))
                .anyMatch(words -> words.contains("as far as known"));
    }

    private static Material natural(String name, @Nullable String index) {
        return Varied.trait(Kit.catalogued(name), "naturalOriginIndex", index == null ? null : Figure.of(index));
    }

    @Test
    void solids_keep_their_mean_melting_point_and_their_secondary_functions() {
        Recipe before = cream().line("B", "75", "3", Kit.catalogued("Cetearyl alcohol"))
                .line("B", "75", "1", Kit.catalogued("Beeswax white"))
                .recipe();
        Recipe after = blended(before, Kind.BODY);

        double melts = sum(before, Kind.BODY, one -> Kit.number(one.traits().meltsAtC())) / 0.04;
        assertThat(sum(after, Kind.BODY, one -> 1)).isCloseTo(0.04, within(1e-9));
        assertThat(sum(after, Kind.BODY, one -> Kit.number(one.traits().meltsAtC())) / 0.04)
                .isCloseTo(melts, within(3.0001));
        assertThat(sum(after, Kind.BODY, one -> one.functions().contains("emulsion stabilising") ? 1 : 0))
                .isGreaterThanOrEqualTo(0.03 * 0.9 - 1e-6);
    }

    @Test
    void thickeners_do_not_become_weaker_gram_for_gram() {
        Recipe before = new Kit()
                .line("A", "", "q.s.", Kit.catalogued("Water"))
                .line("A", "", "0.3", Kit.catalogued("Xanthan gum"))
                .line("A", "", "0.4", Kit.catalogued("Guar gum"))
                .recipe();
        Recipe after = blended(before, Kind.THICKENERS);

        ToDoubleFunction<Material> part = one -> 1 / Kit.number(one.traits().useMax());
        double strength = sum(before, Kind.THICKENERS, part);
        assertThat(sum(after, Kind.THICKENERS, one -> 1)).isCloseTo(0.007, within(1e-9));
        assertThat(sum(after, Kind.THICKENERS, part)).isCloseTo(strength, within(0.1 * strength + 1e-5));
    }

    @Test
    void humectants_of_unknown_active_matter_stay_as_they_are() {
        Recipe before = new Kit()
                .line("A", "", "q.s.", Kit.catalogued("Water"))
                .line("A", "", "5", Kit.catalogued("Glycerin"))
                .line("A", "", "2", HONEY)
                .line("A", "", "3", Kit.catalogued("Sorbitol 70 %"))
                .recipe();
        assertThat(before.roleOf(2).role()).isNotNull();
        List<Keeps> rules = new BlendRules(before, only(before, Kind.HUMECTANTS), BOUNDS).rules();

        assertThat(rules).anyMatch(rule -> rule.fixes(HONEY));
        assertThat(rules).noneMatch(rule -> rule.fixes(Kit.catalogued("Glycerin")));
        assertThat(rules.stream().flatMap(rule -> rule.keepsOut(unknown("Trehalose", "active")).stream()))
                .containsExactly("Their active matter is not known.");
        Recipe after = blended(before, Kind.HUMECTANTS);
        assertThat(after.levelOf(HONEY)).isEqualByComparingTo("0.02");
        double known = sum(after, Kind.HUMECTANTS, KeptActive::active);
        // 5 × 0.995 + 3 × 0.70 = 7.075 %
        assertThat(known).isCloseTo(0.07075, within(1e-6));
    }

    /** Castor oil is cheap and heavy, like almond oil, but ten times as thick. */
    @Test
    void oils_do_not_become_thick() {
        Recipe before = new Kit()
                .line("A", "", "60", Kit.catalogued("Sweet almond oil"))
                .line("A", "", "40", Kit.catalogued("Caprylic/capric triglyceride"))
                .recipe();
        Recipe after = blended(before, Kind.OILS);

        // exp(0.6 × ln 65 + 0.4 × ln 28) = 46
        assertThat(viscosity(before)).isCloseTo(46.4, within(0.1));
        assertThat(viscosity(after)).isBetween(46.4 / 1.51, 46.4 * 1.51);
        assertThat(after.portions())
                .allMatch(portion -> portion.material().traits().viscosity() != null);
    }

    private static double viscosity(Recipe recipe) {
        return Math.exp(
                sum(recipe, Kind.OILS, oil -> Math.log(Kit.number(oil.traits().viscosity()))));
    }

    @Test
    void without_water_what_oils_require_plays_no_part() {
        Recipe oil = new Kit()
                .line("A", "", "60", Kit.catalogued("Isopropyl myristate"))
                .line("A", "", "40", Kit.catalogued("Caprylic/capric triglyceride"))
                .recipe();

        assertThat(new BlendRules(oil, only(oil, Kind.OILS), BOUNDS)
                        .rules().stream().map(Keeps::words))
                .noneMatch(words -> words.contains("HLB"));
    }

    @Test
    void a_blend_back_to_the_old_levels_is_the_formula_again() {
        Recipe recipe = gel().recipe();
        Group group = only(recipe, Kind.SURFACTANTS);
        Portion giver = new BlendRules(recipe, group, BOUNDS).giver(recipe);
        List<Ingredient> same = group.lines().stream()
                .map(line -> ingredient(
                        recipe.portions().get(line).material(),
                        recipe.portions().get(line).level(),
                        100,
                        line))
                .toList();

        Formula back = new BlendedRecipe(recipe, group, giver)
                .with(same, same.stream().map(Ingredient::now).toList())
                .formula();

        assertThat(back).isEqualTo(recipe.formula());
    }
}
