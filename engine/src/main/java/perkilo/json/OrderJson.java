package perkilo.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import perkilo.costing.Listing;
import perkilo.offers.Offer;
import perkilo.orderplan.HorizonProblem;
import perkilo.orderplan.LotUse;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.Reasons;
import perkilo.orderplan.StockFlow;
import perkilo.orderplan.SupplierOrder;
import perkilo.origin.Finding;
import perkilo.purchasing.LineCost;

/** Orders as JSON. */
public final class OrderJson {

    private final OrderPlan plan;

    private OrderJson(OrderPlan plan) {
        this.plan = plan;
    }

    /**
     * Orders with everything that was found.
     *
     * @param reasons why they are so; {@link Reasons#NONE} where that was not asked
     */
    public static ObjectNode of(OrderOutcome.Planned planned, Reasons reasons, List<Finding> findings) {
        OrderPlan plan = planned.plan();
        OrderJson json = new OrderJson(plan);
        String home = planned.book().settings().home().getCurrencyCode();
        ObjectNode answer = Json.object()
                .put("homeCurrency", home)
                .put("costingDate", planned.book().settings().costingDate().toString())
                .put("answer", plan.answer(home));
        answer.set("months", Json.texts(plan.months()));
        answer.set("orders", Json.array(plan.orders(), json::order));
        answer.set("stock", Json.array(plan.stock(), json::stock));
        answer.set("plan", json.plan());
        answer.set("why", reasons.isEmpty() ? null : new WhyJson(plan).of(reasons));
        answer.set("messages", Json.messages(findings));
        return answer;
    }

    private ObjectNode order(SupplierOrder order) {
        ObjectNode json = Json.object()
                .put("supplier", order.supplier().name())
                .put("orderBy", order.orderBy().toString())
                .put("neededBy", order.neededBy().toString())
                .put(
                        "leadTimeDays",
                        order.supplier().leadTimeDays() == null
                                ? null
                                : Integer.valueOf(HorizonProblem.leadDays(order.supplier())))
                .put("currency", order.supplier().currency().getCurrencyCode());
        List<Integer> lines =
                IntStream.range(0, order.cost().lines().size()).boxed().toList();
        json.set(
                "lines",
                Json.array(
                        lines,
                        index -> line(
                                order.cost().lines().get(index),
                                order.listings().get(index))));
        json.put("goods", Json.amount(order.cost().goods()));
        json.put("charges", Json.amount(order.cost().charges()));
        json.set("chargesByKind", charges(order));
        json.put("landedHome", Json.amount(order.landed()));
        return json;
    }

    private static ObjectNode charges(SupplierOrder order) {
        return Json.object()
                .put("smallOrderCharge", Json.amount(order.cost().smallOrderCharge()))
                .put("insurance", Json.amount(order.cost().insurance()))
                .put("freight", Json.amount(order.cost().freight()))
                .put("duty", Json.amount(order.cost().duty()));
    }

    private ObjectNode line(LineCost line, Listing listing) {
        Offer offer = listing.offer();
        Offer.PriceBreak price = offer.breaks().get(line.tier());
        int item = plan.basis().problem().quotes().get(line.line().quote()).item();
        return Json.object()
                .put("item", plan.basis().items().get(item).name())
                .put("packSize", Json.amount(offer.packSize().value()))
                .put("packUnit", offer.packUnit().symbol())
                .put("packs", line.line().packs())
                .put("quantity", Json.amount(line.quantity()))
                .put("unit", plan.basis().items().get(item).item().unit())
                .put("price", Json.amount(price.price().value()))
                .put("pricePer", price.per() == null ? "pack" : price.per().symbol())
                .put("currency", offer.currency().getCurrencyCode())
                .put("quotedOn", Objects.toString(offer.quotedOn(), null))
                .put("goods", Json.amount(line.goodsQuoted()))
                .put("landedHome", Json.amount(line.landed()));
    }

    private ObjectNode stock(StockFlow flow) {
        ObjectNode json = Json.object()
                .put("item", flow.item().name())
                .put("unit", flow.item().item().unit());
        List<Integer> periods = IntStream.range(0, plan.months().size()).boxed().toList();
        json.set("months", Json.array(periods, period -> month(flow, period)));
        json.set("onOrder", Json.array(flow.onOrder(), this::onOrder));
        json.set("leftovers", Json.array(flow.leftovers(plan.basis().horizon()), OrderJson::leftover));
        return json;
    }

    private ObjectNode month(StockFlow flow, int period) {
        StockFlow.Month month = flow.months().get(period);
        return Json.object()
                .put("month", plan.months().get(period).toString())
                .put("needed", Json.amount(flow.item().needed().get(period)))
                .put("opening", Json.amount(month.opening()))
                .put("delivered", Json.amount(month.delivered()))
                .put("bought", Json.amount(month.bought()))
                .put("used", Json.amount(month.used()))
                .put("expired", Json.amount(month.expired()))
                .put("closing", Json.amount(month.closing()));
    }

    /** Goods that were on order at the start; without a month where they come after the last that is planned for. */
    private ObjectNode onOrder(LotUse lot) {
        return Json.object()
                .put("quantity", Json.amount(lot.quantity()))
                .put("expectedOn", Objects.toString(lot.expected(), null))
                .put(
                        "usableFrom",
                        lot.arrivesIn(plan.basis().horizon())
                                ? plan.months().get(lot.arrival()).toString()
                                : null)
                .put("usableUntil", Objects.toString(lot.lastDay(), null))
                .put("left", Json.amount(lot.left()));
    }

    private static ObjectNode leftover(LotUse lot) {
        return Json.object()
                .put("quantity", Json.amount(lot.left()))
                .put("usableUntil", lot.lastDay() == null ? null : lot.lastDay().toString())
                .put("bought", lot.isBought());
    }

    private ObjectNode plan() {
        BigDecimal gap = plan.gap();
        return Json.object()
                .put("outlay", Json.amount(plan.outlay()))
                .put("holding", Json.amount(plan.cost().holding()))
                .put("credit", Json.amount(plan.cost().credit()))
                .put("objective", Json.amount(plan.cost().objective()))
                .put("bound", Json.amount(plan.bound()))
                .put("gap", Json.amount(gap))
                .put("proven", plan.proven());
    }
}
