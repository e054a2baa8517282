package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.origin.Origin;
import perkilo.report.cost.MessagesSheet;
import perkilo.report.cost.MessagesSheet.Line;
import perkilo.sheet.Report;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/** The messages of other commands that a workbook already shows; they stay beside those of the command that runs. */
final class EarlierMessages {

    private EarlierMessages() {}

    /** The report, its sheet of messages together with what other commands said in the workbook. */
    static Report beside(Report report, Path book) throws IOException {
        Report.Said said = report.said();
        if (said == null) {
            return report;
        }
        List<Line> earlier = in(book);
        return earlier.isEmpty() ? report : report.with(MessagesSheet.of(said, earlier));
    }

    private static List<Line> in(Path book) throws IOException {
        List<Line> lines = new ArrayList<>();
        for (Grid sheet : Grids.ofResults(book, MessagesSheet.NAME)) {
            boolean below = false;
            for (int row : sheet.rows().numbers()) {
                NavigableMap<Integer, Cell> cells = sheet.row(row);
                List<String> texts = texts(cells);
                if (below) {
                    line(texts).ifPresent(lines::add);
                }
                below |= texts.equals(MessagesSheet.headers());
            }
        }
        return lines;
    }

    private static List<String> texts(NavigableMap<Integer, Cell> cells) {
        List<String> texts = new ArrayList<>();
        for (int column = 0; column < MessagesSheet.headers().size(); column++) {
            texts.add(cells.getOrDefault(column, Cell.BLANK).text());
        }
        return texts;
    }

    private static Optional<Line> line(List<String> texts) {
        List<String> commands = Arrays.stream(texts.get(0).split(",", -1))
                .map(String::strip)
                .filter(command -> !command.isEmpty())
                .toList();
        Optional<Level> level = Arrays.stream(Level.values())
                .filter(known -> known.word().equals(texts.get(1)))
                .findFirst();
        return commands.isEmpty()
                ? Optional.empty()
                : level.map(known -> new Line(commands, new Finding(known, place(texts.get(2)), texts.get(3))));
    }

    /** The place without its file, so that no cell links to it: rows may have moved since. */
    private static Origin place(String where) {
        int mark = where.lastIndexOf('!');
        return mark < 0
                ? new Origin("", "", where)
                : new Origin("", where.substring(0, mark), where.substring(mark + 1));
    }
}
