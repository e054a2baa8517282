package perkilo.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostEffect;
import perkilo.costing.RunCost;
import perkilo.offers.history.PriceChange;
import perkilo.offers.history.PriceChanges;
import perkilo.offers.history.QuotedPrice;
import perkilo.origin.Finding;

/** Changed prices as JSON. */
public final class PricesJson {

    private PricesJson() {}

    /**
     * What changed, with everything that was found.
     *
     * @param effect what it does to a book's runs; null without a book
     */
    public static ObjectNode of(PriceChanges changes, @Nullable CostEffect effect, List<Finding> findings) {
        ObjectNode answer = Json.object().put("date", changes.on().toString()).put("answer", changes.answer());
        answer.set("changes", Json.array(changes.changed(), PricesJson::change));
        if (effect != null) {
            effect.runs().stream()
                    .findFirst()
                    .ifPresent(
                            run -> answer.put("homeCurrency", run.now().home().getCurrencyCode()));
            answer.set("runs", Json.array(effect.runs(), PricesJson::run));
        }
        answer.set("messages", Json.messages(findings));
        return answer;
    }

    private static ObjectNode change(PriceChange change) {
        ObjectNode json = Json.object()
                .put("supplier", change.offer().supplier())
                .put("item", change.offer().item())
                .put("pack", change.offer().pack())
                .put("from", Json.amount(change.from()))
                .put("kind", change.kind().word());
        json.set("before", price(change.before()));
        json.set("now", price(change.now()));
        return json.put(
                "changePercent",
                change.fraction()
                        .map(part -> Json.amount(part.movePointRight(2)))
                        .orElse(null));
    }

    private static @Nullable ObjectNode price(@Nullable QuotedPrice price) {
        return price == null
                ? null
                : Json.object()
                        .put("price", Json.amount(price.perUnit()))
                        .put("per", price.unit().symbol())
                        .put("currency", price.offer().currency().getCurrencyCode())
                        .put("quotedOn", String.valueOf(price.offer().quotedOn()));
    }

    private static ObjectNode run(CostEffect.OfRun run) {
        Optional<RunCost> before = Optional.ofNullable(run.before());
        return Json.object()
                .put("run", run.now().needs().title())
                .put("unitCostBefore", Json.amountOrNull(run.unitCostBefore().orElse(null)))
                .put("unitCostNow", Json.amountOrNull(run.now().unitCost().orElse(null)))
                .put(
                        "bulkPerKgBefore",
                        Json.amountOrNull(before.map(RunCost::bulkPerKg).orElse(null)))
                .put("bulkPerKgNow", Json.amount(run.now().bulkPerKg()))
                .put(
                        "outlayBefore",
                        Json.amountOrNull(before.map(RunCost::outlay).orElse(null)))
                .put("outlayNow", Json.amount(run.now().outlay()));
    }
}
