package perkilo.costing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import perkilo.costing.Missing.Part;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Gaps;
import perkilo.model.Gaps.Gap;
import perkilo.model.Gaps.Kind;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.names.Names;

/** What an error in the book takes from a run. */
public final class RunGaps {

    private final Book book;
    private final Gaps gaps;
    private final Run run;
    private final List<Missing> missing = new ArrayList<>();
    private final Set<String> leftOut = new LinkedHashSet<>();

    private RunGaps(Book book, Run run) {
        this.book = book;
        this.gaps = book.gaps();
        this.run = run;
    }

    /** The gaps of a run. */
    public static RunGaps of(Book book, Run run) {
        RunGaps found = new RunGaps(book, run);
        found.find();
        return found;
    }

    /** What is not known. */
    public List<Missing> missing() {
        return List.copyOf(missing);
    }

    /** Whether nothing of the run can be known. */
    public boolean isAll() {
        return missing.stream().anyMatch(one -> one.part() == Part.EVERYTHING);
    }

    /** The keys of the items whose quantity or price cannot be known. */
    public Set<String> leftOut() {
        return leftOut;
    }

    private void find() {
        gaps.of(Kind.EVERYTHING).forEach(gap -> add(gap, Part.EVERYTHING));
        gaps.of(Kind.RUN, run.origin().where()).forEach(gap -> add(gap, Part.EVERYTHING));
        Optional<Formula> formula = run instanceof Run.OfProduct units ? ofProduct(units) : ofBulk((Run.OfBulk) run);
        formula.ifPresent(this::recipe);
        gaps.of(Kind.WORK).forEach(gap -> add(gap, Part.WORK));
    }

    private Optional<Formula> ofProduct(Run.OfProduct units) {
        List<Gap> unread = gaps.of(Kind.PRODUCT, units.product());
        unread.forEach(gap -> add(gap, Part.EVERYTHING));
        Optional<Product> product = book.product(units.product());
        if (product.isEmpty()) {
            orUnknown(units.product());
            return Optional.empty();
        }
        components(product.get());
        return formula(product.get().formula());
    }

    private Optional<Formula> ofBulk(Run.OfBulk bulk) {
        Optional<Formula> formula = formula(bulk.formula());
        formula.flatMap(one -> Batches.whyNot(bulk.batchKg().value(), one.batching()))
                .ifPresent(why ->
                        missing.add(new Missing(bulk.formula(), Part.EVERYTHING, "cannot be made", run.origin())));
        return formula;
    }

    private Optional<Formula> formula(String name) {
        gaps.of(Kind.MAKING, name).forEach(gap -> add(gap, Part.EVERYTHING));
        Optional<Formula> formula = book.formula(name);
        if (formula.isEmpty()) {
            gaps.of(Kind.RECIPE, name).forEach(gap -> add(gap, Part.EVERYTHING));
            orUnknown(name);
        }
        return formula;
    }

    private void orUnknown(String name) {
        if (!isAll()) {
            missing.add(new Missing(name, Part.EVERYTHING, "not known", run.origin()));
        }
    }

    private void components(Product product) {
        for (Gap gap : gaps.of(Kind.COMPONENT, product.name())) {
            add(gap, Part.PACKAGING);
            leftOut.add(Names.key(gap.what()));
        }
        for (Product.Component component : product.components()) {
            gaps.first(Kind.ITEM, component.name()).ifPresent(gap -> {
                add(gap, Part.PACKAGING);
                leftOut.add(gap.key());
            });
        }
    }

    private void recipe(Formula formula) {
        gaps.of(Kind.RECIPE, formula.name()).forEach(gap -> add(gap, Part.MATERIALS));
        for (Formula.Line line : formula.lines()) {
            gaps.first(Kind.ITEM, line.material()).ifPresent(gap -> {
                if (leftOut.add(gap.key())) {
                    add(gap, Part.MATERIALS);
                }
            });
        }
    }

    private void add(Gap gap, Part part) {
        String where = gap.origin().where();
        String why = where.isEmpty() ? "error" : "error in " + where;
        missing.add(new Missing(gap.what().isEmpty() ? where : gap.what(), part, why, gap.origin()));
    }
}
