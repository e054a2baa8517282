package perkilo.reading;

import java.math.BigDecimal;
import java.util.List;
import perkilo.model.Formula;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;

/** Whether a formula adds up to 100 %. */
final class FormulaBalance {

    private FormulaBalance() {}

    /** Reports what does not add up; a formula with a line that was reported already is let pass. */
    static void check(Formula formula, List<TableRow> rows, Findings findings) {
        List<Formula.Line> balances =
                formula.lines().stream().filter(Formula.Line::isBalance).toList();
        for (Formula.Line second : balances.subList(Math.min(1, balances.size()), balances.size())) {
            findings.error(
                    second.origin(),
                    "a second q.s. line, the first is in %s; only one can take the balance"
                            .formatted(balances.get(0).origin().where()));
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
            findings.error(
                    line.origin(),
                    "the other lines of \"%s\" already add up to %s %%, so nothing is left for q.s."
                            .formatted(formula.name(), Percents.words(sum)));
        }
    }

    private static void unbalanced(Formula formula, List<TableRow> rows, BigDecimal sum, Findings findings) {
        if (FormulaFractions.of(formula, rows).addUp()) {
            findings.error(
                    formula.origin(),
                    "\"%s\" sums to %s %%; are these fractions? Format the cells as percentages, or type 2.5 for 2.5 %%"
                            .formatted(formula.name(), Percents.words(sum)));
            return;
        }
        BigDecimal difference = sum.subtract(BigDecimal.ONE);
        findings.error(
                formula.origin(),
                "\"%s\" sums to %s %%, %s %% too %s; expected 100 %%"
                        .formatted(
                                formula.name(),
                                Percents.words(sum),
                                Percents.words(difference.abs()),
                                difference.signum() > 0 ? "much" : "little"));
    }
}
