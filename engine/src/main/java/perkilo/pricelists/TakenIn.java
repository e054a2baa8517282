package perkilo.pricelists;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Question;
import perkilo.origin.Finding;

/**
 * The result of taking a list in.
 *
 * @param source the list as it arrived
 * @param supplier who it is from; empty if the list was not taken in
 * @param quotedOn the day it applies from; null if the list was not taken in
 * @param validUntil its last day; null if none is known
 * @param prices how many prices it holds
 * @param items how many items have a price
 * @param kept where it is kept; null if the list was not taken in
 * @param mapping the supplier's mapping; null if there is none
 * @param questions what a person has to answer first
 * @param findings errors, warnings and notes
 */
public record TakenIn(
        Path source,
        String supplier,
        @Nullable LocalDate quotedOn,
        @Nullable LocalDate validUntil,
        int prices,
        int items,
        ListFolder.@Nullable Kept kept,
        @Nullable Path mapping,
        List<Question> questions,
        List<Finding> findings) {

    public TakenIn {
        questions = List.copyOf(questions);
        findings = List.copyOf(findings);
    }

    static TakenIn refused(Path source, List<Finding> findings, List<Question> questions, @Nullable Path mapping) {
        return new TakenIn(source, "", null, null, 0, 0, null, mapping, questions, findings);
    }

    /** Whether the list is kept. */
    public boolean isKept() {
        return kept != null;
    }
}
