package perkilo.cli;

import perkilo.costing.CostEffect;
import perkilo.desk.PriceChangesAnswer;
import perkilo.json.PricesJson;
import perkilo.offers.history.PriceChanges;
import perkilo.report.prices.EffectTable;
import perkilo.report.prices.PriceTable;
import perkilo.xlsx.write.Written;

/** Price changes since the last lists, for the terminal and as JSON. */
final class PriceChangesWords {

    private static final int SHOWN = 20;
    private static final int NAMED = 5;

    private final Console console;

    PriceChangesWords(Console console) {
        this.console = console;
    }

    /** Prints the changes, and where they were written to. */
    void say(PriceChangesAnswer.Changed answer, Written written) {
        PriceChanges changes = answer.changes();
        CostEffect effect = answer.effect();
        if (console.isJson()) {
            console.json(PricesJson.of(changes, effect, answer.account(), answer.findings()));
        }
        console.say(changes.answer());
        console.table(TextTable.of(new PriceTable(changes).onTerminal(SHOWN)));
        if (changes.changed().size() > SHOWN) {
            console.say("… and " + (changes.changed().size() - SHOWN) + " more in the workbook");
        }
        if (effect != null) {
            if (!effect.runs().isEmpty()) {
                console.table(TextTable.of(new EffectTable(effect).onTerminal()));
            }
            effect.incomplete().forEach(run -> console.say(run.title() + ": " + run.lacks(NAMED)));
        }
        console.findings(answer.findings());
        console.written(written);
    }
}
