package perkilo.reading;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.reading.table.DateText;
import perkilo.reading.table.NumberText;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * The dates and rates of one table. Where a text can mean two days, or two numbers, the other texts of its column
 * decide: a day above 12 tells the order of day and month, and {@code 0,8642} that a comma is a decimal mark.
 */
final class RateCells {

    private static final String DAY_FIRST = "the day comes first";
    private static final String MONTH_FIRST = "the month comes first";
    private static final String POINT = "a point is the decimal mark";
    private static final String COMMA = "a comma is the decimal mark";

    private final Grid grid;
    private final int headerRow;
    private final int lastRow;
    private final int dateColumn;
    private final List<Integer> rateColumns;
    private final RateAnswers answers;
    private DateText.@Nullable Order order;
    private @Nullable Character mark;

    /**
     * The cells below some headers.
     *
     * @param lastRow the last row of the table
     * @param rateColumns columns whose numbers are written alike
     * @param answers for what no cell tells
     */
    RateCells(
            Grid grid,
            int headerRow,
            int lastRow,
            int dateColumn,
            Collection<Integer> rateColumns,
            RateAnswers answers) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.lastRow = lastRow;
        this.dateColumn = dateColumn;
        this.rateColumns = List.copyOf(rateColumns);
        this.answers = answers;
    }

    /** The day in a cell; null if it is none, or can be two. */
    @Nullable LocalDate day(Cell cell) {
        if (cell.date() != null) {
            return cell.date();
        }
        DateText text = DateText.parse(cell.text());
        if (text instanceof DateText.Parsed parsed) {
            return parsed.day();
        }
        if (text instanceof DateText.Ambiguous two) {
            return switch (order()) {
                case DAY_FIRST -> two.one();
                case MONTH_FIRST -> two.other();
                case UNKNOWN -> null;
            };
        }
        return null;
    }

    /** The number in a cell; null if it is none, or can be two. */
    @Nullable BigDecimal number(Cell cell) {
        if (cell.number() != null) {
            return cell.number();
        }
        NumberText text = NumberText.parse(cell.text());
        if (text instanceof NumberText.Parsed parsed && parsed.words().isEmpty()) {
            return parsed.value();
        }
        if (text instanceof NumberText.Ambiguous two && mark() != ' ') {
            return cell.text().indexOf(mark()) >= 0 ? two.small() : two.large();
        }
        return null;
    }

    /** The order of day and month in the column, if all dates that tell it agree. */
    private DateText.Order order() {
        if (order == null) {
            order = DateText.Order.UNKNOWN;
            boolean contradicted = false;
            for (int row : rows()) {
                DateText.Order here = DateText.order(grid.at(row, dateColumn).text());
                contradicted |= here != DateText.Order.UNKNOWN && order != DateText.Order.UNKNOWN && here != order;
                order = here == DateText.Order.UNKNOWN ? order : here;
            }
            order = contradicted || order == DateText.Order.UNKNOWN ? askedOrder() : order;
        }
        return order;
    }

    /** The decimal mark of the columns; a space if no number tells it, or numbers disagree. */
    private char mark() {
        if (mark == null) {
            char found = ' ';
            boolean contradicted = false;
            for (int row : rows()) {
                for (int column : rateColumns) {
                    char here = markOf(grid.at(row, column));
                    contradicted |= here != ' ' && found != ' ' && here != found;
                    found = here == ' ' ? found : here;
                }
            }
            mark = contradicted || found == ' ' ? askedMark() : found;
        }
        return mark;
    }

    private DateText.Order askedOrder() {
        for (int row : rows()) {
            String text = grid.at(row, dateColumn).text();
            if (DateText.parse(text) instanceof DateText.Ambiguous two) {
                RateAnswers.Question question = new RateAnswers.Question(
                        "order of day and month",
                        RateAnswers.formOf(grid, headerRow),
                        grid.origin(row, dateColumn),
                        text,
                        RateTableMessages.whichDay(two.one(), two.other()),
                        List.of(DAY_FIRST, MONTH_FIRST));
                return answers.ask(question, RateCells::orderOf).orElse(DateText.Order.UNKNOWN);
            }
        }
        return DateText.Order.UNKNOWN;
    }

    private static Optional<DateText.Order> orderOf(String answer) {
        return switch (answer.toLowerCase(Locale.ROOT)) {
            case DAY_FIRST -> Optional.of(DateText.Order.DAY_FIRST);
            case MONTH_FIRST -> Optional.of(DateText.Order.MONTH_FIRST);
            default -> Optional.empty();
        };
    }

    private char askedMark() {
        for (int row : rows()) {
            for (int column : rateColumns) {
                String text = grid.at(row, column).text();
                if (NumberText.parse(text) instanceof NumberText.Ambiguous two) {
                    RateAnswers.Question question = new RateAnswers.Question(
                            "decimal mark",
                            RateAnswers.formOf(grid, headerRow),
                            grid.origin(row, column),
                            text,
                            RateTableMessages.whichNumber(two.small(), two.large()),
                            List.of(POINT, COMMA));
                    return answers.ask(question, RateCells::markOf).orElse(' ');
                }
            }
        }
        return ' ';
    }

    private static Optional<Character> markOf(String answer) {
        return switch (answer.toLowerCase(Locale.ROOT)) {
            case POINT -> Optional.of('.');
            case COMMA -> Optional.of(',');
            default -> Optional.empty();
        };
    }

    private int[] rows() {
        return grid.rows().between(headerRow, lastRow + 1);
    }

    private static char markOf(Cell cell) {
        boolean tells = cell.kind() == Cell.Kind.TEXT
                && NumberText.parse(cell.text()) instanceof NumberText.Parsed parsed
                && parsed.value().scale() > 0;
        if (!tells) {
            return ' ';
        }
        return cell.text().lastIndexOf(',') > cell.text().lastIndexOf('.') ? ',' : '.';
    }
}
