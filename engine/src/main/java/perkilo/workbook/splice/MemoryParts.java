package perkilo.workbook.splice;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.jspecify.annotations.Nullable;
import perkilo.workbook.parts.PartNames;

/** The parts of a small workbook that was written in memory. */
final class MemoryParts implements Parts {

    private final Map<String, byte[]> parts = new HashMap<>();

    MemoryParts(byte[] workbook) throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(workbook))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(PartNames.key(entry.getName()), zip.readAllBytes());
            }
        }
    }

    @Override
    public boolean has(String part) {
        return parts.containsKey(PartNames.key(part));
    }

    @Override
    public byte @Nullable [] find(String part) {
        return parts.get(PartNames.key(part));
    }
}
