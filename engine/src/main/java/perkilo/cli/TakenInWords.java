package perkilo.cli;

import java.util.ArrayList;
import java.util.List;
import perkilo.desk.TakeInAnswer;
import perkilo.json.ListsJson;
import perkilo.origin.Finding;
import perkilo.pricelists.ListFolder;
import perkilo.pricelists.Question;
import perkilo.pricelists.TakenIn;

/** What became of price lists, for the terminal and as JSON. */
final class TakenInWords {

    private final Console console;

    TakenInWords(Console console) {
        this.console = console;
    }

    /** Says it of each list. */
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
            console.complain(list.source() + " is not taken in.");
            if (list.mapping() != null) {
                console.complain("Answer what is null in " + list.mapping() + " and run the command again.");
            } else if (!list.questions().isEmpty()) {
                console.complain(
                        "Name the supplier and run the command again: the mapping to answer in is one of his.");
            }
            return;
        }
        console.say("%s of %s: %s of %s, %s in %s"
                .formatted(
                        list.supplier(),
                        list.quotedOn(),
                        Console.counted(list.prices(), "price"),
                        Console.counted(list.items(), "item"),
                        switch (kept.how()) {
                            case NEW -> "kept";
                            case REPLACED -> "replaced (the one before is beside it as .bak)";
                            case THERE_ALREADY -> "there already";
                        },
                        kept.file()));
    }
}
