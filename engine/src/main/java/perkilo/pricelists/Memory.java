package perkilo.pricelists;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ListWords;
import perkilo.layouts.Mapping;

/** What is remembered of one supplier: answers, the use of columns, names, and the files that were taken in. */
final class Memory {

    static final String SUPPLIER = "supplier";
    static final String COLUMN = "column";
    static final String NAME = "name";
    static final String FILE = "file";

    /** The answer that a name is that of an item of its own. */
    static final String OWN_NAME = "keep their own name";

    static final String ALSO_CALLED = "also called";
    static final String HEADER_ROW = "header row";
    static final String ROW = "row";
    static final String JUMP = "price change";
    static final String WHICH_HOLDS = "which holds";
    static final String SAME_FILE = "same file";

    /** What is not an answer about how a table is read. */
    private static final List<String> OWN =
            List.of(SUPPLIER, COLUMN, NAME, FILE, ALSO_CALLED, HEADER_ROW, ROW, JUMP, WHICH_HOLDS, SAME_FILE);

    private final String supplier;
    private final Map<List<String>, Remembered> all = new LinkedHashMap<>();

    Memory(String supplier) {
        this.supplier = supplier;
    }

    /** Whether it is something else than an answer about how a table is read. */
    static boolean isOwn(String what) {
        return OWN.contains(what);
    }

    /** The supplier's name; empty if they are not known yet. */
    String supplier() {
        return supplier;
    }

    /** A copy that can be changed by itself. */
    Memory copy(String name) {
        Memory copy = new Memory(name);
        copy.all.putAll(all);
        return copy;
    }

    private static List<String> key(String what, String listed, String layout) {
        return List.of(what, what.equals(COLUMN) ? ListWords.key(listed) : listed.strip(), layout);
    }

    /** Remembers an answer. */
    void put(Remembered answer) {
        all.put(key(answer.what(), answer.listed(), answer.layout()), answer);
    }

    /** Remembers an answer about a single thing. */
    void put(String what, String listed, String answer, String how) {
        put(new Remembered(what, listed, answer, how, "", List.of(), ""));
    }

    void forget(String what, String listed, String layout) {
        all.remove(key(what, listed, layout));
        all.remove(key(what, listed, ""));
    }

    /** An answer for a table with some headers, or else for all tables. */
    Optional<Remembered> get(String what, String listed, String layout) {
        return Optional.ofNullable(all.get(key(what, listed, layout)))
                .or(() -> Optional.ofNullable(all.get(key(what, listed, ""))));
    }

    /** The answer about a single thing; empty if there is none. */
    Optional<String> answer(String what, String listed) {
        return get(what, listed, "").map(Remembered::answer).filter(answer -> !answer.isBlank());
    }

    /** Remembers that a file was taken in. */
    void putFile(String name, String day, String digest, String rows) {
        put(FILE, name, day, digest + " " + rows);
    }

    /** The day that a file was taken in for, if its content was the same. */
    Optional<String> dayOf(String name, String digest) {
        return get(FILE, name, "")
                .filter(one -> one.how().startsWith(digest + " "))
                .map(Remembered::answer);
    }

    /** Whether a file was taken in with the same content, and gave the same rows. */
    boolean hasTaken(String name, String day, String digest, String rows) {
        return get(FILE, name, "")
                .filter(one -> one.answer().equals(day) && one.how().equals(digest + " " + rows))
                .isPresent();
    }

    /** All answers about one kind of thing. */
    List<Remembered> all(String what) {
        return all.values().stream().filter(one -> one.what().equals(what)).toList();
    }

    List<Remembered> all() {
        return List.copyOf(all.values());
    }

    /** The answers about how a table with some headers is read. */
    List<Remembered> ofLayout(String layout) {
        Map<String, Remembered> byField = new LinkedHashMap<>();
        for (Remembered one : all.values()) {
            boolean own = one.layout().equals(layout);
            if (!OWN.contains(one.what()) && (own || one.layout().isEmpty())) {
                byField.merge(one.what(), one, (before, next) -> before.layout().isEmpty() ? next : before);
            }
        }
        return List.copyOf(byField.values());
    }

    /** How a table with some headers is read. */
    Mapping mapping(String layout) {
        Map<String, @Nullable String> answers = new LinkedHashMap<>();
        ofLayout(layout).forEach(one -> answers.put(one.what(), one.answer()));
        Map<String, @Nullable String> columns = new LinkedHashMap<>();
        all(COLUMN).forEach(one -> columns.put(one.listed(), one.answer()));
        Map<String, Mapping.NameAnswer> names = new LinkedHashMap<>();
        all(NAME).forEach(one -> names.put(one.listed(), new Mapping.NameAnswer(one.answer(), one.how(), "", 0)));
        return new Mapping(supplier, answers, columns, names);
    }

    /** The memory of a mapping, which an earlier version kept. */
    static Memory of(Mapping mapping) {
        Memory memory = new Memory(mapping.supplier());
        mapping.answers().forEach((field, answer) -> {
            if (answer != null && !answer.isBlank()) {
                memory.put(field, "", answer, "");
            }
        });
        mapping.columns().forEach((header, use) -> {
            if (use != null && !use.isBlank()) {
                memory.put(COLUMN, header, use, "");
            }
        });
        mapping.names().forEach((listed, name) -> {
            if (name.is() != null && !name.is().isBlank()) {
                memory.put(NAME, listed, name.is(), name.by());
            }
        });
        return memory;
    }

    /** The rows that a file of answers holds: the supplier first. */
    List<Remembered> rows() {
        List<Remembered> rows = new ArrayList<>();
        rows.add(new Remembered(SUPPLIER, "", supplier, "", "", List.of(), ""));
        rows.addAll(all.values());
        return rows;
    }
}
