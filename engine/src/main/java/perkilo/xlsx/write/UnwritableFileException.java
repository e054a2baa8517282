package perkilo.xlsx.write;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** A file that cannot be written; the message is full sentences for a person, with what to do. */
public final class UnwritableFileException extends IOException {

    private static final long serialVersionUID = 1L;

    private UnwritableFileException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }

    private UnwritableFileException(String message) {
        super(message);
    }

    static UnwritableFileException unfitWorkbook(Path book, IOException cause) {
        return new UnwritableFileException(book + ": " + cause.getMessage(), cause);
    }

    static UnwritableFileException ofItself(Path book) {
        return new UnwritableFileException(WritingMessages.ofItself(book));
    }

    static UnwritableFileException longName(Path target, Throwable cause) {
        return new UnwritableFileException(WritingMessages.longName(target), cause);
    }

    static UnwritableFileException noBackup(Path book) {
        return new UnwritableFileException(WritingMessages.noBackup(book));
    }

    static UnwritableFileException changedMeanwhile(Path book) {
        return new UnwritableFileException(WritingMessages.changedMeanwhile(book));
    }

    static UnwritableFileException notReadable(Path target) {
        return new UnwritableFileException(WritingMessages.notReadable(target));
    }

    static UnwritableFileException wrongEnding(Path target, String ending) {
        return new UnwritableFileException(WritingMessages.wrongEnding(target, ending));
    }

    static UnwritableFileException missing(Path book) {
        return new UnwritableFileException(WritingMessages.missing(book));
    }

    static UnwritableFileException noFolder(Path target) {
        return new UnwritableFileException(WritingMessages.noFolder(target));
    }

    static UnwritableFileException notAFolder(Path folder) {
        return new UnwritableFileException(WritingMessages.notAFolder(folder));
    }

    static UnwritableFileException notAllowed(Path target, Throwable cause) {
        return new UnwritableFileException(WritingMessages.writeProtected(target), cause);
    }

    static UnwritableFileException openElsewhere(Path target, @Nullable Throwable cause) {
        return new UnwritableFileException(WritingMessages.openElsewhere(target), cause);
    }

    static UnwritableFileException diskFull(Path target, Throwable cause) {
        return new UnwritableFileException(WritingMessages.diskFull(target), cause);
    }

    static UnwritableFileException because(Path target, Throwable cause) {
        return new UnwritableFileException(
                WritingMessages.otherFault(target, String.valueOf(cause.getMessage())), cause);
    }
}
