package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import perkilo.model.Material;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.facts.PublishedLimit;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Trial;

/**
 * The gate that compares a level with the law.
 *
 * <p>Two limits apply and both have to hold: the one on the materials sheet, for the material as supplied; and the
 * published one of its substance, where limits "as acid" are converted and substances that share a limit are added up.
 * A preservative, UV filter or colourant without any limit gets a caution.
 */
final class LegalLimitGate implements Gate {

    private static final BigDecimal ROUNDING = new BigDecimal("1e-9");
    private static final List<String> LISTED = List.of(Functions.PRESERVATIVE, "uv filter", Functions.COLORANT);

    @Override
    public String name() {
        return "legal maximum";
    }

    @Override
    public boolean dependsOnLevel() {
        return true;
    }

    @Override
    public boolean judgesLevel() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        BigDecimal level = trial.after().levelOf(trial.to());
        Figure stated = trial.to().traits().legalMax();
        if (stated != null && level.subtract(ROUNDING).compareTo(stated.value()) > 0) {
            return Verdict.fail(this, GateMessages.aboveLegalMaximum(level, stated.value()));
        }
        Optional<PublishedLimit> published = PublishedLimit.of(trial.to().inci(), trial.rinseOff());
        if (published.isPresent()) {
            return judgePublished(trial, published.get());
        }
        if (stated != null) {
            return Verdict.pass(this, GateMessages.withinLegalMaximum(level, stated.value()));
        }
        return LISTED.stream().anyMatch(work -> Functions.does(trial.to(), work))
                ? Verdict.passWithCaution(
                        this, GateMessages.legalMaximumUnknown(trial.to().name()))
                : Verdict.pass(this, GateMessages.noLegalMaximum());
    }

    private Verdict judgePublished(Trial trial, PublishedLimit limit) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Portion portion : trial.after().portions()) {
            sum = sum.add(contribution(portion, limit, trial.rinseOff()));
        }
        String limitedAs = limit.isConverted() ? "as " + limit.limitedAs() : limit.limitedAs();
        return sum.subtract(ROUNDING).compareTo(limit.max()) > 0
                ? Verdict.fail(this, GateMessages.abovePublishedLimit(sum, limitedAs, limit.max(), limit.source()))
                : Verdict.pass(this, GateMessages.withinPublishedLimit(sum, limitedAs, limit.max(), limit.source()));
    }

    /** What a line adds to the limited substance; the whole level counts where active matter is not known. */
    private static BigDecimal contribution(Portion portion, PublishedLimit limit, boolean rinseOff) {
        Material material = portion.material();
        return PublishedLimit.of(material.inci(), rinseOff)
                .filter(other -> other.limitedAs().equals(limit.limitedAs()))
                .map(other -> other.asLimited(portion.level().multiply(active(material))))
                .orElse(BigDecimal.ZERO);
    }

    private static BigDecimal active(Material material) {
        Figure active = material.traits().active();
        return active == null ? BigDecimal.ONE : active.value();
    }
}
