package perkilo.sheet;

import java.math.BigDecimal;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import perkilo.CellFunction;

/** A scratch workbook that computes formulas like a spreadsheet: with Apache POI's evaluator, in binary fractions. */
final class Sheets {

    static {
        CellFunction.add();
    }

    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final Cell scratch = workbook.createSheet("scratch").createRow(0).createCell(0);

    /** Types a number into a cell. */
    void type(String sheet, String cell, BigDecimal number) {
        cell(sheet, cell).setCellValue(number.doubleValue());
    }

    /** Types words into a cell. */
    void type(String sheet, String cell, String words) {
        cell(sheet, cell).setCellValue(words);
    }

    private Cell cell(String sheet, String cell) {
        CellReference at = new CellReference(cell);
        Sheet target = workbook.getSheet(sheet) == null ? workbook.createSheet(sheet) : workbook.getSheet(sheet);
        Row row = target.getRow(at.getRow()) == null ? target.createRow(at.getRow()) : target.getRow(at.getRow());
        return row.createCell(at.getCol());
    }

    /** The value of a figure's formula. */
    double compute(Expr expr) {
        return compute(expr.formula(name -> name));
    }

    /** The value of a formula. */
    double compute(String formula) {
        scratch.setCellFormula(formula);
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        CellValue value = evaluator.evaluate(scratch);
        if (value.getCellType() != CellType.NUMERIC) {
            throw new AssertionError(formula + " gives " + value.formatAsString());
        }
        return value.getNumberValue();
    }
}
