package perkilo.xlsx.write;

import java.io.IOException;
import java.nio.file.Path;

/** Writes a file as a whole: an old file in its place is untouched until the new one is complete. */
public final class SavedFile {

    private SavedFile() {}

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
