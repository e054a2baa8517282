package perkilo.page;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Knows whether any page is open, and since when none is. Thread-safe. */
final class LastPage {

    /** So long after the last page has gone, the server ends. Own choice: long enough for a lunch with a closed lid. */
    static final Duration PATIENCE = Duration.ofMinutes(30);

    private final Clock clock;
    private int open;
    private @Nullable Instant gone;

    /** None is open yet; the time begins now. */
    LastPage(Clock clock) {
        this.clock = clock;
        this.gone = clock.instant();
    }

    synchronized void came() {
        open++;
        gone = null;
    }

    synchronized void went() {
        open--;
        if (open == 0) {
            gone = clock.instant();
        }
    }

    /** Whether the last page has been gone for long. */
    synchronized boolean isOver() {
        return gone != null && Duration.between(gone, clock.instant()).compareTo(PATIENCE) >= 0;
    }
}
