package perkilo.sheet;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Finding;

/**
 * All result sheets of one answer.
 *
 * @param sheets in the order of their tabs
 * @param given names of sheets that belong to the person from now on: they are read as input and never replaced unless
 *     they are renewed
 * @param renewed names of given sheets that take the place of the person's own sheet of that name
 * @param records what is to be known of a given sheet when it is met again, by its name: a hidden word, without a slash
 * @param said what the sheet of messages says; null if the report has no such sheet
 */
public record Report(
        List<ResultSheet> sheets,
        Set<String> given,
        Set<String> renewed,
        Map<String, String> records,
        @Nullable Said said) {

    /** The sheet that compares the inputs with those of the last run; it needs the person's sheets beside it. */
    public static final String INPUTS = "Inputs as computed";

    /**
     * The messages of one command.
     *
     * @param command such as {@code cost}
     */
    public record Said(String command, List<Finding> findings) {

        public Said {
            findings = List.copyOf(findings);
        }
    }

    public Report {
        sheets = List.copyOf(sheets);
        given = Set.copyOf(given);
        renewed = Set.copyOf(renewed);
        records = Map.copyOf(records);
    }

    /** A report of result sheets only. */
    public Report(List<ResultSheet> sheets) {
        this(sheets, Set.of(), Set.of(), Map.of(), null);
    }

    /** A report of result sheets and of sheets that belong to the person from now on. */
    public Report(List<ResultSheet> sheets, Set<String> given) {
        this(sheets, given, Set.of(), Map.of(), null);
    }

    /** A report of result sheets and of sheets that belong to the person from now on, with messages. */
    public Report(List<ResultSheet> sheets, Set<String> given, @Nullable Said said) {
        this(sheets, given, Set.of(), Map.of(), said);
    }

    /** A report of result sheets, with the messages that one of them shows. */
    public Report(List<ResultSheet> sheets, Said said) {
        this(sheets, Set.of(), Set.of(), Map.of(), said);
    }

    /** The same report with another sheet in the place of the one of that name. */
    public Report with(ResultSheet other) {
        List<ResultSheet> all = sheets.stream()
                .map(sheet -> sheet.name().equals(other.name()) ? other : sheet)
                .toList();
        return new Report(all, given, renewed, records, said);
    }

    /** The same sheets without formulas over the person's own cells; their values become plain numbers. */
    public Report alone() {
        List<ResultSheet> others = sheets.stream()
                .filter(sheet -> !sheet.name().equals(INPUTS))
                .map(Report::alone)
                .toList();
        return new Report(others, given, renewed, records, said);
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
