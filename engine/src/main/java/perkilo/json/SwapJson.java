package perkilo.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.model.Formula;
import perkilo.origin.Finding;
import perkilo.swaps.Cautions;
import perkilo.swaps.Rejected;
import perkilo.swaps.Swap;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.blend.BlendStudy;
import perkilo.swaps.closeness.Closeness;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.label.LabelChange;
import perkilo.swaps.money.RunChange;
import perkilo.swaps.trial.Trial;

/**
 * Swaps as JSON.
 *
 * <p>{@code perKgChange} is that of the first run of the formula; {@code perKgChanges} has all of them. Runs are keyed
 * by their units, or by their kilograms for bulk. Percentages are texts such as {@code "2.5"}. A {@code number} is what
 * {@code --apply} takes; {@code applied} is the name of the formula that was written with it.
 */
public final class SwapJson {

    private SwapJson() {}

    /**
     * Swaps with everything that was found.
     *
     * @param applied the formula that was written with one of them carried out
     */
    public static ObjectNode of(SwapOutcome.Found found, List<Finding> findings, Optional<Formula> applied) {
        ObjectNode answer = Json.object()
                .put("homeCurrency", found.book().settings().home().getCurrencyCode())
                .put("costingDate", found.book().settings().costingDate().toString());
        answer.set("base", base(found.base()));
        AtomicInteger number = new AtomicInteger();
        answer.set("swaps", Json.array(found.swaps(), swap -> swap(swap, number.incrementAndGet())));
        answer.set("rejected", Json.array(found.rejected(), SwapJson::rejected));
        AtomicInteger blendNumber = new AtomicInteger();
        answer.set("blends", Json.array(found.blends(), blend -> blend(blend, blendNumber.incrementAndGet())));
        answer.set("blendStudies", Json.array(found.studies(), SwapJson::study));
        answer.put("applied", applied.map(Formula::name).orElse(null));
        answer.set("cautions", Json.texts(Cautions.ALWAYS));
        answer.set("messages", Json.messages(findings));
        return answer;
    }

    private static ObjectNode base(Map<String, Map<String, RunCost>> base) {
        ObjectNode all = Json.object();
        base.forEach((formula, runs) -> {
            ObjectNode ofFormula = all.putObject(formula);
            runs.forEach((key, run) -> {
                ObjectNode one = ofFormula.putObject(key);
                one.put("rawMaterialPerKg", Json.amount(run.rawMaterialPerKg()));
                one.put("unitCost", Json.amountOrNull(run.unitCost().orElse(null)));
                one.put("outlay", Json.amount(run.outlay()));
            });
        });
        return all;
    }

    private static ObjectNode swap(Swap swap, int number) {
        ObjectNode json = line(swap.trial(), number);
        closeness(json, swap.closeness());
        json.set("gates", Json.array(swap.verdicts(), SwapJson::gate));
        json.put("newPercent", percent(swap.newLevel()));
        money(json, swap.runs());
        json.set("label", label(swap.label()));
        json.set("cautions", Json.texts(swap.cautions()));
        return json;
    }

    private static ObjectNode rejected(Rejected rejected) {
        ObjectNode json = line(rejected.trial(), null);
        closeness(json, rejected.closeness());
        json.set("gates", Json.array(rejected.verdicts(), SwapJson::gate));
        json.put("reason", rejected.reason());
        return json;
    }

    private static ObjectNode line(Trial trial, @Nullable Integer number) {
        ObjectNode json = Json.object();
        if (number != null) {
            json.put("number", number);
        }
        return json.put("formula", trial.before().formula().name())
                .put("phase", trial.portion().line().phase())
                .put("material", trial.from().name())
                .put("percent", percent(trial.dose().from()))
                .put("candidate", trial.to().name());
    }

    private static void closeness(ObjectNode json, Closeness closeness) {
        json.put("closeness", Json.amount(closeness.score()));
        json.set(
                "closenessShares",
                Json.array(
                        closeness.shares(),
                        share -> Json.object()
                                .put("trait", share.trait())
                                .put("weight", share.weight())
                                .put("share", Json.amount(share.share()))
                                .put("known", share.known())));
    }

    private static ObjectNode gate(Verdict verdict) {
        return Json.object().put("gate", verdict.gate().name()).put("ok", verdict.ok()).put("why", verdict.why());
    }

    private static void money(ObjectNode json, List<RunChange> runs) {
        json.put("perKgChange", runs.isEmpty() ? null : Json.amount(runs.get(0).perKg()));
        json.set("perKgChanges", byRun(runs, RunChange::perKg));
        json.set("unitCostChange", byRun(runs, run -> run.unitCost().orElse(null)));
        json.set("outlayChange", byRun(runs, RunChange::outlay));
        ObjectNode proven = json.putObject("proven");
        runs.forEach(run -> proven.put(run.key(), run.after().purchase().proven()));
    }

    private static ObjectNode byRun(List<RunChange> runs, Function<RunChange, @Nullable BigDecimal> change) {
        ObjectNode json = Json.object();
        for (RunChange run : runs) {
            BigDecimal amount = change.apply(run);
            if (amount != null) {
                json.put(run.key(), Json.amount(amount));
            }
        }
        return json;
    }

    private static ObjectNode label(LabelChange label) {
        ObjectNode json = Json.object();
        json.set("ingredients", Json.texts(label.after().names()));
        json.set("enters", Json.texts(label.enters()));
        json.set("leaves", Json.texts(label.leaves()));
        json.set("notes", Json.texts(label.after().notes()));
        return json;
    }

    private static ObjectNode study(BlendStudy study) {
        ObjectNode json = Json.object()
                .put("formula", study.formula())
                .put("phase", study.phase())
                .put("function", study.function())
                .put("refusal", study.refusal())
                .put("blends", study.blends().size());
        json.set("kept", Json.texts(study.kept()));
        ObjectNode leftOut = json.putObject("leftOut");
        study.leftOut().forEach((why, materials) -> leftOut.set(why, Json.texts(materials)));
        json.set("notOffered", Json.texts(study.notOffered()));
        return json;
    }

    private static ObjectNode blend(Blend blend, int number) {
        ObjectNode json = Json.object()
                .put("number", number)
                .put("formula", blend.formula().name())
                .put("phase", blend.phase())
                .put("function", blend.function())
                .put("pricedAt", blend.pricedAt())
                .put("straightLinePerKgBefore", Json.amount(blend.straightLineBefore()))
                .put("straightLinePerKgAfter", Json.amount(blend.straightLineAfter()));
        json.set(
                "parts",
                Json.array(
                        blend.parts(),
                        part -> Json.object()
                                .put("material", part.material().name())
                                .put("percent", percent(part.before()))
                                .put("newPercent", percent(part.after()))
                                .put("straightLinePerKg", Json.amount(part.perKg()))));
        json.put("provenAtStraightLinePrices", blend.proven());
        money(json, blend.runs());
        json.set("label", label(blend.label()));
        json.set("cautions", Json.texts(blend.cautions()));
        return json;
    }

    private static String percent(BigDecimal fraction) {
        return Json.amount(fraction.movePointRight(2));
    }
}
