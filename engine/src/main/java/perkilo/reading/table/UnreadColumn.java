package perkilo.reading.table;

import java.math.BigDecimal;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import perkilo.origin.Account.Fate;
import perkilo.origin.Origin;
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
    private final CostWords words;
    private final Findings findings;
    private final FoundTable shown;
    private final HeaderIndex index;
    private final NavigableMap<Integer, Cell> headers;
    private final NavigableMap<Integer, Cell> above;
    private final Map<Integer, Content> values = new HashMap<>();

    /**
     * Ready to look at the columns of a table.
     *
     * @param shown the same on the sheet as it was typed
     * @param rows those that were read
     * @param columns those that were not read and hold something
     */
    UnreadColumn(FoundTable table, FoundTable shown, BitSet rows, BitSet columns, CostWords words, Findings findings) {
        this.table = table;
        this.shown = shown;
        this.grid = table.grid();
        this.words = words;
        this.findings = findings;
        this.index = new HeaderIndex(table.schema().columns());
        this.headers = grid.row(table.headerRow());
        this.above = grid.row(table.region().topRow());
        columns.stream().forEach(column -> values.put(column, new Content()));
        if (!columns.isEmpty()) {
            rows.stream().forEach(row -> look(row, columns));
        }
    }

    /** Whether a column with such a word is reported in a table, because it may change costs. */
    static boolean isReported(SheetSchema schema, CostWords.About about) {
        boolean charge = about == CostWords.About.CHARGE || about == CostWords.About.DISCOUNT;
        return OF_SUPPLIERS.contains(schema) || (OF_PRODUCTS.contains(schema) && charge);
    }

    /** The header of a column as typed, or its letter if it has none. */
    static String header(FoundTable table, int column) {
        int top = table.region().topRow();
        Cell above = top == table.headerRow() ? Cell.BLANK : table.grid().at(top, column);
        return header(above, table.grid().at(table.headerRow(), column), column);
    }

    private static String header(Cell above, Cell below, int column) {
        String header = (above.text() + " " + below.text()).strip();
        return header.isEmpty() ? Origin.columnName(column) : header;
    }

    /** The header of a column as typed, or its letter if it has none. */
    String header(int column) {
        boolean one = table.region().topRow() == table.headerRow();
        return header(
                one ? Cell.BLANK : above.getOrDefault(column, Cell.BLANK),
                headers.getOrDefault(column, Cell.BLANK),
                column);
    }

    /**
     * What became of a column.
     *
     * @param why why it is not needed, or what to do
     */
    record Outcome(Fate fate, String why) {}

    /** Whether a kept price list has the column to say where a price comes from: what it says is in the price. */
    private boolean isOfKeptList(String header) {
        boolean ours = header.equals(OffersSheet.FROM_FILE) || header.equals(OffersSheet.NOTE);
        return ours
                && !grid.ofBook()
                && table.schema().equals(OffersSheet.SCHEMA)
                && headers.values().stream().anyMatch(cell -> cell.text().equals(OffersSheet.FROM_FILE));
    }

    /** What becomes of a column that is not read. */
    Outcome of(int column, boolean filled) {
        if (!filled) {
            return new Outcome(Fate.NOT_NEEDED, AccountMessages.noValues());
        }
        String header = header(column);
        if (CostWords.isMarked(header)) {
            return new Outcome(Fate.NOT_NEEDED, AccountMessages.marked());
        }
        if (isOfKeptList(header)) {
            return new Outcome(Fate.NOT_NEEDED, AccountMessages.ofKeptList());
        }
        Optional<InputColumn> named = index.match(HeaderText.of(header))
                .map(HeaderIndex.HeaderMatch::column)
                .filter(table::has);
        if (named.isPresent()) {
            FoundTable.Place read = table.columns().get(named.get());
            return new Outcome(
                    Fate.NOT_NEEDED,
                    AccountMessages.otherRead(named.get().header(), read == null ? "" : header(shown, read.index())));
        }
        Content content = values.getOrDefault(column, new Content());
        Holds holds = content.holds();
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
        boolean headed = headers.containsKey(column);
        if (holds == Holds.WORDS) {
            return reportRemarks(column, header, content)
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
    private boolean reportRemarks(int column, String header, Content content) {
        if (content.remarkRow < 0) {
            return false;
        }
        findings.warning(
                grid.origin(content.remarkRow, column), AccountMessages.costsInRemarks(header, content.remark));
        return true;
    }

    private boolean isAboutCosts(String text) {
        return text.chars().anyMatch(Character::isDigit)
                && words.in(text)
                        .filter(about -> about != CostWords.About.PRICE)
                        .isPresent();
    }

    /** What the cells of a column hold. */
    private static final class Content {

        private boolean figures;
        private boolean zeros;
        private boolean texts;
        private int remarkRow = -1;
        private String remark = "";

        Holds holds() {
            if (figures) {
                return Holds.FIGURES;
            }
            return zeros && !texts ? Holds.ZEROS : Holds.WORDS;
        }
    }

    /** Looks at the cells of a row in the columns that were not read. */
    private void look(int row, BitSet columns) {
        boolean remarks = OF_SUPPLIERS.contains(table.schema());
        grid.row(row).forEach((column, cell) -> {
            Content content = columns.get(column) ? values.get(column) : null;
            if (content == null || (content.figures && (!remarks || content.remarkRow >= 0))) {
                return;
            }
            BigDecimal number = cell.number();
            boolean text = cell.kind() == Cell.Kind.TEXT;
            if (number != null && number.signum() == 0) {
                content.zeros = true;
            } else if (number != null || cell.kind() == Cell.Kind.DATE || (text && isFigure(cell.text()))) {
                content.figures = true;
            } else if (!Values.isDash(cell)) {
                content.texts = true;
            }
            if (remarks && text && content.remarkRow < 0 && isAboutCosts(cell.text())) {
                content.remarkRow = row;
                content.remark = cell.text();
            }
        });
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
}
