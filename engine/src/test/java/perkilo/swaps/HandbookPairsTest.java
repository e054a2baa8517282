package perkilo.swaps;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import perkilo.model.Material;
import perkilo.model.ProductKind;
import perkilo.model.ProductKind.Word;
import perkilo.swaps.closeness.Closeness;
import perkilo.swaps.facts.FactTable;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.trial.Dosing;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;

/** Swaps that handbooks and the law allow or rule out, judged by the gates and closeness as they are. */
final class HandbookPairsTest {

    private static final Map<String, Base> BASES = bases();

    /** A formula of the table. */
    private record Base(String kind, String ph, List<String> lines) {}

    /**
     * A line, a candidate, and what a formulator says.
     *
     * @param verdict offered without any caution, offered with a caution, or refused
     * @param by gates of which one refuses; role, closeness and kept are among them
     * @param about words of which a caution has one
     * @param open why the program does not agree yet; empty if it does
     */
    private record Pair(
            String base,
            String line,
            String candidate,
            String verdict,
            String by,
            String about,
            String added,
            String source,
            String open) {

        @Override
        public String toString() {
            return base + ": " + line + " -> " + candidate + ", " + verdict + (by.isEmpty() ? "" : " by " + by);
        }
    }

    private static Map<String, Base> bases() {
        Map<String, Base> all = new LinkedHashMap<>();
        for (List<String> row : FactTable.read(HandbookPairsTest.class, "handbook-bases.csv")) {
            all.computeIfAbsent(row.get(0), name -> new Base(row.get(1), row.get(2), new ArrayList<>()))
                    .lines()
                    .add(row.get(3));
        }
        return all;
    }

    static Stream<Pair> pairs() {
        return FactTable.read(HandbookPairsTest.class, "handbook-pairs.csv").stream()
                .map(row -> new Pair(
                        row.get(0),
                        row.get(1),
                        row.get(2),
                        row.get(3),
                        row.get(4),
                        row.get(5),
                        row.get(6),
                        row.get(7),
                        row.get(8)));
    }

    private static Recipe recipe(Base base, Pair pair) {
        List<String> lines = new ArrayList<>(base.lines());
        if (!pair.added().isEmpty()) {
            lines.add(pair.added().replace("|", " | ") + " | " + pair.line());
        }
        Kit kit = new Kit();
        for (String line : lines) {
            String[] cells = line.split(" \\| ", -1);
            kit.line(cells[0], cells[1], cells[2], Kit.catalogued(cells[3]));
        }
        Set<Word> words = EnumSet.noneOf(Word.class);
        ProductKind.parts(base.kind())
                .forEach(part -> words.add(Word.named(part).orElseThrow()));
        kit.kind(words.toArray(new Word[0]));
        return (base.ph().isEmpty() ? kit : kit.ph(base.ph())).recipe();
    }

    /** Who refuses, nobody if it is offered; and the cautions of this swap, without those on every list of swaps. */
    private record Answer(Set<String> refused, List<String> cautions) {

        static Answer refused(String by) {
            return new Answer(Set.of(by), List.of());
        }

        boolean is(Pair pair) {
            return switch (pair.verdict()) {
                case "refused" -> refused.stream().anyMatch(words(pair.by())::contains);
                case "caution" ->
                    refused.isEmpty()
                            && words(pair.about()).stream()
                                    .anyMatch(word -> cautions.stream().anyMatch(one -> one.contains(word)));
                default -> refused.isEmpty() && cautions.isEmpty();
            };
        }
    }

    private static List<String> words(String cell) {
        return List.of(cell.split("\\|", 0));
    }

    private static Answer answer(Pair pair, List<String> reasons) {
        Recipe recipe = recipe(Objects.requireNonNull(BASES.get(pair.base()), pair.base()), pair);
        int line = -1;
        for (int at = 0; at < recipe.portions().size(); at++) {
            line = recipe.portions().get(at).material().name().equals(pair.line()) ? at : line;
        }
        Material from = recipe.portions().get(line).material();
        Material to = Kit.catalogued(pair.candidate());
        LineTriage triage = new LineTriage(false);
        LineTriage.Open open = triage.open(recipe, line);
        if (open == null) {
            reasons.add(triage.kept().toString());
            return Answer.refused("kept");
        }
        if (!open.admits(from, to)) {
            return Answer.refused("role");
        }
        Trial trial = new Dosing(recipe).of(line, to);
        List<Verdict> verdicts = Gates.judge(trial);
        List<Verdict> shut = verdicts.stream().filter(verdict -> !verdict.ok()).toList();
        shut.forEach(verdict -> reasons.add(verdict.withName()));
        Set<String> names = shut.stream().map(verdict -> verdict.gate().name()).collect(Collectors.toSet());
        BigDecimal worst = Closeness.of(open.role(), from, to).worst();
        if (worst.compareTo(SwapOptions.USUAL_CLOSENESS) < 0) {
            names.add("closeness");
            reasons.add(Closeness.of(open.role(), from, to).words());
        }
        if (shut.isEmpty() && !triage.isDecided(trial)) {
            reasons.add(triage.missing().toString());
            return Answer.refused("missing fact");
        }
        List<String> cautions = new ArrayList<>();
        verdicts.forEach(verdict -> cautions.addAll(verdict.cautions()));
        return new Answer(names, cautions);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pairs")
    void a_formulator_agrees(Pair pair) {
        List<String> reasons = new ArrayList<>();
        Answer answer = answer(pair, reasons);

        if (!pair.open().isEmpty()) {
            assertThat(answer.is(pair))
                    .as("the program agrees now, so the pair is open no more: " + pair.open())
                    .isFalse();
            return;
        }
        String as = pair.source() + " " + reasons;
        switch (pair.verdict()) {
            case "refused" -> assertThat(answer.refused()).as(as).containsAnyElementsOf(words(pair.by()));
            case "offered" -> {
                assertThat(answer.refused()).as(as).isEmpty();
                assertThat(answer.cautions()).as(as).isEmpty();
            }
            case "caution" -> {
                assertThat(answer.refused()).as(as).isEmpty();
                assertThat(answer.cautions())
                        .as(as)
                        .anySatisfy(caution -> assertThat(words(pair.about()))
                                .anySatisfy(word -> assertThat(caution).contains(word)));
            }
            default -> throw new AssertionError(pair.verdict());
        }
    }

    @Test
    void the_table_covers_many_swaps_of_both_kinds() {
        List<Pair> all = pairs().toList();

        assertThat(all).hasSizeGreaterThanOrEqualTo(120);
        assertThat(all).filteredOn(pair -> !pair.open().isEmpty()).hasSizeLessThan(5);
        assertThat(all).filteredOn(pair -> pair.verdict().equals("offered")).hasSizeGreaterThan(30);
        assertThat(all).filteredOn(pair -> pair.verdict().equals("caution")).hasSizeGreaterThan(30);
        assertThat(all).allSatisfy(pair -> {
            assertThat(pair.by().isBlank())
                    .as(pair.toString())
                    .isEqualTo(!pair.verdict().equals("refused"));
            assertThat(pair.about().isBlank())
                    .as(pair.toString())
                    .isEqualTo(!pair.verdict().equals("caution"));
        });
        assertThat(all.stream().map(Pair::base).distinct()).hasSizeGreaterThan(10);
        assertThat(all).allSatisfy(pair -> assertThat(pair.source()).isNotBlank());
    }
}
