package perkilo.workbook.splice;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipException;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import perkilo.workbook.parts.PartNames;

/** The person's workbook as a zip of parts, and what is to change in it. */
final class BookPackage implements Parts, Closeable {

    /** No part that is read here is larger in an honest workbook; sheets are not read. */
    private static final int MOST_BYTES_READ = 256 << 20;

    /** The earliest time a zip can hold, so that the same input gives the same file. */
    private static final LocalDateTime ANY_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final ZipFile zip;
    private final Map<String, ZipArchiveEntry> entries = new LinkedHashMap<>();
    private final Map<String, byte[]> written = new LinkedHashMap<>();
    private final Map<String, String> names = new HashMap<>();
    private final Set<String> dropped = new HashSet<>();

    private BookPackage(ZipFile zip) {
        this.zip = zip;
    }

    /** Opens a file; nothing of it is read but its table of contents. */
    static BookPackage open(Path file) throws IOException {
        BookPackage book = new BookPackage(zipOf(file));
        try {
            book.readEntries();
            return book;
        } catch (IOException | RuntimeException e) {
            book.close();
            throw e;
        }
    }

    private static ZipFile zipOf(Path file) throws IOException {
        try {
            return ZipFile.builder().setPath(file).get();
        } catch (ZipException e) {
            throw new UnfitPackageException("is not an XLSX or XLSM file, or it is protected by a password");
        }
    }

    private void readEntries() throws UnfitPackageException {
        for (ZipArchiveEntry entry : Collections.list(zip.getEntriesInPhysicalOrder())) {
            if (entries.put(PartNames.key(entry.getName()), entry) != null) {
                throw UnfitPackageException.damaged("it holds " + entry.getName() + " twice");
            }
        }
    }

    @Override
    public boolean has(String part) {
        String key = PartNames.key(part);
        return written.containsKey(key) || (entries.containsKey(key) && !dropped.contains(key));
    }

    @Override
    public byte @Nullable [] find(String part) throws IOException {
        String key = PartNames.key(part);
        byte[] fresh = written.get(key);
        if (fresh != null) {
            return fresh;
        }
        ZipArchiveEntry entry = entries.get(key);
        return entry == null || dropped.contains(key) ? null : read(entry);
    }

    private byte[] read(ZipArchiveEntry entry) throws IOException {
        if (!zip.canReadEntryData(entry)) {
            throw UnfitPackageException.damaged("its part " + entry.getName() + " is packed in an unknown way");
        }
        try (InputStream content = zip.getInputStream(entry)) {
            byte[] bytes = content.readNBytes(MOST_BYTES_READ);
            if (bytes.length == MOST_BYTES_READ) {
                throw UnfitPackageException.damaged("its part " + entry.getName() + " is too large");
            }
            return bytes;
        }
    }

    /** The names of all parts, in the form of {@link PartNames#key}. */
    Set<String> keys() {
        Set<String> keys = new HashSet<>(entries.keySet());
        keys.removeAll(dropped);
        keys.addAll(written.keySet());
        return keys;
    }

    /** Writes a part, new or in place of the old. */
    void put(String part, byte[] bytes) {
        String key = PartNames.key(part);
        ZipArchiveEntry old = entries.get(key);
        names.put(key, old == null ? part.substring(1) : old.getName());
        written.put(key, bytes);
    }

    /** Writes a part, new or in place of the old. */
    void put(String part, String text) {
        put(part, PartText.encoded(text));
    }

    /** Leaves a part out. */
    void drop(String part) {
        written.remove(PartNames.key(part));
        dropped.add(PartNames.key(part));
    }

    /** Writes all parts: those untouched as they are, byte for byte, in their order. */
    void writeTo(SeekableByteChannel channel) throws IOException {
        try (ZipArchiveOutputStream out = new ZipArchiveOutputStream(channel)) {
            Set<String> left = new LinkedHashSet<>(written.keySet());
            for (Map.Entry<String, ZipArchiveEntry> entry : entries.entrySet()) {
                if (left.remove(entry.getKey())) {
                    write(out, entry.getKey());
                } else if (!dropped.contains(entry.getKey())) {
                    copy(out, entry.getValue());
                }
            }
            for (String key : left) {
                write(out, key);
            }
        }
    }

    private void copy(ZipArchiveOutputStream out, ZipArchiveEntry entry) throws IOException {
        try (InputStream raw = zip.getRawInputStream(entry)) {
            out.addRawArchiveEntry(entry, raw);
        }
    }

    private void write(ZipArchiveOutputStream out, String key) throws IOException {
        ZipArchiveEntry entry = new ZipArchiveEntry(names.getOrDefault(key, key));
        entry.setTimeLocal(ANY_TIME);
        out.putArchiveEntry(entry);
        out.write(bytes(key));
        out.closeArchiveEntry();
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
