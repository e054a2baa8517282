package perkilo.schema;

import static perkilo.schema.ValueKind.CHOICE;
import static perkilo.schema.ValueKind.CURRENCIES;
import static perkilo.schema.ValueKind.CURRENCY;
import static perkilo.schema.ValueKind.DATE;
import static perkilo.schema.ValueKind.MONEY;
import static perkilo.schema.ValueKind.PERCENT;
import static perkilo.schema.ValueKind.TEXT;
import static perkilo.schema.ValueKind.WHOLE;

import java.util.List;

/** The Settings sheet: values for the whole workbook, one setting per row. */
public final class SettingsSheet {

    public static final InputColumn SETTING = InputColumn.of(
                    "Setting", TEXT, "the name of the setting", "Home currency")
            .also("Name", "Parameter", "Option", "Settings")
            .needed();

    public static final InputColumn VALUE =
            InputColumn.of("Value", ValueKind.ANY, "the setting's value", "EUR").needed();

    public static final InputColumn HOME_CURRENCY = InputColumn.of(
                    "Home currency", CURRENCY, "the currency that costs are computed in", "EUR")
            .also("Currency", "Base currency", "Own currency", "Company currency")
            .orElse("the only currency of the offers");

    public static final InputColumn REPORT_CURRENCIES = InputColumn.of(
                    "Report currencies", CURRENCIES, "currencies that results are also shown in", "EUR, GBP")
            .also("Report currency", "Reporting currencies", "Other currencies")
            .orElse("the home currency alone");

    public static final InputColumn COSTING_DATE = InputColumn.of(
                    "Costing date", DATE, "the day whose offers and rates are used", "2026-11-20")
            .also("Date", "Cost date", "Date of costing", "Valuation date")
            .orElse("today");

    public static final InputColumn CONVERSION_MARGIN = InputColumn.of(
                    "Conversion margin %",
                    PERCENT, "what the bank takes for paying an invoice in another currency", "1.5")
            .also("Conversion margin", "Bank margin %", "FX margin %", "Exchange margin %")
            .limited(Limits.UP_TO_HUNDRED)
            .orElse("0");

    public static final InputColumn DUTY_BASIS = InputColumn.of(
                    "Duty basis",
                    CHOICE,
                    "CIF where duty is charged on freight and insurance too, FOB where on goods alone",
                    "CIF")
            .also("Customs basis", "Duty charged on")
            .orElse("CIF");

    public static final InputColumn LEFTOVER_CREDIT = InputColumn.of(
                    "Leftover credit %", PERCENT, "the part of a usable leftover's goods price that is credited", "0")
            .also("Leftover credit", "Credit for leftovers %")
            .limited(Limits.UP_TO_HUNDRED)
            .orElse("0");

    public static final InputColumn LABOUR_RATE = InputColumn.of(
                    "Labour rate", MONEY, "one hour of work, in home currency", "24")
            .also("Labor rate", "Hourly rate", "Wage per hour", "Labour rate per hour", "Labour cost per hour")
            .orElse("0");

    public static final InputColumn OVERHEAD = InputColumn.of("Overhead %", PERCENT, "overhead on labour", "15")
            .also("Overhead", "Overheads %", "Overhead on labour %")
            .orElse("0");

    public static final InputColumn HOLDING = InputColumn.of(
                    "Holding % per year",
                    PERCENT, "the cost of keeping stock for a year, in per cent of its price", "12")
            .also("Holding cost %", "Holding %", "Stock holding % per year", "Carrying cost %")
            .orElse("0");

    public static final InputColumn PRICE_AGE_LIMIT = InputColumn.of(
                    "Price age limit days",
                    WHOLE,
                    "older quotes get a warning; ends a quote without Valid until once a newer one followed",
                    "180")
            .in("days")
            .also("Price age limit", "Maximum price age", "Max price age")
            .orElse("180");

    public static final InputColumn PROCESS_WATER = InputColumn.of(
                    "Process water price per kg", MONEY, "water from the tap, purified, in home currency", "0.02")
            .also("Process water price", "Water price per kg", "Process water per kg", "Water price")
            .orElse("0");

    public static final InputColumn LEAST_SAVING = InputColumn.of(
                    "Least saving %", PERCENT, "swaps that save less of the raw material cost are not offered", "0.5")
            .also("Least saving", "Minimum saving %", "Smallest saving %")
            .limited(Limits.UP_TO_HUNDRED)
            .orElse("0.5");

    public static final InputColumn SENSITIVITY = InputColumn.of(
                    "Sensitivity %",
                    PERCENT, "how far each price, rate and size is moved to see what it does to a cost", "10")
            .also("Sensitivity", "Sensitivity range %")
            .limited(Limits.BELOW_HUNDRED)
            .orElse("10");

    public static final InputColumn HORIZON_DAYS = InputColumn.of(
                    "Risk horizon days", WHOLE, "how many days ahead the risk band of a cost looks", "90")
            .in("days")
            .also("Risk horizon", "Risk days", "Horizon of the risk band")
            .limited(Limits.ONE_OR_MORE)
            .orElse("90");

    public static final InputColumn CASH_PER_MONTH = InputColumn.of(
                    "Cash limit per month",
                    MONEY,
                    "the most that the orders of one month may cost, in home currency",
                    "8000")
            .also("Monthly cash limit", "Cash per month", "Budget per month", "Monthly budget")
            .limited(Limits.ABOVE_ZERO)
            .orElse("no limit");

    public static final InputColumn CASH_TOTAL = InputColumn.of(
                    "Cash limit", MONEY, "the most that all orders may cost, in home currency", "30000")
            .also("Total cash limit", "Cash limit total", "Budget", "Total budget")
            .limited(Limits.ABOVE_ZERO)
            .orElse("no limit");

    public static final InputColumn STABILITY_TEST = InputColumn.of(
                    "Stability test cost", MONEY, "for one changed formula, in home currency", "650")
            .also("Stability test", "Stability cost", "Cost of stability test")
            .limited(Limits.ZERO_OR_MORE)
            .orElse("not known");

    public static final InputColumn CHALLENGE_TEST = InputColumn.of(
                    "Challenge test cost",
                    MONEY,
                    "the test of preservative efficacy of one changed formula, in home currency",
                    "480")
            .also("Challenge test", "Preservative efficacy test cost", "Cost of challenge test")
            .limited(Limits.ZERO_OR_MORE)
            .orElse("not known");

    public static final InputColumn ASSESSMENT = InputColumn.of(
                    "Assessment cost", MONEY, "a new safety assessment of one changed formula, in home currency", "300")
            .also("Safety assessment cost", "Safety assessment", "Assessment", "Cost of assessment")
            .limited(Limits.ZERO_OR_MORE)
            .orElse("not known");

    public static final InputColumn COMPANY = InputColumn.of(
                    "Company", TEXT, "who orders, as purchase orders print it", "Example Skincare")
            .also("Company name", "Buyer", "Buyer name", "Our company", "Ordered by")
            .orElse("purchase orders leave room for it");

    public static final InputColumn COMPANY_ADDRESS = InputColumn.of(
                    "Company address",
                    TEXT,
                    "as purchase orders print it; several lines, or commas",
                    "Kaigade 12, 8000 Aarhus, Denmark")
            .also("Buyer address", "Our address", "Address", "Billing address", "Invoice address")
            .orElse("purchase orders leave room for it");

    public static final InputColumn DELIVERY_ADDRESS = InputColumn.of(
                    "Delivery address", TEXT, "where goods are delivered", "Kaigade 14, gate 2, 8000 Aarhus")
            .also("Deliver to", "Ship to", "Shipping address", "Delivery to")
            .orElse("the company address");

    public static final InputColumn COMPANY_CONTACT = InputColumn.of(
                    "Company contact", TEXT, "who answers questions about orders", "Jonas Lind")
            .also("Buyer contact", "Contact", "Contact person", "Our contact");

    public static final InputColumn COMPANY_EMAIL = InputColumn.of(
                    "Company e-mail", TEXT, "where suppliers answer", "orders@skincare.example")
            .also("Buyer e-mail", "E-mail", "Our e-mail", "Buyer contact e-mail", "Company mail");

    public static final InputColumn TAX_NUMBER = InputColumn.of(
                    "VAT number", TEXT, "the number for value added tax", "DK00000000")
            .also("VAT no", "VAT ID", "Tax number", "Tax ID", "VAT/tax number", "VAT registration number");

    /** Who orders, as purchase orders print it. */
    public static final List<InputColumn> BUYER =
            List.of(COMPANY, COMPANY_ADDRESS, DELIVERY_ADDRESS, COMPANY_CONTACT, COMPANY_EMAIL, TAX_NUMBER);

    /** What is only needed to see when a trial pays back. */
    public static final List<InputColumn> TESTS = List.of(STABILITY_TEST, CHALLENGE_TEST, ASSESSMENT);

    /** All settings, in the order of the templates. */
    public static final List<InputColumn> SETTINGS = List.of(
            HOME_CURRENCY,
            REPORT_CURRENCIES,
            COSTING_DATE,
            CONVERSION_MARGIN,
            DUTY_BASIS,
            LEFTOVER_CREDIT,
            LABOUR_RATE,
            OVERHEAD,
            HOLDING,
            PRICE_AGE_LIMIT,
            PROCESS_WATER,
            CASH_PER_MONTH,
            CASH_TOTAL,
            LEAST_SAVING,
            SENSITIVITY,
            HORIZON_DAYS,
            STABILITY_TEST,
            CHALLENGE_TEST,
            ASSESSMENT,
            COMPANY,
            COMPANY_ADDRESS,
            DELIVERY_ADDRESS,
            COMPANY_CONTACT,
            COMPANY_EMAIL,
            TAX_NUMBER);

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Settings",
            List.of(
                    "Setting",
                    "Options",
                    "Parameters",
                    "Set-up",
                    "Einstellungen",
                    "Paramètres",
                    "Impostazioni",
                    "Ajustes"),
            List.of(SETTING),
            List.of(List.of(SETTING, VALUE)),
            List.of(SETTING, VALUE),
            "Values for the whole workbook; leave out what you do not need.");

    private SettingsSheet() {}
}
