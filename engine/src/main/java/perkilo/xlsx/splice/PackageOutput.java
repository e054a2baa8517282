package perkilo.xlsx.splice;

import java.io.Closeable;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;

/** A workbook that is being written, part by part; closing completes it and leaves the stream below it open. */
interface PackageOutput extends Closeable {

    /** The earliest time a zip can hold, given to parts of ours so that the same input gives the same file. */
    LocalDateTime ANY_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    /** Copies a part of the person's workbook as it is. */
    void copy(ZipEntry part) throws IOException;

    /**
     * Writes a part.
     *
     * @param name without a slash in front
     */
    void write(String name, byte[] content) throws IOException;
}
