package perkilo.layouts;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** Reads the rows of a list into lines of the long form; collects errors and questions, each with its cell. */
public final class ListRows {

    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_REMARK = 40;
    private static final Pattern FIRST_DIGIT_ZERO = Pattern.compile("[^1-9]*0");
    private static final Pattern ZERO = Pattern.compile("0+(?:[.,]0+)?");

    private final ListColumns columns;
    private final Grid grid;
    private final Mapping mapping;
    private final ListSense sense;
    private final ListDates dates;
    private final Set<Integer> priceColumns;
    private final PriceCell prices;
    private final ListGallons gallons;
    private final Findings findings;
    private final Map<String, Question> questions = new LinkedHashMap<>();
    private final Map<String, Optional<Quantity>> units = new HashMap<>();
    private final Map<String, Optional<ListDates.Read>> days = new HashMap<>();
    private final Map<Meaning, Integer> places = new HashMap<>();
    private final Map<ListLine, String> unpriced = new LinkedHashMap<>();
    private final DoubtedPrices doubted = new DoubtedPrices();
    private Validity lastValidity = Validity.UNKNOWN;
    private String above = "";
    private int left;
    private int currentRow = -1;
    private NavigableMap<Integer, Cell> current = new TreeMap<>();

    public ListRows(ListColumns columns, Mapping mapping, ListSense sense, TitleFacts title, Findings findings) {
        this.columns = columns;
        this.grid = columns.layout().grid();
        this.mapping = mapping;
        this.sense = sense;
        this.dates = new ListDates(mapping.answer(Mapping.DATES));
        this.findings = findings;
        this.priceColumns = columns.prices().keySet();
        this.gallons = new ListGallons(mapping, this::ask);
        this.prices = new PriceCell(sense.mark(), mapping, title.note(), this::ask, gallons, findings);
        for (Meaning meaning : Meaning.values()) {
            columns.of(meaning).ifPresent(column -> places.put(meaning, column));
        }
    }

    private NavigableMap<Integer, Cell> at(int row) {
        if (row != currentRow) {
            currentRow = row;
            current = grid.row(row);
        }
        return current;
    }

    private Cell at(int row, int column) {
        return at(row).getOrDefault(column, Cell.BLANK);
    }

    /** The lines of all rows. */
    public List<ListLine> read() {
        List<ListLine> lines = new ArrayList<>();
        ListLayout layout = columns.layout();
        NavigableMap<Integer, Cell> header = grid.row(layout.lastHeader());
        for (int row : grid.rows().below(layout.lastHeader())) {
            if (!layout.repeatsHeaders(grid.row(row), header)) {
                read(row, lines);
            }
        }
        addUnpriced(lines);
        doubted.report(findings);
        if (left > 0) {
            findings.note(grid.origin(), RowMessages.onRequest(left));
        }
        return lines;
    }

    /** What the rows leave open. */
    public List<Question> questions() {
        return List.copyOf(questions.values());
    }

    private void ask(Question question) {
        questions.putIfAbsent(question.field() + question.key(), question);
    }

    private void read(int row, List<ListLine> lines) {
        Map<Integer, Cell> asked = new LinkedHashMap<>();
        for (int column : priceColumns) {
            Cell cell = at(row, column);
            if (!cell.isBlank()) {
                asked.put(column, cell);
            }
        }
        if (!asked.isEmpty() && isTotalOrNote(row)) {
            findings.warning(grid.origin(row, at(row).firstKey()), RowMessages.totalOrNote(shortened(words(row))));
            return;
        }
        String item = item(row, asked);
        if (item.isEmpty()) {
            return;
        }
        Map<String, List<Integer>> byPack = new LinkedHashMap<>();
        for (int column : priceColumns) {
            ColumnUse use = columns.uses().get(column);
            if (use != null) {
                byPack.computeIfAbsent(use.packText(), pack -> new ArrayList<>())
                        .add(column);
            }
        }
        byPack.forEach((pack, inColumns) -> read(row, item, pack, inColumns, lines));
    }

    /** The prices of one pack of a row; the pack is named in a cell of the row or in a header. */
    private void read(int row, String item, String packText, List<Integer> inColumns, List<ListLine> lines) {
        List<Integer> priced = inColumns.stream()
                .filter(column -> !at(row, column).isBlank() && !isNoPrice(at(row, column)))
                .toList();
        if (priced.isEmpty()) {
            withoutPrice(row, item, packText, inColumns);
            return;
        }
        left += (int)
                inColumns.stream().filter(column -> isNoPrice(at(row, column))).count();
        PackText pack = packText.isEmpty() ? pack(row) : packOfHeader(inColumns.get(0), packText);
        String remark = remark(row, text -> ListWords.is("on request", text));
        if (pack != null && !remark.isEmpty()) {
            doubted.add(item, shortened(remark), grid.origin(row, priced.get(0)));
        }
        if (pack != null) {
            for (int column : priced) {
                ColumnUse use = Objects.requireNonNull(columns.uses().get(column));
                line(row, item, column, use, pack).ifPresent(lines::add);
            }
        }
    }

    /** Notes a pack that the list names without a price: on request, discontinued, or a blank cell. */
    private void withoutPrice(int row, String item, String packText, List<Integer> inColumns) {
        Optional<Integer> marked =
                inColumns.stream().filter(column -> isNoPrice(at(row, column))).findFirst();
        boolean ownPack = packText.isEmpty()
                && places.containsKey(Meaning.PACK)
                && !packCell(row).isBlank();
        if (marked.isEmpty() && !ownPack) {
            return;
        }
        Origin origin = grid.origin(row, marked.orElse(inColumns.get(0)));
        PackText pack = packText.isEmpty()
                ? ownPack ? packIn(packCell(row), packUnit(row)) : null
                : packIn(Cell.text(packText), null);
        String said = marked.map(column -> at(row, column).text()).orElse("the cell is blank");
        String remark = remark(row, text -> ListWords.is("on request", text));
        String why = remark.isEmpty() || remark.equals(said) ? said : said + ", " + remark;
        if (pack == null) {
            findings.warning(origin, RowMessages.withoutPriceAndPack(item, shortened(why)));
            return;
        }
        unpriced.put(
                new ListLine(listed(row, item), pack.content(), null, null, LineTerms.NONE, validity(row), origin),
                why);
    }

    /** Adds the packs that have no price anywhere in the list, and warns about each. */
    private void addUnpriced(List<ListLine> lines) {
        Set<List<Object>> priced = new HashSet<>();
        if (!unpriced.isEmpty()) {
            lines.forEach(line -> priced.add(List.of(Names.key(line.item()), line.pack())));
        }
        CurrencyUnit currency = lines.isEmpty() ? null : lines.get(0).currency();
        unpriced.forEach((bare, why) -> {
            Quantity pack = gallons.settled(bare.pack(), currency, bare.origin());
            ListLine line = pack == null ? bare : bare.in(pack);
            if (pack != null && priced.add(List.of(Names.key(line.item()), line.pack()))) {
                lines.add(line);
                findings.warning(
                        line.origin(),
                        RowMessages.withoutPrice(line.item(), line.pack().toString(), shortened(why)));
            }
        });
    }

    private static boolean isNoPrice(Cell cell) {
        if (cell.kind() == Cell.Kind.TEXT) {
            return isOnRequest(cell) || isZero(cell.text());
        }
        BigDecimal number = cell.kind() == Cell.Kind.NUMBER ? cell.number() : null;
        return number != null && number.signum() == 0;
    }

    private static boolean isZero(String price) {
        return FIRST_DIGIT_ZERO.matcher(price).lookingAt()
                && NumberWords.of(price)
                        .filter(parts -> ZERO.matcher(parts.digits()).matches())
                        .isPresent();
    }

    /**
     * Whether a row that holds a figure is a total or a note: it lacks both its item and its pack, or it lacks one and
     * has a word for a total.
     */
    private boolean isTotalOrNote(int row) {
        Integer item = places.getOrDefault(Meaning.ITEM, places.get(Meaning.INCI));
        boolean named = item != null && !merged(row, item).isBlank();
        boolean hasPackColumn = places.containsKey(Meaning.PACK);
        boolean packed = hasPackColumn && !packCell(row).isBlank();
        if (named && packed) {
            return false;
        }
        Integer from = places.get(Meaning.FROM);
        boolean breaks = from != null && !at(row, from).isBlank();
        boolean neither = hasPackColumn && !named && !packed && !breaks;
        return neither
                || at(row).values().stream()
                        .anyMatch(cell -> cell.kind() == Cell.Kind.TEXT && ListWords.is("total", cell.text()));
    }

    private String words(int row) {
        return at(row).values().stream()
                .map(Cell::text)
                .filter(text -> !text.isBlank())
                .collect(Collectors.joining(" "));
    }

    /** The first text of a kind in the unused columns; empty if there is none. */
    private String remark(int row, Predicate<String> kind) {
        for (Map.Entry<Integer, Cell> cell : at(row).entrySet()) {
            String text = cell.getValue().text();
            boolean free = cell.getValue().kind() == Cell.Kind.TEXT
                    && text.length() <= LONGEST_REMARK
                    && !columns.uses().containsKey(cell.getKey());
            if (free && kind.test(text)) {
                return text;
            }
        }
        return "";
    }

    private static boolean isOnRequest(Cell cell) {
        return cell.kind() == Cell.Kind.TEXT
                && (ListWords.is("on request", cell.text()) || ListWords.is("nothing said", cell.text()));
    }

    /** The item of a row: its own, that of a cell merged over several rows, or the one above if a person said so. */
    private String item(int row, Map<Integer, Cell> asked) {
        Integer column = places.getOrDefault(Meaning.ITEM, places.get(Meaning.INCI));
        if (column == null) {
            return "";
        }
        Cell cell = at(row, column);
        if (cell.kind() == Cell.Kind.ERROR) {
            findings.error(grid.origin(row, column), RowMessages.itemFault(cell.text()));
            return "";
        }
        String own = cell.text();
        if (own.length() > LONGEST_NAME) {
            findings.error(grid.origin(row, column), RowMessages.longItem(own.length(), LONGEST_NAME));
            return "";
        }
        if (!own.isEmpty()) {
            above = own;
            return own;
        }
        if (asked.values().stream().allMatch(ListRows::isNoPrice)) {
            return "";
        }
        Optional<String> merged = grid.mergedAt(row, column)
                .map(block -> grid.at(block.firstRow(), block.firstColumn()).text());
        return merged.orElseGet(() -> blankItem(row, column));
    }

    private String blankItem(int row, int column) {
        String answer = mapping.answer(Mapping.BLANK_ITEMS).orElse("");
        if (answer.equalsIgnoreCase("as above")) {
            return above;
        }
        if (!answer.equalsIgnoreCase("skip")) {
            ask(Question.of(
                    Mapping.BLANK_ITEMS,
                    grid.origin(row, column),
                    QuestionMessages.rowWithoutItem(),
                    "as above",
                    "skip"));
        }
        return "";
    }

    private @Nullable PackText pack(int row) {
        Integer column = places.get(Meaning.PACK);
        if (column == null) {
            return packOfAll();
        }
        return pack(packCell(row), grid.origin(row, column), packUnit(row));
    }

    /** The pack of all rows, as a person answered. */
    private @Nullable PackText packOfAll() {
        String answer = mapping.answer(Mapping.PACK_COLUMN).orElse("");
        PackText pack = answer.isEmpty() ? null : packIn(Cell.text(answer), null);
        if (pack == null) {
            List<String> unused = columns.unused();
            ask(new Question(
                    Mapping.PACK_COLUMN,
                    "",
                    grid.origin(Math.max(0, columns.layout().lastHeader()), firstColumn()),
                    unused.isEmpty() ? QuestionMessages.noPackColumn() : QuestionMessages.whichPackColumn(unused),
                    unused));
        }
        return pack;
    }

    private Cell packCell(int row) {
        return merged(row, Objects.requireNonNull(places.get(Meaning.PACK)));
    }

    private @Nullable Quantity packUnit(int row) {
        Integer units = places.get(Meaning.PACK_UNIT);
        Quantity unit = units == null ? null : unit(merged(row, units).text());
        return unit == null
                ? columns.note(Objects.requireNonNull(places.get(Meaning.PACK))).per()
                : unit;
    }

    private @Nullable Quantity unit(String word) {
        return word.isEmpty()
                ? null
                : units.computeIfAbsent(word, Quantity::unit).orElse(null);
    }

    private int firstColumn() {
        return columns.uses().keySet().stream().min(Integer::compare).orElse(0);
    }

    private Cell merged(int row, int column) {
        Cell cell = at(row, column);
        return cell.isBlank()
                ? grid.mergedAt(row, column)
                        .map(block -> grid.at(block.firstRow(), block.firstColumn()))
                        .orElse(cell)
                : cell;
    }

    private @Nullable PackText packOfHeader(int column, String packText) {
        Origin header = grid.origin(columns.layout().lastHeader(), column);
        return pack(Cell.text(packText), header, null);
    }

    private @Nullable PackText pack(Cell cell, Origin origin, @Nullable Quantity unit) {
        if (cell.isBlank()) {
            findings.error(origin, RowMessages.noPack());
            return null;
        }
        PackText pack = packIn(cell, unit);
        if (pack == null) {
            boolean doubtful = sense.mark() == DecimalMark.UNKNOWN && PackText.isAmbiguous(cell.text());
            if (!doubtful) {
                findings.error(origin, RowMessages.packNotUnderstood(shortened(cell.text())));
            }
        }
        return pack;
    }

    private @Nullable PackText packIn(Cell cell, @Nullable Quantity unit) {
        if (cell.kind() == Cell.Kind.NUMBER
                && cell.number() != null
                && unit != null
                && cell.number().signum() > 0) {
            return new PackText(unit.times(cell.number()), 1);
        }
        return cell.kind() == Cell.Kind.TEXT
                ? PackText.of(cell.text(), sense.mark(), unit).orElse(null)
                : null;
    }

    private Optional<ListLine> line(int row, String item, int column, ColumnUse use, PackText packed) {
        Origin origin = grid.origin(row, column);
        String per = text(row, Meaning.PER);
        String currency = text(row, Meaning.CURRENCY);
        PriceCell.Price price = prices.read(
                at(row, column), origin, use.note(), per, currency, packed, remark(row, PriceNote::saysWhatFor));
        Quantity pack = price == null ? packed.content() : gallons.settled(packed.content(), price.currency(), origin);
        if (pack == null) {
            return Optional.empty();
        }
        CurrencyUnit priced = price == null ? null : price.currency();
        Bare from = use.from() == null ? cellFrom(row) : Bare.of(use.from());
        Optional<BigDecimal> quantity = quantity(from, sense.breaksIn(), pack, priced, origin);
        Optional<BigDecimal> minimum = quantity(minimum(row), sense.minimumsIn(), pack, priced, origin);
        if (price == null || (from != null && quantity.isEmpty())) {
            return Optional.empty();
        }
        BigDecimal begins =
                quantity.filter(one -> one.compareTo(pack.amount()) > 0).orElse(null);
        return Optional.of(new ListLine(
                listed(row, item),
                pack,
                new Offer.PriceBreak(
                        begins == null ? null : figure(begins, origin),
                        figure(price.amount(), origin),
                        price.per(),
                        origin),
                price.currency(),
                terms(
                        row,
                        minimum.filter(one -> one.compareTo(pack.amount()) > 0).orElse(null)),
                validity(row),
                origin));
    }

    private ListLine.Listed listed(int row, String item) {
        return new ListLine.Listed(
                text(row, Meaning.SUPPLIER),
                item,
                text(row, Meaning.INCI),
                text(row, Meaning.CAS),
                text(row, Meaning.CODE));
    }

    private LineTerms terms(int row, @Nullable BigDecimal minimum) {
        BigDecimal multiple = number(row, Meaning.MULTIPLE);
        BigDecimal duty = number(row, Meaning.DUTY);
        return LineTerms.of(
                minimum == null ? null : figure(minimum, origin(row, Meaning.MINIMUM)),
                multiple == null ? null : figure(multiple, origin(row, Meaning.MULTIPLE)),
                duty == null ? null : figure(duty.movePointLeft(2), origin(row, Meaning.DUTY)));
    }

    private Origin origin(int row, Meaning meaning) {
        return grid.origin(row, Objects.requireNonNull(places.get(meaning)));
    }

    private static Figure figure(BigDecimal value, Origin origin) {
        return new Figure(value, origin, null);
    }

    /** The days of a row. Most rows of a list have the same days, or none: those are kept once. */
    private Validity validity(int row) {
        lastValidity = lastValidity.orOf(date(row, Meaning.QUOTED_ON), date(row, Meaning.VALID_UNTIL));
        return lastValidity;
    }

    private String text(int row, Meaning meaning) {
        Integer column = places.get(meaning);
        String text = column == null ? "" : merged(row, column).text();
        if (text.length() > LONGEST_NAME && column != null) {
            findings.error(grid.origin(row, column), RowMessages.longText(meaning.word(), text.length(), LONGEST_NAME));
            return "";
        }
        return text;
    }

    /** A quantity that may lack its unit. */
    private record Bare(BreakText text, @Nullable BigDecimal number) {

        private static Bare of(BreakText text) {
            return new Bare(text, null);
        }
    }

    private @Nullable Bare cellFrom(int row) {
        return bare(row, Meaning.FROM);
    }

    private @Nullable Bare minimum(int row) {
        return bare(row, Meaning.MINIMUM);
    }

    private @Nullable Bare bare(int row, Meaning meaning) {
        Integer column = places.get(meaning);
        if (column == null || at(row, column).isBlank() || isOnRequest(at(row, column))) {
            return null;
        }
        Cell cell = at(row, column);
        if (cell.kind() == Cell.Kind.NUMBER) {
            return new Bare(new BreakText("", null, false, BreakText.Kind.FROM), cell.number());
        }
        Optional<BreakText> text = BreakText.of(cell.text()).filter(from -> from.kind() != BreakText.Kind.ABOVE);
        if (text.isEmpty()) {
            findings.error(
                    grid.origin(row, column),
                    RowMessages.quantityNotUnderstood(meaning.word(), shortened(cell.text())));
        }
        return text.map(Bare::of).orElse(null);
    }

    /** A quantity in the unit of the pack; empty if there is none or it is not clear. */
    private Optional<BigDecimal> quantity(
            @Nullable Bare bare,
            ListSense.@Nullable Counted counted,
            Quantity pack,
            @Nullable CurrencyUnit currency,
            Origin origin) {
        if (bare == null) {
            return Optional.empty();
        }
        BigDecimal number = bare.number() != null
                ? bare.number()
                : bare.text().quantity(sense.mark()).orElse(null);
        if (number == null) {
            return Optional.empty();
        }
        boolean packs = bare.text().packs() || (!bare.text().saysUnit() && counted != null && counted.packs());
        if (packs) {
            return Optional.of(number.multiply(pack.amount()));
        }
        Quantity unit = bare.text().unit() != null ? bare.text().unit() : counted == null ? null : counted.unit();
        if (unit == null) {
            boolean first = number.compareTo(BigDecimal.ONE) <= 0;
            return counted != null ? Optional.of(number) : first ? Optional.of(BigDecimal.ZERO) : Optional.empty();
        }
        Quantity typed = unit.times(number);
        Quantity clear = currency == null ? typed : gallons.settled(typed, currency, origin);
        if (clear == null) {
            return Optional.empty();
        }
        Optional<BigDecimal> converted = clear.in(pack.measure());
        if (converted.isEmpty()) {
            findings.error(
                    origin,
                    RowMessages.quantityDoesNotFit(
                            unit.measure().symbol(), pack.measure().symbol()));
        }
        return converted;
    }

    private @Nullable BigDecimal number(int row, Meaning meaning) {
        Integer column = places.get(meaning);
        if (column == null || at(row, column).isBlank()) {
            return null;
        }
        Cell cell = at(row, column);
        if (cell.kind() == Cell.Kind.NUMBER && cell.number() != null) {
            return cell.isPercentFormat() ? cell.number().movePointRight(2) : cell.number();
        }
        Optional<BigDecimal> number = NumberWords.of(cell.text())
                .filter(parts -> parts.words().isEmpty() || parts.words().equals("%"))
                .flatMap(parts -> sense.mark().number(parts.digits()));
        if (number.isEmpty()) {
            findings.error(grid.origin(row, column), RowMessages.notANumber(meaning.word(), shortened(cell.text())));
        }
        return number.orElse(null);
    }

    private @Nullable LocalDate date(int row, Meaning meaning) {
        Integer column = places.get(meaning);
        if (column == null || at(row, column).isBlank()) {
            return null;
        }
        Cell cell = at(row, column);
        if (cell.kind() == Cell.Kind.DATE) {
            return cell.date();
        }
        Optional<ListDates.Read> read = days.computeIfAbsent(cell.text(), dates::one);
        if (read.isPresent() && read.get().ambiguous()) {
            ask(Question.of(
                    Mapping.DATES,
                    grid.origin(row, column),
                    QuestionMessages.dayOrMonth(cell.text()),
                    "day first",
                    "month first"));
        } else if (read.isEmpty()) {
            findings.error(grid.origin(row, column), RowMessages.notADate(meaning.word(), shortened(cell.text())));
        }
        return read.map(ListDates.Read::day).orElse(null);
    }

    /** A text cut short enough for a message. */
    public static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 57) + "…";
    }
}
