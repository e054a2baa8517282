package perkilo.xlsx.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.xlsx.author.Links;
import perkilo.xlsx.author.ResultPackage;
import perkilo.xlsx.parts.FileStamp;
import perkilo.xlsx.splice.BookSplice;
import perkilo.xlsx.splice.CellChange;
import perkilo.xlsx.splice.ResultRecord;
import perkilo.xlsx.splice.UnfitPackageException;

/**
 * Writes a report's sheets into a person's workbook.
 *
 * <p>The person's sheets stay unchanged. Sheets of an earlier run are replaced by those of the same name; others stay,
 * because a formula may refer to them.
 */
public final class WorkbookWriter {

    /**
     * Writes the workbook with the result sheets to another file.
     *
     * @param book the person's workbook as it was before it was read; the file is not changed
     * @param target the file to write; an old one is replaced, and backed up unless it is an untouched result of the
     *     same kind for the same workbook
     * @throws UnwritableFileException if it cannot be written, with the reason and what to do
     */
    public Written write(FileStamp book, Report report, Path target) throws IOException {
        if (Files.exists(target) && Files.exists(book.file()) && Files.isSameFile(book.file(), target)) {
            throw UnwritableFileException.ofItself(book.file());
        }
        try (Draft draft = draft(book, report, target)) {
            return put(draft, target, keeps(target, draft.subject()), LocalDate.now(ZoneId.systemDefault()));
        }
    }

    /** Writes the workbook, as it is at this moment, with the result sheets to another file. */
    public Written write(Path book, Report report, Path target) throws IOException {
        return write(FileStamp.of(book), report, target);
    }

    /** Writes the result sheets into the workbook, as it is at this moment, and keeps a backup beside it. */
    public Written writeInPlace(Path book, Report report, LocalDate today) throws IOException {
        return writeInPlace(FileStamp.of(book), report, today);
    }

    /** Writes a workbook that holds the result sheets and nothing else, for an answer without a person's workbook. */
    public Written writeAlone(Report report, Path target) throws IOException {
        return writeAlone(report, target, null);
    }

    /**
     * Writes the result sheets into the workbook itself and keeps a backup beside it.
     *
     * @param book the workbook as it was before it was read
     * @param today used in the name of the backup
     * @throws UnwritableFileException if it cannot be written, with the reason and what to do; the workbook is then
     *     unchanged
     */
    public Written writeInPlace(FileStamp book, Report report, LocalDate today) throws IOException {
        try (Draft draft = draft(book, report, book.file())) {
            return put(draft, book.file(), true, today);
        }
    }

    /**
     * Changes cells of the person's own sheets in the workbook itself and keeps a backup beside it.
     *
     * @param book the workbook as it was before it was read
     * @param today used in the name of the backup
     * @throws UnwritableFileException if it cannot be written, with the reason and what to do; the workbook is then
     *     unchanged
     */
    public Written change(FileStamp book, List<CellChange> changes, LocalDate today) throws IOException {
        Path file = book.file();
        try (BookSplice splice = BookSplice.open(file)) {
            splice.change(changes);
            Draft written = new Draft(StagedFile.write(file, splice::writeTo), Map.of(), "", book);
            try (Draft draft = checked(written, splice)) {
                return put(draft, file, true, today);
            }
        } catch (UnfitPackageException e) {
            throw book.isCurrent()
                    ? UnwritableFileException.unfitWorkbook(file, e)
                    : UnwritableFileException.changedMeanwhile(file);
        }
    }

    /**
     * Writes a workbook that holds the result sheets and nothing else.
     *
     * @param report without formulas over a person's own cells
     * @param target the file to write; an old one is replaced, and backed up unless it is an untouched result of the
     *     same kind for the same workbook
     * @param book the person's workbook; null for an answer without one
     * @throws UnwritableFileException if it cannot be written, with the reason and what to do
     */
    public Written writeAlone(Report report, Path target, @Nullable Path book) throws IOException {
        return writeAlone(report, target, book, Set.of());
    }

    /**
     * Writes a workbook that holds the result sheets and nothing else, with links to other files.
     *
     * @param report without formulas over a person's own cells
     * @param target the file to write; an old one is replaced, and backed up unless it is an untouched result of the
     *     same kind for the same workbook
     * @param book the person's workbook; null for an answer without one
     * @param files addresses of other files, in the form of {@link FileAddress}; a cell whose origin is such a file
     *     links to it
     * @throws UnwritableFileException if it cannot be written, with the reason and what to do
     */
    public Written writeAlone(Report report, Path target, @Nullable Path book, Set<String> files) throws IOException {
        Map<String, String> names = new LinkedHashMap<>();
        report.sheets().forEach(sheet -> names.put(sheet.name(), sheet.name()));
        ResultPackage results = new ResultPackage(report, new Links("", List.of(), names, files));
        String subject = subject(report, book);
        Map<String, byte[]> parts = ResultRecord.into(results.parts(), subject);
        try (Draft draft =
                new Draft(StagedFile.write(target, out -> ResultPackage.write(parts, out)), names, subject, null)) {
            if (!ResultRecord.isUntouched(draft.file().draft(), subject)) {
                throw UnwritableFileException.notReadable(target);
            }
            return put(draft, target, keeps(target, subject), LocalDate.now(ZoneId.systemDefault()));
        }
    }

    /**
     * The bytes of a workbook that holds the result sheets and nothing else; the same report gives the same bytes.
     *
     * @param report without formulas over a person's own cells
     */
    public byte[] alone(Report report) throws IOException {
        Map<String, String> names = new LinkedHashMap<>();
        report.sheets().forEach(sheet -> names.put(sheet.name(), sheet.name()));
        ResultPackage results = new ResultPackage(report, new Links("", List.of(), names, Set.of()));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ResultPackage.write(results.parts(), bytes);
        return bytes.toByteArray();
    }

    private static String subject(Report report, @Nullable Path book) {
        String first = report.sheets().isEmpty() ? "" : report.sheets().get(0).name();
        return ResultRecord.subject(first, book);
    }

    /** Whether an old file needs a backup: any file does, except an untouched result of an earlier run. */
    private static boolean keeps(Path target, String subject) {
        return Files.exists(target) && !ResultRecord.isUntouched(target, subject);
    }

    private static Written put(Draft draft, Path target, boolean keeps, LocalDate today) throws IOException {
        Path backup = keeps ? backup(target, today) : null;
        try {
            FileStamp book = draft.book();
            if (book != null && !book.isCurrent()) {
                throw UnwritableFileException.changedMeanwhile(book.file());
            }
            draft.file().moveToItsPlace();
        } catch (IOException e) {
            if (backup != null) {
                Files.deleteIfExists(backup);
            }
            throw e;
        }
        return new Written(target, draft.names(), backup);
    }

    private static Path backup(Path book, LocalDate today) throws IOException {
        try {
            return Backup.of(book, today);
        } catch (IOException e) {
            throw FileFaults.explained(book, e);
        }
    }

    /**
     * The complete workbook beside its place.
     *
     * @param subject the answer and the workbook that it is the result of
     * @param book the workbook that it was made from; null for none
     */
    private record Draft(
            StagedFile file,
            Map<String, String> names,
            String subject,
            @Nullable FileStamp book) implements AutoCloseable {

        @Override
        public void close() throws IOException {
            file.close();
        }
    }

    private static Draft draft(FileStamp stamp, Report report, Path target) throws IOException {
        Path book = stamp.file();
        if (FileFaults.isMissing(book)) {
            throw UnwritableFileException.missing(book);
        }
        try (BookSplice splice = BookSplice.open(book)) {
            checkEnding(target, splice);
            List<String> builtNames =
                    report.sheets().stream().map(ResultSheet::name).toList();
            report.renewed().forEach(splice::takeOver);
            Map<String, String> names = splice.finalNames(builtNames);
            Links links = new Links(String.valueOf(book.getFileName()), splice.sheetsOfThePerson(), names);
            String subject = subject(report, book);
            splice.setIn(new ResultPackage(report, links).parts(), names, report.given(), report.records(), subject);
            Draft draft = new Draft(StagedFile.write(target, splice::writeTo), names, subject, stamp);
            return checked(draft, splice);
        } catch (UnfitPackageException e) {
            throw stamp.isCurrent()
                    ? UnwritableFileException.unfitWorkbook(book, e)
                    : UnwritableFileException.changedMeanwhile(book);
        }
    }

    private static Draft checked(Draft draft, BookSplice splice) throws IOException {
        try {
            splice.check(draft.file().draft());
            return draft;
        } catch (IOException e) {
            draft.close();
            throw e;
        }
    }

    private static void checkEnding(Path target, BookSplice splice) throws IOException {
        String ending = splice.isMacroWorkbook() ? ".xlsm" : ".xlsx";
        if (!target.toString().toLowerCase(Locale.ROOT).endsWith(ending)) {
            throw UnwritableFileException.wrongEnding(target, ending);
        }
    }
}
