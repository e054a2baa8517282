package perkilo.live;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;

/** The figures on the sheets of a report, as the engine computes them. */
final class Sheets {

    private static final double CLOSE = 1e-7;

    /** Sheets whose figures say what was read or compared, not what something costs. */
    private static final List<String> OTHERS = List.of("Inputs as computed", "Messages", "What was read");

    private Sheets() {}

    /**
     * The first figure that the office suite's sheets neither have nor say to be another one; empty if there is none.
     */
    static String difference(Report report, Dump dump) {
        for (ResultSheet sheet : report.sheets()) {
            String first = dump.firstLines(sheet.name(), 2);
            if (!OTHERS.contains(sheet.name()) && !first.contains("do not follow")) {
                String difference = difference(sheet, dump);
                if (!difference.isEmpty()) {
                    return difference;
                }
            }
        }
        return "";
    }

    private static String difference(ResultSheet sheet, Dump dump) {
        for (Map.Entry<Integer, SortedMap<Integer, ResultSheet.Cell>> row :
                sheet.cells().entrySet()) {
            ResultSheet.Cell begins = row.getValue().get(0);
            String label = begins != null && begins.content() instanceof ResultSheet.Text text ? text.text() : "";
            Map<Integer, Double> figures = figures(row.getValue());
            boolean same = isIn(dump.row(sheet.name(), row.getKey()), figures);
            if (!same && !label.isEmpty() && sheet.name().equals("At a glance")) {
                // the items that cost most are those of the last run
                List<Map<Integer, Object>> shown = dump.rows(sheet.name(), label);
                same = shown.isEmpty() || shown.stream().anyMatch(one -> isIn(one, figures));
            }
            if (!same) {
                return sheet.name() + " row " + (row.getKey() + 1) + " " + dump.row(sheet.name(), row.getKey())
                        + " instead of " + figures;
            }
        }
        return "";
    }

    private static boolean isIn(Map<Integer, Object> shown, Map<Integer, Double> figures) {
        return figures.entrySet().stream()
                .allMatch(figure ->
                        shown.get(figure.getKey()) instanceof Double number && isClose(number, figure.getValue()));
    }

    private static boolean isClose(double shown, double engine) {
        return Math.abs(shown - engine) <= Math.max(1e-9, CLOSE * Math.abs(engine));
    }

    private static Map<Integer, Double> figures(SortedMap<Integer, ResultSheet.Cell> row) {
        Map<Integer, Double> figures = new TreeMap<>();
        row.forEach((column, cell) -> {
            if (cell.content() instanceof ResultSheet.Value value) {
                figures.put(column, value.expr().value().doubleValue());
            }
        });
        return figures;
    }
}
