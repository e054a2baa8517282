package perkilo.workbook.read.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTSheet;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.workbook.schema.Schemas;

/** The visible sheets of an open workbook, as grids. */
final class WorkbookSheets {

    private final String file;
    private final XSSFWorkbook book;
    private final boolean ofBook;
    private final CellReader cells;
    private final List<Grid> grids = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    WorkbookSheets(String file, XSSFWorkbook book, boolean ofBook) {
        this.file = file;
        this.book = book;
        this.ofBook = ofBook;
        this.cells = new CellReader(book);
    }

    Grids read() {
        for (CTSheet listed : book.getCTWorkbook().getSheets().getSheetArray()) {
            if (book.getSheet(listed.getName()) == null) {
                findings.add(Finding.error(
                        new Origin(file, listed.getName(), ""),
                        "the workbook lists this sheet but does not hold it; it is damaged, take a fresh copy of it"));
            }
        }
        for (int i = 0; i < book.getNumberOfSheets(); i++) {
            XSSFSheet sheet = book.getSheetAt(i);
            if (isOurs(i)) {
                continue;
            }
            if (book.getSheetVisibility(i) == SheetVisibility.VISIBLE) {
                grids.add(grid(sheet));
            } else if (sheet.getPhysicalNumberOfRows() > 0) {
                findings.add(HiddenParts.sheet(file, sheet.getSheetName()));
            }
        }
        return new Grids(grids, findings);
    }

    /** Whether a sheet holds results of an earlier run, even under another name. */
    private boolean isOurs(int sheet) {
        return book.getNames(Schemas.RESULT_MARK).stream().anyMatch(name -> name.getSheetIndex() == sheet);
    }

    private Grid grid(XSSFSheet sheet) {
        NavigableMap<Integer, NavigableMap<Integer, Cell>> rows = new TreeMap<>();
        TreeSet<Integer> hidden = new TreeSet<>();
        List<Origin> linked = new ArrayList<>();
        for (Row row : sheet) {
            NavigableMap<Integer, Cell> columns = columns(row, sheet, linked);
            if (columns.isEmpty()) {
                continue;
            }
            if (row.getZeroHeight()) {
                hidden.add(row.getRowNum() + 1);
            } else {
                rows.put(row.getRowNum(), columns);
            }
        }
        report(sheet, hidden, linked);
        return new Grid(file, sheet.getSheetName(), sheet.getSheetName(), rows, merged(sheet), new TreeMap<>(), ofBook);
    }

    private NavigableMap<Integer, Cell> columns(Row row, XSSFSheet sheet, List<Origin> linked) {
        NavigableMap<Integer, Cell> columns = new TreeMap<>();
        for (org.apache.poi.ss.usermodel.Cell each : row) {
            XSSFCell cell = (XSSFCell) each;
            Cell read = cells.read(cell);
            if (!read.isBlank()) {
                columns.put(cell.getColumnIndex(), read);
            }
            if (cells.isLinked(cell)) {
                linked.add(new Origin(file, sheet.getSheetName(), cell.getReference()));
            }
        }
        return columns;
    }

    private void report(XSSFSheet sheet, SortedSet<Integer> hidden, List<Origin> linked) {
        if (!hidden.isEmpty()) {
            findings.add(HiddenParts.rows(new Origin(file, sheet.getSheetName(), ""), hidden));
        }
        if (!linked.isEmpty()) {
            String others = linked.size() == 1 ? "" : " (and %d more cells here)".formatted(linked.size() - 1);
            findings.add(Finding.warning(
                    linked.get(0),
                    "the formula refers to another workbook%s; the value that was last saved is used"
                            .formatted(others)));
        }
    }

    private static List<Grid.Block> merged(XSSFSheet sheet) {
        return sheet.getMergedRegions().stream().map(WorkbookSheets::block).toList();
    }

    private static Grid.Block block(CellRangeAddress range) {
        return new Grid.Block(range.getFirstRow(), range.getLastRow(), range.getFirstColumn(), range.getLastColumn());
    }
}
