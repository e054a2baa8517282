package perkilo.costing;

import static java.math.BigDecimal.ONE;
import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Names;
import perkilo.model.Product;
import perkilo.model.Run;

/**
 * What runs need, run after run: a formula's materials are looked up for its first run and kept for the others.
 *
 * <p>May be asked from several threads.
 */
public final class Recipes {

    private final Book book;
    private final Map<String, Recipe> byFormula = new ConcurrentHashMap<>();

    /**
     * The recipes of a book.
     *
     * @param book free of errors
     */
    public Recipes(Book book) {
        this.book = book;
    }

    /**
     * What a run needs: of material i {@code q_i = n · b · w_i · (1 + handling loss_i)} kilograms, of component j
     * {@code k_j = ⌈ U · per unit_j · (1 + loss_j) ⌉} pieces.
     *
     * @throws IllegalArgumentException if the run names a product or formula that the book lacks, or one that cannot be
     *     made
     */
    public RunNeeds needs(Run run) {
        if (run instanceof Run.OfProduct ofProduct) {
            return ofProduct(ofProduct);
        }
        if (run instanceof Run.OfBulk ofBulk) {
            return ofBulk(ofBulk);
        }
        throw new AssertionError(run);
    }

    private RunNeeds ofProduct(Run.OfProduct run) {
        Product product = book.product(run.product())
                .orElseThrow(() -> new IllegalArgumentException("no product " + run.product()));
        Recipe recipe = recipe(product.formula());
        FillTarget fill = FillTarget.of(product);
        BigDecimal units = run.units().value();
        Batches batches = Batches.forUnits(
                units,
                fill.targetKg(),
                product.fillLoss().value(),
                recipe.formula().batching());
        List<Item> items = recipe.materials(batches.charged());
        for (Product.Component component : product.components()) {
            items.add(component(component, units));
        }
        return new RunNeeds(run, product, recipe.formula(), units, fill, batches, items);
    }

    private RunNeeds ofBulk(Run.OfBulk run) {
        Recipe recipe = recipe(run.formula());
        Batches batches =
                Batches.forBulk(run.batchKg().value(), recipe.formula().batching());
        return new RunNeeds(
                run, null, recipe.formula(), null, null, batches, recipe.materials(batches.charged()));
    }

    private Recipe recipe(String formula) {
        String key = Names.key(formula);
        Recipe known = byFormula.get(key);
        return known == null ? byFormula.computeIfAbsent(key, first -> lookUp(formula)) : known;
    }

    private Recipe lookUp(String name) {
        Optional<Formula> formula = book.formula(name);
        return Recipe.of(book, formula.orElseThrow(() -> new IllegalArgumentException("no formula " + name)));
    }

    private static Item component(Product.Component component, BigDecimal units) {
        String name = component.name();
        return new Item(name, Names.key(name), null, List.of(), component, ZERO, pieces(component, units));
    }

    private static BigDecimal pieces(Product.Component component, BigDecimal units) {
        return units.multiply(component.perUnit().value())
                .multiply(ONE.add(component.loss().value()))
                .setScale(0, RoundingMode.CEILING);
    }
}
