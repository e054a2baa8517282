package perkilo.reading;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import perkilo.names.Names;

/**
 * The known names of one kind of thing, including those whose rows have errors. The rows are searched only if a name is
 * not found without them, because a long list has many rows.
 */
final class Vocabulary {

    private final List<String> names = new ArrayList<>();
    private final Set<String> keys = new HashSet<>();
    private final Supplier<List<String>> inRows;
    private boolean complete;

    /**
     * A vocabulary.
     *
     * @param read the names of the things that were read
     * @param inRows the names in all rows, even in those with errors
     */
    Vocabulary(Collection<String> read, Supplier<List<String>> inRows) {
        this.inRows = inRows;
        read.forEach(this::add);
    }

    /** Whether a thing has this name. */
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
