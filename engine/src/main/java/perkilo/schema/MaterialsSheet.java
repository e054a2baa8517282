package perkilo.schema;

import static perkilo.schema.ValueKind.LIST;
import static perkilo.schema.ValueKind.MONEY;
import static perkilo.schema.ValueKind.NUMBER;
import static perkilo.schema.ValueKind.PERCENT;
import static perkilo.schema.ValueKind.TEXT;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import perkilo.model.Fact;

/** What is known of the raw materials: what every run needs, and the {@linkplain Fact facts}. */
public final class MaterialsSheet {

    public static final InputColumn MATERIAL = InputColumn.of(
                    "Material", TEXT, "the name that formulas and offers use", "Glycerin")
            .also("Raw material", "Ingredient", "Trade name", "Material name", "Raw material name", "Ingredient name")
            .needed();

    /** Other headers of a column of INCI names, on any sheet. */
    static final String[] INCI_HEADERS = {"INCI", "INCI nomenclature", "INCI designation"};

    public static final InputColumn INCI = InputColumn.of(
                    "INCI name", TEXT, "its name in the ingredient list", "Glycerin")
            .also(INCI_HEADERS);

    public static final InputColumn FUNCTIONS = InputColumn.of(
                    "Functions", LIST, "what it does, in the words of the EU glossary", "humectant; solvent")
            .also("Function", "Cosmetic function");

    public static final InputColumn DENSITY = InputColumn.of(
                    "Density g/mL", NUMBER, "needed where it is sold by the litre or gallon", "1.26")
            .in("g/mL")
            .also("Density", "Specific gravity", "Relative density", "SG")
            .limited(Limits.ABOVE_ZERO);

    public static final InputColumn HOUSE_PRICE = InputColumn.of(
                    "House price",
                    MONEY,
                    "one kilogram made in the house, in home currency; such a material is never ordered",
                    "0.02")
            .also("House price per kg", "In-house price", "Own price per kg", "Internal price per kg");

    public static final InputColumn HANDLING_LOSS = InputColumn.of(
                    "Handling loss %", PERCENT, "what sticks to drums and scoops, of what is weighed", "1")
            .also("Handling loss", "Weighing loss %", "Material loss %")
            .limited(Limits.BELOW_HUNDRED)
            .orElse("0");

    public static final InputColumn SHELF_LIFE = InputColumn.of("Shelf life months", NUMBER, "from arrival", "24")
            .in("months")
            .also("Shelf life", "Shelf-life")
            .limited(Limits.ABOVE_ZERO);

    public static final InputColumn SAFETY_STOCK = InputColumn.of(
                    "Safety stock", NUMBER, "kilograms that are always to be there, for what was not planned", "5")
            .in("kg")
            .also("Safety stock kg", "Buffer stock", "Minimum stock", "Min stock", "Reserve")
            .orElse("0");

    private static final Map<Fact, InputColumn> FACTS = facts();

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Materials",
            List.of(
                    "Material",
                    "Raw materials",
                    "Ingredients",
                    "Raw material list",
                    "Material list",
                    "Rohstoffe",
                    "Matières premières",
                    "Materie prime",
                    "Materias primas"),
            List.of(MATERIAL),
            List.of(
                    List.of(MATERIAL, INCI),
                    List.of(MATERIAL, DENSITY),
                    List.of(MATERIAL, FUNCTIONS),
                    List.of(MATERIAL, HOUSE_PRICE),
                    List.of(MATERIAL, SHELF_LIFE),
                    List.of(MATERIAL, HANDLING_LOSS)),
            columns(),
            "What is known of each raw material; blank is not known.");

    private MaterialsSheet() {}

    /** The column of a fact. */
    public static InputColumn column(Fact fact) {
        return Objects.requireNonNull(FACTS.get(fact));
    }

    /** What every run needs of a material, and then the facts that it is compared with others by. */
    private static List<InputColumn> columns() {
        List<InputColumn> columns = new ArrayList<>(
                List.of(MATERIAL, INCI, FUNCTIONS, DENSITY, HOUSE_PRICE, HANDLING_LOSS, SHELF_LIFE, SAFETY_STOCK));
        columns.addAll(FACTS.values());
        return columns;
    }

    private static Map<Fact, InputColumn> facts() {
        Map<Fact, InputColumn> columns = new EnumMap<>(Fact.class);
        for (Fact fact : Fact.values()) {
            columns.put(fact, columnOf(fact));
        }
        return columns;
    }

    private static InputColumn columnOf(Fact fact) {
        InputColumn column = InputColumn.of(fact.header(), kind(fact), fact.explanation(), fact.example())
                .also(fact.alsoHeaded().toArray(String[]::new));
        return fact.kind().isFigure()
                ? column.in(fact.unit())
                        .limited(Limits.of(fact.range().lowest(), fact.range().highest()))
                : column;
    }

    private static ValueKind kind(Fact fact) {
        return switch (fact.kind()) {
            case NUMBER -> NUMBER;
            case PERCENT -> PERCENT;
            case WORD -> TEXT;
            case WORDS, SHARES -> LIST;
        };
    }
}
