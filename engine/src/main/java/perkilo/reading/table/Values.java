package perkilo.reading.table;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.schema.InputColumn;
import perkilo.schema.Limits;
import perkilo.schema.ValueKind;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;

/** The value of one cell, in the form that its column needs. */
final class Values {

    private static final Set<String> DASHES = Set.of("-", "–", "—", "n/a", "N/A", "n.a.", "na", "NA");

    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");

    private final FoundTable table;
    private final InputColumn column;
    private final Cell cell;
    private final String headerUnit;
    private final Origin origin;
    private final boolean live;
    private final NumberMarks marks;
    private final Findings findings;

    Values(
            FoundTable table,
            InputColumn column,
            Cell cell,
            String headerUnit,
            Origin origin,
            boolean live,
            NumberMarks marks,
            Findings findings) {
        this.table = table;
        this.column = column;
        this.cell = cell;
        this.headerUnit = headerUnit;
        this.origin = origin;
        this.live = live;
        this.marks = marks;
        this.findings = findings;
    }

    /** Whether a cell holds a dash, or words such as n/a, in place of a value. */
    static boolean isDash(Cell cell) {
        return cell.kind() == Cell.Kind.TEXT && DASHES.contains(cell.text());
    }

    /** The column in a message. */
    private String called() {
        return table.called(column);
    }

    /** The day; null where the cell is blank or was reported. */
    @Nullable LocalDate date() {
        if (cell.kind() == Cell.Kind.DATE) {
            return cell.date();
        }
        if (cell.isBlank() || isDash(cell)) {
            return null;
        }
        if (cell.kind() == Cell.Kind.ERROR) {
            return noDay(CellMessages.fault(called(), cell.text()));
        }
        DateText text = DateText.parse(cell.text());
        if (cell.kind() == Cell.Kind.TEXT && text instanceof DateText.Parsed parsed) {
            return parsed.day();
        }
        if (text instanceof DateText.Ambiguous two) {
            return noDay(CellMessages.twoDates(called(), cell.text(), two.one(), two.other()));
        }
        return noDay(CellMessages.notADate(called(), cell.text()));
    }

    /** The number; null where the cell is blank or was reported. */
    @Nullable Amount amount() {
        if (cell.isBlank() || isDash(cell)) {
            return null;
        }
        return switch (cell.kind()) {
            case ERROR -> wrong(CellMessages.fault(called(), cell.text()));
            case DATE -> wrong(CellMessages.dateForNumber(called(), cell.text()));
            case NUMBER -> typed();
            default -> fromText();
        };
    }

    private @Nullable Amount typed() {
        BigDecimal number = cell.number();
        if (number == null) {
            throw new AssertionError(cell);
        }
        boolean percent = cell.isPercentFormat();
        if (percent && !column.kind().isPercent()) {
            return wrong(CellMessages.percentage(called(), expected()));
        }
        UnitText shown = percent || column.kind().isPercent() ? UnitText.NONE : FormatUnit.of(cell.format());
        if (contradictsHeader(shown)) {
            return wrong(CellMessages.otherFormat(called(), shown.words(), headerUnit));
        }
        BigDecimal factor =
                factor(shown.measure() == null ? "" : shown.measure().symbol(), percent);
        if (factor == null) {
            return null;
        }
        CurrencySign format = column.kind() == ValueKind.MONEY
                ? CurrencySign.ofFormat(cell.format()).orElse(null)
                : null;
        return checked(number, factor, live ? factor : null, Figure.Held.NUMBER, UnitText.NONE, shown, format);
    }

    /** Asks which number is meant, once for a column. */
    private @Nullable Amount twoNumbers(NumberText.Ambiguous two) {
        if (!marks.isFirst(column)) {
            return null;
        }
        String one = CellMessages.twoNumbers(called(), cell.text(), two.large(), tidy(two.small()));
        int others = marks.doubtful(column) - 1;
        return wrong(others > 0 ? CellMessages.alsoOthers(one, others) : one);
    }

    /** Whether a number format shows another unit than the header says. */
    private boolean contradictsHeader(UnitText shown) {
        if (shown.equals(UnitText.NONE) || headerUnit.isEmpty()) {
            return false;
        }
        UnitText header = UnitText.parse(headerUnit).orElse(UnitText.NONE);
        boolean said = header.measure() != null || header.pack();
        boolean same = header.measure() == shown.measure()
                && header.pack() == shown.pack()
                && header.count().compareTo(shown.count()) == 0;
        return said && !same;
    }

    private @Nullable Amount fromText() {
        NumberText text = NumberText.parse(cell.text());
        if (text instanceof NumberText.NotANumber && column.kind() == ValueKind.MONEY) {
            text = MoneyText.parse(cell.text());
        }
        if (text instanceof NumberText.Ambiguous two) {
            BigDecimal meant = marks.meant(column, cell.text(), two);
            if (meant == null) {
                return twoNumbers(two);
            }
            text = new NumberText.Parsed(meant, two.words());
        }
        if (!(text instanceof NumberText.Parsed parsed)) {
            return wrong(CellMessages.notANumber(called(), cell.text(), numberWords(), column.example()));
        }
        UnitText beside = UnitText.NONE;
        if (!parsed.words().isEmpty() && column.unit().isEmpty()) {
            beside = UnitText.parse(parsed.words()).orElse(null);
            if (beside == null && column.kind() == ValueKind.QUANTITY) {
                beside = PackWords.without(parsed.words())
                        .flatMap(UnitText::parse)
                        .orElse(null);
            }
            if (beside == null || !fits(beside)) {
                return wrong(
                        CellMessages.unknownWords(called(), cell.text(), parsed.words(), expected(), column.example()));
            }
        }
        BigDecimal factor = factor(parsed.words(), false);
        BigDecimal perCell = live ? perNumber() : null;
        return factor == null
                ? null
                : checked(parsed.value(), factor, perCell, Figure.Held.WORDS, beside, UnitText.NONE, null);
    }

    /**
     * The factor for a number that is typed into the cell later.
     *
     * @return null if it is unknown; for a percentage that of a plain number, because a formula asks for the cell's
     *     format
     */
    @Nullable BigDecimal perNumber() {
        if (column.kind().isPercent()) {
            return HUNDREDTH;
        }
        if (column.unit().isEmpty()) {
            return pieces(headerUnit);
        }
        return headerUnit.isEmpty()
                ? BigDecimal.ONE
                : FixedUnit.factor(column.unit(), headerUnit).orElse(null);
    }

    /** The factor that converts the number to the column's own unit; null if its unit was reported. */
    private @Nullable BigDecimal factor(String besideWords, boolean percentFormat) {
        if (column.kind().isPercent()) {
            boolean other =
                    !besideWords.isEmpty() && FixedUnit.factor("%", besideWords).isEmpty();
            if (other) {
                return noFactor(CellMessages.notAPercentage(called(), cell.text()));
            }
            return percentFormat ? BigDecimal.ONE : HUNDREDTH;
        }
        String words = besideWords.isEmpty() ? headerUnit : besideWords;
        if (column.unit().isEmpty()) {
            return pieces(words);
        }
        if (words.isEmpty()) {
            return BigDecimal.ONE;
        }
        BigDecimal known = FixedUnit.factor(column.unit(), words).orElse(null);
        return known != null ? known : noFactor(CellMessages.otherUnit(called(), words, column.unit()));
    }

    /** The factor that converts a number to pieces: 144 for {@code 5 gross}. */
    private BigDecimal pieces(String words) {
        if (words.isEmpty() || !(column.kind() == ValueKind.WHOLE || column.kind() == ValueKind.NUMBER)) {
            return BigDecimal.ONE;
        }
        Measure measure = UnitText.parse(words)
                .filter(UnitText::isOne)
                .map(UnitText::measure)
                .orElse(null);
        return measure != null && measure.isCount() ? measure.inBase() : BigDecimal.ONE;
    }

    private @Nullable Amount checked(
            BigDecimal number,
            BigDecimal factor,
            @Nullable BigDecimal perCell,
            Figure.Held held,
            UnitText beside,
            UnitText shown,
            @Nullable CurrencySign format) {
        BigDecimal value = number.multiply(factor);
        BigDecimal typed = column.kind().isPercent() ? value.movePointRight(2) : value;
        if (column.kind() == ValueKind.WHOLE && typed.stripTrailingZeros().scale() > 0) {
            return wrong(CellMessages.notWhole(called(), shown(typed)));
        }
        if (!column.limits().allow(typed)) {
            String least = column.kind() == ValueKind.WHOLE && column.limits() == Limits.ONE_OR_MORE
                    ? "a whole number of 1 or more"
                    : column.limits().words();
            return wrong(CellMessages.outside(called(), shown(typed), least));
        }
        UnitText header = column.unit().isEmpty() ? UnitText.parse(headerUnit).orElse(UnitText.NONE) : UnitText.NONE;
        boolean said = header.measure() != null || header.pack();
        UnitText unit =
                said || shown.equals(UnitText.NONE) || !column.unit().isEmpty() ? header : shown.in(header.currency());
        return new Amount(new Figure(value, origin, perCell, held), beside, unit, format);
    }

    private boolean fits(UnitText beside) {
        return switch (column.kind()) {
            case MONEY -> !beside.isBareNumberWord();
            case QUANTITY -> beside.currency() == null && !beside.pack() && beside.isOne();
            case WHOLE, NUMBER -> beside.currency() == null && !beside.pack() && isCount(beside);
            default -> false;
        };
    }

    private static boolean isCount(UnitText beside) {
        return beside.measure() == null || (beside.measure().isCount() && beside.isOne());
    }

    private String expected() {
        String unit = column.unit().isEmpty() ? "" : " in " + column.unit();
        return column.kind().words() + (column.kind().isPercent() ? "" : unit);
    }

    private String numberWords() {
        return column.kind().isPercent() ? column.kind().words() : "a number";
    }

    private String shown(BigDecimal typed) {
        return cell.kind() == Cell.Kind.TEXT
                ? "\"" + cell.text() + "\""
                : tidy(typed).toPlainString() + (column.kind().isPercent() ? " %" : "");
    }

    private static BigDecimal tidy(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private @Nullable Amount wrong(String message) {
        findings.error(origin, message);
        return null;
    }

    private @Nullable LocalDate noDay(String message) {
        wrong(message);
        return null;
    }

    private @Nullable BigDecimal noFactor(String message) {
        wrong(message);
        return null;
    }
}
