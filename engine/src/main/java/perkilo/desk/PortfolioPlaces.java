package perkilo.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The files for the results of a portfolio.
 *
 * @param targets the result of each book
 * @param summary the workbook that compares the books
 */
record PortfolioPlaces(Map<Path, Path> targets, Path summary) {

    private static final String SUMMARY = "portfolio";

    /** Whether a destination cannot be a folder for results. */
    static boolean isNoFolder(@Nullable Path out) {
        if (out == null) {
            return false;
        }
        String name = out.toString().toLowerCase(Locale.ROOT);
        boolean workbook = name.endsWith(".xlsx") || name.endsWith(".xlsm");
        return Files.isRegularFile(out) || (workbook && !Files.isDirectory(out));
    }

    /** Two books whose results would go to one file; null if there are none. */
    static <T> PortfolioAnswer.@Nullable SamePlace<T> clash(Destination destination, List<Path> books) {
        Map<Path, Path> taken = new LinkedHashMap<>();
        for (Path book : books) {
            Path target = destination.targetAmongSeveral(book, Destination.COSTED);
            Path other = taken.putIfAbsent(target.toAbsolutePath().normalize(), book);
            if (other != null) {
                return new PortfolioAnswer.SamePlace<>(other, book, target);
            }
        }
        return null;
    }

    /**
     * The places.
     *
     * @param named what the person named
     * @param books the workbooks that were found under those names
     */
    static PortfolioPlaces of(Destination destination, List<Path> named, List<Path> books) {
        Map<Path, Path> targets = new LinkedHashMap<>();
        for (Path book : books) {
            targets.put(book, destination.targetAmongSeveral(book, Destination.COSTED));
        }
        return new PortfolioPlaces(targets, summary(destination.out(), named.get(0), targets));
    }

    private static Path summary(@Nullable Path folder, Path first, Map<Path, Path> targets) {
        Path beside = Files.isDirectory(first) ? first : first.toAbsolutePath().getParent();
        Path place = Objects.requireNonNullElse(folder == null ? beside : folder, Path.of(""));
        Set<Path> taken = new HashSet<>();
        targets.forEach((book, target) -> taken.add(target.toAbsolutePath().normalize()));
        Path summary = place.resolve(SUMMARY + Destination.COSTED + ".xlsx");
        for (int number = 2; taken.contains(summary.toAbsolutePath().normalize()); number++) {
            summary = place.resolve(SUMMARY + "-" + number + Destination.COSTED + ".xlsx");
        }
        return Files.isDirectory(first) || folder != null ? summary : shortest(first, summary);
    }

    /** The path as short as a person would type it, if the first book was typed without its folder. */
    private static Path shortest(Path first, Path summary) {
        return first.isAbsolute() ? summary : first.resolveSibling(summary.getFileName());
    }

    /** How books are named: by file name if all are in one folder, otherwise by path. */
    Function<Path, String> names() {
        Set<Path> folders = new HashSet<>();
        targets.keySet()
                .forEach(book -> folders.add(book.toAbsolutePath().normalize().resolveSibling("x")));
        return folders.size() == 1
                ? book -> String.valueOf(book.getFileName())
                : book -> book.normalize().toString();
    }
}
