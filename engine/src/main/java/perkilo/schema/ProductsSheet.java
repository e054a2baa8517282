package perkilo.schema;

import static perkilo.schema.ValueKind.LIST;
import static perkilo.schema.ValueKind.MONEY;
import static perkilo.schema.ValueKind.NUMBER;
import static perkilo.schema.ValueKind.PERCENT;
import static perkilo.schema.ValueKind.QUANTITY;
import static perkilo.schema.ValueKind.TEXT;
import static perkilo.schema.ValueKind.UNIT;
import static perkilo.schema.ValueKind.WHOLE;

import java.util.List;

/** The Products sheet: formulas filled into packaging. */
public final class ProductsSheet {

    public static final InputColumn PRODUCT = InputColumn.of("Product", TEXT, "the product's name", "Body lotion")
            .also("Product name", "SKU", "Finished product")
            .needed();

    public static final InputColumn FORMULA = InputColumn.of("Formula", TEXT, "what is filled", "Body lotion")
            .also("Formula name", "Recipe", "Formulation", "Bulk")
            .needed();

    public static final InputColumn FILL = InputColumn.of("Fill", QUANTITY, "the nominal fill of one unit", "200")
            .also(
                    "Fill size",
                    "Filling",
                    "Fill quantity",
                    "Nominal fill",
                    "Net content",
                    "Net contents",
                    "Fill weight",
                    "Fill volume",
                    "Content")
            .limited(Limits.ABOVE_ZERO)
            .needed();

    public static final InputColumn FILL_UNIT = InputColumn.of("Fill unit", UNIT, "what the fill is measured in", "mL")
            .also("Unit", "UoM", "Unit of fill")
            .orElse("the unit in the header or beside the fill");

    public static final InputColumn DENSITY = InputColumn.of(
                    "Density g/mL", NUMBER, "of the bulk; needed where the fill is a volume", "0.99")
            .in("g/mL")
            .also("Density", "Bulk density", "Specific gravity", "SG")
            .limited(Limits.ABOVE_ZERO);

    public static final InputColumn OVERFILL = InputColumn.of(
                    "Overfill %", PERCENT, "filled on top of the nominal", "1.5")
            .also("Overfill", "Giveaway %")
            .orElse("0");

    public static final InputColumn FILLER_SD = InputColumn.of(
                    "Filler SD",
                    QUANTITY,
                    "the filler's standard deviation in the unit of the fill; sets the fill by the average-quantity rules",
                    "2.5")
            .also("Filler standard deviation", "Filling SD", "SD of filler")
            .orElse("the overfill is used");

    public static final InputColumn FILL_LOSS = InputColumn.of(
                    "Fill loss %", PERCENT, "bulk lost in filling, of what goes in", "1.5")
            .also("Fill loss", "Filling loss %")
            .limited(Limits.BELOW_HUNDRED)
            .orElse("0");

    public static final InputColumn SET_UP_HOURS = InputColumn.of("Filling set-up hours", NUMBER, "for each run", "2")
            .in("hours")
            .also("Set-up hours", "Setup hours", "Filling set-up")
            .orElse("0");

    public static final InputColumn UNITS_PER_HOUR = InputColumn.of(
                    "Units per hour", NUMBER, "what the line fills", "350")
            .also("Filling speed", "Units/hour", "Units/h", "Line speed")
            .limited(Limits.ABOVE_ZERO)
            .orElse("filling time is not counted");

    public static final InputColumn FILLING_PEOPLE = InputColumn.of("Filling people", NUMBER, "at the line", "2")
            .also("People", "Operators", "Filling operators", "Line staff")
            .orElse("1");

    public static final InputColumn TARGET_MARGIN = InputColumn.of(
                    "Target margin %", PERCENT, "the brand's, of the wholesale price", "55")
            .also("Target margin", "Margin %", "Brand margin %")
            .limited(Limits.BELOW_HUNDRED)
            .orElse("no price ladder");

    public static final InputColumn DISTRIBUTOR_MARGIN = InputColumn.of(
                    "Distributor margin %",
                    PERCENT, "of the price to the retailer, where a distributor is between you and the shop", "30")
            .also("Distributor margin", "Wholesaler margin %", "Distributor's margin %")
            .limited(Limits.BELOW_HUNDRED)
            .orElse("0");

    public static final InputColumn RETAILER_MARGIN = InputColumn.of(
                    "Retailer margin %", PERCENT, "of the retail price without VAT", "45")
            .also("Retailer margin", "Retail margin %", "Trade margin %")
            .limited(Limits.BELOW_HUNDRED)
            .orElse("0");

    public static final InputColumn VAT = InputColumn.of("VAT %", PERCENT, "on the retail price", "19")
            .also("VAT", "GST %", "Sales tax %", "VAT rate %")
            .orElse("0");

    public static final InputColumn TARGET_RETAIL_PRICE = InputColumn.of(
                    "Target retail price", MONEY, "with VAT, in home currency", "29.90")
            .also("Retail price", "Target price", "RRP", "Shelf price")
            .limited(Limits.ABOVE_ZERO);

    public static final InputColumn ONE_OFF_COSTS = InputColumn.of(
                    "One-off costs",
                    MONEY,
                    "stability, challenge test, safety assessment, notification, artwork",
                    "2380")
            .also("One-off cost", "One-offs", "One off costs", "Development cost", "Launch cost")
            .orElse("0");

    public static final InputColumn SPREAD_OVER = InputColumn.of(
                    "Spread over units", WHOLE, "units that the one-off costs are spread over", "5000")
            .also("Spread over", "Spread one-offs over")
            .limited(Limits.ONE_OR_MORE)
            .orElse("the run itself");

    public static final InputColumn YEARLY_UNITS = InputColumn.of("Yearly units", WHOLE, "sold in a year", "5000")
            .also("Units per year", "Annual units", "Yearly volume", "Annual volume")
            .limited(Limits.ONE_OR_MORE);

    public static final InputColumn LEAD_DAYS = InputColumn.of(
                    "Lead days", WHOLE, "how many days before the units materials and packaging are needed", "10")
            .in("days")
            .also("Making lead days", "Production lead days", "Days to make", "Making days")
            .orElse("the setting Making lead days");

    public static final InputColumn REQUIRED_TAGS = InputColumn.of(
                    "Required tags", LIST, "what every material must be", "vegan")
            .also("Must be", "Required claims");

    public static final InputColumn NATURAL_ORIGIN_TARGET = InputColumn.of(
                    "Natural origin target %", PERCENT, "by ISO 16128, for the formula", "95")
            .also("Natural origin target", "Natural origin %", "Natural target %")
            .limited(Limits.UP_TO_HUNDRED);

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Products",
            List.of(
                    "Product",
                    "SKUs",
                    "Finished products",
                    "Product list",
                    "Produkte",
                    "Produits",
                    "Prodotti",
                    "Productos"),
            List.of(PRODUCT),
            List.of(List.of(PRODUCT, FORMULA, FILL)),
            List.of(
                    PRODUCT,
                    FORMULA,
                    FILL,
                    FILL_UNIT,
                    DENSITY,
                    OVERFILL,
                    FILLER_SD,
                    FILL_LOSS,
                    SET_UP_HOURS,
                    UNITS_PER_HOUR,
                    FILLING_PEOPLE,
                    TARGET_MARGIN,
                    DISTRIBUTOR_MARGIN,
                    RETAILER_MARGIN,
                    VAT,
                    TARGET_RETAIL_PRICE,
                    ONE_OFF_COSTS,
                    SPREAD_OVER,
                    YEARLY_UNITS,
                    LEAD_DAYS,
                    REQUIRED_TAGS,
                    NATURAL_ORIGIN_TARGET),
            "What is sold: a formula, its fill, and the target prices.");

    private ProductsSheet() {}
}
