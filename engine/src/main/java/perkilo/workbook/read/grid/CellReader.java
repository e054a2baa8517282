package perkilo.workbook.read.grid;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;

/** One cell of a workbook: typed, or computed and then with its saved value, or evaluated where none is saved. */
final class CellReader {

    private static final Pattern OTHER_BOOK = Pattern.compile("\\[\\d+]");
    private static final double LAST_DAY = 2_958_466;

    private final XSSFFormulaEvaluator evaluator;
    private final boolean date1904;
    private final boolean linksOut;
    private final int sharedTexts;
    private final Map<String, Boolean> dateFormats = new HashMap<>();

    CellReader(XSSFWorkbook book) {
        this.evaluator = new XSSFFormulaEvaluator(book);
        this.date1904 = book.isDate1904();
        this.linksOut = book.getCTWorkbook().isSetExternalReferences();
        this.sharedTexts = book.getSharedStringSource().getSharedStringItems().size();
    }

    Cell read(XSSFCell cell) {
        return switch (cell.getCellType()) {
            case FORMULA -> formula(cell);
            case STRING -> text(cell);
            case NUMERIC -> saved(cell) ? number(cell, cell.getNumericCellValue()) : Cell.BLANK;
            case BOOLEAN -> Cell.text(cell.getBooleanCellValue() ? "TRUE" : "FALSE");
            case ERROR -> Cell.error(cell.getErrorCellString() + ", an error value");
            default -> Cell.BLANK;
        };
    }

    /** Whether a cell's formula refers to another workbook. */
    boolean isLinked(XSSFCell cell) {
        return linksOut
                && cell.getCellType() == CellType.FORMULA
                && OTHER_BOOK
                        .matcher(String.valueOf(cell.getCTCell().getF().getStringValue()))
                        .find();
    }

    private Cell text(XSSFCell cell) {
        if (cell.getCTCell().getT() == STCellType.S) {
            String index = cell.getCTCell().getV();
            if (!index.matches("\\d{1,9}") || Integer.parseInt(index) >= sharedTexts) {
                return Cell.error("a reference to a text that the workbook does not hold; it is damaged");
            }
        }
        return Cell.text(cell.getStringCellValue());
    }

    private Cell formula(XSSFCell cell) {
        if (!saved(cell)) {
            return evaluated(cell);
        }
        return switch (cell.getCachedFormulaResultType()) {
            case NUMERIC -> number(cell, cell.getNumericCellValue());
            case STRING -> Cell.text(cell.getStringCellValue());
            case BOOLEAN -> Cell.text(cell.getBooleanCellValue() ? "TRUE" : "FALSE");
            case ERROR -> Cell.error(cell.getErrorCellString() + ", an error value");
            default -> Cell.BLANK;
        };
    }

    private static boolean saved(XSSFCell cell) {
        return (cell.getCTCell().isSetV() && !cell.getCTCell().getV().isEmpty()) || savedEmptyText(cell);
    }

    private static boolean savedEmptyText(XSSFCell cell) {
        return cell.getCTCell().isSetV() && cell.getCTCell().getT() == STCellType.STR;
    }

    private Cell evaluated(XSSFCell cell) {
        CellValue value;
        try {
            value = evaluator.evaluate(cell);
        } catch (RuntimeException | StackOverflowError cannot) {
            return Cell.error("a formula without a saved value that cannot be computed here; "
                    + "open the workbook in your spreadsheet program and save it");
        }
        if (value == null) {
            return Cell.BLANK;
        }
        return switch (value.getCellType()) {
            case NUMERIC -> number(cell, value.getNumberValue());
            case STRING -> Cell.text(value.getStringValue());
            case BOOLEAN -> Cell.text(value.getBooleanValue() ? "TRUE" : "FALSE");
            case ERROR -> Cell.error(errorValue(value.getErrorValue()));
            default -> Cell.BLANK;
        };
    }

    private static String errorValue(int code) {
        if (code == ErrorEval.CIRCULAR_REF_ERROR.getErrorCode()) {
            return "a formula that refers to itself";
        }
        return FormulaError.isValidCode(code)
                ? FormulaError.forInt(code).getString() + ", an error value"
                : "an error value";
    }

    private Cell number(XSSFCell cell, double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return Cell.error("a number too large to be meant");
        }
        if (isDate(cell)) {
            return value < 0 || value >= LAST_DAY
                    ? Cell.error("a number in date format that is no day")
                    : Cell.date(DateUtil.getLocalDateTime(value, date1904).toLocalDate());
        }
        return Cell.number(Decimal.shortest(value), format(cell));
    }

    private boolean isDate(XSSFCell cell) {
        short index = cell.getCellStyle().getDataFormat();
        String format = format(cell);
        return dateFormats.computeIfAbsent(index + "|" + format, key -> DateUtil.isADateFormat(index, format));
    }

    private static String format(XSSFCell cell) {
        String format = cell.getCellStyle().getDataFormatString();
        return format == null ? "" : format;
    }
}
