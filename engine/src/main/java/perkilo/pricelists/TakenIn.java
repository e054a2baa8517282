package perkilo.pricelists;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Finding;

/**
 * What became of a list.
 *
 * @param source the list as it arrived
 * @param supplier whose it is; empty where that is not known
 * @param quotedOn the day it holds from; null where it was not taken in
 * @param validUntil its last day; null where none is known
 * @param prices how many prices it holds
 * @param items how many items have one
 * @param kept where it is kept; null where it was not taken in
 * @param mapping the supplier's mapping; null where there is none
 * @param questions what a person has to say first
 * @param findings what is wrong, and what is good to know
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
