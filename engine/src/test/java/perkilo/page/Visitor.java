package perkilo.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;

/** A page in a browser, as the server sees it: it has entered, keeps its cookie, and says where it comes from. */
public final class Visitor {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final HttpClient client = HttpClient.newHttpClient();
    private final String base;
    private final String token;
    private String cookie = "";

    /** A page at an address, with the key behind the hash; it has not entered. */
    public Visitor(URI address) {
        this.base = address.getScheme() + "://" + address.getAuthority();
        this.token = address.getFragment();
    }

    /** A page that has entered. */
    public static Visitor entered(URI address) throws IOException, InterruptedException {
        Visitor visitor = new Visitor(address);
        assertThat(visitor.enter().statusCode()).isEqualTo(200);
        return visitor;
    }

    HttpResponse<String> enter() throws IOException, InterruptedException {
        HttpResponse<String> entered = send(json("/api/enter", object().put("token", token)));
        entered.headers().firstValue("Set-Cookie").ifPresent(line -> cookie = line.split(";", -1)[0]);
        return entered;
    }

    /** An empty object. */
    public static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** The server's address without a path. */
    String base() {
        return base;
    }

    String cookie() {
        return cookie;
    }

    /** A request without anything but its path. */
    HttpRequest.Builder bare(String path) {
        return HttpRequest.newBuilder(URI.create(base + path));
    }

    HttpRequest.Builder own(String path) {
        HttpRequest.Builder request = bare(path).header("Origin", base).header("Sec-Fetch-Site", "same-origin");
        return cookie.isEmpty() ? request : request.header("Cookie", cookie);
    }

    HttpRequest.Builder json(String path, JsonNode body) {
        return own(path)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body.toString()));
    }

    HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<byte[]> download(String path) throws IOException, InterruptedException {
        return client.send(own(path).build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    /** What a path answers; fails unless it answers. */
    public JsonNode get(String path) throws IOException, InterruptedException {
        return answered(send(own(path)));
    }

    /** What a path answers to a body; fails unless it answers. */
    public JsonNode post(String path, JsonNode body) throws IOException, InterruptedException {
        return answered(send(json(path, body)));
    }

    /** The status and the sentence of a refusal. */
    public String refused(String path, JsonNode body) throws IOException, InterruptedException {
        return refusal(send(json(path, body)));
    }

    /** Puts a file into the folder. */
    public HttpResponse<String> upload(String name, byte[] content) throws IOException, InterruptedException {
        return send(own("/api/files?name=" + encoded(name))
                .header("Content-Type", "application/octet-stream")
                .POST(HttpRequest.BodyPublishers.ofByteArray(content)));
    }

    static String encoded(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }

    static JsonNode answered(HttpResponse<String> response) throws IOException {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        return MAPPER.readTree(response.body());
    }

    /** The status and the sentence of a refusal. */
    public static String refusal(HttpResponse<String> response) throws IOException {
        JsonNode body = MAPPER.readTree(response.body());
        assertThat(body.size()).isEqualTo(1);
        return response.statusCode() + " " + body.get("error").textValue();
    }
}
