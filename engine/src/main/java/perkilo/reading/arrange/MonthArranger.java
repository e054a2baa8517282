package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.reading.table.ColumnNames;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.schema.DemandSheet;
import perkilo.schema.InputColumn;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.GridBuilder;

/** A plan with months across and products down, or months down and products across, as a Demand table. */
final class MonthArranger {

    private static final int LEAST = 2;
    private static final double HALF = 0.5;
    private static final Pattern YEAR = Pattern.compile("(?<!\\d)(20\\d{2})(?!\\d)");
    private static final ColumnNames COLUMNS = new ColumnNames(List.of(DemandSheet.PRODUCT));

    private final Grid grid;
    private final Grid head;
    private final List<FoundTable> tables;
    private final BookNames names;
    private final Findings findings;

    MonthArranger(Grid grid, Grid head, List<FoundTable> tables, BookNames names, Findings findings) {
        this.grid = grid;
        this.head = head;
        this.tables = tables;
        this.names = names;
        this.findings = findings;
    }

    /** A month with the place that says it. */
    private record Placed(LocalDate day, Origin origin) {}

    /** The plan of a sheet; empty if it is none. */
    Optional<ArrangedPart> part() {
        boolean understood = tables.stream().anyMatch(table -> Arranger.isComplete(table));
        if (understood || grid.rows().isEmpty()) {
            return Optional.empty();
        }
        for (int row : head.rows().numbers()) {
            Map<Integer, Placed> months = across(row);
            if (months.size() >= LEAST) {
                Optional<ArrangedPart> part = rows(row, months);
                if (part.isPresent()) {
                    return part;
                }
            }
        }
        return transposed();
    }

    private boolean isCalledDemand() {
        return grid.title().equalsIgnoreCase(DemandSheet.SCHEMA.name())
                || DemandSheet.SCHEMA.otherNames().stream().anyMatch(grid.title()::equalsIgnoreCase);
    }

    // months across

    /** The months in a row, by column; none if they don't rise. */
    private Map<Integer, Placed> across(int row) {
        Map<Integer, Placed> months = new LinkedHashMap<>();
        LocalDate before = null;
        int year = 0;
        for (Map.Entry<Integer, Cell> cell : head.row(row).entrySet()) {
            MonthText text = MonthText.of(cell.getValue()).orElse(null);
            if (text == null) {
                continue;
            }
            if (text.day() == null) {
                int above = yearAbove(row, cell.getKey());
                year = above > 0 ? above : year > 0 ? year : yearAnywhere(row);
                if (year == 0) {
                    continue;
                }
                boolean next = above == 0 && before != null && text.month() <= before.getMonthValue();
                year += next ? 1 : 0;
                text = text.in(year);
            }
            LocalDate day = text.day();
            if (day == null || (before != null && !day.isAfter(before))) {
                return Map.of();
            }
            months.put(cell.getKey(), new Placed(day, grid.origin(row, cell.getKey())));
            before = day;
        }
        return months;
    }

    /** The year in the row above a column, in its own cell or in the nearest one to the left. */
    private int yearAbove(int row, int column) {
        for (int at = column; at >= 0; at--) {
            Cell cell = SheetCells.merged(head, row - 1, at);
            if (!cell.isBlank()) {
                return year(cell);
            }
        }
        return 0;
    }

    /** The only year that the rows above, or the sheet's name, hold. */
    private int yearAnywhere(int row) {
        int found = 0;
        for (int above : head.rows().between(-1, row)) {
            for (Cell cell : head.row(above).values()) {
                int year = year(cell);
                if (year > 0 && found > 0 && year != found) {
                    return 0;
                }
                found = Math.max(found, year);
            }
        }
        return found > 0 ? found : year(Cell.text(grid.sheet()));
    }

    private static int year(Cell cell) {
        Matcher year = YEAR.matcher(cell.text());
        return cell.kind() != Cell.Kind.DATE && year.find() ? Integer.parseInt(year.group(1)) : 0;
    }

    private Optional<ArrangedPart> rows(int header, Map<Integer, Placed> months) {
        Integer product = productColumn(header, months);
        if (product == null || !holdsNumbers(header, months) || !isPlan(header, product)) {
            return Optional.empty();
        }
        Table table = new Table(header, grid.origin(header, product));
        table.use(product, DemandSheet.PRODUCT);
        months.keySet().forEach(column -> table.use(column, DemandSheet.UNITS));
        Map<Integer, BigDecimal> sums = new TreeMap<>();
        for (int row : grid.rows().below(header)) {
            Cell name = SheetCells.merged(grid, row, product);
            boolean filled = months.keySet().stream().anyMatch(column -> isFilled(grid.at(row, column)));
            if (SheetCells.isTotal(name) || (name.isBlank() && filled && isSum(row, sums))) {
                table.rows.set(row);
                continue;
            }
            if (name.isBlank() && filled) {
                findings.warning(grid.origin(row, product), ArrangeMessages.noProduct());
            }
            if (!filled || name.isBlank()) {
                continue;
            }
            table.rows.set(row);
            months.forEach((column, month) -> {
                Cell cell = grid.at(row, column);
                add(sums, column, cell);
                if (isFilled(cell)) {
                    table.add(name, SheetCells.origin(grid, row, product), row, column, month);
                }
            });
        }
        return table.part();
    }

    private static void add(Map<Integer, BigDecimal> sums, int column, Cell cell) {
        BigDecimal number = SheetCells.number(cell);
        if (number != null) {
            sums.merge(column, number, BigDecimal::add);
        }
    }

    /** Whether a row without a name holds the sums of the rows above. */
    private boolean isSum(int row, Map<Integer, BigDecimal> sums) {
        return !sums.isEmpty()
                && sums.entrySet().stream().allMatch(sum -> {
                    BigDecimal number = SheetCells.number(grid.at(row, sum.getKey()));
                    return (number == null ? BigDecimal.ZERO : number).compareTo(sum.getValue()) == 0;
                });
    }

    /** Whether a cell asks for units: not blank, not a dash and not zero. */
    private static boolean isFilled(Cell cell) {
        BigDecimal number = cell.number();
        return !cell.isBlank() && !SheetCells.isDash(cell) && (number == null || number.signum() != 0);
    }

    /** The column of the products: by its header, else by the names in it, else the first with words. */
    private @Nullable Integer productColumn(int header, Map<Integer, Placed> months) {
        Integer best = null;
        double score = 0;
        int first = months.keySet().iterator().next();
        for (int column = 0; column < first; column++) {
            double here = words(header, column, text -> true) > HALF ? 0.1 : 0;
            here += here > 0 ? words(header, column, names::isProduct) : 0;
            here += here > 0
                            && COLUMNS.find(SheetCells.merged(grid, header, column)
                                            .text())
                                    .isPresent()
                    ? 1
                    : 0;
            if (here > score) {
                score = here;
                best = column;
            }
        }
        return best;
    }

    /** The part of the filled cells of a column that are words which fit. */
    private double words(int header, int column, Predicate<String> fits) {
        int filled = 0;
        int fit = 0;
        for (int row : head.rows().below(header)) {
            Cell cell = head.at(row, column);
            filled += cell.isBlank() ? 0 : 1;
            fit += SheetCells.isText(cell) && SheetCells.number(cell) == null && fits.test(cell.text()) ? 1 : 0;
        }
        return filled == 0 ? 0 : (double) fit / filled;
    }

    private boolean holdsNumbers(int header, Map<Integer, Placed> months) {
        int filled = 0;
        int numbers = 0;
        for (int row : head.rows().below(header)) {
            for (int column : months.keySet()) {
                Cell cell = head.at(row, column);
                filled += cell.isBlank() ? 0 : 1;
                numbers += SheetCells.number(cell) != null ? 1 : 0;
            }
        }
        return filled > 0 && numbers >= filled * HALF;
    }

    private boolean isPlan(int header, int product) {
        return isCalledDemand()
                || COLUMNS.find(grid.at(header, product).text()).isPresent()
                || words(header, product, names::isProduct) >= HALF;
    }

    // months down

    private Optional<ArrangedPart> transposed() {
        Map<Integer, TreeMap<Integer, Placed>> byColumn = new TreeMap<>();
        for (int row : head.rows().numbers()) {
            for (Map.Entry<Integer, Cell> cell : head.row(row).entrySet()) {
                MonthText month = MonthText.of(cell.getValue()).orElse(null);
                int year = month == null || month.day() != null ? 0 : yearAnywhere(row);
                LocalDate day = month == null ? null : year > 0 ? month.in(year).day() : month.day();
                if (day != null) {
                    byColumn.computeIfAbsent(cell.getKey(), any -> new TreeMap<>())
                            .put(row, new Placed(day, grid.origin(row, cell.getKey())));
                }
            }
        }
        for (Map.Entry<Integer, TreeMap<Integer, Placed>> column : byColumn.entrySet()) {
            if (column.getValue().size() >= LEAST) {
                Optional<ArrangedPart> part = columns(column.getKey(), column.getValue());
                if (part.isPresent()) {
                    return part;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<ArrangedPart> columns(int column, NavigableMap<Integer, Placed> months) {
        int[] above = head.rows().between(-1, months.firstKey());
        if (above.length == 0) {
            return Optional.empty();
        }
        int header = above[above.length - 1];
        Map<Integer, Cell> products = new LinkedHashMap<>();
        head.row(header).forEach((at, cell) -> {
            boolean numbers = months.keySet().stream().anyMatch(row -> SheetCells.number(head.at(row, at)) != null);
            if (at > column && SheetCells.isText(cell) && numbers && !SheetCells.isTotal(cell)) {
                products.put(at, cell);
            }
        });
        long known = products.values().stream()
                .filter(cell -> names.isProduct(cell.text()))
                .count();
        boolean plan = known > 0 && known >= products.size() * HALF;
        if (products.isEmpty() || !(plan || (isCalledDemand() && products.size() >= LEAST))) {
            return Optional.empty();
        }
        Table table = new Table(header, grid.origin(header, column));
        table.use(column, DemandSheet.NEEDED_BY);
        products.keySet().forEach(at -> table.use(at, DemandSheet.UNITS));
        months.forEach((row, month) -> {
            table.rows.set(row);
            products.forEach((at, product) -> {
                if (isFilled(grid.at(row, at))) {
                    table.add(product, grid.origin(header, at), row, at, month);
                }
            });
        });
        return table.part();
    }

    /** The Demand table while it is made. */
    private final class Table {

        private final GridBuilder builder = new GridBuilder(grid, DemandSheet.SCHEMA.name());
        private final BitSet rows = new BitSet();
        private final BitSet columns = new BitSet();
        private final Map<Integer, String> uses = new LinkedHashMap<>();
        private final int header;
        private int count;

        private Table(int header, Origin place) {
            this.header = header;
            rows.set(header);
            builder.row(place);
            builder.said(0, Cell.text(DemandSheet.PRODUCT.header()), place);
            builder.said(1, Cell.text(DemandSheet.UNITS.header()), place);
            builder.said(2, Cell.text(DemandSheet.NEEDED_BY.header()), place);
        }

        private void use(int column, InputColumn as) {
            columns.set(column);
            uses.put(column, as.header());
        }

        private void add(Cell product, Origin productPlace, int row, int column, Placed month) {
            count++;
            builder.row(grid.origin(row, column));
            builder.said(0, product, productPlace);
            builder.typed(1, row, column);
            builder.said(2, Cell.date(month.day()), month.origin());
        }

        private Optional<ArrangedPart> part() {
            return count == 0
                    ? Optional.empty()
                    : Optional.of(
                            new ArrangedPart(grid, DemandSheet.SCHEMA, builder.grid(), header, rows, columns, uses));
        }
    }
}
