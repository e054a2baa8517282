package perkilo.cli;

import perkilo.report.swap.BlendTable;
import perkilo.report.swap.SwapTable;
import perkilo.swaps.Cautions;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.blend.BlendStudy;

/** The result of a search for cheaper materials, for the terminal. */
final class SwapWords {

    /** The most rows that a table on the terminal shows; the workbook and JSON have all. */
    private static final int SHOWN = 15;

    private final SwapOutcome.Found found;

    SwapWords(SwapOutcome.Found found) {
        this.found = found;
    }

    /** Prints single swaps, then blends, then the cautions for all of them. */
    void say(Console console) {
        console.table(TextTable.of(new SwapTable(found).onTerminal(SHOWN)));
        if (found.swaps().isEmpty()) {
            console.say(found.withoutSwaps());
        }
        if (!found.missing().isEmpty()) {
            console.say(CommandMessages.factsMissing(
                    found.missing().stream().map(one -> one.material().name()).toList()));
        }
        if (!found.kept().isEmpty()) {
            console.say(CommandMessages.notCompared(found.kept().stream()
                    .map(line -> line.portion().material().name())
                    .toList()));
        }
        if (!found.blends().isEmpty()) {
            console.say("");
            console.table(TextTable.of(new BlendTable(found).filled()));
        }
        found.studies().stream()
                .filter(study -> study.blends().isEmpty())
                .forEach(study -> console.say(study.formula() + ", " + study.function() + ": " + withoutBlends(study)));
        Cautions.ALWAYS.forEach(console::say);
    }

    private static String withoutBlends(BlendStudy study) {
        return study.isSought()
                ? "None of the blends that cost least at straight-line prices makes a run cheaper; others within the bounds were not costed."
                : study.refusal();
    }
}
