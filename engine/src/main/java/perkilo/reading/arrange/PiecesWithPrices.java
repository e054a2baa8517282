package perkilo.reading.arrange;

import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.regex.Pattern;
import perkilo.layouts.Meaning;
import perkilo.reading.table.UnitText;
import perkilo.schema.OffersSheet;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * A table of packaging with prices beside a formula: its prices, and how many pieces a unit takes.
 *
 * @param prices the table without the column of counts; its first column heads items if no other does
 * @param counts the cells of the items and their counts, by row; none if no column counts
 */
record PiecesWithPrices(Grid prices, Map<Integer, Set<Integer>> counts) {

    /** How many pieces a unit takes; words of the trade, common practice, no source. */
    private static final Pattern COUNT = Pattern.compile(
            "(?iu)(?:qty|quantity|no\\.?|number|pcs|pieces|menge|anzahl|stück|stk\\.?|quantité|qté|nombre|cantidad|cant\\.?"
                    + "|unidades|quantità|qtà|pezzi|units)(?:\\s*(?:per|/|je|pro|par|por|a)\\s*.*)?");

    private static final String PIECES = OffersSheet.PACK_SIZE.header() + " (" + Measure.EACH.symbol() + ")";

    /** The table as its prices and its counts; unchanged if it holds no prices of packs. */
    static PiecesWithPrices of(Grid block, int header, int first, int last) {
        NavigableMap<Integer, Cell> heads = block.row(header).subMap(first, true, last, true);
        boolean priced = any(heads, Meaning.PRICE) && any(heads, Meaning.PACK);
        if (!priced || !SheetCells.isText(heads.firstEntry().getValue())) {
            return new PiecesWithPrices(block, Map.of());
        }
        Map<Integer, Map<Integer, Cell>> changed = new HashMap<>();
        boolean itemless = !any(heads, Meaning.ITEM)
                && heads.values().stream()
                        .noneMatch(cell -> SheetWords.header(cell.text())
                                .filter(OffersSheet.ITEM.header()::equals)
                                .isPresent());
        int item = heads.firstKey();
        if (itemless) {
            changed.computeIfAbsent(header, any -> new HashMap<>()).put(item, Cell.text(OffersSheet.ITEM.header()));
        }
        Map<Integer, Set<Integer>> counts = new HashMap<>();
        heads.forEach((column, cell) -> {
            boolean count = SheetCells.isText(cell)
                    && COUNT.matcher(cell.text().strip()).matches()
                    && !Headings.means(cell.text(), Meaning.PACK);
            if (count && counts.isEmpty() && itemless) {
                for (int row : block.rows().below(header)) {
                    if (!block.at(row, column).isBlank()) {
                        counts.put(row, Set.of(item, column));
                        changed.computeIfAbsent(row, any -> new HashMap<>()).put(column, Cell.BLANK);
                    }
                }
                changed.computeIfAbsent(header, any -> new HashMap<>()).put(column, Cell.BLANK);
            }
        });
        if (!counts.isEmpty()) {
            heads.forEach((column, cell) -> {
                if (Headings.means(cell.text(), Meaning.PACK) && isBare(block, header, column)) {
                    changed.computeIfAbsent(header, any -> new HashMap<>()).put(column, Cell.text(PIECES));
                }
            });
        }
        return new PiecesWithPrices(block.with(changed), counts);
    }

    /** Whether packs are numbers without a unit, so that they are pieces, which the counts say. */
    private static boolean isBare(Grid block, int header, int column) {
        for (int row : block.rows().below(header)) {
            Cell cell = block.at(row, column);
            if (!cell.isBlank()
                    && (cell.kind() != Cell.Kind.NUMBER || cell.format().contains("\""))) { // a unit in quotes
                return false;
            }
        }
        return UnitText.parse(block.at(header, column).text())
                .filter(unit -> unit.measure() != null)
                .isEmpty();
    }

    private static boolean any(NavigableMap<Integer, Cell> heads, Meaning meaning) {
        return heads.values().stream().anyMatch(cell -> Headings.means(cell.text(), meaning));
    }
}
