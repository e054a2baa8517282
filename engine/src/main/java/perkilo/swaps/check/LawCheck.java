package perkilo.swaps.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import perkilo.model.Material;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.law.Law;
import perkilo.swaps.law.Ruling;
import perkilo.swaps.law.StateOfLaw;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.TrialWords;

/** Limits of the law, once for each group of substances, and maxima that a person typed. */
final class LawCheck implements FormulaCheck {

    private static final BigDecimal ROUNDING = new BigDecimal("1e-9");

    /** Typed maxima are rounded. */
    private static final BigDecimal NEAR = new BigDecimal("1.015");

    @Override
    public List<Finding> of(Checked formula) {
        List<Finding> findings = new ArrayList<>();
        for (Ruling ruling : formula.rulings()) {
            if (ruling.outcome() == Ruling.Outcome.BROKEN && !isTold(ruling, formula)) {
                String first = ruling.materials().get(0);
                findings.add(Finding.warning(formula.origin(first), words(first, formula, ruling)));
            } else if (ruling.outcome() == Ruling.Outcome.UNCLEAR) {
                String first = ruling.materials().get(0);
                findings.add(Finding.note(formula.origin(first), words(first, formula, ruling)));
            }
        }
        formula.materials().forEach(portion -> typed(portion, formula, findings));
        return findings;
    }

    private static String words(String material, Checked formula, Ruling ruling) {
        return CheckMessages.about(material, formula.name(), Gates.LEGAL_MAXIMUM.name()) + " " + ruling.words() + " "
                + StateOfLaw.words();
    }

    /** Whether an earlier group was broken by the same materials: one cause, one message. */
    private static boolean isTold(Ruling ruling, Checked formula) {
        for (Ruling earlier : formula.rulings()) {
            if (earlier.equals(ruling)) {
                return false;
            }
            if (earlier.outcome() == Ruling.Outcome.BROKEN
                    && earlier.materials().containsAll(ruling.materials())) {
                return true;
            }
        }
        return false;
    }

    private static void typed(Portion portion, Checked formula, List<Finding> findings) {
        Material material = portion.material();
        Figure typed = material.traits().legalMax();
        if (typed == null) {
            return;
        }
        BigDecimal level = formula.recipe().levelOf(material);
        Optional<BigDecimal> most =
                Law.most(material, formula.recipe().kind(), formula.recipe().day());
        boolean above = level.subtract(ROUNDING).compareTo(typed.value()) > 0;
        boolean other = Law.isOfOtherKind(
                material,
                typed.value(),
                formula.recipe().kind(),
                formula.recipe().day());
        if (most.isPresent() && (other || typed.value().compareTo(most.get().multiply(NEAR)) > 0)) {
            findings.add(Finding.note(
                    typed.origin(),
                    CheckMessages.typedMaximumDiffers(
                            material.name(),
                            TrialWords.percent(typed.value()),
                            formula.name(),
                            formula.recipe().kind().words(),
                            TrialWords.percent(most.get()))));
        } else if (above && !formula.isUnlawful(material)) {
            findings.add(Finding.warning(
                    portion.line().origin(),
                    CheckMessages.aboveTypedMaximum(
                            material.name(),
                            formula.name(),
                            TrialWords.percent(level),
                            TrialWords.percent(typed.value()))));
        }
    }
}
