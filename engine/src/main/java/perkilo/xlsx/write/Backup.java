package perkilo.xlsx.write;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;

/** Copies of a workbook before it is changed, in the same folder: {@code cream.backup-2026-11-25-1.xlsx}. */
final class Backup {

    private Backup() {}

    /**
     * Makes the day's next copy; no copy is ever overwritten.
     *
     * @return the copy
     */
    static Path of(Path book, LocalDate today) throws IOException {
        for (int number = 1; ; number++) {
            Path copy = book.resolveSibling(name(book, today, number));
            if (Files.notExists(copy) && copied(book, copy)) {
                return copy;
            }
        }
    }

    private static String name(Path book, LocalDate today, int number) {
        String name = String.valueOf(book.getFileName());
        int dot = name.lastIndexOf('.') < 0 ? name.length() : name.lastIndexOf('.');
        return "%s.backup-%s-%d%s".formatted(name.substring(0, dot), today, number, name.substring(dot));
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
