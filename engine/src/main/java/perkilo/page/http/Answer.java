package perkilo.page.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;

/** The answer to a request. */
public sealed interface Answer {

    /** Data. */
    record Data(ObjectNode data) implements Answer {}

    /** Data, and the cookie of a page that was let in. */
    record Entered(ObjectNode data, String cookie) implements Answer {}

    /**
     * A file that the browser is to save, not to show.
     *
     * @param name as the browser proposes it
     */
    record Download(Path file, String name) implements Answer {}

    /**
     * A part of the page itself.
     *
     * @param type its kind, such as {@code text/css}
     */
    record Asset(String type, byte[] content) implements Answer {}

    /** Events, as long as there are any. */
    @FunctionalInterface
    interface Events {

        /** Sends the events; returns when there will be no more. */
        void sendTo(EventStream out) throws IOException, InterruptedException;
    }

    /** A stream of events. */
    record Stream(Events events) implements Answer {}
}
