package perkilo.costing;

import java.util.ArrayList;
import java.util.List;
import perkilo.model.Book;
import perkilo.model.Run;
import perkilo.origin.Finding;

/** Checks that the runs of a book can be made, without costing them. */
public final class RunCheck {

    private RunCheck() {}

    /** An error for each run of bulk that would stay in the vessel. */
    public static List<Finding> of(Book book) {
        List<Finding> problems = new ArrayList<>();
        for (Run run : book.runs()) {
            if (run instanceof Run.OfBulk bulk) {
                book.formula(bulk.formula())
                        .flatMap(formula -> Batches.whyNot(bulk.batchKg().value(), formula.batching()))
                        .ifPresent(why -> problems.add(Finding.error(
                                run.origin(),
                                CostMessages.cannotBeMade(bulk.batchKg().value(), bulk.formula(), why))));
            }
        }
        return problems;
    }
}
