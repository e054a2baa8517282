package perkilo.swaps.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import perkilo.model.Material;
import perkilo.model.ProductKind;
import perkilo.model.ProductKind.Word;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.swaps.Kit;
import perkilo.swaps.facts.FactTable;
import perkilo.swaps.trial.Recipe;

/** Mistakes in realistic formulas are found, each by one warning; sound formulas give none. */
final class PlantedMistakesTest {

    /** A formula of a table; a material with a star is not in the catalogue. */
    private record Planted(String name, String kind, String ph, String says, List<String> lines) {

        Recipe recipe() {
            Kit kit = new Kit();
            for (String line : lines) {
                String[] cells = line.split(" \\| ", -1);
                Material material = cells[3].endsWith("*")
                        ? Material.of(cells[3].substring(0, cells[3].length() - 1))
                        : Kit.catalogued(cells[3]);
                kit.line(cells[0], cells[1], cells[2], material);
            }
            Set<Word> words = EnumSet.noneOf(Word.class);
            ProductKind.parts(kind).forEach(part -> words.add(Word.named(part).orElseThrow()));
            kit.kind(words.toArray(new Word[0]));
            return (ph.isEmpty() ? kit : kit.ph(ph)).recipe();
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static Stream<Planted> read(String table) {
        Map<String, Planted> all = new LinkedHashMap<>();
        for (List<String> row : FactTable.read(PlantedMistakesTest.class, table)) {
            all.computeIfAbsent(
                            row.get(0),
                            name -> new Planted(name, row.get(1), row.get(2), row.get(3), new ArrayList<>()))
                    .lines()
                    .add(row.get(4));
        }
        return all.values().stream();
    }

    static Stream<Planted> planted() {
        return read("planted.csv");
    }

    static Stream<Planted> sound() {
        return read("sound.csv");
    }

    private static List<String> warnings(Planted formula) {
        return Checks.of(formula.recipe()).stream()
                .filter(finding -> finding.level() == Level.WARNING)
                .map(Finding::text)
                .map(text -> text.replace("\" in Test (", " ("))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("planted")
    void a_planted_mistake_is_told_once(Planted formula) {
        assertThat(warnings(formula)).anyMatch(text -> text.contains(formula.says()));
        assertThat(warnings(formula)).allMatch(text -> text.contains(formula.says()) || isOfSameKind(text, formula));
    }

    /** Two preservatives out of their pH range are two causes. */
    private static boolean isOfSameKind(String text, Planted formula) {
        return formula.says().endsWith("(pH)") && text.contains("(pH)");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sound")
    void a_sound_formula_gives_no_warning(Planted formula) {
        assertThat(warnings(formula)).isEmpty();
    }
}
