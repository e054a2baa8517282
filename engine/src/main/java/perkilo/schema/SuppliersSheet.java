package perkilo.schema;

import static perkilo.schema.ValueKind.CURRENCY;
import static perkilo.schema.ValueKind.MONEY;
import static perkilo.schema.ValueKind.PERCENT;
import static perkilo.schema.ValueKind.TERM;
import static perkilo.schema.ValueKind.TEXT;
import static perkilo.schema.ValueKind.WHOLE;

import java.util.List;

/** The Suppliers sheet: who sells, and the charges on top of the goods. */
public final class SuppliersSheet {

    public static final InputColumn SUPPLIER = InputColumn.of("Supplier", TEXT, "who sells", "Tarnholt Oleo")
            .also("Vendor", "Supplier name", "Vendor name", "Seller", "Distributor", "Company")
            .needed();

    public static final InputColumn CURRENCY_OF_INVOICE = InputColumn.of(
                    "Currency", CURRENCY, "what the supplier invoices in", "EUR")
            .also("Invoice currency", "Supplier currency", "Curr", "Ccy")
            .orElse("the currency of the supplier's offers");

    public static final InputColumn TERMS = InputColumn.of(
                    "Terms", TERM, "the delivery term (Incoterms 2020), a place may follow", "FCA Hamburg")
            .also("Delivery terms", "Delivery term", "Incoterm", "Incoterms", "Terms of delivery")
            .orElse("charges are used as typed");

    public static final InputColumn MINIMUM_ORDER_VALUE = InputColumn.of(
                    "Minimum order value", MONEY, "goods value of the smallest order", "250")
            .also("MOV", "Min order value", "Minimum order", "Min order", "Order minimum", "Minimum invoice value")
            .orElse("none");

    public static final InputColumn SMALL_ORDER_CHARGE = InputColumn.of(
                    "Small-order charge",
                    MONEY,
                    "the extra charge for an order below the minimum; blank: such an order is refused",
                    "30")
            .also("Small order fee", "Small order surcharge", "Surcharge below minimum", "Low order charge")
            .orElse("orders below the minimum are not possible");

    public static final InputColumn FREIGHT_PER_ORDER = InputColumn.of(
                    "Freight per order", MONEY, "freight for each order, at any weight", "85")
            .also(
                    "Freight",
                    "Shipping per order",
                    "Shipping",
                    "Delivery charge",
                    "Carriage per order",
                    "Carriage",
                    "Delivery cost",
                    "Delivery costs",
                    "Delivery fee",
                    "Delivery",
                    "Transport",
                    "Transport cost",
                    "Postage",
                    "Shipping cost",
                    "Shipping costs",
                    "Freight cost",
                    "Freight charge",
                    "Fracht",
                    "Frachtkosten",
                    "Versandkosten",
                    "Versand",
                    "Lieferkosten",
                    "Transportkosten",
                    "Porto",
                    "Frais de port",
                    "Port",
                    "Frais de livraison",
                    "Frais de transport",
                    "Trasporto",
                    "Spese di trasporto",
                    "Spedizione",
                    "Portes",
                    "Gastos de envío",
                    "Flete",
                    "Transporte")
            .orElse("0");

    public static final InputColumn FREIGHT_PER_KG = InputColumn.of(
                    "Freight per kg", MONEY, "freight for each kilogram", "0.28")
            .also("Shipping per kg", "Carriage per kg", "Freight rate per kg")
            .orElse("0");

    public static final InputColumn INSURANCE = InputColumn.of(
                    "Insurance %", PERCENT, "transport insurance, in per cent of the goods", "0.2")
            .also("Insurance", "Transport insurance %")
            .limited(Limits.UP_TO_HUNDRED)
            .orElse("0");

    public static final InputColumn DUTY = InputColumn.of(
                    "Duty %", PERCENT, "import duty on the supplier's goods, unless an offer names its own", "6.5")
            .also("Duty", "Import duty %", "Customs duty %", "Tariff %", "Duty rate %")
            .orElse("0");

    public static final InputColumn LEAD_TIME = InputColumn.of("Lead time days", WHOLE, "from order to arrival", "14")
            .in("days")
            .also("Lead time", "Delivery time", "Delivery time days", "Leadtime")
            .orElse("not known: an order is planned as if delivered on the day it is placed");

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Suppliers",
            List.of(
                    "Supplier",
                    "Vendors",
                    "Vendor list",
                    "Supplier list",
                    "Lieferanten",
                    "Fournisseurs",
                    "Fornitori",
                    "Proveedores",
                    "Who we buy from"),
            List.of(SUPPLIER),
            List.of(
                    List.of(SUPPLIER, CURRENCY_OF_INVOICE),
                    List.of(SUPPLIER, TERMS),
                    List.of(SUPPLIER, LEAD_TIME),
                    List.of(SUPPLIER, MINIMUM_ORDER_VALUE),
                    List.of(SUPPLIER, FREIGHT_PER_ORDER),
                    List.of(SUPPLIER, FREIGHT_PER_KG),
                    List.of(SUPPLIER, DUTY)),
            List.of(
                    SUPPLIER,
                    CURRENCY_OF_INVOICE,
                    TERMS,
                    MINIMUM_ORDER_VALUE,
                    SMALL_ORDER_CHARGE,
                    FREIGHT_PER_ORDER,
                    FREIGHT_PER_KG,
                    INSURANCE,
                    DUTY,
                    LEAD_TIME),
            "Who sells, and the charges on top of the goods; amounts in the supplier's currency.");

    private SuppliersSheet() {}
}
