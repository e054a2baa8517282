package perkilo.desk;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.pricelists.TakeIn;

/**
 * Which price lists to take in.
 *
 * @param files the lists
 * @param folder where lists are kept
 * @param book a workbook whose names the lists' names are matched with; null for none
 * @param said what a person says of the lists besides
 */
public record TakeInRequest(
        List<Path> files, Path folder, @Nullable Path book, TakeIn.Said said) {

    public TakeInRequest {
        files = List.copyOf(files);
    }
}
