package perkilo.rates;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** The European Central Bank's public address for its euro foreign exchange reference rates. */
public final class Bank {

    private static final int OK = 200;

    private final URI folder;
    private final Duration patience;

    /**
     * A place that serves the bank's files.
     *
     * @param folder the address that file names are added to; ends in a slash
     * @param patience the most time that one file may take
     */
    public Bank(URI folder, Duration patience) {
        this.folder = folder;
        this.patience = patience;
    }

    /** The bank itself; a file may take ten seconds. */
    public static Bank european() {
        return new Bank(URI.create("https://www.ecb.europa.eu/stats/eurofxref/"), Duration.ofSeconds(10));
    }

    /** One of the bank's files, by the time that it covers. */
    public enum Span {
        DAY("day", "eurofxref-daily.xml"),
        NINETY_DAYS("90-days", "eurofxref-hist-90d.xml"),
        ALL("all", "eurofxref-hist.zip");

        private final String word;
        private final String fileName;

        Span(String word, String fileName) {
            this.word = word;
            this.fileName = fileName;
        }

        /** The file with the word that a person typed. */
        public static Optional<Span> find(String word) {
            return Arrays.stream(values())
                    .filter(span -> span.word.equalsIgnoreCase(word.strip()))
                    .findFirst();
        }

        /** The word that a person types. */
        public String word() {
            return word;
        }

        /** The bank's name for the file. */
        public String fileName() {
            return fileName;
        }
    }

    /** The address of a file. */
    public URI address(Span span) {
        return folder.resolve(span.fileName());
    }

    /**
     * Downloads a file.
     *
     * @param into the folder that it is written to, under the bank's own name
     * @return the file
     * @throws IOException if the bank does not answer in time, or does not send the file
     */
    public Path fetch(Span span, Path into) throws IOException {
        URI address = address(span);
        HttpResponse<byte[]> answer = answer(address);
        if (answer.statusCode() != OK) {
            throw new IOException(RateMessages.badStatus(address.toString(), answer.statusCode(), span.fileName()));
        }
        return Files.write(into.resolve(span.fileName()), answer.body());
    }

    private HttpResponse<byte[]> answer(URI address) throws IOException {
        HttpClient client = HttpClient.newBuilder()
                .connectTimeout(patience)
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build();
        HttpRequest request =
                HttpRequest.newBuilder(address).timeout(patience).GET().build();
        CompletableFuture<HttpResponse<byte[]>> pending = client.sendAsync(request, BodyHandlers.ofByteArray());
        try {
            return pending.get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (ExecutionException | TimeoutException failed) {
            pending.cancel(true);
            throw new IOException(unreachable(address), failed);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException(unreachable(address), stopped);
        }
    }

    private String unreachable(URI address) {
        return RateMessages.unreachable(address.toString(), patience.toSeconds());
    }
}
