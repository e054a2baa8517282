package perkilo.costing;

import static java.math.BigDecimal.ONE;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Names;

/**
 * A formula with its materials looked up: what is the same for a run of any size.
 *
 * @param formula as it stands
 * @param perKg what one kilogram of bulk takes, handling loss included; in the order of the formula, of each name one
 */
record Recipe(Formula formula, List<Item> perKg) {

    Recipe {
        perKg = List.copyOf(perKg);
    }

    static Recipe of(Book book, Formula formula) {
        Map<String, List<Formula.Line>> byKey = new LinkedHashMap<>();
        for (Formula.Line line : formula.lines()) {
            byKey.computeIfAbsent(Names.key(line.material()), key -> new ArrayList<>(1))
                    .add(line);
        }
        List<Item> perKg = new ArrayList<>(byKey.size());
        byKey.forEach((key, lines) -> perKg.add(perKg(book, formula, key, lines)));
        return new Recipe(formula, perKg);
    }

    private static Item perKg(Book book, Formula formula, String key, List<Formula.Line> lines) {
        Material known = book.materials().get(key);
        Material material = known == null ? Material.of(lines.get(0).material()) : known;
        BigDecimal share = BigDecimal.ZERO;
        for (Formula.Line line : lines) {
            share = share.add(formula.levelOf(line));
        }
        BigDecimal needed = share.multiply(ONE.add(material.handlingLoss().value()));
        return new Item(material.name(), key, material, lines, null, share, needed);
    }

    /**
     * What is needed of each material: {@code q_i = n · b · w_i · (1 + handling loss_i)} kilograms.
     *
     * @param charged {@code n · b} in kilograms
     */
    List<Item> materials(BigDecimal charged) {
        List<Item> items = new ArrayList<>(perKg.size());
        for (Item item : perKg) {
            items.add(item.times(charged));
        }
        return items;
    }
}
