package perkilo.workbook.write;

import java.util.Map;
import java.util.SortedMap;
import java.util.function.UnaryOperator;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;
import perkilo.origin.Origin;
import perkilo.report.Decimals;
import perkilo.report.Expr;
import perkilo.report.Look;
import perkilo.report.ResultSheet;
import perkilo.report.ResultSheet.Cell;

/** The cells of one sheet: words inline, numbers, and formulas with their values. */
final class SheetCells {

    /** The longest formula that office suites read. */
    private static final int LONGEST_FORMULA = 8192;

    private final XSSFSheet target;
    private final ResultSheet sheet;
    private final CellStyles styles;
    private final Links links;
    private final UnaryOperator<String> names;
    private final TextFit fit;

    SheetCells(XSSFSheet target, ResultSheet sheet, CellStyles styles, Links links, UnaryOperator<String> names) {
        this.target = target;
        this.sheet = sheet;
        this.styles = styles;
        this.links = links;
        this.names = names;
        this.fit = new TextFit(sheet);
    }

    void write() {
        for (Map.Entry<Integer, SortedMap<Integer, Cell>> row : sheet.cells().entrySet()) {
            XSSFRow targetRow = target.createRow(row.getKey());
            row.getValue().forEach((column, cell) -> write(targetRow.createCell(column), cell));
            fit.height(row.getKey()).ifPresent(targetRow::setHeightInPoints);
        }
    }

    private void write(XSSFCell target, Cell cell) {
        target.setCellStyle(styles.style(styleKey(target.getRowIndex(), target.getColumnIndex(), cell)));
        fill(target.getCTCell(), cell.content());
        link(target, cell);
    }

    private CellStyles.Key styleKey(int row, int column, Cell cell) {
        boolean quoted = cell.content() instanceof ResultSheet.Text text && CellText.looksLikeFormula(text.text());
        Origin place = cell.link();
        boolean linked = place != null && links.lead(place);
        return new CellStyles.Key(
                cell.look(), cell.format(), quoted, fit.isWrapped(row, column), linked, placeOf(row, column, cell));
    }

    private CellStyles.Place placeOf(int row, int column, Cell cell) {
        if (!(cell.content() instanceof ResultSheet.Text)) {
            return CellStyles.Place.USUAL;
        }
        if (cell.look() == Look.HEADER && fit.standsOverNumbers(row, column)) {
            return CellStyles.Place.RIGHT;
        }
        return fit.followsNumber(row, column) ? CellStyles.Place.INDENTED : CellStyles.Place.USUAL;
    }

    private void fill(CTCell target, ResultSheet.Content content) {
        if (content instanceof ResultSheet.Text text) {
            target.setT(STCellType.INLINE_STR);
            target.setIs(new XSSFRichTextString(CellText.storable(text.text())).getCTRst());
        } else if (content instanceof ResultSheet.Value value) {
            fill(target, value.expr());
        } else if (content instanceof ResultSheet.Sentence sentence) {
            target.addNewF().setStringValue(sentence.formula(names));
            target.setT(STCellType.STR);
            target.setV(CellText.storable(sentence.text()));
        }
    }

    private void fill(CTCell target, Expr expr) {
        if (expr.isLive()) {
            String formula = expr.formula(names);
            if (formula.length() <= LONGEST_FORMULA) {
                target.addNewF().setStringValue(formula);
            }
        }
        target.setV(Decimals.plain(expr.value()));
    }

    private void link(XSSFCell target, Cell cell) {
        Origin place = cell.link();
        if (place == null || !links.lead(place)) {
            return;
        }
        links.locationOf(place).ifPresentOrElse(location -> link(target, location), () -> linkToFile(target, place));
    }

    private static void link(XSSFCell target, String location) {
        XSSFHyperlink link = newLink(target, HyperlinkType.DOCUMENT);
        link.setAddress(location);
        target.setHyperlink(link);
    }

    private static void linkToFile(XSSFCell target, Origin place) {
        XSSFHyperlink link = newLink(target, HyperlinkType.FILE);
        link.setAddress(place.file());
        Links.locationInFile(place).ifPresent(link::setLocation);
        target.setHyperlink(link);
    }

    private static XSSFHyperlink newLink(XSSFCell target, HyperlinkType type) {
        return target.getSheet().getWorkbook().getCreationHelper().createHyperlink(type);
    }
}
