package perkilo.reading.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;
import perkilo.schema.DemandSheet;
import perkilo.schema.FormulaSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.MaterialsSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.ProductsSheet;
import perkilo.schema.RunsSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.StockSheet;
import perkilo.schema.SuppliersSheet;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * Proposals for sheets without a table: which table each looks like, by what is in its columns. Nothing is read by a
 * proposal.
 */
public final class SheetProposals {

    private static final int ROWS_FOR_HEADERS = 40;
    private static final int SAMPLE = 40;
    private static final int KNOWN_ROWS = 2_000;
    private static final int FEWEST = 2;

    /** Headers of how many batches are made, which are no units; words of the trade, common practice, no source. */
    private static final java.util.regex.Pattern BATCHES =
            java.util.regex.Pattern.compile("(?iu)batch|ansatz|ansätze|charge|lotto|lotti|\\blots?\\b|\\blotes?\\b");

    /** What the values of a column are. */
    private enum Kind {
        SUPPLIER,
        ITEM,
        PRODUCT,
        FORMULA,
        CURRENCY,
        UNIT,
        PACK,
        PRICE,
        DATE,
        LEVEL,
        NUMBER,
        WORDS
    }

    /**
     * One kind of table by the kinds of its columns.
     *
     * @param columns what each column may hold
     * @param sure columns that must be there by their values or headers
     */
    private record Pattern(SheetSchema schema, Map<InputColumn, Set<Kind>> columns, List<InputColumn> sure) {}

    private static final List<Pattern> PATTERNS = List.of(
            new Pattern(
                    OffersSheet.SCHEMA,
                    inOrder(
                            OffersSheet.SUPPLIER, EnumSet.of(Kind.SUPPLIER),
                            OffersSheet.ITEM, EnumSet.of(Kind.ITEM),
                            OffersSheet.PACK_SIZE, EnumSet.of(Kind.PACK),
                            OffersSheet.PRICE, EnumSet.of(Kind.PRICE),
                            OffersSheet.CURRENCY_OF_PRICE, EnumSet.of(Kind.CURRENCY),
                            OffersSheet.PACK_UNIT, EnumSet.of(Kind.UNIT),
                            OffersSheet.VALID_UNTIL, EnumSet.of(Kind.DATE)),
                    List.of(OffersSheet.ITEM, OffersSheet.PRICE)),
            new Pattern(
                    FormulaSheet.SCHEMA,
                    inOrder(
                            FormulaSheet.MATERIAL, EnumSet.of(Kind.ITEM),
                            FormulaSheet.LEVEL_OF, EnumSet.of(Kind.LEVEL)),
                    List.of(FormulaSheet.MATERIAL, FormulaSheet.LEVEL_OF)),
            new Pattern(
                    DemandSheet.SCHEMA,
                    inOrder(
                            DemandSheet.PRODUCT, EnumSet.of(Kind.PRODUCT),
                            DemandSheet.UNITS, EnumSet.of(Kind.NUMBER),
                            DemandSheet.NEEDED_BY, EnumSet.of(Kind.DATE)),
                    List.of(DemandSheet.PRODUCT, DemandSheet.UNITS, DemandSheet.NEEDED_BY)),
            new Pattern(
                    ProductsSheet.SCHEMA,
                    inOrder(
                            ProductsSheet.PRODUCT, EnumSet.of(Kind.PRODUCT, Kind.WORDS),
                            ProductsSheet.FORMULA, EnumSet.of(Kind.FORMULA),
                            ProductsSheet.FILL, EnumSet.of(Kind.PACK, Kind.NUMBER)),
                    List.of(ProductsSheet.PRODUCT, ProductsSheet.FORMULA, ProductsSheet.FILL)),
            new Pattern(
                    RunsSheet.SCHEMA,
                    inOrder(
                            RunsSheet.PRODUCT, EnumSet.of(Kind.PRODUCT),
                            RunsSheet.UNITS, EnumSet.of(Kind.NUMBER)),
                    List.of(RunsSheet.PRODUCT, RunsSheet.UNITS)),
            new Pattern(
                    StockSheet.SCHEMA,
                    inOrder(
                            StockSheet.ITEM, EnumSet.of(Kind.ITEM),
                            StockSheet.QUANTITY_OF, EnumSet.of(Kind.PACK, Kind.NUMBER),
                            StockSheet.UNIT_OF, EnumSet.of(Kind.UNIT),
                            StockSheet.EXPIRES, EnumSet.of(Kind.DATE)),
                    List.of(StockSheet.ITEM, StockSheet.QUANTITY_OF)),
            new Pattern(
                    SuppliersSheet.SCHEMA,
                    inOrder(
                            SuppliersSheet.SUPPLIER, EnumSet.of(Kind.SUPPLIER),
                            SuppliersSheet.CURRENCY_OF_INVOICE, EnumSet.of(Kind.CURRENCY)),
                    List.of(SuppliersSheet.SUPPLIER)));

    private final Set<String> suppliers = new HashSet<>();
    private final Set<String> items = new HashSet<>();
    private final Set<String> products = new HashSet<>();
    private final Set<String> formulas = new HashSet<>();
    private final CostWords words = new CostWords();

    private SheetProposals() {}

    private static Map<InputColumn, Set<Kind>> inOrder(Object... pairs) {
        Map<InputColumn, Set<Kind>> map = new LinkedHashMap<>();
        for (int at = 0; at < pairs.length; at += 2) {
            @SuppressWarnings("unchecked")
            Set<Kind> kinds = (Set<Kind>) pairs[at + 1];
            map.put((InputColumn) pairs[at], kinds);
        }
        return map;
    }

    /**
     * What the sheets without a table look like, in words that say what to do; sheets that look like nothing known are
     * left out. Each is also a warning.
     */
    public static Map<Grid, String> of(List<Grid> grids, List<FoundTable> tables, Findings findings) {
        Map<Grid, String> proposals = new HashMap<>();
        SheetProposals known = null;
        for (Grid grid : grids) {
            boolean hasTable = tables.stream().anyMatch(table -> table.grid().equals(grid));
            if (hasTable || grid.rows().isEmpty() || TableFinder.hasResultName(grid)) {
                continue;
            }
            if (known == null) {
                known = new SheetProposals();
                known.learn(tables);
            }
            known.propose(grid).ifPresent(text -> {
                proposals.put(grid, text);
                findings.warning(grid.origin(), text);
            });
        }
        return proposals;
    }

    private void learn(List<FoundTable> tables) {
        for (FoundTable table : tables) {
            learn(table, OffersSheet.SUPPLIER, suppliers);
            learn(table, OffersSheet.ITEM, items);
            learn(table, FormulaSheet.MATERIAL, items);
            learn(table, MaterialsSheet.MATERIAL, items);
            learn(table, ProductsSheet.PRODUCT, products);
            learn(table, FormulaSheet.FORMULA, formulas);
            learn(table, ProductsSheet.FORMULA, formulas);
            if (table.schema().equals(FormulaSheet.SCHEMA)) {
                formulas.add(Names.key(table.grid().title()));
            }
        }
    }

    private static void learn(FoundTable table, InputColumn column, Set<String> names) {
        FoundTable.Place place = table.columns().get(column);
        if (place == null) {
            return;
        }
        int[] rows = table.grid().rows().between(table.headerRow(), table.lastRow() + 1);
        for (int at = 0; at < Math.min(rows.length, KNOWN_ROWS); at++) {
            Cell cell = table.grid().at(rows[at], place.index());
            if (cell.kind() == Cell.Kind.TEXT) {
                names.add(Names.key(cell.text()));
            }
        }
    }

    private Optional<String> propose(Grid grid) {
        int header = headerRow(grid);
        if (header < 0) {
            return Optional.empty();
        }
        Map<Integer, Kind> kinds = new LinkedHashMap<>();
        for (int column : grid.row(header).keySet()) {
            Kind kind = kind(grid, header, column);
            if (kind != null) {
                kinds.put(column, kind);
            }
        }
        Pattern best = null;
        Map<InputColumn, Integer> bestColumns = Map.of();
        for (Pattern pattern : PATTERNS) {
            Map<InputColumn, Integer> columns = columns(grid, header, kinds, pattern);
            if (grid.mayHold(pattern.schema().name())
                    && columns.keySet().containsAll(pattern.sure())
                    && columns.size() > bestColumns.size()) {
                best = pattern;
                bestColumns = columns;
            }
        }
        if (best == null || bestColumns.size() < FEWEST) {
            return Optional.empty();
        }
        List<String> renamed = new ArrayList<>();
        bestColumns.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .forEach(column ->
                        renamed.add("\"" + grid.at(header, column.getValue()).text() + "\" → "
                                + column.getKey().header()));
        Map<InputColumn, Integer> found = bestColumns;
        List<String> missing = best.schema().required().stream()
                .filter(column -> !found.containsKey(column))
                .map(InputColumn::header)
                .toList();
        return Optional.of(TableMessages.looksLike(best.schema().name(), renamed, missing));
    }

    /** The first row of several texts, with rows below that fill at least two of its columns; -1 if there is none. */
    private static int headerRow(Grid grid) {
        int[] rows = grid.rows().numbers();
        for (int at = 0; at + 1 < Math.min(rows.length, ROWS_FOR_HEADERS); at++) {
            NavigableMap<Integer, Cell> cells = grid.row(rows[at]);
            long texts = cells.values().stream()
                    .filter(cell -> cell.kind() == Cell.Kind.TEXT)
                    .count();
            boolean headers = texts >= FEWEST && texts == cells.size();
            if (headers) {
                Set<Integer> columns = Set.copyOf(cells.keySet());
                long below = grid.row(rows[at + 1]).keySet().stream()
                        .filter(columns::contains)
                        .count();
                if (below >= FEWEST) {
                    return rows[at];
                }
            }
        }
        return -1;
    }

    private static Map<InputColumn, Integer> columns(Grid grid, int header, Map<Integer, Kind> kinds, Pattern pattern) {
        HeaderIndex index = new HeaderIndex(pattern.schema().columns());
        Map<InputColumn, Integer> columns = new LinkedHashMap<>();
        Set<Integer> taken = new HashSet<>();
        kinds.forEach((column, kind) -> index.match(
                        HeaderText.of(grid.at(header, column).text()))
                .filter(match -> !columns.containsKey(match.column()))
                .ifPresent(match -> {
                    columns.put(match.column(), column);
                    taken.add(column);
                }));
        pattern.columns().forEach((wanted, allowed) -> {
            if (columns.containsKey(wanted)) {
                return;
            }
            kinds.forEach((column, kind) -> {
                boolean batches = kind == Kind.NUMBER
                        && BATCHES.matcher(grid.at(header, column).text()).find();
                if (!batches && !columns.containsKey(wanted) && !taken.contains(column) && allowed.contains(kind)) {
                    columns.put(wanted, column);
                    taken.add(column);
                }
            });
        });
        return columns;
    }

    private @Nullable Kind kind(Grid grid, int header, int column) {
        List<Cell> values = new ArrayList<>();
        for (int row : grid.rows().below(header)) {
            Cell cell = grid.at(row, column);
            if (!cell.isBlank()) {
                values.add(cell);
            }
            if (values.size() == SAMPLE) {
                break;
            }
        }
        if (values.isEmpty()) {
            return null;
        }
        if (mostly(values, cell -> suppliers.contains(Names.key(cell.text())))) {
            return Kind.SUPPLIER;
        }
        if (mostly(values, cell -> items.contains(Names.key(cell.text())))) {
            return Kind.ITEM;
        }
        if (mostly(values, cell -> products.contains(Names.key(cell.text())))) {
            return Kind.PRODUCT;
        }
        if (mostly(values, cell -> formulas.contains(Names.key(cell.text())))) {
            return Kind.FORMULA;
        }
        if (mostly(values, cell -> cell.kind() == Cell.Kind.DATE)) {
            return Kind.DATE;
        }
        if (mostly(
                values,
                cell -> cell.kind() == Cell.Kind.TEXT
                        && CurrencySign.parse(cell.text()).isPresent())) {
            return Kind.CURRENCY;
        }
        if (mostly(
                values,
                cell -> cell.kind() == Cell.Kind.TEXT
                        && Measure.parse(cell.text()).isPresent())) {
            return Kind.UNIT;
        }
        if (mostly(values, SheetProposals::isPack)) {
            return Kind.PACK;
        }
        boolean named = words.in(grid.at(header, column).text())
                .filter(about -> about == CostWords.About.PRICE)
                .isPresent();
        if (mostly(values, cell -> isPrice(cell, named))) {
            return Kind.PRICE;
        }
        if (isLevel(values)) {
            return Kind.LEVEL;
        }
        return mostly(values, cell -> cell.kind() == Cell.Kind.NUMBER) ? Kind.NUMBER : Kind.WORDS;
    }

    private static boolean mostly(List<Cell> values, java.util.function.Predicate<Cell> rule) {
        long count = values.stream().filter(rule).count();
        return count * 2 > values.size();
    }

    private static boolean isPack(Cell cell) {
        return cell.kind() == Cell.Kind.TEXT
                && NumberText.parse(cell.text()) instanceof NumberText.Parsed parsed
                && !parsed.words().isEmpty()
                && UnitText.parse(parsed.words().split(" ", -1)[0])
                        .filter(unit -> unit.measure() != null && unit.currency() == null)
                        .isPresent();
    }

    private static boolean isPrice(Cell cell, boolean named) {
        if (cell.kind() == Cell.Kind.NUMBER) {
            return named || CurrencySign.ofFormat(cell.format()).isPresent();
        }
        return cell.kind() == Cell.Kind.TEXT
                && NumberText.parse(cell.text()) instanceof NumberText.Parsed parsed
                && (named
                        || UnitText.parse(parsed.words())
                                .filter(unit -> unit.currency() != null)
                                .isPresent());
    }

    /** Whether numbers are shares that add up to a whole. */
    private static boolean isLevel(List<Cell> values) {
        BigDecimal sum = BigDecimal.ZERO;
        int numbers = 0;
        for (Cell cell : values) {
            BigDecimal number = cell.number();
            if (number != null && number.signum() > 0) {
                sum = sum.add(cell.isPercentFormat() ? number.movePointRight(2) : number);
                numbers++;
            }
        }
        double total = sum.doubleValue();
        boolean whole = (total > 99 && total < 101) || (total > 0.99 && total < 1.01) || (total > 199 && total < 201);
        return numbers > FEWEST && whole;
    }
}
