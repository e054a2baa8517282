package perkilo.origin;

import java.util.Locale;

/** How much a finding matters. */
public enum Level {
    /** Nothing can be computed until this is corrected. */
    ERROR,
    /** The answer is valid, but a person should check it. */
    WARNING,
    /** Informational; needs no action. */
    NOTE;

    /** The word that a person reads. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
