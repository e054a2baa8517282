package perkilo.schema;

import static perkilo.schema.ValueKind.TEXT;

import java.util.List;

/** The Scenarios sheet: what-ifs that are costed beside today. */
public final class ScenariosSheet {

    public static final InputColumn NAME = InputColumn.of(
                    "Name", TEXT, "the scenario; rows of one name are costed together", "Strong dollar")
            .also("Scenario", "Scenario name")
            .orElse("the change itself");

    public static final InputColumn WHAT = InputColumn.of(
                    "What",
                    TEXT,
                    "an item, a supplier, a currency, or Labour rate, Freight, Fill, Fill loss, Run size",
                    "USD")
            .also("What changes", "Changed")
            .needed();

    public static final InputColumn CHANGE = InputColumn.of(
                    "Change", TEXT, "how much it changes, or a new Labour rate or Run size", "+10 %")
            .also("Change by", "By")
            .needed();

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Scenarios",
            List.of("Scenario", "What if", "What-if", "Szenarien", "Scénarios", "Scenari", "Escenarios"),
            List.of(WHAT),
            List.of(List.of(WHAT, CHANGE)),
            List.of(NAME, WHAT, CHANGE),
            "What-ifs that are costed beside today.");

    private ScenariosSheet() {}
}
