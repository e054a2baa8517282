package perkilo.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import perkilo.desk.TakeInAnswer;
import perkilo.json.ListsJson;
import perkilo.layouts.Question;
import perkilo.origin.Counted;
import perkilo.origin.Finding;
import perkilo.pricelists.ListFolder;
import perkilo.pricelists.TakenIn;

/** The results of taking price lists in, for the terminal and as JSON. */
final class TakenInWords {

    private final Console console;

    TakenInWords(Console console) {
        this.console = console;
    }

    /** Prints the result of each list. */
    void say(TakeInAnswer answer) {
        if (console.isJson()) {
            console.json(ListsJson.of(answer.lists()));
        }
        answer.lists().forEach(this::say);
    }

    private void say(TakenIn list) {
        List<Finding> findings = new ArrayList<>(list.findings());
        for (Question question : list.questions()) {
            findings.add(Finding.error(question.where(), question.sentence()));
        }
        console.findings(findings);
        ListFolder.Kept kept = list.kept();
        if (kept == null) {
            console.complain(CommandMessages.notTakenIn(list.source()));
            Path mapping = list.mapping();
            if (mapping != null) {
                console.complain(CommandMessages.answerIn(mapping));
            } else if (!list.questions().isEmpty()) {
                console.complain(CommandMessages.nameSupplier());
            }
            return;
        }
        String how = switch (kept.how()) {
            case NEW -> "kept";
            case REPLACED -> "replaced (the earlier list is beside it as .bak)";
            case THERE_ALREADY -> "already";
        };
        console.say(list.supplier() + " of " + list.quotedOn() + ": " + Counted.of(list.prices(), "price") + " of "
                + Counted.of(list.items(), "item") + ", " + how + " in " + kept.file());
    }
}
