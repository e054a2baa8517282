package perkilo.swaps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import perkilo.model.Fact;
import perkilo.swaps.facts.FactTable;

/** Every material of the catalogue has a role, and for each role what decides whether another can take its place. */
final class CatalogueRolesTest {

    private static final List<Map<String, String>> ROWS = Csv.read("prices/materials.csv");

    /** Role, place, … */
    private static final List<List<String>> ROLES =
            FactTable.read(CatalogueRolesTest.class, "/perkilo/swaps/role/roles.csv");

    /** Role, fact, deciding, … */
    private static final List<List<String>> ROLE_FACTS =
            FactTable.read(CatalogueRolesTest.class, "/perkilo/swaps/role/role-facts.csv");

    /** "Required HLB: not published for this ester; Viscosity: solid at room temperature". */
    private static final Pattern REASON = Pattern.compile("([^:;]+): ([^:;]+?)(?:; ?(?=[^:;]+: )|$)");

    @Test
    void every_material_has_roles_and_each_is_one_that_the_project_knows() {
        Set<String> known =
                new HashSet<>(ROLES.stream().map(role -> role.get(0)).toList());

        assertThat(known).hasSizeGreaterThan(40);
        assertThat(ROWS).allSatisfy(row -> {
            assertThat(cell(row, "Role")).as(name(row)).isNotBlank();
            assertThat(roles(row)).as(name(row)).isSubsetOf(known).doesNotHaveDuplicates();
        });
    }

    /** Those without a role have nothing to decide; the test above finds them. */
    @Test
    void every_deciding_fact_is_known_or_has_a_reason_why_it_is_not() {
        List<String> missing = new ArrayList<>();
        int looked = 0;
        for (Map<String, String> row : ROWS) {
            for (String role : roles(row)) {
                for (List<String> fact : ROLE_FACTS) {
                    if (fact.get(0).equals(role) && !"no".equals(fact.get(2))) {
                        looked++;
                        if (!isKnown(row, fact.get(1)) && !hasReason(row, fact.get(1))) {
                            missing.add(name(row) + ", " + role + ": " + fact.get(1));
                        }
                    }
                }
            }
        }

        assertThat(looked).isGreaterThan(600);
        assertThat(missing).isEmpty();
    }

    @Test
    void facts_that_have_a_choice_of_words_use_them() {
        List<Fact> withChoices = Arrays.stream(Fact.values())
                .filter(fact -> !fact.choices().isEmpty())
                .filter(fact -> ROWS.get(0).containsKey(fact.header()))
                .toList();

        assertThat(withChoices).contains(Fact.POLARITY, Fact.HARDNESS, Fact.VOLATILE, Fact.CLARITY, Fact.CHARGE);
        for (Fact fact : withChoices) {
            assertThat(ROWS)
                    .filteredOn(row -> !cell(row, fact.header()).isEmpty())
                    .allSatisfy(row -> assertThat(cell(row, fact.header()))
                            .as(name(row) + ", " + fact.header())
                            .isIn(fact.choices()));
        }
    }

    /** A reason names a column of the sheet that is blank: "column: reason; column: reason". */
    @Test
    void reasons_name_blank_columns() {
        Map<String, String> headers = new LinkedHashMap<>();
        for (Fact fact : Fact.values()) {
            headers.put(plain(fact), fact.header());
        }

        assertThat(ROWS)
                .filteredOn(row -> !cell(row, "Not known").isEmpty())
                .hasSizeGreaterThan(10)
                .allSatisfy(row -> {
                    Map<String, String> reasons = reasons(row);
                    assertThat(reasons).as(name(row)).isNotEmpty();
                    reasons.forEach((column, reason) -> {
                        assertThat(headers).as(name(row)).containsKey(column);
                        assertThat(cell(row, headers.getOrDefault(column, "")))
                                .as(name(row) + ", " + column)
                                .isEmpty();
                    });
                    // nothing stands between the reasons that would be lost
                    assertThat(String.join(
                                    "; ",
                                    reasons.entrySet().stream()
                                            .map(reason -> reason.getKey() + ": " + reason.getValue())
                                            .toList()))
                            .isEqualTo(cell(row, "Not known"));
                });
    }

    @Test
    void a_range_of_use_has_its_ends_in_order() {
        assertThat(ROWS)
                .filteredOn(row -> !cell(row, "Use min %").isEmpty()
                        && !cell(row, "Use max %").isEmpty())
                .hasSizeGreaterThan(300)
                .allSatisfy(row -> assertThat(Double.parseDouble(cell(row, "Use max %")))
                        .as(name(row))
                        .isGreaterThanOrEqualTo(Double.parseDouble(cell(row, "Use min %"))));
    }

    /** What evaporates does not go into a hot, open vessel. */
    @Test
    void volatile_emollients_go_in_below_their_heat() {
        assertThat(ROWS)
                .filteredOn(row -> roles(row).contains("volatile emollient"))
                .hasSizeGreaterThan(5)
                .allSatisfy(row -> {
                    assertThat(cell(row, "Volatile")).as(name(row)).isEqualTo("yes");
                    assertThat(Double.parseDouble(cell(row, "Max process °C")))
                            .as(name(row))
                            .isLessThanOrEqualTo(60);
                });
    }

    /**
     * The words follow the published interfacial tensions: an oil with a clearly higher tension is never called more
     * polar. Silicones are left out, for the trade calls them nonpolar whatever their tension.
     */
    @Test
    void polarity_follows_the_published_order() {
        List<String> fromPolar = List.of("polar", "medium", "nonpolar");
        Map<String, Double> tension = new LinkedHashMap<>();
        for (List<String> oil : FactTable.read(CatalogueRolesTest.class, "/perkilo/swaps/facts/polarity.csv")) {
            if (!oil.get(1).isEmpty() && !"Dimethicone".equals(oil.get(0))) {
                tension.put(oil.get(0), Double.valueOf(oil.get(1)));
            }
        }
        List<Map<String, String>> oils = ROWS.stream()
                .filter(row -> tension.containsKey(cell(row, "INCI name")))
                .toList();

        assertThat(oils).hasSizeGreaterThan(20);
        for (Map<String, String> one : oils) {
            for (Map<String, String> other : oils) {
                double apart = tension.getOrDefault(cell(one, "INCI name"), 0.0)
                        - tension.getOrDefault(cell(other, "INCI name"), 0.0);
                if (apart > 3) {
                    assertThat(fromPolar.indexOf(cell(one, "Polarity")))
                            .as(name(one) + " against " + name(other))
                            .isGreaterThanOrEqualTo(fromPolar.indexOf(cell(other, "Polarity")));
                }
            }
        }
    }

    /** A source is something that a reader can look up, or it says that the value is remembered. */
    @Test
    void oils_name_no_source_that_nobody_can_look_up() {
        Set<String> oily = new HashSet<>(ROLES.stream()
                .filter(role -> "oil".equals(role.get(1)))
                .map(role -> role.get(0))
                .toList());

        assertThat(ROWS)
                .filteredOn(row -> roles(row).stream().anyMatch(oily::contains))
                .hasSizeGreaterThan(100)
                .allSatisfy(row -> assertThat(cell(row, "Source"))
                        .as(name(row))
                        .doesNotContainIgnoringCase("flashcard")
                        .doesNotContainIgnoringCase("trade-press")
                        .doesNotContainIgnoringCase("hand-out")
                        .doesNotContainIgnoringCase("hobby"));
    }

    private static boolean isKnown(Map<String, String> row, String fact) {
        return switch (fact) {
            case "MAIN_ROLE" -> true;
            case "SAME_SUBSTANCE" -> !cell(row, "INCI name").isEmpty();
            case "USUAL_LEVEL" -> has(row, Fact.USE_MAX);
            case "PH_RANGE" -> has(row, Fact.PH_MIN) && has(row, Fact.PH_MAX);
            // a liquid: what flows at 20 °C has melted
            case "MELTS_AT_C" -> has(row, Fact.MELTS_AT_C) || has(row, Fact.VISCOSITY);
            default -> facts(fact).stream().anyMatch(one -> has(row, one));
        };
    }

    private static boolean hasReason(Map<String, String> row, String fact) {
        List<Fact> facts = switch (fact) {
            case "MAIN_ROLE", "SAME_SUBSTANCE" -> List.of();
            case "USUAL_LEVEL" -> List.of(Fact.USE_MAX);
            case "PH_RANGE" -> List.of(Fact.PH_MIN, Fact.PH_MAX);
            default -> facts(fact);
        };
        Map<String, String> reasons = reasons(row);
        return facts.stream().anyMatch(one -> reasons.containsKey(plain(one)));
    }

    private static List<Fact> facts(String names) {
        return Arrays.stream(names.split("\\|", -1)).map(Fact::valueOf).toList();
    }

    private static boolean has(Map<String, String> row, Fact fact) {
        return !cell(row, fact.header()).isEmpty();
    }

    private static Map<String, String> reasons(Map<String, String> row) {
        Map<String, String> reasons = new LinkedHashMap<>();
        Matcher found = REASON.matcher(cell(row, "Not known"));
        while (found.find()) {
            reasons.put(found.group(1).strip(), found.group(2).strip());
        }
        return reasons;
    }

    /** The header without its unit. */
    private static String plain(Fact fact) {
        return fact.unit().isEmpty()
                ? fact.header()
                : fact.header()
                        .substring(0, fact.header().length() - fact.unit().length())
                        .strip();
    }

    private static List<String> roles(Map<String, String> row) {
        String roles = cell(row, "Role");
        return roles.isEmpty() ? List.of() : List.of(roles.split("\\s*;\\s*", -1));
    }

    private static String name(Map<String, String> row) {
        return cell(row, "Material");
    }

    private static String cell(Map<String, String> row, String column) {
        return row.getOrDefault(column, "");
    }
}
