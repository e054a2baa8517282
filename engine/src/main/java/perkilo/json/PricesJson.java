package perkilo.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostEffect;
import perkilo.costing.RunAnswer;
import perkilo.offers.history.PriceChanges;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.report.prices.EffectTable;
import perkilo.report.prices.PriceTable;

/** Changed prices as JSON. */
public final class PricesJson {

    private PricesJson() {}

    /**
     * What changed, with everything that was found.
     *
     * @param effect what the changes do to the runs of a book; null without a book
     * @param account what became of everything in the files
     */
    public static ObjectNode of(
            PriceChanges changes, @Nullable CostEffect effect, Account account, List<Finding> findings) {
        ObjectNode answer = Json.object().put("date", changes.on().toString()).put("answer", changes.answer());
        answer.set("changes", TableJson.array(new PriceTable(changes).inJson()));
        if (effect != null) {
            effect.runs().stream()
                    .findFirst()
                    .ifPresent(
                            run -> answer.put("homeCurrency", run.now().home().getCurrencyCode()));
            answer.set("runs", TableJson.array(new EffectTable(effect).inJson()));
            ArrayNode incomplete = answer.putArray("incompleteRuns");
            for (RunAnswer run : effect.incomplete()) {
                ArrayNode missing =
                        incomplete.addObject().put("run", run.title()).putArray("missing");
                run.missingNames().forEach(missing::add);
            }
        }
        answer.set("reading", Json.reading(account));
        answer.set("messages", Json.messages(findings));
        return answer;
    }
}
