package perkilo.xlsx.write;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;

/** Copies of a workbook before it is changed, in the same folder: {@code cream.backup-2026-11-25-1.xlsx}. */
final class Backup {

    private static final int MOST = 10_000;

    /** The longest name that file systems take, in bytes. */
    private static final int LONGEST_NAME = 255;

    private Backup() {}

    /**
     * Makes the day's next copy; no copy is ever overwritten.
     *
     * @return the copy
     */
    static Path of(Path book, LocalDate today) throws IOException {
        for (int number = 1; number <= MOST; number++) {
            Path copy = book.resolveSibling(name(book, today, number));
            if (!Files.exists(copy) && copied(book, copy)) {
                return copy;
            }
        }
        throw UnwritableFileException.noBackup(book);
    }

    private static String name(Path book, LocalDate today, int number) {
        String name = String.valueOf(book.getFileName());
        int dot = name.lastIndexOf('.') < 0 ? name.length() : name.lastIndexOf('.');
        String ending = ".backup-" + today + "-" + number + name.substring(dot);
        return shortened(name.substring(0, dot), LONGEST_NAME - bytes(ending)) + ending;
    }

    /** The beginning of a name that has no more than so many bytes. */
    private static String shortened(String name, int most) {
        String begin = name;
        while (bytes(begin) > most && !begin.isEmpty()) {
            begin = begin.substring(0, begin.offsetByCodePoints(begin.length(), -1));
        }
        return begin;
    }

    private static int bytes(String name) {
        return name.getBytes(StandardCharsets.UTF_8).length;
    }

    private static boolean copied(Path book, Path copy) throws IOException {
        try {
            Files.copy(book, copy, StandardCopyOption.COPY_ATTRIBUTES);
            return true;
        } catch (FileAlreadyExistsException e) {
            return false;
        } catch (IOException e) {
            Files.deleteIfExists(copy);
            throw e;
        }
    }
}
