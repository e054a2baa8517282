package perkilo.report.inputs;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the columns of input tables mean for the answer of one command. A column that is not named is taken to change
 * the figures and the choice.
 */
public final class Effects {

    /** What a column changes. */
    enum Effect {
        /** Nothing on the result sheets. */
        NOTHING,
        /** Which purchase is the cheapest, and no figure of a purchase that is kept. */
        CHOICE,
        /** Figures, and not which purchase is the cheapest. */
        FIGURES,
        /** Figures, and which purchase is the cheapest. */
        BOTH,
        /**
         * The same, but only where a formula refers to the cell: a density counts where something is sold by volume.
         */
        WHERE_USED,
        /**
         * The same, and a blank cell is one that is not used: a charge that the delivery term leaves to the supplier.
         */
        WHERE_DUE
    }

    private static final List<String> OF_ORDERS = List.of(
            "Payment terms", "Payment terms days", "Prepaid %", "Address", "Contact", "E-mail", "Our customer number");
    private static final List<String> OF_BUYER = List.of(
            "Company", "Company address", "Delivery address", "Company contact", "Company e-mail", "VAT number");
    private static final List<String> OF_TESTS =
            List.of("Stability test cost", "Challenge test cost", "Assessment cost", "Least saving %");
    private static final List<String> OF_WORK = List.of("Hours per batch", "Hours per kg", "Quality control per batch");
    private static final List<String> OF_PRODUCT = List.of(
            "Filling set-up hours",
            "Units per hour",
            "Filling people",
            "Target margin %",
            "Distributor margin %",
            "Retailer margin %",
            "VAT %",
            "Target retail price",
            "One-off costs",
            "Spread over units");

    private final Map<String, Effect> known = new HashMap<>();
    private final Effect otherFacts;

    private Effects(Effect otherFacts) {
        this.otherFacts = otherFacts;
    }

    /** Those on the costs of runs. */
    public static Effects ofCosts() {
        return new Effects(Effect.NOTHING)
                .set("Demand", Effect.NOTHING, "")
                .set("Stock", Effect.NOTHING, "")
                .common()
                .set("Settings", Effect.NOTHING, "Holding % per year", "Cash limit per month", "Cash limit")
                .set("Settings", Effect.FIGURES, "Labour rate", "Overhead %", "Sensitivity %", "Price age limit days")
                .set("Suppliers", Effect.NOTHING, "Lead time days")
                .set("Offers", Effect.NOTHING, "Lead time days")
                .all("Batches", Effect.FIGURES, OF_WORK)
                .all("Products", Effect.FIGURES, OF_PRODUCT);
    }

    private Effects common() {
        return all("Suppliers", Effect.NOTHING, OF_ORDERS)
                .all("Settings", Effect.NOTHING, OF_BUYER)
                .all("Settings", Effect.NOTHING, OF_TESTS)
                .set("Offers", Effect.NOTHING, "Article number", "Supplier's item name")
                .set("Offers", Effect.CHOICE, "Minimum order", "Order multiple")
                .set("Rates", Effect.NOTHING, "Source")
                .set("Batches", Effect.NOTHING, "Final pH", "Kind")
                .set("Formula", Effect.NOTHING, "Phase", "Phase °C", "Role", "Keep", "Estimate %")
                .set("Products", Effect.NOTHING, "Required tags", "Natural origin target %")
                .set("Materials", Effect.BOTH, "Material", "INCI name", "House price", "Handling loss %")
                .set("Materials", Effect.WHERE_USED, "Density g/mL", "Shelf life months")
                .set("Settings", Effect.WHERE_USED, "Conversion margin %")
                .set("Suppliers", Effect.WHERE_DUE, "Freight per order", "Freight per kg", "Insurance %", "Duty %")
                .set("Suppliers", Effect.WHERE_USED, "Minimum order value", "Small-order charge")
                .set("Products", Effect.WHERE_USED, "Density g/mL", "Overfill %", "Yearly units")
                .set("Materials", Effect.FIGURES, "kg CO2e per kg");
    }

    private Effects set(String kind, Effect effect, String... columns) {
        return all(kind, effect, List.of(columns));
    }

    private Effects all(String kind, Effect effect, List<String> columns) {
        for (String column : columns) {
            known.put(kind + "|" + column, effect);
        }
        return this;
    }

    /** What a column changes. */
    Effect of(String kind, String column) {
        Effect whole = known.get(kind + "|");
        if (whole != null) {
            return whole;
        }
        Effect effect = known.get(kind + "|" + column);
        return effect != null ? effect : kind.equals("Materials") ? otherFacts : Effect.BOTH;
    }

    /** Whether a kind of table changes anything. */
    boolean counts(String kind) {
        return known.get(kind + "|") != Effect.NOTHING;
    }
}
