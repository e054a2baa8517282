package perkilo.report.order;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import perkilo.sheet.Look;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** The columns on the sheet of stock: one for each day, and those around them. */
final class StockColumns {

    private static final int WIDTH = 13;

    final Column<StockLine> name = names("name", "By lot, then by day");
    final Column<StockLine> quantity = StockLine.figures("quantity", "Quantity").width(WIDTH);
    final Column<StockLine> until = Column.<StockLine>of("until", "Usable until")
            .words(StockLine::until)
            .width(WIDTH);
    final List<Column<StockLine>> days = new ArrayList<>();
    final Column<StockLine> left = StockLine.figures("left", "Left at the end").width(WIDTH);
    final Column<StockLine> expired = StockLine.figures("expired", "Expired").width(WIDTH);

    final Column<StockLine> worthName;

    /** The block of an item. */
    final Table<StockLine> block;

    /** The table of the value of the stock. */
    final Table<StockLine> worth;

    /**
     * The columns.
     *
     * @param home the currency that the stock is valued in
     */
    StockColumns(List<LocalDate> days, String home) {
        for (LocalDate day : days) {
            this.days.add(StockLine.figures(day.toString(), day.toString()).width(WIDTH));
        }
        List<Column<StockLine>> ofBlock = new ArrayList<>(List.of(name, quantity, until));
        ofBlock.addAll(this.days);
        ofBlock.addAll(List.of(left, expired));
        this.block = new Table<>(ofBlock);
        this.worthName = names("worth", "In " + home);
        List<Column<StockLine>> ofWorth = new ArrayList<>(List.of(worthName));
        ofWorth.addAll(List.of(gap(), gap()));
        ofWorth.addAll(this.days);
        this.worth = new Table<>(ofWorth);
    }

    /** The column of the first day. */
    Column<StockLine> firstDay() {
        return days.get(0);
    }

    /** The column of the last day. */
    Column<StockLine> lastDay() {
        return days.get(days.size() - 1);
    }

    /** Keeps the days in one column with those of the blocks. */
    private static Column<StockLine> gap() {
        return Column.<StockLine>of("gap", "").withoutHeading();
    }

    private static Column<StockLine> names(String key, String heading) {
        return Column.<StockLine>of(key, heading)
                .words(StockLine::name)
                .look(Look.LABEL)
                .link(StockLine::link)
                .width(56);
    }
}
