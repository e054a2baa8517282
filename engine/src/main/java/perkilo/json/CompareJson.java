package perkilo.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.decision.PlanAndActual;
import perkilo.decision.Variance;
import perkilo.decision.Variances;
import perkilo.origin.Finding;
import perkilo.report.decision.ActualTable;
import perkilo.report.decision.VarianceTable;

/** Why costs changed, as JSON. */
public final class CompareJson {

    private CompareJson() {}

    /**
     * The parts of each run and of all runs together, with everything that was found.
     *
     * @param actuals what each run really took; none where two costings are compared
     */
    public static ObjectNode of(
            CostOutcome.Costed after, Variances variances, List<PlanAndActual> actuals, List<Finding> findings) {
        String home = after.book().settings().home().getCurrencyCode();
        ObjectNode answer = Json.object().put("homeCurrency", home);
        answer.set("products", TableJson.array(new VarianceTable(home).inJson(variances.runs())));
        ObjectNode all = answer.putObject("all")
                .put("before", Json.amount(variances.wholeBefore()))
                .put("after", Json.amount(variances.wholeAfter()));
        ObjectNode parts = all.putObject("parts");
        for (Variance.Part part : Variance.Part.values()) {
            parts.put(part.words(), Json.amount(variances.whole(part)));
        }
        if (!actuals.isEmpty()) {
            answer.set("actuals", Json.array(actuals, run -> ofRun(home, run)));
        }
        answer.set("notCompared", Json.texts(variances.unmatched()));
        answer.set("reading", Json.reading(after.book().account()));
        answer.set("messages", Json.messages(findings));
        return answer;
    }

    private static ObjectNode ofRun(String home, PlanAndActual run) {
        ObjectNode json = Json.object()
                .put("run", run.name())
                .put("product", run.variance().needs().name())
                .put("units", Json.amountOrNull(run.variance().needs().units()))
                .put("made", Json.amount(run.made()));
        json.set("items", TableJson.array(new ActualTable(home).inJson(run)));
        return json;
    }
}
