package perkilo.xlsx.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Folders for files that are written. */
public final class Folders {

    private Folders() {}

    /**
     * Makes a folder, and those around it, unless it is there.
     *
     * @throws UnwritableFileException if that is not possible, with the reason and what to do
     */
    public static void make(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        if (Files.exists(folder)) {
            throw UnwritableFileException.notAFolder(folder);
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw FileFaults.explained(folder, e);
        }
    }
}
