package perkilo.xlsx.parts;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;

/**
 * A file as it was at one moment, to find out later whether it was saved in between.
 *
 * <p>Take the stamp before the file is read: then a file that still has it is the file that was read.
 *
 * @param file the file
 * @param length in bytes; -1 where the file could not be read
 * @param sum two check sums of its content
 */
public record FileStamp(Path file, long length, long sum) {

    private static final int BUFFER = 1 << 16;

    /** The file as it is at this moment; a file that cannot be read has a stamp too. */
    public static FileStamp of(Path file) {
        CRC32 one = new CRC32();
        CRC32C other = new CRC32C();
        long length = 0;
        byte[] buffer = new byte[BUFFER];
        try (InputStream in = Files.newInputStream(file)) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                one.update(buffer, 0, read);
                other.update(buffer, 0, read);
                length += read;
            }
        } catch (IOException e) {
            return new FileStamp(file, -1, 0); // whoever reads it says why
        }
        return new FileStamp(file, length, one.getValue() << Integer.SIZE | other.getValue());
    }

    /** Whether the file is unchanged. */
    public boolean isCurrent() {
        FileStamp current = of(file);
        return current.length == length && current.sum == sum;
    }
}
