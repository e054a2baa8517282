package perkilo.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/**
 * Any combination of figures has a formula with the engine's result: computed by Apache POI's evaluator, within 1e-9 of
 * the largest intermediate figure.
 */
final class ExprProperties {

    private static final Sheets SHEETS = new Sheets();

    @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
    void the_formula_gives_the_value(@ForAll @LongRange(min = 0, max = Long.MAX_VALUE - 1) long seed) {
        Growth growth = new Growth(seed);
        Expr expr = growth.grow(4);

        double value = expr.value().doubleValue();

        assertThat(SHEETS.compute(expr)).as(expr.formula(name -> name)).isCloseTo(value, within(1e-9 * growth.largest));
    }

    /** Combines figures at random, but not at the edges at which a binary fraction is rounded differently. */
    private static final class Growth {
        private static final double CLEAR = 1e-6;

        private final Random random;
        private int cells;
        private double largest = 1;

        Growth(long seed) {
            random = new Random(seed);
        }

        Expr grow(int depth) {
            Expr grown = depth == 0 || random.nextInt(6) == 0 ? leaf() : branch(depth - 1);
            largest = Math.max(largest, Math.abs(grown.value().doubleValue()));
            return grown;
        }

        private Expr leaf() {
            BigDecimal number = decimal();
            cells++;
            return switch (random.nextInt(5)) {
                case 0 -> Expr.of(number);
                case 1 -> ours(number);
                case 2 -> typed(number, BigDecimal.ONE);
                case 3 -> typed(number, new BigDecimal("0.01"));
                default -> range(number);
            };
        }

        private Expr branch(int depth) {
            Expr left = grow(depth);
            Expr right = grow(depth);
            return switch (random.nextInt(10)) {
                case 0, 1 -> left.plus(right);
                case 2, 3 -> left.minus(right);
                case 4 -> left.times(right);
                case 5 -> divided(left, right);
                case 6 -> random.nextBoolean() ? left.max(right) : left.min(right);
                case 7 -> choice(left, right, depth);
                case 8 -> rounded(left);
                default -> roundedUp(left);
            };
        }

        private Expr divided(Expr left, Expr right) {
            return right.value().abs().doubleValue() < 0.1 ? left.plus(right) : left.over(right);
        }

        private Expr choice(Expr left, Expr right, int depth) {
            if (left.value().subtract(right.value()).abs().doubleValue() < CLEAR * largest) {
                return left.plus(right);
            }
            Expr then = grow(depth);
            return random.nextBoolean()
                    ? Expr.ifLess(left, right, then, right)
                    : Expr.ifAtLeast(left, right, then, right);
        }

        private Expr rounded(Expr expr) {
            double cents = Math.abs(expr.value().doubleValue() * 100);
            boolean nearHalf = Math.abs(cents - Math.floor(cents) - 0.5) < CLEAR * largest;
            return nearHalf ? expr : expr.rounded(2);
        }

        private Expr roundedUp(Expr expr) {
            double value = expr.value().doubleValue();
            boolean nearWhole = Math.abs(value - Math.rint(value)) < CLEAR * largest;
            return value < 0 || nearWhole ? expr : expr.roundedUp(expr.value().setScale(0, RoundingMode.CEILING));
        }

        private Expr ours(BigDecimal number) {
            SHEETS.type("Result's sheet", "B" + cells, number);
            return Expr.cell("Result's sheet", "B" + cells, number);
        }

        private Expr typed(BigDecimal inCell, BigDecimal perCell) {
            SHEETS.type("Inputs 2026", "A" + cells, inCell);
            Origin cell = new Origin("book.xlsx", "Inputs 2026", "A" + cells);
            return Expr.input(new Figure(inCell.multiply(perCell), cell, perCell));
        }

        private Expr range(BigDecimal number) {
            BigDecimal other = decimal();
            SHEETS.type("Result's sheet", "D" + 2 * cells, number);
            SHEETS.type("Result's sheet", "D" + (2 * cells + 1), other);
            return Expr.sumOf("Result's sheet", "D%d:D%d".formatted(2 * cells, 2 * cells + 1), number.add(other));
        }

        private BigDecimal decimal() {
            return BigDecimal.valueOf(random.nextInt(60_000) - 10_000L, random.nextInt(4));
        }
    }
}
