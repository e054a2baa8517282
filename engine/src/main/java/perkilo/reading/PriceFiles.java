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
        boolean other = name.startsWith("~$") || name.startsWith(".") || name.endsWith(MAPPING_ENDING);
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return !other && Files.isRegularFile(file) && ENDINGS.contains(ending);
    }
}
