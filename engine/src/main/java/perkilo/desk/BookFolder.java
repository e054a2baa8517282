package perkilo.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Finds the workbooks that a person means by naming files and folders. */
final class BookFolder {

    private BookFolder() {}

    /**
     * The files themselves, and for each folder the workbooks in it, sorted by name; each once.
     *
     * <p>In a folder, lock files of office suites, hidden files, backups and results of this tool are left out.
     *
     * @throws IOException if a folder cannot be read or holds none; the message is a sentence for a person
     */
    static List<Path> expand(Collection<Path> named) throws IOException {
        Map<Path, Path> books = new LinkedHashMap<>();
        for (Path path : named) {
            for (Path book : Files.isDirectory(path) ? in(path) : List.of(path)) {
                books.putIfAbsent(book.toAbsolutePath().normalize(), book);
            }
        }
        return List.copyOf(books.values());
    }

    private static List<Path> in(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            List<Path> books = inside.filter(BookFolder::isBook)
                    .sorted(Comparator.comparing(BookFolder::name, String.CASE_INSENSITIVE_ORDER)
                            .thenComparing(BookFolder::name))
                    .toList();
            if (books.isEmpty()) {
                throw new IOException(DeskMessages.noBookIn(folder));
            }
            return books;
        }
    }

    private static boolean isBook(Path file) {
        String name = name(file).toLowerCase(Locale.ROOT);
        if (name.startsWith("~$") || name.startsWith(".") || !Files.isRegularFile(file)) {
            return false;
        }
        if (!name.endsWith(".xlsx") && !name.endsWith(".xlsm")) {
            return false;
        }
        return !ResultNames.isResult(name) && !ResultNames.isBackup(name);
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
