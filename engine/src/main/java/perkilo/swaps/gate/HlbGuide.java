package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import perkilo.swaps.facts.Hlb;
import perkilo.swaps.trial.Trial;
import perkilo.swaps.trial.Words;

/** Shows how far the HLB that the oils require, and that of the emulsifiers, move; guides and never keeps one out. */
final class HlbGuide implements Gate {

    /** A move by more than this is worth a caution. Own choice. */
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
                    "the oils require HLB",
                    trial.before().requiredHlb(),
                    trial.after().requiredHlb(),
                    words,
                    cautions);
        }
        compare(
                "the emulsifiers have HLB",
                trial.before().emulsifierHlb(),
                trial.after().emulsifierHlb(),
                words,
                cautions);
        return new Verdict(this, true, words.isEmpty() ? "no change" : String.join("; ", words), cautions);
    }

    private static void compare(String what, Hlb before, Hlb after, List<String> words, List<String> cautions) {
        Optional<BigDecimal> old = before.mean();
        Optional<BigDecimal> now = after.mean();
        if (old.isEmpty() || now.isEmpty() || old.get().compareTo(now.get()) == 0) {
            return;
        }
        String sentence = "%s %s instead of %s%s"
                .formatted(
                        what,
                        Words.oneDecimal(now.get()),
                        Words.oneDecimal(old.get()),
                        after.unknown().signum() > 0 ? ", so far as known" : "");
        words.add(sentence);
        if (now.get().subtract(old.get()).abs().compareTo(WORTH_A_LOOK) > 0) {
            cautions.add(sentence);
        }
    }
}
