package perkilo.xlsx.grid;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import perkilo.origin.Origin;

/** Where the cells of an arranged grid are on the person's sheet. */
public final class Places {

    private final Map<Integer, Origin> rows = new HashMap<>();
    private final Map<Long, Origin> cells = new HashMap<>();
    private final Set<Long> live = new HashSet<>();
    private final Origin sheet;

    Places(Origin sheet) {
        this.sheet = sheet;
    }

    private static long key(int row, int column) {
        return ((long) row << Integer.SIZE) | column;
    }

    void put(int row, Origin place) {
        rows.put(row, place);
    }

    void put(int row, int column, Origin place, boolean asTyped) {
        cells.put(key(row, column), place);
        if (asTyped) {
            live.add(key(row, column));
        }
    }

    /** The place that stands for a row. */
    Origin of(int row) {
        return rows.getOrDefault(row, sheet);
    }

    /** The place of a cell; that of its row if the person's sheet has no such cell. */
    Origin of(int row, int column) {
        Origin place = cells.get(key(row, column));
        return place == null ? of(row) : place;
    }

    /** Whether a cell holds what the person typed there, so that a formula can refer to it. */
    boolean isLive(int row, int column) {
        return live.contains(key(row, column));
    }
}
