package perkilo.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.costing.RunCost;
import perkilo.model.Formula;
import perkilo.origin.Finding;
import perkilo.report.swap.BenchSheet;
import perkilo.report.swap.BlendTable;
import perkilo.report.swap.EmollientTable;
import perkilo.report.swap.KeptLineTable;
import perkilo.report.swap.MissingFactTable;
import perkilo.report.swap.RejectedTable;
import perkilo.report.swap.SameSwapTable;
import perkilo.report.swap.StudyTable;
import perkilo.report.swap.SwapTable;
import perkilo.report.swap.TrialCostTable;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;
import perkilo.swaps.Cautions;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.next.NextSteps;

/**
 * Swaps as JSON.
 *
 * <p>{@code perKgChange} belongs to the first run of the formula; {@code perKgChanges} has all runs. Runs are keyed by
 * their units, or by their kilograms for bulk. Percentages are texts such as {@code "2.5"}. A {@code number} is the
 * value for {@code --apply}; {@code applied} is the name of the formula that was written with it.
 */
public final class SwapJson {

    /** What a run costs now. */
    private static final Table<RunCost> BASE = Table.of(
            Column.<RunCost>of("rawMaterialPerKg", "").json(RunCost::rawMaterialPerKg),
            Column.<RunCost>of("unitCost", "").json(run -> run.unitCost().orElse(null)),
            Column.<RunCost>of("outlay", "").json(RunCost::outlay));

    private SwapJson() {}

    /**
     * Swaps with everything that was found.
     *
     * @param next what a formulator asks for then
     * @param applied the new formula that was written with one of them; empty if none was
     */
    public static ObjectNode of(
            SwapOutcome.Found found, NextSteps next, List<Finding> findings, Optional<Formula> applied) {
        ObjectNode answer = Json.object()
                .put("homeCurrency", found.book().settings().home().getCurrencyCode())
                .put("costingDate", found.book().settings().costingDate().toString());
        answer.set("base", base(found.base()));
        answer.set("swaps", TableJson.array(new SwapTable(found).inJson()));
        answer.set("rejected", TableJson.array(new RejectedTable(found).inJson()));
        answer.set("missingFacts", TableJson.array(new MissingFactTable(found).inJson()));
        answer.set("notCompared", TableJson.array(new KeptLineTable(found).inJson()));
        answer.set("blends", TableJson.array(new BlendTable(found).filled()));
        answer.set("blendStudies", TableJson.array(new StudyTable(found).inJson()));
        answer.put("benchGrams", Json.amount(next.benchGrams()));
        answer.set("trialCosts", TableJson.array(new TrialCostTable(found, next).inJson()));
        answer.set("sameSwapInAllFormulas", TableJson.array(new SameSwapTable(found, next).inJson()));
        answer.set("emollients", emollients(found, next));
        ArrayNode benches = answer.putArray("benches");
        next.benches()
                .forEach(batch -> benches.addObject()
                        .put("formula", batch.formula().name())
                        .set("weights", TableJson.array(BenchSheet.inJson(batch))));
        answer.put("applied", applied.map(Formula::name).orElse(null));
        answer.set("cautions", Json.texts(Cautions.ALWAYS));
        answer.set("reading", Json.reading(found.book().account()));
        answer.set("messages", Json.messages(findings));
        return answer;
    }

    private static JsonNode emollients(SwapOutcome.Found found, NextSteps next) {
        return next.emollients().runs().isEmpty()
                ? Json.object().arrayNode()
                : TableJson.array(new EmollientTable(found, next.emollients()).inJson());
    }

    private static ObjectNode base(Map<String, Map<String, RunCost>> base) {
        ObjectNode all = Json.object();
        base.forEach((formula, runs) -> {
            ObjectNode ofFormula = all.putObject(formula);
            runs.forEach((key, run) -> ofFormula.set(key, TableJson.object(BASE, run)));
        });
        return all;
    }
}
