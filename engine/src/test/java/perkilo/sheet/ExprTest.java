package perkilo.sheet;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.origin.Decimals;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/** A figure and its formula have the same value: the formula is computed by Apache POI's evaluator. */
final class ExprTest {

    private static final Map<String, BinaryOperator<Expr>> OPERATORS =
            Map.of("+", Expr::plus, "-", Expr::minus, "*", Expr::times, "/", Expr::over);

    private final Sheets sheets = new Sheets();

    static Stream<Arguments> operators() {
        return OPERATORS.keySet().stream()
                .sorted()
                .flatMap(outer -> OPERATORS.keySet().stream().sorted().map(inner -> Arguments.of(outer, inner)));
    }

    /** 7, 5 and 3 with any two signs, bracketed to the left and to the right. */
    @ParameterizedTest(name = "{0} of {1}")
    @MethodSource("operators")
    void brackets_are_where_they_are_needed(String outer, String inner) {
        BinaryOperator<Expr> out = requireNonNull(OPERATORS.get(outer));
        BinaryOperator<Expr> in = requireNonNull(OPERATORS.get(inner));
        Expr seven = typed("A1", "7");
        Expr five = typed("A2", "5");
        Expr three = typed("A3", "3");

        same(out.apply(in.apply(seven, five), three), spelled("((7" + inner + "5)" + outer + "3)"));
        same(out.apply(seven, in.apply(five, three)), spelled("(7" + outer + "(5" + inner + "3))"));
    }

    /** A percentage typed as 2.5 next to any operator: its own division must not change the order of operations. */
    @ParameterizedTest
    @ValueSource(strings = {"+", "-", "*", "/"})
    void a_percentage_stays_in_its_place(String sign) {
        BinaryOperator<Expr> operator = requireNonNull(OPERATORS.get(sign));
        Expr percent = percent("B1", "2.5");
        Expr eight = typed("A1", "8");

        same(operator.apply(eight, percent), spelled("8" + sign + "0.025"));
        same(operator.apply(percent, eight), spelled("0.025" + sign + "8"));
        same(operator.apply(percent, percent), spelled("0.025" + sign + "0.025"));
    }

    @ParameterizedTest(name = "a cell that counts {0}: {1}")
    @CsvSource(
            delimiter = ';',
            value = {
                "1; 'Offers'!C4",
                "0.01; 'Offers'!C4/IF(LEFT(CELL(\"format\",'Offers'!C4))=\"P\",1,100)",
                "0.001; 'Offers'!C4/1000",
                "1000; 'Offers'!C4*1000",
                "0.45359237; 'Offers'!C4*0.45359237"
            },
            quoteCharacter = '`')
    void a_cell_is_scaled_to_what_it_means(BigDecimal perCell, String formula) {
        sheets.type("Offers", "C4", new BigDecimal("12.5"));
        BigDecimal value = new BigDecimal("12.5").multiply(perCell);
        Expr expr = Expr.input(new Figure(value, new Origin("book.xlsx", "Offers", "C4"), perCell));

        assertThat(formula(expr)).isEqualTo("IF(ISNUMBER('Offers'!C4)," + formula + "," + Decimals.plain(value) + ")");
        assertThat(expr.value()).isEqualByComparingTo(value);
        assertThat(expr.isLive()).isTrue();
        assertThat(sheets.compute(expr)).isCloseTo(value.doubleValue(), within(1e-12));
        sheets.type("Offers", "C4", "ask");
        assertThat(sheets.compute(expr)).isCloseTo(value.doubleValue(), within(1e-12));
    }

    @Test
    void a_formula_that_divides_by_zero_gives_zero() {
        sheets.type("Offers", "C4", BigDecimal.ONE);
        Expr one = Expr.input(new Figure(BigDecimal.ONE, new Origin("book.xlsx", "Offers", "C4"), BigDecimal.ONE));
        assertThat(sheets.compute(Expr.of(3).over(one))).isEqualTo(3);
        sheets.type("Offers", "C4", BigDecimal.ZERO);
        assertThat(sheets.compute(Expr.of(3).over(one))).isZero();
    }

    /** A cell with words, or an empty cell with a default: a number counts as soon as it is typed. */
    @ParameterizedTest
    @CsvSource({"WORDS, 0.05, 0.01", "WORDS, 0, 1", "NOTHING, 1, 1", "NOTHING, 0, 0.01"})
    void a_number_counts_once_it_is_typed(Figure.Held held, BigDecimal value, BigDecimal perCell) {
        Expr expr = Expr.input(new Figure(value, new Origin("book.xlsx", "Offers", "C4"), perCell, held));

        sheets.type("Offers", "D4", BigDecimal.ONE);
        assertThat(sheets.compute(expr)).isEqualTo(value.doubleValue());
        assertThat(sheets.compute(Expr.of(2).minus(expr))).isEqualTo(2 - value.doubleValue());
        sheets.type("Offers", "C4", "n/a");
        assertThat(sheets.compute(expr)).isEqualTo(value.doubleValue());
        sheets.type("Offers", "C4", new BigDecimal("7.5"));
        assertThat(sheets.compute(expr)).isCloseTo(7.5 * perCell.doubleValue(), within(1e-12));
        assertThat(formula(expr).startsWith("IF(ISNUMBER(")).isTrue();
        assertThat(formula(expr.alone())).isEqualTo(Decimals.plain(value));
    }

    @Test
    void words_in_a_cell_count_as_what_they_say() {
        sheets.type("Offers", "C4", "8,90 €");
        Origin cell = new Origin("book.xlsx", "Offers", "C4");
        Expr expr = Expr.input(new Figure(new BigDecimal("8.9"), cell, BigDecimal.ONE, Figure.Held.WORDS));
        assertThat(sheets.compute(expr)).isEqualTo(8.9);
    }

    @Test
    void what_no_cell_holds_is_written_as_a_number() {
        Expr none = Expr.input(Figure.of("12.50"));
        Expr elsewhere = Expr.input(new Figure(new BigDecimal("3"), new Origin("prices.csv", "", "line 4"), null));

        assertThat(formula(none)).isEqualTo("12.5");
        assertThat(none.isLive()).isFalse();
        assertThat(formula(elsewhere)).isEqualTo("3");
        assertThat(none.plus(elsewhere).isLive()).isFalse();
        assertThat(none.plus(typed("A1", "1")).isLive()).isTrue();
    }

    /** 5 − −3 and 5 × −3: two signs are never side by side. */
    @Test
    void a_negative_number_stands_in_brackets() {
        same(typed("A1", "5").minus(Expr.of(-3)), 8);
        same(typed("A1", "5").times(Expr.of(-3)), -15);
        same(Expr.of(-3).minus(Expr.of(-4)), 1);
        assertThat(formula(Expr.of(5).minus(Expr.of(-3)))).isEqualTo("5-(-3)");
    }

    @ParameterizedTest(name = "{0} to {1} decimals: {2}")
    @CsvSource({
        "2.345, 2, 2.35",
        "2.3449, 2, 2.34",
        "1234.5, 0, 1235",
        "-2.345, 2, -2.35",
        "1250, -2, 1300",
        "0.125, 2, 0.13"
    })
    void rounding_is_half_up_away_from_zero(String number, int digits, double rounded) {
        same(typed("A1", number).rounded(digits), rounded);
    }

    /** In binary fractions 0.1 × 3 / 0.1 is slightly more than 3, and 0.7 × 100 slightly less than 70. */
    @Test
    void rounding_up_is_not_deceived_by_binary_fractions() {
        Expr three = typed("A1", "0.1").times(Expr.of(3)).over(typed("A2", "0.1"));
        Expr hundredSeven = typed("A3", "1.07").times(Expr.of(100));

        same(three.roundedUp(new BigDecimal("3")), 3);
        same(hundredSeven.roundedUp(new BigDecimal("107")), 107);
        same(typed("A4", "342.99").roundedUp(new BigDecimal("343")), 343);
    }

    @Test
    void choices_and_extremes() {
        Expr two = typed("A1", "2");
        Expr nine = typed("A2", "9");

        same(two.max(nine), 9);
        same(two.min(nine), 2);
        same(Expr.ifLess(two, nine, Expr.of(1), Expr.of(0)), 1);
        same(Expr.ifLess(nine, nine, Expr.of(1), Expr.of(0)), 0);
        same(Expr.ifAtLeast(nine, nine, Expr.of(1), Expr.of(0)), 1);
        same(Expr.ifAtLeast(two, nine, Expr.of(1), Expr.of(0)), 0);
        same(Expr.ifLess(two.plus(nine), nine.minus(two), two, nine).times(Expr.of(10)), 90);
        same(Expr.sum(List.of(two, nine, Expr.of(4))), 15);
        same(Expr.sum(List.of()), 0);
    }

    @Test
    void a_sum_of_cells() {
        sheets.type("Costs", "C4", new BigDecimal("1.5"));
        sheets.type("Costs", "C5", new BigDecimal("2.5"));

        same(Expr.of(10).minus(Expr.sumOf("Costs", "C4:C5", new BigDecimal("4"))), 6);
    }

    /** A result sheet gets another name than it was built with if a sheet of the person has that name. */
    @Test
    void a_result_sheet_s_cell_follows_its_final_name_and_a_person_s_does_not() {
        Expr ours = Expr.cell("Costs", "B2", BigDecimal.ONE);
        Expr theirs = Expr.input(new Figure(BigDecimal.ONE, new Origin("b.xlsx", "Costs", "B2"), BigDecimal.ONE));

        assertThat(ours.formula(name -> name + " 2")).isEqualTo("'Costs 2'!B2");
        assertThat(Expr.sumOf("Costs", "B2:B3", BigDecimal.ONE).formula(name -> name + " 2"))
                .isEqualTo("SUM('Costs 2'!B2:B3)");
        assertThat(theirs.formula(name -> name + " 2")).isEqualTo("IF(ISNUMBER('Costs'!B2),'Costs'!B2,1)");
    }

    /** Workbooks count days from 1900 or from 1904; a plain number would be another day in one of them. */
    @Test
    void a_day_is_a_formula_and_no_plain_number() {
        Expr day = Expr.day(LocalDate.of(2026, 11, 20));

        assertThat(formula(day)).isEqualTo("DATE(2026,11,20)");
        same(day, spelled("DATE(2026,11,20)"));
    }

    private Expr typed(String cell, String number) {
        return typed(cell, number, BigDecimal.ONE);
    }

    private Expr percent(String cell, String number) {
        return typed(cell, number, new BigDecimal("0.01"));
    }

    private Expr typed(String cell, String number, BigDecimal perCell) {
        BigDecimal inCell = new BigDecimal(number);
        sheets.type("Inputs", cell, inCell);
        return Expr.input(new Figure(inCell.multiply(perCell), new Origin("book.xlsx", "Inputs", cell), perCell));
    }

    /** The value of a formula of plain numbers with all brackets. */
    private double spelled(String formula) {
        return sheets.compute(formula);
    }

    private void same(Expr expr, double expected) {
        assertThat(expr.value().doubleValue()).as("value of %s", formula(expr)).isCloseTo(expected, within(1e-12));
        assertThat(sheets.compute(expr)).as("formula %s", formula(expr)).isCloseTo(expected, within(1e-12));
    }

    private static String formula(Expr expr) {
        return expr.formula(name -> name);
    }
}
