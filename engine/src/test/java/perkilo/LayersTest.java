package perkilo;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callConstructor;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callMethod;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callMethodWhere;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTag;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.elements.GivenClassesConjunction;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.NullMarked;

/**
 * The direction of dependencies: each package uses only what stands to its left.
 *
 * <pre>
 * origin ← units ─┬─ offers ← model ← costing ←─┬─ orderplan, swaps ←─┬─ report ← desk ←─┐
 *          names ─┘                             │                     └─ json ←──────────┴─ page ← cli
 *      purchasing ←───────── purchasing.search ←┼──────────────────────── desk
 *          origin ← sheet ← xlsx ←──────────────┘  (workbooks in general; knows nothing of costing)
 *   schema ← layouts ← reading ← pricelists, rates (our tables, read from any workbook)
 *     sheet, xlsx ← review ←───────┘  (what a person is asked on sheets, and the answers)
 * </pre>
 *
 * <p>Libraries stay at the edges: spreadsheets in {@code xlsx}, the command line in {@code cli}, JSON in the packages
 * that read or write it, the implementations of money and measures in {@code units}.
 */
@ArchTag("slow")
@AnalyzeClasses(packages = "perkilo", importOptions = ImportOption.DoNotIncludeTests.class)
final class LayersTest {

    /** What every package may use. */
    private static final String[] ALWAYS = {"java..", "org.jspecify.annotations.."};

    /** What answers must not depend on: the core, without the edges. */
    private static final String[] CORE = {
        "perkilo.origin..",
        "perkilo.names..",
        "perkilo.units..",
        "perkilo.purchasing..",
        "perkilo.offers..",
        "perkilo.model..",
        "perkilo.costing..",
        "perkilo.orderplan..",
        "perkilo.swaps..",
        "perkilo.decision..",
        "perkilo.sheet..",
        "perkilo.report..",
        "perkilo.desk.."
    };

    @ArchTest
    static final ArchRule origin_uses_the_jdk_alone = only("perkilo.origin..");

    @ArchTest
    static final ArchRule names_use_the_jdk_alone = only("perkilo.names..");

    @ArchTest
    static final ArchRule purchasing_and_its_search_use_the_jdk_alone = only("perkilo.purchasing..");

    @ArchTest
    static final ArchRule the_purchase_problem_does_not_know_how_it_is_searched = only("perkilo.purchasing");

    @ArchTest
    static final ArchRule units_use_origin_and_the_two_standards = only(
            "perkilo.units..",
            "perkilo.origin..",
            "javax.money..",
            "org.javamoney.moneta..",
            "javax.measure..",
            "tech.units.indriya..",
            "systems.uom.common..");

    @ArchTest
    static final ArchRule offers_use_the_layers_under_them =
            only("perkilo.offers..", "perkilo.origin..", "perkilo.names..", "perkilo.units..", "javax.money..");

    @ArchTest
    static final ArchRule the_model_uses_the_layers_under_it = only(
            "perkilo.model..",
            "perkilo.origin..",
            "perkilo.names..",
            "perkilo.units..",
            "perkilo.offers..",
            "perkilo.purchasing",
            "javax.money..");

    @ArchTest
    static final ArchRule of_purchasing_the_model_knows_the_basis_of_duty_alone = noClasses()
            .that()
            .resideInAPackage("perkilo.model..")
            .should()
            .dependOnClassesThat(resideInAPackage("perkilo.purchasing..")
                    .and(DescribedPredicate.not(JavaClass.Predicates.simpleName("DutyBasis"))))
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule costing_uses_the_layers_under_it = core("perkilo.costing..");

    @ArchTest
    static final ArchRule order_plans_use_costing_and_know_no_planner =
            core("perkilo.orderplan..", "perkilo.costing..");

    @ArchTest
    static final ArchRule swaps_use_costing_and_know_no_planner =
            core("perkilo.swaps..", "perkilo.costing..", "org.ojalgo..");

    @ArchTest
    static final ArchRule decisions_use_costing_and_swaps_and_know_no_planner =
            core("perkilo.decision..", "perkilo.costing..", "perkilo.swaps..");

    @ArchTest
    static final ArchRule sheets_know_nothing_of_costing = only("perkilo.sheet..", "perkilo.origin..");

    @ArchTest
    static final ArchRule workbooks_in_general_know_nothing_of_costing = noClasses()
            .that()
            .resideInAPackage("perkilo.xlsx..")
            .should()
            .dependOnClassesThat(resideInAPackage("perkilo..")
                    .and(DescribedPredicate.not(
                            resideInAnyPackage("perkilo.xlsx..", "perkilo.sheet..", "perkilo.origin.."))));

    @ArchTest
    static final ArchRule review_sheets_are_for_any_question =
            only("perkilo.review", "perkilo.origin..", "perkilo.sheet..", "perkilo.xlsx.grid..");

    @ArchTest
    static final ArchRule layouts_of_others_are_read_below_the_reading = noClasses()
            .that()
            .resideInAPackage("perkilo.layouts..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("perkilo.reading", "perkilo.pricelists..", "perkilo.model.."));

    @ArchTest
    static final ArchRule suppliers_lists_are_read_and_written_without_the_core = noClasses()
            .that()
            .resideInAPackage("perkilo.pricelists..")
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                    "perkilo.costing..",
                    "perkilo.orderplan..",
                    "perkilo.swaps..",
                    "perkilo.report..",
                    "perkilo.sheet.."));

    @ArchTest
    static final ArchRule reports_use_all_answers_and_no_library = core(
            "perkilo.report..",
            "perkilo.costing..",
            "perkilo.orderplan..",
            "perkilo.swaps..",
            "perkilo.decision..",
            "perkilo.sheet..");

    @ArchTest
    static final ArchRule nothing_but_cli_uses_cli = noClasses()
            .that()
            .resideOutsideOfPackage("perkilo.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("perkilo.cli..");

    @ArchTest
    static final ArchRule only_front_ends_use_the_services = noClasses()
            .that()
            .resideOutsideOfPackages("perkilo.cli..", "perkilo.page..", "perkilo.desk..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("perkilo.desk..");

    @ArchTest
    static final ArchRule the_page_is_started_by_the_command_line_alone = noClasses()
            .that()
            .resideOutsideOfPackages("perkilo.cli..", "perkilo.page..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("perkilo.page..");

    @ArchTest
    static final ArchRule services_choose_the_planners = noClasses()
            .that()
            .resideOutsideOfPackages("perkilo.desk..", "perkilo.purchasing.search..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("perkilo.purchasing.search..");

    @ArchTest
    static final ArchRule services_know_no_form_of_an_answer_but_workbooks = noClasses()
            .that()
            .resideInAPackage("perkilo.desk..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("perkilo.json..", "perkilo.page..", "perkilo.cli..");

    @ArchTest
    static final ArchRule commands_leave_reading_and_writing_to_the_services = noClasses()
            .that()
            .resideInAnyPackage("perkilo.cli..", "perkilo.page..")
            .should()
            .dependOnClassesThat()
            .haveNameMatching(
                    "perkilo\\.(reading\\.[A-Z]\\w*(Reader|Sheets)|xlsx\\.write\\.WorkbookWriter|costing\\.CostRuns|"
                            + "orderplan\\.OrderBook|swaps\\.SwapFinder|pricelists\\.ListFolder)");

    @ArchTest
    static final ArchRule the_spreadsheet_library_computes_missing_values_and_writes_templates_alone = library(
                    "perkilo.xlsx.grid..", "perkilo.templates..")
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                    "org.apache.poi..", "org.openxmlformats..", "org.apache.xmlbeans..", "com.microsoft.schemas.."));

    @ArchTest
    static final ArchRule result_sheets_are_written_by_the_standard_library = only(
            "perkilo.xlsx.author..",
            "perkilo.origin..",
            "perkilo.sheet..",
            "perkilo.xlsx.parts..",
            "javax.xml.stream..");

    @ArchTest
    static final ArchRule the_parser_of_sheets_stays_in_its_package =
            library("perkilo.xlsx.grid..").should().dependOnClassesThat(resideInAPackage("com.fasterxml.aalto.."));

    @ArchTest
    static final ArchRule the_solver_of_linear_programs_stays_in_its_package =
            library("perkilo.swaps.lp..").should().dependOnClassesThat(resideInAPackage("org.ojalgo.."));

    @ArchTest
    static final ArchRule the_command_line_stays_in_cli =
            library("perkilo.cli..").should().dependOnClassesThat(resideInAPackage("picocli.."));

    @ArchTest
    static final ArchRule json_stays_at_the_edges = library(
                    "perkilo.cli..", "perkilo.page..", "perkilo.json..", "perkilo.xlsx.grid..", "perkilo.pricelists..")
            .should()
            .dependOnClassesThat(resideInAPackage("com.fasterxml.jackson.."));

    @ArchTest
    static final ArchRule implementations_of_the_standards_stay_in_units = library("perkilo.units..")
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                    "org.javamoney..", "javax.measure..", "tech.units..", "tech.uom..", "systems.uom.."));

    @ArchTest
    static final ArchRule the_network_is_asked_by_the_bank_of_rates_alone = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("perkilo.rates.Bank")
            .and()
            .doNotHaveFullyQualifiedName("perkilo.page.PageServer")
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.net.http..")
                    .or(nameMatching("java\\.net\\.(.*Socket.*|.*Connection|URL|InetAddress)")
                            .forSubtype()));

    @ArchTest
    static final ArchRule the_server_stays_in_the_page =
            library("perkilo.page..").should().dependOnClassesThat(resideInAPackage("com.sun.net.httpserver.."));

    @ArchTest
    static final ArchRule rates_use_the_reader_and_writer_of_tables = only(
            "perkilo.rates..",
            "perkilo.origin..",
            "perkilo.units..",
            "perkilo.reading..",
            "perkilo.xlsx.grid..",
            "perkilo.xlsx.write..",
            "javax.money..");

    @ArchTest
    static final ArchRule no_cycles =
            slices().matching("perkilo.(**)").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule the_core_never_asks_what_day_or_hour_it_is = noClasses()
            .that()
            .resideInAnyPackage(CORE)
            .should(callMethodWhere(target(owner(resideInAPackage("java.time"))).and(target(name("now")))))
            .orShould(callMethodWhere(target(owner(type(Clock.class))).and(target(nameMatching("system.*")))))
            .orShould(callMethod(System.class, "currentTimeMillis"))
            .orShould(callConstructor(Date.class));

    @ArchTest
    static final ArchRule chance_plays_no_part_in_the_core = noClasses()
            .that()
            .resideInAnyPackage(CORE)
            .should()
            .callConstructor(Random.class)
            .orShould(callMethod(Math.class, "random"))
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom");

    @ArchTest
    static final ArchRule the_core_prints_nothing =
            noClasses().that().resideInAnyPackage(CORE).should().accessField(System.class, "out");

    @ArchTest
    static void every_package_says_that_its_references_are_never_null(JavaClasses all) {
        List<String> unmarked = all.stream()
                .map(JavaClass::getPackage)
                .distinct()
                .filter(one -> one.getName().startsWith("perkilo"))
                .filter(one -> !one.isAnnotatedWith(NullMarked.class))
                .map(JavaPackage::getName)
                .sorted()
                .toList();
        assertThat(unmarked).isEmpty();
    }

    /** A package of the core: it may use what every one of them may use, and some more. */
    private static ArchRule core(String first, String... more) {
        List<String> packages = new ArrayList<>(List.of(
                first,
                "perkilo.origin..",
                "perkilo.names..",
                "perkilo.units..",
                "perkilo.purchasing",
                "perkilo.offers..",
                "perkilo.model..",
                "javax.money.."));
        packages.addAll(List.of(more));
        return only(packages.toArray(String[]::new));
    }

    private static ArchRule only(String... packages) {
        return classes()
                .that()
                .resideInAPackage(packages[0])
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(packages).or(resideInAnyPackage(ALWAYS)))
                .allowEmptyShould(true);
    }

    private static GivenClassesConjunction library(String... homes) {
        return noClasses().that().resideOutsideOfPackages(homes);
    }
}
