package perkilo.reading;

import java.util.LinkedHashMap;
import java.util.Map;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;

/** Findings that many rows of a list share: reported at the first row, with the number of the others. */
final class OncePerList {
    private final Map<Key, Said> said = new LinkedHashMap<>();

    private record Key(boolean warning, String file, String sheet, String about) {}

    private record Said(Origin first, String text, int more) {

        Said again() {
            return new Said(first, text, more + 1);
        }

        String inFull() {
            return more == 0 ? text : text + " " + OfferMessages.alsoForOthers(more);
        }
    }

    /**
     * Adds a note.
     *
     * @param about what the rows have in common that share one note
     */
    void note(Origin origin, String about, String text) {
        say(new Key(false, origin.file(), origin.sheet(), about), origin, text);
    }

    /** Adds a warning; {@code about} as for a note. */
    void warning(Origin origin, String about, String text) {
        say(new Key(true, origin.file(), origin.sheet(), about), origin, text);
    }

    private void say(Key key, Origin origin, String text) {
        said.merge(key, new Said(origin, text, 0), (before, now) -> before.again());
    }

    /** Adds all of them to the findings. */
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
