package perkilo.xlsx.write;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** Looks into zip files. */
final class Zips {

    private Zips() {}

    /** The compressed bytes of each entry as they lie in the file. */
    static Map<String, String> raw(Path file) throws IOException {
        return entries(file, ZipFile::getRawInputStream);
    }

    /** The bytes of each entry. */
    static Map<String, String> contents(Path file) throws IOException {
        return entries(file, ZipFile::getInputStream);
    }

    private static Map<String, String> entries(Path file, Opening opening) throws IOException {
        Map<String, String> entries = new LinkedHashMap<>();
        try (ZipFile zip = ZipFile.builder().setPath(file).get()) {
            for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
                try (InputStream content = opening.open(zip, entry)) {
                    entries.put(entry.getName(), new String(content.readAllBytes(), StandardCharsets.ISO_8859_1));
                }
            }
        }
        return entries;
    }

    @FunctionalInterface
    private interface Opening {
        InputStream open(ZipFile zip, ZipArchiveEntry entry) throws IOException;
    }

    /** The text of an entry. */
    static String text(Path file, String name) throws IOException {
        try (ZipFile zip = ZipFile.builder().setPath(file).get();
                InputStream content = zip.getInputStream(zip.getEntry(name))) {
            return new String(content.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
