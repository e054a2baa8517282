package perkilo.xlsx.write;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.List;
import java.util.Locale;
import perkilo.xlsx.splice.UnfitPackageException;

/** Finds out why a file cannot be written. */
final class FileFaults {

    private static final List<String> DISK_FULL =
            List.of("no space left", "not enough space", "disk quota", "disk full", "file too large");

    private static final List<String> OPEN_ELSEWHERE = List.of("used by another process", "locked a portion");

    private static final List<String> LONG_NAME = List.of("name too long", "filename or extension is too long");

    private FileFaults() {}

    /**
     * Refuses a target, before anything is written, if writing would fail or do harm.
     *
     * @param target as the person typed it
     * @param place the target's real place
     */
    static void refuse(Path target, Path place) throws UnwritableFileException {
        Path folder = place.getParent();
        Path name = place.getFileName();
        if (folder == null || name == null || !Files.isDirectory(folder)) {
            throw UnwritableFileException.noFolder(target);
        }
        boolean openInLibreOffice = Files.exists(folder.resolve(".~lock." + name + "#"));
        boolean openInExcel = Files.exists(folder.resolve("~$" + name));
        if (openInLibreOffice || openInExcel) {
            throw UnwritableFileException.openElsewhere(target, null);
        }
        if (Files.exists(place) && !Files.isWritable(place)) {
            throw UnwritableFileException.notAllowed(target, new AccessDeniedException(place.toString()));
        }
    }

    static IOException explained(Path target, Exception fault) {
        if (fault instanceof UnwritableFileException || fault instanceof UnfitPackageException) {
            return (IOException) fault;
        }
        String message = String.valueOf(fault.getMessage()).toLowerCase(Locale.ROOT);
        if (DISK_FULL.stream().anyMatch(message::contains)) {
            return UnwritableFileException.diskFull(target, fault);
        }
        if (LONG_NAME.stream().anyMatch(message::contains)) {
            return UnwritableFileException.longName(target, fault);
        }
        if (OPEN_ELSEWHERE.stream().anyMatch(message::contains)) {
            return UnwritableFileException.openElsewhere(target, fault);
        }
        if (fault instanceof AccessDeniedException || fault instanceof ReadOnlyFileSystemException) {
            return UnwritableFileException.notAllowed(target, fault);
        }
        return UnwritableFileException.because(target, fault);
    }

    /** Whether a file is missing. */
    static boolean isMissing(Path file) {
        return !Files.isRegularFile(file);
    }
}
