package perkilo.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.CurrencyUnit;
import perkilo.costing.CostOutcome;
import perkilo.costing.FillTarget;
import perkilo.costing.ItemCost;
import perkilo.costing.Listing;
import perkilo.costing.PriceLadder;
import perkilo.costing.Purchase;
import perkilo.costing.RunCost;
import perkilo.costing.RunNeeds;
import perkilo.offers.Offer;
import perkilo.origin.Finding;
import perkilo.purchasing.LineCost;
import perkilo.units.Conversion;

/** Costs as JSON. */
public final class CostJson {

    private static final BigDecimal GRAMS = new BigDecimal(1000);

    private final Map<String, Conversion> currencies = new LinkedHashMap<>();

    private CostJson(CostOutcome.Costed costed) {
        CurrencyUnit home = costed.book().settings().home();
        currencies.put(home.getCurrencyCode(), new Conversion(home, home, List.of()));
        for (CurrencyUnit other : costed.book().settings().reportCurrencies()) {
            currencies.put(other.getCurrencyCode(), costed.market().conversion(home, other));
        }
    }

    /** Costs with everything that was found. */
    public static ObjectNode of(CostOutcome.Costed costed, List<Finding> findings) {
        CostJson json = new CostJson(costed);
        ObjectNode answer = Json.object()
                .put("homeCurrency", costed.book().settings().home().getCurrencyCode())
                .put("costingDate", costed.book().settings().costingDate().toString());
        answer.set("runs", Json.array(costed.runs(), json::run));
        answer.set("messages", Json.messages(findings));
        return answer;
    }

    private ObjectNode run(RunCost cost) {
        RunNeeds needs = cost.needs();
        ObjectNode run = Json.object();
        run.put("product", needs.product() == null ? null : needs.product().name());
        run.put("formula", needs.formula().name());
        run.put("units", Json.amountOrNull(needs.units()));
        run.put("batches", needs.batches().count());
        run.put("batchKg", Json.amount(needs.batches().batchKg()));
        run.put("bulkOverKg", Json.amount(needs.batches().over()));
        FillTarget fill = needs.fill();
        run.put("targetFillG", fill == null ? null : Json.amount(fill.targetKg().multiply(GRAMS)));
        run.set("rawMaterialPerKg", inCurrencies(Optional.of(cost.rawMaterialPerKg())));
        run.set("bulkPerKg", inCurrencies(Optional.of(cost.bulkPerKg())));
        run.set("unitCost", inCurrencies(cost.unitCost()));
        run.set("cashPerUnit", inCurrencies(cost.cashPerUnit()));
        run.set("outlay", inCurrencies(Optional.of(cost.outlay())));
        run.put("used", Json.amount(cost.used()));
        run.put("wasted", Json.amount(cost.wasted()));
        run.put("stockLeft", Json.amount(cost.stockLeft()));
        ObjectNode heads = run.putObject("heads");
        cost.heads().forEach((head, amount) -> heads.put(head.words(), Json.amount(amount)));
        PriceLadder ladder = cost.ladder();
        run.set("ladder", ladder == null || needs.product() == null ? null : ladder(ladder, cost));
        run.set("items", Json.array(cost.items(), item -> item(item, cost.purchase())));
        run.set("plan", plan(cost.purchase()));
        return run;
    }

    private ObjectNode inCurrencies(Optional<BigDecimal> amount) {
        ObjectNode all = Json.object();
        amount.ifPresent(value ->
                currencies.forEach((code, conversion) -> all.put(code, Json.amount(conversion.convert(value)))));
        return all;
    }

    private static ObjectNode ladder(PriceLadder ladder, RunCost cost) {
        ObjectNode json = Json.object();
        PriceLadder.Upwards up = ladder.upwards();
        PriceLadder.Downwards down = ladder.downwards();
        json.put("wholesale", up == null ? null : Json.amount(up.wholesale()));
        json.put("retailExVat", up == null ? null : Json.amount(up.retailExVat()));
        json.put("retail", up == null ? null : Json.amount(up.retail()));
        BigDecimal left = down == null ? null : down.margin();
        BigDecimal target =
                cost.needs().product() == null || cost.needs().product().targetMargin() == null
                        ? null
                        : cost.needs().product().targetMargin().value();
        json.put("margin", Json.amountOrNull(down == null ? target : left));
        json.put("breakEvenUnits", Json.amountOrNull(ladder.breakEvenUnits()));
        if (down != null) {
            json.put("targetRetailExVat", Json.amount(down.retailExVat()));
            json.put("targetWholesale", Json.amount(down.wholesale()));
        }
        return json;
    }

    private static ObjectNode item(ItemCost item, Purchase purchase) {
        ObjectNode json = Json.object()
                .put("item", item.item().name())
                .put("needed", Json.amount(item.item().needed()))
                .put("unit", item.item().unit())
                .put("ordered", Json.amount(item.housePrice() == null ? item.ordered() : BigDecimal.ZERO))
                .put("landedPerUnit", Json.amount(item.landedPerUnit()))
                .put("used", Json.amount(item.used()))
                .put("leftover", Json.amount(item.leftover()));
        json.set("purchases", Json.array(item.lines(), line -> line(line, purchase.listing(line))));
        return json;
    }

    private static ObjectNode line(LineCost line, Listing listing) {
        Offer offer = listing.offer();
        Offer.PriceBreak price = offer.breaks().get(line.tier());
        return Json.object()
                .put("supplier", offer.supplier())
                .put("packSize", Json.amount(offer.packSize().value()))
                .put("packUnit", offer.packUnit().symbol())
                .put("packs", line.line().packs())
                .put("price", Json.amount(price.price().value()))
                .put("pricePer", price.per() == null ? "pack" : price.per().symbol())
                .put("currency", offer.currency().getCurrencyCode())
                .put("goods", Json.amount(line.goodsQuoted()));
    }

    private static ObjectNode plan(Purchase purchase) {
        return Json.object()
                .put("objective", Json.amount(purchase.cost().objective()))
                .put("bound", Json.amount(purchase.bound()))
                .put("proven", purchase.proven());
    }
}
