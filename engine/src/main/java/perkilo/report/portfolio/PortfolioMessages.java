package perkilo.report.portfolio;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.report.cost.MessagesSheet;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/** Messages of all books, each with the cell it is about; those about shared files come first, and once. */
final class PortfolioMessages {

    private static final String NAME = "Messages";

    private static final int HEADS = 2;

    private static final Column<Line> LEVEL = Column.<Line>of("level", "Level")
            .words(line -> line.finding().level().word())
            .look(line -> MessagesSheet.look(line.finding()))
            .width(12);

    private static final Table<Line> TABLE = Table.of(
            LEVEL,
            Column.<Line>of("book", "Book")
                    .words(line -> line.book() == null ? "all" : line.book().name())
                    .file(line -> line.book() == null ? null : line.book().address())
                    .width(26),
            Column.<Line>of("where", "Where")
                    .words(line -> line.finding().origin().where())
                    .link(PortfolioMessages::place)
                    .width(42),
            Column.<Line>of("text", "What").words(line -> line.finding().text()).width(110));

    private final Placed<Line> table;
    private final IdentityHashMap<PortfolioBook, Origin> firstOf = new IdentityHashMap<>();

    /** A message; about one book, or about a file that all books share. */
    private record Line(@Nullable PortfolioBook book, Finding finding) {}

    private PortfolioMessages(List<Line> lines) {
        SheetBuilder sheet = new SheetBuilder(NAME).freeze(HEADS + 1, 0).landscape();
        sheet.title(0, NAME);
        table = TABLE.at(sheet, HEADS, lines);
        for (int index = 0; index < lines.size(); index++) {
            PortfolioBook book = lines.get(index).book();
            if (book != null) {
                firstOf.putIfAbsent(book, table.origin(index, LEVEL));
            }
        }
    }

    static PortfolioMessages of(List<PortfolioBook> books, List<Finding> shared) {
        List<Line> lines = new ArrayList<>();
        shared.forEach(finding -> lines.add(new Line(null, finding)));
        for (PortfolioBook book : books) {
            book.findings().forEach(finding -> lines.add(new Line(book, finding)));
        }
        return new PortfolioMessages(lines);
    }

    /** The sheet. */
    ResultSheet sheet() {
        table.write().filter();
        if (table.rows().isEmpty()) {
            table.sheet().hint(table.next(), "No messages.");
        }
        return table.sheet().build();
    }

    /** The first message about a book; no place if there is none. */
    Origin first(PortfolioBook book) {
        return firstOf.getOrDefault(book, Origin.NONE);
    }

    /** A place in the book, for links from another workbook; places in other files have no link. */
    private static Origin place(Line line) {
        PortfolioBook book = line.book();
        Origin origin = line.finding().origin();
        if (book == null) {
            return Origin.NONE;
        }
        boolean elsewhere = !origin.file().isEmpty() && !book.name().endsWith(origin.file());
        return elsewhere ? Origin.NONE : new Origin(book.address(), origin.sheet(), origin.cell());
    }
}
