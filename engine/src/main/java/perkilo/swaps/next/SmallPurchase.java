package perkilo.swaps.next;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.costing.RunCost;
import perkilo.costing.RunCoster;
import perkilo.costing.RunNeeds;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Run;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/** A purchase of a few materials alone, as it is planned for a run: packs, minimums, freight, charges and duty. */
final class SmallPurchase {

    private static final String NAME = "small purchase";

    private final Book book;
    private final RunCoster coster;

    SmallPurchase(Book book, RunCoster coster) {
        this.book = book;
        this.coster = coster;
    }

    /**
     * Buys materials, each with its handling loss.
     *
     * @param kilograms of each material that go into the product; all above zero
     * @return empty if something cannot be bought
     */
    Optional<RunCost> of(Map<Material, BigDecimal> kilograms) {
        List<Formula.Line> lines = kilograms.entrySet().stream()
                .map(each -> new Formula.Line("", each.getKey().name(), Figure.of(each.getValue()), null, Origin.NONE))
                .toList();
        Formula formula = new Formula(NAME, lines, Batching.ANY, Origin.NONE);
        Run one = new Run.OfBulk(NAME, Figure.ONE, Origin.NONE);
        return Optional.ofNullable(
                coster.cost(RunNeeds.of(book.withFormula(formula), one)).cost());
    }
}
