package perkilo.pricelists;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import perkilo.layouts.LayoutFinder;
import perkilo.layouts.ListLayout;
import perkilo.layouts.Mapping;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * Finds the tables of a list: by their headings, or by what a person said about headings and columns.
 *
 * @param tables those that are read
 * @param guesses on sheets without a table that is recognised: where its headings may be
 */
record SheetTables(List<ListLayout> tables, List<ListLayout> guesses) {

    /** The answer that a table has no row of headings. */
    static final String NONE = "none";

    /** The answer that a file without a table is no price list. */
    static final String NO_LIST = "this is no price list";

    private static final int ROWS_LOOKED_AT = 80;
    private static final int SAMPLES = 3;
    private static final double MOSTLY = 0.7;
    private static final int MOST_DIGITS = 6;

    /**
     * Finds tables.
     *
     * @param mapping what is known about columns
     * @param headerRows what a person said about the row of headings, by sheet
     */
    static SheetTables of(List<Grid> sheets, Mapping mapping, Map<String, String> headerRows) {
        List<ListLayout> tables = new ArrayList<>();
        List<ListLayout> guesses = new ArrayList<>();
        for (Grid sheet : sheets) {
            if (sheet.rows().isEmpty()) {
                continue;
            }
            String said = headerRows.getOrDefault(sheet.sheet(), "");
            if (said.equalsIgnoreCase(RowNotRead.IGNORE) || said.equalsIgnoreCase(NO_LIST)) {
                continue;
            }
            Optional<ListLayout> named = said.isEmpty() ? Optional.empty() : said(sheet, said);
            List<ListLayout> found = named.isPresent() ? List.of() : LayoutFinder.find(List.of(sheet));
            ListLayout table =
                    found.isEmpty() ? named.or(() -> remembered(sheet, mapping)).orElse(null) : found.get(0);
            if (!found.isEmpty()) {
                tables.addAll(found);
            } else if (table != null && isAssigned(table, mapping)) {
                tables.add(table);
            } else {
                guesses.add(table != null ? table : guess(sheet));
            }
        }
        if (!tables.isEmpty()) {
            tables.set(
                    0, tables.get(0).with(guesses.stream().map(ListLayout::grid).toList()));
        }
        return new SheetTables(tables, guesses);
    }

    private static Optional<ListLayout> said(Grid sheet, String answer) {
        String row = answer.toLowerCase(Locale.ROOT).replaceAll("[^0-9]", "");
        if (answer.equalsIgnoreCase(NONE)) {
            return Optional.of(ListLayout.withoutHeadings(sheet));
        }
        return row.isEmpty() || row.length() > MOST_DIGITS
                ? Optional.empty()
                : rowOf(sheet, Integer.parseInt(row)).map(number -> LayoutFinder.at(sheet, number));
    }

    /** The number of a row, counted from zero, that a person calls by its number on the sheet or its line. */
    private static Optional<Integer> rowOf(Grid sheet, int called) {
        return Arrays.stream(sheet.rows().numbers())
                .filter(number -> called(sheet, number) == called)
                .boxed()
                .findFirst();
    }

    /** What a person calls a row: its number on the sheet, or its line in a text file. */
    static int called(Grid sheet, int row) {
        return Integer.parseInt(sheet.origin(row, 0).cell().replaceAll("\\D", ""));
    }

    /** The row of headings whose columns a person assigned, on this list or an earlier one. */
    private static Optional<ListLayout> remembered(Grid sheet, Mapping mapping) {
        if (mapping.columns().isEmpty()) {
            return Optional.empty();
        }
        return Arrays.stream(sheet.rows().numbers())
                .limit(ROWS_LOOKED_AT)
                .mapToObj(row -> LayoutFinder.at(sheet, row))
                .filter(layout -> isAssigned(layout, mapping))
                .findFirst()
                .or(() -> Optional.of(ListLayout.withoutHeadings(sheet)).filter(layout -> isAssigned(layout, mapping)));
    }

    /** Whether an item and a price are among the columns that a person assigned. */
    private static boolean isAssigned(ListLayout layout, Mapping mapping) {
        boolean item = false;
        boolean price = false;
        for (String header : layout.headers().values()) {
            String use = mapping.column(header).orElse("").toLowerCase(Locale.ROOT);
            item |= use.equals("item") || use.equals("inci name");
            price |= use.equals("price") || use.startsWith("price from ") || use.startsWith("price of ");
        }
        return item && price;
    }

    /** The first row that holds words in most of the columns that are used, above a row with a number. */
    private static ListLayout guess(Grid sheet) {
        int[] rows = Arrays.stream(sheet.rows().numbers()).limit(ROWS_LOOKED_AT).toArray();
        Map<Integer, Integer> words = new HashMap<>();
        int most = 0;
        for (int row : rows) {
            int count = (int) sheet.row(row).values().stream()
                    .filter(cell ->
                            cell.kind() == Cell.Kind.TEXT && !cell.text().matches("[-\\d.,\\s]+"))
                    .count();
            words.put(row, count);
            most = Math.max(most, count);
        }
        for (int row : rows) {
            if (words.getOrDefault(row, 0) >= Math.max(2, most * MOSTLY)) {
                return LayoutFinder.at(sheet, row);
            }
        }
        return most == 0 ? ListLayout.withoutHeadings(sheet) : LayoutFinder.at(sheet, rows[0]);
    }

    /** The first values below a heading. */
    static List<String> samples(ListLayout layout, int column) {
        Grid grid = layout.grid();
        return Arrays.stream(grid.rows().below(layout.lastHeader()))
                .limit(ROWS_LOOKED_AT)
                .mapToObj(row -> grid.at(row, column).text())
                .filter(text -> !text.isBlank())
                .limit(SAMPLES)
                .toList();
    }
}
