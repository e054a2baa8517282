package perkilo.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import perkilo.reading.table.Findings;
import perkilo.reading.table.Table;
import perkilo.reading.table.TableRow;
import perkilo.schema.DemandSheet;
import perkilo.schema.RunsSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.StockSheet;

/**
 * Tables of one kind that are all read, and may not all be meant: last year's count beside this year's, a draft beside
 * the plan. What is on order is a kind of its own beside what is on the shelf.
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
        List<Counted> stock = counted(StockSheet.SCHEMA);
        warn(
                "Stock",
                "added up",
                stock.stream().filter(table -> !table.all(onOrder)).toList());
        warn(
                "Goods on order",
                "added up",
                stock.stream().filter(table -> table.all(onOrder)).toList());
        warn("Demand", "added up", counted(DemandSheet.SCHEMA));
        warn("Runs", "all costed", counted(RunsSheet.SCHEMA));
    }

    private List<Counted> counted(SheetSchema schema) {
        List<Table> all = tables.of(schema);
        if (all.size() < 2) {
            return List.of();
        }
        List<Counted> counted = new ArrayList<>();
        for (Table table : all) {
            List<TableRow> rows = table.rows(new Findings());
            if (!rows.isEmpty()) {
                counted.add(new Counted(table, rows));
            }
        }
        return counted;
    }

    private void warn(String kind, String how, List<Counted> counted) {
        if (counted.size() < 2) {
            return;
        }
        boolean oneEach = counted.stream()
                        .map(table -> table.table().grid().sheet())
                        .distinct()
                        .count()
                == counted.size();
        String places = counted.stream().map(table -> table.words(oneEach)).collect(Collectors.joining(", "));
        findings.warning(
                counted.get(1).table().header(),
                "%s: %d tables are read and %s: %s. If one of them is old or a draft, hide its sheet or delete its row of headers"
                        .formatted(kind, counted.size(), how, places));
    }

    private record Counted(Table table, List<TableRow> rows) {

        boolean all(Predicate<TableRow> rule) {
            return rows.stream().allMatch(rule);
        }

        String words(boolean bySheet) {
            String place = bySheet ? table.grid().sheet() : table.header().where();
            return "%s (%d %s)".formatted(place, rows.size(), rows.size() == 1 ? "row" : "rows");
        }
    }
}
