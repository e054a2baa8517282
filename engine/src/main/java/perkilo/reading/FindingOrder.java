package perkilo.reading;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.xlsx.grid.Grid;

/** Findings in the order in which a person would walk through the files. */
final class FindingOrder {

    private static final Pattern CELL = Pattern.compile("([A-Z]+)(\\d+)");
    private static final Pattern LINE = Pattern.compile("line (\\d+)");

    private FindingOrder() {}

    /** By file and sheet, then row, then column; findings about a whole file or sheet come before its cells. */
    static List<Finding> sorted(List<Finding> findings, List<Grid> grids) {
        if (findings.size() < 2) {
            return List.copyOf(findings);
        }
        Map<List<String>, Integer> order = new LinkedHashMap<>();
        for (Grid grid : grids) {
            order.putIfAbsent(List.of(grid.file(), ""), order.size());
            order.putIfAbsent(List.of(grid.file(), grid.sheet()), order.size());
        }
        Comparator<Finding> bySheet = Comparator.comparingInt(finding -> order.getOrDefault(
                List.of(finding.origin().file(), finding.origin().sheet()), Integer.MAX_VALUE));
        return findings.stream()
                .sorted(bySheet.thenComparingInt(finding -> row(finding.origin()))
                        .thenComparing(finding -> column(finding.origin())))
                .toList();
    }

    private static int row(Origin origin) {
        Matcher line = LINE.matcher(origin.cell());
        if (line.matches()) {
            return Integer.parseInt(line.group(1));
        }
        Matcher cell = CELL.matcher(origin.cell());
        return cell.matches() ? Integer.parseInt(cell.group(2)) : 0;
    }

    /** The column's letters, so padded that they sort as columns do. */
    private static String column(Origin origin) {
        Matcher cell = CELL.matcher(origin.cell());
        return cell.matches() ? " ".repeat(Math.max(0, 4 - cell.group(1).length())) + cell.group(1) : "";
    }
}
