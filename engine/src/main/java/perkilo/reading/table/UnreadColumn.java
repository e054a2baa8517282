package perkilo.reading.table;

import java.math.BigDecimal;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import perkilo.origin.Account.Fate;
import perkilo.schema.BatchesSheet;
import perkilo.schema.ComponentsSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.schema.ProductsSheet;
import perkilo.schema.RunsSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.SuppliersSheet;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** What becomes of the columns of a table that are not read; those that may change costs are reported. */
final class UnreadColumn {

    /** Tables in which every word about costs counts. */
    private static final Set<SheetSchema> OF_SUPPLIERS = Set.of(OffersSheet.SCHEMA, SuppliersSheet.SCHEMA);

    /** Tables in which charges and discounts count. */
    private static final Set<SheetSchema> OF_PRODUCTS =
            Set.of(ProductsSheet.SCHEMA, ComponentsSheet.SCHEMA, RunsSheet.SCHEMA, BatchesSheet.SCHEMA);

    private static final int NAMED = 6;

    private final FoundTable table;
    private final Grid grid;
    private final BitSet rows;
    private final CostWords words;
    private final Findings findings;
    private final HeaderIndex index;

    /**
     * Ready to look at the columns of a table.
     *
     * @param rows those that were read
     */
    UnreadColumn(FoundTable table, BitSet rows, CostWords words, Findings findings) {
        this.table = table;
        this.grid = table.grid();
        this.rows = rows;
        this.words = words;
        this.findings = findings;
        this.index = new HeaderIndex(table.schema().columns());
    }

    /** Whether a column with such a word is reported in a table, because it may change costs. */
    static boolean isReported(SheetSchema schema, CostWords.About about) {
        boolean charge = about == CostWords.About.CHARGE || about == CostWords.About.DISCOUNT;
        return OF_SUPPLIERS.contains(schema) || (OF_PRODUCTS.contains(schema) && charge);
    }

    /** The header of a column as typed, or its letter if it has none. */
    static String header(FoundTable table, int column) {
        String below = table.grid().at(table.headerRow(), column).text();
        String above = table.region().topRow() == table.headerRow()
                ? ""
                : table.grid().at(table.region().topRow(), column).text();
        String header = (above + " " + below).strip();
        return header.isEmpty() ? perkilo.origin.Origin.columnName(column) : header;
    }

    /**
     * What became of a column.
     *
     * @param why why it is not needed, or what to do
     */
    record Outcome(Fate fate, String why) {}

    /** What becomes of a column that is not read. */
    Outcome of(int column, boolean filled) {
        if (!filled) {
            return new Outcome(Fate.NOT_NEEDED, AccountMessages.noValues());
        }
        String header = header(table, column);
        if (CostWords.isMarked(header)) {
            return new Outcome(Fate.NOT_NEEDED, AccountMessages.marked());
        }
        Optional<InputColumn> named = index.match(HeaderText.of(header))
                .map(HeaderIndex.HeaderMatch::column)
                .filter(table::has);
        if (named.isPresent()) {
            FoundTable.Place read = table.columns().get(named.get());
            return new Outcome(
                    Fate.NOT_NEEDED,
                    AccountMessages.otherRead(named.get().header(), read == null ? "" : header(table, read.index())));
        }
        Holds holds = holds(column);
        if (holds == Holds.ZEROS) {
            return new Outcome(Fate.NOT_NEEDED, AccountMessages.allZero());
        }
        if (table.region().nearHeaders().get(column)) {
            return new Outcome(Fate.NOT_UNDERSTOOD, AccountMessages.headerNotRecognised());
        }
        CostWords.About about = words.in(header).orElse(null);
        if (about != null) {
            return aboutCosts(column, header, about, holds);
        }
        boolean headed = !grid.at(table.headerRow(), column).isBlank();
        if (holds == Holds.WORDS) {
            return reportRemarks(column, header)
                    ? new Outcome(Fate.NOT_UNDERSTOOD, AccountMessages.lineNotUnderstood())
                    : new Outcome(Fate.NOT_NEEDED, AccountMessages.remarks());
        }
        return new Outcome(Fate.NOT_UNDERSTOOD, headed ? AccountMessages.namesNothing() : AccountMessages.noHeader());
    }

    private Outcome aboutCosts(int column, String header, CostWords.About about, Holds holds) {
        boolean charge = about == CostWords.About.CHARGE || about == CostWords.About.DISCOUNT;
        boolean ofSuppliers = OF_SUPPLIERS.contains(table.schema());
        boolean ofProducts = OF_PRODUCTS.contains(table.schema());
        if (about == CostWords.About.PRICE && !ofSuppliers && !ofProducts) {
            return new Outcome(Fate.NOT_NEEDED, AccountMessages.pricesFromOffers());
        }
        if (!charge && !ofSuppliers && !ofProducts) {
            return new Outcome(Fate.NOT_UNDERSTOOD, AccountMessages.namesNothing());
        }
        boolean error =
                holds == Holds.FIGURES && about != CostWords.About.PRICE && (ofSuppliers || (ofProducts && charge));
        String text = AccountMessages.costColumn(header, candidates(about));
        boolean told = table.schema().required().stream().anyMatch(one -> !table.has(one));
        if (told) {
            return new Outcome(Fate.NOT_UNDERSTOOD, AccountMessages.costColumn());
        }
        if (error) {
            findings.error(grid.origin(table.headerRow(), column), text);
        } else {
            findings.warning(grid.origin(table.headerRow(), column), text);
        }
        return new Outcome(Fate.NOT_UNDERSTOOD, AccountMessages.costColumn());
    }

    /** Columns of the table that such a column may be. */
    private List<String> candidates(CostWords.About about) {
        return table.schema().columns().stream()
                .filter(column -> !table.has(column))
                .filter(column ->
                        words.in(column.header()).filter(one -> one == about).isPresent())
                .map(InputColumn::header)
                .limit(NAMED)
                .toList();
    }

    /** Warns of a remark about costs with a figure in it; whether there is one. */
    private boolean reportRemarks(int column, String header) {
        if (!OF_SUPPLIERS.contains(table.schema())) {
            return false;
        }
        for (int row = rows.nextSetBit(0); row >= 0; row = rows.nextSetBit(row + 1)) {
            String text = grid.at(row, column).text();
            if (text.chars().anyMatch(Character::isDigit)
                    && words.in(text)
                            .filter(about -> about != CostWords.About.PRICE)
                            .isPresent()) {
                findings.warning(grid.origin(row, column), AccountMessages.costsInRemarks(header, text));
                return true;
            }
        }
        return false;
    }

    /** Whether a text is a number with or without a unit; one that begins with a letter is looked at no closer. */
    private static boolean isFigure(String text) {
        return !Character.isLetter(text.charAt(0)) && !(NumberText.parse(text) instanceof NumberText.NotANumber);
    }

    private enum Holds {
        FIGURES,
        ZEROS,
        WORDS
    }

    private Holds holds(int column) {
        boolean zeros = false;
        boolean texts = false;
        for (int row = rows.nextSetBit(0); row >= 0; row = rows.nextSetBit(row + 1)) {
            Cell cell = grid.at(row, column);
            BigDecimal number = cell.number();
            if (number != null && number.signum() == 0) {
                zeros = true;
            } else if (number != null
                    || cell.kind() == Cell.Kind.DATE
                    || (cell.kind() == Cell.Kind.TEXT && isFigure(cell.text()))) {
                return Holds.FIGURES;
            } else if (!cell.isBlank() && !Values.isDash(cell)) {
                texts = true;
            }
        }
        return zeros && !texts ? Holds.ZEROS : Holds.WORDS;
    }
}
