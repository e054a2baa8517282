package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Meaning;
import perkilo.layouts.Quantity;
import perkilo.reading.table.CurrencySign;
import perkilo.schema.FormulaSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.MaterialsSheet;
import perkilo.schema.OffersSheet;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * A formula with prices beside its levels, as two tables that share the column of materials.
 *
 * @param formula the formula alone
 * @param prices its materials with the prices: offers if packs are there, else a price per kilogram of each material
 */
record FormulaWithPrices(Grid formula, Grid prices) {

    private static final BigDecimal CLOSE = new BigDecimal("0.006");
    private static final int LEAST = 2;

    /** The two tables; null if no column of the formula holds prices. */
    static @Nullable FormulaWithPrices of(Grid block, int header) {
        return new Cut(block, header).tables();
    }

    /** Cuts a block in two. */
    private static final class Cut {

        private final Grid block;
        private final int header;
        private final TreeSet<Integer> formula = new TreeSet<>();
        private final TreeSet<Integer> others = new TreeSet<>();
        private int material = -1;
        private int level = -1;

        Cut(Grid block, int header) {
            this.block = block;
            this.header = header;
        }

        @Nullable FormulaWithPrices tables() {
            NavigableMap<Integer, Cell> heads = block.row(header);
            heads.forEach((column, cell) -> {
                Optional<InputColumn> ours = FormulaArranger.columnOf(cell);
                if (ours.isPresent() && !isPrice(cell)) {
                    formula.add(column);
                    material = material < 0 && ours.get().equals(FormulaSheet.MATERIAL) ? column : material;
                    level = level < 0 && ours.get().equals(FormulaSheet.LEVEL_OF) ? column : level;
                } else {
                    others.add(column);
                }
            });
            List<Integer> prices = others.stream()
                    .filter(column -> isPrice(heads.getOrDefault(column, Cell.BLANK)) && holdsFigures(column))
                    .toList();
            if (prices.isEmpty() || material < 0) {
                return null;
            }
            Integer pack = others.stream()
                    .filter(column -> Headings.means(
                            heads.getOrDefault(column, Cell.BLANK).text(), Meaning.PACK))
                    .findFirst()
                    .orElse(null);
            List<Integer> own = withoutComputed(prices, pack);
            TreeSet<Integer> kept = new TreeSet<>(others);
            prices.stream().filter(column -> !own.contains(column)).forEach(kept::remove);
            kept.add(material);
            Grid alone = only(block, formula, false);
            Grid priced = only(block, kept, true);
            if (pack != null) {
                return new FormulaWithPrices(alone, priced.titled(OffersSheet.SCHEMA.name()));
            }
            return isPerKg(own.get(0)) ? new FormulaWithPrices(alone, perKg(priced, own.get(0))) : null;
        }

        private static boolean isPrice(Cell cell) {
            return SheetCells.isText(cell) && Headings.means(cell.text(), Meaning.PRICE);
        }

        private boolean holdsFigures(int column) {
            for (int row : block.rows().below(header)) {
                if (SheetCells.number(block.at(row, column)) != null) {
                    return true;
                }
            }
            return false;
        }

        /** The columns of prices without those that follow from another one: per kilogram, or for the batch. */
        private List<Integer> withoutComputed(List<Integer> prices, @Nullable Integer pack) {
            List<Integer> own = new ArrayList<>();
            for (int column : prices) {
                boolean computed = own.stream().anyMatch(price -> follows(column, price, pack));
                if (!computed) {
                    own.add(column);
                }
            }
            return own;
        }

        /** Whether a column is a price over its pack, or that times the level and one factor for all rows. */
        private boolean follows(int column, int price, @Nullable Integer pack) {
            List<BigDecimal> perKg = new ArrayList<>();
            List<BigDecimal> batch = new ArrayList<>();
            for (int row : block.rows().below(header)) {
                BigDecimal figure = SheetCells.number(block.at(row, column));
                BigDecimal paid = SheetCells.number(block.at(row, price));
                BigDecimal size = pack == null ? BigDecimal.ONE : SheetCells.number(block.at(row, pack));
                BigDecimal share = level < 0 ? null : SheetCells.number(block.at(row, level));
                boolean line = !block.at(row, material).isBlank() && !SheetCells.isTotal(block.at(row, material));
                if (line
                        && figure != null
                        && paid != null
                        && size != null
                        && size.signum() != 0
                        && paid.signum() != 0) {
                    BigDecimal one = figure.multiply(size).divide(paid, MathContext.DECIMAL64);
                    perKg.add(one);
                    if (share != null && share.signum() != 0) {
                        batch.add(one.divide(share, MathContext.DECIMAL64));
                    }
                }
            }
            return isOneFactor(perKg) || isOneFactor(batch);
        }

        private static boolean isOneFactor(List<BigDecimal> factors) {
            if (factors.size() < LEAST) {
                return false;
            }
            BigDecimal first = factors.get(0);
            return factors.stream()
                    .allMatch(factor ->
                            factor.subtract(first).abs().compareTo(first.abs().multiply(CLOSE)) <= 0);
        }

        /** The block with some columns alone; priced rows alone if they are the prices. */
        private Grid only(Grid grid, Set<Integer> columns, boolean priced) {
            Map<Integer, Map<Integer, Cell>> blank = new HashMap<>();
            for (int row : grid.rows().numbers()) {
                boolean dropped = priced && row != header && !isPriced(row, columns);
                for (int column : grid.row(row).keySet()) {
                    boolean above = row < header && !priced;
                    if (!above && (dropped || !columns.contains(column))) {
                        blank.computeIfAbsent(row, any -> new HashMap<>()).put(column, Cell.BLANK);
                    }
                }
            }
            return grid.with(blank);
        }

        private boolean isPriced(int row, Set<Integer> columns) {
            return row > header
                    && !block.at(row, material).isBlank()
                    && !SheetCells.isTotal(block.at(row, material))
                    && columns.stream()
                            .anyMatch(column ->
                                    column != material && !block.at(row, column).isBlank());
        }

        /** Whether a header says that its prices are for one kilogram. */
        private boolean isPerKg(int price) {
            Quantity per = Headings.note(block.at(header, price).text()).per();
            return per != null && per.amount().compareTo(BigDecimal.ONE) == 0 && per.measure() == Measure.KG;
        }

        /** The materials with a price per kilogram each. */
        private Grid perKg(Grid priced, int price) {
            Map<Integer, Cell> heads = new HashMap<>();
            heads.put(material, Cell.text(MaterialsSheet.MATERIAL.header()));
            CurrencySign sign = Headings.note(block.at(header, price).text()).currency();
            String money = sign == null ? "" : " (" + sign.text() + ")";
            heads.put(price, Cell.text(MaterialsSheet.HOUSE_PRICE.header() + money));
            return priced.with(Map.of(header, heads)).titled(MaterialsSheet.SCHEMA.name());
        }
    }
}
