package perkilo.workbook.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.jspecify.annotations.Nullable;
import perkilo.report.Chart;
import perkilo.report.Decimals;
import perkilo.report.NumberFormat;
import perkilo.report.Report;
import perkilo.report.ResultSheet;
import perkilo.report.ResultSheet.Cell;
import perkilo.report.SheetNames;

/** What charts draw: references to cells of the result sheets, together with the values that stand there. */
final class ChartValues {

    private final Map<String, ResultSheet> sheets = new HashMap<>();
    private final UnaryOperator<String> names;

    ChartValues(Report report, UnaryOperator<String> names) {
        report.sheets().forEach(sheet -> sheets.put(sheet.name(), sheet));
        this.names = names;
    }

    /** The numbers of a range. */
    XDDFNumericalDataSource<Double> numbers(Chart.Range range, NumberFormat format) {
        XDDFNumericalDataSource<Double> source =
                XDDFDataSourcesFactory.fromArray(values(range).toArray(new Double[0]), reference(range));
        source.setFormatCode(format.code());
        return source;
    }

    /** The words of a range; numbers as they are read. */
    XDDFCategoryDataSource words(Chart.Range range) {
        String[] words = cells(range).stream().map(ChartValues::word).toArray(String[]::new);
        return XDDFDataSourcesFactory.fromArray(words, reference(range));
    }

    /** The numbers of a range; null for what is not a number. */
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
        for (CellAddress address : CellRangeAddress.valueOf(range.range())) {
            SortedMap<Integer, Cell> row = sheet.cells().getOrDefault(address.getRow(), new TreeMap<>());
            cells.add(row.get(address.getColumn()));
        }
        return cells;
    }

    private String reference(Chart.Range range) {
        String absolute = CellRangeAddress.valueOf(range.range()).formatAsString(null, true);
        return SheetNames.quoted(names.apply(range.sheet())) + "!" + absolute;
    }
}
