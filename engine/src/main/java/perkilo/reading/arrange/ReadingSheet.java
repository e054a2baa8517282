package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ColumnUse;
import perkilo.layouts.DecimalMark;
import perkilo.layouts.ListDates;
import perkilo.layouts.ListWords;
import perkilo.layouts.Mapping;
import perkilo.layouts.Meaning;
import perkilo.layouts.PriceNote;
import perkilo.layouts.Question;
import perkilo.origin.Origin;
import perkilo.reading.table.AsTyped;
import perkilo.reading.table.ColumnNames;
import perkilo.reading.table.DateText;
import perkilo.reading.table.Findings;
import perkilo.reading.table.NumberText;
import perkilo.reading.table.UnitText;
import perkilo.schema.FormulaSheet;
import perkilo.schema.Schemas;
import perkilo.schema.SheetSchema;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * What a person says on the sheet Reading of their workbook: which table each of their sheets is, which column each of
 * their headers is, and answers such as the decimal mark. It is applied by writing our headers over theirs.
 */
public final class ReadingSheet {

    /** The name of the sheet. */
    public static final String NAME = "Reading";

    /** The columns, in their order. */
    public static final String SHEET = "Sheet";

    public static final String CELL = "Cell";
    public static final String THERE = "What is there";
    public static final String LOOKS_LIKE = "Looks like";
    public static final String READ_AS = "Read as";

    /** What stands for a whole sheet in the column {@link #THERE}. */
    public static final String WHOLE_SHEET = "(the whole sheet)";

    /** The answer for what is not to be read. */
    public static final String IGNORE = "ignore";

    private static final String MATERIAL_OF = "material of ";
    private static final String UNITS_PER_BATCH = "units per batch of ";
    /** What an answer about a line that is added to effect begins with; the material follows. */
    static final String ESTIMATE = "estimate % of ";

    /** What is asked about columns with the names of suppliers. */
    static final String SUPPLIER_COLUMNS = "columns of suppliers";

    /** What is asked about a product whose fill is a volume. */
    static final String DENSITY = "density g/mL";

    private static final Pattern NAMES = Pattern.compile("(?i)Reading(?: ?\\(?\\d+\\)?)?");
    private static final int ROWS_LOOKED_AT = 80;

    /**
     * A row of the sheet.
     *
     * @param like what the sheet or column looked like when the row was written; empty if nothing was known
     * @param as the person's answer; empty if there is none
     * @param isAnswer whether it answers a question, and does not say what a column is
     */
    private record Said(
            String sheet, String cell, String there, String like, String as, boolean isAnswer, Origin origin) {

        boolean isIgnored() {
            return as.equalsIgnoreCase(IGNORE) || as.equalsIgnoreCase(Meaning.NOTHING.word());
        }

        boolean isOfSheet() {
            return there.isEmpty() || there.equalsIgnoreCase(WHOLE_SHEET);
        }
    }

    private final @Nullable Grid own;
    private final List<Said> all;
    private final List<Said> rows;
    private final Findings findings;

    private ReadingSheet(@Nullable Grid own, List<Said> all, Findings findings) {
        this.own = own;
        this.all = all;
        this.rows = all.stream().filter(row -> !row.as().isEmpty()).toList();
        this.findings = findings;
    }

    /** What the sheet Reading among some sheets says; nothing if there is none. */
    static ReadingSheet of(List<Grid> sheets, Findings findings) {
        Grid last = null;
        for (Grid sheet : sheets) {
            last = isOne(sheet) ? sheet : last;
        }
        return new ReadingSheet(last, last == null ? List.of() : rows(last, sheets, findings), findings);
    }

    /** Whether a sheet is such a sheet; of several, which have numbers behind their names, the last one counts. */
    static boolean isOne(Grid sheet) {
        return sheet.ofBook() && NAMES.matcher(sheet.sheet().strip()).matches();
    }

    /** The name of the sheet among some, if it has the headers of one; empty if there is none. */
    public static Optional<String> earlier(List<Grid> sheets) {
        Findings none = new Findings();
        ReadingSheet said = of(sheets, none);
        return said.own == null || !none.list().isEmpty() ? Optional.empty() : Optional.of(said.own.sheet());
    }

    /**
     * The answer at a header or a question of a sheet, or of the whole sheet; empty if there is none.
     *
     * @param where the sheet, or the cell; of several cells with the same words, the answer at that one counts first
     * @param there the words; empty for the whole sheet
     */
    Optional<String> as(Origin where, String there) {
        return row(rows, where, there).map(Said::as);
    }

    private static Optional<Said> row(List<Said> rows, Origin where, String there) {
        List<Said> here = rows.stream()
                .filter(row -> row.sheet().equalsIgnoreCase(where.sheet())
                        && (there.isEmpty() ? row.isOfSheet() : row.there().equalsIgnoreCase(there)))
                .toList();
        return here.stream()
                .filter(row -> row.cell().equalsIgnoreCase(where.cell()))
                .findFirst()
                .or(() -> here.stream().findFirst());
    }

    /** Whether a person emptied an answer that was filled in because of what the sheet or column looks like. */
    boolean isEmptied(Origin where, String there, String like) {
        return row(all, where, there)
                .filter(row -> row.as().isEmpty() && row.like().equalsIgnoreCase(like))
                .isPresent();
    }

    /** The answers that none of some other rows repeats, for the sheet to keep. */
    List<Proposals.Proposal> others(List<Proposals.Proposal> proposals) {
        return rows.stream()
                .filter(row -> proposals.stream()
                        .noneMatch(other -> other.where().sheet().equalsIgnoreCase(row.sheet())
                                && (row.isOfSheet()
                                        ? other.there().equals(WHOLE_SHEET)
                                        : other.there().equalsIgnoreCase(row.there()))))
                .map(row -> new Proposals.Proposal(
                        row.isOfSheet()
                                ? Proposals.Kind.SHEET
                                : row.isAnswer() ? Proposals.Kind.QUESTION : Proposals.Kind.COLUMN,
                        new Origin(row.origin().file(), row.sheet(), row.cell()),
                        row.there().isEmpty() ? WHOLE_SHEET : row.there(),
                        "",
                        row.like(),
                        row.as(),
                        List.of()))
                .toList();
    }

    private static List<Said> rows(Grid grid, List<Grid> sheets, Findings findings) {
        for (int header : grid.head(ROWS_LOOKED_AT).rows().numbers()) {
            Map<String, Integer> places = new HashMap<>();
            grid.row(header).forEach((column, cell) -> places.put(ListWords.key(cell.text()), column));
            Integer sheet = places.get(ListWords.key(SHEET));
            Integer there = places.get(ListWords.key(THERE));
            Integer as = places.get(ListWords.key(READ_AS));
            if (sheet != null && there != null && as != null) {
                int cell = places.getOrDefault(ListWords.key(CELL), Integer.MAX_VALUE);
                int like = places.getOrDefault(ListWords.key(LOOKS_LIKE), Integer.MAX_VALUE);
                List<Said> rows = new ArrayList<>();
                for (int row : grid.rows().below(header)) {
                    String text = grid.at(row, as).text().strip();
                    if (!grid.at(row, sheet).isBlank()) {
                        String name = grid.at(row, sheet).text();
                        String place = grid.at(row, cell).text();
                        String words = grid.at(row, there).text();
                        rows.add(new Said(
                                name,
                                place,
                                words,
                                grid.at(row, like).text(),
                                text,
                                words.startsWith(ESTIMATE)
                                        || words.equals(DENSITY)
                                        || words.equals(SUPPLIER_COLUMNS)
                                        || ((Question.isField(words) || isOfBook(words))
                                                && !isHeader(sheets, name, place, words)),
                                grid.origin(row, as)));
                    }
                }
                return rows;
            }
        }
        findings.error(grid.origin(), ArrangeMessages.noHeaders());
        return List.of();
    }

    /** Whether a cell holds the words itself. */
    private static boolean isHeader(List<Grid> sheets, String name, String place, String words) {
        return sheets.stream()
                .filter(sheet -> sheet.sheet().equalsIgnoreCase(name))
                .map(sheet -> sheet.head(ROWS_LOOKED_AT))
                .anyMatch(head -> Arrays.stream(head.rows().numbers())
                        .anyMatch(row -> head.row(row).entrySet().stream()
                                .anyMatch(cell ->
                                        head.origin(row, cell.getKey()).cell().equalsIgnoreCase(place)
                                                && ListWords.key(cell.getValue().text())
                                                        .equals(ListWords.key(words)))));
    }

    /** What stands in the column {@link #THERE} for the question which material a name in a formula means. */
    public static String ofMaterial(String name) {
        return MATERIAL_OF + name;
    }

    private static boolean isOfMaterial(String words) {
        return words.regionMatches(true, 0, MATERIAL_OF, 0, MATERIAL_OF.length());
    }

    /** What stands there for the question how many units a batch of a product gives. */
    static String unitsPerBatch(String product) {
        return UNITS_PER_BATCH + product;
    }

    /** Whether words are a question that only workbooks raise. */
    private static boolean isOfBook(String words) {
        return isOfMaterial(words) || words.regionMatches(true, 0, UNITS_PER_BATCH, 0, UNITS_PER_BATCH.length());
    }

    /** Which materials lines of formulas mean. */
    List<Arrangement.MaterialAnswer> materials() {
        return rows.stream()
                .filter(row -> row.isAnswer() && isOfMaterial(row.there()) && !row.isIgnored())
                .map(row -> new Arrangement.MaterialAnswer(
                        row.sheet(), row.there().substring(MATERIAL_OF.length()).strip(), row.as(), row.origin()))
                .toList();
    }

    /** The answers for a sheet, by what was asked. */
    Map<String, String> answers(String sheet) {
        Map<String, String> answers = new HashMap<>();
        for (Said row : rows) {
            if (row.isAnswer() && row.sheet().equalsIgnoreCase(sheet)) {
                answers.put(row.there().toLowerCase(Locale.ROOT), row.as());
                answers.put(row.there(), row.as());
            }
        }
        return answers;
    }

    /** The sheets as this one says that they are read; those to be ignored are left out, and so is this one. */
    List<Grid> applied(List<Grid> sheets) {
        if (own == null) {
            return sheets;
        }
        List<Grid> applied = new ArrayList<>();
        for (Grid sheet : sheets) {
            List<Said> here = rows.stream()
                    .filter(row -> row.sheet().equalsIgnoreCase(sheet.sheet()))
                    .toList();
            boolean ignored = here.stream().anyMatch(row -> row.isOfSheet() && row.isIgnored());
            if (!isOne(sheet) && !ignored) {
                applied.add(applied(sheet, here));
            }
        }
        Set<String> gone = new LinkedHashSet<>();
        for (Said row : rows) {
            if (sheets.stream().noneMatch(sheet -> sheet.sheet().equalsIgnoreCase(row.sheet()))
                    && gone.add(row.sheet().toLowerCase(Locale.ROOT))) {
                findings.warning(row.origin(), ArrangeMessages.noSuchSheet(row.sheet()));
            }
        }
        return applied;
    }

    /** The sheets among some that are left out: those to be ignored, and this one. */
    List<Grid> left(List<Grid> sheets) {
        return sheets.stream()
                .filter(sheet -> isOne(sheet)
                        || rows.stream()
                                .anyMatch(row -> row.sheet().equalsIgnoreCase(sheet.sheet())
                                        && row.isOfSheet()
                                        && row.isIgnored()))
                .toList();
    }

    private Grid applied(Grid sheet, List<Said> here) {
        Grid grid = sheet;
        SheetSchema schema = null;
        for (Said row : here) {
            if (row.isOfSheet()) {
                schema = schema(row.as()).orElse(null);
                if (schema == null) {
                    findings.error(row.origin(), ArrangeMessages.unknownTable(row.as()));
                } else {
                    grid = (schema.equals(FormulaSheet.SCHEMA) ? grid : grid.titled(schema.name()))
                            .meant(schema.name());
                }
            }
        }
        Map<Integer, Map<Integer, Cell>> renamed = new LinkedHashMap<>();
        Grid head = grid.head(ROWS_LOOKED_AT);
        for (Said row : here) {
            if (!row.isOfSheet() && !row.isAnswer()) {
                rename(head, row, schema, renamed);
            }
        }
        return answered(estimated(grid.with(renamed), here), answers(sheet.sheet()), here);
    }

    /** The kind of table that a sheet is said to be; empty if that is not said. */
    Optional<SheetSchema> kind(Grid sheet) {
        return as(sheet.origin(), "").flatMap(ReadingSheet::schema);
    }

    private static Optional<SheetSchema> schema(String name) {
        return Schemas.ALL.stream()
                .filter(schema -> schema.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    // headers

    private void rename(Grid head, Said row, @Nullable SheetSchema schema, Map<Integer, Map<Integer, Cell>> renamed) {
        if (!row.isIgnored() && !isColumn(row.as(), schema)) {
            findings.error(row.origin(), ArrangeMessages.unknownColumn(row.as()));
            return;
        }
        boolean found = false;
        String key = ListWords.key(row.there());
        for (boolean anywhere : new boolean[] {row.cell().isEmpty(), true}) {
            for (int number : head.rows().numbers()) {
                for (Map.Entry<Integer, Cell> cell : head.row(number).entrySet()) {
                    boolean atCell = head.origin(number, cell.getKey()).cell().equalsIgnoreCase(row.cell());
                    Cell now = renamed.getOrDefault(number, Map.of()).getOrDefault(cell.getKey(), cell.getValue());
                    String text = cell.getValue().text();
                    boolean same = ListWords.key(text).equals(key)
                            || (atCell && ListWords.key(now.text()).equals(key))
                            || (atCell && isInOurs(text, key));
                    if (!found && atCell && !same && isJoined(head, number, cell.getKey(), key)) {
                        found = true; // a header of two rows, which its list reads as one
                        noteIgnored(row, head.origin(number, cell.getKey()));
                    } else if (!found && (anywhere || atCell) && same) {
                        found = true;
                        noteIgnored(row, head.origin(number, cell.getKey()));
                        Cell ours = row.isIgnored() ? Cell.BLANK : Cell.text(withUnit(row.as(), row.there()));
                        renamed.computeIfAbsent(number, any -> new HashMap<>()).put(cell.getKey(), ours);
                    }
                }
            }
            if (found) {
                return;
            }
        }
        findings.warning(row.origin(), ArrangeMessages.noSuchHeader(row.there(), row.sheet()));
    }

    private void noteIgnored(Said row, Origin place) {
        if (row.isIgnored()) {
            findings.note(place, ArrangeMessages.ignored(row.there()));
        }
    }

    private static boolean isJoined(Grid head, int row, int column, String key) {
        String text = head.at(row, column).text();
        String above = SheetCells.merged(head, row - 1, column).text();
        String below = head.at(row + 1, column).text();
        return ListWords.key(above + " " + text).equals(key)
                || ListWords.key(text + " " + below).equals(key);
    }

    private static boolean isInOurs(String header, String key) {
        return SheetWords.header(header)
                .filter(ours -> ListWords.key(ours).equals(key))
                .isPresent();
    }

    /** What the columns of a sheet are, by their headers, in the words of lists. */
    Map<String, @Nullable String> columns(String sheet) {
        Map<String, @Nullable String> columns = new HashMap<>();
        for (Said row : rows) {
            if (!row.isAnswer() && !row.isOfSheet() && row.sheet().equalsIgnoreCase(sheet)) {
                columns.put(row.there(), row.isIgnored() ? Meaning.NOTHING.word() : row.as());
            }
        }
        return columns;
    }

    /**
     * The headers that are not to be read, by the names of their sheets in small letters, as keys of {@link AsTyped}.
     */
    Map<String, Set<String>> leftOut() {
        Map<String, Set<String>> leftOut = new HashMap<>();
        for (Said row : rows) {
            if (!row.isAnswer() && !row.isOfSheet() && row.isIgnored()) {
                leftOut.computeIfAbsent(row.sheet().toLowerCase(Locale.ROOT), any -> new HashSet<>())
                        .add(AsTyped.key(row.there()));
            }
        }
        return leftOut;
    }

    private static boolean isColumn(String words, @Nullable SheetSchema schema) {
        boolean known = Schemas.ALL.stream()
                .filter(one -> schema == null || one.equals(schema))
                .anyMatch(one -> new ColumnNames(one.columns()).find(words).isPresent());
        return known || ColumnUse.parse(words, PriceNote.NONE).isPresent();
    }

    /** Our header with the unit that theirs ends with: {@code Price (€/kg)}. */
    private static String withUnit(String ours, String theirs) {
        String text = theirs.strip();
        for (int at = Math.max(text.indexOf('('), text.indexOf(' ')); at > 0; at = text.indexOf(' ', at + 1)) {
            String rest = text.substring(at).replaceAll("[()\\[\\]]", " ").strip();
            boolean unit =
                    UnitText.parse(rest).filter(said -> !said.words().isEmpty()).isPresent();
            if (unit && !ours.contains("(")) {
                return ours + " (" + rest + ")";
            }
        }
        return ours;
    }

    // answers

    /** Writes the estimates for lines that are added to effect into their levels. */
    private Grid estimated(Grid grid, List<Said> here) {
        Map<Integer, Map<Integer, Cell>> levels = new HashMap<>();
        for (Said row : here) {
            if (!row.there().startsWith(ESTIMATE)) {
                continue;
            }
            BigDecimal about = SheetCells.number(Cell.text(row.as()));
            if (about == null) {
                findings.error(row.origin(), ArrangeMessages.unknownAnswer(row.there(), row.as()));
                continue;
            }
            String material = ListWords.key(row.there().substring(ESTIMATE.length()));
            for (int number : grid.rows().numbers()) {
                boolean named = grid.row(number).values().stream()
                        .anyMatch(cell -> ListWords.key(cell.text()).equals(material));
                grid.row(number).forEach((column, cell) -> {
                    boolean atCell = grid.origin(number, column).cell().equalsIgnoreCase(row.cell());
                    if (named && atCell && SheetCells.isText(cell)) {
                        String text = cell.text() + " (~ "
                                + about.stripTrailingZeros().toPlainString() + " %)";
                        levels.computeIfAbsent(number, any -> new HashMap<>()).put(column, Cell.text(text));
                    }
                });
            }
        }
        return grid.with(levels);
    }

    /** Writes numbers and dates that can mean two things as an answer says that they are meant. */
    private Grid answered(Grid grid, Map<String, String> answers, List<Said> here) {
        String decimals = answers.get(Mapping.DECIMALS);
        String order = answers.get(Mapping.DATES);
        DecimalMark mark = decimals == null ? null : DecimalMark.of(decimals).orElse(null);
        if (decimals != null && mark == null) {
            here.stream()
                    .filter(row -> row.there().equalsIgnoreCase(Mapping.DECIMALS))
                    .forEach(row -> findings.error(row.origin(), ArrangeMessages.unknownAnswer(row.there(), row.as())));
        }
        if (mark == null && order == null) {
            return grid;
        }
        ListDates dates = new ListDates(Optional.ofNullable(order));
        Map<Integer, Map<Integer, Cell>> clear = new HashMap<>();
        for (int row : grid.rows().numbers()) {
            grid.row(row).forEach((column, cell) -> {
                Cell meant =
                        cell.kind() == Cell.Kind.TEXT ? meant(cell.text(), mark, order == null ? null : dates) : null;
                if (meant != null) {
                    clear.computeIfAbsent(row, any -> new HashMap<>()).put(column, meant);
                }
            });
        }
        return grid.with(clear);
    }

    private static @Nullable Cell meant(String text, @Nullable DecimalMark mark, @Nullable ListDates dates) {
        if (mark != null && NumberText.parse(text) instanceof NumberText.Ambiguous two) {
            boolean small = (text.indexOf(',') >= 0) == (mark == DecimalMark.COMMA);
            String number = (small ? two.small().stripTrailingZeros() : two.large()).toPlainString();
            return Cell.text((number + " " + two.words()).strip());
        }
        if (dates != null && DateText.parse(text) instanceof DateText.Ambiguous) {
            return dates.one(text)
                    .map(ListDates.Read::day)
                    .map(day -> Cell.text(String.valueOf(day)))
                    .orElse(null);
        }
        return null;
    }
}
