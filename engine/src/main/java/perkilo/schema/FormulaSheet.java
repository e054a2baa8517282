package perkilo.schema;

import static perkilo.schema.ValueKind.LEVEL;
import static perkilo.schema.ValueKind.NUMBER;
import static perkilo.schema.ValueKind.PERCENT;
import static perkilo.schema.ValueKind.TEXT;

import java.util.List;

/** A formula's sheet: a recipe in per cent by weight, of the materials as supplied. */
public final class FormulaSheet {

    public static final InputColumn FORMULA = InputColumn.of(
                    "Formula", TEXT, "the formula's name, where one sheet holds several", "Body lotion")
            .also("Formula name", "Recipe", "Formulation")
            .orElse("the sheet's name");

    public static final InputColumn PHASE = InputColumn.of("Phase", TEXT, "the phase that the material goes into", "A")
            .also("Ph", "Part");

    public static final InputColumn MATERIAL = InputColumn.of(
                    "Material", TEXT, "as offers and the Materials sheet name it", "Glycerin")
            .also(
                    "Raw material",
                    "Ingredient",
                    "Trade name",
                    "Material name",
                    "Raw material name",
                    "Ingredient name",
                    "Item",
                    "Component")
            .needed();

    public static final InputColumn INCI = InputColumn.of(
                    "INCI name",
                    TEXT,
                    "the material's name in the ingredient list; finds the material if its own name is not known",
                    "Glycerin")
            .also(MaterialsSheet.INCI_HEADERS);

    public static final InputColumn LEVEL_OF = InputColumn.of(
                    "% w/w", LEVEL, "of the material as supplied; q.s. for the one that takes the balance", "4")
            .also(
                    "%",
                    "w/w",
                    "w/w %",
                    "Percent",
                    "Percentage",
                    "% by weight",
                    "Weight %",
                    "wt %",
                    "% wt",
                    "Qty %",
                    "Quantity %",
                    "Amount %",
                    "Level %",
                    "% level",
                    "Dosage %",
                    "Concentration %",
                    "Inclusion %",
                    "% m/m",
                    "m/m %",
                    "Mass %",
                    "Percent w/w",
                    "Percent by weight")
            .limited(Limits.UP_TO_HUNDRED)
            .needed();

    public static final InputColumn PHASE_TEMPERATURE = InputColumn.of(
                    "Phase °C", NUMBER, "the temperature that the phase is made at", "75")
            .in("°C")
            .also("Phase temperature", "Temperature", "Temp", "Phase temp", "Process temperature")
            .limited(Limits.ANY);

    public static final InputColumn ESTIMATE = InputColumn.of(
                    "Estimate %",
                    PERCENT, "about how much is used of a material that is added to effect, such as to pH", "0.3")
            .also("Estimate", "Estimated %", "Approx %", "About %")
            .limited(Limits.UP_TO_HUNDRED);

    public static final InputColumn ROLE = InputColumn.of(
                    "Role",
                    TEXT,
                    "what the material is in this formula for; only materials that can play this role take its place",
                    "emollient ester")
            .also("Role in formula")
            .orElse("the first of the material's roles that fits the phase and the formula");

    public static final InputColumn KEEP = InputColumn.of(
                    "Keep", TEXT, "yes: the line is not swapped; no: it may be, even if it is an active", "yes")
            .orElse("actives, filters, fragrances and colourants are kept");

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Formula",
            List.of(
                    "Formulas",
                    "Formulae",
                    "Recipe",
                    "Recipes",
                    "Formulation",
                    "Formulations",
                    "Rezeptur",
                    "Rezepturen",
                    "Rezept",
                    "Rezepte",
                    "Formules",
                    "Ricette",
                    "Fórmulas"),
            List.of(MATERIAL),
            List.of(List.of(MATERIAL, LEVEL_OF)),
            List.of(PHASE, MATERIAL, LEVEL_OF, PHASE_TEMPERATURE, FORMULA, ESTIMATE, ROLE, KEEP, INCI),
            "One formula per sheet, named after the sheet; the levels add up to 100.");

    private FormulaSheet() {}
}
