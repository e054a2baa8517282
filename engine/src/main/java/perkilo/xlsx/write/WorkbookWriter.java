package perkilo.xlsx.write;

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
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.xlsx.author.Links;
import perkilo.xlsx.author.ResultPackage;
import perkilo.xlsx.splice.BookSplice;
import perkilo.xlsx.splice.EarlierResult;
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
     * @param book the person's workbook, which is not changed
     * @param target the file to write; an old one is replaced, and backed up unless it is an earlier result
     * @throws UnwritableFileException if it cannot be written, with the reason and what to do
     */
    public Written write(Path book, Report report, Path target) throws IOException {
        if (Files.exists(target) && Files.exists(book) && Files.isSameFile(book, target)) {
            throw UnwritableFileException.ofItself(book);
        }
        try (Draft draft = draft(book, report, target)) {
            return put(draft, target, keeps(target, draft.sheetsOfThePerson()), LocalDate.now(ZoneId.systemDefault()));
        }
    }

    /**
     * Writes the result sheets into the workbook itself and keeps a backup beside it.
     *
     * @param today used in the name of the backup
     * @throws UnwritableFileException if it cannot be written, with the reason and what to do; the workbook is then
     *     unchanged
     */
    public Written writeInPlace(Path book, Report report, LocalDate today) throws IOException {
        try (Draft draft = draft(book, report, book)) {
            return put(draft, book, true, today);
        }
    }

    /**
     * Writes a workbook that holds the result sheets and nothing else.
     *
     * @param report without formulas over a person's own cells
     * @param target the file to write; an old one is replaced, and backed up unless it is an earlier result
     * @throws UnwritableFileException if it cannot be written, with the reason and what to do
     */
    public Written writeAlone(Report report, Path target) throws IOException {
        return writeAlone(report, target, Set.of());
    }

    /**
     * Writes a workbook that holds the result sheets and nothing else, with links to other files.
     *
     * @param report without formulas over a person's own cells
     * @param target the file to write; an old one is replaced, and backed up unless it is an earlier result
     * @param files addresses of other files, in the form of {@link FileAddress}; a cell whose origin is such a file
     *     links to it
     * @throws UnwritableFileException if it cannot be written, with the reason and what to do
     */
    public Written writeAlone(Report report, Path target, Set<String> files) throws IOException {
        Map<String, String> names = new LinkedHashMap<>();
        report.sheets().forEach(sheet -> names.put(sheet.name(), sheet.name()));
        ResultPackage results = new ResultPackage(report, new Links("", List.of(), names, files));
        try (Draft draft = new Draft(StagedFile.write(target, results::writeTo), names, List.of())) {
            return put(draft, target, keeps(target, List.of()), LocalDate.now(ZoneId.systemDefault()));
        }
    }

    /** Whether an old file needs a backup: any file does, except an unchanged result of an earlier run. */
    private static boolean keeps(Path target, List<String> sheetsOfTheBook) {
        return Files.exists(target) && !EarlierResult.is(target, sheetsOfTheBook);
    }

    private static Written put(Draft draft, Path target, boolean keeps, LocalDate today) throws IOException {
        Path backup = keeps ? backup(target, today) : null;
        try {
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

    /** The complete workbook beside its place. */
    private record Draft(StagedFile file, Map<String, String> names, List<String> sheetsOfThePerson)
            implements AutoCloseable {

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
            return new Draft(StagedFile.write(target, splice::writeTo), names, splice.sheetsOfThePerson());
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
