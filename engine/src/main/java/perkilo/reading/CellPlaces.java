package perkilo.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.schema.InputColumn;
import perkilo.xlsx.grid.Grid;

/** Finds the table, the row and the column that a place belongs to. */
final class CellPlaces {

    private static final Pattern CELL = Pattern.compile("([A-Z]+)(\\d+)");
    private static final int LETTERS = 26;

    private final Tables tables;
    private final Map<FoundTable, Map<String, Integer>> lines = new HashMap<>();
    private final Map<FoundTable, Map<String, List<Spot>>> spots = new HashMap<>();

    CellPlaces(Tables tables) {
        this.tables = tables;
    }

    /**
     * A place in a table.
     *
     * @param table the table
     * @param rows its rows that hold the cell, one or, where cells are merged, several; none for a header
     * @param column null if the place is none of the table's known columns
     */
    record Place(
            FoundTable table, List<TableRow> rows, @Nullable InputColumn column) {

        Place {
            rows = List.copyOf(rows);
        }

        boolean isHeader() {
            return rows.isEmpty();
        }
    }

    /**
     * A cell of an arranged table.
     *
     * @param row its row in the table
     * @param column null for what stands for the whole row
     */
    private record Spot(int row, @Nullable InputColumn column) {}

    /**
     * The places of an origin in all tables that hold it; none if no table does. Where a sheet was arranged in another
     * way, a cell that became part of no table stands for the headers of all tables that were made of the sheet.
     */
    List<Place> of(Origin origin) {
        List<Place> places = new ArrayList<>();
        List<Place> arranged = new ArrayList<>();
        for (FoundTable table : tables.all()) {
            Grid grid = table.grid();
            if (!grid.file().equals(origin.file()) || !grid.sheet().equals(origin.sheet())) {
                continue;
            }
            if (grid.isArranged()) {
                places.addAll(inArranged(table, origin.cell()));
                arranged.add(new Place(table, List.of(), null));
            } else {
                Place place = in(table, origin.cell());
                if (place != null) {
                    places.add(place);
                }
            }
        }
        return places.isEmpty() && !origin.cell().isEmpty() ? arranged : places;
    }

    /** The rows of an arranged table that a cell of the person's sheet became part of, by column; else its headers. */
    private List<Place> inArranged(FoundTable table, String cell) {
        List<Spot> found = spots(table).getOrDefault(cell, List.of());
        boolean oneCell = CELL.matcher(cell).matches();
        List<Place> places = new ArrayList<>();
        List<@Nullable InputColumn> columns = new ArrayList<>();
        for (Spot spot : found) {
            InputColumn column = oneCell ? spot.column() : null;
            if (!columns.contains(column)) {
                columns.add(column);
            }
        }
        for (InputColumn column : columns) {
            List<TableRow> rows = found.stream()
                    .filter(spot -> !oneCell || Objects.equals(spot.column(), column))
                    .map(Spot::row)
                    .filter(row -> row > table.headerRow())
                    .distinct()
                    .map(row -> table.row(row, new Findings()))
                    .toList();
            if (!rows.isEmpty()) {
                places.add(new Place(table, rows, column));
            }
        }
        return places.isEmpty() && !found.isEmpty()
                ? List.of(new Place(table, List.of(), found.get(0).column()))
                : places;
    }

    /** The cells of an arranged table by those of the person's sheet. */
    private Map<String, List<Spot>> spots(FoundTable table) {
        return spots.computeIfAbsent(table, any -> {
            Map<String, List<Spot>> byCell = new HashMap<>();
            Grid grid = table.grid();
            for (int row : grid.rows().between(table.headerRow() - 1, table.lastRow() + 1)) {
                table.columns()
                        .forEach((column, place) -> byCell.computeIfAbsent(
                                        grid.origin(row, place.index()).cell(), cell -> new ArrayList<>())
                                .add(new Spot(row, column)));
                grid.rowPlace(row)
                        .ifPresent(place -> byCell.computeIfAbsent(
                                place.cell(), cell -> new ArrayList<>(List.of(new Spot(row, null)))));
            }
            return byCell;
        });
    }

    private @Nullable Place in(FoundTable table, String cell) {
        Matcher named = CELL.matcher(cell);
        if (!named.matches()) {
            Integer row = lines(table).get(cell);
            return row == null ? null : new Place(table, rows(table, row, row), null);
        }
        int row = Integer.parseInt(named.group(2)) - 1;
        int index = index(named.group(1));
        if (row < table.headerRow() || row > table.lastRow() || !isBeside(table, index)) {
            return null;
        }
        Grid.Block merged = table.grid().mergedAt(row, index).orElse(null);
        int last = merged == null ? row : merged.lastRow();
        InputColumn column = table.columns().entrySet().stream()
                .filter(entry -> entry.getValue().index() == index)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(null);
        return new Place(table, rows(table, row, last), column);
    }

    /** Whether a column is one of the table's, or no other table of the sheet has it. */
    private boolean isBeside(FoundTable table, int index) {
        return has(table, index)
                || tables.all().stream().noneMatch(other -> other.grid().equals(table.grid()) && has(other, index));
    }

    private static boolean has(FoundTable table, int index) {
        return table.columns().values().stream().anyMatch(place -> place.index() == index);
    }

    private static List<TableRow> rows(FoundTable table, int first, int last) {
        List<TableRow> rows = new ArrayList<>();
        for (int row = Math.max(first, table.headerRow() + 1); row <= last; row++) {
            rows.add(table.row(row, new Findings()));
        }
        return first <= table.headerRow() ? List.of() : rows;
    }

    /** The rows of a text file by their lines. */
    private Map<String, Integer> lines(FoundTable table) {
        return lines.computeIfAbsent(table, any -> {
            Map<String, Integer> byLine = new HashMap<>();
            for (int row : table.grid().rows().between(table.headerRow() - 1, table.lastRow() + 1)) {
                byLine.put(table.grid().origin(row, 0).cell(), row);
            }
            return byLine;
        });
    }

    private static int index(String letters) {
        int index = 0;
        for (int at = 0; at < letters.length(); at++) {
            index = index * LETTERS + letters.charAt(at) - 'A' + 1;
        }
        return index - 1;
    }
}
