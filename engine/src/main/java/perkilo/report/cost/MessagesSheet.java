package perkilo.report.cost;

import java.util.ArrayList;
import java.util.List;
import perkilo.origin.Finding;
import perkilo.sheet.Look;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/** Messages: all findings about the workbook, each with its cell and the commands that say it. */
public final class MessagesSheet {

    /** The name that the sheet is built with. */
    public static final String NAME = "Messages";

    private static final int HEADS = 2;

    /** The columns in JSON. */
    public static final Table<Finding> TABLE = Table.of(
            Column.<Finding>of("level", "Level")
                    .words(finding -> finding.level().word())
                    .look(MessagesSheet::look)
                    .width(12)
                    .json(),
            Column.<Finding>of("where", "Where")
                    .words(finding -> finding.origin().where())
                    .link(Finding::origin)
                    .width(42)
                    .json(),
            Column.<Finding>of("text", "What").words(Finding::text).width(110).json());

    private static final List<String> HEADERS = List.of("Command", "Level", "Where", "What");

    private static final Table<Line> LINES = Table.of(
            Column.<Line>of("command", HEADERS.get(0))
                    .words(line -> String.join(", ", line.commands()))
                    .width(14),
            Column.<Line>of("level", HEADERS.get(1))
                    .words(line -> line.finding().level().word())
                    .look(line -> look(line.finding()))
                    .width(12),
            Column.<Line>of("where", HEADERS.get(2))
                    .words(line -> line.finding().origin().where())
                    .link(line -> line.finding().origin())
                    .width(42),
            Column.<Line>of("text", HEADERS.get(3))
                    .words(line -> line.finding().text())
                    .width(110));

    private MessagesSheet() {}

    /**
     * A message and who says it.
     *
     * @param commands such as {@code cost}, the newest first
     */
    public record Line(List<String> commands, Finding finding) {

        public Line {
            commands = List.copyOf(commands);
        }

        private boolean isSame(Finding other) {
            return finding.level() == other.level()
                    && finding.text().equals(other.text())
                    && finding.origin().where().equals(other.origin().where());
        }
    }

    /** The sheet for the messages of one command. */
    public static ResultSheet of(Report.Said said) {
        return of(said, List.of());
    }

    /**
     * The sheet for the messages of one command beside those of others.
     *
     * @param earlier what the sheet said before this command
     */
    public static ResultSheet of(Report.Said said, List<Line> earlier) {
        List<Line> lines = new ArrayList<>();
        List<Line> others = new ArrayList<>();
        for (Line line : earlier) {
            List<String> commands = line.commands().stream()
                    .filter(command -> !command.equals(said.command()))
                    .toList();
            if (!commands.isEmpty()) {
                others.add(new Line(commands, line.finding()));
            }
        }
        for (Finding finding : said.findings()) {
            List<String> commands = new ArrayList<>(List.of(said.command()));
            others.stream().filter(line -> line.isSame(finding)).forEach(line -> commands.addAll(line.commands()));
            others.removeIf(line -> line.isSame(finding));
            lines.add(new Line(commands, finding));
        }
        lines.addAll(others);
        return sheet(lines);
    }

    private static ResultSheet sheet(List<Line> lines) {
        SheetBuilder sheet = new SheetBuilder(NAME).freeze(HEADS + 1, 0).landscape();
        sheet.title(0, NAME);
        Placed<Line> table = LINES.at(sheet, HEADS, lines).write().filter();
        if (lines.isEmpty()) {
            sheet.hint(table.next(), "No messages.");
        }
        return sheet.build();
    }

    /** The headers of the table, from left to right. */
    public static List<String> headers() {
        return HEADERS;
    }

    /** The look of a level. */
    public static Look look(Finding finding) {
        return switch (finding.level()) {
            case ERROR -> Look.ERROR;
            case WARNING -> Look.WARNING;
            case NOTE -> Look.PLAIN;
        };
    }
}
