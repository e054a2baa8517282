package perkilo.reading;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import perkilo.xlsx.grid.UnreadableFileException;

/**
 * A file of rates as a plain file: the one table in a ZIP file is unpacked into a folder of its own, which is deleted
 * afterwards; every other file, workbooks too, is read as it is.
 */
final class ZippedRates implements AutoCloseable {

    private static final int MOST_MEGABYTES = 200;
    private static final int MOST_BYTES = MOST_MEGABYTES * 1_000_000;

    private final Path file;
    private final @Nullable Path folder;

    private ZippedRates(Path file, @Nullable Path folder) {
        this.file = file;
        this.folder = folder;
    }

    /** The file to read. */
    Path file() {
        return file;
    }

    /**
     * Unpacks a file where that is needed.
     *
     * @throws UnreadableFileException if it is a ZIP file without a table, or with several
     */
    static ZippedRates open(Path file) throws IOException {
        if (!isZip(file)) {
            return new ZippedRates(file, null);
        }
        try (ZipFile zip = new ZipFile(file.toFile())) {
            if (zip.getEntry("[Content_Types].xml") != null) {
                return new ZippedRates(file, null);
            }
            return unpacked(file, zip);
        } catch (ZipException damaged) {
            return new ZippedRates(file, null);
        }
    }

    private static boolean isZip(Path file) throws IOException {
        if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
            return false;
        }
        try (InputStream content = Files.newInputStream(file)) {
            byte[] start = content.readNBytes(4);
            return start.length == 4 && start[0] == 'P' && start[1] == 'K' && start[2] == 3 && start[3] == 4;
        }
    }

    private static ZippedRates unpacked(Path file, ZipFile zip) throws IOException {
        List<ZipEntry> tables = new ArrayList<>();
        zip.stream().filter(ZippedRates::isTable).forEach(tables::add);
        if (tables.size() != 1) {
            throw new UnreadableFileException(RateTableMessages.tablesInZip(file, tables.size()));
        }
        Path folder = Files.createTempDirectory("perkilo-rates");
        ZippedRates unpacked = new ZippedRates(folder.resolve(nameOf(tables.get(0))), folder);
        try (InputStream content = zip.getInputStream(tables.get(0))) {
            byte[] bytes = content.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new UnreadableFileException(RateTableMessages.zipTooLarge(file, MOST_MEGABYTES));
            }
            Files.write(unpacked.file, bytes);
            return unpacked;
        } catch (IOException e) {
            unpacked.close();
            throw e;
        }
    }

    private static boolean isTable(ZipEntry entry) {
        String name = entry.getName().toLowerCase(Locale.ROOT);
        return !entry.isDirectory() && (name.endsWith(".csv") || name.endsWith(".xml"));
    }

    /** The entry's own name, without any folder that it claims to be in. */
    private static String nameOf(ZipEntry entry) {
        String name = entry.getName().replace('\\', '/');
        return name.substring(name.lastIndexOf('/') + 1).replaceAll("[^A-Za-z0-9._-]", "_");
    }

    @Override
    public void close() throws IOException {
        if (folder != null) {
            Files.deleteIfExists(file);
            Files.deleteIfExists(folder);
        }
    }
}
