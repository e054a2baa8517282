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
import java.util.function.Consumer;
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
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** Reads the rows of a list into lines of the long form; collects errors and questions, each with its cell. */
public final class ListRows {

    /** The pack of goods that are sold one by one. */
    public static final String ONE_PIECE = "1 piece";

    /** The units of packs to choose from; others may be typed. */
    private static final List<String> PACK_UNITS = List.of("kg", "g", "L", "mL", "lb", "oz", "US gal", "t", "pieces");

    private static final Quantity ANY_UNIT = new Quantity(BigDecimal.ONE, Measure.KG);

    private static final int LONGEST_NAME = 200;
    static final String STRUCK = "prices that are struck through";
    private static final int LONGEST_REMARK = 40;
    private static final int NAMED = 12;
    private static final String NO_MINIMUM = "none";
    static final String MINIMUM_ORDER = "minimum order \"";
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final Pattern FIRST_DIGIT_ZERO = Pattern.compile("[^1-9]*0");
    private static final Pattern ZERO = Pattern.compile("0+(?:[.,]0+)?");

    private final ListColumns columns;
    private final Grid grid;
    private final Mapping mapping;
    private final ListSense sense;
    private final ListDates dates;
    private final TitleFacts facts;
    private final Validity own;
    private final Map<String, Optional<PackInName>> namePacks = new HashMap<>();
    private final Map<String, Optional<Quantity>> formatUnits = new HashMap<>();
    private boolean saidNamePacks;
    private final Set<Integer> priceColumns;
    private final PriceCell prices;
    private final ListGallons gallons;
    private final Findings findings;
    private final Map<String, Question> questions = new LinkedHashMap<>();
    private final Map<String, Optional<Quantity>> units = new HashMap<>();
    private final Map<String, Optional<ListDates.Read>> days = new HashMap<>();
    private final Map<Meaning, Integer> places = new HashMap<>();
    private final RowCells cells;
    private final RemarkCells remarks;
    private final List<CellFault> faults = new ArrayList<>();
    private final Map<String, ListedItem> items = new LinkedHashMap<>();
    private final List<String> onRequest = new ArrayList<>();
    private final Map<String, Integer> chargesPerOrder = new LinkedHashMap<>();
    private @Nullable Boolean namesHoldPacks;
    private String heading = "";
    private final Set<String> foundWords = new HashSet<>();
    private final Set<Integer> saidMinimums = new HashSet<>();
    private int priceRow;
    private int priceColumn;
    private final Map<ListLine, String> unpriced = new LinkedHashMap<>();
    private final DoubtedPrices doubted = new DoubtedPrices();
    private Validity lastValidity = Validity.UNKNOWN;
    private String above = "";
    private int left;

    /**
     * Ready to read.
     *
     * @param facts what the lines around the table say
     * @param own the days of rows without their own; unknown if they are those of the whole list
     */
    public ListRows(
            ListColumns columns,
            Mapping mapping,
            ListSense sense,
            TitleFacts facts,
            Validity own,
            ListDates dates,
            Findings findings) {
        this.columns = columns;
        this.grid = columns.layout().grid();
        this.mapping = mapping;
        this.sense = sense;
        this.facts = facts;
        this.own = own;
        this.dates = dates;
        this.findings = findings;
        this.priceColumns = columns.prices().keySet();
        this.gallons = new ListGallons(mapping, this::ask);
        this.prices = new PriceCell(
                mapping, facts, this::ask, gallons, (place, text) -> fault(priceRow, priceColumn, text), findings);
        this.cells = new RowCells(columns, mapping, this::ask);
        this.remarks = new RemarkCells(columns, mapping);
        for (Meaning meaning : Meaning.values()) {
            columns.of(meaning).ifPresent(column -> places.put(meaning, column));
        }
    }

    /** The cells of the row that is read, with what it takes over from the one above. */
    private NavigableMap<Integer, Cell> at(int row) {
        return cells.of(row);
    }

    private Cell at(int row, int column) {
        return at(row).getOrDefault(column, Cell.BLANK);
    }

    /** Something is wrong with a cell. */
    private void fault(int row, int column, String text) {
        Origin where = grid.origin(row, column);
        findings.error(where, text);
        if (row <= columns.layout().lastHeader()) {
            return;
        }
        faults.add(new CellFault(grid, row, column, where, text));
    }

    /** The lines of all rows. */
    public List<ListLine> read() {
        List<ListLine> lines = new ArrayList<>();
        ListLayout layout = columns.layout();
        NavigableMap<Integer, Cell> header = grid.row(layout.lastHeader());
        for (int row : layout.rows()) {
            if (!layout.repeatsHeaders(grid.row(row), header)) {
                read(row, lines);
            }
        }
        addUnpriced(lines);
        doubted.report(findings);
        remarks.report(this::ask, findings);
        if (left > 0) {
            findings.note(grid.origin(), RowMessages.onRequest(left, onRequest));
        }
        places.forEach((meaning, column) -> {
            if (meaning == Meaning.ORDER_CHARGE && !chargesPerOrder.isEmpty()) {
                findings.warning(
                        grid.origin(Math.max(0, columns.layout().lastHeader()), column),
                        RowMessages.chargesPerOrder(
                                header(column),
                                chargesPerOrder.keySet().iterator().next(),
                                chargesPerOrder.values().stream()
                                        .mapToInt(Integer::intValue)
                                        .sum()));
            }
        });
        return lines;
    }

    /** The cells with which something is wrong. */
    public List<CellFault> faults() {
        return List.copyOf(faults);
    }

    /** The words of a change of some items' prices that are on the list. */
    Set<String> found(LineAdjustment line) {
        Set<String> found = new HashSet<>(line.only());
        found.retainAll(foundWords);
        return found;
    }

    /** The items that rows with a price name, whether their prices can be read yet or not. */
    public List<ListedItem> items() {
        return List.copyOf(items.values());
    }

    /** What the rows leave open. */
    public List<Question> questions() {
        return List.copyOf(questions.values());
    }

    private void ask(Question question) {
        questions.putIfAbsent(question.field() + question.key(), question);
    }

    private void read(int row, List<ListLine> lines) {
        cells.begin(row);
        Map<Integer, Cell> asked = new LinkedHashMap<>();
        for (int column : priceColumns) {
            Cell cell = at(row, column);
            if (!cell.isBlank()) {
                asked.put(column, cell);
            }
        }
        if (!asked.isEmpty() && isStruckOut(row, asked.keySet())) {
            Integer named = places.getOrDefault(Meaning.ITEM, places.get(Meaning.INCI));
            above = named == null || at(row, named).isBlank() ? above : "";
            return;
        }
        if (asked.isEmpty() && at(row).size() == 1) {
            heading = at(row).firstEntry().getValue().text();
        }
        if (!asked.isEmpty() && isTotalOrNote(row)) {
            findings.warning(grid.origin(row, at(row).firstKey()), RowMessages.totalOrNote(shortened(words(row))));
            return;
        }
        String item = item(row, asked);
        if (item.isEmpty()) {
            return;
        }
        cells.end();
        item = withGrade(item, row);
        Map<String, List<Integer>> byPack = new LinkedHashMap<>();
        for (int column : priceColumns) {
            ColumnUse use = columns.uses().get(column);
            if (use != null) {
                byPack.computeIfAbsent(use.packText(), pack -> new ArrayList<>())
                        .add(column);
            }
        }
        String named = item;
        byPack.forEach((pack, inColumns) -> read(row, named, pack, inColumns, lines));
        remarks.noteUnpriced(row, at(row));
        if (!asked.isEmpty()) {
            remarks.doubt(row, at(row));
        }
    }

    /** Whether a row is struck through, so that it is left out or a person has to say whether it is. */
    private boolean isStruckOut(int row, Set<Integer> priced) {
        Grid.Aside aside = grid.aside();
        if (aside.struck().isEmpty()) {
            return false;
        }
        Integer item = places.getOrDefault(Meaning.ITEM, places.get(Meaning.INCI));
        Optional<Integer> struck = priced.stream()
                .filter(column -> aside.isStruck(row, column))
                .findFirst()
                .or(() -> Optional.ofNullable(item).filter(column -> aside.isStruck(row, column)));
        String answer = mapping.answer(STRUCK).orElse("");
        if (struck.isEmpty() || answer.equalsIgnoreCase("yes")) {
            return false;
        }
        Origin where = grid.origin(row, struck.get());
        if (answer.equalsIgnoreCase("no")) {
            findings.warning(where, RowMessages.struckOut(shortened(words(row))));
        } else {
            ask(Question.of(STRUCK, where, QuestionMessages.struckThrough(shortened(words(row))), "yes", "no"));
        }
        return true;
    }

    /** The item with its grade, if the table has a column for it: {@code Dimethicone 100 cSt}. */
    private String withGrade(String item, int row) {
        Integer column = places.get(Meaning.GRADE);
        if (column == null || at(row, column).isBlank()) {
            return item;
        }
        String grade = at(row, column).text();
        boolean fits = grade.length() <= LONGEST_REMARK && !isOnRequest(at(row, column));
        return fits && !ListWords.key(item).contains(ListWords.key(grade)) ? item + " " + grade : item;
    }

    /** The pack that the name of an item holds, if no column holds packs. */
    private Optional<PackInName> packInName(String item) {
        return places.containsKey(Meaning.PACK)
                        || mapping.answer(Mapping.PACK_COLUMN).isPresent()
                        || !namesHoldPacks()
                ? Optional.empty()
                : namePacks.computeIfAbsent(item, name -> PackInName.of(name, sense.mark()));
    }

    /** Whether at least half of the names hold a pack; in a single one it may be a strength, as in Panthenol 75 L. */
    private boolean namesHoldPacks() {
        Integer column = places.getOrDefault(Meaning.ITEM, places.get(Meaning.INCI));
        if (namesHoldPacks == null) {
            Set<String> names = new HashSet<>();
            for (int row : columns.layout().rows()) {
                boolean priced = priceColumns.stream()
                        .anyMatch(price -> !grid.at(row, price).isBlank());
                if (column != null && priced && !grid.at(row, column).isBlank()) {
                    names.add(grid.at(row, column).text());
                }
            }
            long packs = names.stream()
                    .filter(name -> namePacks
                            .computeIfAbsent(name, text -> PackInName.of(text, sense.mark()))
                            .isPresent())
                    .count();
            namesHoldPacks = 2 * packs >= names.size();
        }
        return namesHoldPacks;
    }

    /** The prices of one pack of a row; the pack is named in a cell of the row or in a header. */
    private void read(int row, String named, String packText, List<Integer> inColumns, List<ListLine> lines) {
        Optional<PackInName> inName = packText.isEmpty() ? packInName(named) : Optional.empty();
        String item = inName.map(PackInName::name).orElse(named);
        List<Integer> priced = inColumns.stream()
                .filter(column -> !at(row, column).isBlank() && !isNoPrice(at(row, column)))
                .toList();
        if (priced.isEmpty()) {
            withoutPrice(row, item, packText, inName.map(PackInName::pack).orElse(null), inColumns);
            return;
        }
        if (places.containsKey(Meaning.ITEM)) {
            items.putIfAbsent(item, new ListedItem(listed(row, item), grid.origin(row, priced.get(0))));
        }
        inColumns.stream().filter(column -> isNoPrice(at(row, column))).forEach(column -> leftOut(row, column, item));
        firstPrice(row, item, inColumns, priced);
        PackText pack = packText.isEmpty()
                ? inName.map(PackInName::pack).orElseGet(() -> pack(row))
                : packOfHeader(inColumns.get(0), packText);
        if (inName.isPresent() && !saidNamePacks) {
            saidNamePacks = true;
            findings.note(
                    grid.origin(row, at(row).firstKey()),
                    RowMessages.packsOfNames(
                            named, inName.get().pack().content().toString()));
        }
        String remark = remark(row, ListRows::isDoubt);
        if (pack != null && !remark.isEmpty()) {
            doubted.add(item, shortened(remark), grid.origin(row, priced.get(0)));
        }
        if (pack != null) {
            for (int column : priced) {
                ColumnUse use = Objects.requireNonNull(columns.uses().get(column));
                lines(row, item, column, use, pack, lines);
            }
            remarkedBreaks(row, item, priced.get(0), pack, lines);
        }
    }

    private void leftOut(int row, int column, String item) {
        left++;
        if (onRequest.size() < NAMED) {
            onRequest.add("\"" + item + "\" (" + grid.origin(row, column).cell() + ")");
        }
    }

    private String header(int column) {
        return columns.layout().headers().getOrDefault(column, "");
    }

    /** Says that an item has no price for the smallest quantity of the list. */
    private void firstPrice(int row, String item, List<Integer> inColumns, List<Integer> priced) {
        int first = inColumns.get(0);
        boolean breaks = inColumns.stream()
                .allMatch(column ->
                        Objects.requireNonNull(columns.uses().get(column)).from() != null || column == first);
        if (inColumns.size() > 1 && breaks && at(row, first).isBlank()) {
            findings.warning(grid.origin(row, first), RowMessages.noFirstPrice(item, header(priced.get(0))));
        }
    }

    /** The price breaks in remarks beside a price: {@code a partir de 4 bidones: 1.180,00 €}. */
    private void remarkedBreaks(int row, String item, int column, PackText pack, List<ListLine> lines) {
        ColumnUse use = Objects.requireNonNull(columns.uses().get(column));
        for (RemarkCells.Said said : remarks.breaks(at(row))) {
            Bare from = Bare.of(Objects.requireNonNull(said.broken().from()));
            Optional<ListLine> line =
                    line(row, item, said.column(), Cell.text(said.broken().price()), from, use, pack);
            line.ifPresent(lines::add);
            if (line.isPresent()) {
                findings.note(
                        grid.origin(row, said.column()),
                        RowMessages.remarkIsBreak(
                                shortened(at(row, said.column()).text())));
            }
        }
    }

    /** Notes a pack that the list names without a price: on request, discontinued, or a blank cell. */
    private void withoutPrice(
            int row, String item, String packText, @Nullable PackText inName, List<Integer> inColumns) {
        Optional<Integer> marked =
                inColumns.stream().filter(column -> isNoPrice(at(row, column))).findFirst();
        boolean ownPack = packText.isEmpty()
                && places.containsKey(Meaning.PACK)
                && !packCell(row).isBlank();
        if (marked.isEmpty() && !ownPack && inName == null) {
            return;
        }
        Origin origin = grid.origin(row, marked.orElse(inColumns.get(0)));
        PackText pack = packText.isEmpty()
                ? ownPack ? packIn(packCell(row), packUnit(row)) : inName
                : packIn(Cell.text(packText), null);
        String said = marked.map(column -> at(row, column).text()).orElse("the cell is blank");
        String remark = remark(row, text -> ListWords.is("on request", text));
        String why = remark.isEmpty() || remark.equals(said) ? said : said + ", " + remark;
        if (pack == null) {
            findings.warning(origin, RowMessages.withoutPriceAndPack(item, shortened(why)));
            return;
        }
        unpriced.put(
                new ListLine(listed(row, item), pack.content(), null, null, LineTerms.NONE, validity(row), origin, ""),
                why);
    }

    /** Whether a remark speaks against a price: discontinued, or a surcharge of so many per cent. */
    private static boolean isDoubt(String text) {
        return ListWords.is("on request", text) || (text.indexOf('%') >= 0 && CostText.isCost(text));
    }

    /** Adds the packs that have no price anywhere in the list, and warns about each. */
    private void addUnpriced(List<ListLine> lines) {
        List<ListLine> own = List.copyOf(lines);
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
            } else if (pack != null && hasOnlyBreaks(line, own)) {
                findings.note(
                        line.origin(),
                        RowMessages.otherPricesOfPack(line.item(), line.pack().toString(), shortened(why)));
            }
        });
    }

    /** Whether the prices of a pack begin at larger quantities, so that it has none for the smallest. */
    private static boolean hasOnlyBreaks(ListLine unpriced, List<ListLine> lines) {
        List<ListLine> same = lines.stream()
                .filter(one -> one.item().equals(unpriced.item()) && one.pack().equals(unpriced.pack()))
                .toList();
        return !same.isEmpty()
                && same.stream()
                        .allMatch(one -> one.price() != null && one.price().from() != null);
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
            fault(row, column, RowMessages.itemFault(cell.text()));
            return "";
        }
        String own = cell.text();
        if (own.length() > LONGEST_NAME) {
            fault(row, column, RowMessages.longItem(own.length(), LONGEST_NAME));
            return "";
        }
        if (!own.isEmpty()) {
            if (cells.isDitto(column)) {
                cells.goOn();
            }
            above = own;
            return own;
        }
        Optional<String> merged = grid.mergedAt(row, column)
                .map(block -> grid.at(block.firstRow(), block.firstColumn()).text());
        if (asked.isEmpty()) {
            return "";
        }
        boolean noPrice = asked.values().stream().allMatch(ListRows::isNoPrice);
        boolean answered = mapping.answer(Mapping.BLANK_ITEMS).isPresent();
        return merged.orElseGet(() -> noPrice && !answered ? "" : blankItem(row, column));
    }

    private String blankItem(int row, int column) {
        String answer = mapping.answer(Mapping.BLANK_ITEMS).orElse("");
        if (answer.equalsIgnoreCase("as above")) {
            if (above.isEmpty()) {
                findings.warning(grid.origin(row, column), RowMessages.noItemAbove());
            } else {
                cells.goOn();
            }
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
        return pack(packCell(row), row, column, packUnit(row));
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
                    packChoices(unused)));
        }
        return pack;
    }

    /** Columns that may hold packs, and for goods that are counted a single piece. */
    private List<String> packChoices(List<String> unused) {
        Quantity per = facts.note().per();
        boolean counted = (per != null && per.measure().isCount())
                || columns.prices().values().stream()
                        .map(use -> use.note().per())
                        .anyMatch(one -> one != null && one.measure().isCount());
        if (!counted) {
            return unused;
        }
        List<String> choices = new ArrayList<>(List.of(ONE_PIECE));
        choices.addAll(unused);
        return choices;
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
        return pack(Cell.text(packText), columns.layout().lastHeader(), column, null);
    }

    private @Nullable PackText pack(Cell cell, int row, int column, @Nullable Quantity unit) {
        if (cell.isBlank()) {
            fault(row, column, RowMessages.noPack());
            return null;
        }
        PackText pack = packIn(cell, unit);
        if (pack == null && packIn(cell, ANY_UNIT) != null) {
            return packWithoutUnit(cell, row, column);
        }
        if (pack == null) {
            boolean doubtful = sense.mark() == DecimalMark.UNKNOWN && PackText.isAmbiguous(cell.text());
            if (!doubtful) {
                fault(row, column, RowMessages.packNotUnderstood(shortened(cell.text())));
            }
        }
        return pack;
    }

    /** A pack that is a bare number: in the unit that a person says the column is in, else asked about once. */
    private @Nullable PackText packWithoutUnit(Cell cell, int row, int column) {
        Quantity unit = unit(mapping.answer(Mapping.PACK_UNIT).orElse(""));
        if (unit == null) {
            String header = columns.layout().headers().getOrDefault(column, "");
            String named = header.isBlank() ? ListLayout.withoutHeading(column) : ListWords.tidy(header);
            ask(new Question(
                    Mapping.PACK_UNIT,
                    "",
                    grid.origin(row, column),
                    QuestionMessages.unitOfPacks(named, shortened(cell.text())),
                    PACK_UNITS));
            return null;
        }
        return packIn(cell, unit);
    }

    private @Nullable PackText packIn(Cell cell, @Nullable Quantity unit) {
        if (cell.kind() == Cell.Kind.NUMBER
                && cell.number() != null
                && cell.number().signum() > 0) {
            Quantity own = unit == null ? formatUnit(cell) : unit;
            return own == null ? null : new PackText(own.times(cell.number()), 1);
        }
        return cell.kind() == Cell.Kind.TEXT
                ? PackText.of(cell.text(), sense.mark(), unit).orElse(null)
                : null;
    }

    /** The unit that a number format shows, such as {@code 0 "kg"}; null if it shows none. */
    private @Nullable Quantity formatUnit(Cell cell) {
        return cell.format().isEmpty()
                ? null
                : formatUnits
                        .computeIfAbsent(cell.format(), format -> Quantity.unit(FormatText.of(format)))
                        .orElse(null);
    }

    /** The lines of one cell: one for each price in it. */
    private void lines(int row, String item, int column, ColumnUse use, PackText pack, List<ListLine> lines) {
        Cell cell = at(row, column);
        List<BreakPrices> several =
                cell.kind() == Cell.Kind.TEXT ? BreakPrices.of(cell.text()).orElse(List.of()) : List.of();
        if (several.isEmpty()) {
            Integer pair = columns.layout().pairs().get(column);
            Bare from = pair != null
                    ? bareIn(row, pair, Meaning.FROM)
                    : use.from() == null ? cellFrom(row) : Bare.of(use.from());
            line(row, item, column, cell, from, use, pack).ifPresent(lines::add);
            return;
        }
        for (BreakPrices one : several) {
            Bare from = one.from() == null ? null : Bare.of(one.from());
            line(row, item, column, Cell.text(one.price()), from, use, pack).ifPresent(lines::add);
        }
    }

    /** What a bare quantity counts: as for the list, or else as its figures or a person say. */
    private ListSense.@Nullable Counted counted(String field, @Nullable Bare from, Quantity pack, Origin origin) {
        boolean breaks = field.equals(Mapping.BREAKS_IN);
        ListSense.Counted known = breaks ? sense.breaksIn() : sense.minimumsIn();
        if (known != null || from == null || from.text().saysUnit()) {
            return known;
        }
        Optional<ListSense.Counted> said = mapping.answer(field).flatMap(ListSense.Counted::parse);
        if (said.isPresent()) {
            return said.get();
        }
        BigDecimal number = from.number() != null
                ? from.number()
                : from.text().quantity(sense.mark()).orElse(BigDecimal.ONE);
        if (number.compareTo(BigDecimal.ONE) <= 0) {
            return null;
        }
        if (number.compareTo(pack.amount()) < 0 || pack.amount().compareTo(BigDecimal.ONE) == 0) {
            return ListSense.Counted.PACKS;
        }
        String text = Quantity.plain(number);
        ask(Question.of(
                field,
                origin,
                breaks ? QuestionMessages.whatBreaksCount(text) : QuestionMessages.whatMinimumsCount(text),
                "packs",
                "pack unit",
                "a unit such as kg"));
        return null;
    }

    private Optional<ListLine> line(
            int row, String item, int column, Cell cell, @Nullable Bare from, ColumnUse use, PackText packed) {
        Origin origin = grid.origin(row, column);
        priceRow = row;
        priceColumn = column;
        String per = text(row, Meaning.PER);
        String currency = text(row, Meaning.CURRENCY);
        PriceCell.Price price = prices.read(
                cell,
                origin,
                new PriceCell.Around(facts.sectionAt(row), use.note(), sense.markIn(column), sense.asksForMarks()),
                per,
                currency,
                packed,
                remark(row, PriceNote::saysWhatFor));
        Quantity content = price == null ? packed.content() : packed.content(price.per());
        Quantity pack = price == null ? content : gallons.settled(content, price.currency(), origin);
        if (pack == null) {
            return Optional.empty();
        }
        CurrencyUnit priced = price == null ? null : price.currency();
        Optional<BigDecimal> quantity = quantity(
                from,
                counted(Mapping.BREAKS_IN, from, pack, origin),
                pack,
                priced,
                origin,
                unit -> fault(row, placeOfFrom(column), RowMessages.quantityDoesNotFit(unit, symbol(pack))));
        Bare least = minimum(row);
        Optional<BigDecimal> minimum = quantity(
                least,
                counted(Mapping.MINIMUMS_IN, least, pack, origin),
                pack,
                priced,
                origin,
                unit -> askForMinimum(row, symbol(pack)));
        if (price == null || (from != null && quantity.isEmpty())) {
            return Optional.empty();
        }
        List<Adjustment> adjustments = adjustments(row, item, use, price);
        BigDecimal amount = adjusted(price, pack, adjustments);
        if (amount == null) {
            return Optional.empty();
        }
        BigDecimal begins =
                quantity.filter(one -> one.compareTo(pack.amount()) > 0).orElse(null);
        return Optional.of(new ListLine(
                listed(row, item),
                pack,
                new Offer.PriceBreak(
                        begins == null ? null : figure(begins, origin), figure(amount, origin), price.per(), origin),
                price.currency(),
                terms(
                        row,
                        minimum.filter(one -> one.compareTo(pack.amount()) > 0).orElse(null)),
                validity(row),
                origin,
                adjustments.isEmpty() ? "" : note(price.amount(), adjustments)));
    }

    private static String symbol(Quantity pack) {
        return pack.measure().symbol();
    }

    /** The column in which the quantity stands that a price begins at; that of the price if it is in its cell. */
    private int placeOfFrom(int column) {
        Integer pair = columns.layout().pairs().get(column);
        return pair != null ? pair : places.getOrDefault(Meaning.FROM, column);
    }

    private static String note(BigDecimal listed, List<Adjustment> adjustments) {
        StringBuilder note = new StringBuilder("list price " + Quantity.plain(listed));
        adjustments.forEach(one -> note.append(", ").append(one.words()));
        return note.toString();
    }

    /** What the row, its columns and the lines around the table add to a price or take off. */
    private List<Adjustment> adjustments(int row, String item, ColumnUse use, PriceCell.Price price) {
        boolean none = use.vat() == null
                && facts.adjustments().isEmpty()
                && !places.containsKey(Meaning.ORDER_CHARGE)
                && !places.containsKey(Meaning.DISCOUNT)
                && !places.containsKey(Meaning.SURCHARGE_PERCENT)
                && !places.containsKey(Meaning.SURCHARGE);
        if (none) {
            return List.of();
        }
        List<Adjustment> all = new ArrayList<>();
        if (use.vat() != null) {
            all.add(Adjustment.vat(use.vat()));
        }
        percent(row, Meaning.DISCOUNT).map(Adjustment::discount).ifPresent(all::add);
        percent(row, Meaning.SURCHARGE_PERCENT).map(Adjustment::surcharge).ifPresent(all::add);
        Integer surcharge = places.get(Meaning.SURCHARGE);
        if (surcharge != null) {
            surcharge(row, surcharge, price).ifPresent(all::add);
        }
        Integer perOrder = places.get(Meaning.ORDER_CHARGE);
        if (perOrder != null && !at(row, perOrder).isBlank() && !isNothing(at(row, perOrder))) {
            chargesPerOrder.merge(shortened(at(row, perOrder).text()), 1, Integer::sum);
        }
        if (!facts.adjustments().isEmpty()) {
            Integer pack = places.get(Meaning.PACK);
            List<String> texts = List.of(
                    item,
                    text(row, Meaning.CODE),
                    text(row, Meaning.INCI),
                    pack == null ? use.packText() : packCell(row).text(),
                    heading);
            for (LineAdjustment one : facts.adjustments()) {
                if (one.holdsFor(texts)) {
                    all.add(one.what());
                }
                for (String word : one.only()) {
                    if (LineAdjustment.isIn(word, texts)) {
                        foundWords.add(word);
                    }
                }
            }
        }
        return all;
    }

    private static boolean isNothing(Cell cell) {
        return isOnRequest(cell) || ListWords.is("free of charge", cell.text());
    }

    /** The surcharge in a cell: for as much as its column says, or as the cell itself says. */
    private Optional<Adjustment> surcharge(int row, int column, PriceCell.Price price) {
        Cell cell = at(row, column);
        if (cell.isBlank() || isNothing(cell)) {
            return Optional.empty();
        }
        PriceNote basis = Objects.requireNonNull(columns.uses().get(column)).note();
        BigDecimal extra = cell.kind() == Cell.Kind.NUMBER ? cell.number() : null;
        NumberWords words = extra != null ? null : NumberWords.of(cell.text()).orElse(null);
        if (words != null) {
            extra = sense.mark().number(words.digits()).orElse(null);
            if (words.words().equals("%")) {
                return Optional.ofNullable(extra).map(Adjustment::surcharge);
            }
            if (ListWords.holds("whole order", words.words())) {
                findings.warning(grid.origin(row, column), RowMessages.chargePerOrder(shortened(cell.text())));
                return Optional.empty();
            }
            Optional<PriceNote> own = PriceNote.of(words.words());
            extra = own.isEmpty() ? null : extra;
            basis = own.filter(PriceNote::saysWhatFor).orElse(basis);
        }
        if (extra == null) {
            fault(row, column, RowMessages.notANumber(Meaning.SURCHARGE.word(), shortened(cell.text())));
            return Optional.empty();
        }
        if (extra.signum() == 0) {
            return Optional.empty();
        }
        if (cell.isPercentFormat()) {
            return Optional.of(Adjustment.surcharge(extra.movePointRight(2)));
        }
        if (basis.saysWhatFor()) {
            return Optional.of(Adjustment.amount(extra, basis));
        }
        PriceNote listed = price.per() == null
                ? PriceNote.of("pack").orElseThrow()
                : new PriceNote(null, new Quantity(BigDecimal.ONE, price.per()), false, null);
        return Optional.of(Adjustment.amount(extra.multiply(price.factor()), listed));
    }

    private Optional<BigDecimal> percent(int row, Meaning meaning) {
        Integer column = places.get(meaning);
        if (column == null || isNothing(at(row, column))) {
            return Optional.empty();
        }
        BigDecimal percent = number(row, meaning);
        if (percent == null || percent.signum() == 0) {
            return Optional.empty();
        }
        Cell cell = at(row, column);
        boolean fraction = percent.abs().compareTo(BigDecimal.ONE) < 0
                && cell.kind() == Cell.Kind.NUMBER
                && !cell.isPercentFormat();
        if (percent.signum() < 0 || percent.compareTo(HUNDRED) >= 0 || fraction) {
            fault(row, column, RowMessages.percentOutOfRange(meaning.word(), Quantity.plain(percent)));
        }
        return Optional.of(percent);
    }

    private @Nullable BigDecimal adjusted(PriceCell.Price price, Quantity pack, List<Adjustment> adjustments) {
        BigDecimal amount = price.amount();
        for (Adjustment one : adjustments) {
            Optional<BigDecimal> next = one.applied(amount, price.per(), pack);
            if (next.isEmpty()) {
                fault(
                        priceRow,
                        priceColumn,
                        RowMessages.surchargeDoesNotFit(one.basis().basisWords(), pack.toString()));
                return null;
            }
            amount = next.get();
        }
        return adjustments.isEmpty() ? amount : amount.stripTrailingZeros();
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
                minimum == null ? null : figure(minimum, minimumOrigin(row)),
                multiple == null ? null : figure(multiple, origin(row, Meaning.MULTIPLE)),
                duty == null ? null : figure(duty.movePointLeft(2), origin(row, Meaning.DUTY)));
    }

    /** Where the minimum order of a row stands: in its column, or in words beside the price. */
    private Origin minimumOrigin(int row) {
        Integer column = places.get(Meaning.MINIMUM);
        return column != null
                ? grid.origin(row, column)
                : remarks.minimum(at(row))
                        .map(said -> grid.origin(row, said.getKey()))
                        .orElse(Origin.NONE);
    }

    private Origin origin(int row, Meaning meaning) {
        return grid.origin(row, Objects.requireNonNull(places.get(meaning)));
    }

    private static Figure figure(BigDecimal value, Origin origin) {
        return new Figure(value, origin, null);
    }

    /** The days of a row. Most rows of a list have the same days, or none: those are kept once. */
    private Validity validity(int row) {
        LocalDate quoted = date(row, Meaning.QUOTED_ON);
        LocalDate until = date(row, Meaning.VALID_UNTIL);
        lastValidity =
                lastValidity.orOf(quoted == null ? own.quotedOn() : quoted, until == null ? own.validUntil() : until);
        if (lastValidity.isEmpty()) {
            fault(
                    row,
                    places.getOrDefault(Meaning.VALID_UNTIL, at(row).firstKey()),
                    RowMessages.endBeforeBegin(
                            String.valueOf(lastValidity.validUntil()), String.valueOf(lastValidity.quotedOn())));
        }
        return lastValidity;
    }

    private String text(int row, Meaning meaning) {
        Integer column = places.get(meaning);
        String text = column == null ? "" : merged(row, column).text();
        if (text.length() > LONGEST_NAME && column != null) {
            fault(row, column, RowMessages.longText(meaning.word(), text.length(), LONGEST_NAME));
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

    /**
     * The minimum order of a row, in its column or in words beside the price; what is not understood is asked about.
     */
    private @Nullable Bare minimum(int row) {
        Integer column = places.get(Meaning.MINIMUM);
        Cell cell = column == null ? Cell.BLANK : at(row, column);
        if (cell.kind() == Cell.Kind.TEXT && !isNothing(cell)) {
            BreakText said = minimum(cell.text());
            if (said != null) {
                return Bare.of(said);
            }
            boolean settled = mapping.answer(minimumField(row))
                            .filter(NO_MINIMUM::equalsIgnoreCase)
                            .isPresent()
                    || BreakPrices.inWords(cell.text()).isPresent();
            if (!settled) {
                ask(Question.of(
                        minimumField(row),
                        grid.origin(row, Objects.requireNonNull(column)),
                        QuestionMessages.whatMinimum(shortened(cell.text())),
                        NO_MINIMUM,
                        "1 pack",
                        "a quantity such as 100 kg"));
            }
            return null;
        }
        if (!cell.isBlank()) {
            return bare(row, Meaning.MINIMUM);
        }
        Map.Entry<Integer, BreakText> remarked = remarks.minimum(at(row)).orElse(null);
        if (remarked == null) {
            return null;
        }
        if (saidMinimums.add(row)) {
            findings.note(
                    grid.origin(row, remarked.getKey()),
                    RowMessages.remarkIsMinimum(
                            shortened(at(row, remarked.getKey()).text())));
        }
        return Bare.of(remarked.getValue());
    }

    private String minimumField(int row) {
        return MINIMUM_ORDER
                + shortened(at(row, Objects.requireNonNull(places.get(Meaning.MINIMUM)))
                        .text()) + "\"";
    }

    private @Nullable BreakText minimum(String text) {
        String answer = mapping.answer(MINIMUM_ORDER + shortened(text) + "\"").orElse("");
        String words = answer.isEmpty() ? text : answer;
        return BreakText.of(words)
                .filter(from -> from.kind() != BreakText.Kind.ABOVE)
                .or(() -> RemarkCells.minimum(words))
                .orElse(null);
    }

    /** A minimum order that does not fit the pack costs the row its minimum, until a person says what it is. */
    private void askForMinimum(int row, String pack) {
        Integer column = places.get(Meaning.MINIMUM);
        if (column == null
                || mapping.answer(minimumField(row))
                        .filter(NO_MINIMUM::equalsIgnoreCase)
                        .isPresent()) {
            return;
        }
        ask(Question.of(
                minimumField(row),
                grid.origin(row, column),
                QuestionMessages.whatMinimumOfPack(shortened(at(row, column).text()), pack),
                NO_MINIMUM,
                "1 pack"));
    }

    private @Nullable Bare bare(int row, Meaning meaning) {
        Integer column = places.get(meaning);
        return column == null ? null : bareIn(row, column, meaning);
    }

    private @Nullable Bare bareIn(int row, int column, Meaning meaning) {
        if (at(row, column).isBlank() || isOnRequest(at(row, column))) {
            return null;
        }
        Cell cell = at(row, column);
        if (cell.kind() == Cell.Kind.NUMBER) {
            return new Bare(new BreakText("", formatUnit(cell), false, BreakText.Kind.FROM), cell.number());
        }
        Optional<BreakText> text = BreakText.of(cell.text()).filter(from -> from.kind() != BreakText.Kind.ABOVE);
        if (text.isEmpty()) {
            fault(row, column, RowMessages.quantityNotUnderstood(meaning.word(), shortened(cell.text())));
        }
        return text.map(Bare::of).orElse(null);
    }

    /** A quantity in the unit of the pack; empty if there is none or it is not clear. */
    private Optional<BigDecimal> quantity(
            @Nullable Bare bare,
            ListSense.@Nullable Counted counted,
            Quantity pack,
            @Nullable CurrencyUnit currency,
            Origin origin,
            Consumer<String> doesNotFit) {
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
            doesNotFit.accept(unit.measure().symbol());
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
            fault(row, column, RowMessages.notANumber(meaning.word(), shortened(cell.text())));
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
            LocalDate last = meaning == Meaning.VALID_UNTIL ? lasting(row, cell.text()) : null;
            if (last != null) {
                return last;
            }
            fault(row, column, RowMessages.notADate(meaning.word(), shortened(cell.text())));
        }
        if (read.isPresent() && read.get().isRough()) {
            LocalDate day = meaning == Meaning.VALID_UNTIL
                    ? read.get().last()
                    : read.get().day();
            findings.note(grid.origin(row, column), RowMessages.roughDate(shortened(cell.text()), String.valueOf(day)));
            return day;
        }
        return read.map(ListDates.Read::day).orElse(null);
    }

    /** The last day of prices that hold for so long: {@code 30 days}, from the row's own day or the list's. */
    private @Nullable LocalDate lasting(int row, String text) {
        LocalDate quoted = places.containsKey(Meaning.QUOTED_ON) ? date(row, Meaning.QUOTED_ON) : null;
        LocalDate first = quoted == null ? facts.quotedOn() : quoted;
        return first == null
                ? null
                : ValidityText.duration("valid " + text).map(first::plus).orElse(null);
    }

    /** A text cut short enough for a message. */
    public static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 57) + "…";
    }
}
