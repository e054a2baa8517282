package perkilo.xlsx.splice;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import perkilo.xlsx.splice.WorkbookPart.Tab;

/**
 * Recognises files that are only the result of an earlier run, so that nothing of the person's is lost when they are
 * replaced.
 */
public final class EarlierResult {

    /** Other programs write the extent of each sheet when they save; we don't. */
    private static final String OTHERS_WRITE = "<dimension";

    /** Office suites move texts into a shared part when they save; we write them into their cells. */
    private static final String WE_WRITE = "t=\"inlineStr\"";

    private EarlierResult() {}

    /**
     * Whether the file is as a run left it: it has result sheets, no other program has saved it since, and its other
     * sheets are those of the person's workbook.
     *
     * @param file any file
     * @param sheetsOfTheBook the names of the sheets that the result may have from the person's workbook
     */
    public static boolean is(Path file, Collection<String> sheetsOfTheBook) {
        try (BookPackage book = BookPackage.open(file)) {
            WorkbookPart workbook = WorkbookPart.of(book);
            WorkbookRelationships parts = new WorkbookRelationships(book, workbook.part(), workbook.dialect());
            int ours = 0;
            for (Tab tab : workbook.tabs()) {
                if (!sheetsOfTheBook.contains(tab.name())) {
                    String part = parts.target(tab.reference()).orElse("");
                    if (!isAsWeWrite(book, part)) {
                        return false;
                    }
                    ours++;
                }
            }
            return ours > 0;
        } catch (IOException e) {
            return false; // not a workbook, so not a result
        }
    }

    private static boolean isAsWeWrite(BookPackage book, String part) throws IOException {
        String sheet = new String(book.bytes(part), UTF_8);
        return sheet.contains(WE_WRITE) && !sheet.contains(OTHERS_WRITE);
    }
}
