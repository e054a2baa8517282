package perkilo.xlsx.write;

import java.io.IOException;
import java.nio.file.Path;

/** Writes a file as a whole: until it is complete, what stands in its place is not touched. */
public final class SavedFile {

    private SavedFile() {}

    /**
     * Writes a file.
     *
     * @param target where to; what stands there is replaced
     * @throws UnwritableFileException if it can't be written, with the reason in the person's words
     */
    public static void write(Path target, byte[] content) throws IOException {
        try (StagedFile file = StagedFile.write(target, out -> out.write(content))) {
            file.moveToItsPlace();
        }
    }
}
