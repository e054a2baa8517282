package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.layouts.Grades;
import perkilo.layouts.Question;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/** Grades are different materials: a number or a word for a grade that only one name has makes a proposal of a link. */
final class GradesTest {

    @TempDir
    Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Lactic acid 80 %               | Lactic acid 90 %",
                "Sodium lactate 60%             | Sodium lactate",
                "Sodium hydroxide solution      | Sodium hydroxide",
                "Natriumhydroxid Perlen         | Sodium hydroxide flakes",
                "Dimethicone 5 cSt              | Dimethicone 100 cSt",
                "Dimethicone 350                | Dimethicone",
                "Jojoba oil bio                 | Jojoba oil",
                "Jojobaöl kbA                   | Jojoba oil refined",
                "Sunflower oil high oleic       | Sunflower oil",
                "Shea butter refined            | Shea butter unrefined",
                "Avocado oil cold pressed       | Avocado oil",
                "Coconut oil deodorised         | Coconut oil",
                "Neem leaf extract              | Neem seed extract",
                "Iron oxide CI 77491            | Iron oxide CI 77492",
                "Fragrance lavender             | Fragrance rose",
                "Hyaluronic acid HMW            | Hyaluronic acid LMW",
                "PEG-7 Glyceryl Cocoate         | PEG-40 Glyceryl Cocoate",
                "Polysorbate 20                 | Polysorbate 80",
                "Beeswax white                  | Beeswax yellow",
                "Citric acid anhydrous          | Citric acid monohydrate",
                "D-Panthenol                    | DL-Panthenol",
                "Zinc oxide nano                | Zinc oxide",
                "Vitamin C powder               | Vitamin C",
                "Glycerin 86.5 %                | Glycerin 99.5 %",
                "Emulsan 1618                   | Emulsan",
            })
    void another_grade_is_another_material(String one, String other) {
        assertThat(Grades.of(one).isSame(Grades.of(other)))
                .as(one + " and " + other)
                .isFalse();
        assertThat(Grades.of(one).isSame(Grades.of(one))).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Lactic acid 80 %               | Milchsäure 80%",
                "Lactic acid 80.0 %             | Acide lactique 80 %",
                "Shea butter refined            | Karitébutter raffiniert",
                "Jojoba oil organic             | Jojobaöl bio",
                "E 330 Citric acid              | Citric acid",
                "Glycerin 25 kg                 | Glycerin",
                "Dimethicone 100 cSt            | Dimethicone 100cSt",
                "Citric acid 77-92-9            | Citric acid",
                "Beeswax white                  | Cire blanche",
            })
    void the_same_grade_in_other_words_is_the_same(String one, String other) {
        assertThat(Grades.of(one)).isEqualTo(Grades.of(other));
    }

    private TakenIn take(String list) throws IOException {
        Path known = Files.writeString(folder.resolve("materials.csv"), MATERIALS);
        Path file = Files.writeString(folder.resolve("list.csv"), list);
        List<Grid> sheets = Grids.ofPriceFile(known).sheets();
        return new TakeIn(new ListFolder(folder.resolve("kept")), sheets, Set.of())
                .take(file, new TakeIn.Said("Fen & Moor", LocalDate.of(2026, 11, 2), null));
    }

    private static final String MATERIALS = """
            Material,INCI name,CAS
            Dimethicone 5 cSt,Dimethicone,
            Dimethicone 100 cSt,Dimethicone,
            Lactic acid 90 %,Lactic Acid,50-21-5
            Niacinamide,Niacinamide,98-92-0
            """;

    @Test
    void only_the_material_of_the_same_grade_is_linked_and_others_are_asked_about() throws IOException {
        TakenIn taken = take("""
                Product;INCI;CAS;Pack;EUR/kg
                Silicone oil 100 cSt;Dimethicone;;25 kg;4.10
                Silicone oil 350 cSt;Dimethicone;;25 kg;4.20
                Milchsäure 80 %;;50-21-5;25 kg;2.50
                Vitamin B3;;;25 kg;8.50
                """);

        assertThat(taken.isKept()).isFalse();
        assertThat(taken.questions())
                .extracting(Question::key)
                .containsExactly("Silicone oil 350 cSt", "Milchsäure 80 %");
        assertThat(taken.questions())
                .extracting(Question::text)
                .contains(
                        "\"Milchsäure 80 %\" seems to be \"Lactic acid 90 %\" in another grade, such as another strength."
                                + " Is it the same?");
        assertThat(taken.seen().prices())
                .extracting(PriceLine::how)
                .containsExactly("same INCI name", "another grade of it", "another grade of it", "known synonym");
    }

    @Test
    void a_link_that_was_kept_before_is_judged_by_its_grade_again() throws IOException {
        Path kept = Files.createDirectories(folder.resolve("kept"));
        Files.writeString(kept.resolve("fen-moor.mapping.json"), """
                {"supplier": "Fen & Moor", "columns": {},
                 "names": [{"on the list": "Milchsäure 80 %", "is": "Lactic acid 90 %", "by": "CAS"}]}
                """);

        TakenIn taken = take("Product;CAS;Pack;EUR/kg\nMilchsäure 80 %;50-21-5;25 kg;2.50\n");

        assertThat(taken.isKept()).isFalse();
        assertThat(taken.questions()).extracting(Question::key).containsExactly("Milchsäure 80 %");
    }

    @Test
    void each_link_says_how_it_was_found() throws IOException {
        Path known = Files.writeString(folder.resolve("materials.csv"), MATERIALS);
        NameMatcher names =
                new NameMatcher(KnownNames.of(Grids.ofPriceFile(known).sheets()), perkilo.layouts.Mapping.empty("X"));
        names.of(new perkilo.layouts.ListLine.Listed("", "Vitamin B3", "", "", ""));
        names.of(new perkilo.layouts.ListLine.Listed("", "MILK 90 %", "", "50-21-5", ""));
        names.of(new perkilo.layouts.ListLine.Listed("", "Something else", "", "", ""));

        assertThat(names.links())
                .extracting(NameLink::words)
                .containsExactly(
                        "\"Vitamin B3\" is read as \"Niacinamide\" (known synonym).",
                        "\"MILK 90 %\" is read as \"Lactic acid 90 %\" (same CAS number).");
    }
}
