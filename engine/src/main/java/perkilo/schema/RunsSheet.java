package perkilo.schema;

import static perkilo.schema.ValueKind.NUMBER;
import static perkilo.schema.ValueKind.TEXT;
import static perkilo.schema.ValueKind.WHOLE;

import java.util.List;

/** The Runs sheet: what to cost, in units of a product or in bulk of a formula. */
public final class RunsSheet {

    public static final InputColumn PRODUCT = InputColumn.of("Product", TEXT, "the product that is made", "Body lotion")
            .also("Product name", "SKU", "Finished product");

    public static final InputColumn UNITS = InputColumn.of("Units", WHOLE, "units made in one go", "1000")
            .also("Run size", "Run", "Quantity", "Qty", "Pieces", "Units per run", "Number of units")
            .limited(Limits.ONE_OR_MORE);

    public static final InputColumn FORMULA = InputColumn.of(
                    "Formula", TEXT, "the formula whose bulk is made", "Body lotion")
            .also("Formula name", "Recipe", "Formulation");

    public static final InputColumn BATCH_KG = InputColumn.of(
                    "Batch kg", NUMBER, "kilograms of bulk made in one go", "25")
            .in("kg")
            .also("Batch", "Batch size", "Bulk", "Kilograms")
            .limited(Limits.ABOVE_ZERO);

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Runs",
            List.of("Run", "Run sizes", "Läufe", "Lose", "Chargen", "Production", "Produktion"),
            List.of(PRODUCT, FORMULA),
            List.of(List.of(PRODUCT, UNITS), List.of(FORMULA, BATCH_KG)),
            List.of(PRODUCT, UNITS, FORMULA, BATCH_KG),
            "What to cost: units of a product, or kilograms of a formula's bulk.");

    private RunsSheet() {}
}
