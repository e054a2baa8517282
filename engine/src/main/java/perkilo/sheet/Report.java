package perkilo.sheet;

import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All result sheets of one answer.
 *
 * @param sheets in the order of their tabs
 * @param given names of sheets that belong to the person from now on: they are read as input and never replaced
 */
public record Report(List<ResultSheet> sheets, Set<String> given) {

    public Report {
        sheets = List.copyOf(sheets);
        given = Set.copyOf(given);
    }

    /** A report of result sheets only. */
    public Report(List<ResultSheet> sheets) {
        this(sheets, Set.of());
    }

    /** The same sheets without formulas over the person's own cells; their values become plain numbers. */
    public Report alone() {
        return new Report(sheets.stream().map(Report::alone).toList(), given);
    }

    private static ResultSheet alone(ResultSheet sheet) {
        SortedMap<Integer, SortedMap<Integer, ResultSheet.Cell>> cells = new TreeMap<>();
        sheet.cells().forEach((row, inRow) -> {
            SortedMap<Integer, ResultSheet.Cell> columns = new TreeMap<>();
            inRow.forEach((column, cell) -> columns.put(column, alone(cell)));
            cells.put(row, columns);
        });
        return sheet.withCells(cells);
    }

    private static ResultSheet.Cell alone(ResultSheet.Cell cell) {
        ResultSheet.Content content = cell.content();
        if (content instanceof ResultSheet.Value value) {
            content = new ResultSheet.Value(value.expr().alone());
        } else if (content instanceof ResultSheet.Sentence sentence) {
            content = new ResultSheet.Sentence(
                    sentence.parts().stream().map(ResultSheet.Part::alone).toList());
        }
        return new ResultSheet.Cell(content, cell.look(), cell.format(), cell.link());
    }
}
