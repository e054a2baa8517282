package perkilo.xlsx.author;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Decimals;
import perkilo.sheet.Chart;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.ResultSheet.Cell;
import perkilo.sheet.SheetNames;

/** What charts draw: references to cells of the result sheets, together with the values of these cells. */
final class ChartValues {

    private final Map<String, ResultSheet> sheets = new HashMap<>();
    private final UnaryOperator<String> names;

    ChartValues(Report report, UnaryOperator<String> names) {
        report.sheets().forEach(sheet -> sheets.put(sheet.name(), sheet));
        this.names = names;
    }

    /** The words of a range; numbers as a reader sees them. */
    List<String> words(Chart.Range range) {
        return cells(range).stream().map(ChartValues::word).toList();
    }

    /** The numbers of a range; null for anything else. */
    List<@Nullable Double> values(Chart.Range range) {
        List<@Nullable Double> values = new ArrayList<>();
        cells(range).forEach(cell -> values.add(number(cell)));
        return values;
    }

    private static @Nullable Double number(@Nullable Cell cell) {
        return cell != null && cell.content() instanceof ResultSheet.Value value
                ? value.expr().value().doubleValue()
                : null;
    }

    private static String word(@Nullable Cell cell) {
        if (cell != null && cell.content() instanceof ResultSheet.Text text) {
            return CellText.storable(text.text());
        }
        if (cell != null && cell.content() instanceof ResultSheet.Sentence sentence) {
            return CellText.storable(sentence.text());
        }
        if (cell != null && cell.content() instanceof ResultSheet.Value value) {
            return Decimals.plain(value.expr().value());
        }
        return "";
    }

    private List<@Nullable Cell> cells(Chart.Range range) {
        ResultSheet sheet = sheets.get(range.sheet());
        if (sheet == null) {
            throw new IllegalArgumentException(
                    "a chart refers to the sheet %s, which the report lacks".formatted(range.sheet()));
        }
        List<@Nullable Cell> cells = new ArrayList<>();
        CellRange of = CellRange.of(range.range());
        for (int row = of.firstRow(); row <= of.lastRow(); row++) {
            SortedMap<Integer, Cell> inRow = sheet.cells().getOrDefault(row, new TreeMap<>());
            for (int column = of.firstColumn(); column <= of.lastColumn(); column++) {
                cells.add(inRow.get(column));
            }
        }
        return cells;
    }

    /** A range as a formula writes it. */
    String reference(Chart.Range range) {
        return SheetNames.quoted(names.apply(range.sheet())) + "!"
                + CellRange.of(range.range()).absolute();
    }
}
