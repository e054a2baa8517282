package perkilo.swaps;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Finding;
import perkilo.swaps.facts.NaturalOrigin;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;
import perkilo.swaps.trial.Words;

/**
 * Whether formulas, as they stand, keep what a swap in them would have to keep: limits, use ranges, temperatures,
 * charges, pH, required tags and the natural origin target.
 */
public final class RecipeCheck {

    private static final String CAUTION = " Local rules and a qualified safety assessor decide.";

    private final Recipe recipe;
    private final List<Finding> findings = new ArrayList<>();

    private RecipeCheck(Recipe recipe) {
        this.recipe = recipe;
    }

    /**
     * A warning for everything that a formula of the book does not keep. What is not known is no matter for a warning,
     * but for a required tag and a natural origin target, which have to be shown.
     */
    public static List<Finding> of(Book book) {
        List<Finding> findings = new ArrayList<>();
        for (Formula formula : book.formulas().values()) {
            if (isAnythingKnown(book, formula)) {
                findings.addAll(new RecipeCheck(Recipe.of(book, formula)).findings());
            }
        }
        return findings;
    }

    /** Of formulas whose materials are names and no more, nothing can be said. */
    private static boolean isAnythingKnown(Book book, Formula formula) {
        for (Formula.Line line : formula.lines()) {
            Material material = book.materials().get(Names.key(line.material()));
            if (material != null && !material.isNameAlone()) {
                return true;
            }
        }
        return false;
    }

    private List<Finding> findings() {
        Set<String> seen = new LinkedHashSet<>();
        for (int line = 0; line < recipe.portions().size(); line++) {
            Portion portion = recipe.portions().get(line);
            if (portion.level().signum() > 0) {
                boolean first = seen.add(Names.key(portion.material().name()));
                judge(portion, Trial.ofNothing(recipe, line), first);
            }
        }
        tags();
        naturalOrigin();
        return findings;
    }

    private void judge(Portion portion, Trial asItStands, boolean first) {
        List<Verdict> verdicts = new ArrayList<>(Gates.judgePlace(asItStands));
        if (first) {
            verdicts.addAll(Gates.judgeLevel(asItStands));
        }
        for (Verdict verdict : verdicts) {
            if (!verdict.ok() && !isToldFromTheOtherSide(verdict, portion)) {
                String caution = verdict.gate().equals(Gates.LEGAL_MAXIMUM) ? CAUTION : "";
                findings.add(Finding.warning(
                        portion.line().origin(),
                        "%s of \"%s\" in %s: %s.%s"
                                .formatted(
                                        verdict.gate().name(),
                                        portion.material().name(),
                                        recipe.formula().name(),
                                        verdict.why(),
                                        caution)));
            }
        }
    }

    /** Two materials of opposite charges: the cationic one tells. */
    private static boolean isToldFromTheOtherSide(Verdict verdict, Portion portion) {
        return verdict.gate().equals(Gates.CHARGE)
                && !Names.key(portion.material().traits().charge()).equals("cationic");
    }

    private void tags() {
        Set<String> unshown = new LinkedHashSet<>();
        for (int line = 0; line < recipe.portions().size(); line++) {
            Trial asItStands = Trial.ofNothing(recipe, line);
            if (!Gates.judgeTags(asItStands).ok()) {
                unshown.add(asItStands.to().name());
            }
        }
        if (!unshown.isEmpty()) {
            findings.add(Finding.warning(
                    recipe.formula().origin(),
                    "%s: products require %s, but these materials are not known to be so: %s"
                            .formatted(
                                    recipe.formula().name(),
                                    String.join(", ", recipe.requiredTags()),
                                    String.join(", ", unshown))));
        }
    }

    private void naturalOrigin() {
        BigDecimal target = recipe.naturalOriginTarget();
        NaturalOrigin content = recipe.naturalOrigin();
        if (target == null || content.known().compareTo(target) >= 0) {
            return;
        }
        String hidden = content.isComplete()
                ? ""
                : ", and of %s the index is not known".formatted(Words.percent(content.unknown()));
        findings.add(Finding.warning(
                recipe.formula().origin(),
                "%s: %s is shown to be of natural origin%s, but the target is %s"
                        .formatted(
                                recipe.formula().name(),
                                Words.percent(content.known()),
                                hidden,
                                Words.percent(target))));
    }
}
