package perkilo.pricelists;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.layouts.ListWords;
import perkilo.layouts.Question;
import perkilo.review.Asked;
import perkilo.review.FilledIn;
import perkilo.review.Key;
import perkilo.review.QuestionsSheet;

/**
 * The answers about one file: what a person filled in on a review, and what is remembered of the supplier.
 *
 * <p>What is filled in goes into the memory, where it replaces what was remembered.
 */
final class ListAnswers {

    private final String id;
    private final String file;
    private final FilledIn filledIn;
    private final Memory before;
    private final Memory memory;
    private final List<Question> asked = new ArrayList<>();

    /**
     * The answers about one file.
     *
     * @param id tells the file apart from others of the same name
     * @param file its name without its folder
     */
    ListAnswers(String id, String file, FilledIn filledIn, Memory memory) {
        this.id = id;
        this.file = file;
        this.filledIn = filledIn;
        this.before = memory;
        this.memory = memory.copy(memory.supplier());
        takeChanges();
    }

    /** The file's name without its folder. */
    String file() {
        return file;
    }

    /** What is remembered, with what a person filled in. */
    Memory memory() {
        return memory;
    }

    /** The key of a question about this file. */
    String keyOf(String what, String about) {
        return keyOf(id, what, about);
    }

    static String keyOf(String id, String what, String about) {
        return Key.of("list", id, what, about);
    }

    /** The answer on the sheet of questions; empty if there is none. */
    Optional<String> given(String key) {
        return filledIn.answer(key, QuestionsSheet.ANSWER);
    }

    /**
     * The answer to a question about this file, filled in or remembered; it is remembered from now on. Empty if there
     * is none among the choices.
     */
    Optional<String> answerTo(Question question) {
        Optional<String> answer = given(keyOf(question.field(), question.key()))
                .or(() -> memory.answer(question.field(), question.key()))
                .flatMap(words -> choice(question, words));
        answer.ifPresent(words -> memory.put(
                new Remembered(question.field(), question.key(), words, "", question.text(), question.choices(), "")));
        asked.add(question);
        return answer;
    }

    private static Optional<String> choice(Question question, String words) {
        return question.choices().stream()
                .filter(choice -> choice.equalsIgnoreCase(words.strip()))
                .findFirst();
    }

    /** All questions of {@link #answerTo} so far, with their answers. */
    List<Asked> asked() {
        Map<String, Asked> all = new LinkedHashMap<>();
        for (Question question : asked) {
            String key = keyOf(question.field(), question.key());
            Asked one = Asked.of(key, question.where(), "", question.text(), question.choices());
            Optional<String> answer =
                    memory.answer(question.field(), question.key()).flatMap(words -> choice(question, words));
            Optional<String> wrong = answer.isPresent() ? Optional.empty() : given(key);
            all.put(
                    key,
                    answer.map(words -> one.answered(words, remark(question.field(), question.key(), "")))
                            .or(() -> wrong.map(words -> one.answered("", ListMessages.notUnderstood(words))))
                            .orElse(one));
        }
        return List.copyOf(all.values());
    }

    /** What a person says about a row on the sheet of what is not read; empty for nothing. */
    Optional<String> said(String key) {
        return filledIn.answer(key, ReviewWords.IT_IS);
    }

    /** Whether a person took out what was said about a row there. */
    boolean isTakenOut(String key) {
        return filledIn.row(key)
                .filter(row -> row.changed() && row.under(ReviewWords.IT_IS).isEmpty())
                .isPresent();
    }

    /** Whether a person took out or changed the answer to a question. */
    boolean isAnswerTakenOut(String key) {
        return filledIn.row(key).filter(FilledIn.FilledRow::changed).isPresent();
    }

    /** What a person says that the names on this list mean, by the keys of the names; empty to forget it. */
    Map<String, String> names() {
        Map<String, String> names = new HashMap<>();
        for (FilledIn.FilledRow row : filledIn.rows()) {
            boolean here = row.sheet().equals(ReviewWords.PRICES)
                    && row.under(ReviewWords.FILE).equals(file);
            boolean answered = row.under(ReviewWords.HOW).equals(NameMatcher.By.ANSWER.said());
            if (here && (row.changed() || answered)) {
                String name = ListWords.key(row.under(ReviewWords.THEIRS));
                if (row.changed()) {
                    names.put(name, row.under(ReviewWords.OURS));
                } else {
                    names.putIfAbsent(name, row.under(ReviewWords.OURS));
                }
            }
        }
        return names;
    }

    /** The remark of an answer: whether it was known before. */
    String remark(String what, String listed, String layout) {
        boolean known = before.get(what, listed, layout).equals(memory.get(what, listed, layout));
        return known ? Asked.AS_LAST_TIME : "";
    }

    /** Puts remembered answers right that a person changed or took out. */
    private void takeChanges() {
        for (Remembered one : before.all()) {
            boolean alone = Memory.isOwn(one.what());
            String key = keyOf(one.what(), alone ? one.listed() : one.layout() + "|" + one.listed());
            filledIn.row(key).filter(FilledIn.FilledRow::changed).ifPresent(row -> {
                String answer = row.under(QuestionsSheet.ANSWER);
                if (answer.isEmpty()) {
                    memory.forget(one.what(), one.listed(), one.layout());
                } else {
                    boolean own = one.what().equals(Memory.NAME) && answer.equalsIgnoreCase(Memory.OWN_NAME);
                    memory.put(new Remembered(
                            one.what(),
                            one.listed(),
                            own ? one.listed() : answer,
                            "",
                            one.question(),
                            one.choices(),
                            one.layout()));
                }
            });
        }
    }
}
