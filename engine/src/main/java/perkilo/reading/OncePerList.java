package perkilo.reading;

import java.util.LinkedHashMap;
import java.util.Map;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;

/** Findings that hold for many rows of a list alike: said at the first one, with the number of the others. */
final class OncePerList {
    private final Map<Key, Said> said = new LinkedHashMap<>();

    private record Key(boolean warning, String file, String sheet, String about) {}

    private record Said(Origin first, String text, int more) {

        Said again() {
            return new Said(first, text, more + 1);
        }

        String inFull() {
            return more == 0
                    ? text
                    : "%s (and so for %d more quote%s of this list)".formatted(text, more, more == 1 ? "" : "s");
        }
    }

    /**
     * Notes something.
     *
     * @param about what rows have in common for which it is said once
     */
    void note(Origin origin, String about, String text) {
        say(new Key(false, origin.file(), origin.sheet(), about), origin, text);
    }

    /** Warns of something; {@code about} as for a note. */
    void warning(Origin origin, String about, String text) {
        say(new Key(true, origin.file(), origin.sheet(), about), origin, text);
    }

    private void say(Key key, Origin origin, String text) {
        said.merge(key, new Said(origin, text, 0), (before, now) -> before.again());
    }

    /** Hands over all that was said. */
    void report(Findings findings) {
        said.forEach((key, one) -> {
            if (key.warning()) {
                findings.warning(one.first(), one.inFull());
            } else {
                findings.note(one.first(), one.inFull());
            }
        });
    }
}
