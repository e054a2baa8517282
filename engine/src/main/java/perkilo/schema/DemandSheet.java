package perkilo.schema;

import static perkilo.schema.ValueKind.DATE;
import static perkilo.schema.ValueKind.TEXT;
import static perkilo.schema.ValueKind.WHOLE;

import java.util.List;

/** The Demand sheet: which products are wanted, and by when. */
public final class DemandSheet {

    public static final InputColumn PRODUCT = InputColumn.of(
                    "Product", TEXT, "the product that is wanted", "Body lotion")
            .also("Product name", "SKU", "Finished product")
            .needed();

    public static final InputColumn UNITS = InputColumn.of("Units", WHOLE, "how many", "900")
            .also("Quantity", "Qty", "Pieces", "Demand", "Forecast", "Number of units")
            .limited(Limits.ONE_OR_MORE)
            .needed();

    public static final InputColumn NEEDED_BY = InputColumn.of(
                    "Needed by", DATE, "the day the units are needed; a month means its first day", "2027-01-29")
            .also("Need by", "Due date", "Due", "Date needed", "Required by", "Delivery date", "Date", "Month")
            .needed();

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Demand",
            List.of(
                    "Demands",
                    "Forecast",
                    "Sales plan",
                    "Production plan",
                    "Orders",
                    "Bedarf",
                    "Besoins",
                    "Fabbisogno",
                    "Demanda"),
            List.of(PRODUCT),
            List.of(List.of(PRODUCT, UNITS, NEEDED_BY)),
            List.of(PRODUCT, UNITS, NEEDED_BY),
            "Which products are wanted and by when; purchases are planned from it.");

    private DemandSheet() {}
}
