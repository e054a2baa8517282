package perkilo.rates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.reading.RatesReader;

/** Fetching, from a local server in place of the bank's. */
final class BankTest {

    /** The time that the bank may take; no test takes as long. */
    private static final Duration LONG = Duration.ofHours(1);

    @TempDir
    private Path folder = Path.of("");

    private HttpServer server = start();
    private final CountDownLatch never = new CountDownLatch(1);

    private static HttpServer start() {
        try {
            return HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @BeforeEach
    void serve() {
        server.createContext("/rates/eurofxref-daily.xml", exchange -> {
            byte[] content = Files.readAllBytes(BankFiles.day());
            exchange.sendResponseHeaders(200, content.length);
            exchange.getResponseBody().write(content);
            exchange.close();
        });
        server.createContext("/rates/eurofxref-hist-90d.xml", exchange -> {
            exchange.sendResponseHeaders(503, -1);
            exchange.close();
        });
        server.createContext("/rates/eurofxref-hist.zip", exchange -> {
            exchange.sendResponseHeaders(200, 1000);
            exchange.getResponseBody().write(new byte[10]);
            exchange.getResponseBody().flush();
            await();
        });
        server.start();
    }

    private void await() {
        try {
            never.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @AfterEach
    void stop() {
        never.countDown();
        server.stop(0);
    }

    @Test
    void a_file_comes_as_it_is_served() throws IOException {
        Path file = bank().fetch(Bank.Span.DAY, folder);

        assertThat(file).hasFileName("eurofxref-daily.xml").hasSameBinaryContentAs(BankFiles.day());
        assertThat(new RatesReader().read(file).value()).hasSize(30);
    }

    @Test
    void a_server_that_refuses_is_named_with_its_answer() {
        assertThatThrownBy(() -> bank().fetch(Bank.Span.NINETY_DAYS, folder))
                .isInstanceOf(IOException.class)
                .hasMessageEndingWith("/rates/eurofxref-hist-90d.xml answered with status 503. Try again later, or get"
                        + " eurofxref-hist-90d.xml elsewhere and name it: perkilo rates FILE.");
    }

    /** The headers come, the rest never comes: the test ends because the engine stops waiting. */
    @Test
    void a_server_that_falls_silent_is_not_waited_for() {
        Bank impatient = new Bank(served(), Duration.ofSeconds(1));

        assertThatThrownBy(() -> impatient.fetch(Bank.Span.ALL, folder))
                .isInstanceOf(IOException.class)
                .hasMessageContaining(
                        "cannot be reached: there is no network, or it is blocked, or no answer came within 1 second.");
    }

    @Test
    void where_nobody_answers_one_sentence_says_so() throws IOException {
        int closed;
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            closed = socket.getLocalPort();
        }
        Bank nobody = new Bank(URI.create("http://127.0.0.1:" + closed + "/"), LONG);

        assertThatThrownBy(() -> nobody.fetch(Bank.Span.DAY, folder))
                .isInstanceOf(IOException.class)
                .hasMessage(
                        "The address http://127.0.0.1:" + closed
                                + "/eurofxref-daily.xml cannot be reached: there is no network,"
                                + " or it is blocked, or no answer came within 3,600 seconds. Get the file elsewhere and name it: perkilo rates FILE.");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void the_bank_itself_is_asked_by_its_public_addresses() {
        assertThat(Bank.european().address(Bank.Span.ALL))
                .hasToString("https://www.ecb.europa.eu/stats/eurofxref/eurofxref-hist.zip");
    }

    private Bank bank() {
        return new Bank(served(), LONG);
    }

    private URI served() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/rates/");
    }
}
