package perkilo.xlsx.grid;

import java.io.IOException;
import java.nio.file.Path;

/** A file that cannot be opened; the message says in one sentence what it is and what to do. */
public final class UnreadableFileException extends IOException {

    /**
     * A file that cannot be opened.
     *
     * @param file as the person named it
     * @param whatAndWhatToDo goes on after the file's name: {@code is empty; …}
     */
    public UnreadableFileException(Path file, String whatAndWhatToDo) {
        super(file + " " + whatAndWhatToDo);
    }

    /**
     * A file that cannot be opened, for a reason that a library gave.
     *
     * @param file as the person named it
     * @param whatAndWhatToDo goes on after the file's name
     * @param cause for those who look into the tool itself
     */
    public UnreadableFileException(Path file, String whatAndWhatToDo, Throwable cause) {
        super(file + " " + whatAndWhatToDo, cause);
    }
}
