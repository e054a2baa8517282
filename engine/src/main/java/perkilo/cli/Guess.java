package perkilo.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Guesses which known word a person meant by an unknown one. */
final class Guess {

    /** A word may have one slip for this many letters. */
    private static final int LETTERS_PER_SLIP = 3;

    /** With fewer letters, too many words begin alike. */
    private static final int FEWEST_LETTERS = 2;

    private Guess() {}

    /**
     * The known words that begin like the typed one, or else those that differ by the fewest slips. Case and leading
     * dashes are ignored.
     */
    static List<String> near(String typed, Collection<String> known) {
        String word = bare(typed);
        List<String> begun = new ArrayList<>();
        List<String> nearest = new ArrayList<>();
        int fewest = (word.length() + 1) / LETTERS_PER_SLIP;
        for (String one : known) {
            String other = bare(one);
            if (isBegun(word, other) || isBegun(other, word)) {
                begun.add(one);
            }
            int slips = slips(word, other);
            if (slips < fewest) {
                nearest.clear();
            }
            if (slips <= fewest) {
                fewest = slips;
                nearest.add(one);
            }
        }
        return begun.isEmpty() ? nearest : begun;
    }

    private static boolean isBegun(String start, String word) {
        return start.length() >= FEWEST_LETTERS && word.startsWith(start);
    }

    private static String bare(String word) {
        int start = 0;
        while (start < word.length() && word.charAt(start) == '-') {
            start++;
        }
        return word.substring(start).toLowerCase(Locale.ROOT);
    }

    /**
     * The number of letters to insert, drop, change, or exchange with the next one, to turn one word into the other.
     */
    static int slips(String one, String other) {
        int[][] least = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                least[i][j] = i == 0 || j == 0 ? i + j : least(least, one, other, i, j);
            }
        }
        return least[one.length()][other.length()];
    }

    private static int least(int[][] least, String one, String other, int i, int j) {
        int change = least[i - 1][j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        int most = Math.min(change, 1 + Math.min(least[i - 1][j], least[i][j - 1]));
        boolean exchanged =
                i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1);
        return exchanged ? Math.min(most, least[i - 2][j - 2] + 1) : most;
    }
}
