package perkilo.reading;

import static perkilo.schema.RatesSheet.CURRENCY;
import static perkilo.schema.RatesSheet.DATE_OF;
import static perkilo.schema.RatesSheet.FROM;
import static perkilo.schema.RatesSheet.RATE;
import static perkilo.schema.RatesSheet.SOURCE;
import static perkilo.schema.RatesSheet.TO;
import static perkilo.schema.RatesSheet.UNITS;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.reading.table.ColumnNames;
import perkilo.reading.table.DateText;
import perkilo.reading.table.Findings;
import perkilo.reading.table.NumberText;
import perkilo.schema.InputColumn;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * A table of rates that names one currency of each pair: a column for each currency, or a row for each with the columns
 * Currency and Rate.
 *
 * <p>The other currency is in a column From or To, or in a title such as {@code 1 EUR =}. Where nothing says it, that
 * is an error, as half of such tables are the other way round.
 */
final class BaseRates {

    private static final int LAST_HEADER_ROW = 40;

    /** The currencies that are offered first (common practice, no source); others are typed. */
    private static final List<String> USUAL = List.of("EUR", "USD", "GBP", "CHF", "JPY", "CNY");

    private static final String OF_ROW = "the currency of the row";
    private static final ColumnNames NAMES = new ColumnNames(List.of(FROM, TO, RATE, DATE_OF, UNITS, SOURCE, CURRENCY));

    private final Grid grid;
    private final int headerRow;
    private final Map<InputColumn, Integer> named;
    private final NavigableMap<Integer, RateColumn> currencies;
    private final RateCells cells;
    private final Findings findings;
    private final RateAnswers answers;
    private final Map<Integer, BigDecimal> units = new HashMap<>();
    private final UniqueRates rates;
    private final List<Origin> notRead = new ArrayList<>();
    private final List<Origin> blanks = new ArrayList<>();
    private @Nullable RateBase titled;
    private boolean askedDay;
    private boolean askedNumber;

    private BaseRates(
            Grid grid,
            int headerRow,
            Map<InputColumn, Integer> named,
            NavigableMap<Integer, RateColumn> currencies,
            Findings findings,
            RateAnswers answers) {
        this.answers = answers;
        this.grid = grid;
        this.headerRow = headerRow;
        this.named = named;
        this.currencies = currencies;
        this.findings = findings;
        this.rates = new UniqueRates(findings);
        this.cells = new RateCells(
                grid,
                headerRow,
                grid.rows().last(),
                named.getOrDefault(DATE_OF, 0),
                currencies.isEmpty() ? List.of(named.getOrDefault(RATE, 0)) : currencies.keySet(),
                answers);
    }

    /** The table of a sheet; empty if it holds none of this kind. */
    static Optional<BaseRates> find(Grid grid, Findings findings, RateAnswers answers) {
        int looked = 0;
        for (int row : grid.rows().numbers()) {
            if (++looked > LAST_HEADER_ROW) {
                break;
            }
            Map<InputColumn, Integer> named = new HashMap<>();
            NavigableMap<Integer, RateColumn> currencies = new TreeMap<>();
            grid.row(row).forEach((column, cell) -> {
                Optional<RateColumn> currency =
                        cell.kind() == Cell.Kind.TEXT ? RateColumn.of(cell.text()) : Optional.empty();
                if (currency.isPresent()) {
                    currencies.put(column, currency.get());
                } else if (cell.kind() == Cell.Kind.TEXT) {
                    NAMES.find(cell.text()).ifPresent(found -> named.putIfAbsent(found.column(), column));
                }
            });
            boolean both = named.containsKey(FROM) && named.containsKey(TO);
            boolean one = named.containsKey(FROM) || named.containsKey(TO) || named.containsKey(CURRENCY);
            boolean listed = named.containsKey(RATE) && one && !both;
            boolean wide = !named.containsKey(RATE) && !currencies.isEmpty();
            if (named.containsKey(DATE_OF) && (listed || wide)) {
                return Optional.of(new BaseRates(grid, row, named, currencies, findings, answers));
            }
        }
        return Optional.empty();
    }

    /** Its rates, in the order of the table. */
    List<DatedRate> read() {
        if (!isClear()) {
            return List.of();
        }
        for (int row : grid.rows().below(headerRow)) {
            NavigableMap<Integer, Cell> content = grid.row(row);
            if (!hasRate(content)) {
                notRead.add(grid.origin(row, content.firstKey()));
            } else if (!isUnitsRow(content)) {
                row(row, content);
            }
        }
        if (!notRead.isEmpty()) {
            findings.note(notRead.get(0), RateTableMessages.rowsWithoutRates(notRead.size()));
        }
        if (!blanks.isEmpty()) {
            findings.note(blanks.get(0), RateTableMessages.blankRates(blanks.size()));
        }
        return rates.list();
    }

    private boolean hasRate(NavigableMap<Integer, Cell> row) {
        return currencies.isEmpty()
                ? row.containsKey(place(RATE))
                : currencies.keySet().stream().anyMatch(row::containsKey);
    }

    /** Whether both currencies of each pair are known; if not, that is asked. */
    private boolean isClear() {
        titled = title();
        if (named.containsKey(FROM) && named.containsKey(TO) && !isChosen()) {
            findings.error(grid.origin(headerRow, place(TO)), RateTableMessages.twoBases());
            return false;
        }
        boolean ownBase = currencies.isEmpty()
                ? named.containsKey(CURRENCY) && (named.containsKey(FROM) || named.containsKey(TO))
                : named.containsKey(FROM)
                        || named.containsKey(TO)
                        || currencies.values().stream().allMatch(column -> column.per() != null);
        if (ownBase || titled != null) {
            return true;
        }
        if (currencies.isEmpty()) {
            InputColumn key = named.containsKey(FROM) ? FROM : named.containsKey(TO) ? TO : CURRENCY;
            String code = firstText(place(key));
            titled =
                    key.equals(CURRENCY) ? askedBase(place(RATE), code, firstText(place(RATE))) : askedOther(key, code);
            if (titled != null) {
                return true;
            }
            findings.error(
                    grid.origin(headerRow, place(RATE)),
                    key.equals(CURRENCY)
                            ? RateTableMessages.noBase(code, firstText(place(RATE)))
                            : RateTableMessages.noOther(
                                    key.header(), key.equals(FROM) ? TO.header() : FROM.header(), code));
            return false;
        }
        Map.Entry<Integer, RateColumn> first = currencies.entrySet().stream()
                .filter(entry -> entry.getValue().per() == null)
                .findFirst()
                .orElseThrow();
        titled = askedBase(first.getKey(), first.getValue().currency().getCurrencyCode(), firstText(first.getKey()));
        if (titled != null) {
            return true;
        }
        findings.error(
                grid.origin(headerRow, first.getKey()),
                RateTableMessages.noBase(first.getValue().currency().getCurrencyCode(), firstText(first.getKey())));
        return false;
    }

    /** Whether a person says which of the columns From and To counts. */
    private boolean isChosen() {
        Origin where = grid.origin(headerRow, place(TO));
        String both = FROM.header() + ", " + TO.header();
        Optional<InputColumn> counts = answers.ask(
                question(
                        "From or To",
                        where,
                        both,
                        RateTableMessages.whichColumn(),
                        List.of(FROM.header(), TO.header())),
                words -> words.equalsIgnoreCase(FROM.header())
                        ? Optional.of(FROM)
                        : words.equalsIgnoreCase(TO.header()) ? Optional.of(TO) : Optional.empty());
        counts.ifPresent(one -> named.remove(one.equals(FROM) ? TO : FROM));
        return counts.isPresent();
    }

    /** What a person says the rates are for; null if they have not. */
    private @Nullable RateBase askedBase(int column, String currency, String rate) {
        List<String> choices = new ArrayList<>();
        for (String code : USUAL) {
            if (!code.equals(currency)) {
                choices.add("1 " + code + " =");
                choices.add(code + " per unit");
            }
        }
        String text = RateTableMessages.whichBase(currency, rate);
        return answers.ask(question("base", grid.origin(headerRow, column), currency, text, choices), RateBase::in)
                .orElse(null);
    }

    /** The currency that a person says the table leaves out; null if they have not. */
    private @Nullable RateBase askedOther(InputColumn key, String currency) {
        List<String> choices =
                USUAL.stream().filter(code -> !code.equals(currency)).toList();
        String text = RateTableMessages.whichOther(key.header(), currency);
        return answers.ask(
                        question("other currency", grid.origin(headerRow, place(key)), key.header(), text, choices),
                        Currencies::find)
                .map(other -> new RateBase(other, key.equals(TO)))
                .orElse(null);
    }

    private RateAnswers.Question question(String what, Origin where, String says, String text, List<String> choices) {
        return new RateAnswers.Question(what, RateAnswers.formOf(grid, headerRow), where, says, text, choices);
    }

    private String firstText(int column) {
        for (int row : grid.rows().below(headerRow)) {
            if (!grid.at(row, column).isBlank()) {
                return grid.at(row, column).text();
            }
        }
        return "";
    }

    /** What the cells above the table, or the name of the sheet or file, say; null if nothing, or two things. */
    private @Nullable RateBase title() {
        List<RateBase> said = new ArrayList<>();
        for (int row : grid.rows().numbers()) {
            if (row < headerRow) {
                grid.row(row).values().forEach(cell -> RateBase.in(cell.text()).ifPresent(said::add));
            }
        }
        if (said.isEmpty()) {
            RateBase.in(grid.title()).ifPresent(said::add);
        }
        return said.stream().distinct().count() == 1 ? said.get(0) : null;
    }

    /** Whether a row has the units of each column instead of rates. */
    private boolean isUnitsRow(NavigableMap<Integer, Cell> row) {
        Cell first = row.getOrDefault(place(DATE_OF), Cell.BLANK);
        boolean isOne = first.kind() == Cell.Kind.TEXT
                && NAMES.find(first.text())
                        .filter(found -> found.column().equals(UNITS))
                        .isPresent();
        if (isOne) {
            currencies.keySet().forEach(column -> {
                BigDecimal number = cells.number(row.getOrDefault(column, Cell.BLANK));
                if (number != null && number.signum() > 0) {
                    units.put(column, number);
                }
            });
        }
        return isOne;
    }

    private void row(int row, NavigableMap<Integer, Cell> content) {
        Cell dated = content.getOrDefault(place(DATE_OF), Cell.BLANK);
        LocalDate day = cells.day(dated);
        if (day == null) {
            reportDay(row, dated);
            return;
        }
        String source = named.containsKey(SOURCE)
                ? content.getOrDefault(place(SOURCE), Cell.BLANK).text()
                : "";
        if (currencies.isEmpty()) {
            listed(row, content, day, source);
            return;
        }
        currencies.forEach((column, head) -> {
            Cell cell = content.getOrDefault(column, Cell.BLANK);
            BigDecimal number = number(row, column, head.currency(), cell);
            if (number != null) {
                BigDecimal count = head.units().multiply(units.getOrDefault(column, BigDecimal.ONE));
                RateBase base = base(row, content, head);
                if (base != null) {
                    add(base, head.currency(), number, count, head.per() != null, row, column, day, source);
                }
            }
        });
    }

    /** A row with one currency, its rate and perhaps its units. */
    private void listed(int row, NavigableMap<Integer, Cell> content, LocalDate day, String source) {
        boolean byCurrency = named.containsKey(CURRENCY);
        InputColumn key = byCurrency ? CURRENCY : named.containsKey(FROM) ? FROM : TO;
        CurrencyUnit currency = currency(row, place(key), content, key);
        if (currency == null) {
            return;
        }
        BigDecimal number = number(row, place(RATE), currency, content.getOrDefault(place(RATE), Cell.BLANK));
        RateBase base = byCurrency ? base(row, content, null) : titled;
        BigDecimal count =
                named.containsKey(UNITS) ? count(row, content.getOrDefault(place(UNITS), Cell.BLANK)) : BigDecimal.ONE;
        if (number == null || base == null || count == null) {
            return;
        }
        boolean headerAgrees = byCurrency || (key.equals(TO) == base.first());
        if (!headerAgrees) {
            findings.error(
                    grid.origin(headerRow, place(key)),
                    RateTableMessages.titleContradicts(
                            key.header(), base.currency().getCurrencyCode()));
            return;
        }
        boolean isOpen = base.first() && count.compareTo(BigDecimal.ONE) != 0 && !named.containsKey(FROM);
        Optional<Boolean> unitsOfBase =
                isOpen ? areUnitsOfBase(row, base, currency, count, number) : Optional.of(base.first());
        if (unitsOfBase.isEmpty()) {
            findings.error(
                    grid.origin(row, place(UNITS)),
                    RateTableMessages.unitsOfWhich(
                            count, base.currency().getCurrencyCode(), currency.getCurrencyCode(), number));
            return;
        }
        boolean turned = base.first() && !unitsOfBase.get();
        RateBase used = turned ? new RateBase(base.currency(), false) : base;
        add(used, currency, number, count, unitsOfBase.get(), row, place(RATE), day, source);
    }

    /** Whether the units of the table are those of its shared currency; empty if a person has not said so. */
    private Optional<Boolean> areUnitsOfBase(
            int row, RateBase base, CurrencyUnit currency, BigDecimal count, BigDecimal number) {
        String code = base.currency().getCurrencyCode();
        String text = RateTableMessages.whichUnits(count, code, currency.getCurrencyCode(), number);
        return answers.ask(
                question("units", grid.origin(row, place(UNITS)), count.toPlainString(), text, List.of(code, OF_ROW)),
                words -> words.equalsIgnoreCase(code)
                        ? Optional.of(true)
                        : words.equalsIgnoreCase(OF_ROW) ? Optional.of(false) : Optional.empty());
    }

    private @Nullable BigDecimal count(int row, Cell cell) {
        if (cell.isBlank()) {
            return BigDecimal.ONE;
        }
        BigDecimal number = cells.number(cell);
        if (number == null || number.signum() <= 0) {
            findings.error(grid.origin(row, place(UNITS)), RateTableMessages.notUnits(cell.text()));
            return null;
        }
        return number;
    }

    private @Nullable RateBase base(int row, NavigableMap<Integer, Cell> content, @Nullable RateColumn head) {
        if (head != null && head.per() != null) {
            return new RateBase(head.per(), true);
        }
        for (InputColumn column : List.of(FROM, TO)) {
            if (named.containsKey(column)) {
                CurrencyUnit currency = currency(row, place(column), content, column);
                return currency == null ? null : new RateBase(currency, column.equals(FROM));
            }
        }
        return titled;
    }

    private @Nullable CurrencyUnit currency(
            int row, int column, NavigableMap<Integer, Cell> content, InputColumn named) {
        String text = content.getOrDefault(column, Cell.BLANK).text();
        CurrencyUnit currency = Currencies.find(text).orElse(null);
        if (currency == null) {
            findings.error(grid.origin(row, column), RateTableMessages.noCurrency(named.header(), text));
        }
        return currency;
    }

    /**
     * Adds a rate.
     *
     * @param count how many units the rate is for
     * @param ofBase whether the units are those of the shared currency
     */
    private void add(
            RateBase base,
            CurrencyUnit currency,
            BigDecimal number,
            BigDecimal count,
            boolean ofBase,
            int row,
            int column,
            LocalDate day,
            String source) {
        Origin place = grid.origin(row, column);
        if (base.currency().equals(currency)) {
            if (number.compareTo(count) != 0 && number.compareTo(BigDecimal.ONE) != 0) {
                findings.error(place, RateTableMessages.sameCurrency(currency.getCurrencyCode(), number));
            }
            return;
        }
        boolean divide = ofBase || !base.first();
        BigDecimal rate = divide ? number.divide(count, MathContext.DECIMAL128) : number.multiply(count);
        Figure figure = new Figure(rate, place, null);
        rates.add(
                base.first()
                        ? new DatedRate(base.currency(), currency, figure, day, source)
                        : new DatedRate(currency, base.currency(), figure, day, source));
    }

    /** The number of a rate; null where it is blank or was reported. */
    private @Nullable BigDecimal number(int row, int column, CurrencyUnit currency, Cell cell) {
        Origin place = grid.origin(row, column);
        String text = cell.text().strip();
        if (cell.isBlank() || text.equalsIgnoreCase("n/a") || text.equals("-") || text.equals("–")) {
            blanks.add(place);
            return null;
        }
        BigDecimal number = cells.number(cell);
        if (number == null && isTwoNumbers(text)) {
            if (!askedNumber) {
                findings.error(place, RateTableMessages.twoRates(text));
            }
            askedNumber = true;
            return null;
        }
        if (number == null || number.signum() <= 0) {
            findings.error(place, RateTableMessages.notARate(currency.getCurrencyCode(), text));
            return null;
        }
        return number;
    }

    private static boolean isTwoNumbers(String text) {
        return NumberText.parse(text) instanceof NumberText.Ambiguous;
    }

    private void reportDay(int row, Cell dated) {
        boolean two = DateText.parse(dated.text()) instanceof DateText.Ambiguous;
        if (!two) {
            findings.error(grid.origin(row, place(DATE_OF)), RateTableMessages.notADate(dated.text()));
        } else if (!askedDay) {
            findings.error(grid.origin(row, place(DATE_OF)), RateTableMessages.twoDays(dated.text()));
        }
        askedDay |= two;
    }

    private int place(InputColumn column) {
        return named.getOrDefault(column, 0);
    }
}
