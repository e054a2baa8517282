package perkilo.costing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Supplier;
import perkilo.origin.Finding;

/** What a person should know about how a run was costed. */
final class RunNotes {

    private RunNotes() {}

    static List<Finding> of(Market market, RunNeeds needs) {
        List<Finding> notes = new ArrayList<>();
        for (Item item : needs.items()) {
            Material material = item.material();
            if (material != null
                    && material.isWater()
                    && material.housePrice() == null
                    && market.listings(item.name()).isEmpty()) {
                notes.add(Finding.note(
                        item.origin(),
                        "\"%s\" is taken as process water at %s %s per kg; nobody offers it and it has no house price"
                                .formatted(
                                        item.name(),
                                        market.book()
                                                .settings()
                                                .processWaterPerKg()
                                                .value()
                                                .toPlainString(),
                                        market.book().settings().home())));
            }
        }
        for (Item item : needs.items()) {
            if (!item.isNeeded()
                    && market.housePrice(item).isEmpty()
                    && market.listings(item.name()).isEmpty()) {
                notes.add(Finding.note(
                        item.origin(),
                        "none of \"%s\" is used, and nobody offers it: what it would cost is not known"
                                .formatted(item.name())));
            }
        }
        Product product = needs.product();
        FillTarget fill = needs.fill();
        if (product != null && fill != null && product.fillerSd() != null) {
            if (fill.tolerable() == null) {
                notes.add(Finding.warning(
                        product.origin(),
                        "\"%s\" is filled to its nominal quantity: the average-quantity rules cover 5 g or mL to 10 kg or L"
                                .formatted(product.name())));
            }
            if (product.overfill() != null) {
                notes.add(Finding.warning(
                        product.origin(),
                        "\"%s\" has an overfill and a filler's standard deviation; the standard deviation is used"
                                .formatted(product.name())));
            }
        }
        return notes;
    }

    static List<Finding> of(RunCost cost) {
        List<Finding> notes = new ArrayList<>();
        BigDecimal over = cost.needs().batches().over();
        if (over.signum() > 0) {
            notes.add(Finding.note(
                    cost.needs().run().origin(),
                    "%s: the vessel's minimum makes %s kg of bulk more than %s; its cost is in the run"
                            .formatted(
                                    cost.needs().title(),
                                    plain(over),
                                    cost.needs().units() == null ? "was asked for" : "is filled")));
        }
        if (!cost.purchase().proven()) {
            notes.add(Finding.warning(
                    cost.needs().run().origin(),
                    "%s: the purchase is the best found in the time allowed; none can be cheaper by more than %s %s"
                            .formatted(
                                    cost.needs().title(),
                                    plain(cost.purchase()
                                            .cost()
                                            .objective()
                                            .subtract(cost.purchase().bound())),
                                    cost.home())));
        }
        cost.purchase().cost().orders().forEach(order -> {
            Supplier supplier = cost.purchase().listing(order.lines().get(0)).supplier();
            boolean pieces = order.lines().stream()
                    .anyMatch(line -> cost.purchase().listing(line).isByPiece());
            if (pieces && Market.charges(supplier).freightPerKg().value().signum() > 0) {
                notes.add(Finding.warning(
                        supplier.origin(),
                        "%s charges freight by weight, but sells pieces whose weight is not known: none is counted for them"
                                .formatted(supplier.name())));
            }
        });
        return notes;
    }

    /** To two decimals; below one to three digits, so that a few grams are not said to be none. */
    private static String plain(BigDecimal value) {
        return value.abs().compareTo(BigDecimal.ONE) < 0 && value.signum() != 0
                ? value.round(new MathContext(3, RoundingMode.HALF_UP)).toPlainString()
                : value.setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
