package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.origin.Reading;
import perkilo.reading.arrange.Arrangement;

/** Materials of formulas are found by their INCI names where their own names are not known. */
final class InciTest {

    private static final String NEITHER = "has neither an offer nor a row in Materials";

    @Test
    void a_name_that_nobody_knows_is_found_by_its_inci_name_alone() {
        Reading<Book> read = TestBook.sound()
                .sheet(
                        "Balm",
                        List.of("Trade name", "INCI", "%"),
                        List.of("Karitane", "Butyrospermum Parkii (Shea) Butter", 40),
                        List.of("Sunflower oil", "Helianthus Annuus Seed Oil", 60))
                .read();

        assertThat(materials(read)).containsExactly("Shea butter", "Sunflower oil");
        assertThat(texts(read))
                .contains("note Balm!A2: Found by its INCI name: \"Karitane\" is \"Shea butter\". If one of them is"
                        + " not meant, type the material's own name.")
                .noneMatch(text -> text.contains(NEITHER));
    }

    @Test
    void a_formula_of_inci_names_alone_is_read() {
        Reading<Book> read = sunflower()
                .sheet(
                        "Balm",
                        List.of("Phase", "INCI-Bezeichnung", "%"),
                        List.of("A", "BUTYROSPERMUM PARKII BUTTER", 40),
                        List.of("A", "Helianthus Annuus Seed Oil", 60))
                .read();

        assertThat(materials(read)).containsExactly("Shea butter", "Sunflower oil");
        assertThat(texts(read)).noneMatch(text -> text.startsWith("error"));
        assertThat(texts(read))
                .anyMatch(text -> text.startsWith("note Balm!B2: Found by their INCI names: \"BUTYROSPERMUM PARKII"
                        + " BUTTER\" is \"Shea butter\"; \"Helianthus Annuus Seed Oil\" is \"Sunflower oil\"."));
    }

    /** The name of the line is missing, as it often is for water. */
    @Test
    void a_line_without_a_name_has_its_inci_name_as_its_name() {
        Reading<Book> read = TestBook.sound()
                .sheet(
                        "Balm",
                        List.of("Trade name", "INCI name", "%"),
                        List.of("Shea butter", "Butyrospermum Parkii Butter", 40),
                        List.of("", "Aqua", 20),
                        List.of("Sunflower oil", "", 40))
                .read();

        assertThat(materials(read)).containsExactly("Shea butter", "Aqua", "Sunflower oil");
        assertThat(texts(read)).noneMatch(text -> text.startsWith("error"));
    }

    @Test
    void several_grades_are_asked_about_once_and_none_is_taken() {
        TestBook book = twoGrades()
                .sheet(
                        "Balm",
                        List.of("Material", "INCI", "%"),
                        List.of("Karitane", "Butyrospermum Parkii Butter", 30),
                        List.of("Karitane", "Butyrospermum Parkii Butter", 10),
                        List.of("Sunflower oil", "", 60));

        Reading<Book> read = book.read();

        assertThat(texts(read).stream().filter(text -> text.startsWith("error")))
                .singleElement()
                .asString()
                .startsWith(
                        "error Balm!A2: Nothing is called \"Karitane\", and several materials have the INCI name"
                                + " Butyrospermum Parkii Butter: \"Shea butter\", \"Shea butter refined\". Which one is meant?");
        assertThat(open(book))
                .singleElement()
                .satisfies(one -> assertThat(one.choices()).containsExactly("Shea butter", "Shea butter refined"));
    }

    @Test
    void an_answer_on_the_sheet_reading_is_used() {
        TestBook book = twoGrades()
                .sheet(
                        "Balm",
                        List.of("Material", "INCI", "%"),
                        List.of("Karitane", "Butyrospermum Parkii Butter", 40),
                        List.of("Sunflower oil", "", 60))
                .sheet(
                        "Reading",
                        List.of("Sheet", "Cell", "What is there", "Looks like", "Read as"),
                        List.of("Balm", "A2", "material of Karitane", "", "Shea butter"));

        assertThat(materials(book.read())).containsExactly("Shea butter", "Sunflower oil");
        assertThat(open(book)).isEmpty();
        book.set("Reading", "E2", "Shea");
        assertThat(texts(book.read()))
                .contains("error Reading!E2: The material \"Shea\" has neither an offer nor a row in Materials. Choose"
                        + " one of the list.");
    }

    /** 28 % and 70 % are two materials, whatever their INCI name. */
    @Test
    void a_name_of_another_grade_is_not_taken() {
        TestBook book = TestBook.sound()
                .set("Materials", "A2", "Shea butter refined")
                .set("Offers", "B2", "Shea butter refined")
                .sheet(
                        "Balm",
                        List.of("Material", "INCI", "%"),
                        List.of("Shea butter unrefined", "Butyrospermum Parkii Butter", 40),
                        List.of("Sunflower oil", "", 60));

        assertThat(texts(book.read()))
                .anyMatch(text -> text.startsWith("error Balm!A2: Nothing is called \"Shea butter unrefined\". \"Shea"
                        + " butter refined\" has its INCI name, Butyrospermum Parkii Butter, but by its name it may be"
                        + " another grade. Is it meant?"));
    }

    @Test
    void a_name_and_an_inci_name_of_two_materials_are_told_with_both_cells() {
        assertThat(texts(TestBook.sound()
                        .sheet(
                                "Balm",
                                List.of("Material", "INCI", "%"),
                                List.of("Shea butter", "Theobroma Cacao Seed Butter", 40),
                                List.of("Sunflower oil", "", 60))
                        .read()))
                .contains("warning Balm!B2: The INCI name of \"Shea butter\" is Theobroma Cacao Seed Butter here, but"
                        + " Butyrospermum Parkii Butter in Materials!B2. Check which material is meant.");
    }

    @Test
    void an_inci_name_that_nobody_has_changes_nothing() {
        assertThat(texts(TestBook.sound()
                        .sheet(
                                "Balm",
                                List.of("Material", "INCI", "%"),
                                List.of("Kukui", "Aleurites Moluccanus Seed Oil", 40),
                                List.of("Sunflower oil", "", 60))
                        .read()))
                .anyMatch(text -> text.startsWith("error Balm!A2: The material \"Kukui\" " + NEITHER));
    }

    /** What a raw material is made of, and materials without names, are no formulas. */
    @Test
    void other_tables_of_inci_names_are_no_formulas() {
        Reading<Book> read = TestBook.sound()
                .sheet(
                        "Extract",
                        List.of("INCI", "%"),
                        List.of("Glycerin", 1.2),
                        List.of("Camellia Sinensis Leaf Extract", 3))
                .read();

        assertThat(read.value().formulas().values()).extracting(Formula::name).containsExactly("Balm");
    }

    @ParameterizedTest
    @CsvSource({
        "Aqua, Water/Aqua, true",
        "Butyrospermum Parkii Butter, Butyrospermum Parkii (Shea) Butter, true",
        "Glyceryl Stearate 60 % (and) PEG-100 Stearate 40 %, PEG-100 Stearate; Glyceryl Stearate, true",
        "Glycerin, Glycerine, false",
        "'Caprylyl Glycol', 'Caprylyl Glycol, Phenoxyethanol', false",
        "'1,2-Hexanediol', Hexanediol, false",
        "PEG-8, PEG-80, false",
    })
    void inci_names_are_compared_as_sets_of_ingredients(String one, String other, boolean same) {
        assertThat(InciKeys.of(one).equals(InciKeys.of(other))).isEqualTo(same);
    }

    private static TestBook sunflower() {
        return TestBook.sound()
                .sheet(
                        "Materials",
                        List.of("Material", "INCI name", "Density g/mL"),
                        List.of("Shea butter", "Butyrospermum Parkii Butter", 0.91),
                        List.of("Sunflower oil", "Helianthus Annuus Seed Oil", 0.92));
    }

    private static TestBook twoGrades() {
        return TestBook.sound()
                .sheet(
                        "Materials",
                        List.of("Material", "INCI name", "Density g/mL"),
                        List.of("Shea butter", "Butyrospermum Parkii Butter", 0.91),
                        List.of("Shea butter refined", "Butyrospermum Parkii Butter", 0.91));
    }

    private static List<Arrangement.Open> open(TestBook book) {
        try {
            return new BookReader().open(Sources.of(book.save()), TestBook.TODAY);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<String> materials(Reading<Book> read) {
        return read.value().formula("Balm").orElseThrow().lines().stream()
                .map(Formula.Line::material)
                .toList();
    }

    private static List<String> texts(Reading<Book> read) {
        return read.findings().stream().map(Object::toString).toList();
    }
}
