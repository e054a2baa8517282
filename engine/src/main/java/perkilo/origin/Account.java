package perkilo.origin;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What became of everything in the files that were read: each sheet, table, column, group of rows and line beside a
 * table was read, is not needed, or was not understood.
 *
 * <p>Each cell that is not blank belongs to exactly one entry.
 *
 * @param entries in the order of the files; the columns and rows of a table follow the table
 * @param seen what the tables of the workbook held, to which formulas can refer
 */
public record Account(List<Entry> entries, List<SeenTable> seen) {

    /** No file. */
    public static final Account NONE = new Account(List.of());

    public Account {
        entries = List.copyOf(entries);
        seen = List.copyOf(seen);
    }

    /** An account of files to which no formulas refer. */
    public Account(List<Entry> entries) {
        this(entries, List.of());
    }

    /** What an entry is about. */
    public enum Subject {
        FILE,
        SHEET,
        /** A sheet with results of an earlier run. */
        RESULT,
        TABLE,
        COLUMN,
        ROWS,
        CELLS;

        /** The word that a person reads. */
        public String word() {
            return name().charAt(0) + name().substring(1).toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** What became of it. */
    public enum Fate {
        /** It was read. */
        READ("read"),
        /** Nothing that is computed depends on it. */
        NOT_NEEDED("not needed"),
        /** It may matter, but its meaning is not known. */
        NOT_UNDERSTOOD("not understood");

        private final String words;

        Fate(String words) {
            this.words = words;
        }

        /** The words that a person reads. */
        public String words() {
            return words;
        }
    }

    /**
     * One part of a file.
     *
     * @param place its first cell, or the sheet or file
     * @param subject what it is
     * @param text the words of the file itself, such as a header; empty if there are none
     * @param fate what became of it
     * @param as the table or the column that it was read as, in our words; empty if it was not read
     * @param why why it is not needed, or what to do if it is not understood; empty if it was read
     * @param rows how many rows it has
     * @param cells its cells; empty for a table, whose cells belong to its columns and rows
     */
    public record Entry(
            Origin place,
            Subject subject,
            String text,
            Fate fate,
            String as,
            String why,
            int rows,
            List<CellBlock> cells) {

        public Entry {
            requireNonNull(place, "place");
            cells = List.copyOf(cells);
        }

        /** Whether a cell belongs to it; row and column from zero. */
        public boolean holds(int row, int column) {
            return cells.stream().anyMatch(block -> block.holds(row, column));
        }

        /** Whether it was read. */
        public boolean isRead() {
            return fate == Fate.READ;
        }
    }

    /**
     * A table, or a sheet or file as a whole, with its parts.
     *
     * @param whole the table, the sheet or the file
     * @param parts the columns and rows of the table; the lines beside the tables of the sheet
     */
    public record Group(Entry whole, List<Entry> parts) {

        public Group {
            parts = List.copyOf(parts);
        }

        /** The texts of the columns that were not read. */
        public List<String> columnsNotRead() {
            return parts.stream()
                    .filter(part -> part.subject() == Subject.COLUMN && !part.isRead())
                    .map(Entry::text)
                    .toList();
        }
    }

    /** The entries by table and sheet. */
    public List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        Entry whole = null;
        List<Entry> parts = new ArrayList<>();
        for (Entry entry : entries) {
            if (isWhole(entry)) {
                add(groups, whole, parts);
                whole = entry;
                parts.clear();
            } else {
                parts.add(entry);
            }
        }
        add(groups, whole, parts);
        return groups;
    }

    /** The same account, with what tables held. */
    public Account withSeen(List<SeenTable> tables) {
        return new Account(entries, tables);
    }

    private static boolean isWhole(Entry entry) {
        return entry.subject() != Subject.COLUMN && entry.subject() != Subject.ROWS && entry.subject() != Subject.CELLS;
    }

    private static void add(List<Group> groups, @Nullable Entry whole, List<Entry> parts) {
        if (whole != null) {
            groups.add(new Group(whole, parts));
        }
    }

    /** This account and another one after it. */
    public Account and(Account other) {
        List<Entry> all = new ArrayList<>(entries);
        all.addAll(other.entries);
        List<SeenTable> tables = new ArrayList<>(seen);
        tables.addAll(other.seen);
        return new Account(all, tables);
    }
}
