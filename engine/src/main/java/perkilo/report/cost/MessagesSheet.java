package perkilo.report.cost;

import java.util.List;
import perkilo.origin.Finding;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/** Messages: all findings about the workbook, each with its cell. */
public final class MessagesSheet {

    private static final String NAME = "Messages";
    private static final int HEADS = 2;

    /** The columns, for JSON too. */
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

    private MessagesSheet() {}

    /** The sheet for findings. */
    public static ResultSheet of(List<Finding> findings) {
        SheetBuilder sheet = new SheetBuilder(NAME).freeze(HEADS + 1, 0).landscape();
        sheet.title(0, NAME);
        Placed<Finding> table = TABLE.at(sheet, HEADS, findings).write().filter();
        if (findings.isEmpty()) {
            sheet.hint(table.next(), "No messages.");
        }
        return sheet.build();
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
