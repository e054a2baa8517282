package perkilo.page;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Only the page that the server gave out is answered, in a browser that has the key. */
final class GuardTest {

    @TempDir
    private Path place = Path.of("");

    private Path folder = Path.of("");
    private Served served;
    private Visitor page;

    @BeforeEach
    void start() throws Exception {
        folder = Files.createDirectory(place.resolve("folder"));
        Files.writeString(place.resolve("secret.csv"), "Item,Price\nnot for the page,1\n");
        served = new Served(folder);
        page = served.visitor();
    }

    @AfterEach
    void end() {
        assertThat(served.faults()).isEmpty();
        served.close();
    }

    @Test
    void it_is_reached_from_this_computer_alone() throws IOException {
        int port = served.server().address().getPort();
        for (NetworkInterface network : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : Collections.list(network.getInetAddresses())) {
                if (!address.isLoopbackAddress()) {
                    assertThat(isOpen(address, port)).as(address.toString()).isFalse();
                }
            }
        }
        assertThat(isOpen(InetAddress.getLoopbackAddress(), port)).isTrue();
    }

    private static boolean isOpen(InetAddress address, int port) {
        try (Socket socket = new Socket(address, port)) {
            return socket.isConnected();
        } catch (IOException refused) {
            return false;
        }
    }

    @Test
    void the_key_has_256_bits_and_is_another_one_each_time() throws IOException {
        String key = served.server().address().getFragment();
        assertThat(java.util.Base64.getUrlDecoder().decode(key)).hasSize(32);
        try (Served other = new Served(folder)) {
            assertThat(other.server().address().getFragment()).isNotEqualTo(key);
        }
    }

    @Test
    void without_entering_there_is_no_data() throws Exception {
        Visitor stranger = new Visitor(served.server().address());
        assertThat(Visitor.refusal(stranger.send(stranger.own("/api/start"))))
                .startsWith("403 This page is not connected to Perkilo");
        assertThat(Visitor.refusal(stranger.send(stranger.own("/api/start").header("Cookie", page.cookie() + "x"))))
                .startsWith("403 ");
        assertThat(stranger.send(stranger.bare("/")).statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a", "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA"})
    void a_wrong_key_does_not_let_in(String key) throws Exception {
        HttpResponse<String> answer =
                page.send(page.json("/api/enter", Visitor.object().put("token", key)));
        assertThat(Visitor.refusal(answer)).startsWith("403 The key in the address is not the one of this page.");
        assertThat(answer.headers().firstValue("Set-Cookie")).isEmpty();
    }

    @Test
    void the_key_for_starting_a_browser_lets_one_page_in() throws Exception {
        URI once = served.server().addressForOnce();
        Visitor first = new Visitor(once);
        Visitor second = new Visitor(once);
        assertThat(first.enter().statusCode()).isEqualTo(200);
        assertThat(second.enter().statusCode()).isEqualTo(403);
        assertThat(first.get("/api/start").get("version").textValue()).isEqualTo("1.0");
    }

    @Test
    void the_cookie_is_for_this_page_alone() throws Exception {
        HttpResponse<String> entered = new Visitor(served.server().address()).enter();
        assertThat(entered.headers().firstValue("Set-Cookie").orElseThrow())
                .matches("perkilo-\\d+=[\\w-]{43}; Path=/; HttpOnly; SameSite=Strict");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "evil.example:PORT | 403",
                "evil.example | 403",
                "127.0.0.1 | 403",
                "127.0.0.1:1 | 403",
                "127.0.0.1.evil.example:PORT | 403",
                "localhost:PORT | 200",
                "[::1]:PORT | 200",
                "127.0.0.1:PORT | 200",
            })
    void the_host_must_be_this_server(String host, int status) throws IOException {
        String named =
                host.replace("PORT", String.valueOf(served.server().address().getPort()));
        String answer = raw("GET /api/start HTTP/1.1\r\nHost: " + named + "\r\nCookie: " + page.cookie()
                + "\r\nConnection: close\r\n\r\n");
        assertThat(answer).startsWith("HTTP/1.1 " + status);
        if (status == 403) {
            assertThat(answer).contains("This address does not belong to the page.");
        }
    }

    @Test
    void one_host_must_be_named() throws IOException {
        String host = "Host: 127.0.0.1:" + served.server().address().getPort() + "\r\n";
        assertThat(raw("GET / HTTP/1.1\r\n" + host + "Host: evil.example\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 4");
        assertThat(raw("GET / HTTP/1.1\r\nConnection: close\r\n\r\n")).startsWith("HTTP/1.1 4");
        assertThat(raw("GET http://evil.example/api/start HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 403");
    }

    private String raw(String request) throws IOException {
        try (Socket socket = new Socket(
                InetAddress.getLoopbackAddress(), served.server().address().getPort())) {
            socket.getOutputStream().write(request.getBytes(UTF_8));
            return new String(socket.getInputStream().readAllBytes(), UTF_8);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"https://evil.example", "null", "http://127.0.0.1", "http://127.0.0.1:1", "http://localhost"})
    void another_origin_is_refused(String origin) throws Exception {
        HttpRequest.Builder request =
                page.bare("/api/start").header("Origin", origin).header("Cookie", page.cookie());
        assertThat(Visitor.refusal(page.send(request))).startsWith("403 Another web page asked for this");
        HttpRequest.Builder post = page.bare("/api/close")
                .header("Origin", origin)
                .header("Cookie", page.cookie())
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("{}"));
        assertThat(page.send(post).statusCode()).isEqualTo(403);
    }

    @Test
    void a_change_must_say_where_it_comes_from() throws Exception {
        HttpRequest.Builder post = page.bare("/api/close")
                .header("Cookie", page.cookie())
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("{}"));
        assertThat(page.send(post).statusCode()).isEqualTo(403);
    }

    @ParameterizedTest
    @CsvSource({
        "cross-site, /api/start, 403",
        "same-site, /api/start, 403",
        "none, /api/start, 403",
        "same-origin, /api/start, 200",
        "none, /, 200",
        "cross-site, /, 403"
    })
    void the_browser_must_say_that_the_page_itself_asks(String site, String path, int status) throws Exception {
        HttpRequest.Builder request =
                page.bare(path).header("Sec-Fetch-Site", site).header("Cookie", page.cookie());
        assertThat(page.send(request).statusCode()).isEqualTo(status);
    }

    @Test
    void every_answer_forbids_what_the_page_does_not_need() throws Exception {
        for (String path : List.of("/", "/api/start", "/api/nothing", "/nothing")) {
            HttpResponse<String> answer = page.send(page.own(path));
            assertThat(answer.headers().firstValue("Content-Security-Policy"))
                    .contains("default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'none';"
                            + " frame-ancestors 'none'");
            assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
            assertThat(answer.headers().firstValue("Referrer-Policy")).contains("no-referrer");
            assertThat(answer.headers().firstValue("Access-Control-Allow-Origin"))
                    .isEmpty();
            assertThat(answer.headers().firstValue("Cache-Control"))
                    .contains(path.equals("/") ? "no-cache" : "no-store");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/page/../page/index.html",
                "/page/%2e%2e/page/index.html",
                "/page/..%2findex.html",
                "/page/..%5cindex.html",
                "/page//index.html",
                "/page/index.html%00.css",
                "/page/Index.html",
                "/page/",
                "/page",
                "/lib/lit-html/../../../perkilo/page/index.html",
                "/lib/lit-html/package.json",
                "/lib/nothing/lit-html.js",
                "/lib/lit-html",
                "/META-INF/MANIFEST.MF",
                "/perkilo/page/index.html",
                "/api",
                "/api/",
                "/api/start/",
                "/api//start"
            })
    void no_address_leads_beside_the_page(String path) throws IOException {
        String answer = raw("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:"
                + served.server().address().getPort() + "\r\nCookie: " + page.cookie()
                + "\r\nConnection: close\r\n\r\n");
        assertThat(answer).startsWith("HTTP/1.1 404").contains("{\"error\":");
    }

    @Test
    void the_library_of_the_page_is_given_out() throws Exception {
        HttpResponse<String> library = page.send(page.bare("/lib/lit-html/lit-html.js"));
        assertThat(library.statusCode()).isEqualTo(200);
        assertThat(library.headers().firstValue("Content-Type")).contains("text/javascript; charset=utf-8");
        assertThat(library.body()).contains("export{");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../secret.csv",
                "..\\secret.csv",
                "/etc/hostname",
                "C:\\secret.csv",
                "c:secret.csv",
                "folder/secret.csv",
                "..",
                ".",
                ".hidden.csv",
                "~$book.xlsx",
                "con.csv",
                "LPT1.xlsx",
                "a\u0000.csv",
                "a\n.csv",
                "a\u202Excod.csv",
                "list.csv.",
                "list.csv ",
                " ",
                "stream.csv:other.csv"
            })
    void no_name_leads_out_of_the_folder(String name) throws Exception {
        for (String path : List.of("/api/files/", "/api/books/")) {
            String whole = path + Visitor.encoded(name) + (path.contains("books") ? "/reading" : "");
            HttpResponse<String> answer = page.send(page.own(whole));
            assertThat(answer.statusCode()).as(whole).isEqualTo(400);
            assertThat(answer.body()).doesNotContain("not for the page");
        }
        assertThat(page.upload(name, "Item,Price\nOil,2\n".getBytes(UTF_8)).statusCode())
                .isEqualTo(400);
        try (var files = Files.list(place)) {
            assertThat(files).hasSizeBetween(2, 3); // the folder, the secret, the settings
        }
        try (var files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void a_link_in_the_folder_does_not_lead_out() throws Exception {
        Files.createSymbolicLink(folder.resolve("link.csv"), place.resolve("secret.csv"));
        assertThat(page.send(page.own("/api/files/link.csv")).statusCode()).isEqualTo(404);
        assertThat(page.get("/api/start").get("lists")).isEmpty();
    }

    @Test
    void files_of_other_kinds_are_neither_taken_nor_given() throws Exception {
        Files.writeString(folder.resolve("key.pem"), "secret");
        assertThat(page.send(page.own("/api/files/key.pem")).statusCode()).isEqualTo(415);
        assertThat(page.upload("run.exe", new byte[] {1}).statusCode()).isEqualTo(415);
    }

    @Test
    void what_is_asked_in_another_way_is_refused() throws Exception {
        assertThat(page.send(page.own("/api/start").method("OPTIONS", HttpRequest.BodyPublishers.noBody()))
                        .statusCode())
                .isEqualTo(405);
        assertThat(page.send(page.own("/").POST(HttpRequest.BodyPublishers.noBody()))
                        .statusCode())
                .isEqualTo(405);
        assertThat(page.send(page.own("/api/close")).statusCode()).isEqualTo(405);
        HttpRequest.Builder form = page.own("/api/new")
                .header("Content-Type", "text/plain")
                .POST(HttpRequest.BodyPublishers.ofString("{\"template\":\"launch\"}"));
        assertThat(page.send(form).statusCode()).isEqualTo(415);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "7", "{", "{} {}", "{\"template\":7}", "{\"template\":null}"})
    void what_is_no_such_json_is_refused(String body) throws Exception {
        HttpRequest.Builder post = page.own("/api/new")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body));
        assertThat(page.send(post).statusCode()).isEqualTo(400);
    }

    @Test
    void json_of_any_depth_and_size_is_harmless() throws Exception {
        String deep = "{\"a\":".repeat(100_000) + "1" + "}".repeat(100_000);
        String large = "{\"template\":\"" + "x".repeat(2 << 20) + "\"}";
        for (String body : List.of(deep, large)) {
            HttpRequest.Builder post = page.own("/api/new")
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString(body));
            assertThat(page.send(post).statusCode()).isBetween(400, 413);
        }
        assertThat(page.get("/api/start").get("books")).isEmpty();
    }
}
