package perkilo.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Objects;
import perkilo.costing.CostOutcome;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.origin.Finding;
import perkilo.report.cost.RunTable;
import perkilo.sheet.table.Table;

/** Costs as JSON. */
public final class CostJson {

    private CostJson() {}

    /** Costs with everything that was found. */
    public static ObjectNode of(CostOutcome.Costed costed, List<Finding> findings) {
        ObjectNode answer = Json.object()
                .put("homeCurrency", costed.book().settings().home().getCurrencyCode())
                .put("costingDate", costed.book().settings().costingDate().toString());
        answer.set("runs", runs(costed));
        answer.set("reading", Json.reading(costed.book().account()));
        answer.set("messages", Json.messages(findings));
        return answer;
    }

    /** The runs in the order of the book, those that are not complete with what is known of them. */
    private static ArrayNode runs(CostOutcome.Costed costed) {
        RunTable columns = new RunTable(costed);
        Table<RunCost> complete = columns.inJson().table();
        Table<RunAnswer> incomplete = columns.incompleteInJson();
        return Json.array(
                costed.answers(),
                run -> run.isComplete()
                        ? TableJson.object(complete, Objects.requireNonNull(run.cost()))
                        : TableJson.object(incomplete, run));
    }
}
