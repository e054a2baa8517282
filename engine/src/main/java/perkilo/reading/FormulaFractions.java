package perkilo.reading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Formula;
import perkilo.origin.Figure;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;
import perkilo.schema.FormulaSheet;

/**
 * Whether the levels of a formula look like fractions: 0.1 typed where 10 % is meant, which would be read as 0.1 %.
 *
 * @param bare levels of lines whose cells hold plain numbers above zero, as they are read
 * @param said levels of lines whose cells say that they are in per cent, by their format or a sign
 */
record FormulaFractions(List<Figure> bare, List<Figure> said) {

    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");

    /** How far fractions may be from a whole; they were often rounded to full per cents. */
    private static final BigDecimal ROUGHLY = new BigDecimal("0.05");

    /**
     * One plain number below 1 beside q.s. may well be a preservative in water. Two may still be a preservative and a
     * chelator, but deserve a warning: if they are fractions, the cost is a hundredth of the right one.
     */
    private static final int FEWEST = 2;

    /** A smaller sum of typed levels is unlikely in either reading. */
    private static final BigDecimal LEAST_SUM = new BigDecimal("0.02");

    FormulaFractions {
        bare = List.copyOf(bare);
        said = List.copyOf(said);
    }

    /**
     * The levels of a formula.
     *
     * @param rows those of its lines, one each
     */
    static FormulaFractions of(Formula formula, List<TableRow> rows) {
        List<Figure> bare = new ArrayList<>();
        List<Figure> said = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Figure level = formula.lines().get(i).level();
            if (level != null && level.value().signum() > 0) {
                (rows.get(i).isBareNumber(FormulaSheet.LEVEL_OF) ? bare : said).add(level);
            }
        }
        return new FormulaFractions(bare, said);
    }

    /** Whether the levels add up to about 100 % if the plain numbers are fractions. */
    boolean addUp() {
        return !bare.isEmpty()
                && bare.stream().allMatch(level -> level.value().compareTo(HUNDREDTH) <= 0)
                && sum().subtract(BigDecimal.ONE).abs().compareTo(ROUGHLY) <= 0;
    }

    /** Warns where the levels beside a q.s. line look like fractions. */
    void warnBesideBalance(Findings findings) {
        if (!mayBeFractions()) {
            return;
        }
        Figure first = bare.get(0);
        String read = Percents.words(first.value());
        String meant = Percents.words(first.value().movePointRight(2));
        findings.warning(
                first.origin(),
                said.isEmpty()
                        ? FormulaMessages.fractionsBesideBalance(read, meant, others())
                        : FormulaMessages.fractionsBesidePercent(
                                read,
                                meant,
                                others(),
                                said.get(0).origin().where(),
                                Percents.words(said.get(0).value())));
    }

    /** Beside levels in per cent, a single plain number is suspicious. */
    private boolean mayBeFractions() {
        boolean below =
                !bare.isEmpty() && bare.stream().allMatch(level -> level.value().compareTo(HUNDREDTH) < 0);
        if (!below || sum().compareTo(BigDecimal.ONE) > 0) {
            return false;
        }
        return !said.isEmpty() || (bare.size() >= FEWEST && sum().compareTo(LEAST_SUM) >= 0);
    }

    /** The sum of the levels if the plain numbers are fractions. */
    private BigDecimal sum() {
        BigDecimal sum = BigDecimal.ZERO;
        for (Figure level : bare) {
            sum = sum.add(level.value().movePointRight(2));
        }
        for (Figure level : said) {
            sum = sum.add(level.value());
        }
        return sum;
    }

    /** The cells of the other plain numbers. */
    private List<String> others() {
        return bare.stream().skip(1).map(level -> level.origin().where()).toList();
    }
}
