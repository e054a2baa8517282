package perkilo.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.origin.Finding;
import perkilo.report.cost.RunTable;

/** Costs as JSON. */
public final class CostJson {

    private CostJson() {}

    /** Costs with everything that was found. */
    public static ObjectNode of(CostOutcome.Costed costed, List<Finding> findings) {
        ObjectNode answer = Json.object()
                .put("homeCurrency", costed.book().settings().home().getCurrencyCode())
                .put("costingDate", costed.book().settings().costingDate().toString());
        answer.set("runs", TableJson.array(new RunTable(costed).inJson()));
        answer.set("reading", Json.reading(costed.book().account()));
        answer.set("messages", Json.messages(findings));
        return answer;
    }
}
