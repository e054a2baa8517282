package perkilo.pricelists;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import perkilo.layouts.ListLine;
import perkilo.layouts.Mapping;
import perkilo.names.Names;
import perkilo.names.Spelling;

/**
 * Finds the item that a name on a list means. A person's own answer goes first; then the same name, the same letters
 * and digits (spaces, hyphens and other marks aside), the INCI name, the CAS number, a synonym, each only if it leads
 * to exactly one name. A name that only resembles another is proposed.
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
            return new Match(answer.is(), by, "", 0);
        }
        if (known.isEmpty()) {
            return new Match(line.item(), By.NOTHING, "", 0);
        }
        return one(known.same(line.item()), By.SAME)
                .or(() -> one(known.sameLetters(line.item()), By.LETTERS))
                .or(() -> one(known.ofInci(line.inci()), By.INCI))
                .or(() -> one(known.ofInci(line.item()), By.INCI))
                .or(() -> one(known.ofCas(line.cas()), By.CAS))
                .or(() -> one(known.ofSynonym(line.item()), By.SYNONYM))
                .orElseGet(() -> perhaps(line));
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

    /** All matches so far, by the name on the list. */
    Map<String, Match> found() {
        return found;
    }
}
