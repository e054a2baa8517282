package perkilo.swaps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Book;
import perkilo.model.Fact;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.purchasing.search.quick.QuickPlanner;
import perkilo.swaps.blend.BlendStudy;
import perkilo.swaps.lp.OjalgoSolver;

/** Every material with the function of a blend is in it, or is listed with the reason. */
final class LeftOutTest {

    /** The first function of what is blended, by the first word of the title that the sheet gives it. */
    /** What the materials of a study are there for, by the first word of its title; others have it in brackets. */
    private static final Map<String, List<String>> ROLES = Map.of(
            "emollients", List.of("emollient ester", "triglyceride oil", "hydrocarbon", "silicone"),
            "solid", List.of("butter", "wax", "fatty alcohol", "fatty acid"),
            "emulsifiers", List.of("O/W emulsifier", "W/O emulsifier", "co-emulsifier"),
            "humectants", List.of("humectant"),
            "chelators", List.of("chelator"),
            "surfactants", List.of("primary surfactant", "amphoteric co-surfactant", "nonionic co-surfactant"));

    private static final Book BOOK = book();
    private static final SwapOutcome.Found FOUND = find(BOOK);

    /**
     * A cream with at least two materials of most kinds, the whole catalogue, and a few that cannot be judged. Duty is
     * the supplier's throughout: what is listed does not depend on it, and lines of different duty take much longer to
     * plan.
     */
    private static Book book() {
        Book mixed = DemoBook.richCream();
        Book rich = Varied.of(
                mixed,
                "offers",
                mixed.offers().stream()
                        .map(offer -> Varied.of(
                                offer,
                                "terms",
                                LineTerms.of(
                                        offer.terms().minimumOrder(),
                                        offer.terms().orderMultiple(),
                                        null)))
                        .toList());
        Formula cream = rich.formula("Face cream").orElseThrow();
        List<Formula.Line> lines = new ArrayList<>(cream.lines());
        Map.of(
                        "Ascorbyl palmitate", "0.001",
                        "BHT", "0.0005",
                        "Tocopherol", "0.001",
                        "Sorbitol 70 %", "0.02",
                        "Guar gum", "0.002",
                        "Sodium phytate solution", "0.001")
                .entrySet()
                .stream()
                .sorted(Map.Entry.comparingByKey())
                .map(line -> new Formula.Line(
                        isOily(line.getKey()) ? "B" : "A",
                        line.getKey(),
                        Figure.of(line.getValue()),
                        Figure.of("40"),
                        Origin.NONE))
                .forEach(lines::add);
        Material bht = Kit.catalogued("BHT");
        Set<String> sold = rich.offers().stream().map(Offer::item).collect(Collectors.toSet());
        List<Material> materials = new ArrayList<>(rich.materials().values().stream()
                .filter(material ->
                        sold.contains(material.name()) || material.name().equals("Water"))
                .toList());
        materials.add(0, Varied.of(bht, "name", "Unsold"));
        materials.add(0, Material.of("Unheard-of"));
        Book more = Varied.of(
                rich,
                "materials",
                Book.byName(materials.stream().map(LeftOutTest::unfit).toList(), Material::name));
        return more.withFormula(Varied.of(cream, "lines", lines));
    }

    /** Materials that something keeps out. */
    private static Material unfit(Material material) {
        return switch (material.name()) {
            case "BHA" -> Varied.trait(material, "useMin", Figure.of("0.5"));
            case "Rosemary leaf extract in oil" ->
                Varied.of(material, "functions", List.of("antioxidant", "preservative"));
            case "Pentaerythrityl tetra-di-t-butyl hydroxyhydrocinnamate" ->
                Varied.trait(
                        Varied.trait(Varied.trait(material, "phMin", Figure.of("2.5")), "phMax", Figure.of("3.5")),
                        "meltsAtC",
                        null);
            case "Ethylhexyl stearate" -> Varied.trait(material, "meltsAtC", Figure.of("60"));
            default -> material;
        };
    }

    private static boolean isOily(String name) {
        return Kit.catalogued(name).traits().solubleIn().equals("oil");
    }

    private static SwapOutcome.Found find(Book book) {
        return (SwapOutcome.Found)
                new SwapFinder(new QuickPlanner(new CheapestPlan()), SearchLimits.usual(), new OjalgoSolver())
                        .find(book, SwapOptions.usual().only("Face cream", null, null));
    }

    static Stream<BlendStudy> sought() {
        return FOUND.studies().stream().filter(BlendStudy::isSought);
    }

    @Test
    void every_material_that_drops_out_is_listed() {
        assertThat(sought()).hasSizeGreaterThanOrEqualTo(6);
        sought().forEach(study -> {
            List<String> roles = roles(study.function());
            List<String> left =
                    study.leftOut().values().stream().flatMap(List::stream).toList();
            assertThat(left).as(study.function()).doesNotHaveDuplicates();
            BOOK.materials().values().stream()
                    .filter(material ->
                            material.traits().words(Fact.ROLE).stream().anyMatch(roles::contains))
                    .forEach(material -> assertThat(isIn(study, material) || left.contains(material.name()))
                            .as("%s of %s", material.name(), study.function())
                            .isTrue());
        });
    }

    private static List<String> roles(String title) {
        int bracket = title.indexOf('(');
        return bracket < 0
                ? ROLES.getOrDefault(title.split("[: ]", -1)[0], List.of("none, so the test fails"))
                : List.of(title.substring(bracket + 1, title.length() - 1));
    }

    private static boolean isIn(BlendStudy study, Material material) {
        boolean blended = study.blends().stream()
                .flatMap(blend -> blend.entering().stream())
                .anyMatch(material.name()::equals);
        boolean held = BOOK.formula("Face cream").orElseThrow().lines().stream()
                .anyMatch(line -> line.material().equals(material.name()));
        return blended || held;
    }

    @ParameterizedTest
    @CsvSource({
        "antioxidants (oil antioxidant), Rosemary leaf extract in oil, They also preserve",
        "antioxidants (oil antioxidant), Unsold, They have no offer on the costing date.",
        "antioxidants (oil antioxidant), BHA, Their lowest usual level is above the highest",
        "antioxidants (oil antioxidant), Pentaerythrityl tetra-di-t-butyl hydroxyhydrocinnamate, Works from pH 2.5 to",
        "emollients that spread, Ethylhexyl stearate, They are solid at room temperature",
        "emulsifiers, PEG-40 hydrogenated castor oil, They can be put into formulas for this"
    })
    void the_reason_is_beside_the_name(String function, String material, String why) {
        Optional<String> reason = sought().filter(study -> study.function().equals(function))
                .flatMap(study -> study.leftOut().entrySet().stream())
                .filter(entry -> entry.getValue().contains(material))
                .map(Map.Entry::getKey)
                .findFirst();

        assertThat(reason).hasValueSatisfying(words -> assertThat(words).startsWith(why));
    }

    @Test
    void who_is_no_candidate_anywhere_is_named_once() {
        assertThat(FOUND.findings())
                .extracting(Finding::text)
                .filteredOn(text -> text.contains(": Unheard-of") || text.contains(": Unsold"))
                .satisfiesExactly(
                        text -> assertThat(text)
                                .startsWith("No role is known for these materials, so they cannot replace others or be"
                                        + " replaced: Unheard-of.")
                                .contains("column Role"),
                        text -> assertThat(text)
                                .startsWith("These materials have no offer on the costing date, so they are no"
                                        + " candidates: Unsold"));
    }
}
