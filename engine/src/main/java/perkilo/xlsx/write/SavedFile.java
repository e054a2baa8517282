package perkilo.xlsx.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Writes a file as a whole: an old file in its place is untouched until the new one is complete. */
public final class SavedFile {

    private SavedFile() {}

    /**
     * Writes a file, and keeps a backup of the file that it replaces. A file with this content already is left alone.
     *
     * @param target the file to write
     * @param today used in the name of the backup
     * @return the backup; null if nothing was replaced
     * @throws UnwritableFileException if it cannot be written, with the reason and what to do
     */
    public static @Nullable Path writeKeeping(Path target, byte[] content, LocalDate today) throws IOException {
        if (Files.isReadable(target) && Arrays.equals(Files.readAllBytes(target), content)) {
            return null;
        }
        try (StagedFile file = StagedFile.write(target, out -> out.write(content))) {
            Path backup = Files.exists(target) ? Backup.of(target, today) : null;
            try {
                file.moveToItsPlace();
            } catch (IOException e) {
                if (backup != null) {
                    Files.deleteIfExists(backup);
                }
                throw e;
            }
            return backup;
        }
    }

    /**
     * Writes a file.
     *
     * @param target the file to write; an old one is replaced
     * @throws UnwritableFileException if it cannot be written, with the reason and what to do
     */
    public static void write(Path target, byte[] content) throws IOException {
        try (StagedFile file = StagedFile.write(target, out -> out.write(content))) {
            file.moveToItsPlace();
        }
    }
}
