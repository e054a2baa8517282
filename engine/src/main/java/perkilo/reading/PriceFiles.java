package perkilo.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** Finds the price lists in the files and folders that a person names. */
public final class PriceFiles {

    /** The ending of mapping files, which say how the lists of a supplier are read; they are not price lists. */
    public static final String MAPPING_ENDING = ".mapping.json";

    /** The ending of files with the answers about a supplier's lists; they are not price lists. */
    public static final String ANSWERS_ENDING = "-answers.csv";

    /** The ending of files with the answers about a table of exchange rates; they are not price lists. */
    public static final String RATE_ANSWERS_ENDING = ".answers.csv";

    /** The ending of workbooks with questions about price lists; they are not price lists. */
    public static final String REVIEW_ENDING = "-review.xlsx";

    private static final String BACKUP_OF_REVIEW = "-review.backup-";
    private static final Set<String> ENDINGS = Set.of("csv", "tsv", "txt", "json", "xlsx", "xlsm");

    private PriceFiles() {}

    /** The files themselves, and for each folder the price lists in it, by name. */
    public static List<Path> expand(List<Path> named) throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path path : named) {
            if (Files.isDirectory(path)) {
                try (Stream<Path> inside = Files.list(path)) {
                    inside.filter(PriceFiles::isPriceList).sorted().forEach(files::add);
                }
            } else {
                files.add(path);
            }
        }
        return files;
    }

    private static boolean isPriceList(Path file) {
        String name = String.valueOf(file.getFileName());
        boolean other = isOurOwn(name) || name.startsWith("~$") || name.startsWith(".");
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return !other && Files.isRegularFile(file) && ENDINGS.contains(ending);
    }

    /**
     * Whether a file in a folder of lists holds what is known about lists, and no list.
     *
     * @param name without its folder
     */
    public static boolean isOurOwn(String name) {
        return name.endsWith(MAPPING_ENDING)
                || name.endsWith(ANSWERS_ENDING)
                || name.endsWith(RATE_ANSWERS_ENDING)
                || name.endsWith(REVIEW_ENDING)
                || name.contains(BACKUP_OF_REVIEW);
    }
}
