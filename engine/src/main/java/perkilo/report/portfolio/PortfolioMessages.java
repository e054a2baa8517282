package perkilo.report.portfolio;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/** Messages of all books, each with the cell it is about; what is said of shared files stands first, and once. */
final class PortfolioMessages {

    private static final String NAME = "Messages";

    private final SheetBuilder sheet =
            new SheetBuilder(NAME).widths(12, 26, 42, 110).freeze(3, 0).landscape();
    private final Map<PortfolioBook, Origin> firstOf = new LinkedHashMap<>();

    private PortfolioMessages() {}

    static PortfolioMessages of(List<PortfolioBook> books, List<Finding> shared) {
        PortfolioMessages messages = new PortfolioMessages();
        messages.write(books, shared);
        return messages;
    }

    /** The sheet. */
    ResultSheet sheet() {
        return sheet.build();
    }

    /** The first message about a book; nowhere if there is none. */
    Origin first(PortfolioBook book) {
        return firstOf.getOrDefault(book, Origin.NONE);
    }

    private void write(List<PortfolioBook> books, List<Finding> shared) {
        sheet.text(0, 0, NAME, Look.TITLE);
        List<String> heads = List.of("Level", "Book", "Where", "What");
        for (int column = 0; column < heads.size(); column++) {
            sheet.text(2, column, heads.get(column), Look.HEADER);
        }
        int row = 3;
        for (Finding finding : shared) {
            sheet.text(row, 1, "all", Look.PLAIN);
            sheet.text(row, 2, finding.origin().where(), Look.PLAIN);
            line(row++, finding);
        }
        for (PortfolioBook book : books) {
            for (Finding finding : book.findings()) {
                firstOf.putIfAbsent(book, new Origin("", NAME, SheetNames.cell(row, 0)));
                sheet.fileName(row, 1, book.name(), Look.PLAIN, book.address());
                sheet.text(row, 2, finding.origin().where(), Look.PLAIN, place(book, finding.origin()));
                line(row++, finding);
            }
        }
        if (row == 3) {
            sheet.text(row, 0, "Nothing to say.", Look.HINT);
        } else {
            sheet.filter(2, 0, row - 1, 3);
        }
    }

    private void line(int row, Finding finding) {
        Look look = switch (finding.level()) {
            case ERROR -> Look.ERROR;
            case WARNING -> Look.WARNING;
            case NOTE -> Look.PLAIN;
        };
        sheet.text(row, 0, finding.level().word(), look);
        sheet.text(row, 3, finding.text(), Look.PLAIN);
    }

    /** A place in the book as a link from another workbook finds it; what stands in another file is not linked. */
    private static Origin place(PortfolioBook book, Origin origin) {
        boolean elsewhere = !origin.file().isEmpty() && !book.name().endsWith(origin.file());
        return elsewhere ? Origin.NONE : new Origin(book.address(), origin.sheet(), origin.cell());
    }
}
