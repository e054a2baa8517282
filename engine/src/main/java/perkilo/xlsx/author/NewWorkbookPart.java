package perkilo.xlsx.author;

import java.util.List;
import java.util.function.UnaryOperator;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetNames;

/** The workbook part: the list of sheets, with the defined names that filters and printing need. */
final class NewWorkbookPart {

    private final List<ResultSheet> sheets;
    private final UnaryOperator<String> names;
    private final PartXml xml =
            new PartXml("workbook", "xmlns", StandardNames.MAIN, "xmlns:r", StandardNames.RELATIONSHIPS);

    private NewWorkbookPart(List<ResultSheet> sheets, UnaryOperator<String> names) {
        this.sheets = sheets;
        this.names = names;
    }

    /**
     * The part.
     *
     * @param sheets in their order; the workbook's first relationships lead to them
     * @param names the final name of each sheet
     */
    static byte[] xml(List<ResultSheet> sheets, UnaryOperator<String> names) {
        return new NewWorkbookPart(sheets, names).xml();
    }

    private byte[] xml() {
        xml.open("bookViews").leaf("workbookView", "activeTab", 0).close();
        xml.open("sheets");
        for (int i = 0; i < sheets.size(); i++) {
            xml.open("sheet", "name", nameOf(i), "sheetId", i + 1);
            if (sheets.get(i).layout().hidden()) {
                xml.set("state", "hidden");
            }
            xml.set("r:id", "rId" + (i + 1)).close();
        }
        xml.close();
        if (sheets.stream().anyMatch(NewWorkbookPart::hasNames)) {
            xml.open("definedNames");
            for (int i = 0; i < sheets.size(); i++) {
                names(i, sheets.get(i));
            }
            xml.close();
        }
        return xml.leaf("calcPr", "fullCalcOnLoad", true).bytes();
    }

    private String nameOf(int sheet) {
        return names.apply(sheets.get(sheet).name());
    }

    private static boolean hasNames(ResultSheet sheet) {
        return sheet.layout().filter() != null
                || sheet.layout().pages() != null
                || sheet.layout().frozenRows() > 0
                || sheet.layout().repeatedRow() != null;
    }

    private void names(int place, ResultSheet sheet) {
        String before = SheetNames.quoted(nameOf(place)) + "!";
        String filter = sheet.layout().filter();
        if (filter != null) {
            xml.words(
                    "definedName",
                    before + CellRange.of(filter).absolute(),
                    "name",
                    "_xlnm._FilterDatabase",
                    "localSheetId",
                    place,
                    "hidden",
                    true);
        }
        ResultSheet.Pages pages = sheet.layout().pages();
        if (pages != null) {
            String columns = before + "$A:$" + SheetNames.column(pages.headColumns() - 1);
            String headRow = "$" + (pages.headRow() + 1);
            String rows = before + headRow + ":" + headRow;
            name("_xlnm.Print_Titles", place, columns + "," + rows);
            name(
                    "_xlnm.Print_Area",
                    place,
                    before + new CellRange(0, 0, pages.lastRow(), pages.lastColumn()).absolute());
        } else if (sheet.layout().frozenRows() > 0) {
            name("_xlnm.Print_Titles", place, before + "$1:$" + sheet.layout().frozenRows());
        } else {
            Integer repeated = sheet.layout().repeatedRow();
            if (repeated != null) {
                String row = "$" + (repeated + 1);
                name("_xlnm.Print_Titles", place, before + row + ":" + row);
            }
        }
    }

    private void name(String name, int place, String meaning) {
        xml.words("definedName", meaning, "name", name, "localSheetId", place);
    }
}
