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

    public static final InputColumn PAYMENT_TERMS = InputColumn.of(
                    "Payment terms",
                    TEXT,
                    "as purchase orders print them; the days and the prepaid part have their own columns",
                    "30 days net")
            .also("Terms of payment", "Payment conditions")
            .orElse("orders print Prepaid % and Payment terms days, if they are filled");

    public static final InputColumn PAYMENT_DAYS = InputColumn.of(
                    "Payment terms days", WHOLE, "from arrival of the goods to payment of what is not prepaid", "30")
            .in("days")
            .also("Payment days", "Days to pay", "Credit days", "Net days", "Payment period days", "Payment due days")
            .orElse("0 if Prepaid % is filled; if both are blank, all is paid on the day of the order");

    public static final InputColumn PREPAID = InputColumn.of(
                    "Prepaid %", PERCENT, "the part of goods and charges that is paid with the order", "30")
            .also("Prepaid", "Prepayment %", "Prepayment", "Advance payment %", "Paid in advance %", "Deposit %")
            .also("Down payment %")
            .limited(Limits.UP_TO_HUNDRED)
            .orElse("0 if Payment terms days is filled; if both are blank, all is paid on the day of the order");

    public static final InputColumn ADDRESS = InputColumn.of(
                    "Address",
                    TEXT,
                    "as purchase orders print it; several lines, or commas",
                    "Hafenweg 4, 20457 Hamburg")
            .also("Postal address", "Supplier address", "Street address")
            .orElse("orders leave room for it");

    public static final InputColumn CONTACT = InputColumn.of(
                    "Contact", TEXT, "the person who takes orders", "Ida Brandt")
            .also("Contact person", "Contact name", "Sales contact", "Attention");

    public static final InputColumn EMAIL = InputColumn.of("E-mail", TEXT, "where orders go", "orders@tarnholt.example")
            .also("Order email", "Email address", "E-mail for orders", "Mail", "Contact email");

    public static final InputColumn OUR_NUMBER = InputColumn.of(
                    "Our customer number", TEXT, "your number at this supplier", "10482")
            .also("Customer number", "Customer no", "Account number", "Our account number", "Our number");

    /** What only purchase orders and the days of payment depend on. */
    public static final List<InputColumn> OF_PURCHASE_ORDERS =
            List.of(PAYMENT_TERMS, PAYMENT_DAYS, PREPAID, ADDRESS, CONTACT, EMAIL, OUR_NUMBER);

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
                    LEAD_TIME,
                    PAYMENT_TERMS,
                    PAYMENT_DAYS,
                    PREPAID,
                    ADDRESS,
                    CONTACT,
                    EMAIL,
                    OUR_NUMBER),
            "Who sells, and the charges on top of the goods; amounts in the supplier's currency.");

    private SuppliersSheet() {}
}
