package perkilo.page.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import perkilo.costing.CostOutcome;
import perkilo.costing.RunCost;
import perkilo.decision.Changeable;
import perkilo.decision.Changeables;
import perkilo.desk.CostAnswer;
import perkilo.json.CostJson;
import perkilo.json.Json;
import perkilo.json.TableJson;
import perkilo.names.Names;
import perkilo.report.cost.Glance;
import perkilo.report.cost.GlanceTable;

/** The costs of a workbook: what the command answers, a page for each product, and what can be changed. */
public final class CostView {

    private static final Map<Changeable.Kind, String> GROUPS = Map.of(
            Changeable.Kind.UNITS, "Units",
            Changeable.Kind.WAGE, "Work",
            Changeable.Kind.PRICE, "Prices",
            Changeable.Kind.SUPPLIER, "Suppliers",
            Changeable.Kind.RATE, "Rates",
            Changeable.Kind.FREIGHT, "Charges",
            Changeable.Kind.FILL, "Losses and fill");

    private CostView() {}

    /** The view of an answer. */
    public static ObjectNode of(CostAnswer answer) {
        ObjectNode view = Json.object();
        view.set("answer", answer(answer));
        if (answer instanceof CostAnswer.Costed costed) {
            view.set("glance", TableJson.array(GlanceTable.JSON.with(Glance.of(costed.costed()))));
            view.set("controls", Json.array(Changeables.of(costed.costed()), CostView::control));
            view.set("curve", curve(costed.costed(), List.of()));
            view.put("decides", true);
        }
        return view;
    }

    /** The answer as the command prints it. */
    public static ObjectNode answer(CostAnswer answer) {
        return answer instanceof CostAnswer.Costed costed
                ? CostJson.of(costed.costed(), costed.decisions(), costed.findings())
                : Json.onlyMessages(answer.account(), answer.findings());
    }

    private static ObjectNode control(Changeable one) {
        return Json.object()
                .put("what", one.what())
                .put("label", one.what())
                .put("kind", one.kind().name().toLowerCase(Locale.ROOT))
                .put("value", Json.amountOrNull(one.value()))
                .put("unit", one.unit())
                .put("group", GROUPS.get(one.kind()))
                .put("byPercent", one.byPercent());
    }

    /**
     * What a unit costs by run size.
     *
     * @param more costs of sizes between those of the person
     */
    public static ArrayNode curve(CostOutcome.Costed costed, List<RunCost> more) {
        ArrayNode curve = Json.object().putArray("curve");
        for (Glance product : Glance.of(costed)) {
            ArrayNode points =
                    curve.addObject().put("product", product.product()).putArray("points");
            product.sizes().forEach(run -> points.add(point(run, true)));
            more.stream()
                    .filter(run -> Names.key(run.needs().name()).equals(Names.key(product.product())))
                    .forEach(run -> points.add(point(run, false)));
        }
        return curve;
    }

    private static ObjectNode point(RunCost run, boolean own) {
        return Json.object()
                .put("units", Json.amountOrNull(run.needs().units()))
                .put("unitCost", Json.amountOrNull(run.unitCost().orElse(null)))
                .put("own", own);
    }

    /** Whether any product can be measured against a target. */
    public static boolean hasTarget(CostOutcome.Costed costed) {
        return costed.book().products().values().stream()
                .anyMatch(product -> product.targetRetailPrice() != null && product.targetMargin() != null);
    }
}
