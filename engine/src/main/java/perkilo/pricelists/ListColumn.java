package perkilo.pricelists;

import java.util.List;
import perkilo.origin.Origin;

/**
 * A column of a list, and what it is read as.
 *
 * @param key tells it apart on a review
 * @param where its heading
 * @param heading its heading, or the column's letters if it has none
 * @param samples the first values below it
 * @param use what it is read as, in the words of a column's uses; empty if it is not read
 * @param said what a person said that it is; empty for nothing
 * @param remark where that is known from; empty for nothing
 */
public record ListColumn(
        String key, Origin where, String heading, List<String> samples, String use, String said, String remark) {

    public ListColumn {
        samples = List.copyOf(samples);
    }

    /** Whether it is not read, whether a person said so or not. */
    public boolean isNotRead() {
        return use.isEmpty();
    }
}
