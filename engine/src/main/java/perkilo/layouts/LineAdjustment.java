package perkilo.layouts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a line around a table adds to prices or takes off, as a person said.
 *
 * @param what is done to a price
 * @param only words of the items, packs, codes or headings that it holds for; none if it holds for all
 * @param asked the question that it answers
 */
record LineAdjustment(Adjustment what, List<String> only, Question asked) {

    private static final String ONLY = " only to ";
    private static final int SHORTEST = 2;

    /** What an answer such as {@code add 0.12 per kg only to Jojoba; 25 kg} means; empty if it is not understood. */
    static Optional<LineAdjustment> of(String answer, Question asked) {
        int only = answer.toLowerCase(Locale.ROOT).indexOf(ONLY);
        if (only < 0) {
            return Adjustment.of(answer).map(what -> new LineAdjustment(what, List.of(), asked));
        }
        List<String> words = new ArrayList<>();
        for (String part : answer.substring(only + ONLY.length()).split(";", -1)) {
            String key = ListWords.key(part);
            if (!part.isBlank() && key.length() < SHORTEST) {
                return Optional.empty();
            }
            if (!part.isBlank()) {
                words.add(part.strip());
            }
        }
        return words.isEmpty()
                ? Optional.empty()
                : Adjustment.of(answer.substring(0, only)).map(what -> new LineAdjustment(what, words, asked));
    }

    /** The answer that it holds for some items only. */
    static String only(String answer, String words) {
        return answer + ONLY + words;
    }

    /** Whether it holds for a price, by the texts of its row: item, code, pack, heading. */
    boolean holdsFor(List<String> texts) {
        return only.isEmpty() || only.stream().anyMatch(word -> isIn(word, texts));
    }

    static boolean isIn(String word, List<String> texts) {
        String key = ListWords.key(word);
        return texts.stream().anyMatch(text -> ListWords.key(text).contains(key));
    }
}
