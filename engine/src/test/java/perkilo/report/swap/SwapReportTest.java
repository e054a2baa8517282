package perkilo.report.swap;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.json.SwapJson;
import perkilo.model.Formula;
import perkilo.origin.Origin;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.purchasing.search.quick.QuickPlanner;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.swaps.AppliedSwap;
import perkilo.swaps.Kit;
import perkilo.swaps.SwapFinder;
import perkilo.swaps.SwapOptions;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.label.LabelChange;
import perkilo.swaps.lp.OjalgoSolver;
import perkilo.swaps.next.BenchBatch;
import perkilo.swaps.next.NextSteps;
import perkilo.swaps.trial.Recipe;

/** What a person and a script get to see of swaps. */
final class SwapReportTest {

    private static final SwapOutcome.Found FOUND = (SwapOutcome.Found)
            new SwapFinder(new QuickPlanner(new CheapestPlan()), SearchLimits.usual(), new OjalgoSolver())
                    .find(Kit.demo(), SwapOptions.usual().only("Face cream", "Octyldodecanol", null));

    private static final NextSteps NEXT = NextSteps.of(
            FOUND, new QuickPlanner(new CheapestPlan()), SearchLimits.usual(), null, BenchBatch.USUAL_GRAMS);

    @Test
    void the_sheets_are_in_order_and_have_the_cautions() {
        Report report = SwapReport.of(FOUND, NEXT, List.of());

        assertThat(report.sheets())
                .extracting(ResultSheet::name)
                .containsExactly(
                        "Swaps",
                        "Blend",
                        "What a trial costs",
                        "Same swap in all formulas",
                        "Ingredient list",
                        "Emollients compared",
                        "Messages");
        assertThat(texts(report.sheets().get(0)))
                .contains("A swap is a candidate for the bench, not a release.", "Not offered, and why");
        assertThat(report.sheets().get(0).charts()).hasSize(1);
        assertThat(report.sheets().get(0).layout().filter()).isNotNull();
    }

    @Test
    void who_is_left_out_of_a_blend_is_named_with_the_reason() {
        String sheet = String.join(
                " ", texts(SwapReport.of(FOUND, NEXT, List.of()).sheets().get(1)));
        JsonNode studies = SwapJson.of(FOUND, NEXT, List.of(), Optional.empty()).get("blendStudies");

        assertThat(FOUND.studies()).isNotEmpty();
        for (int i = 0; i < FOUND.studies().size(); i++) {
            JsonNode json = studies.get(i).get("leftOut");
            Map<String, List<String>> leftOut = FOUND.studies().get(i).leftOut();
            assertThat(leftOut).isNotEmpty();
            assertThat(json).hasSize(leftOut.size());
            leftOut.forEach((why, names) -> {
                assertThat(sheet).contains(String.join(", ", names) + ": " + why);
                assertThat(StreamSupport.stream(json.get(why).spliterator(), false)
                                .map(JsonNode::asText))
                        .containsExactlyElementsOf(names);
            });
        }
    }

    /** A tab's name takes 31 letters and not all of them. */
    @ParameterizedTest
    @CsvSource({
        "Face cream swap 3, Face cream swap 3",
        "Cream 50/50 [new]: a* blend 12, Cream 50-50 -new-- a- blend 12",
        "A very rich night cream for dry skin blend 12, A very rich night cre… blend 12",
        "A very rich night cream for dry skin swap 1 (2), A very rich night c… swap 1 (2)",
        "Crème d’hiver blend 1, Crème d’hiver blend 1"
    })
    void a_new_formula_keeps_its_whole_name_and_gets_a_tab_that_may_be_called_so(String name, String tab) {
        Formula cream = Kit.demo().formula("Face cream").orElseThrow();
        Formula applied = new Formula(name, cream.lines(), cream.batching(), Origin.NONE);
        Recipe recipe = Recipe.of(Kit.demo(), cream);
        AppliedSwap swap = new AppliedSwap(
                applied, cream, List.of(), "identity", LabelChange.of(recipe, recipe), List.of(), List.of());

        Report report = SwapReport.of(FOUND, NEXT, List.of(), Optional.of(new SwapReport.Applied(swap, List.of())));
        ResultSheet sheet = report.sheets().get(report.sheets().size() - 1);

        assertThat(sheet.name()).isEqualTo(tab).hasSizeLessThanOrEqualTo(31);
        assertThat(report.given()).containsExactly(tab);
        assertThat(texts(sheet).stream().filter(name::equals))
                .hasSize(cream.lines().size() + 1);
    }

    private static List<String> texts(ResultSheet sheet) {
        return sheet.cells().values().stream()
                .flatMap(row -> row.values().stream())
                .map(ResultSheet.Cell::content)
                .filter(ResultSheet.Text.class::isInstance)
                .map(content -> ((ResultSheet.Text) content).text())
                .toList();
    }

    @Test
    void the_answer_for_scripts_has_the_agreed_fields() {
        ObjectNode json = SwapJson.of(FOUND, NEXT, List.of(), Optional.empty());
        JsonNode swap = json.get("swaps").get(0);

        assertThat(StreamSupport.stream(((Iterable<String>) () -> swap.fieldNames()).spliterator(), false))
                .contains(
                        "formula",
                        "phase",
                        "material",
                        "candidate",
                        "role",
                        "closeness",
                        "closenessBest",
                        "gates",
                        "newPercent",
                        "perKgChange",
                        "unitCostChange",
                        "outlayChange",
                        "cautions");
        assertThat(swap.get("gates").get(0).get("gate").asText()).isEqualTo("role");
        assertThat(swap.get("gates").get(0).get("ok").asBoolean()).isTrue();
        assertThat(swap.get("unitCostChange").has("500")).isTrue();
        assertThat(new BigDecimal(swap.get("outlayChange").get("2000").asText()))
                .isEqualByComparingTo(
                        FOUND.swaps().get(0).runs().get(1).outlay().setScale(6, RoundingMode.HALF_UP));
        assertThat(json.has("missingFacts")).isTrue();
        assertThat(json.has("notCompared")).isTrue();
        assertThat(json.has("blends")).isTrue();
        assertThat(json.has("messages")).isTrue();
    }
}
