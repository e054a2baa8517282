package perkilo.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.Map;
import perkilo.desk.FileKinds;

/** Whether files of the folder are price lists or exchange rates; each is looked at once until it changes. */
final class ListKinds {

    /** A longer file counts as a price list without being read. */
    private static final long LONG = 4 << 20;

    private record State(long length, FileTime changed) {}

    private record Known(State state, FileKinds.Kind kind) {}

    private final Map<Path, Known> known = new HashMap<>();

    /** The kind of a file. */
    synchronized FileKinds.Kind of(Path file) throws IOException {
        State state = new State(Files.size(file), Files.getLastModifiedTime(file));
        Known before = known.get(file);
        if (before == null || !before.state().equals(state)) {
            before = new Known(state, kind(file, state.length()));
            known.put(file, before);
        }
        return before.kind();
    }

    private static FileKinds.Kind kind(Path file, long length) {
        try {
            return length > LONG ? FileKinds.Kind.LIST : FileKinds.ofList(file);
        } catch (IOException unreadable) {
            return FileKinds.Kind.LIST; // what is wrong with it is said when it is read
        }
    }
}
