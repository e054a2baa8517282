package perkilo.layouts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * What is true of a whole list: its decimal mark, and whether its breaks count packs. A person's answer goes first;
 * without one the list's own figures decide, if they leave no doubt.
 *
 * @param mark the decimal mark
 * @param marks that of columns that differ from the rest
 * @param breaksIn what bare breaks count; null if there are none
 * @param minimumsIn what bare minimum orders count; null if there are none
 * @param questions what the figures leave open
 */
public record ListSense(
        DecimalMark mark,
        Map<Integer, DecimalMark> marks,
        @Nullable Counted breaksIn,
        @Nullable Counted minimumsIn,
        List<Question> questions) {

    /** What a bare quantity counts. */
    public record Counted(boolean packs, @Nullable Quantity unit) {

        static final Counted PACKS = new Counted(true, null);
        private static final Counted PACK_UNIT = new Counted(false, null);

        static Optional<Counted> parse(String words) {
            if (words.strip().equalsIgnoreCase("pack unit")) {
                return Optional.of(PACK_UNIT);
            }
            if (ListWords.is("container", words)) {
                return Optional.of(PACKS);
            }
            return Quantity.unit(words).map(unit -> new Counted(false, unit));
        }
    }

    /** Whether a decimal mark is asked about, for the list or for some of its columns. */
    boolean asksForMarks() {
        return questions.stream().anyMatch(question -> question.field().startsWith(Mapping.DECIMALS));
    }

    /** The decimal mark of a column. */
    DecimalMark markIn(int column) {
        return marks.isEmpty() ? mark : marks.getOrDefault(column, mark);
    }

    /** What follows from a list's figures and a person's answers. */
    public static ListSense of(ListColumns columns, Mapping mapping) {
        return new Looking(columns, mapping).sense();
    }

    /** One list while it is looked at. */
    private static final class Looking {

        private final ListColumns columns;
        private final Mapping mapping;
        private final Grid grid;
        private final List<Question> questions = new ArrayList<>();
        private final Map<Integer, DecimalMark> marks = new HashMap<>();
        private DecimalMark mark = DecimalMark.UNKNOWN;

        private Looking(ListColumns columns, Mapping mapping) {
            this.columns = columns;
            this.mapping = mapping;
            this.grid = columns.layout().grid();
        }

        private ListSense sense() {
            mark = mark();
            Counted breaks = counted(Mapping.BREAKS_IN, Meaning.FROM, "From quantity", bareBreaks());
            Counted minimums = counted(Mapping.MINIMUMS_IN, Meaning.MINIMUM, "Minimum order", List.of());
            return new ListSense(mark, marks, breaks, minimums, questions);
        }

        private DecimalMark mark() {
            Optional<DecimalMark> said = mapping.answer(Mapping.DECIMALS).flatMap(DecimalMark::of);
            if (said.isPresent()) {
                return said.get();
            }
            List<Integer> figures = columns.uses().entrySet().stream()
                    .filter(use -> isFigure(use.getValue().meaning()))
                    .map(Map.Entry::getKey)
                    .toList();
            Map<Integer, Shown> shown = shown(figures);
            for (Map.Entry<Integer, ColumnUse> price : columns.prices().entrySet()) {
                BreakText from = price.getValue().from();
                if (from != null && DecimalMark.isAmbiguous(from.digits())) {
                    shown.computeIfAbsent(price.getKey(), column -> new Shown())
                            .doubt(
                                    grid.origin(columns.layout().lastHeader(), price.getKey()),
                                    from.digits(),
                                    from.digits());
                }
            }
            Set<DecimalMark> all = EnumSet.noneOf(DecimalMark.class);
            shown.values().forEach(one -> all.addAll(one.marks));
            if (all.size() == 1) {
                return all.iterator().next();
            }
            List<Integer> doubtful = new ArrayList<>();
            shown.forEach((column, one) -> {
                if (one.marks.size() == 1) {
                    marks.put(column, one.marks.iterator().next());
                } else if (one.doubtful != null) {
                    doubtful.add(column);
                }
            });
            if (doubtful.isEmpty()) {
                return DecimalMark.UNKNOWN;
            }
            DecimalMark others = all.isEmpty() ? inOtherColumns(figures) : DecimalMark.UNKNOWN;
            if (others != DecimalMark.UNKNOWN) {
                return others;
            }
            boolean commas = doubtful.stream().noneMatch(column -> Objects.requireNonNull(shown.get(column)).pointed);
            if (commas && all.isEmpty() && HeaderLanguage.writesDecimalCommas(columns.layout())) {
                return DecimalMark.COMMA;
            }
            boolean one = all.isEmpty() || doubtful.size() == 1;
            for (int column : one ? doubtful.subList(0, 1) : doubtful) {
                ask(column, Objects.requireNonNull(shown.get(column)), one);
            }
            return DecimalMark.UNKNOWN;
        }

        private void ask(int column, Shown shown, boolean one) {
            String field = Mapping.decimalsIn(columns.layout().headers().getOrDefault(column, ""));
            Optional<DecimalMark> said = mapping.answer(field).flatMap(DecimalMark::of);
            if (said.isPresent()) {
                marks.put(column, said.get());
                return;
            }
            Question question = Question.decimals(Objects.requireNonNull(shown.doubtful), shown.text, shown.digits);
            questions.add(
                    one ? question : new Question(field, "", question.where(), question.text(), question.choices()));
        }

        /** What the texts of one column show of its decimal mark. */
        private static final class Shown {

            private final Set<DecimalMark> marks = EnumSet.noneOf(DecimalMark.class);
            private @Nullable Origin doubtful;
            private String text = "";
            private String digits = "";
            private boolean pointed;

            private void doubt(Origin origin, String inText, String inDigits) {
                pointed |= inDigits.indexOf(',') < 0;
                if (doubtful == null) {
                    doubtful = origin;
                    text = inText;
                    digits = inDigits;
                }
            }
        }

        private Map<Integer, Shown> shown(List<Integer> figures) {
            Map<Integer, Shown> shown = new LinkedHashMap<>();
            BitSet looked = new BitSet();
            figures.forEach(looked::set);
            for (int row : rows()) {
                if (!grid.rows().mayHoldWords(row, looked)) {
                    continue;
                }
                for (int column : figures) {
                    Cell cell = grid.at(row, column);
                    if (cell.kind() != Cell.Kind.TEXT) {
                        continue;
                    }
                    for (String part : BreakPrices.parts(cell.text())) {
                        String digits =
                                NumberWords.of(part).map(NumberWords::digits).orElse("");
                        look(shown.computeIfAbsent(column, any -> new Shown()), cell, digits, row, column);
                    }
                }
            }
            return shown;
        }

        private void look(Shown shown, Cell cell, String digits, int row, int column) {
            DecimalMark mark = DecimalMark.shownBy(digits);
            if (mark != DecimalMark.UNKNOWN) {
                shown.marks.add(mark);
            } else if (DecimalMark.isAmbiguous(digits) && (shown.doubtful == null || !shown.pointed)) {
                shown.doubt(grid.origin(row, column), cell.text(), digits);
            }
        }

        /** The mark that all plain numbers of the other columns show; those are densities, contents and the like. */
        private DecimalMark inOtherColumns(List<Integer> figures) {
            Set<DecimalMark> shown = EnumSet.noneOf(DecimalMark.class);
            for (int row : rows()) {
                grid.row(row).forEach((column, cell) -> {
                    if (!figures.contains(column) && cell.kind() == Cell.Kind.TEXT && isPlain(cell.text())) {
                        shown.add(DecimalMark.shownBy(cell.text()));
                    }
                });
            }
            shown.remove(DecimalMark.UNKNOWN);
            return shown.size() == 1 ? shown.iterator().next() : DecimalMark.UNKNOWN;
        }

        private static boolean isPlain(String text) {
            int marks = 0;
            for (int at = 0; at < text.length(); at++) {
                char letter = text.charAt(at);
                boolean isMark = letter == '.' || letter == ',';
                if (!isMark && !Character.isDigit(letter)) {
                    return false;
                }
                marks += isMark ? 1 : 0;
            }
            return marks == 1;
        }

        private static boolean isFigure(Meaning meaning) {
            return meaning == Meaning.PRICE
                    || meaning == Meaning.PACK
                    || meaning == Meaning.FROM
                    || meaning == Meaning.MINIMUM;
        }

        private int[] rows() {
            return columns.layout().rows();
        }

        /** Breaks in the headers that don't say what they count. */
        private List<BreakText> bareBreaks() {
            return columns.prices().values().stream()
                    .flatMap(use -> Optional.ofNullable(use.from()).stream())
                    .filter(from -> !from.saysUnit())
                    .toList();
        }

        private @Nullable Counted counted(String field, Meaning meaning, String ours, List<BreakText> inHeaders) {
            Integer column = columns.of(meaning).orElse(null);
            boolean breaks = field.equals(Mapping.BREAKS_IN);
            if (column == null && !breaks) {
                return null;
            }
            Optional<Counted> said = mapping.answer(field).flatMap(Counted::parse);
            if (said.isPresent()) {
                return said.get();
            }
            if (column != null) {
                PriceNote header = columns.note(column);
                if (ListWords.key(columns.layout().headers().getOrDefault(column, ""))
                        .equals(ListWords.key(ours))) {
                    return Counted.PACK_UNIT;
                }
                if (header.saysWhatFor()) {
                    return header.pack() ? Counted.PACKS : new Counted(false, header.per());
                }
            }
            return byFigures(field, all(meaning), inHeaders);
        }

        private List<Integer> all(Meaning meaning) {
            return columns.uses().entrySet().stream()
                    .filter(use -> use.getValue().meaning() == meaning)
                    .map(Map.Entry::getKey)
                    .toList();
        }

        /** A break below one pack can only count packs; without such a break, a person has to say. */
        private @Nullable Counted byFigures(String field, List<Integer> figures, List<BreakText> inHeaders) {
            Origin asked = null;
            String example = "";
            Integer pack = columns.of(Meaning.PACK).orElse(null);
            Function<Integer, Optional<PackText>> packs = packs(pack);
            List<BigDecimal> above = inHeaders.stream()
                    .flatMap(from -> from.quantity(mark).stream())
                    .filter(quantity -> quantity.compareTo(BigDecimal.ONE) > 0)
                    .toList();
            BitSet looked = new BitSet();
            columns.prices().keySet().forEach(looked::set);
            for (int row : rows()) {
                List<BigDecimal> quantities = new ArrayList<>(above);
                for (int column : figures) {
                    bare(grid.at(row, column)).ifPresent(quantities::add);
                }
                if (field.equals(Mapping.BREAKS_IN) && grid.rows().mayHoldWords(row, looked)) {
                    columns.prices().keySet().forEach(column -> quantities.addAll(inPrice(grid.at(row, column))));
                }
                Optional<PackText> text = quantities.isEmpty() ? Optional.empty() : packs.apply(row);
                if (text.isEmpty()) {
                    continue;
                }
                if (asked == null && quantities.size() > above.size()) {
                    asked = grid.origin(
                            row,
                            figures.isEmpty()
                                    ? columns.prices().keySet().iterator().next()
                                    : figures.get(0));
                    example = Quantity.plain(quantities.get(above.size()));
                }
                BigDecimal content = text.get().content().amount();
                if (quantities.stream()
                        .anyMatch(quantity ->
                                quantity.compareTo(BigDecimal.ONE) > 0 && quantity.compareTo(content) < 0)) {
                    return Counted.PACKS;
                }
            }
            if (!above.isEmpty() && asked == null) {
                asked = grid.origin(
                        columns.layout().lastHeader(),
                        columns.prices().keySet().iterator().next());
            }
            if (asked != null) {
                String quantity = example.isEmpty() ? Quantity.plain(above.get(0)) : example;
                questions.add(Question.of(
                        field,
                        asked,
                        field.equals(Mapping.MINIMUMS_IN)
                                ? QuestionMessages.whatMinimumsCount(quantity)
                                : QuestionMessages.whatBreaksCount(quantity),
                        "packs",
                        "pack unit",
                        "a unit such as kg"));
            }
            return null;
        }

        /** The quantities above one without a unit in a cell of several prices: {@code 1–29: 12.50 / 30+: 11.80}. */
        private List<BigDecimal> inPrice(Cell cell) {
            if (cell.kind() != Cell.Kind.TEXT || !BreakPrices.mayBe(cell.text())) {
                return List.of();
            }
            return BreakPrices.of(cell.text()).orElse(List.of()).stream()
                    .flatMap(price -> Optional.ofNullable(price.from()).stream())
                    .filter(from -> !from.saysUnit())
                    .flatMap(from -> from.quantity(mark).stream())
                    .filter(quantity -> quantity.compareTo(BigDecimal.ONE) > 0)
                    .toList();
        }

        private Function<Integer, Optional<PackText>> packs(@Nullable Integer pack) {
            if (pack == null) {
                Integer item = columns.of(Meaning.ITEM).orElse(null);
                return row -> item == null
                        ? Optional.empty()
                        : PackInName.of(grid.at(row, item).text(), mark).map(PackInName::pack);
            }
            Quantity unit = columns.note(pack).per();
            Integer units = columns.of(Meaning.PACK_UNIT).orElse(null);
            return row -> {
                Quantity own = units == null
                        ? null
                        : Quantity.unit(grid.at(row, units).text()).orElse(null);
                return PackText.of(grid.at(row, pack).text(), mark, own == null ? unit : own);
            };
        }

        /** A quantity above one without a unit. */
        private Optional<BigDecimal> bare(Cell cell) {
            Optional<BigDecimal> number = cell.kind() == Cell.Kind.NUMBER
                    ? Optional.ofNullable(cell.number())
                    : BreakText.of(cell.text()).filter(from -> !from.saysUnit()).flatMap(from -> from.quantity(mark));
            return number.filter(quantity -> quantity.compareTo(BigDecimal.ONE) > 0);
        }
    }
}
