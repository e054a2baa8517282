package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Quantity;
import perkilo.layouts.QuestionMessages;
import perkilo.names.Names;
import perkilo.origin.Decimals;
import perkilo.origin.Origin;
import perkilo.reading.table.ColumnNames;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.schema.BatchesSheet;
import perkilo.schema.DemandSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.ProductsSheet;
import perkilo.schema.RunsSheet;
import perkilo.schema.SheetSchema;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.GridBuilder;

/**
 * A plan that counts batches where ours counts units, as a Demand table, or as Runs if it names no days. How many units
 * a batch gives is asked for each product, with a proposal where the size of the batch and the fill are known.
 */
final class PlanArranger {

    private static final ColumnNames COLUMNS =
            new ColumnNames(List.of(DemandSheet.PRODUCT, DemandSheet.UNITS, DemandSheet.NEEDED_BY, RunsSheet.BATCH_KG));

    private static final int PRODUCT = 0;
    private static final int UNITS = 1;
    private static final int NEEDED_BY = 2;

    private final Grid grid;
    private final Grid head;
    private final List<FoundTable> others;
    private final ReadingSheet said;
    private final List<Arrangement.Open> open;
    private final Findings findings;

    /**
     * Looks for such a plan on a sheet.
     *
     * @param others the tables of the workbook that are understood, with all their rows
     * @param open receives the questions
     */
    PlanArranger(
            Grid grid,
            Grid head,
            List<FoundTable> others,
            ReadingSheet said,
            List<Arrangement.Open> open,
            Findings findings) {
        this.grid = grid;
        this.head = head;
        this.others = others;
        this.said = said;
        this.open = open;
        this.findings = findings;
    }

    /**
     * The headers of a plan.
     *
     * @param neededBy the column of days; null for none
     * @param size the column of the sizes of batches, in kg; null for none
     */
    private record Head(
            int row,
            int product,
            int batches,
            @Nullable Integer neededBy,
            @Nullable Integer size) {}

    /** The plan of a sheet; empty if it holds none that counts batches alone. */
    Optional<ArrangedPart> part() {
        for (int row : head.rows().numbers()) {
            Head found = head(row);
            if (found != null) {
                return Optional.of(part(found));
            }
        }
        return Optional.empty();
    }

    private @Nullable Head head(int row) {
        Map<InputColumn, Integer> ours = new LinkedHashMap<>();
        Integer batches = null;
        for (Map.Entry<Integer, Cell> cell : head.row(row).entrySet()) {
            if (!SheetCells.isText(cell.getValue())) {
                continue;
            }
            String text = cell.getValue().text();
            if (SheetWords.isBatches(text)) {
                batches = batches == null ? cell.getKey() : batches;
            } else {
                COLUMNS.find(text)
                        .filter(named -> named.notUnderstood().isEmpty())
                        .ifPresent(named -> ours.putIfAbsent(named.column(), cell.getKey()));
            }
        }
        Integer product = ours.get(DemandSheet.PRODUCT);
        return batches == null || product == null || ours.containsKey(DemandSheet.UNITS)
                ? null
                : new Head(row, product, batches, ours.get(DemandSheet.NEEDED_BY), ours.get(RunsSheet.BATCH_KG));
    }

    private ArrangedPart part(Head found) {
        SheetSchema schema = found.neededBy() == null ? RunsSheet.SCHEMA : DemandSheet.SCHEMA;
        GridBuilder builder = new GridBuilder(grid, schema.name());
        builder.row(grid.origin(found.row(), found.product()));
        builder.said(PRODUCT, Cell.text(DemandSheet.PRODUCT.header()), grid.origin(found.row(), found.product()));
        builder.said(UNITS, Cell.text(DemandSheet.UNITS.header()), grid.origin(found.row(), found.batches()));
        if (found.neededBy() != null) {
            builder.said(
                    NEEDED_BY, Cell.text(DemandSheet.NEEDED_BY.header()), grid.origin(found.row(), found.neededBy()));
        }
        BitSet rows = new BitSet();
        rows.set(found.row());
        Set<String> asked = new LinkedHashSet<>();
        Map<String, Origin> used = new LinkedHashMap<>();
        for (int row : grid.rows().below(found.row())) {
            Cell product = SheetCells.merged(grid, row, found.product());
            BigDecimal batches = SheetCells.number(grid.at(row, found.batches()));
            if (!SheetCells.isText(product) || SheetCells.isTotal(product) || batches == null) {
                continue;
            }
            rows.set(row);
            BigDecimal kg = found.size() == null ? null : SheetCells.number(grid.at(row, found.size()));
            String question = ReadingSheet.unitsPerBatch(
                    kg == null ? product.text() : product.text() + " at " + Decimals.plain(kg) + " kg");
            Origin place = grid.origin(row, found.batches());
            BigDecimal units = units(place, question);
            if (units == null) {
                if (asked.add(question)) {
                    ask(place, question, product.text(), kg);
                }
                continue;
            }
            used.putIfAbsent(ArrangeMessages.perBatch(product.text(), units), place);
            builder.row(place);
            builder.typed(PRODUCT, product, SheetCells.origin(grid, row, found.product()));
            builder.said(UNITS, Cell.number(batches.multiply(units)), place);
            if (found.neededBy() != null) {
                builder.typed(
                        NEEDED_BY,
                        SheetCells.merged(grid, row, found.neededBy()),
                        SheetCells.origin(grid, row, found.neededBy()));
            }
        }
        used.forEach((text, place) -> findings.note(place, text));
        BitSet columns = new BitSet();
        Map<Integer, String> uses = new LinkedHashMap<>();
        uses.put(found.product(), DemandSheet.PRODUCT.header());
        uses.put(found.batches(), DemandSheet.UNITS.header());
        if (found.neededBy() != null) {
            uses.put(found.neededBy(), DemandSheet.NEEDED_BY.header());
        }
        if (found.size() != null) {
            uses.put(found.size(), RunsSheet.BATCH_KG.header());
        }
        head.row(found.row()).keySet().forEach(columns::set);
        return new ArrangedPart(grid, schema, builder.grid(), found.row(), rows, columns, uses);
    }

    /** The answer how many units a batch gives; null if there is none, or none that makes sense. */
    private @Nullable BigDecimal units(Origin place, String question) {
        String answer = said.as(place, question).orElse("");
        BigDecimal units = answer.isEmpty() ? null : SheetCells.number(Cell.text(answer));
        return units == null || units.signum() <= 0 ? null : units;
    }

    private void ask(Origin place, String question, String product, @Nullable BigDecimal kg) {
        BigDecimal unit = null;
        BigDecimal batch = kg;
        for (TableRow row : rows(ProductsSheet.PRODUCT, product)) {
            unit = kilograms(row);
            String formula = row.text(ProductsSheet.FORMULA);
            for (TableRow made : batch == null ? rows(BatchesSheet.FORMULA, formula) : List.<TableRow>of()) {
                batch = made.table().has(BatchesSheet.VESSEL_MAX)
                        ? SheetCells.number(made.cell(BatchesSheet.VESSEL_MAX))
                        : null;
            }
        }
        BigDecimal units = unit == null || unit.signum() <= 0 || batch == null || batch.signum() <= 0
                ? null
                : batch.divide(unit, 0, RoundingMode.DOWN);
        String text = units == null || batch == null
                ? ArrangeMessages.unitsOfBatch(product)
                : ArrangeMessages.unitsOfBatch(product, batch, units, kg != null);
        List<String> choices = units == null ? List.of() : List.of(units.toPlainString());
        open.add(new Arrangement.Open(place, question, text, choices));
        String possible = choices.isEmpty() ? "" : QuestionMessages.choices(choices);
        findings.error(place, ArrangeMessages.question(text, possible, question));
    }

    /** The rows of other tables with a name in a column. */
    private List<TableRow> rows(InputColumn column, String name) {
        return others.stream()
                .filter(table -> table.schema().columns().contains(column) && table.has(column))
                .filter(table -> table.schema().equals(ProductsSheet.SCHEMA)
                        || table.schema().equals(BatchesSheet.SCHEMA))
                .flatMap(table -> table.stream(new Findings()))
                .filter(row -> Names.key(row.text(column)).equals(Names.key(name)))
                .toList();
    }

    /** The fill of a product in kilograms; null if it is not a weight in clear words. */
    private static @Nullable BigDecimal kilograms(TableRow row) {
        BigDecimal fill = row.table().has(ProductsSheet.FILL) ? SheetCells.number(row.cell(ProductsSheet.FILL)) : null;
        boolean unit = fill != null && row.table().has(ProductsSheet.FILL_UNIT);
        return !unit || fill == null
                ? null
                : Quantity.unit(row.text(ProductsSheet.FILL_UNIT))
                        .flatMap(one -> one.times(fill).in(Measure.KG))
                        .orElse(null);
    }
}
