package perkilo.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import perkilo.report.order.WhyTables;

/** The alternatives to a plan of orders and their costs, as JSON. */
final class WhyJson {

    private WhyJson() {}

    static ObjectNode of(WhyTables why) {
        ObjectNode json = Json.object();
        json.set("nextBest", TableJson.array(why.nextBest()));
        json.set("withoutSupplier", TableJson.array(why.withoutSupplier()));
        json.set("minimums", TableJson.array(why.minimums()));
        json.set("shifts", TableJson.array(why.shifts()));
        json.set("morePacks", TableJson.array(why.morePacks()));
        return json.put("notAsked", why.notAsked());
    }
}
