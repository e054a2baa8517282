package perkilo.desk;

import java.nio.file.Path;
import java.util.List;
import perkilo.pricelists.TakenIn;

/**
 * The outcome of taking price lists in.
 *
 * @param lists one for each list that was read, in order, with its findings and questions
 * @param notBegun those that were left out because the work was stopped
 * @param missing those that a review names and that are not there any more
 * @param review the workbook with the questions and with what was read
 */
public record TakeInAnswer(List<TakenIn> lists, List<Path> notBegun, List<Path> missing, Path review) {

    public TakeInAnswer {
        lists = List.copyOf(lists);
        notBegun = List.copyOf(notBegun);
        missing = List.copyOf(missing);
    }

    /** Whether every list is kept now, apart from files that are no price lists. */
    public boolean allKept() {
        return notBegun.isEmpty() && lists.stream().allMatch(list -> list.isKept() || list.noList());
    }

    /** Whether some list is kept now. */
    public boolean anyKept() {
        return lists.stream().anyMatch(TakenIn::isKept);
    }

    /** How many answers all lists wait for. */
    public int waitsFor() {
        return lists.stream().mapToInt(TakenIn::waitsFor).sum();
    }
}
