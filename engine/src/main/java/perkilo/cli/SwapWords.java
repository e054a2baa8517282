package perkilo.cli;

import java.math.BigDecimal;
import java.util.List;
import perkilo.origin.Decimals;
import perkilo.swaps.Cautions;
import perkilo.swaps.Swap;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.blend.BlendStudy;
import perkilo.swaps.money.RunChange;

/** What a search for cheaper materials came to, for the terminal. */
final class SwapWords {

    /** A table on the terminal shows no more; the workbook and JSON hold all. */
    private static final int SHOWN = 15;

    private final SwapOutcome.Found found;
    private final String home;

    SwapWords(SwapOutcome.Found found) {
        this.found = found;
        this.home = found.book().settings().home().getCurrencyCode();
    }

    /** Single swaps, then blends, then what holds for all of them. */
    void say(Console console) {
        console.table(swaps());
        if (found.swaps().isEmpty()) {
            console.say(found.withoutSwaps());
        }
        if (!found.blends().isEmpty()) {
            console.say("");
            console.table(blends());
        }
        found.studies().stream()
                .filter(study -> study.blends().isEmpty())
                .forEach(study ->
                        console.say("%s, %s: %s".formatted(study.formula(), study.function(), withoutBlends(study))));
        Cautions.ALWAYS.forEach(console::say);
    }

    private TextTable swaps() {
        TextTable table = new TextTable(
                "No.", "Formula", "Material", "Candidate", "New level", "Close", "Run", "Per unit, " + home, "Outlay");
        int number = 1;
        for (Swap swap : found.swaps().subList(0, Math.min(SHOWN, found.swaps().size()))) {
            RunChange run = swap.atLargestRun();
            table.row(List.of(
                    Integer.toString(number++),
                    swap.formula().name(),
                    swap.trial().from().name(),
                    swap.trial().to().name(),
                    Decimals.readable(swap.newLevel().movePointRight(2), 3) + " %",
                    Decimals.amount(swap.closeness().score(), 0),
                    run.before().needs().title(),
                    perUnit(run),
                    signed(run.outlay(), 2)));
        }
        return table;
    }

    private TextTable blends() {
        TextTable table = new TextTable("No.", "Formula", "All of its", "Run", "Per unit, " + home, "Outlay");
        int number = 1;
        for (Blend blend : found.blends()) {
            RunChange run = blend.atBestRun();
            table.row(List.of(
                    "blend " + number++,
                    blend.formula().name(),
                    blend.function(),
                    run.before().needs().title(),
                    perUnit(run),
                    signed(run.outlay(), 2)));
        }
        return table;
    }

    private static String withoutBlends(BlendStudy study) {
        return study.isSought()
                ? "none of the blends that cost least at straight-line prices makes a run cheaper; others within the bounds were not costed."
                : study.refusal();
    }

    private static String perUnit(RunChange run) {
        return run.unitCost().map(change -> signed(change, 4)).orElse("–");
    }

    private static String signed(BigDecimal change, int decimals) {
        return (change.signum() > 0 ? "+" : "") + Decimals.amount(change, decimals);
    }
}
