package perkilo.reading.arrange;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Meaning;
import perkilo.names.Names;
import perkilo.origin.Decimals;
import perkilo.origin.Origin;
import perkilo.reading.table.ColumnNames;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.schema.FormulaSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.ProductsSheet;
import perkilo.schema.Schemas;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.GridBuilder;

/**
 * Formulas in people's own layouts: phases as headings, names in title rows, several formulas side by side, grams or
 * kilograms in place of per cent.
 */
final class FormulaArranger {

    private static final int ROWS_LOOKED_AT = 80;
    private static final int MOST_ROWS = 3000;
    private static final int TITLE_ROWS = 8;
    private static final int LONGEST_NAME = 80;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** How far the sum of a formula with an error in it may be from 100 %; common practice, no source. */
    private static final BigDecimal NEARLY = BigDecimal.TEN;

    private static final BigDecimal ROUGHLY = new BigDecimal("0.05");
    private static final ColumnNames COLUMNS = new ColumnNames(FormulaSheet.SCHEMA.columns());

    private static final ColumnNames PRODUCT = new ColumnNames(List.of(ProductsSheet.PRODUCT));

    private static final Pattern WEIGHT = Pattern.compile(
            "(?iu)(?:(?:batch|charge|ansatz|weight|amount|qty|quantity|menge|einwaage|gewicht|quantité|qté|poids|cantidad|peso|quantità)\\s*)?"
                    + "[(\\[]?\\s*(g|gr|grams?|gramm|grammes|gramos|grammi|kg)\\s*[)\\]]?"
                    + "(?:\\s*(?:per|pro|je|par|por|für|for|pour|auf|/)\\s*(.*))?");
    /** A formula's name with the unit of its weights: {@code Day cream [g]}. */
    private static final Pattern NAMED_WEIGHT =
            Pattern.compile("(?iu)(.*\\p{L}.*?)\\s*[(\\[]\\s*(?:g|gr|grams?|gramm|grammes|gramos|grammi|kg)\\s*[)\\]]");

    private static final Pattern AMOUNT = Pattern.compile("(?iu)(\\d[\\d.,]*)\\s*(?:g|kg)?\\b.*");
    private static final Pattern TO_AMOUNT = Pattern.compile(
            "(?iu)(?:q\\.?\\s*s\\.?\\s*p?\\.?|ad|to|up to|auf|zu|add|c\\.?\\s*[sb]\\.?\\s*p\\.?|q\\.?\\s*b\\.?)\\s*(?:to|ad|auf|a|à)?\\s*"
                    + "(\\d[\\d.,]*)\\s*(?:g|kg)?");
    private static final String TO_HUNDRED = "q.s. to 100";
    /** Names that a program gives to sheets; what programs do in the five languages, from memory. */
    private static final Pattern UNNAMED =
            Pattern.compile("(?iu)(?:sheet|tabelle|table|feuil|feuille|hoja|foglio)\\s*\\d*");

    private static final Pattern SHARE =
            Pattern.compile("(?iu)\\bw/w\\b|\\bp/p\\b|\\bm/m\\b|%|[()\\[\\]]|\\bin\\s*$|[-–:]\\s*$");
    private static final Pattern ENGLISH_TOTAL =
            Pattern.compile("(?i)(grand |sub-? ?)?totals?\\s*[:%]*|sum( %)?\\s*:?");

    private final Grid grid;
    private final List<FoundTable> tables;
    private final Predicate<Cell> isHeader;
    private final BookNames names;
    private final Findings findings;
    private final Map<String, Optional<ColumnNames.Named>> known = new HashMap<>();
    private boolean odd;

    /**
     * Looks for formulas on a sheet.
     *
     * @param tables those that are understood as they are, in the sheet's first rows
     * @param isHeader whether a cell is a header of some table, such as {@code Loss %}, and so no formula's name
     */
    FormulaArranger(Grid grid, List<FoundTable> tables, Predicate<Cell> isHeader, BookNames names, Findings findings) {
        this.grid = grid;
        this.tables = tables;
        this.isHeader = isHeader;
        this.names = names;
        this.findings = findings;
    }

    /**
     * The headers of a formula.
     *
     * @param columns the place of each of our columns
     * @param levels the columns of levels, with the names of their formulas; empty for the only one
     * @param weight the text over a column of weights; null where levels are in per cent
     * @param first the first column of the table
     * @param last the last column of the table
     */
    private record Head(
            int row,
            Map<InputColumn, Integer> columns,
            Map<Integer, String> levels,
            @Nullable String weight,
            int first,
            int last) {

        int material() {
            return requireNonNull(columns.get(FormulaSheet.MATERIAL));
        }

        /** Whether the materials have INCI names and no other. */
        boolean isByInci() {
            return requireNonNull(columns.get(FormulaSheet.MATERIAL)).equals(columns.get(FormulaSheet.INCI));
        }
    }

    /**
     * A line of a formula.
     *
     * @param formula the formula's name in the line or above it; empty where no column names formulas
     */
    private record Line(int row, Phase phase, String formula) {}

    /** A formula's part of a column of weights, by {@link Names#key} of its name. */
    private record Weighed(int column, String formula) {}

    /** The name and the temperature of a phase, with the places that say them. */
    private record Phase(
            String name, Origin origin, @Nullable BigDecimal temperature) {}

    /** The name of a formula in a row above it. */
    private record Title(String name, Origin origin, int row) {}

    /** The formulas of a sheet; none if they are understood as they are. */
    List<ArrangedPart> parts() {
        List<Head> heads = heads();
        List<ArrangedPart> parts = new ArrayList<>();
        int above = -1;
        List<Runnable> reports = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            Title title = title(heads.get(i), above);
            int below = grid.rows().last();
            if (i + 1 < heads.size()) {
                Title next = title(heads.get(i + 1), heads.get(i).row());
                below = (next == null ? heads.get(i + 1).row() : next.row()) - 1;
            }
            Head head = byProducts(heads.get(i), title, below, reports);
            parts.add(part(head, title, below, reports));
            above = below;
        }
        if (!odd) {
            return List.of();
        }
        reports.forEach(Runnable::run);
        return parts;
    }

    // headers

    /** Whether cells beside each other head a formula: materials, and levels or weights, in any language. */
    static boolean isHead(Map<Integer, Cell> cells) {
        boolean material = false;
        boolean level = false;
        for (Cell cell : cells.values()) {
            Optional<InputColumn> ours = columnOf(cell);
            material |= ours.filter(FormulaSheet.MATERIAL::equals).isPresent();
            level |= ours.filter(FormulaSheet.LEVEL_OF::equals).isPresent();
        }
        return material && level;
    }

    /** The column of a formula that a header names, in any language; a weight is a level. */
    static Optional<InputColumn> columnOf(Cell header) {
        if (!SheetCells.isText(header)) {
            return Optional.empty();
        }
        String text = header.text();
        if (WEIGHT.matcher(text).matches()) {
            return Optional.of(FormulaSheet.LEVEL_OF);
        }
        return COLUMNS.find(SheetWords.header(text).orElse(text)).map(ColumnNames.Named::column);
    }

    private List<Head> heads() {
        List<Head> heads = new ArrayList<>();
        int[] rows = grid.rows().numbers();
        for (int i = 0; i < Math.min(rows.length, MOST_ROWS); i++) {
            if (i == ROWS_LOOKED_AT && heads.isEmpty()) {
                return heads;
            }
            head(rows[i]).ifPresent(heads::add);
        }
        return rows.length > MOST_ROWS ? List.of() : heads;
    }

    private Optional<ColumnNames.Named> named(Cell cell) {
        return SheetCells.isText(cell) && cell.text().length() <= LONGEST_NAME
                ? known.computeIfAbsent(cell.text(), COLUMNS::find)
                : Optional.empty();
    }

    /** Whether a row heads a complete table of another kind. */
    private boolean isOfAnotherKind(int row) {
        return tables.stream()
                .anyMatch(table -> table.headerRow() == row
                        && !table.schema().equals(FormulaSheet.SCHEMA)
                        && Arranger.isComplete(table));
    }

    private Optional<Head> head(int row) {
        if (isOfAnotherKind(row)) {
            return Optional.empty();
        }
        NavigableMap<Integer, Cell> cells = grid.row(row);
        Map<InputColumn, Integer> columns = new LinkedHashMap<>();
        Map<Integer, String> levels = new LinkedHashMap<>();
        for (Map.Entry<Integer, Cell> cell : cells.entrySet()) {
            ColumnNames.Named named = named(cell.getValue()).orElse(null);
            if (named == null || weightOf(cell.getValue()).isPresent()) {
                continue;
            }
            if (named.column().equals(FormulaSheet.LEVEL_OF)) {
                levels.put(cell.getKey(), named.notUnderstood());
            } else if (named.notUnderstood().isEmpty()) {
                columns.putIfAbsent(named.column(), cell.getKey());
            }
        }
        Integer inci = columns.get(FormulaSheet.INCI);
        boolean byInci = !columns.containsKey(FormulaSheet.MATERIAL);
        Integer material = columns.getOrDefault(FormulaSheet.MATERIAL, inci);
        if (material == null || (byInci && isCalledOtherwise())) {
            return Optional.empty();
        }
        columns.put(FormulaSheet.MATERIAL, material);
        boolean plain = levels.size() == 1 && levels.values().iterator().next().isEmpty();
        String weight = null;
        for (Map.Entry<Integer, Cell> cell : cells.entrySet()) {
            String name = formulaName(cell.getValue());
            boolean other =
                    !levels.containsKey(cell.getKey()) && !columns.containsValue(cell.getKey()) && !name.isEmpty();
            if (other
                    && (names.isFormula(name)
                            || (!plain && !isHeader.test(cell.getValue()) && isWhole(row, cell.getKey(), material)))) {
                levels.put(cell.getKey(), name);
            }
        }
        if (levels.isEmpty() && mayWeigh(cells)) {
            cells.forEach((column, cell) -> weightOf(cell)
                    .filter(name -> names.isFormula(name) || addsUp(row, column, material))
                    .ifPresent(name -> levels.put(column, name)));
            boolean several = levels.size() > 1 || levels.values().stream().anyMatch(names::isFormula);
            if (several) {
                weight = cells.getOrDefault(levels.keySet().iterator().next(), Cell.BLANK)
                        .text();
            } else {
                levels.clear();
            }
        }
        if (levels.isEmpty()) {
            for (Map.Entry<Integer, Cell> cell : cells.entrySet()) {
                Matcher words = WEIGHT.matcher(cell.getValue().text());
                if (weight == null && SheetCells.isText(cell.getValue()) && words.matches()) {
                    weight = cell.getValue().text();
                    levels.put(cell.getKey(), "");
                }
            }
        }
        if (levels.isEmpty() || (levels.size() > 1 && levels.containsValue(""))) {
            return Optional.empty();
        }
        boolean formula = weight != null
                || names.isFormula(grid.title())
                || levels.keySet().stream().anyMatch(column -> isNearlyWhole(row, column, material));
        if (byInci && !formula) {
            return Optional.empty();
        }
        int first = material;
        while (cells.containsKey(first - 1)) {
            first--;
        }
        int last = levels.keySet().stream().mapToInt(column -> column).max().orElse(material);
        while (cells.containsKey(last + 1)) {
            last++;
        }
        return Optional.of(new Head(row, columns, levels, weight, first, Math.max(last, material)));
    }

    /** The same headers, with the products as the formulas if nothing else names those. */
    private Head byProducts(Head head, @Nullable Title title, int below, List<Runnable> reports) {
        boolean named = head.columns().containsKey(FormulaSheet.FORMULA)
                || title != null
                || head.levels().size() > 1
                || head.levels().values().stream().anyMatch(name -> !name.isEmpty())
                || names.isFormula(grid.title());
        if (named) {
            return head;
        }
        for (Map.Entry<Integer, Cell> cell : grid.row(head.row()).entrySet()) {
            int column = cell.getKey();
            boolean free = column != head.material() && !head.levels().containsKey(column);
            boolean product = SheetCells.isText(cell.getValue())
                    && PRODUCT.find(cell.getValue().text()).isPresent();
            if (free && product && namesRecipes(head, column, below)) {
                Map<InputColumn, Integer> columns = new LinkedHashMap<>(head.columns());
                columns.put(FormulaSheet.FORMULA, column);
                String header = cell.getValue().text();
                reports.add(
                        () -> findings.note(grid.origin(head.row(), column), ArrangeMessages.namedByProducts(header)));
                odd = true;
                return new Head(head.row(), columns, head.levels(), head.weight(), head.first(), head.last());
            }
        }
        return head;
    }

    /**
     * Whether a column of products names the recipes: each stands for two lines or more in the mean. A column that
     * names the goods of single lines, such as their trade names, does not.
     */
    private boolean namesRecipes(Head head, int column, int below) {
        Set<String> products = new HashSet<>();
        int lines = 0;
        for (int row : grid.rows().between(head.row(), below + 1)) {
            Cell material = SheetCells.merged(grid, row, head.material());
            if (material.isBlank() || SheetCells.isTotal(material)) {
                continue;
            }
            Cell product = SheetCells.merged(grid, row, column);
            if (!product.isBlank()) {
                products.add(Names.key(product.text()));
            } else if (products.isEmpty()) {
                return false;
            }
            lines++;
        }
        boolean known = products.stream().allMatch(names::isProduct);
        return !products.isEmpty() && lines >= 2 * products.size() && (known || column < head.material());
    }

    /** Whether columns may be weights of formulas: the sheet is called nothing else, and the row heads no prices. */
    private boolean mayWeigh(Map<Integer, Cell> cells) {
        return !isCalledOtherwise()
                && cells.values().stream().noneMatch(cell -> Headings.means(cell.text(), Meaning.PRICE));
    }

    /** Whether the sheet has the name of another kind of table. */
    private boolean isCalledOtherwise() {
        boolean other = SheetWords.sheet(grid.title())
                .filter(name -> !name.equals(FormulaSheet.SCHEMA.name()))
                .isPresent();
        boolean ours = Schemas.ALL.stream()
                .filter(schema -> !schema.equals(FormulaSheet.SCHEMA))
                .anyMatch(schema -> grid.title().equalsIgnoreCase(schema.name()));
        return other || ours;
    }

    /** Whether a column ends with a row of totals that is the sum of the column. */
    private boolean addsUp(int header, int column, int material) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int row : grid.rows().below(header)) {
            BigDecimal number = SheetCells.number(grid.at(row, column));
            boolean total = SheetCells.isTotal(grid.at(row, material));
            if (number != null && total) {
                return sum.signum() > 0 && sum.compareTo(number) == 0;
            }
            sum = number == null ? sum : sum.add(number);
        }
        return false;
    }

    /** The name of the formula whose weights a column holds: {@code Day cream [g]}. */
    private static Optional<String> weightOf(Cell cell) {
        if (!SheetCells.isText(cell) || cell.text().length() > LONGEST_NAME) {
            return Optional.empty();
        }
        Matcher named = NAMED_WEIGHT.matcher(cell.text().strip());
        return named.matches() && !WEIGHT.matcher(cell.text().strip()).matches()
                ? Optional.of(named.group(1).strip())
                : Optional.empty();
    }

    /** The name in a header such as {@code Day cream %} or {@code % w/w (Day cream)}; empty if it is no such header. */
    private String formulaName(Cell cell) {
        if (!SheetCells.isText(cell) || cell.text().length() > LONGEST_NAME) {
            return "";
        }
        String name = SHARE.matcher(cell.text())
                .replaceAll(" ")
                .replaceAll("\\s+", " ")
                .strip();
        boolean share = cell.text().contains("%") || cell.text().contains("w/w");
        return share || names.isFormula(name) ? name : "";
    }

    /** Whether a column adds up to 100, or has a line that takes the balance. */
    private boolean isWhole(int header, int column, int material) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal fractions = BigDecimal.ZERO;
        for (int row : grid.rows().below(header)) {
            Cell cell = grid.at(row, column);
            if (SheetCells.isText(cell) && LevelWords.isBalance(cell.text())) {
                return true;
            }
            BigDecimal number = SheetCells.number(cell);
            boolean line = !grid.at(row, material).isBlank() && !SheetCells.isTotal(grid.at(row, material));
            if (line && number != null) {
                sum = sum.add(number);
                fractions = cell.isPercentFormat() ? fractions.add(number) : fractions;
            }
        }
        return sum.subtract(HUNDRED).abs().compareTo(ROUGHLY) <= 0
                || fractions.movePointRight(2).subtract(HUNDRED).abs().compareTo(ROUGHLY) <= 0;
    }

    /**
     * Whether the lines below a header add up to about 100, or one takes the balance, up to a total or a new header.
     */
    private boolean isNearlyWhole(int header, int column, int material) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int row : grid.rows().below(header)) {
            Cell cell = grid.at(row, column);
            Cell name = grid.at(row, material);
            if (SheetCells.isText(cell) && LevelWords.isBalance(cell.text())) {
                return true;
            }
            BigDecimal number = SheetCells.number(cell);
            boolean end = SheetCells.isTotal(name) || named(name).isPresent();
            if (end) {
                break;
            }
            boolean fraction = cell.isPercentFormat();
            sum = number == null || name.isBlank() ? sum : sum.add(fraction ? number.movePointRight(2) : number);
        }
        return sum.subtract(HUNDRED).abs().compareTo(NEARLY) <= 0
                || sum.movePointRight(2).subtract(HUNDRED).abs().compareTo(NEARLY) <= 0;
    }

    // titles

    /** The name in the rows above a formula: {@code Formula: Day cream}, or the label and the name in two cells. */
    private @Nullable Title title(Head head, int above) {
        int[] rows = grid.rows().between(above, head.row());
        for (int i = rows.length - 1; i >= Math.max(0, rows.length - TITLE_ROWS); i--) {
            for (Map.Entry<Integer, Cell> cell : grid.row(rows[i]).entrySet()) {
                String text = cell.getValue().text();
                int colon = text.indexOf(':');
                String label = colon > 0 ? text.substring(0, colon) : text;
                if (!SheetCells.isText(cell.getValue()) || !SheetWords.isFormulaLabel(label)) {
                    continue;
                }
                String after = colon > 0 ? text.substring(colon + 1).strip() : "";
                if (!after.isEmpty()) {
                    return new Title(after, grid.origin(rows[i], cell.getKey()), rows[i]);
                }
                Map.Entry<Integer, Cell> next = grid.row(rows[i]).higherEntry(cell.getKey());
                if (next != null && SheetCells.isText(next.getValue())) {
                    return new Title(next.getValue().text(), grid.origin(rows[i], next.getKey()), rows[i]);
                }
            }
        }
        return untitled(head, rows);
    }

    /**
     * A line above a formula as its name, without a label: one that products or batches name, or the first one if the
     * sheet itself has no name of its own.
     */
    private @Nullable Title untitled(Head head, int[] rows) {
        Title first = null;
        for (int row : rows) {
            NavigableMap<Integer, Cell> cells = grid.row(row).subMap(0, true, head.last(), true);
            Cell cell = cells.isEmpty() ? Cell.BLANK : cells.firstEntry().getValue();
            if (cells.size() != 1 || !SheetCells.isText(cell) || cell.text().length() > LONGEST_NAME) {
                continue;
            }
            String text = cell.text().strip();
            Title title = new Title(text, grid.origin(row, cells.firstKey()), row);
            if (names.isFormula(text) || names.isProduct(text)) {
                return title;
            }
            boolean name =
                    !SheetWords.isFormulaLabel(text) && SheetWords.sheet(text).isEmpty();
            first = first == null && name ? title : first;
        }
        boolean unnamed = UNNAMED.matcher(grid.title().strip()).matches()
                || FormulaSheet.SCHEMA.name().equalsIgnoreCase(grid.title())
                || SheetWords.sheet(grid.title())
                        .filter(FormulaSheet.SCHEMA.name()::equals)
                        .isPresent();
        return unnamed && !names.isFormula(grid.title()) ? first : null;
    }

    // lines

    private ArrangedPart part(Head head, @Nullable Title titled, int below, List<Runnable> reports) {
        boolean called = names.isFormula(grid.title());
        Title title = head.columns().containsKey(FormulaSheet.FORMULA) || called ? null : titled;
        odd |= title != null
                || head.levels().size() > 1
                || head.weight() != null
                || head.isByInci()
                || head.levels().values().stream().anyMatch(name -> !name.isEmpty());
        BitSet rows = new BitSet();
        rows.set(head.row());
        List<Line> lines = new ArrayList<>();
        Phase phase = new Phase("", Origin.NONE, null);
        Map<Weighed, BigDecimal> totals = new HashMap<>();
        Map<String, Origin> named = new LinkedHashMap<>();
        String formula = "";
        Integer formulas = head.columns().get(FormulaSheet.FORMULA);
        Integer phaseColumn = head.columns().get(FormulaSheet.PHASE);
        for (int row : grid.rows().between(head.row(), below + 1)) {
            Cell material = SheetCells.merged(grid, row, place(head, row));
            odd |= place(head, row) != head.material();
            boolean filled = head.levels().keySet().stream()
                    .anyMatch(column -> !grid.at(row, column).isBlank());
            Phase heading = filled ? null : heading(head, row);
            if (heading != null) {
                phase = heading;
                rows.set(row);
                odd = true;
                continue;
            }
            Cell name = formulas == null ? Cell.BLANK : SheetCells.merged(grid, row, formulas);
            boolean ownName = formulas != null && !name.isBlank() && !SheetCells.isTotal(name);
            if (formulas != null && ownName) {
                formula = name.text();
                named.putIfAbsent(Names.key(formula), SheetCells.origin(grid, row, formulas));
            }
            if (isTotal(head, row, material)) {
                rows.set(row);
                for (int column : head.levels().keySet()) {
                    BigDecimal total = SheetCells.number(grid.at(row, column));
                    if (total != null) {
                        totals.put(new Weighed(column, Names.key(formula)), total);
                    }
                }
                continue;
            }
            Cell own = phaseColumn == null ? Cell.BLANK : SheetCells.merged(grid, row, phaseColumn);
            if (!own.isBlank() && phaseColumn != null) {
                phase = new Phase(own.text(), SheetCells.origin(grid, row, phaseColumn), null);
            }
            if (!material.isBlank() || filled) {
                rows.set(row);
                odd |= phaseColumn != null && own.isBlank() && !phase.name().isEmpty() && !material.isBlank();
                lines.add(new Line(row, phase, formula));
            }
        }
        BitSet columns = new BitSet();
        columns.set(head.first(), head.last() + 1);
        Map<Weighed, BigDecimal> wholes =
                head.weight() == null ? Map.of() : wholes(head, lines, totals, named, reports);
        Map<Integer, String> uses = new LinkedHashMap<>();
        head.columns().forEach((column, place) -> uses.put(place, column.header()));
        uses.put(head.material(), FormulaSheet.MATERIAL.header());
        head.levels().keySet().forEach(place -> uses.put(place, FormulaSheet.LEVEL_OF.header()));
        if (title != null) {
            rows.set(title.row());
        }
        return new ArrangedPart(
                grid, FormulaSheet.SCHEMA, table(head, title, lines, wholes), head.row(), rows, columns, uses);
    }

    private boolean isTotal(Head head, int row, Cell material) {
        boolean total = SheetCells.isTotal(material);
        if (!total && material.isBlank()) {
            total = grid.row(row).subMap(head.first(), true, head.last(), true).values().stream()
                    .anyMatch(SheetCells::isTotal);
        }
        odd |= total
                && !material.isBlank()
                && !ENGLISH_TOTAL.matcher(material.text()).matches();
        return total;
    }

    /** The phase that a row without levels heads; null if it heads none. */
    private @Nullable Phase heading(Head head, int row) {
        List<Map.Entry<Integer, Cell>> texts = new ArrayList<>();
        for (Map.Entry<Integer, Cell> cell :
                grid.row(row).subMap(head.first(), true, head.last(), true).entrySet()) {
            boolean named = head.columns().containsValue(cell.getKey());
            if (!SheetCells.isText(cell.getValue()) && named) {
                return null;
            }
            texts.add(cell);
        }
        if (texts.isEmpty() || texts.size() > 2) {
            return null;
        }
        Cell first = texts.get(0).getValue();
        String text = first.text();
        String whole =
                texts.size() == 1 ? text : text + " " + texts.get(1).getValue().text();
        Integer phaseColumn = head.columns().get(FormulaSheet.PHASE);
        boolean inPhases =
                phaseColumn != null && phaseColumn.equals(texts.get(0).getKey());
        Optional<String> name = PhaseText.name(whole)
                .or(() -> texts.size() == 1
                                && (inPhases || isAcross(head, row, texts.get(0).getKey()))
                        ? Optional.of(text)
                        : Optional.empty());
        return name.map(found ->
                        new Phase(found, grid.origin(row, texts.get(0).getKey()), PhaseText.temperature(whole)))
                .orElse(null);
    }

    /** Whether a cell is merged across the levels, so that it can have none. */
    private boolean isAcross(Head head, int row, int column) {
        return grid.mergedAt(row, column)
                .filter(block ->
                        head.levels().keySet().stream().allMatch(level -> level > column && block.contains(row, level)))
                .isPresent();
    }

    // weights

    /** What the weights are parts of, for each formula by itself. */
    private Map<Weighed, BigDecimal> wholes(
            Head head,
            List<Line> lines,
            Map<Weighed, BigDecimal> totals,
            Map<String, Origin> named,
            List<Runnable> reports) {
        Map<Weighed, BigDecimal> wholes = new HashMap<>();
        for (int column : head.levels().keySet()) {
            Map<String, List<Line>> formulas = new LinkedHashMap<>();
            lines.forEach(line -> formulas.computeIfAbsent(Names.key(line.formula()), any -> new ArrayList<>())
                    .add(line));
            Origin header = grid.origin(head.row(), column);
            String text = grid.at(head.row(), column).text();
            List<String> said = new ArrayList<>();
            formulas.forEach((key, own) -> {
                Weighed weighed = new Weighed(column, key);
                Whole whole = whole(head, column, own, totals.get(weighed));
                String name = own.get(0).formula();
                if (whole.isUnknown()) {
                    Origin place = named.getOrDefault(key, header);
                    String message =
                            name.isEmpty() ? ArrangeMessages.noTotal(text) : ArrangeMessages.noTotal(name, text);
                    reports.add(() -> findings.error(place, message));
                } else if (whole.weight().signum() > 0) {
                    wholes.put(weighed, whole.weight());
                    String plain = Decimals.plain(whole.weight());
                    said.add(formulas.size() == 1 ? plain : '"' + name + "\" of " + plain);
                }
            });
            if (!said.isEmpty()) {
                String message = formulas.size() == 1
                        ? ArrangeMessages.weights(text, said.get(0))
                        : ArrangeMessages.weightsOfEach(text, said);
                reports.add(() -> findings.note(header, message));
            }
        }
        return wholes;
    }

    /**
     * What weights are parts of.
     *
     * @param isUnknown whether a line takes the balance to a weight that is said nowhere
     */
    private record Whole(BigDecimal weight, boolean isUnknown) {}

    /** What the weights of a formula are parts of: its total, the amount in its header, or their sum. */
    private Whole whole(Head head, int column, List<Line> lines, @Nullable BigDecimal total) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal to = null;
        boolean balance = false;
        for (Line line : lines) {
            Cell cell = grid.at(line.row(), column);
            BigDecimal number = SheetCells.number(cell);
            Matcher amount = TO_AMOUNT.matcher(cell.text());
            if (SheetCells.isText(cell) && (amount.matches() || LevelWords.isBalance(cell.text()))) {
                balance = true;
                to = amount.matches() ? SheetCells.number(Cell.text(amount.group(1))) : to;
            } else if (number != null) {
                sum = sum.add(number);
            }
        }
        BigDecimal whole = to != null ? to : total != null ? total : inHeader(head);
        return new Whole(whole == null ? sum : whole, whole == null && balance);
    }

    private static @Nullable BigDecimal inHeader(Head head) {
        Matcher words = WEIGHT.matcher(head.weight() == null ? "" : head.weight());
        Matcher amount = AMOUNT.matcher(words.matches() && words.group(2) != null ? words.group(2) : "");
        return amount.matches() ? SheetCells.number(Cell.text(amount.group(1))) : null;
    }

    // the table

    private static final int PHASE = 0;
    private static final int MATERIAL = 1;
    private static final int LEVEL = 2;
    private static final int TEMPERATURE = 3;
    private static final int ESTIMATE = 4;
    private static final int FORMULA = 5;
    private static final int INCI = 6;

    private Grid table(Head head, @Nullable Title title, List<Line> lines, Map<Weighed, BigDecimal> wholes) {
        GridBuilder builder = new GridBuilder(grid, grid.title());
        Integer formulas = head.columns().get(FormulaSheet.FORMULA);
        boolean named = formulas != null
                || title != null
                || head.levels().values().stream().noneMatch(String::isEmpty);
        int first = head.levels().keySet().iterator().next();
        builder.row(grid.origin(head.row(), head.material()));
        header(builder, PHASE, FormulaSheet.PHASE, head);
        header(builder, MATERIAL, FormulaSheet.MATERIAL, head);
        builder.said(LEVEL, Cell.text(FormulaSheet.LEVEL_OF.header()), grid.origin(head.row(), first));
        header(builder, TEMPERATURE, FormulaSheet.PHASE_TEMPERATURE, head);
        if (head.columns().containsKey(FormulaSheet.ESTIMATE)) {
            header(builder, ESTIMATE, FormulaSheet.ESTIMATE, head);
        }
        if (named) {
            header(builder, FORMULA, FormulaSheet.FORMULA, head);
        }
        if (head.columns().containsKey(FormulaSheet.INCI)) {
            header(builder, INCI, FormulaSheet.INCI, head);
        }
        boolean several = head.levels().size() > 1;
        head.levels().forEach((column, name) -> {
            for (Line line : lines) {
                Cell level = grid.at(line.row(), column);
                if (several && (level.isBlank() || SheetCells.isDash(level))) {
                    continue;
                }
                builder.row(grid.origin(line.row(), column));
                line(builder, head, line);
                level(
                        builder,
                        level,
                        grid.origin(line.row(), column),
                        wholes.get(new Weighed(column, Names.key(line.formula()))));
                if (formulas != null) {
                    builder.typed(
                            FORMULA,
                            SheetCells.merged(grid, line.row(), formulas),
                            SheetCells.origin(grid, line.row(), formulas));
                } else if (!name.isEmpty()) {
                    builder.said(FORMULA, Cell.text(name), grid.origin(head.row(), column));
                } else if (title != null) {
                    builder.said(FORMULA, Cell.text(title.name()), title.origin());
                }
            }
        });
        return builder.grid();
    }

    private void header(GridBuilder builder, int place, InputColumn column, Head head) {
        Integer theirs = head.columns().get(column);
        String typed = theirs == null ? "" : grid.at(head.row(), theirs).text();
        boolean known =
                COLUMNS.find(typed).filter(name -> name.column().equals(column)).isPresent();
        String text = known ? typed : column.header();
        builder.said(place, Cell.text(text), grid.origin(head.row(), theirs == null ? head.material() : theirs));
    }

    /** The column of a line's name: its INCI name is its name where it has no other. */
    private int place(Head head, int row) {
        Integer inci = head.columns().get(FormulaSheet.INCI);
        if (inci == null || !SheetCells.merged(grid, row, head.material()).isBlank()) {
            return head.material();
        }
        return SheetCells.isText(SheetCells.merged(grid, row, inci)) ? inci : head.material();
    }

    private void line(GridBuilder builder, Head head, Line line) {
        Phase phase = line.phase();
        if (!phase.name().isEmpty()) {
            builder.said(PHASE, Cell.text(phase.name()), phase.origin());
        }
        int material = place(head, line.row());
        Integer inci = head.columns().get(FormulaSheet.INCI);
        if (inci != null) {
            builder.typed(INCI, SheetCells.merged(grid, line.row(), inci), SheetCells.origin(grid, line.row(), inci));
        }
        builder.typed(
                MATERIAL, SheetCells.merged(grid, line.row(), material), SheetCells.origin(grid, line.row(), material));
        Integer temperature = head.columns().get(FormulaSheet.PHASE_TEMPERATURE);
        Cell own = temperature == null ? Cell.BLANK : SheetCells.merged(grid, line.row(), temperature);
        if (temperature != null && (!own.isBlank() || phase.temperature() == null)) {
            builder.typed(TEMPERATURE, own, SheetCells.origin(grid, line.row(), temperature));
        } else if (phase.temperature() != null) {
            builder.said(TEMPERATURE, Cell.number(phase.temperature()), phase.origin());
        }
        Integer estimate = head.columns().get(FormulaSheet.ESTIMATE);
        if (estimate != null) {
            builder.typed(ESTIMATE, line.row(), estimate);
        }
    }

    private static void level(GridBuilder builder, Cell level, Origin place, @Nullable BigDecimal whole) {
        BigDecimal number = SheetCells.number(level);
        if (whole == null) {
            builder.typed(LEVEL, level, place);
        } else if (TO_AMOUNT.matcher(level.text()).matches()) {
            builder.said(LEVEL, Cell.text(TO_HUNDRED), place);
        } else if (number != null) {
            builder.said(LEVEL, Cell.number(number.multiply(HUNDRED).divide(whole, MathContext.DECIMAL128)), place);
        } else {
            builder.said(LEVEL, level, place);
        }
    }
}
