package perkilo.report.order;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.orderplan.StockFlow;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/**
 * The stock of an item in a month. JSON shows it as a row; the sheet shows each of its figures as a row that has a
 * column for each month.
 *
 * @param flow the item's stock
 * @param month the month
 * @param period the month's index
 */
record StockMonth(StockFlow flow, YearMonth month, int period) {

    static final Column<StockMonth> NEEDED =
            figure("needed", "Needed", of -> of.flow().item().needed().get(of.period()));
    static final Column<StockMonth> OPENING =
            figure("opening", "Opening", of -> of.figures().opening());
    static final Column<StockMonth> DELIVERED = figure(
            "delivered", "Arriving from goods on order", of -> of.figures().delivered());
    static final Column<StockMonth> BOUGHT =
            figure("bought", "Bought", of -> of.figures().bought());
    static final Column<StockMonth> USED =
            figure("used", "Used", of -> of.figures().used());
    static final Column<StockMonth> EXPIRED =
            figure("expired", "Expired", of -> of.figures().expired());
    static final Column<StockMonth> CLOSING =
            figure("closing", "Closing: still usable", of -> of.figures().closing());
    static final Column<StockMonth> ON_SHELF = Column.<StockMonth>of("onShelf", "On the shelf, with expired goods")
            .value(of -> of.figures().onShelf());

    private static final Table<StockMonth> TABLE = Table.of(
            Column.<StockMonth>of("month", "Month").json(StockMonth::month),
            NEEDED,
            OPENING,
            DELIVERED,
            BOUGHT,
            USED,
            EXPIRED,
            CLOSING,
            ON_SHELF);

    /** The months of an item's stock. */
    static Table.Filled<StockMonth> of(StockFlow flow, List<YearMonth> months) {
        List<StockMonth> rows = new ArrayList<>();
        for (int period = 0; period < months.size(); period++) {
            rows.add(new StockMonth(flow, months.get(period), period));
        }
        return TABLE.with(rows);
    }

    private StockFlow.Month figures() {
        return flow.months().get(period);
    }

    private static Column<StockMonth> figure(
            String key, String heading, Function<StockMonth, @Nullable BigDecimal> value) {
        return Column.<StockMonth>of(key, heading).value(value).json();
    }
}
