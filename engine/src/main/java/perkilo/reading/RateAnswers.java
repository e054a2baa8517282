package perkilo.reading;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Function;
import perkilo.origin.Origin;
import perkilo.xlsx.grid.Grid;

/** The answers about files of exchange rates: those that are given, and the questions that wait for one. */
public final class RateAnswers {

    private final Given given;
    private final Map<List<String>, Reply> replies = new LinkedHashMap<>();

    /** Where answers come from. */
    @FunctionalInterface
    public interface Given {

        /** The answer to a question; empty if there is none. */
        Optional<String> answer(String what, String about);
    }

    /**
     * A question about rates.
     *
     * @param what kind of question it is
     * @param about which rates or tables it is about; the same ones have the same words in every run
     * @param where the cell that raises it
     * @param says what is written there
     * @param text the question
     * @param choices the usual answers
     */
    public record Question(String what, String about, Origin where, String says, String text, List<String> choices) {

        public Question {
            choices = List.copyOf(choices);
        }
    }

    /**
     * A question that was asked.
     *
     * @param answer as it was given; empty for none
     * @param isUnderstood whether the answer is used
     */
    public record Reply(Question question, String answer, boolean isUnderstood) {}

    /** Answers that come from somewhere. */
    public RateAnswers(Given given) {
        this.given = given;
    }

    /** No answers. */
    static RateAnswers none() {
        return new RateAnswers((what, about) -> Optional.empty());
    }

    /**
     * Asks a question.
     *
     * @param meaning of an answer; empty if it makes no sense
     * @return what the answer means; empty if there is none that makes sense
     */
    <T> Optional<T> ask(Question question, Function<String, Optional<T>> meaning) {
        Optional<String> answer =
                given.answer(question.what(), question.about()).map(String::strip);
        Optional<T> meant = answer.flatMap(meaning);
        replies.putIfAbsent(
                List.of(question.what(), question.about()), new Reply(question, answer.orElse(""), meant.isPresent()));
        return meant;
    }

    /** Whether a question has an answer that makes sense; the question is not asked by this. */
    <T> Optional<T> known(String what, String about, Function<String, Optional<T>> meaning) {
        return given.answer(what, about).map(String::strip).flatMap(meaning);
    }

    /** All questions that were asked, in their order. */
    public List<Reply> replies() {
        return List.copyOf(replies.values());
    }

    /** What tells tables of one form apart from others: the name of their files without digits, and the headers. */
    static String formOf(Grid grid, int headerRow) {
        StringJoiner headers = new StringJoiner(", ");
        grid.row(headerRow).values().forEach(cell -> headers.add(cell.text().strip()));
        return grid.file().replaceAll("\\d+", "#") + ": " + headers;
    }
}
