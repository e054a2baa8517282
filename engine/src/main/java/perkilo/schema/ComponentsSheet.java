package perkilo.schema;

import static perkilo.schema.ValueKind.NUMBER;
import static perkilo.schema.ValueKind.PERCENT;
import static perkilo.schema.ValueKind.TEXT;
import static perkilo.schema.ValueKind.WHOLE;

import java.util.List;

/** The Components sheet: the packaging of each product. */
public final class ComponentsSheet {

    public static final InputColumn PRODUCT = ProductsSheet.PRODUCT;

    public static final InputColumn COMPONENT = InputColumn.of(
                    "Component", TEXT, "jar, lid, label, carton …", "Jar 50 mL amber glass")
            .also(
                    "Packaging",
                    "Packaging component",
                    "Packaging item",
                    "Component name",
                    "Part",
                    "Item",
                    "Pack component")
            .needed();

    public static final InputColumn PER_UNIT = InputColumn.of(
                    "Units per product", NUMBER, "pieces for one unit; 0.05 for a case of 20", "1")
            .also(
                    "Per unit",
                    "Per product",
                    "Pieces per unit",
                    "Qty per unit",
                    "Quantity per unit",
                    "Quantity",
                    "Qty",
                    "Pieces")
            .limited(Limits.ABOVE_ZERO)
            .orElse("1");

    public static final InputColumn LOSS = InputColumn.of(
                    "Loss %", PERCENT, "pieces spoiled on the line, of those taken", "1.5")
            .also("Loss", "Scrap %", "Waste %", "Spoilage %")
            .limited(Limits.BELOW_HUNDRED)
            .orElse("0");

    public static final InputColumn WEIGHT = InputColumn.of(
                    "Weight g",
                    NUMBER,
                    "grams of one piece, for freight per kg; blank: unknown, so no freight per kg is counted for it",
                    "86")
            .also(
                    "Weight",
                    "Weight per piece",
                    "Weight per piece g",
                    "Piece weight",
                    "Grams per piece",
                    "Unit weight g")
            .limited(Limits.ABOVE_ZERO);

    public static final InputColumn SAFETY_STOCK = InputColumn.of(
                    "Safety stock", WHOLE, "pieces that are always to be there, for what was not planned", "100")
            .also("Safety stock pieces", "Buffer stock", "Minimum stock", "Min stock", "Reserve")
            .orElse("0");

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Components",
            List.of(
                    "Component",
                    "Packaging",
                    "Packaging components",
                    "Bill of materials",
                    "BOM",
                    "Packmittel",
                    "Verpackung",
                    "Stückliste",
                    "Emballages",
                    "Imballaggi",
                    "Embalajes"),
            List.of(PRODUCT, COMPONENT),
            List.of(List.of(PRODUCT, COMPONENT)),
            List.of(PRODUCT, COMPONENT, PER_UNIT, LOSS, WEIGHT, SAFETY_STOCK),
            "What each product is packed in: one row per component.");

    private ComponentsSheet() {}
}
