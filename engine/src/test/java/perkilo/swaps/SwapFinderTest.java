package perkilo.swaps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.costing.RunCost;
import perkilo.costing.RunNeeds;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.purchasing.search.quick.QuickPlanner;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.blend.BlendStudy;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.lp.OjalgoSolver;
import perkilo.swaps.money.RunChange;
import perkilo.swaps.trial.Dosing;
import perkilo.swaps.trial.Recipe;

/** Swaps in the formulator's demo, each checked by costing the swapped formula on its own. */
final class SwapFinderTest {

    private static final BigDecimal CENT = new BigDecimal("0.01");

    /** Levels are rounded to a hundred-thousandth of a per cent. */
    private static final double ROUNDING = 1e-6;

    /** What a bench balance does not weigh: half of 0.01 % each way. */
    private static final double BALANCE = 1e-4;

    private static final Book BOOK = DemoBook.emollients();
    private static final SwapOutcome.Found FOUND = find(SwapOptions.usual());

    private static SwapOutcome.Found find(SwapOptions options) {
        return find(BOOK, options);
    }

    private static SwapOutcome.Found find(Book book, SwapOptions options) {
        return (SwapOutcome.Found)
                new SwapFinder(new QuickPlanner(new CheapestPlan()), SearchLimits.usual(), new OjalgoSolver())
                        .find(book, options);
    }

    @Test
    void a_formulator_finds_the_usual_suspects() {
        assertThat(FOUND.swaps())
                .extracting(swap ->
                        swap.trial().from().name() + " → " + swap.trial().to().name())
                .contains(
                        "Dicaprylyl ether → Dicaprylyl carbonate",
                        "Cetearyl isononanoate → Ethylhexyl palmitate",
                        "Octyldodecanol → Decyl oleate");
    }

    @Test
    void every_swap_passes_all_gates_and_saves_somewhere() {
        assertThat(FOUND.swaps()).allSatisfy(swap -> {
            assertThat(swap.verdicts()).allMatch(Verdict::ok);
            assertThat(swap.saves()).isTrue();
            assertThat(swap.closeness().worst()).isGreaterThanOrEqualTo(SwapOptions.USUAL_CLOSENESS);
        });
    }

    @Test
    void what_is_rejected_says_why() {
        assertThat(FOUND.rejected())
                .isNotEmpty()
                .allSatisfy(no -> assertThat(no.reason()).isNotBlank());
    }

    @Test
    void asked_for_one_material_it_finds_swaps_and_blends_of_that_alone() {
        SwapOutcome.Found found = find(SwapOptions.usual().only(null, "Octyldodecanol", null));
        assertThat(found.swaps()).extracting(swap -> swap.trial().from().name()).containsOnly("Octyldodecanol");
        assertThat(found.studies()).extracting(BlendStudy::function).containsOnly("emollients that spread");
        assertThat(find(SwapOptions.usual().only(null, "Phenoxyethanol", null)).studies())
                .noneMatch(BlendStudy::isSought);
    }

    /** The search asks for the role before it doses anything; the gate itself says the same in words. */
    @Test
    void whatever_is_compared_passes_the_gate_of_roles() {
        assertThat(FOUND.swaps())
                .allSatisfy(swap -> assertThat(swap.verdicts().get(0).ok()).isTrue());
        assertThat(FOUND.rejected())
                .isNotEmpty()
                .allSatisfy(no -> assertThat(no.verdicts().get(0).ok()).isTrue());
    }

    @Test
    void a_stricter_closeness_never_adds_candidates() {
        List<String> before = names(find(SwapOptions.usual().withBlends(false).atLeast(BigDecimal.ZERO)));
        for (int closeness : new int[] {40, 60, 80, 100}) {
            List<String> now =
                    names(find(SwapOptions.usual().withBlends(false).atLeast(BigDecimal.valueOf(closeness))));
            assertThat(before).containsAll(now);
            before = now;
        }
        assertThat(before).hasSizeLessThan(FOUND.swaps().size());
    }

    private static List<String> names(SwapOutcome.Found found) {
        return found.swaps().stream()
                .map(swap -> swap.formula().name() + ": " + swap.trial().from().name() + " → "
                        + swap.trial().to().name())
                .toList();
    }

    /** A fact that is taken away may only move a swap down, or out of the list. */
    @Test
    void a_candidate_never_gains_rank_by_an_unknown_fact() {
        Swap first = FOUND.swaps().get(2);
        Material known = first.trial().to();
        for (String fact : List.of("oxidativeStability", "polarity", "spreadingClass", "viscosity")) {
            Material less = Varied.trait(known, fact, fact.equals("viscosity") ? null : "");
            SwapOutcome.Found found = find(
                    Varied.of(BOOK, "materials", with(less)),
                    SwapOptions.usual()
                            .only(first.formula().name(), first.trial().from().name(), null)
                            .withBlends(false));
            assertThat(found.swaps())
                    .filteredOn(swap -> swap.trial().to().name().equals(known.name()))
                    .allSatisfy(swap -> assertThat(swap.rank()).isGreaterThanOrEqualTo(first.rank()));
        }
    }

    private static Map<String, Material> with(Material other) {
        return Book.byName(
                BOOK.materials().values().stream()
                        .map(one -> one.name().equals(other.name()) ? other : one)
                        .toList(),
                Material::name);
    }

    @Test
    void what_lacks_a_deciding_fact_is_not_ranked_but_asked_for_once() {
        Swap first = FOUND.swaps().get(0);
        Material less = Varied.trait(Varied.trait(first.trial().to(), "spreadingClass", ""), "spreadingValue", null);
        SwapOutcome.Found found = find(
                Varied.of(BOOK, "materials", with(less)), SwapOptions.usual().withBlends(false));

        assertThat(found.swaps()).noneMatch(swap -> swap.trial().to().name().equals(less.name()));
        assertThat(found.missing())
                .filteredOn(missing -> missing.material().name().equals(less.name()))
                .singleElement()
                .satisfies(missing -> {
                    assertThat(missing.columns()).anyMatch(column -> column.startsWith("Spreading"));
                    assertThat(missing.neededFor()).hasSizeGreaterThan(1).doesNotHaveDuplicates();
                });
    }

    @Test
    void a_fragrance_is_kept_and_said_so_once() {
        assertThat(FOUND.kept())
                .filteredOn(line -> line.role().equals("fragrance"))
                .singleElement()
                .satisfies(line -> assertThat(line.why()).contains("--actives"));
        assertThat(FOUND.swaps()).noneMatch(swap -> swap.trial().from().name().startsWith("Fragrance"));
    }

    /** An active is opened to another supplier of the same substance alone. */
    @Test
    void an_opened_active_is_only_compared_with_the_same_substance() {
        Material acetate = BOOK.material("Tocopheryl acetate").orElseThrow();
        SwapOutcome.Found opened = find(SwapOptions.usual().withBlends(false).withActives(true));

        assertThat(FOUND.kept()).anyMatch(line -> line.portion().material().equals(acetate));
        assertThat(opened.kept()).noneMatch(line -> line.portion().material().equals(acetate));
        assertThat(opened.swaps())
                .filteredOn(swap -> swap.trial().from().equals(acetate))
                .allSatisfy(swap -> assertThat(swap.trial().to().inci()).isEqualTo(acetate.inci()));
    }

    @Test
    void a_material_that_a_person_keeps_is_not_swapped() {
        Material kept = Varied.trait(BOOK.material("Dicaprylyl ether").orElseThrow(), "keep", "yes");
        SwapOutcome.Found found = find(Varied.of(BOOK, "materials", with(kept)), SwapOptions.usual());

        assertThat(found.swaps()).noneMatch(swap -> swap.trial().from().name().equals(kept.name()));
        assertThat(found.kept())
                .filteredOn(line -> line.portion().material().name().equals(kept.name()))
                .singleElement()
                .satisfies(line -> assertThat(line.why()).isEqualTo("Keep says yes."));
        assertThat(found.blends())
                .allSatisfy(blend -> assertThat(blend.parts())
                        .noneMatch(part -> part.material().name().equals(kept.name())));
    }

    /** The two cheapest plans of a run may share its cost unequally among items; their sums may not differ. */
    @Test
    void a_saving_is_there_when_the_swapped_formula_is_costed_on_its_own() {
        for (int number : new int[] {1, FOUND.swaps().size() / 2, FOUND.swaps().size()}) {
            Swap swap = FOUND.swaps().get(number - 1);
            List<RunCost> own = costsOf(swap.trial().after().formula());
            for (RunChange change : swap.runs()) {
                RunCost alone = own.stream()
                        .filter(cost -> cost.needs()
                                .run()
                                .equals(change.before().needs().run()))
                        .findFirst()
                        .orElseThrow();
                if (change.after().purchase().proven()) {
                    assertThat(alone.purchase().cost().objective())
                            .isBetween(
                                    change.after().purchase().bound().subtract(new BigDecimal("0.01")),
                                    change.after().purchase().cost().objective().add(new BigDecimal("0.01")));
                }
                assertThat(alone.outlay()).isLessThanOrEqualTo(change.after().outlay());
            }
        }
    }

    @Test
    void a_blend_costs_on_its_own_what_it_is_said_to_cost() {
        for (Blend blend : FOUND.blends()) {
            List<RunCost> own = costsOf(blend.after().formula());
            for (RunChange change : blend.runs()) {
                RunCost alone = own.stream()
                        .filter(cost -> cost.needs()
                                .run()
                                .equals(change.before().needs().run()))
                        .findFirst()
                        .orElseThrow();
                assertThat(alone.purchase().proven()).isTrue();
                assertThat(alone.purchase().cost().objective())
                        .isLessThanOrEqualTo(change.after().purchase().cost().objective());
                if (change.after().purchase().proven()) {
                    assertThat(alone.outlay()).isCloseTo(change.after().outlay(), within(CENT));
                }
            }
        }
    }

    @Test
    void what_enters_a_blend_stays_inside_its_use_range_and_brings_no_new_charge() {
        assertThat(FOUND.blends())
                .isNotEmpty()
                .allSatisfy(blend -> blend.parts().stream()
                        .filter(part ->
                                part.before().signum() == 0 && part.after().signum() > 0)
                        .forEach(part -> {
                            Traits traits = part.material().traits();
                            assertThat(part.after().doubleValue())
                                    .isBetween(
                                            Kit.number(traits.useMin()) - ROUNDING,
                                            Kit.number(traits.useMax()) + ROUNDING);
                            assertThat(blend.before().portions())
                                    .anyMatch(portion ->
                                            portion.material().traits().charge().equals(traits.charge()));
                        }));
    }

    @Test
    void what_another_formula_holds_already_is_pointed_out() {
        for (Swap swap : FOUND.swaps()) {
            String candidate = swap.trial().to().name();
            boolean elsewhere = BOOK.formulas().values().stream()
                    .filter(formula -> !formula.equals(swap.formula()))
                    .flatMap(formula -> formula.lines().stream())
                    .anyMatch(line -> line.material().equals(candidate));

            assertThat(swap.cautions().stream().anyMatch(caution -> caution.startsWith("Already bought for")))
                    .as(candidate)
                    .isEqualTo(elsewhere);
        }
    }

    @Test
    void preservatives_are_never_blended() {
        SwapOutcome.Found asked = find(SwapOptions.usual().only("Face cream", null, "preservative"));

        assertThat(asked.blends()).isEmpty();
        assertThat(asked.studies())
                .singleElement()
                .satisfies(study -> assertThat(study.refusal()).contains("challenge"));
    }

    /** Sodium metabisulfite is listed as an antioxidant first, and as a preservative last. */
    @Test
    void what_preserves_as_well_is_never_blended_under_any_function() {
        Book rich = DemoBook.richCream();
        Formula cream = rich.formula("Face cream").orElseThrow();
        Formula serum = new Formula(
                cream.name(),
                List.of(
                        new Formula.Line("A", "Water", null, null, Origin.NONE),
                        new Formula.Line("A", "Ascorbic acid", Figure.of("0.01"), null, Origin.NONE),
                        new Formula.Line("A", "Sodium metabisulfite", Figure.of("0.002"), null, Origin.NONE)),
                cream.batching(),
                Origin.NONE);
        Book book = rich.withFormula(serum);
        SwapOutcome.Found all = find(book, SwapOptions.usual());
        SwapOutcome.Found asked = find(book, SwapOptions.usual().only(cream.name(), null, "antioxidant"));

        assertThat(all.studies()).noneMatch(BlendStudy::isSought);
        assertThat(asked.studies())
                .noneMatch(BlendStudy::isSought)
                .anyMatch(study -> study.refusal().contains("challenge"));
        assertThat(FOUND.blends())
                .allSatisfy(blend -> assertThat(blend.parts())
                        .noneMatch(part -> part.material().functions().contains("preservative")));
    }

    private static List<RunCost> costsOf(Formula formula) {
        CostOutcome outcome = new CostRuns(new CheapestPlan(), SearchLimits.usual())
                .cost(BOOK.withFormula(formula)
                        .withRuns(BOOK.runs().stream()
                                .filter(run ->
                                        RunNeeds.of(BOOK, run).formula().name().equals(formula.name()))
                                .toList()));
        return ((CostOutcome.Costed) outcome).runs();
    }

    @Test
    void swapping_back_gives_the_formula_again() {
        for (Swap swap : FOUND.swaps()) {
            Recipe changed = Recipe.of(BOOK, swap.trial().after().formula());
            Formula back = new Dosing(changed)
                    .of(swap.trial().line(), swap.trial().from())
                    .after()
                    .formula();

            for (int line = 0; line < back.lines().size(); line++) {
                assertThat(back.lines().get(line).material())
                        .isEqualTo(swap.formula().lines().get(line).material());
                assertThat(back.levelOf(back.lines().get(line)).doubleValue())
                        .isCloseTo(
                                swap.formula()
                                        .levelOf(swap.formula().lines().get(line))
                                        .doubleValue(),
                                within(BALANCE));
            }
        }
    }

    @Test
    void an_applied_swap_is_a_formula_of_its_own() {
        Swap first = FOUND.swaps().get(0);
        Formula applied =
                AppliedSwap.of(BOOK, first, 1, AppliedSwap.Earlier.NONE).formula();

        assertThat(applied.name()).isEqualTo(first.formula().name() + " swap 1");
        assertThat(applied.batching()).isEqualTo(first.formula().batching());
        assertThat(BOOK.withFormula(applied).formulas()).hasSize(BOOK.formulas().size() + 1);
        assertThat(BOOK.formula(first.formula().name())).contains(first.formula());
    }

    @Test
    void an_applied_blend_takes_a_name_that_no_formula_has() {
        Blend blend = FOUND.blends().get(0);
        Formula applied =
                AppliedSwap.of(BOOK, blend, 1, AppliedSwap.Earlier.NONE).formula();
        Formula again = AppliedSwap.of(BOOK.withFormula(applied), blend, 1, AppliedSwap.Earlier.NONE)
                .formula();

        assertThat(applied.name()).isEqualTo(blend.formula().name() + " blend 1");
        assertThat(again.name()).isEqualTo(blend.formula().name() + " blend 1 (2)");
        assertThat(applied.lines()).isEqualTo(blend.after().formula().lines());
    }

    @Test
    void filters_leave_only_what_is_asked_for() {
        SwapOutcome.Found one = find(SwapOptions.usual()
                .only("Dry body oil", "Dicaprylyl ether", null)
                .withBlends(false));

        assertThat(one.swaps()).isNotEmpty().allSatisfy(swap -> {
            assertThat(swap.formula().name()).isEqualTo("Dry body oil");
            assertThat(swap.trial().from().name()).isEqualTo("Dicaprylyl ether");
        });
        assertThat(one.blends()).isEmpty();
    }

    @Test
    void the_same_book_gives_the_same_list() {
        List<String> once = describe(FOUND);

        assertThat(describe(find(SwapOptions.usual()))).isEqualTo(once);
    }

    private static List<String> describe(SwapOutcome.Found found) {
        return found.swaps().stream()
                .map(swap -> swap.formula().name()
                        + swap.trial().line()
                        + swap.trial().to().name()
                        + swap.runs().stream()
                                .map(run -> run.total().toPlainString())
                                .toList())
                .toList();
    }

    @Test
    void a_blend_keeps_its_total_and_its_bounds() {
        assertThat(FOUND.blends()).isNotEmpty().allSatisfy(blend -> {
            BigDecimal before = BigDecimal.ZERO;
            BigDecimal after = BigDecimal.ZERO;
            for (Blend.Part part : blend.parts()) {
                before = before.add(part.before());
                after = after.add(part.after());
            }
            assertThat(after).isEqualByComparingTo(before);
            assertThat(blend.straightLineAfter()).isLessThanOrEqualTo(blend.straightLineBefore());
            long entering = blend.parts().stream()
                    .filter(part -> part.before().signum() == 0)
                    .count();
            long leaving = blend.parts().stream()
                    .filter(part -> part.after().signum() == 0)
                    .count();
            assertThat(entering).isLessThanOrEqualTo(2);
            assertThat(leaving).isLessThanOrEqualTo(2);
            assertThat(blend.after()
                            .formula()
                            .stated()
                            .subtract(BigDecimal.ONE)
                            .abs()
                            .doubleValue())
                    .isLessThan(blend.after().formula().hasBalanceLine() ? 1 : Formula.TOLERANCE.doubleValue());
        });
    }
}
