package perkilo.xlsx.splice;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.xlsx.parts.PartNames;

/** The parts of a small workbook that was written in memory. */
final class MemoryParts implements Parts {

    private final Map<String, byte[]> parts = new HashMap<>();

    MemoryParts(Map<String, byte[]> workbook) {
        workbook.forEach((part, bytes) -> parts.put(PartNames.key(part), bytes));
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
