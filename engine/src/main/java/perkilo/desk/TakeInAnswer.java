package perkilo.desk;

import java.nio.file.Path;
import java.util.List;
import perkilo.pricelists.TakenIn;

/**
 * The outcome of taking price lists in.
 *
 * @param lists one for each list that was read, in order, with its findings and questions
 * @param notBegun those that were left out because the work was stopped
 */
public record TakeInAnswer(List<TakenIn> lists, List<Path> notBegun) {

    public TakeInAnswer {
        lists = List.copyOf(lists);
        notBegun = List.copyOf(notBegun);
    }

    /** Whether every list is kept now. */
    public boolean allKept() {
        return notBegun.isEmpty() && lists.stream().allMatch(TakenIn::isKept);
    }
}
