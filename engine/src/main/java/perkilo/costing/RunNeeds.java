package perkilo.costing;

import static java.math.BigDecimal.ONE;
import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.origin.Decimals;
import perkilo.origin.Figure;
import perkilo.purchasing.Quotient;

/**
 * The product and the needs of one run.
 *
 * @param run the run
 * @param product null for bulk that is not filled
 * @param formula the formula that is made
 * @param units null for bulk that is not filled
 * @param fill null for bulk that is not filled
 * @param batches the batches that are made
 * @param items materials in the order of the formula, then components in the order of their list; each name once
 */
public record RunNeeds(
        Run run,
        @Nullable Product product,
        Formula formula,
        @Nullable BigDecimal units,
        @Nullable FillTarget fill,
        Batches batches,
        List<Item> items) {

    public RunNeeds {
        items = List.copyOf(items);
    }

    /**
     * The needs of a run: of material i {@code q_i = n · b · w_i / (1 − handling loss_i)} kilograms, of component j
     * {@code k_j = ⌈ U · per unit_j / (1 − loss_j) ⌉} pieces.
     *
     * @throws IllegalArgumentException if the run names a product or formula that the book lacks, or one that cannot be
     *     made
     */
    public static RunNeeds of(Book book, Run run) {
        if (run instanceof Run.OfProduct ofProduct) {
            Product product = book.product(ofProduct.product())
                    .orElseThrow(() -> new IllegalArgumentException("no product " + ofProduct.product()));
            Formula formula = formula(book, product.formula());
            FillTarget fill = FillTarget.of(product);
            BigDecimal units = ofProduct.units().value();
            Batches batches =
                    Batches.forUnits(units, fill.targetKg(), product.fillLoss().value(), formula.batching());
            List<Item> items = new ArrayList<>(materials(book, formula, batches.charged()));
            items.addAll(components(product, units));
            return new RunNeeds(run, product, formula, units, fill, batches, items);
        }
        if (run instanceof Run.OfBulk ofBulk) {
            Formula formula = formula(book, ofBulk.formula());
            Batches batches = Batches.forBulk(ofBulk.batchKg().value(), formula.batching());
            return new RunNeeds(run, null, formula, null, null, batches, materials(book, formula, batches.charged()));
        }
        throw new AssertionError(run);
    }

    /**
     * The same needs without some items.
     *
     * @param keys of their names
     */
    public RunNeeds without(Set<String> keys) {
        return keys.isEmpty()
                ? this
                : new RunNeeds(
                        run,
                        product,
                        formula,
                        units,
                        fill,
                        batches,
                        items.stream()
                                .filter(item -> !keys.contains(item.key()))
                                .toList());
    }

    /**
     * The needs of several runs, to be bought in one purchase: each item once, with the sum of its needs. Of the cost
     * of these needs only the purchase, the outlay and what is used mean anything; the product, the batches and the
     * shares are those of no run.
     *
     * @param runs at least one
     */
    public static RunNeeds boughtTogether(List<RunNeeds> runs) {
        Map<String, Item> byKey = new LinkedHashMap<>();
        for (RunNeeds one : runs) {
            for (Item item : one.items) {
                byKey.merge(item.key(), item, RunNeeds::added);
            }
        }
        RunNeeds first = runs.get(0);
        return new RunNeeds(first.run, null, first.formula, null, null, first.batches, List.copyOf(byKey.values()));
    }

    private static Item added(Item one, Item other) {
        return new Item(
                one.name(),
                one.key(),
                one.material(),
                one.lines(),
                one.component(),
                one.share(),
                one.needed().add(other.needed()));
    }

    /** The name of what is made: the product, or the formula for bulk. */
    public String name() {
        return product == null ? formula.name() : product.name();
    }

    /** The run in words: {@code 1,000 × Hand balm}, {@code 25 kg of Hand balm}. */
    public String title() {
        return units == null
                ? Decimals.readable(batches.charged(), 3) + " kg of " + formula.name()
                : Decimals.readable(units, 0) + " × " + name();
    }

    private static Formula formula(Book book, String name) {
        return book.formula(name).orElseThrow(() -> new IllegalArgumentException("no formula " + name));
    }

    private static List<Item> materials(Book book, Formula formula, BigDecimal charged) {
        List<Formula.Line> lines = formula.lines();
        Map<String, List<Formula.Line>> byKey = new LinkedHashMap<>(2 * lines.size());
        for (Formula.Line line : lines) {
            byKey.merge(Names.key(line.material()), List.of(line), RunNeeds::together);
        }
        List<Item> items = new ArrayList<>(byKey.size());
        byKey.forEach((key, ofMaterial) -> items.add(material(book, formula, key, ofMaterial, charged)));
        return items;
    }

    private static List<Formula.Line> together(List<Formula.Line> before, List<Formula.Line> more) {
        List<Formula.Line> all = new ArrayList<>(before);
        all.addAll(more);
        return all;
    }

    private static Item material(Book book, Formula formula, String key, List<Formula.Line> lines, BigDecimal charged) {
        Material known = book.materials().get(key);
        Material material = known == null ? Material.of(lines.get(0).material()) : known;
        BigDecimal share = formula.levelOf(lines.get(0));
        for (int again = 1; again < lines.size(); again++) {
            share = share.add(formula.levelOf(lines.get(again)));
        }
        BigDecimal inProduct = charged.multiply(share);
        Figure loss = material.handlingLoss();
        BigDecimal needed = loss.isZero() ? inProduct : Quotient.of(inProduct, ONE.subtract(loss.value()));
        return new Item(material.name(), key, material, lines, null, share, needed);
    }

    private static List<Item> components(Product product, BigDecimal units) {
        return product.components().stream()
                .map(component -> component(component, units))
                .toList();
    }

    private static Item component(Product.Component component, BigDecimal units) {
        String name = component.name();
        return new Item(name, Names.key(name), null, List.of(), component, ZERO, pieces(component, units));
    }

    private static BigDecimal pieces(Product.Component component, BigDecimal units) {
        return units.multiply(component.perUnit().value())
                .divide(ONE.subtract(component.loss().value()), 0, RoundingMode.CEILING);
    }
}
