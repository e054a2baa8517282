package perkilo.xlsx.splice;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import perkilo.xlsx.parts.PartNames;

/** The packed parts of the person's workbook, by their names in the form of {@link PartNames#key}. */
final class ZippedParts implements Closeable {

    /** The largest part that is read; in an honest workbook only sheets are larger, and they are not read here. */
    private static final int MOST_BYTES = 256 << 20;

    private final ZipFile zip;
    private final Map<String, ZipEntry> entries = new LinkedHashMap<>();

    private ZippedParts(ZipFile zip) {
        this.zip = zip;
    }

    /** Opens a file; only its table of contents is read. */
    static ZippedParts open(Path file) throws IOException {
        ZippedParts parts = new ZippedParts(zipOf(file));
        try {
            parts.list();
            return parts;
        } catch (IOException | RuntimeException e) {
            parts.close();
            throw e;
        }
    }

    private static ZipFile zipOf(Path file) throws IOException {
        try {
            return new ZipFile(file.toFile());
        } catch (ZipException e) {
            throw new UnfitPackageException(SpliceMessages.noPackage());
        }
    }

    private void list() throws UnfitPackageException {
        for (ZipEntry entry : Collections.list(zip.entries())) {
            if (entries.put(PartNames.key(entry.getName()), entry) != null) {
                throw new UnfitPackageException(SpliceMessages.partTwice(entry.getName()));
            }
        }
    }

    /** The names of all parts, in the order of the table of contents. */
    Set<String> keys() {
        return Collections.unmodifiableSet(entries.keySet());
    }

    /** A part; null if it is not there. */
    @Nullable ZipEntry entry(String key) {
        return entries.get(key);
    }

    /** The content of a part, unpacked while it is read. */
    InputStream stream(ZipEntry part) throws IOException {
        return zip.getInputStream(part);
    }

    /** The content of a part. */
    byte[] unpacked(ZipEntry part) throws IOException {
        if (part.getSize() > MOST_BYTES) {
            throw new UnfitPackageException(SpliceMessages.partTooLarge(part.getName()));
        }
        try (InputStream content = zip.getInputStream(part)) {
            byte[] bytes = content.readNBytes((int) part.getSize() + 1);
            if (bytes.length == part.getSize() && sumOf(bytes) == part.getCrc()) {
                return bytes;
            }
        } catch (ZipException e) {
            // reported below, like a wrong checksum
        }
        throw new UnfitPackageException(SpliceMessages.packedPart(part.getName()));
    }

    /** The check sum that a zip keeps of a part. */
    static long sumOf(byte[] bytes) {
        CRC32 sum = new CRC32();
        sum.update(bytes);
        return sum.getValue();
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
