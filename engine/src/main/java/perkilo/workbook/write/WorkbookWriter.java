package perkilo.workbook.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import perkilo.report.Report;
import perkilo.report.ResultSheet;
import perkilo.workbook.author.Links;
import perkilo.workbook.author.ResultPackage;
import perkilo.workbook.splice.BookSplice;
import perkilo.workbook.splice.UnfitPackageException;

/**
 * Writes a report's sheets into a person's workbook.
 *
 * <p>Everything of the person's stays as it is. Sheets of an earlier run are replaced by those of the same name; others
 * stay, as something may refer to them.
 */
public final class WorkbookWriter {

    /**
     * Writes the workbook with the result sheets to another file.
     *
     * @param book the person's workbook, which is not changed
     * @param target where to; what stands there is replaced
     * @throws UnwritableFileException if it can't be written, with the reason in the person's words
     */
    public Written write(Path book, Report report, Path target) throws IOException {
        if (Files.exists(target) && Files.exists(book) && Files.isSameFile(book, target)) {
            throw UnwritableFileException.ofItself(book);
        }
        try (Draft draft = draft(book, report, target)) {
            draft.file().moveToItsPlace();
            return new Written(target, draft.names(), null);
        }
    }

    /**
     * Writes the result sheets into the workbook itself, and keeps what it was beside it.
     *
     * @param today for the name of the backup
     * @throws UnwritableFileException if it can't be written, with the reason in the person's words; then the workbook
     *     is as it was
     */
    public Written writeInPlace(Path book, Report report, LocalDate today) throws IOException {
        try (Draft draft = draft(book, report, book)) {
            Path backup = backup(book, today);
            try {
                draft.file().moveToItsPlace();
            } catch (IOException e) {
                Files.deleteIfExists(backup);
                throw e;
            }
            return new Written(book, draft.names(), backup);
        }
    }

    /**
     * Writes a workbook that holds the result sheets and nothing else.
     *
     * @param report without formulas over a person's own cells
     * @param target where to; what stands there is replaced
     * @throws UnwritableFileException if it can't be written, with the reason in the person's words
     */
    public Written writeAlone(Report report, Path target) throws IOException {
        return writeAlone(report, target, Set.of());
    }

    /**
     * Writes a workbook that holds the result sheets and nothing else, with links to other files.
     *
     * @param report without formulas over a person's own cells
     * @param target where to; what stands there is replaced
     * @param files addresses of other files, as {@link FileAddress} gives them; a cell whose link has such a file leads
     *     there
     * @throws UnwritableFileException if it can't be written, with the reason in the person's words
     */
    public Written writeAlone(Report report, Path target, Set<String> files) throws IOException {
        Map<String, String> names = new LinkedHashMap<>();
        report.sheets().forEach(sheet -> names.put(sheet.name(), sheet.name()));
        ResultPackage results = new ResultPackage(report, new Links("", List.of(), names, files));
        try (StagedFile file = StagedFile.write(target, results::writeTo)) {
            file.moveToItsPlace();
            return new Written(target, names, null);
        }
    }

    private static Path backup(Path book, LocalDate today) throws IOException {
        try {
            return Backup.of(book, today);
        } catch (IOException e) {
            throw FileFaults.explained(book, e);
        }
    }

    /** The complete workbook beside its place. */
    private record Draft(StagedFile file, Map<String, String> names) implements AutoCloseable {

        @Override
        public void close() throws IOException {
            file.close();
        }
    }

    private static Draft draft(Path book, Report report, Path target) throws IOException {
        if (FileFaults.isMissing(book)) {
            throw UnwritableFileException.missing(book);
        }
        try (BookSplice splice = BookSplice.open(book)) {
            checkEnding(target, splice);
            List<String> builtNames =
                    report.sheets().stream().map(ResultSheet::name).toList();
            Map<String, String> names = splice.finalNames(builtNames);
            Links links = new Links(String.valueOf(book.getFileName()), splice.sheetsOfThePerson(), names);
            splice.setIn(new ResultPackage(report, links).parts(), names, report.given());
            return new Draft(StagedFile.write(target, splice::writeTo), names);
        } catch (UnfitPackageException e) {
            throw UnwritableFileException.unfitWorkbook(book, e);
        }
    }

    private static void checkEnding(Path target, BookSplice splice) throws IOException {
        String ending = splice.isMacroWorkbook() ? ".xlsm" : ".xlsx";
        if (!target.toString().toLowerCase(Locale.ROOT).endsWith(ending)) {
            throw UnwritableFileException.wrongEnding(target, ending);
        }
    }
}
