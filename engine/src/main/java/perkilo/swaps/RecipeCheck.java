package perkilo.swaps;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Gaps;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Finding;
import perkilo.swaps.facts.NaturalOrigin;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;
import perkilo.swaps.trial.TrialWords;

/**
 * The check of formulas as they are against what a swap in them would have to keep: limits, use ranges, temperatures,
 * charges, pH, required tags and the natural origin target.
 */
public final class RecipeCheck {

    private final Recipe recipe;
    private final List<Finding> findings = new ArrayList<>();

    private RecipeCheck(Recipe recipe) {
        this.recipe = recipe;
    }

    /**
     * A warning for everything that a formula of the book does not keep. Unknown values give no warning, except for a
     * required tag and a natural origin target, which have to be shown.
     */
    public static List<Finding> of(Book book) {
        List<Finding> findings = new ArrayList<>();
        for (Formula formula : book.formulas().values()) {
            if (isAnythingKnown(book, formula) && unreadable(book, formula).isEmpty()) {
                findings.addAll(new RecipeCheck(Recipe.of(book, formula)).findings());
            }
        }
        return findings;
    }

    /** The first cell with an error that keeps a formula from being judged; empty for none. */
    static Optional<Gaps.Gap> unreadable(Book book, Formula formula) {
        Gaps gaps = book.gaps();
        if (gaps.gaps().isEmpty()) {
            return Optional.empty();
        }
        List<Gaps.Gap> found = new ArrayList<>();
        for (Gaps.Kind kind : List.of(Gaps.Kind.RECIPE, Gaps.Kind.MAKING, Gaps.Kind.FACT)) {
            found.addAll(gaps.of(kind, formula.name()));
        }
        for (Formula.Line line : formula.lines()) {
            found.addAll(gaps.of(Gaps.Kind.ITEM, line.material()));
            found.addAll(gaps.of(Gaps.Kind.FACT, line.material()));
        }
        return found.stream().findFirst();
    }

    /** Formulas whose materials have only names cannot be checked. */
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

    private void judge(Portion portion, Trial unchanged, boolean first) {
        List<Verdict> verdicts = new ArrayList<>(Gates.judgePlace(unchanged));
        if (first) {
            verdicts.addAll(Gates.judgeLevel(unchanged));
        }
        for (Verdict verdict : verdicts) {
            if (!verdict.ok() && !isReportedOnTheOther(verdict, portion)) {
                findings.add(Finding.warning(portion.line().origin(), words(verdict, portion)));
            }
        }
    }

    private String words(Verdict verdict, Portion portion) {
        String check = SwapMessages.checkPlace(
                portion.material().name(),
                recipe.formula().name(),
                verdict.gate().name());
        return check
                + " "
                + verdict.why()
                + (verdict.gate().equals(Gates.LEGAL_MAXIMUM) ? " " + SwapMessages.assessorDecides() : "");
    }

    /** Reports a charge conflict once, on the cationic material. */
    private static boolean isReportedOnTheOther(Verdict verdict, Portion portion) {
        return verdict.gate().equals(Gates.CHARGE)
                && !Names.key(portion.material().traits().charge()).equals("cationic");
    }

    private void tags() {
        Set<String> unshown = new LinkedHashSet<>();
        for (int line = 0; line < recipe.portions().size(); line++) {
            Trial unchanged = Trial.ofNothing(recipe, line);
            if (!Gates.judgeTags(unchanged).ok()) {
                unshown.add(unchanged.to().name());
            }
        }
        if (!unshown.isEmpty()) {
            findings.add(Finding.warning(
                    recipe.formula().origin(),
                    SwapMessages.tagsNotShown(
                            recipe.formula().name(), List.copyOf(recipe.requiredTags()), List.copyOf(unshown))));
        }
    }

    private void naturalOrigin() {
        BigDecimal target = recipe.naturalOriginTarget();
        NaturalOrigin content = recipe.naturalOrigin();
        if (target == null || content.known().compareTo(target) >= 0) {
            return;
        }
        String unknown = content.isComplete() ? "" : TrialWords.percent(content.unknown());
        findings.add(Finding.warning(
                recipe.formula().origin(),
                SwapMessages.naturalOriginMissed(
                        recipe.formula().name(),
                        TrialWords.percent(content.known()),
                        unknown,
                        TrialWords.percent(target))));
    }
}
