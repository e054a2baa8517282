package perkilo.xlsx.grid;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/**
 * Reads XLSX and XLSM workbooks part by part, each in one pass. Only the cells are kept in memory, and the person's
 * file is never opened for writing.
 */
final class WorkbookFile {

    private final Path file;
    private final PackageParts parts;
    private final List<Grid> grids = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Grids.Other> others = new ArrayList<>();

    private WorkbookFile(Path file, PackageParts parts) {
        this.file = file;
        this.parts = parts;
    }

    /**
     * The sheets of a workbook.
     *
     * @param ofBook whether formulas in the results can refer to its cells
     * @throws UnreadableFileException if it cannot be opened
     */
    static Grids read(Path file, boolean ofBook) throws IOException {
        try (PackageParts parts = PackageParts.open(file)) {
            WorkbookFile book = new WorkbookFile(file, parts);
            book.read(OtherPackages.refuse(file, parts), ofBook);
            return new Grids(book.grids, book.findings, book.others);
        }
    }

    /** The result sheets of earlier runs whose names begin like this. */
    static List<Grid> results(Path file, String name) throws IOException {
        try (PackageParts parts = PackageParts.open(file)) {
            WorkbookFile book = new WorkbookFile(file, parts);
            BookIndex index = BookIndex.of(parts, OtherPackages.refuse(file, parts));
            List<BookIndex.Sheet> ours = index.sheets().stream()
                    .filter(sheet -> sheet.ours() && sheet.name().startsWith(name) && parts.has(sheet.part()))
                    .toList();
            if (!ours.isEmpty()) {
                CellMaker maker = new CellMaker(
                        SharedTexts.of(parts, index.texts()),
                        NumberFormats.of(parts, index.styles()),
                        index.date1904());
                SavedValues saved = SavedValues.of(parts, index);
                try (MissingValues missing = new MissingValues(file, 0)) {
                    for (BookIndex.Sheet sheet : ours) {
                        book.read(sheet, new SheetReader(file, sheet.name(), maker, missing, saved, false, false));
                    }
                }
            }
            return book.grids;
        }
    }

    private void read(String part, boolean ofBook) throws IOException {
        BookIndex index = BookIndex.of(parts, part);
        CellMaker maker = new CellMaker(
                SharedTexts.of(parts, index.texts()), NumberFormats.of(parts, index.styles()), index.date1904());
        long bytes = index.sheets().stream()
                .mapToLong(sheet -> parts.size(sheet.part()))
                .sum();
        SavedValues saved = SavedValues.of(parts, index);
        try (MissingValues missing = new MissingValues(file, bytes)) {
            sheets(index, maker, missing, saved, ofBook);
            if (saved.areNothingButZeros()) {
                grids.clear();
                findings.clear();
                others.clear();
                sheets(index, maker, missing, saved.doubted(), ofBook);
            }
        }
    }

    private void sheets(BookIndex index, CellMaker maker, MissingValues missing, SavedValues saved, boolean ofBook)
            throws IOException {
        for (BookIndex.Sheet sheet : index.sheets()) {
            if (!parts.has(sheet.part())) {
                findings.add(Finding.error(origin(sheet), FileMessages.noSheet()));
                leaveOut(sheet, Grids.Why.MISSING);
            } else if (sheet.ours()) {
                leaveOut(sheet, Grids.Why.RESULT);
            } else {
                read(sheet, new SheetReader(file, sheet.name(), maker, missing, saved, index.linksOut(), ofBook));
            }
        }
    }

    private void read(BookIndex.Sheet sheet, SheetReader reader) throws IOException {
        try (Xml xml = parts.xml(sheet.part())) {
            if (sheet.visible()) {
                grids.add(reader.read(xml, findings));
                return;
            }
            leaveOut(sheet, Grids.Why.HIDDEN);
            if (holdsAnything(xml)) {
                findings.add(Finding.warning(origin(sheet), FileMessages.hiddenSheet()));
            }
        }
    }

    private void leaveOut(BookIndex.Sheet sheet, Grids.Why why) {
        others.add(new Grids.Other(origin(sheet), why));
    }

    private static boolean holdsAnything(Xml xml) throws IOException {
        while (xml.nextElement()) {
            if (xml.isAt("v") || xml.isAt("is") || xml.isAt("f")) {
                return true;
            }
        }
        return false;
    }

    private Origin origin(BookIndex.Sheet sheet) {
        return new Origin(String.valueOf(file.getFileName()), sheet.name(), "");
    }
}
