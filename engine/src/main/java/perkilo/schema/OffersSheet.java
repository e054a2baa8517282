package perkilo.schema;

import static perkilo.schema.ValueKind.CURRENCY;
import static perkilo.schema.ValueKind.DATE;
import static perkilo.schema.ValueKind.MONEY;
import static perkilo.schema.ValueKind.PERCENT;
import static perkilo.schema.ValueKind.PRICE_UNIT;
import static perkilo.schema.ValueKind.QUANTITY;
import static perkilo.schema.ValueKind.TEXT;
import static perkilo.schema.ValueKind.UNIT;
import static perkilo.schema.ValueKind.WHOLE;

import java.util.List;

/** The Offers sheet: suppliers' prices for materials and components, one row per price break. */
public final class OffersSheet {

    public static final InputColumn SUPPLIER = SuppliersSheet.SUPPLIER;

    public static final InputColumn ITEM = InputColumn.of(
                    "Item", TEXT, "the material or component, as the formula names it", "Glycerin")
            .also(
                    "Material",
                    "Raw material",
                    "Ingredient",
                    "Component",
                    "Trade name",
                    "Product name",
                    "Article",
                    "Item name",
                    "Material name")
            .needed();

    public static final InputColumn PACK_SIZE = InputColumn.of("Pack size", QUANTITY, "what one pack holds", "25")
            .also(
                    "Pack",
                    "Package size",
                    "Packaging size",
                    "Pack qty",
                    "Pack quantity",
                    "Size",
                    "Container size",
                    "Unit size")
            .limited(Limits.ABOVE_ZERO)
            .needed();

    public static final InputColumn PACK_UNIT = InputColumn.of(
                    "Pack unit", UNIT, "what the pack is measured in; each for pieces", "kg")
            .also("Unit", "UoM", "Unit of measure", "Pack UoM", "Units")
            .orElse("the unit in the header or beside the pack size");

    public static final InputColumn FROM_QUANTITY = InputColumn.of(
                    "From quantity", QUANTITY, "the price holds from this quantity upwards, in the pack unit", "100")
            .also(
                    "From qty",
                    "From",
                    "Price break",
                    "Break quantity",
                    "Break qty",
                    "Quantity from",
                    "Qty from",
                    "Scale")
            .orElse("from the first pack");

    public static final InputColumn PRICE = InputColumn.of(
                    "Price", MONEY, "the price from that quantity upwards", "1.74")
            .also("Unit price", "Net price", "Cost", "Unit cost", "Offer price", "List price", "Amount")
            .alsoIn("pack", "Pack price", "Package price", "Drum price")
            .alsoIn("kg", "Kilo price", "Price per kilo")
            .needed();

    public static final InputColumn PRICE_PER = InputColumn.of(
                    "Price per", PRICE_UNIT, "what the price is for: pack, kg, g, lb, oz, L, each …", "kg")
            .also("Per", "Price unit", "Price basis", "Unit of price", "Price UoM")
            .orElse("the unit in the header or beside the price");

    public static final InputColumn CURRENCY_OF_PRICE = InputColumn.of(
                    "Currency", CURRENCY, "what the price is in", "EUR")
            .also("Curr", "Ccy", "Price currency")
            .orElse("the sign beside the price, else the supplier's");

    public static final InputColumn MINIMUM_ORDER = InputColumn.of(
                    "Minimum order", QUANTITY, "the smallest quantity of the item in one order, in the pack unit", "25")
            .also("MOQ", "Min order", "Minimum order quantity", "Min order qty", "Minimum qty", "Minimum quantity")
            .orElse("one pack");

    public static final InputColumn ORDER_MULTIPLE = InputColumn.of(
                    "Order multiple", WHOLE, "packs are sold in multiples of this", "2")
            .also("Multiple", "Order in multiples of", "Pack multiple", "Packs per order unit")
            .limited(Limits.ONE_OR_MORE)
            .orElse("1");

    public static final InputColumn DUTY = SuppliersSheet.DUTY.orElse("the supplier's");

    public static final InputColumn QUOTED_ON = InputColumn.of(
                    "Quoted on",
                    DATE,
                    "the day of the quote; a newer one supersedes it, a coming day announces the price for orders from then on",
                    "2026-10-13")
            .also("Quote date", "Date quoted", "Date", "Price date", "Quoted", "Valid from", "Date of quote");

    public static final InputColumn VALID_UNTIL = InputColumn.of(
                    "Valid until", DATE, "the last day the price holds", "2027-03-31")
            .also("Valid to", "Expiry", "Expires", "Valid till", "Quote expires", "Price valid until", "Expiry date");

    public static final InputColumn DISCOUNT = InputColumn.of("Discount %", PERCENT, "taken off the price", "5")
            .limited(Limits.BELOW_HUNDRED)
            .orElse("0");

    public static final InputColumn SURCHARGE =
            InputColumn.of("Surcharge %", PERCENT, "added to the price", "3").orElse("0");

    public static final InputColumn MINIMUM_ORDER_VALUE = InputColumn.of(
                    "Minimum order value", MONEY, "goods value of the supplier's smallest order", "250")
            .also("MOV", "Min order value", "Minimum invoice value")
            .orElse("the supplier's");

    public static final InputColumn FREIGHT_PER_ORDER = InputColumn.of(
                    "Freight per order", MONEY, "freight for each order of the supplier, at any weight", "85")
            .also("Shipping per order", "Carriage per order")
            .orElse("the supplier's");

    public static final InputColumn FREIGHT_PER_KG = SuppliersSheet.FREIGHT_PER_KG.orElse("the supplier's");

    public static final InputColumn SMALL_ORDER_CHARGE = SuppliersSheet.SMALL_ORDER_CHARGE.orElse("the supplier's");

    public static final InputColumn INSURANCE = SuppliersSheet.INSURANCE.orElse("the supplier's");

    public static final InputColumn ARTICLE = InputColumn.of(
                    "Article number", TEXT, "the supplier's number for the item; purchase orders print it", "G-1027")
            .also("Article no", "Art no", "Supplier article number", "Supplier item number", "Supplier product code")
            .also("Catalogue number", "Order code", "Artikelnummer", "Artikel-Nr.", "Art.-Nr.", "Bestellnummer")
            .also("Référence article", "Codice articolo", "Código de artículo");

    public static final InputColumn LISTED_AS = InputColumn.of(
                    "Supplier's item name",
                    TEXT,
                    "what the supplier calls the item; purchase orders print it",
                    "Glycerine 99.5 % EP")
            .also("Supplier item name", "Supplier's name for the item", "Listed as", "Supplier description")
            .also("Supplier product name")
            .orElse("the item's name");

    public static final InputColumn TERMS = SuppliersSheet.TERMS.orElse("the supplier's");

    public static final InputColumn LEAD_TIME = SuppliersSheet.LEAD_TIME.orElse("the supplier's");

    public static final InputColumn INCI = InputColumn.of(
                    "INCI name",
                    TEXT,
                    "the item's name in the ingredient list; finds it for a line of a formula that has the INCI name alone",
                    "Glycerin")
            .also(MaterialsSheet.INCI_HEADERS);

    /** Columns that belong to the supplier: what is in them holds for all orders from that supplier. */
    public static final List<InputColumn> OF_SUPPLIER = List.of(
            TERMS, MINIMUM_ORDER_VALUE, SMALL_ORDER_CHARGE, FREIGHT_PER_ORDER, FREIGHT_PER_KG, INSURANCE, LEAD_TIME);

    /** The word in a kept list for an item without a price, such as one on request or discontinued. */
    public static final String NO_PRICE = "no price";

    /** The heading in a kept list of how a price follows from the one on the list. */
    public static final String NOTE = "Note";

    /** The heading in a kept list of the file that a price came from. */
    public static final String FROM_FILE = "From file";

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Offers",
            List.of(
                    "Offer",
                    "Prices",
                    "Price list",
                    "Pricelist",
                    "Quotes",
                    "Supplier prices",
                    "Quotations",
                    "Preise",
                    "Preisliste",
                    "Angebote",
                    "Einkaufspreise",
                    "Offres",
                    "Tarifs",
                    "Prix",
                    "Prezzi",
                    "Listino",
                    "Offerte",
                    "Precios",
                    "Ofertas",
                    "Price tab",
                    "Price sheet"),
            List.of(SUPPLIER, ITEM),
            List.of(List.of(SUPPLIER, ITEM, PRICE)),
            List.of(
                    SUPPLIER,
                    ITEM,
                    PACK_SIZE,
                    PACK_UNIT,
                    FROM_QUANTITY,
                    PRICE,
                    PRICE_PER,
                    CURRENCY_OF_PRICE,
                    MINIMUM_ORDER,
                    ORDER_MULTIPLE,
                    DUTY,
                    QUOTED_ON,
                    VALID_UNTIL,
                    DISCOUNT,
                    SURCHARGE,
                    ARTICLE,
                    LISTED_AS,
                    TERMS,
                    MINIMUM_ORDER_VALUE,
                    SMALL_ORDER_CHARGE,
                    FREIGHT_PER_ORDER,
                    FREIGHT_PER_KG,
                    INSURANCE,
                    LEAD_TIME,
                    INCI),
            "Suppliers' prices: one row per supplier, item, pack size and price break.");

    private OffersSheet() {}
}
