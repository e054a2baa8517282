package perkilo.schema;

import java.util.List;

/** All tables that a workbook may hold. */
public final class Schemas {

    /** All sheets, in the order of the templates. */
    public static final List<SheetSchema> ALL = List.of(
            SettingsSheet.SCHEMA,
            SuppliersSheet.SCHEMA,
            OffersSheet.SCHEMA,
            MaterialsSheet.SCHEMA,
            FormulaSheet.SCHEMA,
            BatchesSheet.SCHEMA,
            ProductsSheet.SCHEMA,
            ComponentsSheet.SCHEMA,
            RunsSheet.SCHEMA,
            DemandSheet.SCHEMA,
            StockSheet.SCHEMA,
            RatesSheet.SCHEMA,
            ScenariosSheet.SCHEMA,
            ActualsSheet.SCHEMA);

    /** The tables that a price list may hold. */
    public static final List<SheetSchema> OF_PRICE_LISTS =
            List.of(SuppliersSheet.SCHEMA, OffersSheet.SCHEMA, MaterialsSheet.SCHEMA);

    /** The sheets that the tool itself adds to a workbook; they are never read as tables. */
    public static final List<String> RESULT_SHEETS = List.of(
            "At a glance",
            "Cost summary",
            "Cost detail",
            "Price ladder",
            "What moves the cost",
            "Which size",
            "Scenarios compared",
            "Target cost",
            "Why it changed",
            "Plan and actual",
            "Order plan",
            "Supplier orders",
            "Orders to send",
            "Stock and leftovers",
            "Why these orders",
            "Runs planned",
            "Swaps",
            "Blend",
            "Ingredient list",
            "Price changes",
            "What was read",
            "Inputs as computed",
            "Messages");

    private Schemas() {}
}
