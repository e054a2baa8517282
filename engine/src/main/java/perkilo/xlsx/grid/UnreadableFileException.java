package perkilo.xlsx.grid;

import java.io.IOException;
import java.nio.file.Path;

/** A file that cannot be read; the message says what the file is and what to do. */
public final class UnreadableFileException extends IOException {

    /**
     * A file that cannot be read.
     *
     * @param message full sentences, from a catalogue of messages
     */
    public UnreadableFileException(String message) {
        super(message);
    }

    /**
     * A file that cannot be read, for a reason that a library gave.
     *
     * @param message full sentences, from a catalogue of messages
     * @param cause for a developer
     */
    public UnreadableFileException(String message, Throwable cause) {
        super(message, cause);
    }

    /**
     * A file that cannot be read.
     *
     * @param file as the person named it
     * @param whatAndWhatToDo the rest of the sentence that begins with the file's name: {@code is empty; …}
     */
    public UnreadableFileException(Path file, String whatAndWhatToDo) {
        super(file + " " + whatAndWhatToDo);
    }

    /**
     * A file that cannot be read, for a reason that a library gave.
     *
     * @param file as the person named it
     * @param whatAndWhatToDo the rest of the sentence that begins with the file's name
     * @param cause for a developer
     */
    public UnreadableFileException(Path file, String whatAndWhatToDo, Throwable cause) {
        super(file + " " + whatAndWhatToDo, cause);
    }
}
