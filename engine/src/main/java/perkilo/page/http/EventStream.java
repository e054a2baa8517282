package perkilo.page.http;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Where events are sent to, each as soon as it happens. */
public final class EventStream {

    private final OutputStream out;

    EventStream(OutputStream out) {
        this.out = out;
    }

    /** Sends an event; fails if the page has gone. */
    public void send(String data) throws IOException {
        write("data: " + data + "\n\n");
    }

    /** Sends a sign of life; fails if the page has gone. */
    public void beat() throws IOException {
        write(":\n\n");
    }

    private void write(String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }
}
