package perkilo.report;

import java.util.List;

/**
 * All result sheets of one answer.
 *
 * @param sheets in the order of their tabs
 */
public record Report(List<ResultSheet> sheets) {

    public Report {
        sheets = List.copyOf(sheets);
    }
}
