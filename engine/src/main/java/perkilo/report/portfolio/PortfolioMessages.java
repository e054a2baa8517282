package perkilo.report.portfolio;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.report.Look;
import perkilo.report.ResultSheet;
import perkilo.report.SheetBuilder;
import perkilo.report.SheetNames;

/** Messages of all books, each with the cell it is about; what is said of a shared file is said once. */
final class PortfolioMessages {

    private static final String NAME = "Messages";

    private final SheetBuilder sheet =
            new SheetBuilder(NAME).widths(12, 26, 26, 100).freeze(3, 0);
    private final Map<PortfolioBook, Origin> firstOf = new LinkedHashMap<>();

    private PortfolioMessages() {}

    static PortfolioMessages of(List<PortfolioBook> books) {
        PortfolioMessages messages = new PortfolioMessages();
        messages.write(books);
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

    private void write(List<PortfolioBook> books) {
        sheet.text(0, 0, NAME, Look.TITLE);
        List<String> heads = List.of("Level", "Book", "Where", "What");
        for (int column = 0; column < heads.size(); column++) {
            sheet.text(2, column, heads.get(column), Look.HEADER);
        }
        int row = 3;
        Set<Finding> told = new HashSet<>();
        for (PortfolioBook book : books) {
            for (Finding finding : book.findings()) {
                if (told.add(shared(book, finding) ? finding : inBook(book, finding))) {
                    firstOf.putIfAbsent(book, new Origin("", NAME, SheetNames.cell(row, 0)));
                    line(row++, book, finding);
                }
            }
        }
        if (row == 3) {
            sheet.text(row, 0, "Nothing to say.", Look.HINT);
        } else {
            sheet.filter(2, 0, row - 1, 3);
        }
    }

    private void line(int row, PortfolioBook book, Finding finding) {
        Look look = switch (finding.level()) {
            case ERROR -> Look.ERROR;
            case WARNING -> Look.WARNING;
            case NOTE -> Look.PLAIN;
        };
        sheet.text(row, 0, finding.level().word(), look);
        if (shared(book, finding)) {
            sheet.text(row, 1, "", Look.PLAIN);
            sheet.text(row, 2, finding.origin().where(), Look.PLAIN);
        } else {
            sheet.text(row, 1, book.name(), Look.PLAIN, new Origin(book.address(), "", ""));
            sheet.text(
                    row,
                    2,
                    finding.origin().where(),
                    Look.PLAIN,
                    inBook(book, finding).origin());
        }
        sheet.text(row, 3, finding.text(), Look.PLAIN);
    }

    /** Whether a finding is about a file that the book only uses. */
    private static boolean shared(PortfolioBook book, Finding finding) {
        String file = finding.origin().file();
        return !file.isEmpty() && !book.name().endsWith(file);
    }

    /** The finding with a place that a link from another workbook finds. */
    private static Finding inBook(PortfolioBook book, Finding finding) {
        Origin place = finding.origin();
        return new Finding(finding.level(), new Origin(book.address(), place.sheet(), place.cell()), finding.text());
    }
}
