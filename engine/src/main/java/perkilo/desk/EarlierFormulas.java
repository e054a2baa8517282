package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.report.swap.SwapReport;
import perkilo.sheet.ContentSum;
import perkilo.swaps.AppliedSwap;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;
import perkilo.xlsx.splice.GivenSheets;

/**
 * The formulas in a workbook that earlier runs wrote with a swap or a blend.
 *
 * <p>If the same change is applied again, a sheet that nobody has changed is written anew; one that a person has
 * changed stays, and they are told.
 */
final class EarlierFormulas implements AppliedSwap.Earlier {

    private static final String FORMULA = "Formula";

    private final Map<String, String> records;
    private final List<Grid> sheets;
    private final List<Finding> findings = new ArrayList<>();

    private EarlierFormulas(Map<String, String> records, List<Grid> sheets) {
        this.records = records;
        this.sheets = sheets;
    }

    /** The formulas in a workbook. */
    static EarlierFormulas in(Path book) throws IOException {
        Map<String, String> records = GivenSheets.in(book);
        return new EarlierFormulas(
                records, records.isEmpty() ? List.of() : Grids.ofBook(book).sheets());
    }

    @Override
    public Optional<String> name(String identity) {
        Optional<String> untouched = Optional.empty();
        for (Grid sheet : sheets) {
            Optional<String> content = Optional.ofNullable(records.get(sheet.sheet()))
                    .flatMap(record -> SwapReport.contentOf(record, identity));
            if (content.isEmpty()) {
                continue;
            }
            if (content.get().equals(sum(sheet))) {
                untouched = untouched.or(() -> formula(sheet));
            } else {
                Origin place = new Origin(sheet.file(), sheet.sheet(), "");
                findings.add(Finding.note(place, DeskMessages.changedFormulaStays(sheet.sheet())));
            }
        }
        return untouched;
    }

    /** Which formulas stay because a person has changed them. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    private static String sum(Grid sheet) {
        ContentSum sum = new ContentSum();
        for (int row : sheet.rows().numbers()) {
            NavigableMap<Integer, Cell> cells = sheet.row(row);
            int at = row;
            cells.forEach((column, cell) -> {
                if (cell.number() == null) {
                    sum.text(at, column, cell.text());
                } else {
                    sum.number(at, column, cell.number());
                }
            });
        }
        return sum.sum();
    }

    private static Optional<String> formula(Grid sheet) {
        int head = sheet.rows().first();
        return sheet.row(head).entrySet().stream()
                .filter(cell -> cell.getValue().text().equals(FORMULA))
                .findFirst()
                .map(cell -> sheet.at(head + 1, cell.getKey()).text())
                .filter(name -> !name.isEmpty());
    }
}
