package perkilo.reading;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import perkilo.names.Names;

/**
 * The names of one kind of thing: of those that were read, and of those whose rows have errors of their own. The latter
 * are looked up when a name is not among the former, as a long list has many rows.
 */
final class Vocabulary {

    private final List<String> names = new ArrayList<>();
    private final Set<String> keys = new HashSet<>();
    private final Supplier<List<String>> inRows;
    private boolean complete;

    /**
     * Names.
     *
     * @param read of the things that were read
     * @param inRows as they stand in rows, whatever else is wrong with these
     */
    Vocabulary(Collection<String> read, Supplier<List<String>> inRows) {
        this.inRows = inRows;
        read.forEach(this::add);
    }

    /** Whether something is called so. */
    boolean has(String name) {
        String key = Names.key(name);
        if (!keys.contains(key) && !complete) {
            complete = true;
            inRows.get().forEach(this::add);
        }
        return keys.contains(key);
    }

    /** The names, each once. */
    List<String> names() {
        return names;
    }

    private void add(String name) {
        if (!name.isEmpty() && keys.add(Names.key(name))) {
            names.add(name);
        }
    }
}
