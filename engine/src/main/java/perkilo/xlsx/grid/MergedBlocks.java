package perkilo.xlsx.grid;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The merged blocks of a sheet, found quickly even if there are many.
 *
 * <p>Blocks of more than {@value #WIDEST} columns are titles over a whole table and are ignored.
 */
public final class MergedBlocks {

    private static final int WIDEST = 64;

    private final Map<Integer, NavigableMap<Integer, Grid.Block>> byColumn = new HashMap<>();

    MergedBlocks(List<Grid.Block> blocks) {
        for (Grid.Block block : blocks) {
            if (block.lastColumn() - block.firstColumn() < WIDEST) {
                for (int column = block.firstColumn(); column <= block.lastColumn(); column++) {
                    byColumn.computeIfAbsent(column, any -> new TreeMap<>()).putIfAbsent(block.firstRow(), block);
                }
            }
        }
    }

    /** Whether nothing was merged. */
    public boolean isEmpty() {
        return byColumn.isEmpty();
    }

    /** The block that contains a position. */
    Optional<Grid.Block> at(int row, int column) {
        NavigableMap<Integer, Grid.Block> blocks = byColumn.get(column);
        Map.Entry<Integer, Grid.Block> above = blocks == null ? null : blocks.floorEntry(row);
        return above != null && above.getValue().contains(row, column)
                ? Optional.of(above.getValue())
                : Optional.empty();
    }
}
