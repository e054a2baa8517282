package perkilo.xlsx.splice;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import perkilo.xlsx.splice.WorkbookPart.Tab;

/** Whether a file is nothing but a result of an earlier run, so that nothing of a person's is lost with it. */
public final class EarlierResult {

    /** Whoever saves a workbook says on each sheet how far it reaches; we don't. */
    private static final String OTHERS_WRITE = "<dimension";

    /** Office suites put texts into a table of the workbook when they save; ours stand in their cells. */
    private static final String WE_WRITE = "t=\"inlineStr\"";

    private EarlierResult() {}

    /**
     * Whether the file is as a run has left it: it has sheets of ours, no other program has saved it since, and its
     * other sheets are those of the book.
     *
     * @param file may be anything
     * @param sheetsOfTheBook what the sheets are called that the result may have from the person's workbook
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
            return false; // whatever it is, it is no result of ours
        }
    }

    private static boolean isAsWeWrite(BookPackage book, String part) throws IOException {
        String sheet = new String(book.bytes(part), UTF_8);
        return sheet.contains(WE_WRITE) && !sheet.contains(OTHERS_WRITE);
    }
}
