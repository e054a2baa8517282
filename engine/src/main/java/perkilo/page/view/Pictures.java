package perkilo.page.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import perkilo.json.Json;
import perkilo.origin.Account;
import perkilo.origin.Origin;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** Small pictures of a sheet: the rows where its tables begin, and those that something is said about. */
final class Pictures {

    private static final int BELOW_HEADING = 3;
    private static final int MOST_ROWS = 40;
    private static final int MOST_COLUMNS = 16;
    private static final int LONGEST = 60;

    private final Grid sheet;
    private final List<Account.Entry> entries;
    private final Set<String> questions;
    private final Set<Integer> headings = new TreeSet<>();
    private final Set<Integer> shown = new TreeSet<>();

    /**
     * The pictures of a sheet.
     *
     * @param account of all files
     * @param said the places that something is said about
     * @param questions the places, as they are written, that something is asked about
     */
    Pictures(Grid sheet, Account account, List<Origin> said, Set<String> questions) {
        this.sheet = sheet;
        this.questions = questions;
        this.entries = account.entries().stream()
                .filter(entry -> entry.place().file().equals(sheet.file())
                        && entry.place().sheet().equals(sheet.sheet()))
                .toList();
        for (Account.Entry entry : entries) {
            if (entry.subject() == Account.Subject.TABLE && entry.place().row() >= 0) {
                headings.add(entry.place().row());
                show(entry.place().row(), 0, BELOW_HEADING);
            }
        }
        if (headings.isEmpty() && !sheet.rows().isEmpty()) {
            show(sheet.rows().first(), 0, BELOW_HEADING);
        }
        for (Origin place : said) {
            if (place.sheet().equals(sheet.sheet())
                    && place.row() >= 0
                    && place.file().equals(sheet.file())) {
                show(place.row(), 1, 1);
            }
        }
    }

    private void show(int row, int before, int behind) {
        for (int at = Math.max(0, row - before);
                at <= row + behind && at <= sheet.rows().last();
                at++) {
            if (shown.size() < MOST_ROWS) {
                shown.add(at);
            }
        }
    }

    /** The pictures; rows that follow each other are in one. */
    ArrayNode json() {
        ArrayNode all = Json.object().putArray("cells");
        List<Integer> columns = columns();
        ArrayNode rows = null;
        int before = -2;
        for (int row : shown) {
            if (rows == null || row != before + 1) {
                rows = all.addObject().putArray("rows");
            }
            rows.add(row(row, columns));
            before = row;
        }
        return all;
    }

    /** The columns in which something is, in the rows that are shown. */
    private List<Integer> columns() {
        Map<Integer, Boolean> used = new TreeMap<>();
        for (int row : shown) {
            sheet.row(row).keySet().forEach(column -> used.put(column, true));
        }
        return new ArrayList<>(used.keySet()).subList(0, Math.min(MOST_COLUMNS, used.size()));
    }

    private ObjectNode row(int row, List<Integer> columns) {
        ObjectNode json = Json.object().put("row", row + 1);
        ArrayNode cells = json.putArray("cells");
        for (int column : columns) {
            Cell cell = sheet.at(row, column);
            String text = cell.text();
            cells.addObject()
                    .put("ref", Origin.columnName(column) + (row + 1))
                    .put("text", text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text)
                    .put("state", state(cell, row, column));
        }
        return json;
    }

    private String state(Cell cell, int row, int column) {
        if (questions.contains(sheet.origin(row, column).where())) {
            return "question";
        }
        if (cell.isBlank()) {
            return "blank";
        }
        boolean read = entries.stream().anyMatch(entry -> entry.isRead() && entry.holds(row, column));
        if (!read) {
            return "notRead";
        }
        return headings.contains(row) ? "heading" : "read";
    }
}
