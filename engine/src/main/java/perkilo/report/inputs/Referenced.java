package perkilo.report.inputs;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import perkilo.sheet.Expr;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetNames;

/** The cells of a person that formulas on result sheets refer to. */
final class Referenced {

    private final Set<String> cells = new HashSet<>();

    Referenced(List<ResultSheet> sheets) {
        for (ResultSheet sheet : sheets) {
            sheet.cells().values().forEach(row -> row.values().forEach(cell -> add(cell.content())));
        }
    }

    private void add(ResultSheet.Content content) {
        if (content instanceof ResultSheet.Value value) {
            add(value.expr());
        } else if (content instanceof ResultSheet.Sentence sentence) {
            for (ResultSheet.Part part : sentence.parts()) {
                Expr figure = part.figure();
                if (figure != null) {
                    add(figure);
                }
            }
        }
    }

    private void add(Expr expr) {
        expr.cells(cell -> {
            if (!cell.ours()) {
                cells.add(key(cell.sheet(), cell.cell()));
            }
        });
    }

    /** Whether a formula refers to a cell; row and column from zero. */
    boolean has(String sheet, int row, int column) {
        return cells.contains(key(sheet, SheetNames.cell(row, column)));
    }

    private static String key(String sheet, String cell) {
        return sheet + "!" + cell;
    }
}
