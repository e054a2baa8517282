package perkilo.schema;

import static perkilo.schema.ValueKind.CURRENCY;
import static perkilo.schema.ValueKind.DATE;
import static perkilo.schema.ValueKind.MONEY;
import static perkilo.schema.ValueKind.NUMBER;
import static perkilo.schema.ValueKind.QUANTITY;
import static perkilo.schema.ValueKind.TEXT;
import static perkilo.schema.ValueKind.UNIT;
import static perkilo.schema.ValueKind.WHOLE;

import java.util.List;

/** The Actuals sheet: what runs really took, to be held against their plan. */
public final class ActualsSheet {

    public static final InputColumn RUN = InputColumn.of(
                    "Run", TEXT, "a number or name, if the same run was made more than once", "2026-07")
            .also("Run no", "Lot", "Batch no", "Production order")
            .orElse("the only run of that product and size");

    public static final InputColumn PRODUCT = InputColumn.of(
                    "Product", TEXT, "the product that was made", "Body lotion")
            .also("Product name", "SKU", "Finished product")
            .needed();

    public static final InputColumn PLANNED = InputColumn.of(
                    "Units planned", WHOLE, "the size that the run was planned for", "1000")
            .also("Planned units", "Planned", "Run size")
            .limited(Limits.ONE_OR_MORE)
            .orElse("the only size of that product on Runs");

    public static final InputColumn ITEM = InputColumn.of("Item", TEXT, "the material or component", "Glycerin")
            .also("Material", "Raw material", "Ingredient", "Component", "Item name")
            .orElse("the row says only units made or hours");

    public static final InputColumn QUANTITY_OF = InputColumn.of(
                    "Quantity used", QUANTITY, "how much the run took, losses included", "26.4")
            .also("Used", "Actual quantity", "Quantity", "Qty used", "Consumed", "Consumption")
            .needed();

    public static final InputColumn UNIT_OF = InputColumn.of("Unit", UNIT, "what the quantity is measured in", "kg")
            .also("UoM", "Unit of measure")
            .orElse("the unit in the header or beside the quantity");

    public static final InputColumn PAID = InputColumn.of(
                    "Amount paid", MONEY, "for that quantity, with freight and duty, in Currency", "118.80")
            .also("Paid", "Actual cost", "Amount", "Cost paid")
            .orElse("the planned price");

    public static final InputColumn CURRENCY_OF = InputColumn.of("Currency", CURRENCY, "of the amount paid", "USD")
            .also("Paid in")
            .orElse("the sign beside the amount, else the home currency");

    public static final InputColumn DATE_OF = InputColumn.of(
                    "Date", DATE, "the day of payment, whose exchange rate counts", "2026-07-14")
            .also("Paid on", "Date paid", "Payment date", "Day")
            .orElse("the costing date");

    public static final InputColumn MADE = InputColumn.of("Units made", WHOLE, "good units that came out", "985")
            .also("Made", "Actual units", "Good units", "Yield units")
            .limited(Limits.ONE_OR_MORE)
            .orElse("the units planned");

    public static final InputColumn HOURS = InputColumn.of(
                    "Hours", NUMBER, "hours of work in the whole run, making and filling", "14.5")
            .also("Actual hours", "Hours worked", "Labour hours")
            .orElse("the hours planned");

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Actuals",
            List.of(
                    "Actual",
                    "Actual use",
                    "Consumption",
                    "Production record",
                    "Ist",
                    "Istkosten",
                    "Réel",
                    "Consuntivo"),
            List.of(PRODUCT),
            List.of(List.of(PRODUCT, QUANTITY_OF, PAID), List.of(PRODUCT, QUANTITY_OF, MADE)),
            List.of(RUN, PRODUCT, PLANNED, ITEM, QUANTITY_OF, UNIT_OF, PAID, CURRENCY_OF, DATE_OF, MADE, HOURS),
            "What runs really took, a row for each item; perkilo compare holds it against the plan.");

    private ActualsSheet() {}
}
