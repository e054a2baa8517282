package perkilo.desk;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.pricelists.TakeIn;

/**
 * A request to take price lists in.
 *
 * @param files the lists, and folders of lists; none to try those again that wait on the review
 * @param folder where lists are kept
 * @param book a workbook whose names the lists' names are matched with; null for none
 * @param said what the person adds about the lists, such as the supplier
 * @param review the workbook with the questions
 */
public record TakeInRequest(
        List<Path> files, Path folder, @Nullable Path book, TakeIn.Said said, Path review) {

    public TakeInRequest {
        files = List.copyOf(files);
    }
}
