package perkilo.swaps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

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

    @Test
    void there_is_a_choice_of_emollients_and_emulsifiers() {
        assertThat(ROWS.stream().filter(row -> functions(row).contains("emollient")))
                .hasSizeGreaterThanOrEqualTo(54);
        assertThat(ROWS.stream().filter(row -> functions(row).contains("emulsifying")))
                .hasSizeGreaterThanOrEqualTo(25);
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
