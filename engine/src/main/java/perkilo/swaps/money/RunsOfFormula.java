package perkilo.swaps.money;

import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import perkilo.costing.RunCost;
import perkilo.costing.RunCoster;
import perkilo.costing.RunNeeds;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.swaps.trial.TrialWords;

/** The runs of one formula with their present costs, with which every changed formula is compared. */
public final class RunsOfFormula {

    private static final MathContext SHORT = new MathContext(9);

    private final Book book;
    private final RunCoster coster;
    private final Map<String, RunCost> base;

    /**
     * Runs with their costs.
     *
     * @param book free of errors
     * @param coster over the book's market
     * @param base what each run costs now, by its key
     */
    public RunsOfFormula(Book book, RunCoster coster, Map<String, RunCost> base) {
        this.book = book;
        this.coster = coster;
        this.base = new LinkedHashMap<>(base);
    }

    /** The runs of a book that make a formula. */
    public static List<Run> of(Book book, Formula formula) {
        String key = Names.key(formula.name());
        return book.runs().stream()
                .filter(run -> Names.key(formulaOf(book, run)).equals(key))
                .toList();
    }

    /**
     * The keys that identify runs: their units or kilograms, and their title where two would be alike.
     *
     * @return one per run, in their order
     */
    static List<String> keys(List<RunNeeds> runs) {
        List<String> sizes = runs.stream().map(RunsOfFormula::size).toList();
        List<String> keys = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            String size = sizes.get(i);
            boolean unique = sizes.stream().filter(size::equals).count() == 1;
            String key = unique ? size : runs.get(i).title();
            keys.add(keys.contains(key) ? key + " (" + (i + 1) + ")" : key);
        }
        return keys;
    }

    /** What each run costs now, by its key, in the order of the book. */
    public Map<String, RunCost> base() {
        return Collections.unmodifiableMap(base);
    }

    /** The keys of the runs, in the order of the book. */
    public List<String> keys() {
        return List.copyOf(base.keySet());
    }

    /** What a run needs with a changed formula of the same name. */
    public RunNeeds needs(String key, Formula changed) {
        RunCost before = Objects.requireNonNull(base.get(key));
        return RunNeeds.of(book.withFormula(changed), before.needs().run());
    }

    /**
     * What a changed formula costs at every run.
     *
     * @param changed of the same name
     * @return empty if the needs of a run cannot be bought
     */
    public Optional<List<RunChange>> changes(Formula changed) {
        List<RunChange> changes = new ArrayList<>();
        for (Map.Entry<String, RunCost> run : base.entrySet()) {
            RunCost after = coster.cost(needs(run.getKey(), changed)).cost();
            if (after == null) {
                return Optional.empty();
            }
            changes.add(new RunChange(run.getKey(), run.getValue(), after));
        }
        return Optional.of(changes);
    }

    private static String formulaOf(Book book, Run run) {
        if (run instanceof Run.OfProduct ofProduct) {
            return book.product(ofProduct.product()).map(Product::formula).orElse("");
        }
        if (run instanceof Run.OfBulk ofBulk) {
            return ofBulk.formula();
        }
        throw new AssertionError(run);
    }

    private static String size(RunNeeds needs) {
        return needs.units() == null
                ? TrialWords.plain(needs.batches().charged().round(SHORT)) + " kg"
                : TrialWords.plain(needs.units());
    }
}
