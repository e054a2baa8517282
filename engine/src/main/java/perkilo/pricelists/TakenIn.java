package perkilo.pricelists;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Question;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.review.Asked;

/**
 * The result of taking a list in.
 *
 * @param source the list as it arrived
 * @param key of the list on a review
 * @param supplier who it is from; empty if that is not known yet
 * @param quotedOn the day it applies from; null if that is not known yet
 * @param validUntil its last day; null if none is known
 * @param count what it holds
 * @param kept where it is kept; null if it is not taken in
 * @param noList whether a person says that the file is no price list
 * @param questions what a person has to answer first
 * @param seen what a person can look through
 * @param findings errors, warnings and notes
 */
public record TakenIn(
        Path source,
        String key,
        String supplier,
        @Nullable LocalDate quotedOn,
        @Nullable LocalDate validUntil,
        Count count,
        ListFolder.@Nullable Kept kept,
        boolean noList,
        List<Question> questions,
        Seen seen,
        List<Finding> findings) {

    public TakenIn {
        questions = List.copyOf(questions);
        findings = List.copyOf(findings);
    }

    /**
     * How much a list holds.
     *
     * @param prices how many prices
     * @param items how many items have a price
     */
    public record Count(int prices, int items) {}

    /**
     * What a person can look through: questions with and without an answer, prices, columns and rows.
     *
     * @param asked the questions
     * @param prices the prices, or as many of them as a person looks through
     * @param columns all columns
     * @param notRead rows that are not read
     * @param otherSheets sheets that hold no price table
     */
    public record Seen(
            List<Asked> asked,
            List<PriceLine> prices,
            List<ListColumn> columns,
            List<RowNotRead> notRead,
            List<Origin> otherSheets) {

        /** Nothing was read. */
        public static final Seen NOTHING = new Seen(List.of(), List.of(), List.of(), List.of(), List.of());

        public Seen {
            asked = List.copyOf(asked);
            prices = List.copyOf(prices);
            columns = List.copyOf(columns);
            notRead = List.copyOf(notRead);
            otherSheets = List.copyOf(otherSheets);
        }
    }

    /** A file that cannot be opened. */
    public static TakenIn unreadable(Path source, Finding why) {
        return new TakenIn(
                source,
                ListAnswers.keyOf(TakeIn.Arrived.id(source), "file", ""),
                "",
                null,
                null,
                new Count(0, 0),
                null,
                false,
                List.of(),
                Seen.NOTHING,
                List.of(why));
    }

    /** How many prices it holds. */
    public int prices() {
        return count.prices();
    }

    /** How many items have a price. */
    public int items() {
        return count.items();
    }

    /** Whether the list is kept. */
    public boolean isKept() {
        return kept != null;
    }

    /** How many answers it waits for: questions, and rows to be ignored or corrected. */
    public int waitsFor() {
        return questions.size()
                + (int) seen.notRead().stream().filter(RowNotRead::isOpen).count();
    }
}
