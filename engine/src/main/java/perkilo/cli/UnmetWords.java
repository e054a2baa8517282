package perkilo.cli;

import perkilo.orderplan.LateNeed;
import perkilo.orderplan.NotCovered;
import perkilo.orderplan.Unmet;
import perkilo.report.order.UnmetTables;

/** What a plan does not meet, for the terminal. */
final class UnmetWords {

    private UnmetWords() {}

    static void say(Console console, Unmet unmet) {
        if (!unmet.late().isEmpty()) {
            console.say("Late:");
            console.table(TextTable.<LateNeed>of(UnmetTables.LATE.with(unmet.late())));
        }
        if (!unmet.notCovered().isEmpty()) {
            console.say("Not covered:");
            console.table(TextTable.<NotCovered>of(UnmetTables.NOT_COVERED.with(unmet.notCovered())));
        }
    }
}
