package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.page.Visitor;

/** A server that is killed in the middle leaves whole files: each as it was before, or as it was to become. */
final class PageEndedTest {

    @TempDir
    private Path place = Path.of("");

    @Test
    void every_file_in_the_folder_is_whole() throws Exception {
        Path folder = Files.createDirectory(place.resolve("folder"));
        Path book = folder.resolve("book.xlsx");
        byte[] before = RawBook.sound().bytes();
        Files.write(book, before);
        for (int round = 0; round < 3; round++) {
            Process server = start(folder);
            try (BufferedReader out = server.inputReader(StandardCharsets.UTF_8)) {
                Visitor page = Visitor.entered(URI.create(String.valueOf(out.readLine())));
                JsonNode seen = page.post("/api/books/book.xlsx/cost", Visitor.object());
                Thread writing = new Thread(() -> writeOn(page, seen));
                writing.start();
                while (files(folder) < 2 + 2 * round && writing.isAlive()) {
                    TimeUnit.MILLISECONDS.sleep(5); // until it writes
                }
                server.destroyForcibly();
                assertThat(server.waitFor(1, TimeUnit.MINUTES)).isTrue();
                writing.join();
            }
            assertWhole(folder);
        }
    }

    /** Writes until the server is gone. */
    private static void writeOn(Visitor page, JsonNode first) {
        try {
            JsonNode seen = first;
            for (int price = 2; price < 200; price++) {
                ObjectNode edit = Visitor.object();
                edit.set("stamp", seen.get("stamp"));
                edit.putArray("cells")
                        .addObject()
                        .put("sheet", "Offers")
                        .put("cell", "F2")
                        .put("value", price + ".5");
                seen = page.post("/api/books/book.xlsx/edit", edit);
            }
        } catch (java.io.IOException gone) {
            return;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void assertWhole(Path folder) throws Exception {
        List<Path> books = new ArrayList<>();
        try (var files = Files.list(folder)) {
            files.filter(file -> file.toString().endsWith(".xlsx")).forEach(books::add);
        }
        assertThat(books).isNotEmpty();
        for (Path one : books) {
            assertThat(CommandLineRun.of("check", one, "-q").exit())
                    .as(one.toString())
                    .isEqualTo(Exit.DONE);
        }
    }

    private static long files(Path folder) throws Exception {
        try (var files = Files.list(folder)) {
            return files.count();
        }
    }

    private Process start(Path folder) throws Exception {
        ProcessBuilder java = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "perkilo.cli.Perkilo",
                "open",
                folder.toString(),
                "--no-browser");
        java.environment().put("XDG_CONFIG_HOME", place.resolve("settings").toString());
        return java.redirectError(place.resolve("err.txt").toFile()).start();
    }
}
