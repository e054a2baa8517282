package perkilo.xlsx.write;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;

/**
 * Drafts of runs that were ended in the middle, such as by switching the computer off: {@code .perkilo-PROCESS-….tmp}.
 *
 * <p>A draft is deleted if its process has ended and it is older than an hour: on a folder that several computers
 * share, the process may be on another one.
 */
final class DeadDrafts {

    private static final String BEGIN = ".perkilo-";
    private static final String END = ".tmp";
    private static final Duration OLD = Duration.ofHours(1);

    private DeadDrafts() {}

    /** A name for a draft beside a file. */
    static Path next(Path target) {
        String own = ProcessHandle.current().pid() + "-" + Long.toString(System.nanoTime(), 36);
        return target.resolveSibling(BEGIN + own + END);
    }

    /** Deletes the dead drafts beside a file; what cannot be deleted does no harm. */
    static void delete(Path target) {
        Path folder = target.getParent();
        if (folder == null) {
            return;
        }
        try (DirectoryStream<Path> drafts = Files.newDirectoryStream(folder, BEGIN + "*" + END)) {
            for (Path draft : drafts) {
                if (isDead(draft)) {
                    Files.deleteIfExists(draft);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // the folder cannot be listed, or a draft not deleted: writing itself says what is wrong
        }
    }

    private static boolean isDead(Path draft) throws IOException {
        Instant changed = Files.getLastModifiedTime(draft).toInstant();
        return changed.isBefore(Instant.now().minus(OLD)) && !isRunning(String.valueOf(draft.getFileName()));
    }

    private static boolean isRunning(String name) {
        int dash = name.indexOf('-', BEGIN.length());
        try {
            return dash > 0
                    && ProcessHandle.of(Long.parseLong(name.substring(BEGIN.length(), dash)))
                            .isPresent();
        } catch (NumberFormatException e) {
            return false; // a draft without a process in its name
        }
    }
}
