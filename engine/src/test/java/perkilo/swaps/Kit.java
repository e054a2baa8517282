package perkilo.swaps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.ProductKind;
import perkilo.model.Settings;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.swaps.trial.Dosing;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;
import perkilo.units.ExchangeRates;

/** A formula for tests, put together line by line. */
public final class Kit {

    private static final List<Material> CATALOGUE = DemoBook.materials("prices/materials.csv");

    private final Map<String, Material> materials = new LinkedHashMap<>();
    private final List<Formula.Line> lines = new ArrayList<>();
    private @Nullable String finalPh;
    private ProductKind kind = ProductKind.LEAVE_ON;

    /** The shipped catalogue. */
    public static List<Material> catalogue() {
        return CATALOGUE;
    }

    /** The formulator's demo. */
    public static Book demo() {
        return DemoBook.emollients();
    }

    /** The material of the shipped catalogue with a name. */
    public static Material catalogued(String name) {
        return CATALOGUE.stream()
                .filter(material -> material.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** A fact that has to be known. */
    public static double number(@Nullable Figure figure) {
        return Objects.requireNonNull(figure, "the fact is not known").value().doubleValue();
    }

    /** Adds a line; {@code q.s.} takes the balance. */
    public Kit line(String phase, String degrees, String percent, Material material) {
        materials.put(material.name(), material);
        lines.add(new Formula.Line(
                phase,
                material.name(),
                percent.equals("q.s.")
                        ? null
                        : Figure.of(Figure.of(percent).value().movePointLeft(2)),
                degrees.isEmpty() ? null : Figure.of(degrees),
                Origin.NONE));
        return this;
    }

    /** Sets the product's final pH. */
    public Kit ph(String ph) {
        finalPh = ph;
        return this;
    }

    /** Makes it a product that is rinsed off. */
    public Kit rinsedOff() {
        kind = ProductKind.RINSE_OFF;
        return this;
    }

    /** Makes it a product of a kind. */
    public Kit kind(ProductKind.Word... words) {
        kind = ProductKind.of(words);
        return this;
    }

    /** The recipe. */
    public Recipe recipe() {
        Batching any = Batching.ANY;
        Batching batching = new Batching(
                any.vesselMax(),
                any.vesselMin(),
                any.holdUp(),
                any.hoursPerBatch(),
                any.hoursPerKg(),
                any.qualityControlPerBatch(),
                finalPh == null ? null : Figure.of(finalPh),
                kind,
                Origin.NONE);
        Formula formula = new Formula("Test", lines, batching, Origin.NONE);
        Settings settings = DemoBook.settings();
        Book book = new Book(
                settings,
                Map.of(),
                List.of(),
                Book.byName(materials.values(), Material::name),
                Book.byName(List.of(formula), Formula::name),
                Map.of(),
                List.of(),
                List.of(),
                List.of(),
                ExchangeRates.NONE);
        return Recipe.of(book, formula);
    }

    /** A material tried in a line, counted from zero. */
    public Trial trial(int line, Material to) {
        return new Dosing(recipe()).of(line, to);
    }
}
