package perkilo.xlsx.grid;

import java.util.AbstractMap;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * An unchangeable map of one row's cells by column, kept in two arrays: a long price list has a million cells, and a
 * tree would take several times the memory. Rarely used methods build a tree.
 */
final class RowCells extends AbstractMap<Integer, Cell> implements NavigableMap<Integer, Cell> {

    private final char[] columns;
    private final Cell[] cells;

    private RowCells(char[] columns, Cell[] cells) {
        this.columns = columns;
        this.cells = cells;
    }

    /**
     * A row.
     *
     * @param columns ascending, from zero; only the first {@code count} are used
     * @param cells as many, none blank
     */
    static RowCells of(char[] columns, Cell[] cells, int count) {
        return new RowCells(Arrays.copyOf(columns, count), Arrays.copyOf(cells, count));
    }

    private NavigableMap<Integer, Cell> tree() {
        NavigableMap<Integer, Cell> tree = new TreeMap<>();
        forEach(tree::put);
        return tree;
    }

    @Override
    public int size() {
        return cells.length;
    }

    @Override
    public @Nullable Cell get(@Nullable Object column) {
        int place = column instanceof Integer number && number >= 0 && number <= Character.MAX_VALUE
                ? Arrays.binarySearch(columns, (char) number.intValue())
                : -1;
        return place < 0 ? null : cells[place];
    }

    @Override
    public boolean containsKey(@Nullable Object column) {
        return get(column) != null;
    }

    @Override
    public void forEach(BiConsumer<? super Integer, ? super Cell> action) {
        for (int i = 0; i < cells.length; i++) {
            action.accept((int) columns[i], cells[i]);
        }
    }

    @Override
    public List<Cell> values() {
        return List.of(cells);
    }

    @Override
    public Set<Entry<Integer, Cell>> entrySet() {
        return tree().entrySet();
    }

    @Override
    public NavigableSet<Integer> navigableKeySet() {
        return tree().navigableKeySet();
    }

    @Override
    public Set<Integer> keySet() {
        return navigableKeySet();
    }

    @Override
    public NavigableSet<Integer> descendingKeySet() {
        return tree().descendingKeySet();
    }

    @Override
    public @Nullable Comparator<? super Integer> comparator() {
        return null;
    }

    @Override
    public Integer firstKey() {
        return at(0);
    }

    @Override
    public Integer lastKey() {
        return at(cells.length - 1);
    }

    private int at(int place) {
        if (cells.length == 0) {
            throw new NoSuchElementException("the row is blank");
        }
        return columns[place];
    }

    @Override
    public NavigableMap<Integer, Cell> subMap(Integer from, boolean fromIt, Integer to, boolean toIt) {
        return tree().subMap(from, fromIt, to, toIt);
    }

    @Override
    public SortedMap<Integer, Cell> subMap(Integer from, Integer to) {
        return tree().subMap(from, to);
    }

    @Override
    public NavigableMap<Integer, Cell> headMap(Integer to, boolean toIt) {
        return tree().headMap(to, toIt);
    }

    @Override
    public SortedMap<Integer, Cell> headMap(Integer to) {
        return tree().headMap(to);
    }

    @Override
    public NavigableMap<Integer, Cell> tailMap(Integer from, boolean fromIt) {
        return tree().tailMap(from, fromIt);
    }

    @Override
    public SortedMap<Integer, Cell> tailMap(Integer from) {
        return tree().tailMap(from);
    }

    @Override
    public @Nullable Entry<Integer, Cell> lowerEntry(Integer column) {
        return tree().lowerEntry(column);
    }

    @Override
    public @Nullable Entry<Integer, Cell> floorEntry(Integer column) {
        return tree().floorEntry(column);
    }

    @Override
    public @Nullable Entry<Integer, Cell> ceilingEntry(Integer column) {
        return tree().ceilingEntry(column);
    }

    @Override
    public @Nullable Entry<Integer, Cell> higherEntry(Integer column) {
        return tree().higherEntry(column);
    }

    @Override
    public @Nullable Integer lowerKey(Integer column) {
        return tree().lowerKey(column);
    }

    @Override
    public @Nullable Integer floorKey(Integer column) {
        return tree().floorKey(column);
    }

    @Override
    public @Nullable Integer ceilingKey(Integer column) {
        return tree().ceilingKey(column);
    }

    @Override
    public @Nullable Integer higherKey(Integer column) {
        return tree().higherKey(column);
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
        throw new UnsupportedOperationException("a row never changes");
    }

    @Override
    public Entry<Integer, Cell> pollLastEntry() {
        throw new UnsupportedOperationException("a row never changes");
    }

    @Override
    public NavigableMap<Integer, Cell> descendingMap() {
        return tree().descendingMap();
    }
}
