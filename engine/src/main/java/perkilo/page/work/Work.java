package perkilo.page.work;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import perkilo.desk.Stage;
import perkilo.desk.Watch;
import perkilo.page.http.Answer;
import perkilo.page.http.EventStream;

/** A piece of work that a page follows. */
public final class Work implements Watch, Answer.Events {

    /** So long the newest progress waits for a newer one, in milliseconds; a search reports far more often. */
    private static final long PAUSE = 100;

    /** After so many milliseconds without progress, a sign of life shows whether the page is still there. */
    private static final long BEAT = 5_000;

    private @Nullable String newest;
    private boolean ended;
    private volatile boolean stopped;

    @Override
    public synchronized void at(Stage stage, int done, int of) {
        ObjectNode event = JsonNodeFactory.instance
                .objectNode()
                .put("stage", stage.name().toLowerCase(java.util.Locale.ROOT))
                .put("pieces", stage.pieces())
                .put("done", done)
                .put("of", of);
        newest = event.toString();
        notifyAll();
    }

    @Override
    public boolean isCancelled() {
        return stopped;
    }

    /** Asks the work to stop; it keeps what it has found so far. */
    public void stop() {
        stopped = true;
    }

    /** Says that the work is over. */
    synchronized void end() {
        ended = true;
        notifyAll();
    }

    @Override
    public void sendTo(EventStream out) throws IOException, InterruptedException {
        boolean over = false;
        while (!over) {
            String event;
            synchronized (this) {
                if (newest == null && !ended) {
                    wait(BEAT);
                }
                event = newest;
                newest = null;
                over = ended;
            }
            if (event != null) {
                out.send(event);
                Thread.sleep(over ? 0 : PAUSE);
            } else if (!over) {
                out.beat();
            }
        }
        out.send("{\"end\":true}");
    }
}
