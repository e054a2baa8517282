package perkilo.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/**
 * A sheet with one table whose yellow cells a person fills in.
 *
 * @param <R> what a row is about
 * @param name as its tab shows it
 * @param title at its top
 * @param hint what to do, in a sentence
 * @param columns from left to right; the key follows them
 * @param key of a row
 */
public record ReviewSheet<R>(String name, String title, String hint, List<Column<R>> columns, Function<R, String> key) {

    /** The heading of the column with the keys. */
    public static final String KEY = "Key";

    private static final int KEY_WIDTH = 19;
    private static final int TITLE_ROW = 0;
    private static final int HINT_ROW = 1;
    private static final int HEAD_ROW = 3;

    public ReviewSheet {
        columns = List.copyOf(columns);
    }

    /** The sheet with its rows. */
    public ResultSheet with(List<R> rows) {
        List<Column<R>> all = new ArrayList<>(columns);
        all.add(Column.<R>of("key", KEY).words(this::keyOf).look(Look.HINT).width(KEY_WIDTH));
        SheetBuilder sheet = new SheetBuilder(name).landscape().title(TITLE_ROW, title);
        sheet.hint(HINT_ROW, hint);
        new Table<>(all).at(sheet, HEAD_ROW, rows).write().filter();
        return sheet.freeze(HEAD_ROW + 1, 0).build();
    }

    /** The key, then what is filled in already. */
    private String keyOf(R row) {
        List<String> answers = columns.stream()
                .filter(Column::isFillIn)
                .sorted(Comparator.comparing(Column::heading))
                .map(column -> {
                    String words = column.wordsOf(row);
                    return words == null ? "" : words;
                })
                .toList();
        return key.apply(row) + FilledIn.SEPARATOR + Key.check(answers);
    }
}
