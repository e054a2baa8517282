package perkilo.xlsx.write;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** A file that can't be written; the message is a sentence for the person, with what to do. */
public final class UnwritableFileException extends IOException {

    private static final long serialVersionUID = 1L;

    private UnwritableFileException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }

    private UnwritableFileException(String message) {
        super(message);
    }

    static UnwritableFileException unfitWorkbook(Path book, IOException cause) {
        return new UnwritableFileException("%s %s.".formatted(book, cause.getMessage()), cause);
    }

    static UnwritableFileException ofItself(Path book) {
        return new UnwritableFileException(
                "%s would be replaced by its own result; give the result another name, or write it in place, which keeps a backup."
                        .formatted(book));
    }

    static UnwritableFileException wrongEnding(Path target, String ending) {
        return new UnwritableFileException(
                "%s must end in %s, as the workbook does; office suites open it under no other ending."
                        .formatted(target, ending));
    }

    static UnwritableFileException missing(Path book) {
        return new UnwritableFileException("%s is not there; check its name and folder.".formatted(book));
    }

    static UnwritableFileException noFolder(Path target) {
        return new UnwritableFileException(
                "%s can't be written, because its folder is not there; make the folder or choose another place."
                        .formatted(target));
    }

    static UnwritableFileException notAllowed(Path target, Throwable cause) {
        return new UnwritableFileException(
                "%s can't be written, because the file or its folder is write-protected; choose another place."
                        .formatted(target),
                cause);
    }

    static UnwritableFileException openElsewhere(Path target, @Nullable Throwable cause) {
        return new UnwritableFileException(
                "%s is open in another program; close it there and run again.".formatted(target), cause);
    }

    static UnwritableFileException diskFull(Path target, Throwable cause) {
        return new UnwritableFileException(
                "%s can't be written, because the disk is full; make room or choose another place.".formatted(target),
                cause);
    }

    static UnwritableFileException because(Path target, Throwable cause) {
        return new UnwritableFileException(
                "%s can't be written (%s); choose another place.".formatted(target, cause.getMessage()), cause);
    }
}
