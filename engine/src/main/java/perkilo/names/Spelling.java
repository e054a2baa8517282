package perkilo.names;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The likeness of two spellings of a name. */
public final class Spelling {

    private static final String LOOK_ALIKES =
            "аa вb еe кk мm нh оo рp сc тt уy хx іi јj ѕs ԁd ɡg αa εe ιi κk νv οo ρp τt υu χx";

    /** From this character on, a letter may be of another alphabet, or invisible. */
    private static final int FIRST_OTHER = 0x7F;

    private static final int LETTERS_PER_SLIP = 4;
    private static final int MOST_SLIPS = 4;
    private static final String BETWEEN_WORDS = "[^\\p{L}\\p{N}]+";
    private static final double FOR_THE_WORDS = 0.6;

    /** From this {@link #likeness} on, one name may be a misspelling of the other. */
    public static final double LIKE_ENOUGH = 0.7;

    private Spelling() {}

    /** The name that is most like another, if it is similar enough to be meant. */
    public static Optional<String> nearest(String name, Collection<String> names) {
        return nearest(name, names, Spelling::skeleton);
    }

    /**
     * The same for many names that are compared with the same others.
     *
     * @param skeletons the {@link #skeleton} of each of the others, computed once
     */
    public static Optional<String> nearest(String name, Collection<String> names, UnaryOperator<String> skeletons) {
        String key = skeleton(name);
        int most = Math.min(MOST_SLIPS, Math.max(1, key.length() / LETTERS_PER_SLIP));
        String nearest = null;
        int fewest = most + 1;
        for (String other : names) {
            if (Math.abs(other.length() - name.length()) > MOST_SLIPS * 2) {
                continue;
            }
            String look = skeletons.apply(other);
            if (Math.abs(look.length() - key.length()) > most) {
                continue; // takes as many slips at least
            }
            int slips = distance(key, look);
            if (slips < fewest || (nearest != null && slips == fewest && other.compareTo(nearest) < 0)) {
                nearest = other;
                fewest = slips;
            }
        }
        return Optional.ofNullable(nearest);
    }

    /** Whether a name can look like a different one, because it differs from its own {@link #skeleton}. */
    public static boolean mayLookLikeAnother(String name) {
        for (int at = 0; at < name.length(); at++) {
            if (name.charAt(at) >= FIRST_OTHER) {
                return !skeleton(name).equals(Names.key(name));
            }
        }
        return false;
    }

    /**
     * The look of a name: letters of other alphabets become the Latin ones that they resemble, and invisible ones are
     * dropped.
     */
    public static String skeleton(String name) {
        String known = Names.key(name);
        if (known.chars().allMatch(letter -> letter < FIRST_OTHER && letter >= ' ')) {
            return known;
        }
        StringBuilder plain = new StringBuilder();
        String key = Normalizer.normalize(known, Normalizer.Form.NFC).replaceAll("\\p{Cf}", "");
        for (int i = 0; i < key.length(); i++) {
            plain.append(latin(key.charAt(i)));
        }
        return plain.toString();
    }

    private static char latin(char letter) {
        for (int i = 0; i < LOOK_ALIKES.length(); i += 3) {
            if (LOOK_ALIKES.charAt(i) == letter) {
                return LOOK_ALIKES.charAt(i + 1);
            }
        }
        return letter;
    }

    /**
     * The likeness of two names: 1 for names that look the same, 0 for names that have nothing in common.
     *
     * <p>The larger of two shares: the share of the longer name's letters that need no change, and how well the words
     * of the shorter name are found in the longer one, reduced if that has many others.
     */
    public static double likeness(String one, String other) {
        String first = skeleton(one);
        String second = skeleton(other);
        boolean ordered = first.length() <= second.length();
        return Math.max(letters(first, second), ordered ? words(first, second) : words(second, first));
    }

    private static double letters(String one, String other) {
        int longer = Math.max(one.length(), other.length());
        return longer == 0 ? 1 : 1 - (double) distance(one, other) / longer;
    }

    private static double words(String shorter, String longer) {
        String[] others = longer.split(BETWEEN_WORDS, -1);
        double found = 0;
        int all = 0;
        for (String word : shorter.split(BETWEEN_WORDS, -1)) {
            double best = 0;
            for (String other : others) {
                best = Math.max(best, letters(word, other));
            }
            found += best * word.length();
            all += word.length();
        }
        double size = (double) shorter.length() / Math.max(1, longer.length());
        return all == 0 ? 0 : found / all * (FOR_THE_WORDS + (1 - FOR_THE_WORDS) * size);
    }

    /** The number of letters to insert, drop or change to turn one word into the other. */
    static int distance(String one, String other) {
        int[] row = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int change = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[other.length()];
    }
}
