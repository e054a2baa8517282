package perkilo.pricelists;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import perkilo.layouts.ListWords;
import perkilo.names.Spelling;

/** When two names may be of the same supplier. */
final class SupplierNames {

    /** Words that say what kind of company it is, which a name may have or lack; common practice, no source. */
    private static final Set<String> KINDS = Set.of(
            "gmbh", "ag", "kg", "ohg", "mbh", "co", "ltd", "limited", "inc", "llc", "plc", "corp", "company", "sa",
            "sas", "sarl", "srl", "spa", "bv", "nv", "ab", "as", "aps", "oy", "the", "und", "and", "et");

    private SupplierNames() {}

    /**
     * Whether two different names may be of the same supplier: they differ by the kind of company, or by little in
     * their spelling.
     */
    static boolean alike(String one, String other) {
        Set<String> first = words(one);
        Set<String> second = words(other);
        if (first.isEmpty() || second.isEmpty()) {
            return ListWords.key(one).equals(ListWords.key(other));
        }
        return first.equals(second)
                || first.containsAll(second)
                || second.containsAll(first)
                || Spelling.likeness(String.join(" ", first), String.join(" ", second)) >= Spelling.LIKE_ENOUGH;
    }

    private static Set<String> words(String name) {
        Set<String> words = new LinkedHashSet<>();
        for (String word : name.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+", -1)) {
            String key = word.isEmpty() ? "" : ListWords.key(word);
            if (!key.isEmpty() && !KINDS.contains(key)) {
                words.add(key);
            }
        }
        return words;
    }
}
