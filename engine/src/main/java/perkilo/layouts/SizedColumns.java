package perkilo.layouts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;

/**
 * Columns of prices that are each headed by a quantity alone, such as {@code 5 kg}, {@code 25 kg} and {@code 190 kg}.
 * They can be packs, or the quantities that prices begin at; what the list holds tells which, or one question does.
 */
final class SizedColumns {

    static final String PACKS = "packs";
    static final String BREAKS = "breaks";

    private static final int LEAST = 2;

    /** How many choices such a column has: a break, a pack, nothing. */
    private static final int CHOICES = 3;

    /** What packs of cosmetic materials usually hold, in kg or L; common practice, no source. */
    private static final Set<String> USUAL = Set.of(
            "0.1", "0.25", "0.5", "1", "2", "2.5", "4", "5", "10", "15", "16", "18", "20", "25", "30", "40", "50", "60",
            "100", "120", "200", "800", "900", "950", "1000");

    /** What drums hold, where no price begins: no round number, no number of sacks; common practice, no source. */
    private static final Set<String> FILLINGS = Set.of(
            "160", "165", "170", "180", "185", "190", "195", "205", "208", "209", "210", "212", "215", "216", "220",
            "230");

    private final ListColumns columns;
    private final List<Integer> sized;

    private SizedColumns(ListColumns columns, List<Integer> sized) {
        this.columns = columns;
        this.sized = sized;
    }

    /** The columns, from left to right; none if there are fewer than two. */
    static SizedColumns of(ListColumns columns, Mapping mapping) {
        List<Integer> sized = new ArrayList<>();
        columns.layout().headers().forEach((column, header) -> {
            HeaderReading reading = columns.layout().readings().get(column);
            boolean doubtful = reading != null
                    && reading.doubt() == HeaderReading.Doubt.QUANTITY
                    && reading.choices().size() == CHOICES;
            if (doubtful && mapping.column(header).isEmpty() && !columns.uses().containsKey(column)) {
                sized.add(column);
            }
        });
        return new SizedColumns(columns, sized.size() < LEAST ? List.of() : sized);
    }

    List<Integer> columns() {
        return sized;
    }

    List<String> headers() {
        return sized.stream()
                .map(column -> columns.layout().headers().getOrDefault(column, ""))
                .toList();
    }

    /** What a column is used for if an answer holds; empty if the answer is not understood. */
    Optional<ColumnUse> use(int column, String answer) {
        HeaderReading reading = columns.layout().readings().get(column);
        if (reading == null) {
            return Optional.empty();
        }
        String words = answer.strip();
        if (words.equalsIgnoreCase(PACKS)) {
            return ColumnUse.parse(reading.choices().get(1), reading.note());
        }
        if (words.equalsIgnoreCase(BREAKS)) {
            return ColumnUse.parse(reading.choices().get(0), reading.note());
        }
        return words.equalsIgnoreCase(Meaning.NOTHING.word())
                ? Optional.of(ColumnUse.of(Meaning.NOTHING))
                : Optional.empty();
    }

    /**
     * Whether the columns can only be packs: no other column and no name holds a pack, and the prices are said to be
     * for packs, grow with the size, or one of the sizes is a drum's.
     */
    boolean arePacks() {
        boolean alone = columns.of(Meaning.PACK).isEmpty()
                && columns.of(Meaning.FROM).isEmpty()
                && columns.prices().isEmpty();
        List<Quantity> sizes = new ArrayList<>();
        for (int column : sized) {
            Quantity size = size(column);
            if (size == null) {
                return false;
            }
            sizes.add(size);
        }
        if (!alone || sizes.isEmpty() || namesHoldPacks()) {
            return false;
        }
        boolean usual = sizes.stream().allMatch(size -> holds(USUAL, size) || holds(FILLINGS, size));
        boolean drum = usual && sizes.stream().anyMatch(size -> holds(FILLINGS, size));
        return drum || sized.stream().allMatch(column -> columns.note(column).pack()) || pricesGrow(sizes);
    }

    private @Nullable Quantity size(int column) {
        HeaderReading reading = columns.layout().readings().get(column);
        String words = reading == null ? "" : reading.choices().get(1).substring("price of ".length());
        return PackText.of(words, DecimalMark.UNKNOWN, null)
                .map(PackText::content)
                .orElse(null);
    }

    private static boolean holds(Set<String> sizes, Quantity size) {
        boolean weighed = size.measure() == Measure.KG || size.measure() == Measure.L;
        return weighed && sizes.contains(Quantity.plain(size.amount()));
    }

    private boolean namesHoldPacks() {
        Integer item = columns.of(Meaning.ITEM).orElse(null);
        if (item == null) {
            return false;
        }
        for (int row : columns.layout().rows()) {
            if (PackInName.of(columns.layout().grid().at(row, item).text(), DecimalMark.UNKNOWN)
                    .isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** Whether every price of a larger size is higher; a price for one kg would fall. */
    private boolean pricesGrow(List<Quantity> sizes) {
        int compared = 0;
        for (int row : columns.layout().rows()) {
            BigDecimal before = null;
            BigDecimal small = null;
            for (int at = 0; at < sized.size(); at++) {
                BigDecimal price = price(columns.layout().grid().at(row, sized.get(at)));
                BigDecimal size = sizes.get(at).in(sizes.get(0).measure()).orElse(null);
                if (size == null) {
                    return false;
                }
                if (price == null) {
                    continue;
                }
                if (before != null && small != null) {
                    if (size.compareTo(small) <= 0 || price.compareTo(before) <= 0) {
                        return false;
                    }
                    compared++;
                }
                before = price;
                small = size;
            }
        }
        return compared >= LEAST;
    }

    private static @Nullable BigDecimal price(Cell cell) {
        if (cell.kind() == Cell.Kind.NUMBER) {
            return cell.number();
        }
        return cell.kind() == Cell.Kind.TEXT
                ? NumberWords.of(cell.text())
                        .flatMap(parts -> DecimalMark.UNKNOWN.number(parts.digits()))
                        .orElse(null)
                : null;
    }
}
