package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Report;
import perkilo.xlsx.write.WorkbookWriter;
import perkilo.xlsx.write.Written;

/**
 * Where result sheets go.
 *
 * @param out the workbook to write, or the folder where there are several; null for beside the person's workbook
 * @param inPlace whether they go into the person's workbook itself, of which a backup is kept
 * @param sheetOnly whether they stand alone, without the person's own sheets
 */
public record Destination(@Nullable Path out, boolean inPlace, boolean sheetOnly) {

    /** Into a copy beside the person's workbook. */
    public static final Destination USUAL = new Destination(null, false, false);

    /** What costs add to a workbook's name. */
    public static final String COSTED = "-costed";

    /** What a plan of orders adds to a workbook's name. */
    public static final String ORDERED = "-ordered";

    /** What swaps add to a workbook's name. */
    public static final String SWAPPED = "-swapped";

    /** What price changes add to a workbook's name. */
    public static final String PRICES = "-prices";

    /**
     * Writes the result sheets of one book.
     *
     * @param book the person's workbook
     * @param suffix what is added to its name, such as {@link #COSTED}
     * @param today names the backup
     * @return what was written
     * @throws IOException whose message is a sentence for a person
     */
    public Written write(Path book, String suffix, Report report, LocalDate today) throws IOException {
        Path target = inPlace ? book : or(book.resolveSibling(resultName(book, suffix)));
        return writeTo(target, book, report, today);
    }

    /**
     * Writes result sheets that are of no workbook.
     *
     * @param usual the file where none was asked for
     * @throws IOException whose message is a sentence for a person
     */
    public Written writeAlone(Report report, Path usual) throws IOException {
        return new WorkbookWriter().writeAlone(report.alone(), or(usual));
    }

    /** The file for the result of one of several books. */
    Path targetAmongSeveral(Path book, String suffix) {
        if (inPlace) {
            return book;
        }
        String name = resultName(book, suffix);
        return out == null ? book.resolveSibling(name) : out.resolve(name);
    }

    Written writeTo(Path target, Path book, Report report, LocalDate today) throws IOException {
        WorkbookWriter writer = new WorkbookWriter();
        if (sheetOnly) {
            return writer.writeAlone(report.alone(), target);
        }
        return inPlace ? writer.writeInPlace(book, report, today) : writer.write(book, report, target);
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
