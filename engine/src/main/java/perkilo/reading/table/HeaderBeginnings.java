package perkilo.reading.table;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The first letters of all headers: a quick test that spares most cells of a long table the full comparison.
 *
 * <p>However a header is divided into a name and a unit, its key begins with the key of the name.
 */
final class HeaderBeginnings {

    private static final int LAST_PLAIN = 0x7E;

    private final Letter start = new Letter();

    HeaderBeginnings(Collection<String> keys) {
        keys.forEach(this::add);
    }

    private void add(String key) {
        Letter at = start;
        for (int i = 0; i < key.length(); i++) {
            at = at.next.computeIfAbsent(key.charAt(i), any -> new Letter());
        }
        at.ends = true;
    }

    /** Whether this text may begin with the key of a header; true for every header. */
    boolean mayBeginHeader(String text) {
        Letter at = start;
        for (int i = 0; i < text.length() && !at.ends; i++) {
            char c = text.charAt(i);
            if (c > LAST_PLAIN) {
                return true;
            }
            if (Character.isLetterOrDigit(c) || c == '%') {
                Letter next = at.after(Character.toLowerCase(c));
                if (next == null) {
                    return false;
                }
                at = next;
            }
        }
        return at.ends;
    }

    /** The letters that may follow a beginning. */
    private static final class Letter {

        private final Map<Character, Letter> next = new HashMap<>();
        private boolean ends;

        @Nullable Letter after(char letter) {
            return next.get(letter);
        }
    }
}
