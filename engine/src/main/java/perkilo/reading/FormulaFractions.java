package perkilo.reading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import perkilo.model.Formula;
import perkilo.origin.Figure;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;
import perkilo.schema.FormulaSheet;

/**
 * Whether the levels of a formula look like fractions: 0.1 typed where 10 % is meant, which would be read as 0.1 %.
 *
 * @param bare levels of lines whose cells hold mere numbers above zero, as they are read
 * @param said levels of lines whose cells say that they are in per cent, by their format or a sign
 */
record FormulaFractions(List<Figure> bare, List<Figure> said) {

    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");

    /** How far fractions may be from a whole; they were often rounded to full per cents. */
    private static final BigDecimal ROUGHLY = new BigDecimal("0.05");

    /**
     * One mere number below 1 beside q.s. is a preservative in water as likely as not; two may still be one with a
     * chelator, which is worth a look, as the cost would be a hundredth of what it is.
     */
    private static final int FEWEST = 2;

    /** Less than this is next to nothing for a formula's typed levels, read in either way. */
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

    /** Whether the levels would add up to about 100 %, were the mere numbers fractions. */
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
                "%s is read as %s %%%s%s; are these fractions? Format the cells as percentages, or type %s for %s %%"
                        .formatted(read, read, others(), beside(), meant, meant));
    }

    /** Beside levels that say they are in per cent, a single mere number is odd enough. */
    private boolean mayBeFractions() {
        boolean below =
                !bare.isEmpty() && bare.stream().allMatch(level -> level.value().compareTo(HUNDREDTH) < 0);
        if (!below || sum().compareTo(BigDecimal.ONE) > 0) {
            return false;
        }
        return !said.isEmpty() || (bare.size() >= FEWEST && sum().compareTo(LEAST_SUM) >= 0);
    }

    /** What the levels add up to, were the mere numbers fractions. */
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

    private String others() {
        return bare.size() == 1
                ? ""
                : ", and so on in "
                        + bare.stream()
                                .skip(1)
                                .map(level -> level.origin().where())
                                .collect(Collectors.joining(", "));
    }

    private String beside() {
        return said.isEmpty()
                ? ""
                : ", but %s says %s %%"
                        .formatted(
                                said.get(0).origin().where(),
                                Percents.words(said.get(0).value()));
    }
}
