package perkilo.swaps.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.model.ProductKind;
import perkilo.model.ProductKind.Word;
import perkilo.model.Traits;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.swaps.law.LegalRule.Bound;
import perkilo.swaps.law.Ruling.Outcome;

/** Limits by kind of product, conversions, sums, and days. */
final class LawTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);
    private static final BigDecimal HAIR_MORE = new BigDecimal("1.001");

    private static ProductKind kind(String cell) {
        Set<Word> words = EnumSet.noneOf(Word.class);
        ProductKind.parts(cell).forEach(part -> words.add(Word.named(part).orElseThrow()));
        return ProductKind.of(words);
    }

    private static Material material(String inci, @Nullable String activePercent) {
        Traits traits = activePercent == null
                ? Traits.UNKNOWN
                : Traits.builder()
                        .figure(Fact.ACTIVE, Figure.of(new BigDecimal(activePercent).movePointLeft(2)))
                        .build();
        return new Material(inci, inci, List.of(), null, null, Figure.ZERO, null, traits, Origin.NONE);
    }

    /** Materials and their per cents by turns. */
    private static List<Ruling> judge(String kind, LocalDate day, String... contents) {
        List<Law.Dosed> dosed = new ArrayList<>();
        for (int i = 0; i < contents.length; i += 2) {
            dosed.add(new Law.Dosed(material(contents[i], null), new BigDecimal(contents[i + 1]).movePointLeft(2)));
        }
        return new Law(kind(kind), day, null, dosed).rulings();
    }

    private static Outcome worst(List<Ruling> rulings) {
        return rulings.stream().map(Ruling::outcome).max(Outcome::compareTo).orElse(Outcome.KEPT);
    }

    @ParameterizedTest(name = "{0}, {1}: {2} % as {3}")
    @CsvFileSource(resources = "/perkilo/swaps/published-limits.csv", numLinesToSkip = 1)
    void a_published_limit_is_kept_up_to_itself(
            String inci, String kind, BigDecimal percent, @Nullable String as, String source) {
        BigDecimal substance = as == null
                ? percent
                : LegalTable.substances(inci).stream()
                        .map(one -> percent.divide(one.factor(), java.math.MathContext.DECIMAL64))
                        .findFirst()
                        .orElseThrow();

        assertThat(worst(judge(kind, DAY, inci, substance.toPlainString())))
                .as(source)
                .isEqualTo(Outcome.KEPT);
        assertThat(worst(judge(kind, DAY, inci, substance.multiply(HAIR_MORE).toPlainString())))
                .as(source)
                .isEqualTo(Outcome.BROKEN);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/perkilo/swaps/molar-masses.csv", numLinesToSkip = 1)
    void molar_masses(String name, String formula, BigDecimal mass, String source) {
        assertThat(MolarMass.of(formula)).as(name).isCloseTo(mass, within(new BigDecimal("0.03")));
    }

    @ParameterizedTest(name = "{0} {1} % active, {2}: at most {3} %")
    @CsvSource({
        "Sodium Benzoate, 100, leave-on, 0.59",
        "Sodium Benzoate, 100, rinse-off, 2.95",
        "Potassium Sorbate, 100, leave-on, 0.8038",
        "Sodium Dehydroacetate, 100, leave-on, 0.6784",
        "Sodium Metabisulfite, 100, leave-on, 0.2968",
        "Retinyl Palmitate, 100, leave-on; face, 0.5497",
        "Chlorhexidine Digluconate, 20, leave-on, 2.6643",
        "Tetrasodium Etidronate, 100, rinse-off; hair, 2.1403",
        "Cetrimonium Chloride, 29, rinse-off; hair, 8.6207",
        "Methylparaben, 100, leave-on, 0.4406",
        "Propylparaben, 100, leave-on, 0.1826",
        "DMDM Hydantoin, 55, leave-on, 1.0909"
    })
    void the_most_of_a_material_as_supplied(String inci, String active, String kind, BigDecimal percent) {
        BigDecimal most = Law.most(material(inci, active), kind(kind), DAY).orElseThrow();

        assertThat(most.movePointRight(2)).isCloseTo(percent, within(new BigDecimal("0.001")));
    }

    @Test
    void salts_of_one_acid_are_added_up() {
        assertThat(worst(judge("leave-on", DAY, "Sodium Benzoate", "0.3", "Benzoic Acid", "0.2")))
                .isEqualTo(Outcome.KEPT);
        assertThat(worst(judge("leave-on", DAY, "Sodium Benzoate", "0.4", "Benzoic Acid", "0.2")))
                .isEqualTo(Outcome.BROKEN);
    }

    @Test
    void parabens_are_limited_singly_and_together() {
        assertThat(worst(judge("leave-on", DAY, "Methylparaben", "0.44", "Ethylparaben", "0.48")))
                .isEqualTo(Outcome.KEPT);
        assertThat(worst(judge("leave-on", DAY, "Methylparaben", "0.46"))).isEqualTo(Outcome.BROKEN);
        assertThat(worst(judge(
                        "leave-on", DAY, "Methylparaben", "0.44", "Ethylparaben", "0.48", "Propylparaben", "0.1")))
                .isEqualTo(Outcome.BROKEN);
        assertThat(worst(judge("leave-on", DAY, "Propylparaben", "0.1", "Butylparaben", "0.1")))
                .isEqualTo(Outcome.BROKEN);
        assertThat(worst(judge("leave-on; under 3", DAY, "Propylparaben", "0.1")))
                .isEqualTo(Outcome.BROKEN);
    }

    @Test
    void what_is_prohibited_is_named_with_its_entry() {
        Ruling ruling = judge("rinse-off; hair", DAY, "Zinc Pyrithione", "1").get(0);

        assertThat(ruling.outcome()).isEqualTo(Outcome.BROKEN);
        assertThat(ruling.words())
                .isEqualTo("Zinc Pyrithione: prohibited in this kind of product (rinse-off; hair)."
                        + " Reg. (EC) 1223/2009, Annex II no. 1670, by Reg. (EU) 2021/1902.");
        assertThat(worst(judge("leave-on", DAY, "Butylphenyl Methylpropional", "0.01")))
                .isEqualTo(Outcome.BROKEN);
    }

    /** Rinse-off since 2020; leave-on from 6 June 2027. */
    @Test
    void the_day_decides_about_cyclic_siloxanes() {
        assertThat(worst(judge("rinse-off; hair", DAY, "Cyclopentasiloxane", "4")))
                .isEqualTo(Outcome.BROKEN);
        assertThat(worst(judge("rinse-off; hair", DAY, "Cyclopentasiloxane", "0.1")))
                .isEqualTo(Outcome.BROKEN);
        assertThat(worst(judge("rinse-off; hair", DAY, "Cyclopentasiloxane", "0.099")))
                .isEqualTo(Outcome.KEPT);
        Ruling before = judge("leave-on; hair", DAY, "Cyclopentasiloxane", "4").get(0);
        assertThat(before.outcome()).isEqualTo(Outcome.KEPT);
        assertThat(before.cautions()).singleElement().asString().contains("less than 0.1 % from 6 June 2027");
        assertThat(worst(judge("leave-on; hair", LocalDate.of(2027, 6, 6), "Cyclopentasiloxane", "4")))
                .isEqualTo(Outcome.BROKEN);
    }

    @Test
    void what_the_kind_does_not_say_is_not_known() {
        assertThat(worst(judge("leave-on", DAY, "Retinol", "0.04"))).isEqualTo(Outcome.KEPT);
        Ruling unclear = judge("leave-on", DAY, "Retinol", "0.2").get(0);
        assertThat(unclear.outcome()).isEqualTo(Outcome.UNCLEAR);
        assertThat(unclear.words()).contains("at most 0.05 %", "at most 0.3 %", "into Kind");
        assertThat(worst(judge("leave-on", DAY, "Retinol", "0.4"))).isEqualTo(Outcome.BROKEN);
        assertThat(worst(judge("leave-on; body", DAY, "Retinol", "0.2"))).isEqualTo(Outcome.BROKEN);
    }

    @Test
    void a_use_outside_the_entry_is_prohibited() {
        assertThat(worst(judge("leave-on; face", DAY, "Tetrasodium Etidronate", "0.2")))
                .isEqualTo(Outcome.BROKEN);
        assertThat(worst(judge("leave-on; body", DAY, "Cetrimonium Chloride", "0.3")))
                .isEqualTo(Outcome.BROKEN);
        assertThat(worst(judge("leave-on; body", DAY, "Cetrimonium Chloride", "0.1")))
                .isEqualTo(Outcome.KEPT);
    }

    @Test
    void a_preservative_has_no_other_purpose() {
        Material salicylic = material("Salicylic Acid", null);
        Law law =
                new Law(kind("leave-on; face"), DAY, null, List.of(new Law.Dosed(salicylic, new BigDecimal("0.015"))));

        assertThat(worst(law.rulings(salicylic, false))).isEqualTo(Outcome.KEPT);
        assertThat(law.rulings(salicylic, false).get(0).cautions())
                .singleElement()
                .asString()
                .startsWith("As a preservative it would be too much");
        assertThat(worst(law.rulings(salicylic, true))).isEqualTo(Outcome.BROKEN);
    }

    @Test
    void shares_of_a_blend_count_if_they_are_known() {
        assertThat(worst(judge("leave-on", DAY, "Phenoxyethanol 90 % (and) Ethylhexylglycerin 10 %", "1.1")))
                .isEqualTo(Outcome.KEPT);
        assertThat(worst(judge("leave-on", DAY, "Phenoxyethanol 90 % (and) Ethylhexylglycerin 10 %", "1.2")))
                .isEqualTo(Outcome.BROKEN);
        assertThat(worst(judge("leave-on", DAY, "Phenoxyethanol (and) Ethylhexylglycerin", "1.1")))
                .isEqualTo(Outcome.UNCLEAR);
        assertThat(worst(judge("leave-on", DAY, "Phenoxyethanol (and) Ethylhexylglycerin", "1")))
                .isEqualTo(Outcome.KEPT);
    }

    @Test
    void hydroxides_are_limited_by_the_final_ph() {
        Law.Dosed hydroxide = new Law.Dosed(material("Sodium Hydroxide", null), new BigDecimal("0.002"));

        assertThat(worst(new Law(kind(""), DAY, new BigDecimal("11.5"), List.of(hydroxide)).rulings()))
                .isEqualTo(Outcome.BROKEN);
        assertThat(worst(new Law(kind(""), DAY, new BigDecimal("6"), List.of(hydroxide)).rulings()))
                .isEqualTo(Outcome.KEPT);
    }

    @Test
    void a_typed_maximum_of_another_kind_is_recognised() {
        Material benzoate = material("Sodium Benzoate", null);

        assertThat(Law.isOfOtherKind(benzoate, new BigDecimal("0.0059"), kind("rinse-off"), DAY))
                .isTrue();
        assertThat(Law.isOfOtherKind(benzoate, new BigDecimal("0.004"), kind("rinse-off"), DAY))
                .isFalse();
        assertThat(Law.isOfOtherKind(benzoate, new BigDecimal("0.0059"), kind("leave-on"), DAY))
                .isFalse();
    }

    // the tables themselves

    @Test
    void each_rule_has_what_it_needs() {
        for (String group : LegalTable.groups()) {
            for (LegalRule rule : LegalTable.rules(group)) {
                assertThat(rule.entry()).as(group).isNotBlank();
                assertThat(rule.source()).as(group).isNotBlank();
                boolean numbered = Set.of(Bound.MAX, Bound.BELOW, Bound.PH).contains(rule.bound());
                assertThat(rule.most() != null).as(group + " has a number").isEqualTo(numbered);
                if (rule.bound() == Bound.NOTE) {
                    assertThat(rule.words()).as(group).isNotBlank();
                }
            }
            assertThat(LegalTable.all()).anyMatch(one -> one.group().equals(group));
        }
        assertThat(LegalTable.all())
                .allSatisfy(one ->
                        assertThat(LegalTable.rules(one.group())).as(one.inci()).isNotEmpty());
    }

    /** A kind that says nothing about the part is judged like all kinds that do, taken together. */
    @Test
    void an_unsaid_part_is_any_part() {
        for (LegalTable.Substance substance : LegalTable.all()) {
            for (Word contact : List.of(Word.LEAVE_ON, Word.RINSE_OFF)) {
                for (String percent : List.of("0.002", "0.05", "0.4", "0.7", "1.5", "2.2", "4", "8", "12", "30")) {
                    List<Outcome> each = ProductKind.of(contact).possible().stream()
                            .map(kind -> worst(judge(kind.words(), DAY, substance.inci(), percent)))
                            .distinct()
                            .toList();
                    Outcome all = each.size() == 1 ? each.get(0) : Outcome.UNCLEAR;

                    assertThat(worst(judge(contact.word(), DAY, substance.inci(), percent)))
                            .as("%s %% %s, %s", percent, substance.inci(), contact)
                            .isEqualTo(all);
                }
            }
        }
    }

    @Test
    void the_state_of_the_law_is_said() {
        assertThat(StateOfLaw.words())
                .isEqualTo("State of law: European Union, 1 September 2025."
                        + " Local rules and a qualified safety assessor decide.");
        assertThat(Objects.requireNonNull(StateOfLaw.DATE)).isBefore(DAY);
    }
}
