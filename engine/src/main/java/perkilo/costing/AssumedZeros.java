package perkilo.costing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import perkilo.model.Product;
import perkilo.model.Settings;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/** What is not typed and counts as zero although that is seldom meant: said once, with the place to fill in. */
final class AssumedZeros {

    private AssumedZeros() {}

    /** The notes on the price ladder and the work of a run. */
    static List<Finding> of(RunCost cost, Settings settings) {
        List<Finding> notes = new ArrayList<>();
        Product product = cost.needs().product();
        if (product != null && cost.ladder() != null) {
            List<String> without = new ArrayList<>();
            if (isNotTyped(product.vat())) {
                without.add("VAT");
            }
            if (isNotTyped(product.retailerMargin())) {
                without.add("retailer margin");
            }
            if (!without.isEmpty()) {
                notes.add(Finding.note(product.origin(), CostMessages.ladderWithout(product.name(), without)));
            }
        }
        Figure rate = settings.labourRate();
        boolean works = cost.work().makingHours().signum() > 0
                || cost.work().fillingHours().signum() > 0;
        if (works && isNotTyped(rate)) {
            Origin hours = Optional.of(
                            cost.needs().formula().batching().hoursPerBatch().origin())
                    .filter(origin -> !origin.equals(Origin.NONE))
                    .orElseGet(() -> cost.needs().run().origin());
            notes.add(Finding.note(hours, CostMessages.workWithoutRate()));
        }
        return notes;
    }

    private static boolean isNotTyped(Figure figure) {
        return figure.isZero()
                && (figure.held() == Figure.Held.NOTHING || figure.origin().equals(Origin.NONE));
    }
}
