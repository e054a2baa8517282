package perkilo.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import perkilo.names.Spelling;

/** Compares names: whether two are the same except for misspelt words, word order and punctuation. */
final class SlipOfSpelling {

    private static final Pattern WORD = Pattern.compile("\\p{N}+|\\p{L}+");
    private static final Pattern NUMBER = Pattern.compile("\\p{N}+");

    /** A shorter word with another letter is another word: oil and foil. */
    private static final int SHORTEST = 5;

    private SlipOfSpelling() {}

    static boolean is(String name, String other) {
        List<String> words = words(name);
        List<String> others = words(other);
        return numbers(words).equals(numbers(others))
                && (isSlip(String.join("", words), String.join("", others)) || areSlips(words, others));
    }

    private static List<String> words(String name) {
        return WORD.matcher(Spelling.skeleton(name))
                .results()
                .map(MatchResult::group)
                .toList();
    }

    private static List<String> numbers(List<String> words) {
        return words.stream()
                .filter(word -> NUMBER.matcher(word).matches())
                .sorted()
                .toList();
    }

    private static boolean areSlips(List<String> words, List<String> others) {
        List<String> left = new ArrayList<>(others);
        for (String word : words) {
            if (!left.remove(word)
                    && !left.remove(left.stream()
                            .filter(other -> isSlip(word, other))
                            .findFirst()
                            .orElse(""))) {
                return false;
            }
        }
        return left.isEmpty();
    }

    /** One letter added, missing or different; two letters swapped; or a plural. */
    private static boolean isSlip(String one, String other) {
        if (one.equals(other) || one.equals(other + "s") || other.equals(one + "s")) {
            return true;
        }
        int longer = Math.max(one.length(), other.length());
        int shorter = Math.min(one.length(), other.length());
        if (shorter < SHORTEST || longer - shorter > 1) {
            return false;
        }
        return Math.round((1 - Spelling.likeness(one, other)) * longer) <= 1 || isSwapped(one, other);
    }

    private static boolean isSwapped(String one, String other) {
        if (one.length() != other.length()) {
            return false;
        }
        int at = 0;
        while (at < one.length() && one.charAt(at) == other.charAt(at)) {
            at++;
        }
        return at + 1 < one.length()
                && one.charAt(at) == other.charAt(at + 1)
                && one.charAt(at + 1) == other.charAt(at)
                && one.substring(at + 2).equals(other.substring(at + 2));
    }
}
