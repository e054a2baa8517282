package perkilo.reading.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Account;
import perkilo.origin.Account.Entry;
import perkilo.origin.Account.Fate;
import perkilo.origin.Account.Subject;
import perkilo.origin.CellBlock;
import perkilo.origin.Counted;
import perkilo.origin.Origin;
import perkilo.schema.ComponentsSheet;
import perkilo.schema.FormulaSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.ProductsSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.SuppliersSheet;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/**
 * Writes the account of the reading of files: what became of each sheet, column, group of rows and line. Reports what
 * may change costs and was not read.
 *
 * <p>It follows the reading of the rows, because that decides which of them count.
 */
public final class AccountWriter {

    /** Tables whose lines around them may say something about prices. */
    private static final Set<SheetSchema> PRICED =
            Set.of(OffersSheet.SCHEMA, SuppliersSheet.SCHEMA, ProductsSheet.SCHEMA, ComponentsSheet.SCHEMA);

    private static final int NAMED_LINES = 3;
    private static final int NAMED_COLUMNS = 60;
    private static final int LINE_CELLS = 2;

    private final Findings findings;
    private final Map<Grid, String> proposals;
    private final CostWords words = new CostWords();
    private final List<Entry> entries = new ArrayList<>();

    /**
     * Ready to write.
     *
     * @param proposals what a sheet without a table looks like, and what to do
     * @param findings receives what may change costs and was not read
     */
    public AccountWriter(Map<Grid, String> proposals, Findings findings) {
        this.proposals = proposals;
        this.findings = findings;
    }

    /** Adds a file with its tables, in the order of its sheets. */
    public void add(Grids file, List<FoundTable> tables) {
        add(file, tables, AsTyped.SAME);
    }

    /**
     * Adds a file with its tables, in the order of its sheets.
     *
     * @param file as it was read
     * @param typed as the person typed it
     */
    public void add(Grids file, List<FoundTable> tables, AsTyped typed) {
        for (Grid grid : file.sheets()) {
            List<FoundTable> own =
                    tables.stream().filter(table -> table.grid().equals(grid)).toList();
            if (own.isEmpty()) {
                addWithoutTable(grid);
            } else {
                new SheetAccount(grid, own, typed).add();
            }
        }
        for (Grids.Other other : file.others()) {
            entries.add(sheet(
                    other.why() == Grids.Why.RESULT ? Subject.RESULT : Subject.SHEET,
                    other.place(),
                    Fate.NOT_NEEDED,
                    switch (other.why()) {
                        case RESULT -> AccountMessages.resultSheet();
                        case HIDDEN -> AccountMessages.hiddenSheet();
                        case MISSING -> AccountMessages.missingSheet();
                    }));
        }
    }

    /** Adds a sheet that is not read because the person says so, or because it says how others are read. */
    public void addLeft(Grid grid, boolean ignored) {
        entries.add(sheet(
                grid.origin(),
                Fate.NOT_NEEDED,
                ignored ? AccountMessages.ignoredSheet() : AccountMessages.sheetOfAnswers()));
    }

    /** The account of all files so far. */
    public Account account() {
        return new Account(entries);
    }

    private void addWithoutTable(Grid grid) {
        boolean empty = grid.rows().isEmpty() && grid.aside().hiddenRows().isEmpty();
        if (empty) {
            entries.add(sheet(grid.origin(), Fate.NOT_NEEDED, AccountMessages.emptySheet()));
        } else if (TableFinder.hasResultName(grid)) {
            entries.add(sheet(grid.origin(), Fate.NOT_NEEDED, AccountMessages.resultName()));
        } else if (!proposals.containsKey(grid) && holdsOnlyLines(grid)) {
            entries.add(sheet(grid.origin(), Fate.NOT_NEEDED, AccountMessages.onlyLines()));
        } else {
            String proposal = proposals.get(grid);
            entries.add(
                    sheet(grid.origin(), Fate.NOT_UNDERSTOOD, proposal == null ? AccountMessages.noTable() : proposal));
        }
    }

    /** Whether no row has more than two cells, as on a sheet of notes. */
    private static boolean holdsOnlyLines(Grid grid) {
        return java.util.Arrays.stream(grid.rows().numbers())
                .allMatch(row -> grid.rows().isShort(row, LINE_CELLS));
    }

    private static Entry sheet(Origin place, Fate fate, String why) {
        return sheet(place.sheet().isEmpty() ? Subject.FILE : Subject.SHEET, place, fate, why);
    }

    private static Entry sheet(Subject subject, Origin place, Fate fate, String why) {
        return new Entry(place, subject, "", fate, "", why, 0, List.of(CellBlock.ALL));
    }

    /** What became of the rows and columns of one table. */
    private static final class Tally {

        private final FoundTable table;
        private final Region region;
        private final BitSet known = new BitSet();
        private final BitSet filled = new BitSet();
        private final BitSet readRows = new BitSet();
        private final BitSet ofOthers = new BitSet();
        private final BitSet leftOut = new BitSet();
        private final BitSet headRows = new BitSet();
        private final BitSet headColumns = new BitSet();
        private final int first;
        private final int last;
        private @Nullable BitSet headersAndRead;
        private final Map<Region.RowState, BitSet> left = new LinkedHashMap<>();

        Tally(FoundTable table, AsTyped typed) {
            this.table = table;
            this.region = table.region();
            int begins = region.firstColumn();
            while (begins > 0 && typed.isLeftOut(table, begins - 1)) {
                begins--;
            }
            int ends = region.lastColumn();
            while (typed.isLeftOut(table, ends + 1)) {
                ends++;
            }
            this.first = begins;
            this.last = ends;
            for (int column = first; column <= last; column++) {
                leftOut.set(column, typed.isLeftOut(table, column));
            }
            table.columns().values().forEach(place -> known.set(place.index()));
        }

        boolean has(int row) {
            if (isOfLines()) {
                return region.arrangedRows().get(row); // lines without headers, with others between them
            }
            boolean above = row < region.topRow() && region.arrangedRows().get(row);
            return above || (row >= region.topRow() && row <= table.lastRow());
        }

        /** Whether it was made of lines of a label and a value, which stand between other lines. */
        boolean isOfLines() {
            return region.topRow() > table.headerRow() && !region.arrangedRows().isEmpty();
        }

        boolean overlaps(Tally other) {
            return first <= other.last && other.first <= last;
        }

        /** Takes the table's part of a row out of the columns that hold something. */
        void take(int row, BitSet columns) {
            int end = last + 1;
            if (columns.nextSetBit(first) < 0 || columns.nextSetBit(first) >= end) {
                return;
            }
            if (row > table.headerRow()) {
                Region.RowState state = table.state(row);
                if (state == Region.RowState.READ) {
                    readRows.set(row);
                    for (int column = columns.nextSetBit(first);
                            column >= 0 && column < end;
                            column = columns.nextSetBit(column + 1)) {
                        filled.set(column);
                    }
                } else {
                    left.computeIfAbsent(state, any -> new BitSet()).set(row);
                }
            } else {
                headRows.set(row);
                BitSet heads = columns.get(first, end);
                heads.stream().forEach(column -> headColumns.set(first + column));
            }
            columns.clear(first, end);
        }

        /** The cells of columns in the headers and in the rows that were read. */
        CellBlock columns(BitSet columns) {
            BitSet rows = headersAndRead;
            if (rows == null) {
                rows = (BitSet) readRows.clone();
                rows.set(Math.max(region.topRow(), 0), table.headerRow() + 1);
                rows.or(headRows);
                rows.andNot(ofOthers);
                rows.andNot(table.grid().aside().hiddenRows());
                headersAndRead = rows;
            }
            return new CellBlock(rows, columns);
        }

        CellBlock column(int column) {
            BitSet columns = new BitSet();
            columns.set(column);
            return columns(columns);
        }

        /** The cells of rows that were left out. */
        CellBlock block(BitSet rows) {
            BitSet columns = new BitSet();
            columns.set(first, last + 1);
            return new CellBlock(rows, columns);
        }
    }

    /** Writes the account of one sheet with tables. */
    private final class SheetAccount {

        private final Grid grid;
        private final List<Tally> tallies;
        private final boolean priced;
        private final AsTyped typed;
        private final Map<BitSet, BitSet> loose = new LinkedHashMap<>();
        private final Map<Integer, BitSet> matters = new LinkedHashMap<>();
        private final List<String> unread = new ArrayList<>();
        private Origin firstUnread = Origin.NONE;

        SheetAccount(Grid grid, List<FoundTable> tables, AsTyped typed) {
            this.grid = grid;
            this.typed = typed;
            this.tallies = tables.stream()
                    .sorted(Comparator.comparingInt(FoundTable::headerRow)
                            .thenComparing(table -> !table.schema().equals(FormulaSheet.SCHEMA)))
                    .map(table -> new Tally(table, typed))
                    .sorted(Comparator.comparing(tally -> !tally.isOfLines()))
                    .toList();
            this.priced = tables.stream().anyMatch(table -> PRICED.contains(table.schema()));
        }

        void add() {
            BitSet columns = new BitSet();
            for (int row : grid.rows().numbers()) {
                columns.clear();
                grid.rows().addColumns(row, columns);
                take(row, columns);
                if (!columns.isEmpty()) {
                    addLoose(row, columns);
                }
            }
            tallies.forEach(this::addTable);
            addOtherCells();
            if (!unread.isEmpty()) {
                int named = Math.min(NAMED_LINES, unread.size());
                findings.warning(
                        firstUnread, AccountMessages.linesNotRead(unread.subList(0, named), unread.size() - named));
            }
        }

        /**
         * Gives the cells of a row to their tables; where tables overlap, to the one that begins higher up, and what is
         * left of the row to none.
         */
        private void take(int row, BitSet columns) {
            for (int at = 0; at < tallies.size(); at++) {
                Tally tally = tallies.get(at);
                if (!tally.has(row)) {
                    continue;
                }
                for (int before = 0; before < at; before++) {
                    Tally other = tallies.get(before);
                    boolean shared = other.isOfLines()
                            || other.table.headerRow() == tally.table.headerRow(); // as a formula with prices
                    if (!shared && other.has(row) && other.overlaps(tally)) {
                        tally.ofOthers.set(row);
                    }
                }
                if (!tally.ofOthers.get(row)) {
                    tally.take(row, columns);
                }
            }
        }

        private void addLoose(int row, BitSet columns) {
            boolean line = tallies.stream()
                    .flatMap(tally -> tally.region.priceLines().values().stream())
                    .anyMatch(known -> known.row() == row);
            if (line || (priced && mayMatter(row, columns))) {
                matters.put(row, (BitSet) columns.clone());
                return;
            }
            BitSet rows = loose.get(columns);
            if (rows == null) {
                rows = new BitSet();
                loose.put((BitSet) columns.clone(), rows);
            }
            rows.set(row);
        }

        private boolean mayMatter(int row, BitSet columns) {
            return SheetLines.mayMatter(
                    columns.stream().mapToObj(column -> grid.at(row, column)).toList(), words);
        }

        private void addTable(Tally tally) {
            FoundTable table = tally.table;
            entries.add(new Entry(
                    table.header(),
                    Subject.TABLE,
                    "",
                    Fate.READ,
                    table.schema().name(),
                    "",
                    tally.readRows.cardinality(),
                    List.of()));
            Map<Integer, String> columns = new HashMap<>();
            table.columns().forEach((column, place) -> columns.put(place.index(), column.header()));
            columns.putAll(tally.region.arrangedUses());
            BitSet unknown = (BitSet) tally.filled.clone();
            unknown.andNot(tally.known);
            columns.keySet().forEach(unknown::clear);
            unknown.andNot(tally.leftOut);
            FoundTable shown = typed.shown(table);
            UnreadColumn unreadColumn = new UnreadColumn(table, shown, tally.readRows, unknown, words, findings);
            Map<UnreadColumn.Outcome, BitSet> more = new LinkedHashMap<>();
            int named = 0;
            for (int column = tally.first; column <= tally.last; column++) {
                String ours = columns.get(column);
                if (ours != null) {
                    entries.add(column(tally, shown, column, Fate.READ, ours, ""));
                } else if (tally.leftOut.get(column)) {
                    entries.add(column(tally, shown, column, Fate.NOT_NEEDED, "", AccountMessages.leftOut()));
                } else if (tally.headColumns.get(column) || tally.filled.get(column)) {
                    UnreadColumn.Outcome outcome = unreadColumn.of(column, tally.filled.get(column));
                    if (named++ < NAMED_COLUMNS) {
                        entries.add(column(tally, shown, column, outcome.fate(), "", outcome.why()));
                    } else {
                        more.computeIfAbsent(outcome, any -> new BitSet()).set(column);
                    }
                }
            }
            more.forEach((outcome, others) -> entries.add(new Entry(
                    grid.origin(Math.max(table.headerRow(), 0), others.nextSetBit(0)),
                    Subject.COLUMN,
                    Counted.of(others.cardinality(), "more column"),
                    outcome.fate(),
                    "",
                    outcome.why(),
                    tally.readRows.cardinality(),
                    List.of(tally.columns(others)))));
            tally.left.forEach((state, rows) -> addRows(tally, state, rows));
        }

        private Entry column(Tally tally, FoundTable shown, int column, Fate fate, String ours, String why) {
            FoundTable table = tally.table;
            return new Entry(
                    grid.origin(Math.max(table.headerRow(), 0), column),
                    Subject.COLUMN,
                    UnreadColumn.header(shown, column),
                    fate,
                    ours,
                    why,
                    tally.readRows.cardinality(),
                    List.of(tally.column(column)));
        }

        private void addRows(Tally tally, Region.RowState state, BitSet all) {
            BitSet rows = (BitSet) all.clone();
            if (state != Region.RowState.NOTE) {
                entries.add(rows(
                        tally,
                        rows,
                        Fate.NOT_NEEDED,
                        switch (state) {
                            case TOTAL -> AccountMessages.totals();
                            case STRUCK -> AccountMessages.struck();
                            default -> AccountMessages.withoutKey();
                        }));
                return;
            }
            Map<String, BitSet> figures = new LinkedHashMap<>();
            rows.stream().forEach(row -> {
                List<String> places = NoteFigures.places(tally.table, row);
                boolean costs = words.in(SheetLines.text(grid.row(row).values()))
                        .filter(about -> about != CostWords.About.PRICE)
                        .isPresent();
                if (!places.isEmpty() && !costs) {
                    figures.computeIfAbsent(AccountMessages.figuresInNote(places), any -> new BitSet())
                            .set(row);
                }
            });
            figures.forEach((why, noted) -> {
                entries.add(rows(tally, noted, Fate.NOT_NEEDED, why));
                noted.stream()
                        .forEach(row ->
                                findings.note(grid.origin(row, grid.row(row).firstKey()), why));
                rows.andNot(noted);
            });
            if (rows.isEmpty()) {
                return;
            }
            BitSet lines = new BitSet();
            BitSet matter = new BitSet();
            tally.region.priceLines().values().forEach(line -> lines.set(line.row()));
            lines.and(rows);
            if (PRICED.contains(tally.table.schema())) {
                rows.stream()
                        .filter(row -> !lines.get(row)
                                && SheetLines.mayMatter(grid.row(row).values(), words))
                        .forEach(matter::set);
            }
            BitSet others = (BitSet) rows.clone();
            others.andNot(lines);
            others.andNot(matter);
            if (!lines.isEmpty()) {
                entries.add(rows(tally, lines, Fate.READ, ""));
            }
            if (!matter.isEmpty()) {
                matter.stream().forEach(row -> {
                    BitSet columns = new BitSet();
                    grid.rows().addColumns(row, columns);
                    note(row, telling(row, columns));
                });
                entries.add(rows(tally, matter, Fate.NOT_UNDERSTOOD, AccountMessages.lineNotUnderstood()));
            }
            if (!others.isEmpty()) {
                entries.add(rows(tally, others, Fate.NOT_NEEDED, AccountMessages.notes()));
            }
        }

        private Entry rows(Tally tally, BitSet rows, Fate fate, String why) {
            return new Entry(
                    grid.origin(rows.nextSetBit(0), tally.first),
                    Subject.ROWS,
                    SheetLines.rows(rows),
                    fate,
                    fate == Fate.READ ? OffersSheet.PRICE_PER.header() : "",
                    why,
                    rows.cardinality(),
                    List.of(tally.block(rows)));
        }

        /** The first cell of a line that may matter by itself. */
        private int telling(int row, BitSet columns) {
            return columns.stream()
                    .filter(column -> SheetLines.mayMatter(List.of(grid.at(row, column)), words))
                    .findFirst()
                    .orElse(columns.nextSetBit(0));
        }

        /** Notes a line that may matter, for the one warning of the sheet. */
        private void note(int row, int column) {
            if (unread.isEmpty()) {
                firstUnread = grid.origin(row, column);
            }
            Cell cell = grid.at(row, column);
            unread.add("\"" + cell.text() + "\" in " + grid.origin(row, column).cell());
        }

        /** Whether a cell beside the tables heads figures of a charge, below it or to the right of it. */
        private boolean isCharge(int row, int column) {
            Cell cell = grid.at(row, column);
            boolean charge = cell.kind() == Cell.Kind.TEXT
                    && !CostWords.isMarked(cell.text())
                    && words.in(cell.text())
                            .filter(about -> about == CostWords.About.CHARGE || about == CostWords.About.DISCOUNT)
                            .isPresent();
            return charge && (isFigure(row, column + 1) || isFigure(row + 1, column));
        }

        /** Whether a cell beside the tables holds a number other than zero. */
        private boolean isFigure(int row, int column) {
            BigDecimal number = grid.at(row, column).number();
            boolean inTable =
                    tallies.stream().anyMatch(tally -> tally.has(row) && column >= tally.first && column <= tally.last);
            return number != null && number.signum() != 0 && !inTable;
        }

        private void addOtherCells() {
            matters.forEach((row, columns) -> {
                int column = telling(row, columns);
                boolean line = tallies.stream()
                        .flatMap(tally -> tally.region.priceLines().values().stream())
                        .anyMatch(known -> known.row() == row);
                if (!line && isCharge(row, column)) {
                    findings.error(
                            grid.origin(row, column),
                            AccountMessages.chargeBesideTable(
                                    grid.at(row, column).text()));
                } else if (!line) {
                    note(row, column);
                }
                BitSet rows = new BitSet();
                rows.set(row);
                entries.add(new Entry(
                        grid.origin(row, column),
                        Subject.CELLS,
                        grid.at(row, column).text(),
                        line ? Fate.READ : Fate.NOT_UNDERSTOOD,
                        line ? OffersSheet.PRICE_PER.header() : "",
                        line ? "" : AccountMessages.lineNotUnderstood(),
                        1,
                        List.of(new CellBlock(rows, columns))));
            });
            if (!loose.isEmpty()) {
                List<CellBlock> blocks = new ArrayList<>();
                BitSet all = new BitSet();
                loose.forEach((columns, rows) -> {
                    blocks.add(new CellBlock(rows, columns));
                    all.or(rows);
                });
                int row = all.nextSetBit(0);
                int column = grid.row(row).keySet().stream()
                        .filter(one -> blocks.stream().anyMatch(block -> block.holds(row, one)))
                        .findFirst()
                        .orElse(0);
                entries.add(new Entry(
                        grid.origin(row, column),
                        Subject.CELLS,
                        grid.at(row, column).text(),
                        Fate.NOT_NEEDED,
                        "",
                        AccountMessages.besideTables(),
                        all.cardinality(),
                        blocks));
            }
            BitSet hidden = grid.aside().hiddenRows();
            if (!hidden.isEmpty()) {
                entries.add(new Entry(
                        grid.origin(hidden.nextSetBit(0), 0),
                        Subject.ROWS,
                        SheetLines.rows(hidden),
                        Fate.NOT_NEEDED,
                        "",
                        AccountMessages.hiddenRows(),
                        hidden.cardinality(),
                        List.of(new CellBlock(hidden, null))));
            }
        }
    }
}
