package perkilo.swaps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Gaps;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Finding;
import perkilo.swaps.check.Checks;
import perkilo.swaps.trial.Recipe;

/**
 * The check of formulas as they are: what a formulator looks at before they are costed. {@link Checks} has the list.
 */
public final class RecipeCheck {

    private RecipeCheck() {}

    /**
     * A warning for everything that a formula of the book does not keep, and notes on what its label needs and what
     * depends on something that is not known. Unknown values give no warning, except for a required tag and a natural
     * origin target, which have to be shown. What is said twice about one cell is said once.
     */
    public static List<Finding> of(Book book) {
        List<Finding> findings = new ArrayList<>();
        for (Formula formula : book.formulas().values()) {
            findings.addAll(of(book, formula));
        }
        return findings.stream().distinct().toList();
    }

    /** The same for one formula of these materials, which may be a changed one. */
    public static List<Finding> of(Book book, Formula formula) {
        return isAnythingKnown(book, formula) && unreadable(book, formula).isEmpty()
                ? Checks.of(Recipe.of(book, formula))
                : List.of();
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
}
