package perkilo.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.StringJoiner;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import perkilo.origin.Day;
import perkilo.origin.Decimals;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/**
 * A figure that a cell computes: its current value, and the formula that computes the same value in an office suite.
 *
 * <p>Formulas use only plain arithmetic and functions that every office suite computes alike: SUM, SUMIF, SUMPRODUCT,
 * COUNTA, COUNTIF, ROUND, ROUNDUP, ROUNDDOWN, MAX, MIN, IF, IFERROR, ISNUMBER, DATE, and CELL for whether a cell shows
 * per cents.
 *
 * <p>No formula gives an error value, whatever a person types: a person's cell that no longer holds a number counts as
 * it did before, and a division by zero gives zero. The sheet of inputs says so.
 */
public sealed interface Expr {

    /** What a number in a cell of per cents is multiplied by, unless its format shows it as per cents. */
    BigDecimal HUNDREDTH = new BigDecimal("0.01");

    /** The engine's decimal. */
    BigDecimal value();

    /**
     * The formula, without its equals sign.
     *
     * @param names maps the name that a result sheet was built with to its final name
     */
    String formula(UnaryOperator<String> names);

    /** Whether the formula refers to any cell; a plain number is written as a number. */
    default boolean isLive() {
        return true;
    }

    /** The same figure without references to the person's own cells; their values become plain numbers. */
    Expr alone();

    /** Gives every cell that the formula refers to. */
    default void cells(Consumer<Cell> to) {}

    /**
     * The precedence of the outermost operator: 1 for a sum, 2 for a product, 3 for an expression that needs no
     * brackets.
     */
    default int binding() {
        return 3;
    }

    /** A plain number. */
    static Expr of(BigDecimal value) {
        return new Plain(value);
    }

    /** A plain number. */
    static Expr of(long value) {
        return new Plain(BigDecimal.valueOf(value));
    }

    /** A day, to be compared with other days. */
    static Expr day(LocalDate day) {
        return new Date(day);
    }

    /**
     * A day that a person typed. Refers to its cell if a formula can; the formula is zero if the cell no longer holds a
     * date.
     */
    static Expr input(Day day) {
        Origin origin = day.origin();
        return day.isLive() && origin.isKnown()
                ? new TypedDay(new Cell(origin.sheet(), origin.cell(), false, new Date(day.date()).value()), day.date())
                : day(day.date());
    }

    /**
     * A figure that a person typed. Refers to its cell if a formula can, and is a plain number otherwise. While the
     * cell holds no number, the figure stays what it was; a number that is typed into it later counts.
     */
    static Expr input(Figure figure) {
        BigDecimal perCell = figure.perCell();
        if (perCell == null || !figure.origin().isKnown()) {
            return new Plain(figure.value());
        }
        Cell cell = new Cell(figure.origin().sheet(), figure.origin().cell(), false, divide(figure.value(), perCell));
        return new IfNumber(cell, scaled(cell, perCell, figure.value()), figure.value());
    }

    private static Expr scaled(Cell cell, BigDecimal perCell, BigDecimal value) {
        if (perCell.compareTo(BigDecimal.ONE) == 0) {
            return cell;
        }
        return perCell.compareTo(HUNDREDTH) == 0 ? new PerCent(cell, value) : new Scaled(cell, perCell, value);
    }

    /** A number typed on a result sheet: zero if the cell holds words. */
    static Expr typed(Expr cell) {
        return writtenHere(cell.value(), names -> {
            String typed = cell.formula(names);
            return "IF(ISNUMBER(" + typed + ")," + typed + ",0)";
        });
    }

    /**
     * A formula in other words than those of this class.
     *
     * @param value what it computes
     * @param formula the formula, from the final names of result sheets, without its equals sign
     */
    static Expr written(BigDecimal value, Function<UnaryOperator<String>, String> formula) {
        return new Written(value, false, formula);
    }

    /** The same for a formula that refers to cells of result sheets only. */
    static Expr writtenHere(BigDecimal value, Function<UnaryOperator<String>, String> formula) {
        return new Written(value, true, formula);
    }

    /**
     * A cell of a result sheet.
     *
     * @param sheet the name that the sheet was built with
     * @param cell such as {@code C4}
     * @param value what the cell computes
     */
    static Expr cell(String sheet, String cell, BigDecimal value) {
        return new Cell(sheet, cell, true, value);
    }

    /**
     * The sum of a rectangle of cells of a result sheet.
     *
     * @param sheet the name that the sheet was built with
     * @param range such as {@code C4:C9}
     * @param value what the cells add up to
     */
    static Expr sumOf(String sheet, String range, BigDecimal value) {
        return new OverRange("SUM", sheet, range, value);
    }

    /**
     * The lowest number in a rectangle of cells of a result sheet.
     *
     * @param sheet the name that the sheet was built with
     * @param range such as {@code C4:C9}
     * @param value the lowest of them; zero if there is no number
     */
    static Expr lowestOf(String sheet, String range, BigDecimal value) {
        return new OverRange("MIN", sheet, range, value);
    }

    /**
     * The sum of those cells in a column of a result sheet that have a given word beside them.
     *
     * @param sheet the name that the sheet was built with
     * @param words the cells that may hold the word, such as {@code A4:A90}
     * @param word the word
     * @param range the cells to add up, such as {@code C4:C90}
     * @param value what the cells add up to
     */
    static Expr sumWhere(String sheet, String words, String word, String range, BigDecimal value) {
        return new SumWhere(sheet, words, word, range, value);
    }

    /** The sum of several. */
    static Expr sum(List<? extends Expr> terms) {
        return terms.stream().map(Expr.class::cast).reduce(Expr::plus).orElse(of(0));
    }

    /** The sum of two. */
    default Expr plus(Expr other) {
        return new Binary(this, "+", other, value().add(other.value()));
    }

    /** The difference of two. */
    default Expr minus(Expr other) {
        return new Binary(this, "-", other, value().subtract(other.value()));
    }

    /** The product of two. */
    default Expr times(Expr other) {
        return new Binary(this, "*", other, value().multiply(other.value()));
    }

    /** This divided by another, to 34 significant digits; zero while a formula divides by zero. */
    default Expr over(Expr other) {
        Expr divided = new Binary(this, "/", other, divide(value(), other.value()));
        return other.isLive() ? new Call("IFERROR", List.of(divided, of(0)), divided.value()) : divided;
    }

    /** Rounded half up. */
    default Expr rounded(int digits) {
        return new Call("ROUND", List.of(this, of(digits)), value().setScale(digits, RoundingMode.HALF_UP));
    }

    /**
     * The number rounded up to a whole number.
     *
     * @param exact the result, computed exactly; in the formula, binary fractions are rounded to nine decimals first
     */
    default Expr roundedUp(BigDecimal exact) {
        Expr cleaned = new Call("ROUND", List.of(this, of(9)), value());
        return new Call("ROUNDUP", List.of(cleaned, of(0)), exact);
    }

    /**
     * The number rounded up to a tenth.
     *
     * @param exact the result, computed exactly
     */
    default Expr roundedUpToTenth(BigDecimal exact) {
        Expr cleaned = new Call("ROUND", List.of(this, of(9)), value());
        return new Call("ROUNDUP", List.of(cleaned, of(1)), exact);
    }

    /** The larger of two. */
    default Expr max(Expr other) {
        return new Call("MAX", List.of(this, other), value().max(other.value()));
    }

    /** The smaller of two. */
    default Expr min(Expr other) {
        return new Call("MIN", List.of(this, other), value().min(other.value()));
    }

    /** One figure if {@code left < right}, and another otherwise. */
    static Expr ifLess(Expr left, Expr right, Expr then, Expr otherwise) {
        return choose(left, "<", right, left.value().compareTo(right.value()) < 0, then, otherwise);
    }

    /** One figure if {@code left >= right}, and another otherwise. */
    static Expr ifAtLeast(Expr left, Expr right, Expr then, Expr otherwise) {
        return choose(left, ">=", right, left.value().compareTo(right.value()) >= 0, then, otherwise);
    }

    /** One if two figures differ by more than the error of binary fractions, and zero if they do not. */
    static Expr differs(Expr one, Expr other) {
        Expr apart = one.minus(other).rounded(9);
        return choose(apart, "=", of(0), apart.value().signum() == 0, of(0), of(1));
    }

    private static Expr choose(Expr left, String sign, Expr right, boolean holds, Expr then, Expr otherwise) {
        return new Choice(left, sign, right, then, otherwise, (holds ? then : otherwise).value());
    }

    private static BigDecimal divide(BigDecimal dividend, BigDecimal divisor) {
        return dividend.divide(divisor, MathContext.DECIMAL128);
    }

    /** A plain number. */
    record Plain(BigDecimal value) implements Expr {

        @Override
        public String formula(UnaryOperator<String> names) {
            String plain = Decimals.plain(value);
            return plain.startsWith("-") ? "(" + plain + ")" : plain;
        }

        @Override
        public Expr alone() {
            return this;
        }

        @Override
        public boolean isLive() {
            return false;
        }
    }

    /** A day, written as a formula because workbooks differ in the day that they count from. */
    record Date(LocalDate day) implements Expr {

        /** In the usual count of days, 1 March 1900 is day 61. */
        private static final LocalDate ZERO = LocalDate.of(1899, 12, 30);

        @Override
        public BigDecimal value() {
            return BigDecimal.valueOf(ChronoUnit.DAYS.between(ZERO, day));
        }

        @Override
        public String formula(UnaryOperator<String> names) {
            return "DATE(" + day.getYear() + "," + day.getMonthValue() + "," + day.getDayOfMonth() + ")";
        }

        @Override
        public Expr alone() {
            return this;
        }
    }

    /** A person's cell that holds a day; its time of day is ignored. */
    record TypedDay(Cell cell, LocalDate day) implements Expr {

        @Override
        public BigDecimal value() {
            return cell.value();
        }

        @Override
        public String formula(UnaryOperator<String> names) {
            String typed = cell.formula(names);
            return "IF(ISNUMBER(" + typed + "),ROUNDDOWN(" + typed + ",0),0)";
        }

        @Override
        public Expr alone() {
            return new Date(day);
        }

        @Override
        public void cells(Consumer<Cell> to) {
            to.accept(cell);
        }
    }

    /** One cell; {@code ours} is true for a cell of a result sheet, false for a person's cell. */
    record Cell(String sheet, String cell, boolean ours, BigDecimal value) implements Expr {

        @Override
        public String formula(UnaryOperator<String> names) {
            return SheetNames.quoted(ours ? names.apply(sheet) : sheet) + "!" + cell;
        }

        @Override
        public Expr alone() {
            return ours ? this : new Plain(value);
        }

        @Override
        public void cells(Consumer<Cell> to) {
            to.accept(this);
        }
    }

    /** The number in a person's cell, or a substitute while the cell holds none. */
    record IfNumber(Cell cell, Expr number, BigDecimal value) implements Expr {

        @Override
        public String formula(UnaryOperator<String> names) {
            return "IF(ISNUMBER(" + cell.formula(names) + ")," + number.formula(names) + "," + Decimals.plain(value)
                    + ")";
        }

        @Override
        public Expr alone() {
            return new Plain(value);
        }

        @Override
        public void cells(Consumer<Cell> to) {
            to.accept(cell);
        }
    }

    /** A person's cell of per cents: 2.5, or 0.025 in a format that shows 2.5 %. */
    record PerCent(Cell cell, BigDecimal value) implements Expr {

        @Override
        public String formula(UnaryOperator<String> names) {
            String typed = cell.formula(names);
            return typed + "/IF(LEFT(CELL(\"format\"," + typed + "))=\"P\",1,100)";
        }

        @Override
        public Expr alone() {
            return new Plain(value);
        }

        @Override
        public int binding() {
            return 2;
        }
    }

    /** A formula in other words; {@code ours} is true if it refers to no cell of a person. */
    record Written(BigDecimal value, boolean ours, Function<UnaryOperator<String>, String> words) implements Expr {

        @Override
        public String formula(UnaryOperator<String> names) {
            return words.apply(names);
        }

        @Override
        public Expr alone() {
            return ours ? this : new Plain(value);
        }
    }

    /** A person's cell times the factor that makes it the value: 0.01 for a percentage typed as 2.5. */
    record Scaled(Expr cell, BigDecimal perCell, BigDecimal value) implements Expr {

        @Override
        public String formula(UnaryOperator<String> names) {
            BigDecimal inverse = divide(BigDecimal.ONE, perCell);
            boolean wholeInverse = inverse.stripTrailingZeros().scale() <= 0;
            return cell.formula(names) + (wholeInverse ? "/" + Decimals.plain(inverse) : "*" + Decimals.plain(perCell));
        }

        @Override
        public Expr alone() {
            return new Plain(value);
        }

        @Override
        public int binding() {
            return 2;
        }
    }

    /** A function of a rectangle of cells. */
    record OverRange(String function, String sheet, String range, BigDecimal value) implements Expr {

        @Override
        public String formula(UnaryOperator<String> names) {
            return function + "(" + SheetNames.quoted(names.apply(sheet)) + "!" + range + ")";
        }

        @Override
        public Expr alone() {
            return this;
        }
    }

    /** The sum of the cells that have a word beside them. */
    record SumWhere(String sheet, String words, String word, String range, BigDecimal value) implements Expr {

        @Override
        public String formula(UnaryOperator<String> names) {
            String in = SheetNames.quoted(names.apply(sheet)) + "!";
            return "SUMIF(" + in + words + ",\"" + word + "\"," + in + range + ")";
        }

        @Override
        public Expr alone() {
            return this;
        }
    }

    /** Two figures with an operator between them. */
    record Binary(Expr left, String sign, Expr right, BigDecimal value) implements Expr {

        @Override
        public String formula(UnaryOperator<String> names) {
            boolean keepOrder = sign.equals("-") || sign.equals("/");
            return bracketed(left, names, left.binding() < binding())
                    + sign
                    + bracketed(
                            right, names, right.binding() < binding() || (keepOrder && right.binding() == binding()));
        }

        private static String bracketed(Expr part, UnaryOperator<String> names, boolean brackets) {
            String formula = part.formula(names);
            return brackets ? "(" + formula + ")" : formula;
        }

        @Override
        public Expr alone() {
            return new Binary(left.alone(), sign, right.alone(), value);
        }

        @Override
        public boolean isLive() {
            return left.isLive() || right.isLive();
        }

        @Override
        public int binding() {
            return sign.equals("+") || sign.equals("-") ? 1 : 2;
        }

        @Override
        public void cells(Consumer<Cell> to) {
            left.cells(to);
            right.cells(to);
        }
    }

    /** A function of a spreadsheet. */
    record Call(String function, List<Expr> arguments, BigDecimal value) implements Expr {

        public Call {
            arguments = List.copyOf(arguments);
        }

        @Override
        public String formula(UnaryOperator<String> names) {
            StringJoiner formula = new StringJoiner(",", function + "(", ")");
            for (Expr argument : arguments) {
                formula.add(argument.formula(names));
            }
            return formula.toString();
        }

        @Override
        public Expr alone() {
            return new Call(function, arguments.stream().map(Expr::alone).toList(), value);
        }

        @Override
        public boolean isLive() {
            for (Expr argument : arguments) {
                if (argument.isLive()) {
                    return true;
                }
            }
            return false;
        }

        @Override
        public void cells(Consumer<Cell> to) {
            for (Expr argument : arguments) {
                argument.cells(to);
            }
        }
    }

    /** One of two figures, chosen by a comparison. */
    record Choice(Expr left, String sign, Expr right, Expr then, Expr otherwise, BigDecimal value) implements Expr {

        @Override
        public String formula(UnaryOperator<String> names) {
            return "IF(" + left.formula(names) + sign + right.formula(names) + "," + then.formula(names) + ","
                    + otherwise.formula(names) + ")";
        }

        @Override
        public Expr alone() {
            return new Choice(left.alone(), sign, right.alone(), then.alone(), otherwise.alone(), value);
        }

        @Override
        public boolean isLive() {
            return left.isLive() || right.isLive() || then.isLive() || otherwise.isLive();
        }

        @Override
        public void cells(Consumer<Cell> to) {
            left.cells(to);
            right.cells(to);
            then.cells(to);
            otherwise.cells(to);
        }
    }
}
