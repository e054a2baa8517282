package perkilo.pricelists;

import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import perkilo.layouts.ListWords;
import perkilo.names.Spelling;

/** When two names of suppliers may be one: {@code Alpha} and {@code Alpha GmbH}, {@code Mooor & Fen} and {@code Moor & Fen}. */
public final class SupplierNames {

    /** Words for the form of a company; they say nothing of which it is. Common practice, no source. */
    private static final Set<String> FORMS = Set.of(
            "gmbh", "ag", "kg", "co", "ohg", "ug", "ek", "se", "mbh", "ltd", "limited", "llc", "llp", "plc", "inc",
            "corp", "corporation", "company", "sa", "sas", "sarl", "eurl", "srl", "spa", "snc", "sl", "slu", "bv", "nv",
            "oy", "ab", "as", "aps", "sp", "zoo", "kft", "sro", "pty", "group", "gruppe", "groupe", "holding",
            "international", "deutschland", "germany", "france", "italia", "espana", "europe", "uk", "and", "und", "et");

    private static final int LEAST_LETTERS = 4;
    private static final double LIKE = 0.8;

    private SupplierNames() {}

    /**
     * A known supplier that a name may mean, though it is written in another way.
     *
     * @return empty if the name is known as it is, or resembles none
     */
    public static Optional<String> alike(String name, Collection<String> known) {
        String key = ListWords.key(name);
        if (known.stream().anyMatch(other -> ListWords.key(other).equals(key))) {
            return Optional.empty();
        }
        String core = core(name);
        return known.stream().sorted().filter(other -> isAlike(core, core(other))).findFirst();
    }

    private static boolean isAlike(String one, String other) {
        if (one.isEmpty() || other.isEmpty()) {
            return false;
        }
        String first = one.replace(" ", "");
        String second = other.replace(" ", "");
        if (first.equals(second)) {
            return true;
        }
        boolean begins = (" " + one + " ").startsWith(" " + other + " ") || (" " + other + " ").startsWith(" " + one + " ");
        boolean longEnough = Math.min(first.length(), second.length()) >= LEAST_LETTERS;
        return begins || (longEnough && Spelling.nearest(first, Set.of(second)).isPresent() && likeness(first, second) >= LIKE);
    }

    private static double likeness(String one, String other) {
        return Spelling.likeness(one, other);
    }

    /** The words of a name without the form of the company. */
    private static String core(String name) {
        StringBuilder core = new StringBuilder();
        for (String word : name.replace(".", "").split("[^\\p{L}\\p{N}]+", -1)) {
            String key = word.isEmpty() ? "" : ListWords.key(word);
            if (!key.isEmpty() && !FORMS.contains(key)) {
                core.append(core.length() == 0 ? "" : " ").append(key);
            }
        }
        return core.toString();
    }
}
