package perkilo.report.order;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.orderplan.StockFlow;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/**
 * The stock of an item on a day. JSON shows it as a row; the sheet shows each of its figures as a row that has a column
 * for each day.
 *
 * @param flow the item's stock
 * @param day the day
 * @param period the day's index
 */
record StockDay(StockFlow flow, LocalDate day, int period) {

    static final Column<StockDay> NEEDED =
            figure("needed", "Needed", of -> of.flow().item().needed().get(of.period()));
    static final Column<StockDay> OPENING =
            figure("opening", "Opening", of -> of.figures().opening());
    static final Column<StockDay> DELIVERED = figure(
            "delivered", "Arriving from goods on order", of -> of.figures().delivered());
    static final Column<StockDay> BOUGHT =
            figure("bought", "Bought", of -> of.figures().bought());
    static final Column<StockDay> USED =
            figure("used", "Used", of -> of.figures().used());
    static final Column<StockDay> EXPIRED =
            figure("expired", "Expired", of -> of.figures().expired());
    static final Column<StockDay> CLOSING =
            figure("closing", "Closing: still usable", of -> of.figures().closing());
    static final Column<StockDay> ON_SHELF = Column.<StockDay>of("onShelf", "On the shelf, with expired goods")
            .value(of -> of.figures().onShelf());

    private static final Table<StockDay> TABLE = Table.of(
            Column.<StockDay>of("day", "Day").json(of -> of.day().toString()),
            NEEDED,
            OPENING,
            DELIVERED,
            BOUGHT,
            USED,
            EXPIRED,
            CLOSING,
            ON_SHELF);

    /** The days of an item's stock. */
    static Table.Filled<StockDay> of(StockFlow flow, List<LocalDate> days) {
        List<StockDay> rows = new ArrayList<>();
        for (int period = 0; period < days.size(); period++) {
            rows.add(new StockDay(flow, days.get(period), period));
        }
        return TABLE.with(rows);
    }

    private StockFlow.Day figures() {
        return flow.days().get(period);
    }

    private static Column<StockDay> figure(String key, String heading, Function<StockDay, @Nullable BigDecimal> value) {
        return Column.<StockDay>of(key, heading).value(value).json();
    }
}
