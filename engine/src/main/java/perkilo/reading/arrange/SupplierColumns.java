package perkilo.reading.arrange;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.DecimalMark;
import perkilo.layouts.Mapping;
import perkilo.layouts.Meaning;
import perkilo.layouts.PackText;
import perkilo.origin.Origin;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.Findings;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.GridBuilder;

/** A comparison of prices, with a column for each supplier, as an Offers table. */
final class SupplierColumns {

    private static final int ROWS_LOOKED_AT = 30;
    private static final int LEAST = 2;
    private static final int LONGEST = 60;
    private static final String PACK = "pack";

    private final Grid grid;
    private final Grid head;
    private final Predicate<Cell> isHeader;
    private final BookNames names;
    private final Map<String, String> answers;
    private final List<Arrangement.Open> open;
    private final Findings findings;

    SupplierColumns(
            Grid grid,
            Grid head,
            Predicate<Cell> isHeader,
            BookNames names,
            ReadingSheet said,
            List<Arrangement.Open> open,
            Findings findings) {
        this.grid = grid;
        this.head = head;
        this.isHeader = isHeader;
        this.names = names;
        this.answers = said.answers(grid.sheet());
        this.open = open;
        this.findings = findings;
    }

    /** The headers of such a comparison. */
    private record Heads(int row, Map<Integer, InputColumn> known, List<Integer> suppliers) {}

    /** The prices; empty if the sheet holds no such comparison, or the person says that it is none. */
    Optional<ArrangedPart> part() {
        Heads heads = heads();
        String answer = answers.getOrDefault(ReadingSheet.SUPPLIER_COLUMNS, "");
        if (heads == null || answer.equalsIgnoreCase("no")) {
            return Optional.empty();
        }
        List<String> headers = heads.suppliers().stream()
                .map(column -> grid.at(heads.row(), column).text())
                .toList();
        boolean sure = answer.equalsIgnoreCase("yes")
                || headers.stream().allMatch(header -> names.supplier(header).isPresent());
        Origin where = grid.origin(heads.row(), heads.suppliers().get(0));
        if (!sure) {
            ask(where, ReadingSheet.SUPPLIER_COLUMNS, ArrangeMessages.areSuppliers(headers), List.of("yes", "no"));
        }
        boolean basis = heads.known().containsValue(OffersSheet.PRICE_PER);
        String per = answers.getOrDefault(Mapping.PRICE_PER, "");
        if (!basis && per.isEmpty()) {
            ask(where, Mapping.PRICE_PER, ArrangeMessages.whatSuppliersPricesAreFor(), List.of(PACK, "kg", "each"));
        }
        String currency = answers.getOrDefault(Mapping.CURRENCY, "");
        if (!heads.known().containsValue(OffersSheet.CURRENCY_OF_PRICE) && currency.isEmpty() && !hasSigns(heads)) {
            ask(where, Mapping.CURRENCY, ArrangeMessages.whatCurrency(headers.get(0)), List.of("EUR", "GBP", "USD"));
        }
        return Optional.of(table(heads, sure && (basis || !per.isEmpty()), per, currency));
    }

    private void ask(Origin where, String asked, String text, List<String> choices) {
        open.add(new Arrangement.Open(where, asked, text, choices));
        findings.error(where, ArrangeMessages.question(text, choices, asked));
    }

    private boolean hasSigns(Heads heads) {
        for (int row : grid.rows().below(heads.row())) {
            for (int column : heads.suppliers()) {
                Cell cell = grid.at(row, column);
                if (!cell.isBlank()
                        && cell.kind() == Cell.Kind.NUMBER
                        && CurrencySign.ofFormat(cell.format()).isEmpty()) {
                    return false;
                }
            }
        }
        return true;
    }

    private @Nullable Heads heads() {
        int looked = 0;
        for (int row : head.rows().numbers()) {
            if (looked++ > ROWS_LOOKED_AT) {
                return null;
            }
            Map<Integer, InputColumn> known = new LinkedHashMap<>();
            List<Integer> others = new ArrayList<>();
            NavigableMap<Integer, Cell> cells = head.row(row);
            boolean price = false;
            for (Map.Entry<Integer, Cell> cell : cells.entrySet()) {
                String text = cell.getValue().text();
                if (!SheetCells.isText(cell.getValue()) || text.length() > LONGEST) {
                    continue;
                }
                price |= Headings.means(text, Meaning.PRICE) && isPriced(row, cell.getKey());
                Optional<InputColumn> ours = Headings.column(text);
                if (ours.isPresent() && !known.containsValue(ours.get())) {
                    known.put(cell.getKey(), ours.get());
                } else if (!isHeader.test(cell.getValue()) && isPriced(row, cell.getKey())) {
                    others.add(cell.getKey());
                }
            }
            boolean list = known.containsValue(OffersSheet.ITEM)
                    && known.containsValue(OffersSheet.PACK_SIZE)
                    && !known.containsValue(OffersSheet.SUPPLIER);
            if (list && !price && others.size() >= LEAST) {
                return new Heads(row, known, others);
            }
        }
        return null;
    }

    /** Whether a column holds numbers and nothing else. */
    private boolean isPriced(int header, int column) {
        boolean any = false;
        for (int row : grid.rows().below(header)) {
            Cell cell = grid.at(row, column);
            if (cell.isBlank() || SheetCells.isDash(cell)) {
                continue;
            }
            if (SheetCells.number(cell) == null || cell.isPercentFormat()) {
                return false;
            }
            any = true;
        }
        return any;
    }

    /**
     * The table.
     *
     * @param isClear whether all questions are answered; else the table has no rows
     */
    private ArrangedPart table(Heads heads, boolean isClear, String per, String currency) {
        GridBuilder builder = new GridBuilder(grid, OffersSheet.SCHEMA.name());
        Map<InputColumn, Integer> places = new LinkedHashMap<>();
        OffersSheet.SCHEMA.columns().forEach(column -> places.put(column, places.size()));
        builder.row(grid.origin(heads.row(), heads.known().keySet().iterator().next()));
        Origin header = grid.origin(heads.row(), heads.suppliers().get(0));
        places.forEach((column, place) -> {
            Integer theirs = heads.known().entrySet().stream()
                    .filter(known -> known.getValue().equals(column))
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .orElse(null);
            builder.said(place, Cell.text(column.header()), theirs == null ? header : grid.origin(heads.row(), theirs));
        });
        BitSet rows = new BitSet();
        rows.set(heads.row());
        for (int row : grid.rows().below(heads.row())) {
            rows.set(row);
            for (int column : heads.suppliers()) {
                Cell price = grid.at(row, column);
                if (!isClear || price.isBlank() || SheetCells.isDash(price)) {
                    continue;
                }
                builder.row(grid.origin(row, column));
                String supplier = grid.at(heads.row(), column).text().strip();
                builder.said(
                        place(places, OffersSheet.SUPPLIER),
                        Cell.text(names.supplier(supplier).orElse(supplier)),
                        grid.origin(heads.row(), column));
                heads.known()
                        .forEach((theirs, ours) -> builder.typed(
                                place(places, ours),
                                SheetCells.merged(grid, row, theirs),
                                SheetCells.origin(grid, row, theirs)));
                builder.typed(place(places, OffersSheet.PRICE), price, grid.origin(row, column));
                if (!per.isEmpty()) {
                    String basis = isPieces(heads, row) && !per.equals(PACK) ? Measure.EACH.symbol() : per;
                    builder.said(place(places, OffersSheet.PRICE_PER), Cell.text(basis), grid.origin(row, column));
                }
                if (!currency.isEmpty()) {
                    builder.said(
                            place(places, OffersSheet.CURRENCY_OF_PRICE),
                            Cell.text(currency),
                            grid.origin(row, column));
                }
            }
        }
        BitSet columns = new BitSet();
        Map<Integer, String> uses = new HashMap<>();
        heads.known().forEach((column, ours) -> uses.put(column, ours.header()));
        heads.suppliers().forEach(column -> uses.put(column, OffersSheet.PRICE.header()));
        uses.keySet().forEach(columns::set);
        return new ArrangedPart(grid, OffersSheet.SCHEMA, builder.grid(), heads.row(), rows, columns, uses);
    }

    private static int place(Map<InputColumn, Integer> places, InputColumn column) {
        return places.getOrDefault(column, 0);
    }

    /** Whether the packs of a row are counted in pieces. */
    private boolean isPieces(Heads heads, int row) {
        return heads.known().entrySet().stream()
                .filter(known -> known.getValue().equals(OffersSheet.PACK_SIZE)
                        || known.getValue().equals(OffersSheet.PACK_UNIT))
                .map(known -> grid.at(row, known.getKey()).text())
                .anyMatch(text -> PackText.of("1 " + text, DecimalMark.POINT, null)
                        .or(() -> PackText.of(text, DecimalMark.POINT, null))
                        .filter(pack -> pack.content().measure().isCount())
                        .isPresent());
    }
}
