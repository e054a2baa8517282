package perkilo.page.http;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.InputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A request, with its words decoded and its body read up to a limit. */
public final class Call {

    /** The most bytes of a body in JSON. */
    private static final int JSON_BYTES = 1 << 20;

    /** Of a body that is refused, this much is read to no purpose, so that the browser reads the refusal. */
    private static final long DRAINED = 80L << 20;

    private static final ObjectMapper MAPPER =
            new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    private final HttpExchange exchange;
    private final List<String> path;

    Call(HttpExchange exchange) throws Refusal {
        this.exchange = exchange;
        List<String> words = new ArrayList<>();
        for (String word : exchange.getRequestURI().getRawPath().substring(1).split("/", -1)) {
            words.add(decoded(word.replace("+", "%2B")));
        }
        this.path = List.copyOf(words);
    }

    /** The words of the path, such as {@code api, books, launch.xlsx, cost}. */
    public List<String> path() {
        return path;
    }

    /** All values of a name behind the question mark. */
    public List<String> all(String name) throws Refusal {
        List<String> values = new ArrayList<>();
        String query = exchange.getRequestURI().getRawQuery();
        for (String one : query == null ? new String[0] : query.split("&", -1)) {
            int mark = one.indexOf('=');
            if (mark > 0 && decoded(one.substring(0, mark)).equals(name)) {
                values.add(decoded(one.substring(mark + 1)));
            }
        }
        return values;
    }

    /** The one value of a name behind the question mark. */
    public String one(String name) throws Refusal {
        List<String> values = all(name);
        if (values.size() != 1) {
            throw new Refusal(Status.BAD_REQUEST, RequestMessages.missing(name));
        }
        return values.get(0);
    }

    /** A header; null if there is none. */
    public @Nullable String header(String name) {
        return exchange.getRequestHeaders().getFirst(name);
    }

    /** The body as an object of JSON. */
    public ObjectNode body() throws Refusal, IOException {
        byte[] bytes = bytes("application/json", JSON_BYTES);
        try {
            if (MAPPER.readTree(bytes) instanceof ObjectNode object) {
                return object;
            }
        } catch (JacksonException e) {
            throw new Refusal(Status.BAD_REQUEST, RequestMessages.notJson());
        }
        throw new Refusal(Status.BAD_REQUEST, RequestMessages.notJson());
    }

    /** The body as the bytes of a file. */
    public byte[] file(int most) throws Refusal, IOException {
        return bytes("application/octet-stream", most);
    }

    private byte[] bytes(String kind, int most) throws Refusal, IOException {
        String type = header("Content-Type");
        if (type == null
                || !type.split(";", -1)[0].strip().toLowerCase(Locale.ROOT).equals(kind)) {
            throw new Refusal(Status.WRONG_KIND, RequestMessages.wrongKind(kind));
        }
        InputStream in = exchange.getRequestBody();
        byte[] bytes = in.readNBytes(most + 1);
        if (bytes.length > most) {
            drain(in);
            throw new Refusal(Status.TOO_LARGE, RequestMessages.tooLarge(most >> 20));
        }
        return bytes;
    }

    private static void drain(InputStream in) throws IOException {
        byte[] buffer = new byte[1 << 16];
        long left = DRAINED;
        for (int read = in.read(buffer); read >= 0 && left > 0; read = in.read(buffer)) {
            left -= read;
        }
    }

    private static String decoded(String word) throws Refusal {
        try {
            return URLDecoder.decode(word, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            throw new Refusal(Status.BAD_REQUEST, RequestMessages.nothingHere());
        }
    }

    /** A text in an object; refused if it is missing. */
    public static String text(JsonNode object, String member) throws Refusal {
        JsonNode value = object.get(member);
        if (value == null || !value.isTextual()) {
            throw new Refusal(Status.BAD_REQUEST, RequestMessages.missing(member));
        }
        return value.textValue();
    }

    /** A text in an object; empty if it is missing. */
    public static String textOrEmpty(JsonNode object, String member) throws Refusal {
        JsonNode value = object.get(member);
        return value == null || value.isNull() ? "" : text(object, member);
    }

    /** The objects of a list in an object; none if it is missing. */
    public static List<JsonNode> objects(JsonNode object, String member) throws Refusal {
        List<JsonNode> all = new ArrayList<>();
        for (JsonNode one : list(object, member)) {
            if (!one.isObject()) {
                throw new Refusal(Status.BAD_REQUEST, RequestMessages.missing(member));
            }
            all.add(one);
        }
        return all;
    }

    /** The texts of a list in an object; none if it is missing. Numbers count as texts. */
    public static List<String> texts(JsonNode object, String member) throws Refusal {
        List<String> all = new ArrayList<>();
        for (JsonNode one : list(object, member)) {
            if (!one.isValueNode() || one.isNull()) {
                throw new Refusal(Status.BAD_REQUEST, RequestMessages.missing(member));
            }
            all.add(one.asText());
        }
        return all;
    }

    private static Iterable<JsonNode> list(JsonNode object, String member) throws Refusal {
        JsonNode value = object.get(member);
        if (value == null || value.isNull()) {
            return List.of();
        }
        if (!value.isArray()) {
            throw new Refusal(Status.BAD_REQUEST, RequestMessages.missing(member));
        }
        return value;
    }
}
