package perkilo.reading.arrange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.layouts.Meaning;
import perkilo.reading.table.ColumnNames;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableFinder;
import perkilo.schema.ComponentsSheet;
import perkilo.schema.FormulaSheet;
import perkilo.schema.MaterialsSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.RunsSheet;
import perkilo.schema.Schemas;
import perkilo.schema.SettingsSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.SuppliersSheet;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * Arranges sheets that are laid out in a person's own way as our tables: headers in other languages, months or price
 * breaks as columns, several formulas side by side, phases as headings.
 *
 * <p>Only the first rows of each sheet are looked at to see whether it is understood as it is.
 */
public final class Arranger {

    private static final int ROWS_LOOKED_AT = 80;
    private static final int MOST_COLUMNS = 500;

    /** Tables that a price list can look like: it names suppliers, and packs beside products. */
    private static final List<SheetSchema> MAY_BE_PRICES = List.of(SuppliersSheet.SCHEMA, ComponentsSheet.SCHEMA);

    private static final ColumnNames SETTINGS = new ColumnNames(SettingsSheet.SETTINGS);

    private final List<SheetSchema> schemas;
    private final TableFinder finder;
    private final Findings findings;
    private final List<Arrangement.Open> open = new ArrayList<>();

    /**
     * Arranges tables of some kinds.
     *
     * @param known finds those kinds; what it would report is not
     * @param findings receives what is not clear
     */
    public Arranger(TableFinder known, Findings findings) {
        this.schemas = known.schemas();
        this.finder = known.reporting(new Findings());
        this.findings = findings;
    }

    /** A sheet while it is looked at. */
    private record Look(Grid grid, Grid head, List<FoundTable> tables) {

        /** The same, of a block without headers. */
        static Look loose(Grid block) {
            return new Look(block, block.head(0), List.of());
        }

        /** Its tables of offers with all their columns. */
        List<FoundTable> offers() {
            return tables.stream()
                    .filter(table -> table.schema().equals(OffersSheet.SCHEMA) && isComplete(table))
                    .toList();
        }

        /** Whether the sheet stays as it is, whatever is on it. */
        boolean isLeft() {
            return head.rows().isEmpty();
        }
    }

    /** The sheets, those in another layout arranged. */
    public Arrangement arrange(List<Grid> sheets) {
        ReadingSheet said = ReadingSheet.of(sheets, findings);
        List<Look> looks = new ArrayList<>();
        List<Grid> read = new ArrayList<>();
        for (Grid sheet : said.applied(sheets)) {
            List<SheetBlocks.SheetBlock> blocks =
                    isOfFormulas() && !isResult(sheet) && !isWide(sheet.head(ROWS_LOOKED_AT))
                            ? SheetBlocks.of(sheet, finder::knows)
                            : List.of();
            if (blocks.size() > 1) {
                read.add(sheet);
                blocks.forEach(block -> notePricesPerKg(sheet, block.grid()));
                blocks.forEach(block ->
                        looks.add(block.isTable() ? answered(look(block.grid()), said) : Look.loose(block.grid())));
            } else {
                Look look = answered(look(sheet), said);
                read.add(look.grid());
                looks.add(look);
            }
        }
        List<FoundTable> known =
                looks.stream().flatMap(look -> whole(look).stream()).toList();
        BookNames names = BookNames.of(known);
        List<Grid> grids = new ArrayList<>();
        List<ArrangedPart> parts = new ArrayList<>();
        List<FoundTable> asIs = new ArrayList<>();
        List<Grid> bare = new ArrayList<>();
        for (Look look : looks) {
            List<ArrangedPart> arranged = look.isLeft() ? List.of() : parts(look, known, names, said);
            if (arranged.isEmpty() && mayBeFacts(look)) {
                bare.add(look.grid()); // once all tables are known
                continue;
            }
            arranged.forEach(part -> grids.add(part.arranged()));
            parts.addAll(arranged);
            if (arranged.isEmpty()) {
                asIs.addAll(look.tables());
                look.offers().forEach(table -> open.addAll(new OpenPrices(look.grid(), table).open()));
                whole(look).forEach(this::askAboutLevels);
            }
            arranged.forEach(part -> finder.find(List.of(part.arranged())).forEach(this::askAboutLevels));
            grids.add(arranged.isEmpty() ? look.grid() : ArrangedPart.rest(look.grid(), arranged));
        }
        if (!bare.isEmpty()) {
            ProductFacts facts = new ProductFacts(finder, grids, said, open, findings);
            for (Grid grid : bare) {
                List<ArrangedPart> arranged = facts.parts(grid);
                arranged.forEach(part -> grids.add(part.arranged()));
                parts.addAll(arranged);
                grids.add(arranged.isEmpty() ? grid : ArrangedPart.rest(grid, arranged));
            }
        }
        return new Arrangement(grids, parts, read, said.left(sheets), said.leftOut(), asIs, open, said.materials());
    }

    /** Says that prices beside levels count without packs, if no column of packs is there. */
    private void notePricesPerKg(Grid sheet, Grid block) {
        String ours = MaterialsSheet.SCHEMA.name();
        if (block.title().equals(ours) && !sheet.title().equalsIgnoreCase(ours)) {
            findings.note(block.origin(), ArrangeMessages.pricesPerKg());
        }
    }

    /** Whether a sheet, or a part of one, holds no table, so that it may hold facts about a product. */
    private boolean mayBeFacts(Look look) {
        boolean block = look.isLeft() && look.grid().title().isEmpty(); // beside the tables of its sheet
        return isOfFormulas()
                && look.grid().ofBook()
                && !look.grid().rows().isEmpty()
                && look.grid().kind().isEmpty()
                && !isOfOurs(look.grid())
                && (block || (!look.isLeft() && look.tables().isEmpty()));
    }

    /** Whether a sheet has the name of one of our tables, which then should hold it. */
    private boolean isOfOurs(Grid grid) {
        return schemas.stream().anyMatch(schema -> schema.name().equalsIgnoreCase(grid.title()));
    }

    private void askAboutLevels(FoundTable table) {
        if (table.schema().equals(FormulaSheet.SCHEMA)) {
            open.addAll(OpenLevels.of(table));
        }
    }

    private boolean isOfFormulas() {
        return schemas.contains(FormulaSheet.SCHEMA);
    }

    private static boolean isResult(Grid grid) {
        return Schemas.RESULT_SHEETS.stream().anyMatch(grid.sheet()::equalsIgnoreCase);
    }

    private Look look(Grid sheet) {
        if (isResult(sheet)) {
            return new Look(sheet, sheet.head(0), List.of());
        }
        Grid head = sheet.head(ROWS_LOOKED_AT);
        if (isWide(head)) {
            return new Look(sheet, sheet.head(0), List.of());
        }
        List<FoundTable> tables = tables(head);
        if (!tables.isEmpty() && tables.stream().allMatch(this::isUnderstood)) {
            return new Look(sheet, head, tables);
        }
        Optional<Grid> translated = translated(sheet, head);
        if (translated.isEmpty()) {
            return new Look(sheet, head, tables);
        }
        Grid again = translated.get().head(ROWS_LOOKED_AT);
        return new Look(translated.get(), again, tables(again));
    }

    /** A sheet with the answers for all its prices in the headers of its offers. */
    private Look answered(Look look, ReadingSheet said) {
        Map<String, String> answers =
                look.isLeft() ? Map.of() : said.answers(look.grid().sheet());
        if (answers.isEmpty()) {
            return look;
        }
        Map<Integer, Map<Integer, Cell>> headers = new HashMap<>();
        look.offers().forEach(table -> headers.putAll(new OpenPrices(look.grid(), table).completed(answers)));
        return headers.isEmpty() ? look : look(look.grid().with(headers));
    }

    /** The tables of a sheet, without those that are a price list with more columns than such a table has. */
    private List<FoundTable> tables(Grid head) {
        return finder.find(List.of(head)).stream()
                .filter(table -> !MAY_BE_PRICES.contains(table.schema()) || !OfferArranger.isPriceList(head, table))
                .toList();
    }

    /** Whether a sheet has more columns than any table that a person lays out. */
    private static boolean isWide(Grid head) {
        return Arrays.stream(head.rows().numbers())
                .anyMatch(row -> head.row(row).size() > MOST_COLUMNS);
    }

    /** The tables of a sheet with all their rows. */
    private static List<FoundTable> whole(Look look) {
        return look.tables().stream()
                .map(table -> table.downTo(look.grid(), last(look, table)))
                .toList();
    }

    private static int last(Look look, FoundTable table) {
        boolean toTheEnd = table.lastRow() == look.head().rows().last();
        return toTheEnd ? look.grid().rows().last() : table.lastRow();
    }

    /** Whether a table has all its columns. */
    static boolean isComplete(FoundTable table) {
        return table.schema().required().stream().allMatch(table::has);
    }

    /** Whether a table has all its columns, and no header in words that it does not know. */
    private boolean isUnderstood(FoundTable table) {
        boolean settings = table.schema().equals(SettingsSheet.SCHEMA);
        return isComplete(table)
                && !settings
                && table.grid().row(table.headerRow()).values().stream()
                        .allMatch(cell -> cell.kind() != Cell.Kind.TEXT || isOurs(cell));
    }

    // headers in other languages

    private Optional<Grid> translated(Grid sheet, Grid head) {
        Map<Integer, Map<Integer, Cell>> words = new HashMap<>();
        for (int row : head.rows().numbers()) {
            Map<Integer, Cell> renamed = renamed(head, row);
            if (!renamed.isEmpty()) {
                words.put(row, renamed);
            }
        }
        Optional<String> title = SheetWords.sheet(sheet.title());
        boolean settings = title.filter(SettingsSheet.SCHEMA.name()::equals).isPresent()
                || sheet.title().equalsIgnoreCase(SettingsSheet.SCHEMA.name());
        if (settings) {
            for (int row : head.rows().numbers()) {
                int column = head.row(row).firstKey();
                String name = head.at(row, column).text();
                if (SETTINGS.find(name).isEmpty()) {
                    SheetWords.header(name)
                            .ifPresent(known -> words.computeIfAbsent(row, any -> new HashMap<>())
                                    .putIfAbsent(column, Cell.text(known)));
                }
            }
        }
        boolean ours = sheet.kind().isEmpty()
                && title.filter(name -> !name.equals(FormulaSheet.SCHEMA.name())
                                && schemas.stream()
                                        .anyMatch(schema -> schema.name().equals(name)))
                        .isPresent();
        return words.isEmpty() && !ours
                ? Optional.empty()
                : Optional.of((ours ? sheet.titled(title.orElseThrow()) : sheet).with(words));
    }

    /** The headers of a row in our words, if it is a row of headers with some in another language. */
    private Map<Integer, Cell> renamed(Grid head, int row) {
        Map<Integer, Cell> renamed = new HashMap<>();
        int known = 0;
        for (Map.Entry<Integer, Cell> cell : head.row(row).entrySet()) {
            if (cell.getValue().kind() == Cell.Kind.NUMBER) {
                return Map.of();
            }
            if (cell.getValue().kind() != Cell.Kind.TEXT) {
                continue;
            }
            String text = cell.getValue().text();
            if (isOurs(cell.getValue())) {
                known++;
            } else {
                SheetWords.header(text).ifPresent(ours -> renamed.put(cell.getKey(), Cell.text(ours)));
            }
        }
        if (!renamed.isEmpty() && headsPrices(head, row)) {
            renamed.entrySet()
                    .removeIf(cell -> Headings.isOther(
                            head.at(row, cell.getKey()).text(), cell.getValue().text()));
        }
        boolean headers =
                !renamed.isEmpty() && (renamed.size() + known >= 2 || (renamed.size() == 1 && hasMonths(head, row)));
        return headers ? renamed : Map.of();
    }

    /** Whether a row heads a price list. */
    private static boolean headsPrices(Grid head, int row) {
        return head.row(row).values().stream().anyMatch(cell -> Headings.means(cell.text(), Meaning.PRICE))
                && head.row(row).values().stream().anyMatch(cell -> Headings.means(cell.text(), Meaning.ITEM));
    }

    private static boolean hasMonths(Grid head, int row) {
        return head.row(row).values().stream()
                        .filter(cell -> MonthText.of(cell).isPresent())
                        .count()
                >= 2;
    }

    private boolean isOurs(Cell cell) {
        return finder.knows(cell);
    }

    // layouts

    private List<ArrangedPart> parts(Look look, List<FoundTable> known, BookNames names, ReadingSheet said) {
        List<ArrangedPart> parts = new ArrayList<>();
        Grid grid = withoutStruck(look.grid());
        boolean all = isOfFormulas();
        if (all) {
            new SettingsArranger(grid, look.head(), look.tables()).part().ifPresent(parts::add);
            if (!parts.isEmpty()) {
                return parts;
            }
        }
        if (all && grid.mayHold(FormulaSheet.SCHEMA.name())) {
            parts.addAll(new FormulaArranger(grid, look.tables(), finder::knows, names, findings).parts());
        }
        if (!parts.isEmpty() || grid.kind().equals(FormulaSheet.SCHEMA.name())) {
            return parts;
        }
        boolean others = look.tables().stream()
                .anyMatch(table -> isComplete(table) && !table.schema().equals(OffersSheet.SCHEMA));
        if (all && !others) {
            new MonthArranger(grid, look.head(), look.tables(), names, findings)
                    .part()
                    .filter(part -> grid.mayHold(part.schema().name()))
                    .ifPresent(parts::add);
        }
        if (parts.isEmpty() && all && !others) {
            new PlanArranger(grid, look.head(), known, said, open, findings)
                    .part()
                    .filter(part -> grid.mayHold(part.schema().name()))
                    .ifPresent(parts::add);
        }
        if (parts.isEmpty() && all && grid.mayHold(RunsSheet.SCHEMA.name())) {
            new RunArranger(grid, look.head(), look.tables(), names).part().ifPresent(parts::add);
        }
        if (parts.isEmpty() && all && !others && grid.ofBook() && grid.mayHold(OffersSheet.SCHEMA.name())) {
            new SupplierColumns(grid, look.head(), finder::knows, names, said, open, findings)
                    .part()
                    .ifPresent(parts::add);
        }
        if (parts.isEmpty() && !others && grid.mayHold(OffersSheet.SCHEMA.name())) {
            new OfferArranger(grid, look.head(), look.tables(), names, said, open, findings)
                    .part()
                    .ifPresent(parts::add);
        }
        return parts;
    }

    /** A sheet without the rows that are mostly struck through; they are told with the account of the sheet. */
    private static Grid withoutStruck(Grid grid) {
        Map<Integer, Map<Integer, Cell>> blank = new HashMap<>();
        grid.aside().struck().forEach((row, columns) -> {
            if (2 * columns.cardinality() >= grid.row(row).size()) {
                columns.stream()
                        .forEach(column -> blank.computeIfAbsent(row, any -> new HashMap<>())
                                .put(column, Cell.BLANK));
            }
        });
        return grid.with(blank);
    }
}
