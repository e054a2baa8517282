package perkilo.swaps;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.swaps.facts.FactTable;
import perkilo.swaps.facts.Functions;

/** The catalogue of facts that ships with the project: every row can be traced, every number checked. */
final class CatalogueTest {

    /** The EU glossary of functions: Commission Decision 96/335/EC as amended by 2006/257/EC. */
    private static final Set<String> GLOSSARY =
            Set.of(("abrasive,absorbent,anticaking,anticorrosive,antidandruff,antifoaming,antimicrobial,antioxidant,"
                            + "antiperspirant,antiplaque,antiseborrhoeic,antistatic,astringent,binding,bleaching,buffering,"
                            + "bulking,chelating,cleansing,cosmetic colorant,denaturant,deodorant,depilatory,detangling,"
                            + "emollient,emulsifying,emulsion stabilising,film forming,flavouring,foam boosting,foaming,"
                            + "gel forming,hair conditioning,hair dyeing,hair fixing,hair waving or straightening,humectant,"
                            + "hydrotrope,keratolytic,masking,moisturising,nail conditioning,opacifying,oral care,oxidising,"
                            + "pearlescent,perfuming,plasticiser,preservative,propellant,reducing,refatting,refreshing,"
                            + "skin conditioning,skin protecting,smoothing,solvent,soothing,stabilising,surfactant,tanning,"
                            + "tonic,uv absorber,uv filter,viscosity controlling")
                    .split(",", -1));

    private static final List<Map<String, String>> ROWS = Csv.read("prices/materials.csv");

    @Test
    void every_material_has_a_source_an_inci_name_and_functions_of_the_glossary() {
        assertThat(ROWS).allSatisfy(row -> {
            assertThat(row.get("Source")).as(row.get("Material")).isNotBlank();
            assertThat(row.get("INCI name")).as(row.get("Material")).isNotBlank();
            assertThat(functions(row)).as(row.get("Material")).isNotEmpty().isSubsetOf(GLOSSARY);
        });
    }

    @Test
    void no_material_stands_twice() {
        assertThat(ROWS.stream().map(row -> row.getOrDefault("Material", "").toLowerCase(Locale.ROOT)))
                .doesNotHaveDuplicates();
    }

    /** The last digit of a CAS number is the sum of the others, each times its place from the right, modulo ten. */
    @Test
    void every_cas_number_has_its_check_digit() {
        for (Map<String, String> row : ROWS) {
            String all = row.getOrDefault("CAS", "");
            for (String cas : all.isEmpty() ? new String[0] : all.split(" / ", -1)) {
                assertThat(hasCheckDigit(cas))
                        .as(row.get("Material") + ": " + cas)
                        .isTrue();
            }
        }
    }

    @ParameterizedTest(name = "at least {1} for {0}")
    @CsvSource({
        "emollient, 54",
        "emulsifying, 25",
        "humectant, 15",
        "viscosity controlling, 15",
        "preservative, 15",
        "antioxidant, 10",
        "chelating, 8",
        "cleansing, 15"
    })
    void there_is_a_choice_for_each_function(String function, int least) {
        assertThat(ROWS).hasSizeGreaterThanOrEqualTo(200);
        assertThat(Kit.catalogue().stream()
                        .filter(material -> Functions.work(material).equals(function)))
                .hasSizeGreaterThanOrEqualTo(least);
    }

    /** What a source has to mention for each column that holds something. */
    @ParameterizedTest(name = "{0}: the source says {1}")
    @CsvSource({
        "Functions, function words",
        "Density g/mL, density",
        "Handling loss %, handling loss",
        "Shelf life months, shelf life",
        "Active %, active",
        "Soluble in, solub",
        "Max process °C, process temperature",
        "Melts at °C, melt",
        "Charge, charge",
        "Spreading class, spreading",
        "Spreading value, spreading",
        "Viscosity mPa·s, viscosity",
        "Required HLB, required hlb",
        "HLB, hlb",
        "Use min %, use range",
        "Use max %, use range",
        "Legal max %, annex|legal|limit",
        "pH min, ph range",
        "pH max, ph range",
        "Natural origin index, natural origin",
        "Tags, tags",
        "Allergens, allergen|invented",
        "Role, role",
        "Polarity, polarity",
        "Hardness, hardness",
        "Oxidative stability, oxidative stability",
        "Colour and odour, colour and odour",
        "Volatile, volatil",
        "Clarity, clarity|clear",
        "Sensitive to, sensitive",
        "Particle size µm, particle size",
        "CAS, cas"
    })
    void every_value_has_a_source(String column, String word) {
        assertThat(ROWS).anyMatch(row -> row.containsKey(column));
        assertThat(ROWS)
                .filteredOn(row -> !row.getOrDefault(column, "").isEmpty())
                .allSatisfy(row -> assertThat(row.getOrDefault("Source", "").toLowerCase(Locale.ROOT))
                        .as(row.get("Material"))
                        .containsPattern(word));
    }

    @Test
    void emulsifiers_have_the_hlb_of_the_reference_list() {
        List<List<String>> list = FactTable.read(CatalogueTest.class, "emulsifier-hlb.csv");

        assertThat(list)
                .hasSizeGreaterThan(25)
                .allSatisfy(emulsifier -> assertThat(ROWS).anySatisfy(row -> {
                    assertThat(row.get("INCI name")).isEqualToIgnoringCase(emulsifier.get(0));
                    assertThat(new BigDecimal(row.getOrDefault("HLB", "")))
                            .isEqualByComparingTo(new BigDecimal(emulsifier.get(1)));
                }));
    }

    /** Classes that depend on the grade, and the solids, which have none, are left out. */
    @Test
    void emollients_are_grouped_as_in_the_reference_list() {
        List<List<String>> list = FactTable.read(CatalogueTest.class, "emollients.csv").stream()
                .filter(row -> List.of("light", "medium", "heavy").contains(row.get(8)))
                .toList();

        assertThat(list)
                .hasSizeGreaterThan(40)
                .allSatisfy(emollient -> assertThat(ROWS).anySatisfy(row -> {
                    assertThat(row.get("INCI name")).isEqualToIgnoringCase(emollient.get(0));
                    assertThat(row.get("Spreading class")).isEqualTo(emollient.get(8));
                    assertThat(row.get("Spreading value")).isEqualTo(emollient.get(10));
                    assertThat(row.get("Viscosity mPa·s")).isEqualTo(emollient.get(12));
                }));
    }

    /**
     * Above 1000 mm² in 10 minutes is light, below 500 heavy; where a value sits on a border, the trade's habit holds.
     */
    @Test
    void spreading_classes_follow_from_spreading_values() {
        assertThat(ROWS)
                .filteredOn(row -> !row.getOrDefault("Spreading value", "").isEmpty())
                .hasSizeGreaterThan(10)
                .allSatisfy(row -> {
                    double value = Double.parseDouble(row.getOrDefault("Spreading value", ""));
                    String byValue = value > 1000 ? "light" : value >= 500 ? "medium" : "heavy";
                    boolean border = value == 1000 || value == 500;
                    assertThat(border || byValue.equals(row.get("Spreading class")))
                            .as(row.get("Material"))
                            .isTrue();
                });
    }

    private static List<String> functions(Map<String, String> row) {
        return List.of(row.getOrDefault("Functions", "").split("\\s*;\\s*", -1));
    }

    private static boolean hasCheckDigit(String cas) {
        if (!cas.matches("\\d{2,7}-\\d{2}-\\d")) {
            return false;
        }
        String digits = cas.replace("-", "");
        int sum = 0;
        for (int place = 1; place < digits.length(); place++) {
            sum += place * Character.digit(digits.charAt(digits.length() - 1 - place), 10);
        }
        return sum % 10 == Character.digit(digits.charAt(digits.length() - 1), 10);
    }
}
