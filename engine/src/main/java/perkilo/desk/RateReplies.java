package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import perkilo.origin.Finding;
import perkilo.reading.RateAnswers;
import perkilo.reading.RateMemory;
import perkilo.review.Asked;
import perkilo.review.FilledIn;
import perkilo.review.QuestionsSheet;
import perkilo.review.rates.RatesReview;

/** The questions about the rates of one request: answered on the review or in an earlier run, or still open. */
final class RateReplies {

    private final Path table;
    private final RateMemory memory;
    private final Set<String> fresh = new HashSet<>();
    private final RateAnswers answers;

    private RateReplies(Path table, RateMemory memory) {
        this.table = table;
        this.memory = memory;
        this.answers = new RateAnswers(memory::answer);
    }

    /** What is answered so far about the rates of a table; answers on the review replace those of earlier runs. */
    static RateReplies of(Path table) throws IOException {
        RateMemory memory = RateMemory.of(table);
        RateReplies replies = new RateReplies(table, memory);
        FilledIn filledIn = RatesReview.read(RateMemory.reviewFor(table));
        for (RateMemory.Kept kept : memory.all()) {
            String key = keyOf(kept.question());
            Optional<FilledIn.FilledRow> row = filledIn.row(key).filter(FilledIn.FilledRow::changed);
            if (row.isPresent()) {
                memory.put(new RateMemory.Kept(kept.question(), row.get().under(QuestionsSheet.ANSWER)));
                replies.fresh.add(key);
            }
        }
        return replies;
    }

    private static String keyOf(RateAnswers.Question question) {
        return RatesReview.keyOf(question.what(), question.about());
    }

    RateAnswers answers() {
        return answers;
    }

    Path review() {
        return RateMemory.reviewFor(table);
    }

    /** How many questions of this request are open. */
    int open() {
        return (int) answers.replies().stream()
                .filter(reply -> !reply.isUnderstood())
                .count();
    }

    /** Which answers were used, and which were not understood. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (RateAnswers.Reply reply : answers.replies()) {
            if (reply.isUnderstood()) {
                findings.add(Finding.note(reply.question().where(), DeskMessages.asAnswered(reply.answer())));
            } else if (!reply.answer().isEmpty()) {
                findings.add(Finding.warning(reply.question().where(), DeskMessages.noAnswer(reply.answer())));
            }
        }
        return findings;
    }

    /**
     * Remembers the answers, and writes the review if there is anything on it.
     *
     * @param files the names of the files of this request, whose earlier open questions are settled if not asked again
     */
    void keep(Set<String> files) throws IOException {
        Set<String> now = new HashSet<>();
        List<Asked> rows = new ArrayList<>();
        for (RateAnswers.Reply reply : answers.replies()) {
            String answer = reply.isUnderstood() ? reply.answer() : "";
            RateAnswers.Question question = reply.question();
            now.add(keyOf(question));
            memory.put(new RateMemory.Kept(question, answer));
            rows.add(row(question, answer, remark(reply)));
        }
        for (RateMemory.Kept kept : memory.all()) {
            RateAnswers.Question question = kept.question();
            boolean open = kept.answer().isBlank();
            if (now.contains(keyOf(question))) {
                continue;
            }
            if (open && files.contains(question.where().file())) {
                memory.forget(question);
            } else {
                rows.add(row(question, kept.answer(), open ? DeskMessages.ofOtherFile() : Asked.AS_LAST_TIME));
            }
        }
        memory.write(table);
        if (!rows.isEmpty()) {
            new RatesReview(rows).write(review());
        }
    }

    private String remark(RateAnswers.Reply reply) {
        if (reply.isUnderstood()) {
            return fresh.contains(keyOf(reply.question())) ? "" : Asked.AS_LAST_TIME;
        }
        return reply.answer().isEmpty() ? "" : DeskMessages.noAnswer(reply.answer());
    }

    private static Asked row(RateAnswers.Question question, String answer, String remark) {
        return Asked.of(keyOf(question), question.where(), question.says(), question.text(), question.choices())
                .answered(answer, remark);
    }
}
