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

    /** A part of the page itself. */
    final class Asset implements Answer {

        private final String type;
        private final byte[] content;

        /**
         * A part.
         *
         * @param type its kind, such as {@code text/css}
         * @param content not to be changed
         */
        Asset(String type, byte[] content) {
            this.type = type;
            this.content = content;
        }

        String type() {
            return type;
        }

        byte[] content() {
            return content;
        }
    }

    /** Events, as long as there are any. */
    @FunctionalInterface
    interface Events {

        /** Sends the events; returns when there will be no more. */
        void sendTo(EventStream out) throws IOException, InterruptedException;
    }

    /** A stream of events. */
    record Stream(Events events) implements Answer {}
}
