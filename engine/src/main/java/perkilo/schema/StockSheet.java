package perkilo.schema;

import static perkilo.schema.ValueKind.DATE;
import static perkilo.schema.ValueKind.QUANTITY;
import static perkilo.schema.ValueKind.TEXT;
import static perkilo.schema.ValueKind.UNIT;

import java.util.List;
import java.util.stream.Stream;

/** The Stock sheet: goods on the shelf and goods on order. */
public final class StockSheet {

    public static final InputColumn ITEM = InputColumn.of("Item", TEXT, "the material or component", "Glycerin")
            .also("Material", "Raw material", "Ingredient", "Component", "Trade name", "Item name", "Article")
            .needed();

    public static final InputColumn QUANTITY_OF = InputColumn.of("Quantity", QUANTITY, "how much there is", "18")
            .also("Qty", "Stock", "On hand", "Amount", "In stock", "Quantity on hand")
            .needed();

    public static final InputColumn UNIT_OF = InputColumn.of("Unit", UNIT, "what the quantity is measured in", "kg")
            .also("UoM", "Unit of measure", "Units")
            .orElse("the unit in the header or beside the quantity");

    public static final InputColumn EXPIRES = InputColumn.of(
                    "Expires", DATE, "the last day that it may be used", "2028-05-31")
            .also("Expiry", "Expiry date", "Best before", "Use by", "Retest date", "Expires on")
            .orElse("it does not expire");

    public static final InputColumn EXPECTED = InputColumn.of(
                    "Expected on",
                    DATE,
                    "for goods on order: the day they are expected; they can be used from that day on",
                    "2027-02-15")
            .also(
                    "Expected",
                    "Expected date",
                    "Expected delivery",
                    "Expected arrival",
                    "Due",
                    "Due on",
                    "Due date",
                    "Arrives",
                    "Arrives on",
                    "Arrival",
                    "Arrival date",
                    "Delivery",
                    "Delivery date",
                    "Delivery on",
                    "ETA",
                    "Available from")
            .orElse("it is on the shelf");

    /** Names of sheets that list only goods on order, none on the shelf. */
    public static final List<String> ON_ORDER = List.of("On order", "Goods on order", "On the way", "In transit");

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Stock",
            Stream.concat(
                            Stream.of(
                                    "Inventory",
                                    "On hand",
                                    "Stock on hand",
                                    "Warehouse",
                                    "Lager",
                                    "Bestand",
                                    "Lagerbestand",
                                    "Stocks",
                                    "Magazzino",
                                    "Giacenze",
                                    "Inventario",
                                    "Existencias"),
                            ON_ORDER.stream())
                    .toList(),
            List.of(ITEM),
            List.of(List.of(ITEM, QUANTITY_OF, UNIT_OF), List.of(ITEM, QUANTITY_OF, EXPIRES)),
            List.of(ITEM, QUANTITY_OF, UNIT_OF, EXPIRES, EXPECTED),
            "What is on the shelf and what is on order; used before anything is bought, earliest expiry first.");

    private StockSheet() {}
}
