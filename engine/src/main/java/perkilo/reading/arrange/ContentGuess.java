package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.DecimalMark;
import perkilo.layouts.ListDates;
import perkilo.layouts.NumberWords;
import perkilo.layouts.PackText;
import perkilo.layouts.PriceNote;
import perkilo.layouts.Quantity;
import perkilo.reading.table.CurrencySign;
import perkilo.schema.ComponentsSheet;
import perkilo.schema.DemandSheet;
import perkilo.schema.FormulaSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.schema.Schemas;
import perkilo.schema.SheetSchema;
import perkilo.schema.StockSheet;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * What sheets and columns look like by what is in them, whatever their headers say. A guess is a proposal for a person
 * to confirm; nothing is read by it.
 */
public final class ContentGuess {

    private static final int ROWS_LOOKED_AT = 200;
    private static final int HEADERS_LOOKED_AT = 30;
    private static final int LONGEST_HEADER = 60;
    private static final double MOSTLY = 0.6;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** Sizes of packs that are usual in the trade; common practice, no source. */
    private static final Set<String> PACK_SIZES = Set.of(
            "0.1", "0.25", "0.5", "1", "2", "5", "10", "15", "18", "20", "25", "30", "50", "100", "180", "190", "200",
            "220", "500", "1000");

    private final BookNames names;

    /** Guesses with the help of a workbook's names. */
    public ContentGuess(BookNames names) {
        this.names = names;
    }

    /**
     * What a column may be.
     *
     * @param column ours
     * @param confidence from 0 to 1: the part of its cells that fit, less where other columns fit as well
     */
    public record ColumnGuess(InputColumn column, double confidence) {}

    /**
     * What a sheet may be.
     *
     * @param schema the kind of table
     * @param headerRow from zero
     * @param columns ours, by the place of theirs; a column that nothing is known of is missing
     * @param confidence from 0 to 1, of the least certain column that such a table needs
     */
    public record SheetGuess(SheetSchema schema, int headerRow, Map<Integer, ColumnGuess> columns, double confidence) {}

    /** What the cells of one column are. */
    private record Evidence(
            int filled,
            int numbers,
            int words,
            double suppliers,
            double items,
            double products,
            double formulas,
            double currencies,
            double units,
            double bases,
            double dates,
            double packs,
            double money,
            double packSizes,
            double decimals,
            double percents,
            double repeated,
            boolean wholeFormula) {}

    /** What a sheet looks like; empty if it looks like none of ours. */
    public Optional<SheetGuess> sheet(Grid grid) {
        if (grid.rows().isEmpty()) {
            return Optional.empty();
        }
        Integer header = headerRow(grid);
        if (header == null) {
            return Optional.empty();
        }
        Map<Integer, Evidence> columns = new LinkedHashMap<>();
        grid.row(header).keySet().forEach(column -> columns.put(column, evidence(grid, header, column)));
        return sheet(grid, header, columns);
    }

    /**
     * What one column looks like in tables of a kind, the likeliest first.
     *
     * @param header its row, from zero
     */
    public List<ColumnGuess> column(Grid grid, int header, int column, SheetSchema schema) {
        return guesses(evidence(grid, header, column), schema);
    }

    /** The first row of at least two short texts that has values below. */
    private static @Nullable Integer headerRow(Grid grid) {
        int looked = 0;
        for (int row : grid.rows().numbers()) {
            if (looked++ > HEADERS_LOOKED_AT) {
                return null;
            }
            Map<Integer, Cell> cells = grid.row(row);
            long texts = cells.values().stream()
                    .filter(cell -> cell.kind() == Cell.Kind.TEXT && cell.text().length() <= LONGEST_HEADER)
                    .count();
            Map<Integer, Cell> below = grid.row(row + 1);
            long under = cells.keySet().stream().filter(below::containsKey).count();
            boolean values = below.values().stream()
                    .anyMatch(cell -> cell.kind() != Cell.Kind.TEXT || startsWithDigit(cell.text()));
            if (texts >= 2 && texts == cells.size() && under >= 2 && values) {
                return row;
            }
        }
        return null;
    }

    private static boolean startsWithDigit(String text) {
        return !text.isEmpty() && Character.isDigit(text.charAt(0));
    }

    private static Optional<SheetGuess> sheet(Grid grid, int header, Map<Integer, Evidence> columns) {
        SheetGuess best = null;
        for (SheetSchema schema : List.of(
                OffersSheet.SCHEMA,
                FormulaSheet.SCHEMA,
                DemandSheet.SCHEMA,
                ComponentsSheet.SCHEMA,
                StockSheet.SCHEMA)) {
            SheetGuess guess = as(schema, header, columns);
            Set<InputColumn> found = new HashSet<>();
            guess.columns().values().forEach(one -> found.add(one.column()));
            boolean said = grid.kind().equals(schema.name());
            boolean enough = said || (grid.mayHold(schema.name()) && found.containsAll(least(schema)));
            if (enough
                    && (best == null || guess.columns().size() > best.columns().size())) {
                best = guess;
            }
        }
        if (best == null && !grid.kind().isEmpty()) {
            return Schemas.ALL.stream()
                    .filter(schema -> grid.kind().equals(schema.name()))
                    .map(schema -> new SheetGuess(schema, header, Map.of(), 0))
                    .findFirst();
        }
        return Optional.ofNullable(best);
    }

    /** The columns without which nothing looks like a table of this kind. */
    private static List<InputColumn> least(SheetSchema schema) {
        if (schema.equals(OffersSheet.SCHEMA)) {
            return List.of(OffersSheet.ITEM, OffersSheet.PRICE);
        }
        if (schema.equals(FormulaSheet.SCHEMA)) {
            return List.of(FormulaSheet.MATERIAL, FormulaSheet.LEVEL_OF);
        }
        if (schema.equals(DemandSheet.SCHEMA)) {
            return List.of(DemandSheet.PRODUCT, DemandSheet.UNITS, DemandSheet.NEEDED_BY);
        }
        if (schema.equals(StockSheet.SCHEMA)) {
            return List.of(StockSheet.ITEM, StockSheet.QUANTITY_OF);
        }
        return List.of(ComponentsSheet.PRODUCT, ComponentsSheet.COMPONENT);
    }

    /** Each of our columns goes to the column that fits it best. */
    private static SheetGuess as(SheetSchema schema, int header, Map<Integer, Evidence> columns) {
        record Fit(int place, ColumnGuess guess) {}
        List<Fit> fits = new ArrayList<>();
        columns.forEach(
                (place, evidence) -> guesses(evidence, schema).forEach(guess -> fits.add(new Fit(place, guess))));
        fits.sort(Comparator.comparingDouble((Fit fit) -> -fit.guess().confidence()));
        Map<Integer, ColumnGuess> taken = new LinkedHashMap<>();
        Set<InputColumn> used = new HashSet<>();
        for (Fit fit : fits) {
            if (!taken.containsKey(fit.place()) && used.add(fit.guess().column())) {
                taken.put(fit.place(), fit.guess());
            }
        }
        double least = taken.values().stream()
                .filter(guess -> least(schema).contains(guess.column()))
                .mapToDouble(ColumnGuess::confidence)
                .min()
                .orElse(0);
        return new SheetGuess(schema, header, taken, least);
    }

    private static List<ColumnGuess> guesses(Evidence of, SheetSchema schema) {
        List<ColumnGuess> all = new ArrayList<>();
        if (of.filled() == 0) {
            return all;
        }
        double numbers = (double) of.numbers() / of.filled();
        double words = (double) of.words() / of.filled();
        if (schema.equals(OffersSheet.SCHEMA)) {
            add(all, OffersSheet.SUPPLIER, Math.max(of.suppliers(), of.items() > 0 ? 0 : words * of.repeated() * 1.2));
            add(all, OffersSheet.ITEM, Math.max(of.items(), of.suppliers() > 0 ? 0 : words * 0.3));
            add(all, OffersSheet.PACK_SIZE, Math.max(of.packs(), numbers * of.packSizes() * 0.8));
            add(all, OffersSheet.PACK_UNIT, of.units());
            add(all, OffersSheet.PRICE, Math.max(of.money(), numbers * of.decimals() * 0.7));
            add(all, OffersSheet.PRICE_PER, Math.max(of.bases() * 0.95, of.units() * 0.5));
            add(all, OffersSheet.CURRENCY_OF_PRICE, of.currencies());
            add(all, OffersSheet.QUOTED_ON, of.dates() * 0.8);
            add(all, OffersSheet.VALID_UNTIL, of.dates() * 0.5);
        } else if (schema.equals(FormulaSheet.SCHEMA)) {
            add(all, FormulaSheet.MATERIAL, Math.max(of.items(), words * 0.4));
            add(all, FormulaSheet.LEVEL_OF, of.wholeFormula() ? 0.95 : of.percents() * 0.8);
        } else if (schema.equals(DemandSheet.SCHEMA)) {
            add(all, DemandSheet.PRODUCT, of.products());
            add(all, DemandSheet.UNITS, numbers * (1 - of.decimals()) * 0.7);
            add(all, DemandSheet.NEEDED_BY, of.dates());
        } else if (schema.equals(ComponentsSheet.SCHEMA)) {
            add(all, ComponentsSheet.PRODUCT, of.products());
            add(all, ComponentsSheet.COMPONENT, Math.max(of.items(), words * 0.3));
            add(all, ComponentsSheet.PER_UNIT, numbers * 0.5);
        } else if (schema.equals(StockSheet.SCHEMA)) {
            add(all, StockSheet.ITEM, of.items());
            add(all, StockSheet.QUANTITY_OF, Math.max(of.packs() * 0.8, numbers * 0.5));
            add(all, StockSheet.UNIT_OF, of.units());
            add(all, StockSheet.EXPIRES, of.dates() * 0.6);
        }
        all.sort(Comparator.comparingDouble((ColumnGuess guess) -> -guess.confidence()));
        return all;
    }

    private static void add(List<ColumnGuess> all, InputColumn column, double confidence) {
        if (confidence >= 0.25) {
            all.add(new ColumnGuess(column, Math.min(1, confidence)));
        }
    }

    private Evidence evidence(Grid grid, int header, int column) {
        Count count = new Count();
        int[] rows = grid.rows().below(header);
        for (int i = 0; i < Math.min(rows.length, ROWS_LOOKED_AT); i++) {
            Cell cell = grid.row(rows[i]).getOrDefault(column, Cell.BLANK);
            if (!cell.isBlank()) {
                count.add(cell);
            }
        }
        return count.evidence();
    }

    /** Counts what the cells of a column can be. */
    private final class Count {

        private final ListDates dates = new ListDates(Optional.of("day first"));
        private final Set<String> different = new HashSet<>();
        private int filled;
        private int numbers;
        private int words;
        private int suppliers;
        private int items;
        private int products;
        private int formulas;
        private int currencies;
        private int units;
        private int bases;
        private int days;
        private int packs;
        private int money;
        private int packSizes;
        private int decimals;
        private int percents;
        private BigDecimal sum = BigDecimal.ZERO;
        private boolean balance;

        private void add(Cell cell) {
            filled++;
            different.add(cell.text());
            switch (cell.kind()) {
                case DATE -> days++;
                case NUMBER -> number(cell);
                case TEXT -> text(cell.text());
                default -> {}
            }
        }

        private void number(Cell cell) {
            BigDecimal number = cell.number();
            if (number == null) {
                return;
            }
            numbers++;
            percents += cell.isPercentFormat() ? 1 : 0;
            money += CurrencySign.ofFormat(cell.format()).isPresent() ? 1 : 0;
            BigDecimal plain = number.stripTrailingZeros();
            decimals += plain.scale() > 0 ? 1 : 0;
            packSizes += PACK_SIZES.contains(plain.toPlainString()) ? 1 : 0;
            sum = sum.add(cell.isPercentFormat() ? number.movePointRight(2) : number);
        }

        private void text(String text) {
            suppliers += names.supplier(text).isPresent() ? 1 : 0;
            items += names.isItem(text) ? 1 : 0;
            products += names.isProduct(text) ? 1 : 0;
            formulas += names.isFormula(text) ? 1 : 0;
            boolean currency = CurrencySign.parse(text).isPresent();
            boolean unit = Quantity.unit(text).isPresent();
            boolean basis = !unit && !currency && PriceNote.saysWhatFor("per " + text);
            boolean day = dates.one(text).isPresent();
            currencies += currency ? 1 : 0;
            units += unit ? 1 : 0;
            bases += basis ? 1 : 0;
            days += day ? 1 : 0;
            balance |= LevelWords.isBalance(text);
            NumberWords parts = NumberWords.of(text).orElse(null);
            boolean pack = !day && PackText.of(text, DecimalMark.POINT, null).isPresent();
            boolean price = !day
                    && !pack
                    && parts != null
                    && !parts.words().isEmpty()
                    && PriceNote.of(parts.words())
                            .filter(note -> note.currency() != null)
                            .isPresent();
            packs += pack ? 1 : 0;
            money += price ? 1 : 0;
            percents += parts != null && parts.words().equals("%") ? 1 : 0;
            if (parts != null && parts.words().isEmpty()) {
                numbers++;
            } else if (!(currency || unit || basis || day || pack || price)) {
                words++;
            }
        }

        private double part(int some) {
            return filled == 0 ? 0 : (double) some / filled;
        }

        private Evidence evidence() {
            boolean hundred = sum.subtract(HUNDRED).abs().compareTo(BigDecimal.ONE) < 0
                    || sum.subtract(BigDecimal.ONE).abs().compareTo(new BigDecimal("0.01")) < 0;
            boolean whole = filled > 1 && part(numbers) > MOSTLY / 2 && (hundred || balance);
            return new Evidence(
                    filled,
                    numbers,
                    words,
                    part(suppliers),
                    part(items),
                    part(products),
                    part(formulas),
                    part(currencies),
                    part(units),
                    part(bases),
                    part(days),
                    part(packs),
                    part(money),
                    numbers == 0 ? 0 : (double) packSizes / numbers,
                    numbers == 0 ? 0 : (double) decimals / numbers,
                    part(percents),
                    filled == 0 ? 0 : 1 - (double) different.size() / filled,
                    whole);
        }
    }
}
