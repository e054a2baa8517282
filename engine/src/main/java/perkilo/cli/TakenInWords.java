package perkilo.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import perkilo.desk.TakeInAnswer;
import perkilo.json.ListsJson;
import perkilo.layouts.Question;
import perkilo.origin.Counted;
import perkilo.pricelists.ListFolder;
import perkilo.pricelists.TakenIn;

/** The results of taking price lists in, for the terminal and as JSON. */
final class TakenInWords {

    /** How many questions are printed; all are on the review. */
    private static final int PRINTED = 5;

    private final Console console;

    TakenInWords(Console console) {
        this.console = console;
    }

    /** Prints the result of each list, and where to answer. */
    void say(TakeInAnswer answer) {
        if (console.isJson()) {
            console.json(ListsJson.of(answer.lists(), answer.review()));
        }
        answer.lists().forEach(this::say);
        answer.missing().forEach(file -> console.complain(CommandMessages.listGone(file)));
        Set<String> questions = new LinkedHashSet<>();
        for (TakenIn list : answer.lists()) {
            for (Question question : list.questions()) {
                questions.add(question.where().where() + ": " + question.sentence());
            }
        }
        List<String> some = new ArrayList<>(questions).subList(0, Math.min(PRINTED, questions.size()));
        some.forEach(console::complain);
        if (questions.size() > PRINTED) {
            console.complain(CommandMessages.moreQuestions(questions.size() - PRINTED));
        }
        if (answer.waitsFor() > 0) {
            console.complain(CommandMessages.answerIn(answer.review()));
        } else if (!answer.lists().isEmpty()) {
            console.say(CommandMessages.lookThrough(answer.review()));
        }
    }

    private void say(TakenIn list) {
        console.findings(list.findings());
        ListFolder.Kept kept = list.kept();
        if (list.noList()) {
            return;
        }
        if (kept == null) {
            console.complain(
                    list.waitsFor() > 0
                            ? CommandMessages.waits(list.source(), list.waitsFor())
                            : CommandMessages.notTakenIn(list.source()));
            return;
        }
        String how = switch (kept.how()) {
            case NEW -> "kept";
            case REPLACED -> "replaced (the earlier list is beside it as .bak)";
            case MERGED -> "joined with the other list of that day";
            case THERE_ALREADY -> "already";
        };
        console.say(list.supplier() + " of " + list.quotedOn() + ": " + Counted.of(list.prices(), "price") + " of "
                + Counted.of(list.items(), "item") + ", " + how + " in " + kept.file());
    }
}
