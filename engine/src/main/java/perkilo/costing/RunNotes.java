package perkilo.costing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Settings;
import perkilo.origin.Figure;
import perkilo.origin.Finding;

/** Notes and warnings about how a run was costed. */
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
                        item.origin(), processWater(item.name(), market.book().settings())));
            }
        }
        for (Item item : needs.items()) {
            if (!item.isNeeded()
                    && market.housePrice(item).isEmpty()
                    && market.listings(item.name()).isEmpty()) {
                notes.add(Finding.note(item.origin(), CostMessages.notUsedAndNotOffered(item.name())));
            }
        }
        Product product = needs.product();
        FillTarget fill = needs.fill();
        if (product != null && fill != null && product.fillerSd() != null) {
            if (fill.tolerable() == null) {
                notes.add(Finding.warning(product.origin(), CostMessages.noAverageQuantityRules(product.name())));
            }
            if (product.overfill() != null) {
                notes.add(Finding.warning(product.origin(), CostMessages.overfillNotUsed(product.name())));
            }
        }
        return notes;
    }

    static List<Finding> of(RunCost cost, Settings settings) {
        List<Finding> notes = new ArrayList<>(AssumedZeros.of(cost, settings));
        BigDecimal over = cost.needs().batches().over();
        if (over.signum() > 0) {
            String run = cost.needs().title();
            notes.add(Finding.note(
                    cost.needs().run().origin(),
                    cost.needs().units() == null
                            ? CostMessages.moreThanAskedFor(run, plain(over))
                            : CostMessages.moreThanFilled(run, plain(over))));
        }
        if (!cost.purchase().proven()) {
            Purchase purchase = cost.purchase();
            BigDecimal gap = purchase.cost().objective().subtract(purchase.bound());
            notes.add(Finding.warning(
                    cost.needs().run().origin(),
                    CostMessages.notProven(
                            cost.needs().title(), plain(gap), cost.home().getCurrencyCode())));
        }
        return notes;
    }

    private static String processWater(String name, Settings settings) {
        Figure price = settings.processWaterPerKg();
        return price.isZero()
                ? CostMessages.freeProcessWater(name)
                : CostMessages.processWater(name, price.value(), settings.home().getCurrencyCode());
    }

    /** To two decimals; below one to three digits, so that a few grams do not become zero. */
    private static String plain(BigDecimal value) {
        return value.abs().compareTo(BigDecimal.ONE) < 0 && value.signum() != 0
                ? value.round(new MathContext(3, RoundingMode.HALF_UP)).toPlainString()
                : value.setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
