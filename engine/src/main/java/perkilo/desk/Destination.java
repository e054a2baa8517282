package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Report;
import perkilo.xlsx.parts.FileStamp;
import perkilo.xlsx.write.WorkbookWriter;
import perkilo.xlsx.write.Written;

/**
 * The place for result sheets.
 *
 * @param out the workbook to write, or the folder if there are several; null for a file beside the person's workbook
 * @param inPlace whether they go into the person's workbook itself, of which a backup is kept
 * @param sheetOnly whether the result has no sheets of the person's workbook
 */
public record Destination(@Nullable Path out, boolean inPlace, boolean sheetOnly) {

    /** Into a copy beside the person's workbook. */
    public static final Destination USUAL = new Destination(null, false, false);

    /** The ending of a file name for costs. */
    public static final String COSTED = "-costed";

    /** The ending of a file name for a plan of orders. */
    public static final String ORDERED = "-ordered";

    /** The ending of a file name for swaps. */
    public static final String SWAPPED = "-swapped";

    /** The ending of a file name for a workbook with the sheet Reading. */
    public static final String REVIEW = "-review";

    /** The ending of a file name for comparisons. */
    public static final String COMPARED = "-compared";

    /** The ending of a file name for target costs. */
    public static final String TARGET = "-target";

    /** The ending of a file name for price changes. */
    public static final String PRICES = "-prices";

    /**
     * Writes the result sheets of one book.
     *
     * @param book the person's workbook as it was before it was read
     * @param suffix the ending for its name, such as {@link #COSTED}
     * @param today the day for the name of the backup
     * @return what was written
     * @throws IOException whose message is a sentence for a person
     */
    public Written write(FileStamp book, String suffix, Report report, LocalDate today) throws IOException {
        Path file = book.file();
        Path target = inPlace ? file : or(file.resolveSibling(resultName(file, suffix)));
        return writeTo(target, book, report, today);
    }

    /**
     * Writes result sheets that belong to no workbook.
     *
     * @param usual the file if none was named
     * @throws IOException whose message is a sentence for a person
     */
    public Written writeAlone(Report report, Path usual) throws IOException {
        return new WorkbookWriter().writeAlone(report.alone(), or(usual), null);
    }

    /** The file for the result of one of several books. */
    Path targetAmongSeveral(Path book, String suffix) {
        if (inPlace) {
            return book;
        }
        String name = resultName(book, suffix);
        return out == null ? book.resolveSibling(name) : out.resolve(name);
    }

    Written writeTo(Path target, FileStamp book, Report report, LocalDate today) throws IOException {
        WorkbookWriter writer = new WorkbookWriter();
        if (!sheetOnly) {
            return inPlace
                    ? writer.writeInPlace(book, EarlierMessages.beside(report, book.file()), today)
                    : writer.write(book, EarlierMessages.beside(report, book.file()), target);
        }
        return writer.writeAlone(report.alone(), target, book.file());
    }

    private Path or(Path usual) {
        return out == null ? usual : out;
    }

    private String resultName(Path book, String suffix) {
        String name = String.valueOf(book.getFileName());
        int dot = name.lastIndexOf('.');
        String stem = dot < 0 ? name : name.substring(0, dot);
        String ending = dot < 0 || sheetOnly ? ".xlsx" : name.substring(dot);
        return stem + suffix + ending;
    }
}
