package perkilo.page.http;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;

/** Sends an answer, with what the browser is to allow and to forbid. */
final class Reply {

    /** Nothing but what this server gives out; no script or style within the page's text. */
    private static final String POLICY =
            "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private final HttpExchange exchange;
    private final Headers headers;

    Reply(HttpExchange exchange) {
        this.exchange = exchange;
        this.headers = exchange.getResponseHeaders();
        headers.set("Content-Security-Policy", POLICY);
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("X-Frame-Options", "DENY");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Cache-Control", "no-store");
    }

    void send(Answer answer) throws IOException, InterruptedException {
        if (answer instanceof Answer.Data data) {
            data(Status.DONE, data.data());
        } else if (answer instanceof Answer.Entered entered) {
            headers.set("Set-Cookie", entered.cookie());
            data(Status.DONE, entered.data());
        } else if (answer instanceof Answer.Asset asset) {
            headers.set("Cache-Control", "no-cache");
            bytes(Status.DONE, asset.type(), asset.content());
        } else if (answer instanceof Answer.Download download) {
            download(download);
        } else if (answer instanceof Answer.Stream stream) {
            stream(stream);
        } else {
            throw new AssertionError(answer);
        }
    }

    /** Sends a refusal. */
    void refuse(Refusal refusal) throws IOException {
        ObjectNode data = JsonNodeFactory.instance.objectNode().put("error", refusal.sentence());
        data(refusal.status(), data);
    }

    private void data(int status, ObjectNode data) throws IOException {
        bytes(status, "application/json; charset=utf-8", data.toString().getBytes(StandardCharsets.UTF_8));
    }

    private void bytes(int status, String type, byte[] content) throws IOException {
        headers.set("Content-Type", type);
        exchange.sendResponseHeaders(status, content.length);
        try (OutputStream out = exchange.getResponseBody()) {
            out.write(content);
        }
    }

    private void download(Answer.Download download) throws IOException {
        byte[] content = Files.readAllBytes(download.file());
        String name = URLEncoder.encode(download.name(), StandardCharsets.UTF_8).replace("+", "%20");
        headers.set("Content-Disposition", "attachment; filename*=UTF-8''" + name);
        bytes(Status.DONE, "application/octet-stream", content);
    }

    private void stream(Answer.Stream stream) throws IOException, InterruptedException {
        headers.set("Content-Type", "text/event-stream");
        exchange.sendResponseHeaders(Status.DONE, 0);
        try (OutputStream out = exchange.getResponseBody()) {
            EventStream events = new EventStream(out);
            events.beat();
            stream.events().sendTo(events);
        }
    }
}
