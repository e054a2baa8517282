package perkilo.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.DayOff;
import perkilo.model.Demand;
import perkilo.model.Run;
import perkilo.model.StockLot;
import perkilo.names.Names;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.reading.arrange.MonthText;
import perkilo.reading.table.Amount;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;
import perkilo.schema.DaysOffSheet;
import perkilo.schema.DemandSheet;
import perkilo.schema.RunsSheet;
import perkilo.schema.StockSheet;
import perkilo.units.Measure;

/** Reads what is to be made: runs, demand, and the stock that goes into it. */
final class PlanRows {

    private final Tables tables;
    private final Findings findings;

    PlanRows(Tables tables, Findings findings) {
        this.tables = tables;
        this.findings = findings;
    }

    /** What is to be costed. */
    List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        for (TableRow row : tables.rows(RunsSheet.SCHEMA, findings)) {
            boolean bulk = !row.isBlank(RunsSheet.FORMULA)
                    && (row.isBlank(RunsSheet.PRODUCT) || !row.isBlank(RunsSheet.BATCH_KG));
            if (!row.isBlank(RunsSheet.PRODUCT) && !(bulk && row.isBlank(RunsSheet.UNITS))) {
                runOfProduct(row, runs);
            }
            if (bulk) {
                runOfBulk(row, runs);
            }
        }
        return runs;
    }

    private static void runOfProduct(TableRow row, List<Run> runs) {
        row.require(RunsSheet.UNITS);
        Figure units = row.figure(RunsSheet.UNITS);
        if (units != null) {
            runs.add(new Run.OfProduct(row.text(RunsSheet.PRODUCT), units, row.origin(RunsSheet.PRODUCT)));
        }
    }

    private static void runOfBulk(TableRow row, List<Run> runs) {
        row.require(RunsSheet.BATCH_KG);
        Figure kg = row.figure(RunsSheet.BATCH_KG);
        if (kg != null) {
            runs.add(new Run.OfBulk(row.text(RunsSheet.FORMULA), kg, row.origin(RunsSheet.FORMULA)));
        }
    }

    /** What purchases are planned for. */
    List<Demand> demand() {
        List<Demand> demand = new ArrayList<>();
        for (TableRow row : tables.rows(DemandSheet.SCHEMA, findings)) {
            row.require(DemandSheet.UNITS, DemandSheet.NEEDED_BY);
            Figure units = row.figure(DemandSheet.UNITS);
            Day neededBy = neededBy(row);
            if (units != null && neededBy != null) {
                Origin place = row.table().grid().rowPlace(row.number()).orElse(row.origin(DemandSheet.PRODUCT));
                demand.add(new Demand(row.text(DemandSheet.PRODUCT), units, neededBy, place));
            }
        }
        return demand;
    }

    /** The day that units are needed by; the first of the month if only a month is said. */
    private static @Nullable Day neededBy(TableRow row) {
        LocalDate month = MonthText.firstDay(row.cell(DemandSheet.NEEDED_BY));
        return month == null
                ? row.day(DemandSheet.NEEDED_BY)
                : new Day(month, row.origin(DemandSheet.NEEDED_BY), false);
    }

    /** The days on which nothing is ordered. */
    List<DayOff> daysOff() {
        List<DayOff> days = new ArrayList<>();
        for (TableRow row : tables.rows(DaysOffSheet.SCHEMA, findings)) {
            Day day = row.day(DaysOffSheet.DAY);
            if (day != null) {
                days.add(new DayOff(day, row.text(DaysOffSheet.NOTE)));
            }
        }
        return days;
    }

    /** What is on the shelf, and what is on order. */
    List<StockLot> stock() {
        List<StockLot> stock = new ArrayList<>();
        for (TableRow row : tables.rows(StockSheet.SCHEMA, findings)) {
            row.require(StockSheet.QUANTITY_OF);
            Amount quantity = row.amount(StockSheet.QUANTITY_OF);
            Measure unit = QuantityCells.unit(row, StockSheet.UNIT_OF, StockSheet.QUANTITY_OF, quantity);
            Gallons.Asked gallons =
                    unit == Measure.US_GAL ? Gallons.of(row, StockSheet.UNIT_OF, StockSheet.QUANTITY_OF) : null;
            if (gallons != null) {
                gallons.report(row);
            }
            Day expires = row.day(StockSheet.EXPIRES);
            Day expected = row.day(StockSheet.EXPECTED);
            requireDayOfGoodsOnOrder(row);
            if (quantity != null && unit != null) {
                stock.add(new StockLot(
                        row.text(StockSheet.ITEM),
                        QuantityCells.in(row, StockSheet.UNIT_OF, quantity, unit),
                        unit,
                        expires,
                        expected,
                        row.origin(StockSheet.ITEM)));
            }
        }
        return stock;
    }

    /** Goods on order are not on the shelf, so a blank day means nothing on their sheet. */
    private void requireDayOfGoodsOnOrder(TableRow row) {
        String sheet = Names.key(row.table().grid().title());
        boolean onOrder =
                StockSheet.ON_ORDER.stream().anyMatch(name -> Names.key(name).equals(sheet));
        if (onOrder && row.isBlank(StockSheet.EXPECTED)) {
            findings.error(row.origin(StockSheet.EXPECTED), PlanMessages.noDayOnOrder());
        }
    }
}
