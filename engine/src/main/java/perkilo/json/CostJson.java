package perkilo.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Objects;
import perkilo.costing.CostOutcome;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.decision.CostMoves;
import perkilo.decision.RiskBand;
import perkilo.decision.ScenarioCosts;
import perkilo.decision.SizeAdvice;
import perkilo.decision.WhatMoves;
import perkilo.origin.Finding;
import perkilo.report.cost.RunTable;
import perkilo.report.decision.BandTable;
import perkilo.report.decision.Decisions;
import perkilo.report.decision.ScenarioTable;
import perkilo.report.decision.ShareTable;
import perkilo.report.decision.SizeTable;
import perkilo.report.decision.SwingTable;
import perkilo.sheet.table.Table;

/** Costs as JSON. */
public final class CostJson {

    private CostJson() {}

    /** Costs with everything that was found, and what they depend on while the purchases are kept. */
    public static ObjectNode of(CostOutcome.Costed costed, List<Finding> findings) {
        return of(costed, Decisions.usual(WhatMoves.kept(costed)), findings);
    }

    /**
     * Costs with everything that was found.
     *
     * @param decisions what was found out to decide by
     */
    public static ObjectNode of(CostOutcome.Costed costed, Decisions decisions, List<Finding> findings) {
        ObjectNode answer = Json.object()
                .put("homeCurrency", costed.book().settings().home().getCurrencyCode())
                .put("costingDate", costed.book().settings().costingDate().toString());
        answer.set("runs", runs(costed));
        ArrayNode shares = answer.putArray("shares");
        ArrayNode sensitivity = answer.putArray("sensitivity");
        for (CostMoves run : decisions.moves()) {
            shares.addAll(TableJson.array(new ShareTable(run.cost()).inJson(run.shares())));
            sensitivity.addAll(TableJson.array(new SwingTable(run.cost()).inJson(run.swings())));
        }
        ArrayNode bands = answer.putArray("band");
        ArrayNode without = answer.putArray("noBand");
        for (RiskBand band : decisions.bands()) {
            if (band.figures() == null) {
                without.addAll(TableJson.array(BandTable.missingInJson(band)));
            } else {
                bands.addAll(TableJson.array(BandTable.inJson(band)));
            }
        }
        List<SizeAdvice> sizes = decisions.sizes();
        if (sizes != null) {
            answer.set("sizes", Json.array(sizes, CostJson::sizes));
        }
        ScenarioCosts scenarios = decisions.scenarios();
        if (scenarios != null) {
            answer.set("scenarios", Json.array(scenarios.scenarios(), one -> scenario(scenarios, one)));
        }
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

    private static ObjectNode sizes(SizeAdvice advice) {
        SizeAdvice.Limit limit = advice.limit();
        ObjectNode json = Json.object()
                .put("product", advice.product().name())
                .put("smallest", Json.amountOrNull(advice.smallest().needs().units()))
                .put("largest", Json.amountOrNull(advice.largest().needs().units()))
                .put("largestAllowed", limit == null ? null : Long.toString(limit.units()))
                .put("limitedBy", limit == null ? null : limit.material())
                .put("exact", advice.isExact());
        String home = advice.smallest().home().getCurrencyCode();
        json.set("steps", TableJson.array(new SizeTable(home).inJson(advice)));
        return json;
    }

    private static ObjectNode scenario(ScenarioCosts costs, ScenarioCosts.Costed one) {
        ObjectNode json = Json.object().put("name", one.scenario().name());
        json.set("changes", Json.texts(one.scenario().changes()));
        json.set("runs", TableJson.array(ScenarioTable.inJson(costs, one)));
        return json;
    }
}
