package perkilo.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import perkilo.origin.Counted;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.schema.DemandSheet;
import perkilo.schema.RunsSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.StockSheet;

/**
 * Warns of several tables of one kind: all are read, but one may be last year's count or a draft. Goods on order are a
 * kind of their own, apart from goods on the shelf.
 */
final class SeveralSheets {

    private final Tables tables;
    private final Findings findings;

    SeveralSheets(Tables tables, Findings findings) {
        this.tables = tables;
        this.findings = findings;
    }

    void run() {
        Predicate<TableRow> onOrder = row -> !row.isBlank(StockSheet.EXPECTED);
        List<ReadTable> stock = readTables(StockSheet.SCHEMA);
        warn(
                stock.stream().filter(table -> !table.all(onOrder)).toList(),
                tables -> PlanMessages.addedUp("Stock", tables));
        warn(
                stock.stream().filter(table -> table.all(onOrder)).toList(),
                tables -> PlanMessages.addedUp("Goods on order", tables));
        warn(readTables(DemandSheet.SCHEMA), tables -> PlanMessages.addedUp("Demand", tables));
        warn(readTables(RunsSheet.SCHEMA), tables -> PlanMessages.allCosted("Runs", tables));
    }

    private List<ReadTable> readTables(SheetSchema schema) {
        List<FoundTable> all = tables.of(schema);
        if (all.size() < 2) {
            return List.of();
        }
        List<ReadTable> read = new ArrayList<>();
        for (FoundTable table : all) {
            List<TableRow> rows = table.rows(new Findings());
            if (!rows.isEmpty()) {
                read.add(new ReadTable(table, rows));
            }
        }
        return read;
    }

    private void warn(List<ReadTable> read, Function<List<String>, String> message) {
        if (read.size() < 2) {
            return;
        }
        boolean oneEach = read.stream()
                        .map(table -> table.table().grid().sheet())
                        .distinct()
                        .count()
                == read.size();
        List<String> places = read.stream().map(table -> table.words(oneEach)).toList();
        findings.warning(read.get(1).table().header(), message.apply(places));
    }

    private record ReadTable(FoundTable table, List<TableRow> rows) {

        boolean all(Predicate<TableRow> rule) {
            return rows.stream().allMatch(rule);
        }

        String words(boolean bySheet) {
            String place = bySheet ? table.grid().sheet() : table.header().where();
            return place + " (" + Counted.of(rows.size(), "row") + ")";
        }
    }
}
