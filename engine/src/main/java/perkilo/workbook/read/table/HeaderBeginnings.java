package perkilo.workbook.read.table;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;

/**
 * How headers begin: a look at three letters spares most cells of a long table the real comparison.
 *
 * <p>Whatever way a header is cut into a name and a unit, its key begins with the key of the name.
 */
final class HeaderBeginnings {

    private static final int LETTERS = 3;
    private static final int LAST_PLAIN = 0x7E;

    private final Set<String> beginnings = new HashSet<>();

    HeaderBeginnings(Collection<String> keys) {
        keys.forEach(key -> beginnings.add(key.substring(0, Math.min(LETTERS, key.length()))));
    }

    /** Whether some header begins like this text; never wrongly no. */
    boolean mayBeginHeader(String text) {
        StringBuilder beginning = new StringBuilder(LETTERS);
        for (int i = 0; i < text.length() && beginning.length() < LETTERS; i++) {
            char c = text.charAt(i);
            if (c > LAST_PLAIN) {
                return true;
            }
            if (Character.isLetterOrDigit(c) || c == '%') {
                beginning.append(Character.toLowerCase(c));
                if (beginnings.contains(beginning.toString())) {
                    return true;
                }
            }
        }
        return false;
    }
}
