package perkilo.layouts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
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
 * @param breaksIn what bare breaks count; null if there are none
 * @param minimumsIn what bare minimum orders count; null if there are none
 * @param questions what the figures leave open
 */
public record ListSense(
        DecimalMark mark,
        @Nullable Counted breaksIn,
        @Nullable Counted minimumsIn,
        List<Question> questions) {

    /** What a bare quantity counts. */
    public record Counted(boolean packs, @Nullable Quantity unit) {

        private static final Counted PACKS = new Counted(true, null);
        private static final Counted PACK_UNIT = new Counted(false, null);

        private static Optional<Counted> parse(String words) {
            if (words.strip().equalsIgnoreCase("pack unit")) {
                return Optional.of(PACK_UNIT);
            }
            if (ListWords.is("container", words)) {
                return Optional.of(PACKS);
            }
            return Quantity.unit(words).map(unit -> new Counted(false, unit));
        }
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
            return new ListSense(mark, breaks, minimums, questions);
        }

        private DecimalMark mark() {
            Optional<DecimalMark> said = mapping.answer(Mapping.DECIMALS).flatMap(DecimalMark::of);
            if (said.isPresent()) {
                return said.get();
            }
            Set<DecimalMark> shown = EnumSet.noneOf(DecimalMark.class);
            Origin doubtful = null;
            String text = "";
            String doubtfulDigits = "";
            List<Integer> figures = columns.uses().entrySet().stream()
                    .filter(use -> isFigure(use.getValue().meaning()))
                    .map(Map.Entry::getKey)
                    .toList();
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
                    String digits =
                            NumberWords.of(cell.text()).map(NumberWords::digits).orElse("");
                    shown.add(DecimalMark.shownBy(digits));
                    if (doubtful == null && DecimalMark.isAmbiguous(digits)) {
                        doubtful = grid.origin(row, column);
                        text = cell.text();
                        doubtfulDigits = digits;
                    }
                }
            }
            for (Map.Entry<Integer, ColumnUse> price : columns.prices().entrySet()) {
                BreakText from = price.getValue().from();
                if (from != null && doubtful == null && DecimalMark.isAmbiguous(from.digits())) {
                    doubtful = grid.origin(columns.layout().lastHeader(), price.getKey());
                    text = from.digits();
                    doubtfulDigits = from.digits();
                }
            }
            shown.remove(DecimalMark.UNKNOWN);
            if (shown.size() == 1) {
                return shown.iterator().next();
            }
            if (doubtful != null) {
                questions.add(Question.decimals(doubtful, text, doubtfulDigits));
            }
            return DecimalMark.UNKNOWN;
        }

        private static boolean isFigure(Meaning meaning) {
            return meaning == Meaning.PRICE
                    || meaning == Meaning.PACK
                    || meaning == Meaning.FROM
                    || meaning == Meaning.MINIMUM;
        }

        private int[] rows() {
            return grid.rows().below(columns.layout().lastHeader());
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
            if (column == null && inHeaders.isEmpty()) {
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
            return byFigures(field, column, inHeaders);
        }

        /** A break below one pack can only count packs; without such a break, a person has to say. */
        private @Nullable Counted byFigures(String field, @Nullable Integer column, List<BreakText> inHeaders) {
            Origin asked = null;
            String example = "";
            Integer pack = columns.of(Meaning.PACK).orElse(null);
            Function<Integer, Optional<PackText>> packs = packs(pack);
            List<BigDecimal> above = inHeaders.stream()
                    .flatMap(from -> from.quantity(mark).stream())
                    .filter(quantity -> quantity.compareTo(BigDecimal.ONE) > 0)
                    .toList();
            for (int row : rows()) {
                Optional<PackText> text = packs.apply(row);
                if (text.isEmpty()) {
                    continue;
                }
                List<BigDecimal> quantities = new ArrayList<>(above);
                if (column != null) {
                    bare(grid.at(row, column)).ifPresent(quantities::add);
                    if (asked == null && !quantities.isEmpty()) {
                        asked = grid.origin(row, column);
                        example = grid.at(row, column).text();
                    }
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

        private Function<Integer, Optional<PackText>> packs(@Nullable Integer pack) {
            if (pack == null) {
                return row -> Optional.empty();
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
