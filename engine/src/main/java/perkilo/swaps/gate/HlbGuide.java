package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import perkilo.swaps.facts.Hlb;
import perkilo.swaps.trial.Trial;

/** The gate that shows how the HLB of oils and emulsifiers moves; guidance that never keeps a material out. */
final class HlbGuide implements Gate {

    /** A move by more than this brings a caution. Own choice. */
    private static final BigDecimal WORTH_A_LOOK = BigDecimal.ONE;

    @Override
    public String name() {
        return "HLB (guidance)";
    }

    @Override
    public boolean dependsOnLevel() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        List<String> words = new ArrayList<>();
        List<String> cautions = new ArrayList<>();
        if (trial.before().hasWater()) {
            compare(
                    GateMessages::requiredHlb,
                    trial.before().requiredHlb(),
                    trial.after().requiredHlb(),
                    words,
                    cautions);
        }
        compare(
                GateMessages::emulsifierHlb,
                trial.before().emulsifierHlb(),
                trial.after().emulsifierHlb(),
                words,
                cautions);
        return new Verdict(this, true, words.isEmpty() ? GateMessages.noChange() : String.join(" ", words), cautions);
    }

    private static void compare(Wording wording, Hlb before, Hlb after, List<String> words, List<String> cautions) {
        Optional<BigDecimal> old = before.mean();
        Optional<BigDecimal> now = after.mean();
        if (old.isEmpty() || now.isEmpty() || old.get().compareTo(now.get()) == 0) {
            return;
        }
        String sentence = wording.of(now.get(), old.get(), after.unknown().signum() <= 0);
        words.add(sentence);
        if (now.get().subtract(old.get()).abs().compareTo(WORTH_A_LOOK) > 0) {
            cautions.add(sentence);
        }
    }

    /** A sentence about a move; {@code complete} says whether the HLB of all materials is known. */
    private interface Wording {

        String of(BigDecimal now, BigDecimal before, boolean complete);
    }
}
