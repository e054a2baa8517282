package perkilo.schema;

import static perkilo.schema.ValueKind.LIST;
import static perkilo.schema.ValueKind.MONEY;
import static perkilo.schema.ValueKind.NUMBER;
import static perkilo.schema.ValueKind.PERCENT;
import static perkilo.schema.ValueKind.TEXT;

import java.util.List;

/** What is known of the raw materials. */
public final class MaterialsSheet {

    public static final Column MATERIAL = Column.of(
                    "Material", TEXT, "the name that formulas and offers use", "Glycerin")
            .also("Raw material", "Ingredient", "Trade name", "Material name", "Raw material name", "Ingredient name")
            .needed();

    public static final Column INCI = Column.of("INCI name", TEXT, "its name in the ingredient list", "Glycerin")
            .also("INCI", "INCI nomenclature", "INCI designation");

    public static final Column FUNCTIONS = Column.of(
                    "Functions", LIST, "what it does, in the words of the EU glossary", "humectant; solvent")
            .also("Function", "Role", "Cosmetic function");

    public static final Column DENSITY = Column.of(
                    "Density g/mL", NUMBER, "needed where it is sold by the litre or gallon", "1.26")
            .in("g/mL")
            .also("Density", "Specific gravity", "Relative density", "SG")
            .limited(Limits.ABOVE_ZERO);

    public static final Column HOUSE_PRICE = Column.of(
                    "House price",
                    MONEY,
                    "one kilogram made in the house, in home currency; such a material is never ordered",
                    "0.02")
            .also("House price per kg", "In-house price", "Own price per kg", "Internal price per kg");

    public static final Column HANDLING_LOSS = Column.of(
                    "Handling loss %", PERCENT, "what sticks to drums and scoops, of what is weighed", "1")
            .also("Handling loss", "Weighing loss %", "Material loss %")
            .limited(Limits.BELOW_HUNDRED)
            .orElse("0");

    public static final Column SHELF_LIFE = Column.of("Shelf life months", NUMBER, "from arrival", "24")
            .in("months")
            .also("Shelf life", "Shelf-life")
            .limited(Limits.ABOVE_ZERO);

    public static final Column ACTIVE = Column.of("Active %", PERCENT, "active matter as supplied", "47")
            .also("Active matter %", "Actives %", "Active content %", "Solids %")
            .limited(Limits.UP_TO_HUNDRED);

    public static final Column SOLUBLE_IN =
            Column.of("Soluble in", TEXT, "water, oil or both", "water").also("Solubility", "Phase solubility");

    public static final Column MAX_PROCESS = Column.of(
                    "Max process °C", NUMBER, "the highest temperature that it withstands in making", "90")
            .in("°C")
            .also("Max process temperature", "Maximum process temperature", "Max temperature")
            .limited(Limits.ANY);

    public static final Column MELTS_AT = Column.of("Melts at °C", NUMBER, "its melting point", "65")
            .in("°C")
            .also("Melting point", "Melts at", "Melt point")
            .limited(Limits.ANY);

    public static final Column CHARGE = Column.of(
                    "Charge", TEXT, "nonionic, anionic, cationic or amphoteric", "nonionic")
            .also("Ionic charge", "Ionicity");

    public static final Column SPREADING_CLASS = Column.of(
                    "Spreading class", TEXT, "of an emollient: light, medium or heavy", "medium")
            .also("Spreading");

    public static final Column SPREADING_VALUE =
            Column.of("Spreading value", NUMBER, "of an emollient, in mm² in 10 minutes", "800");

    public static final Column VISCOSITY = Column.of("Viscosity mPa·s", NUMBER, "at 20 to 25 °C", "28")
            .in("mPa·s")
            .also("Viscosity");

    public static final Column REQUIRED_HLB = Column.of(
                    "Required HLB", NUMBER, "of an oil in an oil-in-water emulsion", "11")
            .also("rHLB");

    public static final Column HLB =
            Column.of("HLB", NUMBER, "of an emulsifier", "11").also("HLB value");

    public static final Column USE_MIN = Column.of("Use min %", PERCENT, "lowest usual level in a formula", "1")
            .also("Use level min %", "Min use %", "Minimum use level %")
            .limited(Limits.UP_TO_HUNDRED);

    public static final Column USE_MAX = Column.of("Use max %", PERCENT, "highest usual level in a formula", "5")
            .also("Use level max %", "Max use %", "Maximum use level %")
            .limited(Limits.UP_TO_HUNDRED);

    public static final Column LEGAL_MAX = Column.of("Legal max %", PERCENT, "highest level that the law allows", "1")
            .also("Legal limit %", "Regulatory limit %", "Legal maximum %")
            .limited(Limits.UP_TO_HUNDRED);

    public static final Column PH_MIN = Column.of("pH min", NUMBER, "lowest pH that it works at", "3")
            .also("Min pH")
            .limited(Limits.PH);

    public static final Column PH_MAX = Column.of("pH max", NUMBER, "highest pH that it works at", "12")
            .also("Max pH")
            .limited(Limits.PH);

    public static final Column NATURAL_ORIGIN = Column.of(
                    "Natural origin index", NUMBER, "by ISO 16128, from 0 to 1", "1")
            .also("NOI", "Natural origin", "ISO 16128 index")
            .limited(Limits.INDEX);

    public static final Column TAGS =
            Column.of("Tags", LIST, "what a brand asks for", "vegan; palm-free").also("Claims", "Labels");

    public static final Column ALLERGENS = Column.of(
                    "Allergens",
                    LIST,
                    "fragrance allergens in it, each with its percentage",
                    "Linalool 35; Limonene 0.5")
            .also("Fragrance allergens");

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Materials",
            List.of("Material", "Raw materials", "Ingredients", "Raw material list", "Material list"),
            List.of(MATERIAL),
            List.of(
                    List.of(MATERIAL, INCI),
                    List.of(MATERIAL, DENSITY),
                    List.of(MATERIAL, FUNCTIONS),
                    List.of(MATERIAL, HOUSE_PRICE),
                    List.of(MATERIAL, SHELF_LIFE),
                    List.of(MATERIAL, HANDLING_LOSS)),
            List.of(
                    MATERIAL,
                    INCI,
                    FUNCTIONS,
                    DENSITY,
                    HOUSE_PRICE,
                    HANDLING_LOSS,
                    SHELF_LIFE,
                    ACTIVE,
                    SOLUBLE_IN,
                    MAX_PROCESS,
                    MELTS_AT,
                    CHARGE,
                    SPREADING_CLASS,
                    SPREADING_VALUE,
                    VISCOSITY,
                    REQUIRED_HLB,
                    HLB,
                    USE_MIN,
                    USE_MAX,
                    LEGAL_MAX,
                    PH_MIN,
                    PH_MAX,
                    NATURAL_ORIGIN,
                    TAGS,
                    ALLERGENS),
            "What is known of each raw material; blank is not known.");

    private MaterialsSheet() {}
}
