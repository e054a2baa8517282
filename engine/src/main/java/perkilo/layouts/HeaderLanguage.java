package perkilo.layouts;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The language of a table's headers, for what it tells of its figures. */
final class HeaderLanguage {

    /** Languages in which a comma never parts thousands; in Spanish it does in Mexico. Common practice, no source. */
    private static final Set<String> COMMAS = Set.of("de", "fr", "it");

    private static final String ENGLISH = "en";
    private static final int LEAST = 2;

    private HeaderLanguage() {}

    /** Whether all headers are in a language that writes {@code 1,969} for a little less than two. */
    static boolean writesDecimalCommas(ListLayout layout) {
        Set<String> left = new HashSet<>(COMMAS);
        left.add("es");
        int known = 0;
        for (String header : layout.headers().values()) {
            Set<String> languages = of(header);
            if (languages.equals(Set.of(ENGLISH))) {
                return false;
            }
            if (!languages.isEmpty() && !languages.contains(ENGLISH)) {
                left.retainAll(languages);
                known++;
            }
        }
        return known >= LEAST && !left.isEmpty() && COMMAS.containsAll(left);
    }

    /** The languages of the known words that a header begins with; none for words that all languages share. */
    private static Set<String> of(String header) {
        String[] words = ListWords.tidy(header).split(" ", -1);
        for (int end = words.length; end > 0; end--) {
            String first = String.join(" ", List.of(words).subList(0, end));
            Set<String> languages = ListWords.languages(first);
            if (!languages.isEmpty()) {
                boolean shared = ListWords.is(Meaning.INCI.word(), first) || ListWords.is(Meaning.CAS.word(), first);
                return shared ? Set.of() : languages;
            }
        }
        return Set.of();
    }
}
