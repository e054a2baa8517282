package perkilo.xlsx.splice;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.zip.ZipEntry;
import org.jspecify.annotations.Nullable;
import perkilo.xlsx.parts.PartNames;

/** The person's workbook as a zip of parts, together with the pending changes to it. */
final class BookPackage implements Parts, Closeable {

    /** From this total of unpacked bytes on, parts are copied without unpacking them. */
    private static final long LONG = 1 << 20;

    private final Path file;
    private final ZippedParts parts;
    private final Map<String, byte[]> written = new LinkedHashMap<>();
    private final Map<String, String> names = new HashMap<>();
    private final Set<String> dropped = new HashSet<>();

    private BookPackage(Path file, ZippedParts parts) {
        this.file = file;
        this.parts = parts;
    }

    /** Opens a file; only its table of contents is read. */
    static BookPackage open(Path file) throws IOException {
        return new BookPackage(file, ZippedParts.open(file));
    }

    @Override
    public boolean has(String part) {
        String key = PartNames.key(part);
        return written.containsKey(key) || kept(key) != null;
    }

    @Override
    public byte @Nullable [] find(String part) throws IOException {
        String key = PartNames.key(part);
        byte[] fresh = written.get(key);
        if (fresh != null) {
            return fresh;
        }
        ZipEntry entry = kept(key);
        return entry == null ? null : parts.unpacked(entry);
    }

    /** A part of the person's workbook; null if it is missing or removed. */
    private @Nullable ZipEntry kept(String key) {
        return dropped.contains(key) ? null : parts.entry(key);
    }

    /** The names of all parts, in the form of {@link PartNames#key}. */
    Set<String> keys() {
        Set<String> keys = new HashSet<>(parts.keys());
        keys.removeAll(dropped);
        keys.addAll(written.keySet());
        return keys;
    }

    /** Adds a part, or replaces the one of that name. */
    void put(String part, byte[] bytes) {
        String key = PartNames.key(part);
        ZipEntry old = parts.entry(key);
        names.put(key, old == null ? part.substring(1) : old.getName());
        written.put(key, bytes);
    }

    /** Adds a part, or replaces the one of that name. */
    void put(String part, String text) {
        put(part, PartText.encoded(text));
    }

    /** Removes a part. */
    void drop(String part) {
        written.remove(PartNames.key(part));
        dropped.add(PartNames.key(part));
    }

    /** The content of an untouched part. */
    InputStream stream(String part) throws IOException {
        return parts.stream(Objects.requireNonNull(kept(PartNames.key(part))));
    }

    /** A check sum of each part's content. */
    Map<String, Long> sums() {
        Map<String, Long> sums = new HashMap<>();
        for (String key : keys()) {
            byte[] fresh = written.get(key);
            ZipEntry entry = kept(key);
            if (fresh != null) {
                sums.put(key, ZippedParts.sumOf(fresh));
            } else if (entry != null) {
                sums.put(key, entry.getCrc());
            }
        }
        return sums;
    }

    /** The parts that are neither changed nor removed. */
    Set<String> untouched() {
        Set<String> untouched = new HashSet<>(parts.keys());
        untouched.removeAll(dropped);
        untouched.removeAll(written.keySet());
        return untouched;
    }

    /** Writes all parts; untouched parts are copied byte for byte, in their order. */
    void writeTo(OutputStream stream) throws IOException {
        try (PackageOutput out =
                bytesKept() >= LONG ? new RawOutput(file, stream) : new RepackedOutput(parts, stream)) {
            Set<String> left = new LinkedHashSet<>(written.keySet());
            for (String key : parts.keys()) {
                ZipEntry kept = kept(key);
                if (left.remove(key)) {
                    write(out, key);
                } else if (kept != null) {
                    out.copy(kept);
                }
            }
            for (String key : left) {
                write(out, key);
            }
        }
    }

    private long bytesKept() {
        long bytes = 0;
        for (String key : parts.keys()) {
            ZipEntry kept = kept(key);
            bytes += kept == null || written.containsKey(key) ? 0 : kept.getSize();
        }
        return bytes;
    }

    private void write(PackageOutput out, String key) throws IOException {
        out.write(names.getOrDefault(key, key), bytes(key));
    }

    @Override
    public void close() throws IOException {
        parts.close();
    }
}
