package perkilo.report.cost;

import java.util.List;
import perkilo.origin.Finding;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/** Messages: everything that a person should know about the workbook, each with the cell it is about. */
public final class MessagesSheet {

    private MessagesSheet() {}

    /** The sheet for what was found. */
    public static ResultSheet of(List<Finding> findings) {
        SheetBuilder sheet =
                new SheetBuilder("Messages").widths(12, 42, 110).freeze(3, 0).landscape();
        sheet.text(0, 0, "Messages", Look.TITLE);
        sheet.text(2, 0, "Level", Look.HEADER);
        sheet.text(2, 1, "Where", Look.HEADER);
        sheet.text(2, 2, "What", Look.HEADER);
        int row = 3;
        for (Finding finding : findings) {
            sheet.text(row, 0, finding.level().word(), look(finding));
            sheet.text(row, 1, finding.origin().where(), Look.PLAIN, finding.origin());
            sheet.text(row, 2, finding.text(), Look.PLAIN);
            row++;
        }
        if (findings.isEmpty()) {
            sheet.text(row, 0, "Nothing to say.", Look.HINT);
        } else {
            sheet.filter(2, 0, row - 1, 2);
        }
        return sheet.build();
    }

    private static Look look(Finding finding) {
        return switch (finding.level()) {
            case ERROR -> Look.ERROR;
            case WARNING -> Look.WARNING;
            case NOTE -> Look.PLAIN;
        };
    }
}
