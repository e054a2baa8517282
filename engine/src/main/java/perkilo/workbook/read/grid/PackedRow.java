package perkilo.workbook.read.grid;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Iterator;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The cells of one row by column, held in an array: a price list of a hundred thousand rows fits where trees of cells
 * would not. It never changes.
 */
final class PackedRow extends AbstractMap<Integer, Cell> implements NavigableMap<Integer, Cell> {

    private final int first;
    private final @Nullable Cell[] cells;
    private final int size;

    private PackedRow(int first, @Nullable Cell[] cells, int size) {
        this.first = first;
        this.cells = cells;
        this.size = size;
    }

    /**
     * A row.
     *
     * @param cells by column from zero; null or blank where there is nothing
     * @param length how many of them count
     */
    static NavigableMap<Integer, Cell> of(@Nullable Cell[] cells, int length) {
        int from = 0;
        int to = length;
        while (from < to && isBlank(cells[from])) {
            from++;
        }
        while (to > from && isBlank(cells[to - 1])) {
            to--;
        }
        @Nullable Cell[] kept = Arrays.copyOfRange(cells, from, to);
        int size = 0;
        for (int at = 0; at < kept.length; at++) {
            if (isBlank(kept[at])) {
                kept[at] = null;
            } else {
                size++;
            }
        }
        return new PackedRow(from, kept, size);
    }

    private static boolean isBlank(@Nullable Cell cell) {
        return cell == null || cell.isBlank();
    }

    @Override
    public @Nullable Cell get(@Nullable Object key) {
        if (!(key instanceof Integer column) || column < first || column >= first + cells.length) {
            return null;
        }
        return cells[column - first];
    }

    @Override
    public boolean containsKey(@Nullable Object key) {
        return get(key) != null;
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public Integer firstKey() {
        return there(first);
    }

    @Override
    public Integer lastKey() {
        return there(first + cells.length - 1);
    }

    private Integer there(int column) {
        if (size == 0) {
            throw new NoSuchElementException("the row is blank");
        }
        return column;
    }

    @Override
    public Set<Entry<Integer, Cell>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public Iterator<Entry<Integer, Cell>> iterator() {
                return new Entries();
            }

            @Override
            public int size() {
                return size;
            }
        };
    }

    /** Walks over the cells from left to right. */
    private final class Entries implements Iterator<Entry<Integer, Cell>> {

        private int at;

        @Override
        public boolean hasNext() {
            while (at < cells.length && cells[at] == null) {
                at++;
            }
            return at < cells.length;
        }

        @Override
        public Entry<Integer, Cell> next() {
            Cell cell = hasNext() ? cells[at] : null;
            if (cell == null) {
                throw new NoSuchElementException();
            }
            return new SimpleImmutableEntry<>(first + at++, cell);
        }
    }

    /** The same cells as a tree, for what is asked of few rows. */
    private NavigableMap<Integer, Cell> tree() {
        return new TreeMap<>((SortedMap<Integer, Cell>) this);
    }

    @Override
    public @Nullable Comparator<? super Integer> comparator() {
        return null;
    }

    @Override
    public @Nullable Entry<Integer, Cell> lowerEntry(Integer key) {
        return tree().lowerEntry(key);
    }

    @Override
    public @Nullable Integer lowerKey(Integer key) {
        return tree().lowerKey(key);
    }

    @Override
    public @Nullable Entry<Integer, Cell> floorEntry(Integer key) {
        return tree().floorEntry(key);
    }

    @Override
    public @Nullable Integer floorKey(Integer key) {
        return tree().floorKey(key);
    }

    @Override
    public @Nullable Entry<Integer, Cell> ceilingEntry(Integer key) {
        return tree().ceilingEntry(key);
    }

    @Override
    public @Nullable Integer ceilingKey(Integer key) {
        return tree().ceilingKey(key);
    }

    @Override
    public @Nullable Entry<Integer, Cell> higherEntry(Integer key) {
        return tree().higherEntry(key);
    }

    @Override
    public @Nullable Integer higherKey(Integer key) {
        return tree().higherKey(key);
    }

    @Override
    public @Nullable Entry<Integer, Cell> firstEntry() {
        return tree().firstEntry();
    }

    @Override
    public @Nullable Entry<Integer, Cell> lastEntry() {
        return tree().lastEntry();
    }

    @Override
    public Entry<Integer, Cell> pollFirstEntry() {
        throw new UnsupportedOperationException();
    }

    @Override
    public Entry<Integer, Cell> pollLastEntry() {
        throw new UnsupportedOperationException();
    }

    @Override
    public NavigableMap<Integer, Cell> descendingMap() {
        return tree().descendingMap();
    }

    @Override
    public NavigableSet<Integer> navigableKeySet() {
        return tree().navigableKeySet();
    }

    @Override
    public NavigableSet<Integer> descendingKeySet() {
        return tree().descendingKeySet();
    }

    @Override
    public NavigableMap<Integer, Cell> subMap(Integer from, boolean fromToo, Integer to, boolean toToo) {
        return tree().subMap(from, fromToo, to, toToo);
    }

    @Override
    public NavigableMap<Integer, Cell> headMap(Integer to, boolean toToo) {
        return tree().headMap(to, toToo);
    }

    @Override
    public NavigableMap<Integer, Cell> tailMap(Integer from, boolean fromToo) {
        return tree().tailMap(from, fromToo);
    }

    @Override
    public SortedMap<Integer, Cell> subMap(Integer from, Integer to) {
        return tree().subMap(from, to);
    }

    @Override
    public SortedMap<Integer, Cell> headMap(Integer to) {
        return tree().headMap(to);
    }

    @Override
    public SortedMap<Integer, Cell> tailMap(Integer from) {
        return tree().tailMap(from);
    }
}
