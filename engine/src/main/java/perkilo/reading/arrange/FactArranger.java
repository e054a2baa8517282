package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Quantity;
import perkilo.names.Names;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.reading.table.NumberText;
import perkilo.schema.BatchesSheet;
import perkilo.schema.ComponentsSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.ProductsSheet;
import perkilo.schema.RunsSheet;
import perkilo.schema.SettingsSheet;
import perkilo.schema.SheetSchema;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * Facts about one product as lines of a label and a value, below or above its formula or on a sheet of their own, as
 * tables of settings, batches, products, components and runs.
 */
final class FactArranger {

    private static final int LEAST = 2;
    private static final int LONGEST_LABEL = 60;
    private static final BigDecimal MOST_PIECES = BigDecimal.valueOf(20);

    /** Columns of Products that hold one value of a fact as it was typed. */
    private static final Map<FactWord, InputColumn> OF_PRODUCT = Map.of(
            FactWord.DENSITY, ProductsSheet.DENSITY,
            FactWord.RETAIL_PRICE, ProductsSheet.TARGET_RETAIL_PRICE,
            FactWord.VAT, ProductsSheet.VAT,
            FactWord.RETAILER_MARGIN, ProductsSheet.RETAILER_MARGIN,
            FactWord.TARGET_MARGIN, ProductsSheet.TARGET_MARGIN);

    private final Grid grid;
    private final @Nullable BigDecimal density;
    private final List<Arrangement.Open> open;
    private final Findings findings;
    private final Map<FactWord, Line> facts = new EnumMap<>(FactWord.class);
    private final List<Line> components = new ArrayList<>();
    private final List<Line> others = new ArrayList<>();

    /**
     * Looks for facts.
     *
     * @param grid a sheet, or the part of one that holds no table
     * @param items the items of offers, by {@link Names#key}
     * @param density in g/mL, as the sheet Reading says it; null if it does not
     * @param open receives what the facts leave open
     */
    FactArranger(
            Grid grid,
            Set<String> items,
            @Nullable BigDecimal density,
            List<Arrangement.Open> open,
            Findings findings) {
        this.grid = grid;
        this.density = density;
        this.open = open;
        this.findings = findings;
        for (int row : grid.rows().numbers()) {
            Line line = line(row);
            if (line != null && line.label() != null) {
                if (facts.putIfAbsent(line.label().word(), line) != null) {
                    others.add(line); // said before: which of the two counts is not known
                }
            } else if (line != null && items.contains(Names.key(line.text())) && isPieces(line)) {
                components.add(line);
            } else if (line != null && line.number() != null) {
                others.add(line);
            }
        }
    }

    /**
     * A line.
     *
     * @param label what its label means; null if it is not known
     * @param number the number in the value; null if it has none
     * @param unit the unit of the number, said by the label, the value or the cell after it; empty if none says it
     */
    private record Line(
            int row,
            int at,
            int value,
            int last,
            String text,
            FactWord.@Nullable Label label,
            @Nullable BigDecimal number,
            String unit) {}

    private @Nullable Line line(int row) {
        List<Integer> columns = new ArrayList<>(grid.row(row).keySet());
        columns.removeIf(grid.hiddenColumns()::get);
        if (columns.size() < LEAST) {
            return null;
        }
        int at = columns.get(0);
        int value = columns.get(1);
        Cell name = grid.at(row, at);
        Cell cell = grid.at(row, value);
        if (!SheetCells.isText(name) || name.text().length() > LONGEST_LABEL) {
            return null;
        }
        FactWord.Label label = FactWord.of(name.text()).orElse(null);
        BigDecimal number = SheetCells.number(cell);
        String unit = label == null ? "" : label.unit();
        int last = value;
        if (SheetCells.isText(cell) && NumberText.parse(cell.text()) instanceof NumberText.Parsed parsed) {
            number = parsed.value();
            unit = parsed.words().isBlank() ? unit : parsed.words().strip();
        } else if (columns.size() > LEAST && SheetCells.isText(grid.at(row, columns.get(2)))) {
            String after = grid.at(row, columns.get(2)).text();
            boolean measure = Quantity.unit(after).isPresent() || after.contains("/") || after.equals("%");
            unit = measure ? after : unit;
            last = measure ? columns.get(2) : last;
        }
        if (label != null && !label.word().isPlausible(number)) {
            label = null;
        }
        if (label != null && label.word() == FactWord.PACK && fill(number, unit).isEmpty()) {
            label = null;
        }
        return new Line(row, at, value, last, name.text().strip(), label, number, unit);
    }

    private static boolean isPieces(Line line) {
        BigDecimal number = line.number();
        return number != null
                && line.unit().isEmpty()
                && number.signum() > 0
                && number.compareTo(MOST_PIECES) <= 0
                && number.stripTrailingZeros().scale() <= 0;
    }

    /** A fill and its unit: at most a few kilograms or litres. */
    private static Optional<Quantity> fill(@Nullable BigDecimal number, String unit) {
        return number == null
                ? Optional.empty()
                : Quantity.unit(unit)
                        .filter(quantity -> quantity.measure() != Measure.EACH)
                        .map(quantity -> quantity.times(number));
    }

    /** Whether the sheet says enough to be a list of facts. */
    boolean isList() {
        return facts.size() + components.size() >= LEAST;
    }

    /** The product that the facts name; empty if they name none. */
    String product() {
        return named(FactWord.PRODUCT);
    }

    /** The formula that the facts name; empty if they name none. */
    String formula() {
        return named(FactWord.FORMULA);
    }

    private String named(FactWord word) {
        Line line = facts.get(word);
        return line == null ? "" : grid.at(line.row(), line.value()).text().strip();
    }

    /**
     * The facts as tables.
     *
     * @param formula the formula that they are about; empty if that is not clear
     * @param product the product; empty for the formula's name
     * @param taken tables that the workbook has, which stay alone
     */
    List<ArrangedPart> parts(String formula, String product, Set<SheetSchema> taken) {
        List<ArrangedPart> parts = new ArrayList<>();
        Set<Line> read = new LinkedHashSet<>();
        if (!taken.contains(SettingsSheet.SCHEMA)) {
            settings(read).ifPresent(parts::add);
        }
        if (!formula.isEmpty()) {
            String name = product.isEmpty() ? formula : product;
            if (!taken.contains(BatchesSheet.SCHEMA)) {
                batches(formula, read).ifPresent(parts::add);
            }
            boolean filled = !taken.contains(ProductsSheet.SCHEMA) && products(formula, name, read, parts);
            if (filled && !taken.contains(ComponentsSheet.SCHEMA) && !components.isEmpty()) {
                parts.add(components(name, read));
            }
            if (!taken.contains(RunsSheet.SCHEMA)) {
                runs(formula, filled ? name : "", read).ifPresent(parts::add);
            }
        }
        report(read);
        return parts;
    }

    /** Names the lines that hold a figure and were not read, once for all of them. */
    private void report(Set<Line> read) {
        List<Line> left = new ArrayList<>(others);
        facts.values().stream().filter(line -> !read.contains(line)).forEach(left::add);
        components.stream().filter(line -> !read.contains(line)).forEach(left::add);
        left.removeIf(line -> line.number() == null);
        if (!left.isEmpty()) {
            left.sort(Comparator.comparingInt(Line::row));
            findings.warning(
                    grid.origin(left.get(0).row(), left.get(0).at()),
                    ArrangeMessages.factsNotRead(left.stream().map(Line::text).toList()));
        }
    }

    // tables

    private Optional<ArrangedPart> settings(Set<Line> read) {
        FactTable table = new FactTable(grid, SettingsSheet.SCHEMA);
        setting(table, FactWord.LABOUR_RATE, SettingsSheet.LABOUR_RATE, read);
        setting(table, FactWord.OVERHEAD, SettingsSheet.OVERHEAD, read);
        return table.isEmpty() ? Optional.empty() : Optional.of(table.part());
    }

    private void setting(FactTable table, FactWord word, InputColumn column, Set<Line> read) {
        Line line = facts.get(word);
        if (line != null) {
            table.row().said(SettingsSheet.SETTING, Cell.text(column.header()), grid.origin(line.row(), line.at()));
            number(table, SettingsSheet.VALUE, line, read);
        }
    }

    private Optional<ArrangedPart> batches(String formula, Set<Line> read) {
        Line hours = facts.get(FactWord.HOURS);
        if (hours == null) {
            return Optional.empty();
        }
        FactTable table = new FactTable(grid, BatchesSheet.SCHEMA);
        table.row().said(BatchesSheet.FORMULA, Cell.text(formula), place(hours));
        number(table, BatchesSheet.HOURS_PER_BATCH, hours, read);
        return Optional.of(table.part());
    }

    private boolean products(String formula, String name, Set<Line> read, List<ArrangedPart> parts) {
        Line filled = facts.getOrDefault(FactWord.FILL, facts.get(FactWord.PACK));
        Quantity fill =
                filled == null ? null : fill(filled.number(), filled.unit()).orElse(null);
        if (filled == null || fill == null) {
            return false;
        }
        boolean volume = fill.measure().kind() == Measure.Kind.VOLUME;
        if (volume && !facts.containsKey(FactWord.DENSITY) && density == null) {
            open.add(new Arrangement.Open(
                    place(filled),
                    ReadingSheet.DENSITY,
                    ArrangeMessages.whatDensity(name),
                    List.of("0.92", "0.95", "1", "1.03")));
        }
        FactTable table = new FactTable(grid, ProductsSheet.SCHEMA).row();
        table.said(ProductsSheet.PRODUCT, Cell.text(name), place(facts.getOrDefault(FactWord.PRODUCT, filled)));
        table.said(ProductsSheet.FORMULA, Cell.text(formula), place(filled));
        number(table, ProductsSheet.FILL, filled, read);
        table.said(ProductsSheet.FILL_UNIT, Cell.text(fill.measure().symbol()), place(filled));
        OF_PRODUCT.forEach((word, column) -> {
            Line line = facts.get(word);
            if (line != null) {
                number(table, column, line, read);
            }
        });
        if (!facts.containsKey(FactWord.DENSITY) && density != null) {
            table.said(ProductsSheet.DENSITY, Cell.number(density), place(filled));
        }
        for (FactWord word : List.of(FactWord.PRODUCT, FactWord.FORMULA)) {
            Line line = facts.get(word);
            if (line != null) {
                take(table, line, read);
            }
        }
        parts.add(table.part());
        return true;
    }

    private ArrangedPart components(String product, Set<Line> read) {
        FactTable table = new FactTable(grid, ComponentsSheet.SCHEMA);
        for (Line line : components) {
            table.row().said(ComponentsSheet.PRODUCT, Cell.text(product), place(line));
            table.typed(ComponentsSheet.COMPONENT, grid.at(line.row(), line.at()), grid.origin(line.row(), line.at()));
            number(table, ComponentsSheet.PER_UNIT, line, read);
        }
        return table.part();
    }

    /**
     * The run that the facts describe: pieces of the product, or a batch.
     *
     * @param product empty if it is not known how it is filled
     */
    private Optional<ArrangedPart> runs(String formula, String product, Set<Line> read) {
        Line units = facts.get(FactWord.UNITS);
        Line batch = facts.get(FactWord.BATCH);
        FactTable table = new FactTable(grid, RunsSheet.SCHEMA);
        if (!product.isEmpty() && units != null) {
            table.row().said(RunsSheet.PRODUCT, Cell.text(product), place(units));
            number(table, RunsSheet.UNITS, units, read);
        }
        BigDecimal weight = batch == null ? null : batch.number();
        BigDecimal kg = batch == null || weight == null
                ? null
                : Quantity.unit(batch.unit())
                        .map(quantity -> quantity.times(weight))
                        .flatMap(quantity -> quantity.in(Measure.KG))
                        .orElse(null);
        if (batch != null && kg != null) {
            Cell typed = grid.at(batch.row(), batch.value());
            BigDecimal number = typed.number();
            table.row().said(RunsSheet.FORMULA, Cell.text(formula), place(batch));
            if (number != null && number.compareTo(kg) == 0) {
                table.typed(RunsSheet.BATCH_KG, typed, place(batch));
            } else {
                table.said(RunsSheet.BATCH_KG, Cell.number(kg), place(batch));
            }
            take(table, batch, read);
        }
        return table.isEmpty() ? Optional.empty() : Optional.of(table.part());
    }

    private Origin place(Line line) {
        return grid.origin(line.row(), line.value());
    }

    private static void take(FactTable table, Line line, Set<Line> read) {
        read.add(line);
        table.read(line.row(), line.at(), line.value(), line.last());
    }

    /** A number as it was typed, if no unit has to be taken off; else the number alone. */
    private void number(FactTable table, InputColumn column, Line line, Set<Line> read) {
        Cell cell = grid.at(line.row(), line.value());
        boolean percent = SheetCells.isText(cell) && cell.text().contains("%");
        if (cell.kind() == Cell.Kind.NUMBER || percent || line.number() == null) {
            table.typed(column, cell, place(line));
        } else {
            table.said(column, Cell.number(line.number()), place(line));
        }
        take(table, line, read);
    }
}
