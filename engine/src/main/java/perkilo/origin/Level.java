package perkilo.origin;

import java.util.Locale;

/** How much a finding matters. */
public enum Level {
    /** Nothing can be computed until this is put right. */
    ERROR,
    /** The answer stands, but a person should look. */
    WARNING,
    /** Said for completeness. */
    NOTE;

    /** The word that a person reads. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
