package perkilo.sheet.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.sheet.Choices;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;

/**
 * A column of a result table, described completely in one place.
 *
 * <p>A column holds words, a sentence or a figure. A figure has a {@link #value value} from the engine, a
 * {@link #formula formula}, or both; where it has both, they are compared when the sheet is built. A column shows on
 * the sheet unless it is {@link #notOnSheet}; it shows in JSON and on the terminal if that is declared.
 *
 * <pre>{@code
 * final Column<RunCost> unitCost = Column.<RunCost>of("unitCost", "Unit cost")
 *         .value(RunCost::unitCostOrNull)
 *         .formula(row -> row.ref(total).over(row.ref(units)))
 *         .format(money)
 *         .look(Look.KEY)
 *         .json();
 * }</pre>
 *
 * <p>A column is declared in one expression and not changed afterwards.
 *
 * @param <R> what a row of the table is about
 */
public final class Column<R> {

    private final String key;
    private final String heading;
    private int width;
    private boolean onSheet = true;
    private @Nullable Function<R, @Nullable BigDecimal> value;
    private @Nullable Function<Row<R>, @Nullable Expr> formula;
    private @Nullable Function<R, @Nullable String> words;
    private @Nullable Function<Row<R>, List<ResultSheet.Part>> sentence;
    private boolean headed = true;
    private NumberFormat format = NumberFormat.GENERAL;
    private @Nullable Function<R, NumberFormat> formatOf;
    private Look look = Look.PLAIN;
    private @Nullable Function<R, Look> lookOf;
    private Look wordsLook = Look.PLAIN;
    private boolean wordsHaveLook;
    private @Nullable Function<R, Origin> link;
    private @Nullable Function<R, @Nullable String> file;
    private @Nullable Function<R, @Nullable Object> json;
    private @Nullable Predicate<R> jsonWhere;
    private @Nullable Function<R, String> terminal;
    private String terminalHeading;
    private @Nullable Function<Placed<R>, @Nullable Expr> total;
    private @Nullable BigDecimal totalEngine;
    private @Nullable String totalWords;
    private Look totalLook = Look.TOTAL;
    private boolean fillIn;
    private @Nullable Function<R, @Nullable Choices> choices;
    private final List<Mark<R>> marks = new ArrayList<>();

    private Column(String key, String heading) {
        this.key = key;
        this.heading = heading;
        this.terminalHeading = heading;
    }

    /**
     * A column.
     *
     * @param key its name in JSON and in error messages, such as {@code unitCost}
     * @param heading as the sheet shows it; empty for a column without one
     */
    public static <R> Column<R> of(String key, String heading) {
        return new Column<>(key, heading);
    }

    /** Sets the width on the sheet, in characters; a sheet's column is as wide as the widest one declared. */
    public Column<R> width(int characters) {
        width = characters;
        return this;
    }

    /** Leaves the cell of the heading empty. */
    public Column<R> withoutHeading() {
        headed = false;
        return this;
    }

    /** Keeps it off the sheet: it is for JSON or the terminal only. */
    public Column<R> notOnSheet() {
        onSheet = false;
        return this;
    }

    /** Sets the engine's figure; null if a row has none. */
    public Column<R> value(Function<R, @Nullable BigDecimal> engine) {
        value = engine;
        return this;
    }

    /**
     * Sets the figure as a formula; null if a row has none. Without a formula the engine's value is written as a plain
     * number.
     */
    public Column<R> formula(Function<Row<R>, @Nullable Expr> live) {
        formula = live;
        return this;
    }

    /** Sets the words; null for an empty cell. In a column of figures these are the words of a row without a figure. */
    public Column<R> words(Function<R, @Nullable String> text) {
        words = text;
        return this;
    }

    /** Sets the look of the words in a column of figures. */
    public Column<R> wordsLook(Look look) {
        wordsLook = look;
        wordsHaveLook = true;
        return this;
    }

    /** Sets a sentence with live figures; no parts for an empty cell. */
    public Column<R> sentence(Function<Row<R>, List<ResultSheet.Part>> parts) {
        sentence = parts;
        return this;
    }

    /** Sets the number format. */
    public Column<R> format(NumberFormat one) {
        format = one;
        return this;
    }

    /** Sets the number format row by row. */
    public Column<R> format(Function<R, NumberFormat> each) {
        formatOf = each;
        return this;
    }

    /** Sets the look of its cells. */
    public Column<R> look(Look one) {
        look = one;
        return this;
    }

    /** Sets the look of its cells row by row. */
    public Column<R> look(Function<R, Look> each) {
        lookOf = each;
        return this;
    }

    /** Sets the cell that a click on one of its cells opens. */
    public Column<R> link(Function<R, Origin> to) {
        link = to;
        return this;
    }

    /** Sets the address of the file that a click on its words opens; null for none. */
    public Column<R> file(Function<R, @Nullable String> address) {
        file = address;
        return this;
    }

    /**
     * Makes it a column that a person fills in; its words are what is filled in already.
     *
     * @param offered the answers to choose from in each row; null for none
     */
    public Column<R> fillIn(Function<R, @Nullable Choices> offered) {
        fillIn = true;
        choices = offered;
        return this;
    }

    /** Makes the look of its cells depend on their value. */
    public Column<R> mark(Mark<R> one) {
        marks.add(one);
        return this;
    }

    /** Sets words for the row of totals, below the last row. */
    public Column<R> totalWords(String text) {
        totalWords = text;
        return this;
    }

    /** Adds up its cells in the row of totals. */
    public Column<R> sum() {
        return total(placed -> placed.sum(this));
    }

    /**
     * Adds up its cells in the row of totals.
     *
     * @param engine the engine's value
     */
    public Column<R> sum(BigDecimal engine) {
        totalEngine = engine;
        return sum();
    }

    /** Sets a figure for the row of totals; null for none. */
    public Column<R> total(Function<Placed<R>, @Nullable Expr> formula) {
        total = formula;
        return this;
    }

    /** Sets the look of its total. */
    public Column<R> totalLook(Look one) {
        totalLook = one;
        return this;
    }

    /** Shows it in JSON under its key: a figure as text, words unchanged. */
    public Column<R> json() {
        json = entry -> {
            BigDecimal figure = valueOf(entry);
            return figure == null ? wordsOf(entry) : figure;
        };
        return this;
    }

    /**
     * Shows it in JSON under its key.
     *
     * @param answer a number as a {@link BigDecimal} (written as text), whole numbers, truth values, words, a map or
     *     list of those, {@link Table.Filled} rows of another table, or {@link Table.One} of them; null for null
     */
    public Column<R> json(Function<R, @Nullable Object> answer) {
        json = answer;
        return this;
    }

    /** Leaves it out of the JSON of all other rows. */
    public Column<R> jsonWhere(Predicate<R> which) {
        jsonWhere = which;
        return this;
    }

    /** Shows it on the terminal under its heading. */
    public Column<R> terminal(Function<R, String> text) {
        terminal = text;
        return this;
    }

    /** Shows it on the terminal under another heading. */
    public Column<R> terminal(String otherHeading, Function<R, String> text) {
        terminalHeading = otherHeading;
        return terminal(text);
    }

    /** Its name in JSON and in error messages. */
    public String key() {
        return key;
    }

    /** Its heading on the sheet. */
    public String heading() {
        return heading;
    }

    /** Its heading on the terminal. */
    public String terminalHeading() {
        return terminalHeading;
    }

    /** Whether the sheet shows it. */
    public boolean isOnSheet() {
        return onSheet;
    }

    /** Whether the JSON of a row shows it. */
    public boolean isInJsonOf(R entry) {
        return json != null && (jsonWhere == null || jsonWhere.test(entry));
    }

    /** Whether the terminal shows it. */
    public boolean isOnTerminal() {
        return terminal != null;
    }

    /** The value of a row in JSON; see {@link #json(Function)} for the types. */
    public @Nullable Object jsonOf(R entry) {
        return json == null ? null : json.apply(entry);
    }

    /** The words of a row on the terminal. */
    public String terminalOf(R entry) {
        return terminal == null ? "" : terminal.apply(entry);
    }

    /** The engine's figure of a row; null if there is none. */
    public @Nullable BigDecimal valueOf(R entry) {
        return value == null ? null : value.apply(entry);
    }

    /** The words of a row; null if there are none. */
    public @Nullable String wordsOf(R entry) {
        return words == null ? null : words.apply(entry);
    }

    /** Whether a person fills it in. */
    public boolean isFillIn() {
        return fillIn;
    }

    @Nullable Choices choicesOf(R entry) {
        return choices == null ? null : choices.apply(entry);
    }

    boolean isHeaded() {
        return headed;
    }

    int width() {
        return width;
    }

    List<Mark<R>> marks() {
        return Collections.unmodifiableList(marks);
    }

    boolean hasTotal() {
        return total != null || totalWords != null;
    }

    @Nullable Expr totalOf(Placed<R> placed) {
        return total == null ? null : total.apply(placed);
    }

    @Nullable BigDecimal totalEngine() {
        return totalEngine;
    }

    @Nullable String totalWords() {
        return totalWords;
    }

    Look totalLook() {
        return totalLook;
    }

    /** The format of the total: that of the rows, or of the last row if they differ. */
    NumberFormat totalFormat(List<R> rows) {
        return formatOf == null || rows.isEmpty() ? format : formatOf.apply(rows.get(rows.size() - 1));
    }

    /** The figure of a row: the formula, or else the engine's value as a plain number; null if there is none. */
    @Nullable Expr figureOf(Row<R> row) {
        if (formula != null) {
            return formula.apply(row);
        }
        BigDecimal engine = valueOf(row.entry());
        return engine == null ? null : Expr.of(engine);
    }

    /** The sentence of a row; null for a column that holds none. */
    @Nullable List<ResultSheet.Part> sentenceOf(Row<R> row) {
        return sentence == null ? null : sentence.apply(row);
    }

    NumberFormat formatOf(R entry) {
        return formatOf == null ? format : formatOf.apply(entry);
    }

    Look lookOf(R entry) {
        return lookOf == null ? look : lookOf.apply(entry);
    }

    Look wordsLookOf(R entry) {
        return wordsHaveLook ? wordsLook : lookOf(entry);
    }

    Origin linkOf(R entry) {
        return link == null ? Origin.NONE : link.apply(entry);
    }

    @Nullable String fileOf(R entry) {
        return file == null ? null : file.apply(entry);
    }
}
