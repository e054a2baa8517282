package perkilo.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.decision.TargetCost;
import perkilo.origin.Finding;
import perkilo.report.decision.TargetTable;
import perkilo.swaps.Cautions;

/** Target costs as JSON. */
public final class TargetJson {

    private TargetJson() {}

    /** Target costs with everything that was found. */
    public static ObjectNode of(CostOutcome.Costed costed, List<TargetCost> targets, List<Finding> findings) {
        String home = costed.book().settings().home().getCurrencyCode();
        ObjectNode answer = Json.object()
                .put("homeCurrency", home)
                .put("costingDate", costed.book().settings().costingDate().toString());
        answer.set("products", TableJson.array(new TargetTable(home).inJson(targets)));
        answer.set("cautions", Json.texts(Cautions.ALWAYS));
        answer.set("reading", Json.reading(costed.book().account()));
        answer.set("messages", Json.messages(findings));
        return answer;
    }
}
