package perkilo;

import org.apache.poi.ss.formula.eval.FunctionEval;
import org.apache.poi.ss.formula.eval.StringEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.Function;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * The function CELL, which Apache POI's evaluator lacks: it says that a cell is in no special format. Cells in per cent
 * format are recalculated by an office suite.
 */
public final class CellFunction implements BeforeAllCallback {

    private static boolean added;

    /** Adds the function, if it is not there yet. */
    public static synchronized void add() {
        if (!added) {
            Function general = (ValueEval[] arguments, int row, int column) -> new StringEval("G");
            FunctionEval.registerFunction("CELL", general);
            added = true;
        }
    }

    /** Puts zero in the place of formulas over whole columns, which the evaluator lacks too. */
    public static XSSFWorkbook withoutComparisons(XSSFWorkbook book) {
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA
                            && cell.getCellFormula().contains("SUMPRODUCT")) {
                        cell.setCellFormula("0");
                    }
                }
            }
        }
        return book;
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        add();
    }
}
