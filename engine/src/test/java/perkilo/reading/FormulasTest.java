package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.origin.Finding;
import perkilo.origin.Reading;

/** Formulas, and whether they add up. */
final class FormulasTest {

    @Test
    void a_formula_must_add_up_to_100() {
        assertThat(TestBook.sound().set("Balm", "C3", 59.5).findings())
                .containsExactly(
                        "error Balm!C1: \"Balm\" adds up to 99.5 %, which is 0.5 % too little. Correct its lines so "
                                + "that they add up to 100 %.");
        assertThat(TestBook.sound().set("Balm", "C3", 60.006).findings())
                .containsExactly(
                        "error Balm!C1: \"Balm\" adds up to 100.006 %, which is 0.006 % too much. Correct its lines so "
                                + "that they add up to 100 %.");
        assertThat(TestBook.sound().set("Balm", "C3", 60.005).findings()).isEmpty();
    }

    @Test
    void fractions_are_suspected_where_the_sum_is_one() {
        assertThat(TestBook.sound()
                        .set("Balm", "C2", 0.4)
                        .set("Balm", "C3", 0.6)
                        .findings())
                .containsExactly(
                        "error Balm!C1: \"Balm\" adds up to 1 %. Are these fractions? Format the cells as percentages, "
                                + "or type 2.5 for 2.5 %.");
    }

    @Test
    void fractions_are_suspected_where_some_cells_say_per_cent_and_the_others_make_it_a_whole() {
        assertThat(TestBook.sound()
                        .set("Balm", "C2", 0.4, "0%")
                        .set("Balm", "C3", 0.6)
                        .findings())
                .containsExactly("error Balm!C1: \"Balm\" adds up to 40.6 %. Are these fractions? Format the cells as "
                        + "percentages, or type 2.5 for 2.5 %.");
    }

    @Test
    void fractions_are_suspected_beside_the_line_that_takes_the_balance() {
        assertThat(besideWater(0.10, 0.05).findings())
                .containsExactly(
                        "warning Balm!C3: 0.1 is read as 0.1 %, and likewise in Balm!C4. Are these fractions? Format "
                                + "the cells as percentages, or type 10 for 10 %.");
        assertThat(besideWater("0,10", "0.05").findings())
                .containsExactly(
                        "warning Balm!C3: 0.1 is read as 0.1 %, and likewise in Balm!C4. Are these fractions? Format "
                                + "the cells as percentages, or type 10 for 10 %.");
        assertThat(besideWater(0.6, 0.4).findings()).hasSize(1);
        assertThat(besideWater(0.015, 0.005).findings()).hasSize(1);
    }

    @Test
    void one_mere_number_is_suspicious_where_another_cell_says_per_cent() {
        assertThat(besideWater(0.10, 0.05).set("Balm", "C3", 0.10, "0%").findings())
                .containsExactly(
                        "warning Balm!C4: 0.05 is read as 0.05 %, but Balm!C3 says 10 %. Are these fractions? Format "
                                + "the cells as percentages, or type 5 for 5 %.");
        assertThat(besideWater("0,10", "5 %").findings())
                .containsExactly(
                        "warning Balm!C3: 0.1 is read as 0.1 %, but Balm!C4 says 5 %. Are these fractions? Format the "
                                + "cells as percentages, or type 10 for 10 %.");
    }

    @Test
    void small_levels_in_an_ordinary_formula_are_no_fractions() {
        assertThat(besideWater(5, 0.3).findings()).as("beside one above 1").isEmpty();
        assertThat(besideWater(1, 0.3).findings()).as("beside a whole per cent").isEmpty();
        assertThat(besideWater(0.9).findings()).as("a preservative alone").isEmpty();
        assertThat(besideWater(0.9, 0).findings()).as("and none of another").isEmpty();
        assertThat(besideWater(0.9, 0.3).findings()).as("120 % as fractions").isEmpty();
        assertThat(besideWater(0.01, 0.009).findings())
                .as("less than 2 % as fractions")
                .isEmpty();
        assertThat(besideWater("0.1 %", "0.05 %").findings())
                .as("said in words")
                .isEmpty();
        assertThat(besideWater("80 %", 0.3).findings()).as("110 % as fractions").isEmpty();
    }

    @Test
    void percent_cells_are_read_as_they_show() {
        Formula formula =
                formula(TestBook.sound().set("Balm", "C2", 0.4, "0.00%").set("Balm", "C3", 0.6, "0%"), "Balm");

        assertThat(formula.stated()).isEqualByComparingTo("1");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"q.s.", "qs", "Q.S.", "q.s. to 100", "qs 100", "ad 100", "to 100 %", "balance", "q.s.p. 100"})
    void one_line_may_take_the_balance(String words) {
        Formula formula = formula(TestBook.sound().set("Balm", "C3", words), "Balm");

        assertThat(formula.levelOf(formula.lines().get(1))).isEqualByComparingTo("0.6");
    }

    @Test
    void two_lines_cannot_take_the_balance() {
        assertThat(TestBook.sound()
                        .set("Balm", "C2", "q.s.")
                        .set("Balm", "C3", "q.s.")
                        .findings())
                .containsExactly(
                        "error Balm!C3: This is a second q.s. line; the first is in Balm!C2. Only one line can take the "
                                + "balance, so type a percentage here, such as 0.3. If the sheet holds several formulas, "
                                + "head the column with their names \"Formula\".");
    }

    @Test
    void the_balance_cannot_be_negative() {
        assertThat(TestBook.sound()
                        .sheet(
                                "Balm",
                                List.of("Material", "% w/w"),
                                List.of("Shea butter", "q.s."),
                                List.of("Sunflower oil", 60),
                                List.of("Sunflower oil", 41.2))
                        .findings())
                .containsExactly(
                        "error Balm!B2: The other lines of \"Balm\" already add up to 101.2 %, so nothing is left for "
                                + "q.s. Lower them to 100 % or less.");
    }

    @Test
    void a_level_that_is_missing_or_wrong_is_reported_once() {
        assertThat(TestBook.sound().set("Balm", "C3", "").findings())
                .containsExactly(
                        "error Balm!C3: \"Sunflower oil\" has no % w/w. Type the percentage, or q.s. for the balance.");
        assertThat(TestBook.sound().set("Balm", "C3", -60).findings())
                .containsExactly("error Balm!C3: % w/w is -60 %. It must be from 0 to 100.");
        assertThat(TestBook.sound().set("Balm", "C3", "sixty").findings())
                .containsExactly(
                        "error Balm!C3: % w/w is \"sixty\", which is not a percentage or q.s. Type the figure alone, "
                                + "such as 4.");
    }

    @Test
    void a_row_of_totals_is_no_material() {
        for (String total : List.of("Total", "TOTAL:", "Sum", "Grand total", "Totals %", "Σ")) {
            Formula formula =
                    formula(TestBook.sound().set("Balm", "B4", total).set("Balm", "C4", "=SUM(C2:C3)"), "Balm");
            assertThat(formula.lines()).as(total).hasSize(2);
        }
        assertThat(formula(TestBook.sound().set("Balm", "C4", 100), "Balm").lines())
                .hasSize(2);
    }

    @Test
    void an_unknown_material_is_an_error_with_a_proposal() {
        assertThat(TestBook.sound().set("Balm", "B3", "Sunflwer oil").findings())
                .containsExactly(
                        "error Balm!B3: The material \"Sunflwer oil\" has neither an offer nor a row in Materials. Did "
                                + "you mean \"Sunflower oil\"?");
        assertThat(TestBook.sound().set("Balm", "B3", "Squalane").findings())
                .containsExactly(
                        "error Balm!B3: The material \"Squalane\" has neither an offer nor a row in Materials. Add one "
                                + "of them, or correct the name.");
    }

    @Test
    void case_and_spaces_in_names_do_not_matter() {
        assertThat(TestBook.sound().set("Balm", "B3", " SUNFLOWER  oil").findings())
                .isEmpty();
    }

    @Test
    void a_name_that_only_looks_the_same_is_another_name() {
        assertThat(TestBook.sound().set("Balm", "B3", "Sunflоwer oil").findings()) // Cyrillic о
                .containsExactly(
                        "error Balm!B3: The material \"Sunflоwer oil\" has neither an offer nor a row in Materials. Did "
                                + "you mean \"Sunflower oil\"? The two only look alike: some letters are of another alphabet or "
                                + "invisible.",
                        "warning Balm!B3: \"Sunflоwer oil\" looks like \"Sunflower oil\" in Offers!B3 but is another "
                                + "name: some letters are of another alphabet or invisible. Type it again.");
    }

    @Test
    void water_needs_neither_offer_nor_row() {
        assertThat(TestBook.sound().set("Balm", "B3", "Aqua").findings()).isEmpty();
    }

    @Test
    void several_formulas_may_stand_on_one_sheet() {
        TestBook book = TestBook.sound()
                .drop("Balm")
                .sheet(
                        "Formulas",
                        List.of("Formula", "Material", "Percent"),
                        List.of("Balm", "Shea butter", 40),
                        List.of("", "Sunflower oil", 60),
                        List.of("Oil", "Sunflower oil", 90),
                        List.of("Oil", "Shea butter", "q.s."));

        assertThat(formula(book, "Balm").lines()).hasSize(2);
        assertThat(formula(book, "Oil").lines()).hasSize(2);
    }

    @Test
    void two_formulas_cannot_have_one_name() {
        assertThat(TestBook.sound()
                        .sheet("More", List.of("Formula", "Material", "% w/w"), List.of("Balm", "Shea butter", 100))
                        .findings())
                .containsExactly(
                        "error More!A2: The formula \"Balm\" is listed twice; the first is in Balm!C1. Keep one.");
    }

    @Test
    void result_sheets_are_not_read() {
        assertThat(TestBook.sound()
                        .sheet("Costs of May", List.of("Material", "% w/w"), List.of("Nonsense", 5))
                        .with(book -> {
                            XSSFName mark = book.createName();
                            mark.setNameName("_perkilo_sheet");
                            mark.setSheetIndex(book.getSheetIndex("Costs of May"));
                            mark.setRefersToFormula("\"Cost detail/Cost detail\"");
                        })
                        .findings())
                .isEmpty();
        assertThat(TestBook.sound()
                        .sheet("Blend", List.of("Material", "% w/w"), List.of("Shea butter", 100))
                        .findings())
                .containsExactly(
                        "note Blend: This sheet has the name of a result sheet, so it is not read. Rename it if it is yours.");
    }

    @Test
    void without_a_formula_or_an_offer_nothing_can_be_done() {
        assertThat(TestBook.sound().drop("Balm").findings())
                .contains(
                        "error book.xlsx: No formula was recognised. Add a sheet with the columns Material and % w/w.",
                        "error Products!B2: The formula \"Balm\" is on no sheet. Add it, or correct the name.");
        assertThat(TestBook.sound().drop("Offers").findings())
                .contains("error book.xlsx: No price sheet was recognised. It needs the columns Supplier, Item, Pack "
                        + "size, Pack unit, Price and Price per: add such a sheet, or rename your headers.");
    }

    @ParameterizedTest
    @CsvSource({"Formula,Grams", "Recipe,g", "Product,Grams per pot", "Produkt,Gramm", "Product,kg"})
    void weights_are_parts_of_their_own_formula(String names, String weights) {
        TestBook book = recipes(
                List.of(names, "Ingredient", weights),
                List.of("Balm", "Shea butter", 900),
                List.of("", "Sunflower oil", 100),
                List.of("Butter bar", "Shea butter", 1000),
                List.of("Butter bar", "Sunflower oil", 3000));

        assertThat(levels(book, "Balm")).containsExactly("90", "10");
        assertThat(levels(book, "Butter bar")).containsExactly("25", "75");
        assertThat(book.findings())
                .contains(
                        "note Recipes!C1: The column \"" + weights + "\" is converted to per cent, for each formula by "
                                + "itself: \"Balm\" of 1000, \"Butter bar\" of 4000. Costs follow its cells when the command runs "
                                + "again.");
    }

    @Test
    void each_formula_has_its_own_total_of_weights_and_its_own_balance() {
        TestBook book = recipes(
                List.of("Formula", "Ingredient", "Grams"),
                List.of("Balm", "Shea butter", 50),
                List.of("Balm", "Sunflower oil", "q.s."),
                List.of("Balm", "Total", 200),
                List.of("Butter bar", "Shea butter", "ad 400"),
                List.of("Butter bar", "Sunflower oil", 100));

        assertThat(levels(book, "Balm")).containsExactly("25", "75");
        assertThat(levels(book, "Butter bar")).containsExactly("75", "25");
    }

    @Test
    void products_beside_levels_name_recipes_too() {
        TestBook book = recipes(
                List.of("Product", "Ingredient", "% w/w"),
                List.of("Balm", "Shea butter", 40),
                List.of("Balm", "Sunflower oil", 60),
                List.of("Butter bar", "Shea butter", 70),
                List.of("Butter bar", "Sunflower oil", 30));

        assertThat(levels(book, "Balm")).containsExactly("40", "60");
        assertThat(levels(book, "Butter bar")).containsExactly("70", "30");
        assertThat(book.findings())
                .contains(
                        "note Recipes!A1: The column \"Product\" names several recipes, so each is read as a formula of "
                                + "that name.");
    }

    @Test
    void a_product_on_each_line_is_no_recipe() {
        TestBook book = TestBook.sound()
                .sheet(
                        "Balm",
                        List.of("Product", "Ingredient", "% w/w"),
                        List.of("Karilux", "Shea butter", 40),
                        List.of("Solvane", "Sunflower oil", 60));
        assertThat(book.read().value().formulas().values())
                .extracting(Formula::name)
                .containsExactly("Balm");
        assertThat(levels(book, "Balm")).containsExactly("40", "60");
        TestBook another = recipes(
                List.of("Product", "Ingredient", "% w/w"),
                List.of("Karilux", "Shea butter", 40),
                List.of("Solvane", "Sunflower oil", 60));
        assertThat(another.read().value().formula("Recipes")).isPresent();
    }

    @Test
    void a_formula_of_weights_that_does_not_add_up_has_no_figure_and_the_others_have() {
        Reading<Book> reading = recipes(
                        List.of("Product", "Ingredient", "Grams"),
                        List.of("Balm", "Shea butter", 50),
                        List.of("Balm", "Sunflower oil", 60),
                        List.of("Balm", "Total", 100),
                        List.of("Butter bar", "Shea butter", 100),
                        List.of("Butter bar", "Sunflower oil", 300),
                        List.of("Scrub", "Shea butter", 10),
                        List.of("Scrub", "Sunflower oil", "q.s."))
                .read();

        assertThat(reading.findings())
                .extracting(Finding::toString)
                .contains(
                        "error Recipes!A2: \"Balm\" adds up to 110 %, which is 10 % too much. Correct its lines so that "
                                + "they add up to 100 %.",
                        "error Recipes!A7: \"Scrub\" has a q.s. line in the column \"Grams\" but no total, so its "
                                + "percentages are not known. Add a row Total with the weight of the batch, or type "
                                + "q.s. to 1000 g.");
        Book book = reading.value();
        assertThat(book.gaps().isEverything()).isFalse();
        assertThat(book.formula("Balm").orElseThrow().lines()).isEmpty();
        assertThat(book.formula("Scrub").orElseThrow().lines()).isEmpty();
        assertThat(book.formula("Butter bar").orElseThrow().lines()).hasSize(2);
    }

    /** The sound book with its formulas on a sheet of recipes. */
    private static TestBook recipes(List<?>... rows) {
        return TestBook.sound().drop("Balm").sheet("Recipes", rows);
    }

    /** The levels of a formula in per cent. */
    private static List<String> levels(TestBook book, String name) {
        Formula formula = book.read().value().formula(name).orElseThrow();
        return formula.lines().stream()
                .map(line -> Percents.words(formula.levelOf(line)))
                .toList();
    }

    /** The oils of the balm at some levels, in water. */
    private static TestBook besideWater(Object... levels) {
        TestBook book = TestBook.sound().set("Balm", "B2", "Water").set("Balm", "C2", "q.s.");
        List<String> oils = List.of("Shea butter", "Sunflower oil");
        for (int i = 0; i < levels.length; i++) {
            book.set("Balm", "B" + (3 + i), oils.get(i)).set("Balm", "C" + (3 + i), levels[i]);
        }
        return levels.length == 1 ? book.set("Balm", "B4", "").set("Balm", "C4", "") : book;
    }

    private static Formula formula(TestBook book, String name) {
        Reading<Book> reading = book.read();
        assertThat(reading.findings()).filteredOn(Finding::isError).isEmpty();
        return reading.value().formula(name).orElseThrow();
    }
}
