package perkilo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Folders for files of tests that no {@code @TempDir} reaches: all in one, which is deleted when the tests end.
 *
 * <p>A test that makes many deletes each as soon as it is done with it.
 */
public final class Scratch {

    private static final Path ALL = all();

    private Scratch() {}

    private static Path all() {
        try {
            Path folder = Files.createTempDirectory("perkilo-tests");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A new folder. */
    public static Path folder() {
        try {
            return Files.createTempDirectory(ALL, "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Deletes a folder with all that is in it. */
    public static void delete(Path folder) {
        try (Stream<Path> found = Files.walk(folder)) {
            List<Path> deepestFirst = found.sorted(Comparator.reverseOrder()).toList();
            for (Path one : deepestFirst) {
                Files.deleteIfExists(one);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
