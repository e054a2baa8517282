package perkilo.report.order;

import java.math.BigDecimal;
import java.util.stream.Collectors;
import perkilo.orderplan.LateNeed;
import perkilo.orderplan.NotCovered;
import perkilo.orderplan.PlannedRun;
import perkilo.origin.Decimals;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** What a plan does not meet in time, or at all: on the sheet, in JSON and on the terminal. */
public final class UnmetTables {

    private static final int PLACES = 3;

    /** A run that waits, for JSON. */
    private static final Table<PlannedRun> WAITING = Table.of(
            Column.<PlannedRun>of("product", "").json(run -> run.demand().product()),
            Column.<PlannedRun>of("units", "").json(run -> run.demand().units().value()),
            Column.<PlannedRun>of("neededBy", "")
                    .json(run -> run.demand().neededBy().date().toString()));

    /** Needs that are planned later than they are needed. */
    public static final Table<LateNeed> LATE = Table.of(
            Column.<LateNeed>of("item", "Item")
                    .words(LateNeed::item)
                    .look(Look.LABEL)
                    .json()
                    .terminal(LateNeed::item),
            QuoteDates.<LateNeed>dates("neededBy", "Needed by", LateNeed::neededBy)
                    .json(LateNeed::neededBy)
                    .terminal(need -> need.neededBy().toString()),
            QuoteDates.<LateNeed>dates("possibleOn", "Possible on", LateNeed::possibleOn)
                    .look(Look.ERROR)
                    .json(LateNeed::possibleOn)
                    .terminal(need -> need.possibleOn().toString()),
            Column.<LateNeed>of("daysLate", "Days late")
                    .value(need -> BigDecimal.valueOf(need.daysLate()))
                    .format(NumberFormat.WHOLE)
                    .json(LateNeed::daysLate)
                    .terminal(need -> Long.toString(need.daysLate())),
            Column.<LateNeed>of("runs", "Runs that wait for it")
                    .words(need -> need.runs().stream()
                            .map(run -> run.needs().title())
                            .distinct()
                            .collect(Collectors.joining(", ")))
                    .json(need -> WAITING.with(need.runs())));

    /** Needs that are not planned. */
    public static final Table<NotCovered> NOT_COVERED = Table.of(
            Column.<NotCovered>of("item", "Item")
                    .words(NotCovered::item)
                    .look(Look.LABEL)
                    .link(NotCovered::origin)
                    .json()
                    .terminal(NotCovered::item),
            QuoteDates.<NotCovered>dates("neededBy", "Needed by", NotCovered::neededBy)
                    .words(need -> need.neededBy() == null ? "not known" : null)
                    .json(need -> need.neededBy() == null ? null : neededBy(need))
                    .terminal(UnmetTables::neededBy),
            Column.<NotCovered>of("quantity", "Quantity")
                    .value(NotCovered::quantity)
                    .words(need -> "not known")
                    .format(need -> need.unit().equals("kg") ? NumberFormat.QUANTITY : NumberFormat.WHOLE)
                    .json(NotCovered::quantity)
                    .terminal(UnmetTables::quantity),
            Column.<NotCovered>of("unit", "Unit").words(NotCovered::unit).json().terminal(NotCovered::unit),
            Column.<NotCovered>of("why", "Why")
                    .words(NotCovered::why)
                    .look(Look.ERROR)
                    .json()
                    .terminal(NotCovered::why));

    private UnmetTables() {}

    private static String neededBy(NotCovered need) {
        return need.neededBy() == null ? "not known" : need.neededBy().toString();
    }

    private static String quantity(NotCovered need) {
        BigDecimal quantity = need.quantity();
        return quantity == null ? "not known" : Decimals.readable(quantity, PLACES);
    }
}
