package perkilo.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Objects;
import perkilo.costing.Listing;
import perkilo.offers.Offer;
import perkilo.orderplan.Difference;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.Reasons;
import perkilo.orderplan.SupplierOrder;

/** Why a plan of orders is as it is, as JSON. */
final class WhyJson {

    private final OrderPlan plan;

    WhyJson(OrderPlan plan) {
        this.plan = plan;
    }

    ObjectNode of(Reasons reasons) {
        ObjectNode json = Json.object();
        json.set("nextBest", Json.array(reasons.items(), this::nextBest));
        json.set("withoutSupplier", Json.array(reasons.suppliers(), WhyJson::without));
        json.set("minimums", Json.array(reasons.minimums(), WhyJson::minimum));
        json.set("shifts", Json.array(reasons.shifts(), this::shift));
        json.set("morePacks", Json.array(reasons.lines(), this::morePacks));
        return json.put("notAsked", reasons.leftOut());
    }

    private ObjectNode nextBest(Reasons.NextBest best) {
        ObjectNode json =
                Json.object().put("item", plan.basis().items().get(best.item()).name());
        json.set("chosen", packs(best.chosen()));
        json.set("instead", Json.array(best.instead(), WhyJson::packs));
        return with(json, best.difference());
    }

    private static ObjectNode packs(Reasons.Packs packs) {
        return offer(packs.listing()).put("packs", packs.packs());
    }

    private static ObjectNode offer(Listing listing) {
        Offer offer = listing.offer();
        return Json.object()
                .put("supplier", listing.supplier().name())
                .put("item", offer.item())
                .put("packSize", Json.amount(offer.packSize().value()))
                .put("packUnit", offer.packUnit().symbol())
                .put("quotedOn", Objects.toString(offer.quotedOn(), null));
    }

    private static ObjectNode without(Reasons.Without without) {
        ObjectNode json = Json.object()
                .put("supplier", without.supplier().name())
                .put("orders", without.orders())
                .put("landedHome", Json.amount(without.landed()));
        return with(json, without.difference());
    }

    private static ObjectNode minimum(Reasons.Minimum minimum) {
        Listing listing = minimum.listing();
        ObjectNode json = Json.object()
                .put("supplier", minimum.supplier().name())
                .put("minimum", minimum.kind().words())
                .put("stated", minimum.stated())
                .put("saves", Json.amount(minimum.saves()))
                .put("cashTiedUp", Json.amount(minimum.cash()))
                .put("proven", minimum.proven());
        json.set("offer", listing == null ? null : offer(listing));
        return json;
    }

    private ObjectNode shift(Reasons.Shift shift) {
        ObjectNode json = order(plan.orders().get(shift.order()))
                .put("months", shift.months())
                .put("joins", shift.joins());
        return with(json, shift.difference());
    }

    private ObjectNode morePacks(Reasons.MorePacks more) {
        ObjectNode json = order(plan.orders().get(more.order()));
        json.set("offer", offer(more.listing()));
        json.put("packs", more.line().line().packs())
                .put("wouldBe", more.packs())
                .put("nextBreak", more.toNextBreak());
        return with(json, more.difference());
    }

    private static ObjectNode order(SupplierOrder order) {
        return Json.object()
                .put("supplier", order.supplier().name())
                .put("neededBy", order.neededBy().toString());
    }

    private static ObjectNode with(ObjectNode json, Difference difference) {
        if (difference instanceof Difference.Costs costs) {
            return json.put("possible", true)
                    .put("costsMore", Json.amount(costs.cost()))
                    .put("moreCash", Json.amount(costs.cash()))
                    .put("proven", costs.proven());
        }
        if (difference instanceof Difference.NotPossible not) {
            return json.put("possible", false).put("why", not.why());
        }
        return json.putNull("possible");
    }
}
