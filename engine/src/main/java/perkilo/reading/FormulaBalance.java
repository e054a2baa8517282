package perkilo.reading;

import java.math.BigDecimal;
import java.util.List;
import perkilo.model.Formula;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;

/** Whether a formula adds up to 100 %. */
final class FormulaBalance {

    private FormulaBalance() {}

    /** Reports a formula that does not add up; one with a line that was reported already is skipped. */
    static void check(Formula formula, List<TableRow> rows, Findings findings) {
        List<Formula.Line> balances =
                formula.lines().stream().filter(Formula.Line::isBalance).toList();
        for (Formula.Line second : balances.subList(Math.min(1, balances.size()), balances.size())) {
            findings.error(
                    second.origin(),
                    FormulaMessages.secondBalance(balances.get(0).origin().where()));
        }
        if (formula.lines().size() < rows.size() || balances.size() > 1) {
            return;
        }
        BigDecimal sum = formula.stated();
        if (!balances.isEmpty()) {
            balance(formula, balances.get(0), sum, findings);
            FormulaFractions.of(formula, rows).warnBesideBalance(findings);
        } else if (sum.subtract(BigDecimal.ONE).abs().compareTo(Formula.TOLERANCE) > 0) {
            unbalanced(formula, rows, sum, findings);
        }
    }

    private static void balance(Formula formula, Formula.Line line, BigDecimal sum, Findings findings) {
        if (sum.compareTo(BigDecimal.ONE) > 0) {
            findings.error(line.origin(), FormulaMessages.nothingLeft(formula.name(), Percents.words(sum)));
        }
    }

    private static void unbalanced(Formula formula, List<TableRow> rows, BigDecimal sum, Findings findings) {
        if (FormulaFractions.of(formula, rows).addUp()) {
            findings.error(formula.origin(), FormulaMessages.fractions(formula.name(), Percents.words(sum)));
            return;
        }
        BigDecimal difference = sum.subtract(BigDecimal.ONE);
        String by = Percents.words(difference.abs());
        findings.error(
                formula.origin(),
                difference.signum() > 0
                        ? FormulaMessages.tooMuch(formula.name(), Percents.words(sum), by)
                        : FormulaMessages.tooLittle(formula.name(), Percents.words(sum), by));
    }
}
