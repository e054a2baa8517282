package perkilo.reading;

import java.util.LinkedHashMap;
import java.util.Map;
import perkilo.names.Names;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;

/** Things by name: of two in one file the second is an error, of two in different files the first is used. */
final class NamedThings<T> {

    private final String kind;
    private final Findings findings;
    private final Map<String, T> things = new LinkedHashMap<>();
    private final Map<String, Origin> origins = new LinkedHashMap<>();

    /**
     * No things yet.
     *
     * @param kind what they are, such as {@code material}
     */
    NamedThings(String kind, Findings findings) {
        this.kind = kind;
        this.findings = findings;
    }

    void add(String name, Origin origin, T thing) {
        String key = Names.key(name);
        Origin first = origins.putIfAbsent(key, origin);
        if (first == null) {
            things.put(key, thing);
        } else if (first.file().equals(origin.file())) {
            findings.error(origin, NameMessages.twice(kind, name, first.where()));
        }
    }

    /** All things by {@link Names#key}, in their order. */
    Map<String, T> byKey() {
        return things;
    }
}
