package perkilo.layouts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import perkilo.reading.table.Findings;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * Cells of columns that hold remarks, read one by one: price breaks and minimum orders in words are used, and a person
 * is asked about others that look like prices.
 */
final class RemarkCells {

    private static final Pattern MINIMUM = Pattern.compile(
            "(?iu)(?:min\\.?|m[ií]n\\.?|mind\\.?|mindestens|mindestabnahme|mindestmenge|minimum|minimo|m[ií]nimo|min\\.? order|moq"
                    + "|at least|au moins|qt[ée] mini|almeno|al menos):?\\s+(\\d.*)");
    private static final Pattern PRICE = Pattern.compile(
            "(?:[€£$¥]|\\b(?:EUR|USD|GBP|CHF)\\b)\\s?\\d|\\d[\\d.,'’]*\\s?(?:[€£$¥]|(?:EUR|USD|GBP|CHF)\\b)");
    private static final String TEXTS = "texts in ";
    private static final String WITHOUT = "leave these texts out";
    private static final int LONGEST = 200;
    private static final int NAMED = 4;

    private final ListColumns columns;
    private final Grid grid;
    private final Mapping mapping;
    private final Map<Integer, List<String>> doubtful = new LinkedHashMap<>();
    private final Map<Integer, Integer> first = new LinkedHashMap<>();
    private final Map<Integer, List<String>> unpriced = new LinkedHashMap<>();
    private final Map<Integer, Integer> firstUnpriced = new LinkedHashMap<>();

    RemarkCells(ListColumns columns, Mapping mapping) {
        this.columns = columns;
        this.grid = columns.layout().grid();
        this.mapping = mapping;
    }

    /** How the field of a question about such texts begins. */
    static String beginning() {
        return TEXTS;
    }

    /**
     * A price break in words.
     *
     * @param column of the cell
     * @param broken what it says
     */
    record Said(int column, BreakPrices broken) {}

    /** The price breaks that the remarks of a row hold. */
    List<Said> breaks(Map<Integer, Cell> row) {
        List<Said> all = new ArrayList<>();
        row.forEach((column, cell) -> {
            if (isRemark(column, cell)) {
                BreakPrices.inWords(cell.text())
                        .ifPresent(breaks -> breaks.forEach(one -> all.add(new Said(column, one))));
            }
        });
        return all;
    }

    /** The minimum order that the remarks of a row hold, by its column. */
    Optional<Map.Entry<Integer, BreakText>> minimum(Map<Integer, Cell> row) {
        for (Map.Entry<Integer, Cell> cell : row.entrySet()) {
            if (isRemark(cell.getKey(), cell.getValue())) {
                Optional<BreakText> said = minimum(cell.getValue().text()).filter(BreakText::saysUnit);
                if (said.isPresent()) {
                    return Optional.of(Map.entry(cell.getKey(), said.get()));
                }
            }
        }
        return Optional.empty();
    }

    /** The quantity after a word for a minimum: {@code mín. 2 garrafas}. */
    static Optional<BreakText> minimum(String text) {
        Matcher words = MINIMUM.matcher(ListWords.tidy(text));
        return words.matches() ? BreakText.of(words.group(1)) : Optional.empty();
    }

    /** Notes the remarks of a row that look like prices and are not understood. */
    void doubt(int rowNumber, Map<Integer, Cell> row) {
        row.forEach((column, cell) -> {
            boolean looks = isRemark(column, cell) && PRICE.matcher(cell.text()).find();
            if (looks && BreakPrices.inWords(cell.text()).isEmpty()) {
                first.putIfAbsent(column, rowNumber);
                doubtful.computeIfAbsent(column, any -> new ArrayList<>())
                        .add("\"" + ListRows.shortened(cell.text()) + "\" ("
                                + grid.origin(rowNumber, column).cell() + ")");
            }
        });
    }

    /** Notes the remarks of a row that name a price break without its price. */
    void noteUnpriced(int rowNumber, Map<Integer, Cell> row) {
        row.forEach((column, cell) -> {
            if (isRemark(column, cell)
                    && minimum(cell.text()).isEmpty()
                    && BreakPrices.inWords(cell.text()).isEmpty()
                    && UnpricedBreak.is(cell.text())) {
                firstUnpriced.putIfAbsent(column, rowNumber);
                unpriced.computeIfAbsent(column, any -> new ArrayList<>())
                        .add("\"" + ListRows.shortened(cell.text()) + "\" ("
                                + grid.origin(rowNumber, column).cell() + ")");
            }
        });
    }

    /** Asks about such remarks, once for each column; says which a person leaves out, and which lack a price. */
    void report(Consumer<Question> ask, Findings findings) {
        unpriced.forEach((column, texts) -> {
            List<String> some = texts.subList(0, Math.min(NAMED, texts.size()));
            findings.warning(
                    grid.origin(firstUnpriced.getOrDefault(column, 0), column),
                    RowMessages.breaksWithoutPrice(some, texts.size() - some.size()));
        });
        doubtful.forEach((column, texts) -> {
            String header = columns.layout().headers().getOrDefault(column, "");
            String field = TEXTS + "\"" + header + "\"";
            List<String> some = texts.subList(0, Math.min(NAMED, texts.size()));
            var where = grid.origin(first.getOrDefault(column, 0), column);
            if (mapping.answer(field).filter(WITHOUT::equalsIgnoreCase).isPresent()) {
                findings.warning(where, RowMessages.textsLeftOut(header, some, texts.size() - some.size()));
            } else {
                ask.accept(Question.of(
                        field,
                        where,
                        QuestionMessages.textsLikePrices(header, some, texts.size() - some.size()),
                        WITHOUT));
            }
        });
    }

    /** Whether a cell is of a column that is not used, of which neither its header nor a person says what it holds. */
    private boolean isRemark(int column, Cell cell) {
        if (cell.kind() != Cell.Kind.TEXT
                || cell.text().length() > LONGEST
                || columns.layout().pairs().containsValue(column)) {
            return false;
        }
        ColumnUse use = columns.uses().get(column);
        if (use != null) {
            return use.meaning() == Meaning.MINIMUM
                    && BreakText.of(cell.text()).isEmpty()
                    && minimum(cell.text()).isEmpty();
        }
        String header = columns.layout().headers().getOrDefault(column, "");
        HeaderReading reading = columns.layout().readings().get(column);
        boolean asked = reading != null && reading.doubt() != HeaderReading.Doubt.NONE;
        return !asked
                && mapping.column(header).isEmpty()
                && !ListWords.header(header).filter("old price"::equals).isPresent();
    }
}
