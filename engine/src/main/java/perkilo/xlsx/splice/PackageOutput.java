package perkilo.xlsx.splice;

import java.io.Closeable;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;

/** A workbook that is being written part by part. Closing completes it but leaves the underlying stream open. */
interface PackageOutput extends Closeable {

    /** The time of our parts: the earliest that a zip can hold, so that the same input makes the same file. */
    LocalDateTime ANY_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    /** Copies a part of the person's workbook unchanged. */
    void copy(ZipEntry part) throws IOException;

    /**
     * Writes a part.
     *
     * @param name without a leading slash
     */
    void write(String name, byte[] content) throws IOException;
}
