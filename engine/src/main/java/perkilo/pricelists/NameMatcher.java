package perkilo.pricelists;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import perkilo.layouts.Grades;
import perkilo.layouts.ListLine;
import perkilo.layouts.Mapping;
import perkilo.names.Names;
import perkilo.names.Spelling;

/**
 * Finds the item that a name on a list means. A person's own answer goes first; then the same name, the same letters
 * and digits (spaces, hyphens and other marks aside), the INCI name, the CAS number, a synonym, each only if it leads
 * to exactly one name of the same {@link Grades}. A name of another grade, or one that only resembles another, is
 * proposed.
 */
final class NameMatcher {

    private final KnownNames known;
    private final Mapping mapping;
    private final Map<String, Match> found = new LinkedHashMap<>();

    NameMatcher(KnownNames known, Mapping mapping) {
        this.known = known;
        this.mapping = mapping;
    }

    /**
     * The item that a name means.
     *
     * @param name the name that it is kept under
     * @param by how it was found
     * @param perhaps a similar known name; empty if there is none
     * @param likeness of that name, from 0 to 1
     */
    record Match(String name, By by, String perhaps, double likeness) {}

    /** How a name is found. */
    enum By {
        ANSWER("", "as you answered"),
        SAME("same name", "same name"),
        LETTERS("same letters", "same letters and digits"),
        INCI("INCI", "same INCI name"),
        CAS("CAS", "same CAS number"),
        SYNONYM("synonym", "known synonym"),
        LOOKS_THE_SAME("", "only looks the same"),
        /** The same INCI name, CAS number or synonym, but another grade. */
        OTHER_GRADE("", "another grade of it"),
        LIKE("", "resembles it"),
        NOTHING("", "not among your items");

        private final String word;
        private final String said;

        By(String word, String said) {
            this.word = word;
            this.said = said;
        }

        /** The word that is remembered; empty if the match is not remembered. */
        String word() {
            return word;
        }

        /** How a person reads it. */
        String said() {
            return said;
        }
    }

    /** The item that a line means. */
    Match of(ListLine.Listed line) {
        return found.computeIfAbsent(line.item(), item -> find(line));
    }

    private Match find(ListLine.Listed line) {
        Mapping.NameAnswer answer = mapping.names().get(line.item());
        if (answer != null && answer.is() != null && !answer.is().isBlank()) {
            By by = answer.by().isEmpty() ? By.ANSWER : byWord(answer.by());
            if (by == By.ANSWER || isOneGrade(by, line.item(), answer.is())) {
                return new Match(answer.is(), by, "", 0);
            }
        }
        if (known.isEmpty()) {
            return new Match(line.item(), By.NOTHING, "", 0);
        }
        return one(known.same(line.item()), By.SAME)
                .or(() -> one(known.sameLetters(line.item()), By.LETTERS))
                .or(() -> ofGrade(line.item(), known.ofInci(line.inci()), By.INCI))
                .or(() -> ofGrade(line.item(), known.ofInci(line.item()), By.INCI))
                .or(() -> ofGrade(line.item(), known.ofCas(line.cas()), By.CAS))
                .or(() -> ofWords(line.item(), known.ofSynonym(line.item())))
                .or(() -> otherGrade(line))
                .orElseGet(() -> perhaps(line));
    }

    /**
     * The one name of the same grades; numbers and words for a grade that only one of two names has are a difference.
     */
    private static Optional<Match> ofGrade(String item, Set<String> names, By by) {
        if (names.isEmpty()) {
            return Optional.empty();
        }
        Grades own = Grades.of(item);
        Set<String> same = new LinkedHashSet<>(names);
        same.removeIf(name -> !Grades.of(name).isSame(own));
        return one(same, by);
    }

    /** The one name of a synonym, whose numbers belong to the name itself: vitamin B3. */
    private static Optional<Match> ofWords(String item, Set<String> names) {
        Grades own = Grades.of(item);
        Set<String> same = new LinkedHashSet<>(names);
        same.removeIf(name -> !Grades.of(name).hasSameWords(own));
        return one(same, By.SYNONYM);
    }

    private Optional<Match> otherGrade(ListLine.Listed line) {
        Set<String> names = new LinkedHashSet<>(known.ofInci(line.inci()));
        names.addAll(known.ofInci(line.item()));
        names.addAll(known.ofCas(line.cas()));
        names.addAll(known.ofSynonym(line.item()));
        return names.stream()
                .max(Comparator.comparingDouble((String name) -> Spelling.likeness(line.item(), name))
                        .thenComparing(Comparator.reverseOrder()))
                .map(name -> new Match(line.item(), By.OTHER_GRADE, name, Spelling.likeness(line.item(), name)));
    }

    /** Whether a name that was found before still holds: a link that a person did not make is judged anew. */
    private static boolean isOneGrade(By by, String item, String name) {
        Grades own = Grades.of(item);
        return switch (by) {
            case INCI, CAS -> own.isSame(Grades.of(name));
            case SYNONYM -> own.hasSameWords(Grades.of(name));
            default -> true;
        };
    }

    private static By byWord(String word) {
        for (By by : By.values()) {
            if (by.word.equals(word)) {
                return by;
            }
        }
        return By.ANSWER;
    }

    private static Optional<Match> one(Set<String> names, By by) {
        return names.size() == 1 ? Optional.of(new Match(names.iterator().next(), by, "", 1)) : Optional.empty();
    }

    private Match perhaps(ListLine.Listed line) {
        String item = line.item();
        String looks = Spelling.skeleton(item);
        for (String other : known.near(item)) {
            if (Spelling.skeleton(other).equals(looks) && !Names.key(other).equals(Names.key(item))) {
                return new Match(item, By.LOOKS_THE_SAME, other, 1);
            }
        }
        record Near(String name, double likeness) {}
        return known.near(item).stream()
                .map(other -> new Near(other, Spelling.likeness(item, other)))
                .filter(near -> near.likeness() >= Spelling.LIKE_ENOUGH)
                .max(Comparator.comparingDouble(Near::likeness).thenComparing(Near::name, Comparator.reverseOrder()))
                .map(near -> new Match(item, By.LIKE, near.name(), near.likeness()))
                .orElseGet(() -> new Match(item, By.NOTHING, "", 0));
    }

    /**
     * The links made so far: each name on the list that is kept under another, or under the same, with how it was
     * found.
     */
    List<NameLink> links() {
        List<NameLink> links = new ArrayList<>();
        found.forEach((listed, match) -> {
            switch (match.by()) {
                case ANSWER, SAME, LETTERS, INCI, CAS, SYNONYM ->
                    links.add(new NameLink(
                            listed,
                            match.name(),
                            match.by().word(),
                            ListMessages.linked(listed, match.name(), match.by().said())));
                case LOOKS_THE_SAME, OTHER_GRADE, LIKE, NOTHING -> {}
            }
        });
        return links;
    }

    /** All matches so far, by the name on the list. */
    Map<String, Match> found() {
        return found;
    }
}
