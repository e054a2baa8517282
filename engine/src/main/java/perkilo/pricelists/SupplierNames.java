package perkilo.pricelists;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import perkilo.layouts.ListWords;
import perkilo.names.Spelling;

/** When two names may be of the same supplier. */
final class SupplierNames {

    /** Words that say what kind of company it is, which a name may have or lack; common practice, no source. */
    private static final Set<String> KINDS = Set.of(
            "gmbh", "ag", "kg", "kgaa", "ohg", "ug", "se", "mbh", "ltd", "limited", "inc", "llc", "llp", "plc", "corp",
            "sa", "sas", "sasu", "sarl", "eurl", "srl", "spa", "sl", "slu", "bv", "nv", "ab", "as", "aps", "oy", "pty");

    /** Words that join the others, and say nothing of who it is. */
    private static final Set<String> JOINING = Set.of("co", "company", "the", "und", "and", "et");

    /** A name that ends with the kind of company, at the beginning of a line: {@code Fen & Moor Ltd, Leeds}. */
    private static final Pattern COMPANY = Pattern.compile("^(\\p{L}[^\\d|;:]*?[\\p{L}).],? "
            + "(?:GmbH(?: ?& ?Co\\.? ?(?:KGaA|KG|OHG))?|AG|KGaA|KG|OHG|UG|SE|e\\.K\\.|(?:Pty )?L(?:td|TD)\\.?|Limited|LIMITED"
            + "|PLC|plc|LLC|LLP|I(?:nc|NC)\\.?|Corp\\.?|CORP\\.?|S\\.?A\\.?R\\.?L\\.?|Sarl|S\\.?A\\.?S\\.?U?|SA|S\\.A\\.|EURL"
            + "|S\\.?[rR]\\.?[lL]\\.?|S\\.?[pP]\\.?[aA]\\.?|S\\.?L\\.?(?:U\\.?)?|B\\.?V\\.?|N\\.?V\\.?|AB|A/S|ApS|AS|Oy|OY))"
            + "(?=$|[\\s,|–—-])");

    /** Words before the name of the one who buys; common practice, no source. */
    private static final Pattern ADDRESSED = Pattern.compile(
            "(?iu)^(?:for|to|attn|customer|client|für|fuer|an|kunde|firma|pour|à|per|cliente?|spett|para|a)\\b.*");

    private static final Pattern DOTTED = Pattern.compile("(?<=\\b\\p{L})\\.\\s?(?=\\p{L}(?!\\p{L}))");

    private SupplierNames() {}

    /** The name of a company that a line begins with, up to the kind of company; empty if it says none. */
    static Optional<String> company(String line) {
        Matcher found = COMPANY.matcher(ListWords.tidy(line));
        return found.find() && !ADDRESSED.matcher(line.strip()).matches()
                ? Optional.of(found.group(1))
                : Optional.empty();
    }

    /**
     * Whether two names are of one supplier: they differ in capitals, accents and marks alone, or one of them lacks the
     * kind of company.
     */
    static boolean same(String one, String other) {
        if (ListWords.key(one).equals(ListWords.key(other))) {
            return true;
        }
        Set<String> first = words(one);
        Set<String> kinds = kinds(one);
        Set<String> others = kinds(other);
        return !first.isEmpty()
                && first.equals(words(other))
                && (kinds.containsAll(others) || others.containsAll(kinds));
    }

    private static Set<String> kinds(String name) {
        Set<String> kinds = new LinkedHashSet<>();
        for (String key : keys(name)) {
            if (KINDS.contains(key)) {
                kinds.add(key.equals("limited") ? "ltd" : key);
            }
        }
        return kinds;
    }

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
        Set<String> words = new LinkedHashSet<>(keys(name));
        words.removeAll(KINDS);
        words.removeAll(JOINING);
        return words;
    }

    private static List<String> keys(String name) {
        List<String> keys = new ArrayList<>();
        for (String word :
                DOTTED.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("").split("[^\\p{L}\\p{N}]+", -1)) {
            String key = word.isEmpty() ? "" : ListWords.key(word);
            if (!key.isEmpty()) {
                keys.add(key);
            }
        }
        return keys;
    }
}
