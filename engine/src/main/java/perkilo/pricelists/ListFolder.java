package perkilo.pricelists;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import perkilo.layouts.ListWords;
import perkilo.layouts.Mapping;
import perkilo.layouts.Question;
import perkilo.reading.PriceFiles;
import perkilo.xlsx.write.SavedFile;

/**
 * The folder that lists are kept in: {@code SUPPLIER-YYYY-MM-DD.csv} for each list, {@code SUPPLIER.mapping.json} for
 * how the supplier's lists are read.
 *
 * @param path the folder; it need not exist yet
 */
public record ListFolder(Path path) {

    private static final String MAPPING = PriceFiles.MAPPING_ENDING;
    private static final String BACKUP = ".bak";

    /** A supplier's name as it is used in file names. */
    static String stem(String supplier) {
        StringBuilder stem = new StringBuilder();
        for (String word : supplier.split("[^\\p{L}\\p{N}]+", -1)) {
            String key = word.isEmpty() ? "" : ListWords.key(word);
            stem.append(stem.length() == 0 || key.isEmpty() ? "" : "-").append(key);
        }
        return stem.length() == 0 ? "supplier" : stem.toString();
    }

    /** Where a supplier's mapping is. */
    public Path mapping(String supplier) {
        return path.resolve(stem(supplier) + MAPPING);
    }

    /** Where a supplier's list of a day is. */
    Path list(String supplier, LocalDate day) {
        return path.resolve(stem(supplier) + "-" + day + ".csv");
    }

    /** The suppliers that have a mapping here. */
    Set<String> suppliersWithMapping() throws IOException {
        Set<String> suppliers = new LinkedHashSet<>();
        if (Files.isDirectory(path)) {
            List<Path> mappings;
            try (Stream<Path> files = Files.list(path)) {
                mappings = files.filter(file -> file.toString().endsWith(MAPPING))
                        .sorted()
                        .toList();
            }
            for (Path file : mappings) {
                suppliers.add(MappingFile.read(file).supplier());
            }
        }
        return suppliers;
    }

    /** A supplier's mapping; an empty one if there is none yet. */
    Mapping read(String supplier) throws IOException {
        Path file = mapping(supplier);
        return Files.exists(file) ? MappingFile.read(file) : Mapping.empty(supplier);
    }

    /** Keeps a mapping. */
    void keep(Mapping mapping, List<Question> questions) throws IOException {
        Files.createDirectories(path);
        MappingFile.write(mapping(mapping.supplier()), mapping, questions);
    }

    /**
     * Keeps a list. It replaces another list of the same supplier and day, which is kept beside it as a backup.
     *
     * @return where it is, and whether it was there before
     */
    Kept keep(String supplier, LocalDate day, byte[] list) throws IOException {
        Files.createDirectories(path);
        Path file = list(supplier, day);
        if (Files.exists(file)) {
            byte[] before = Files.readAllBytes(file);
            if (Arrays.equals(before, list)) {
                return new Kept(file, Kept.How.THERE_ALREADY);
            }
            SavedFile.write(file.resolveSibling(file.getFileName() + BACKUP), before);
            SavedFile.write(file, list);
            return new Kept(file, Kept.How.REPLACED);
        }
        SavedFile.write(file, list);
        return new Kept(file, Kept.How.NEW);
    }

    /**
     * A list that is kept.
     *
     * @param file the file that holds it
     * @param how whether it was there before
     */
    public record Kept(Path file, How how) {

        /** Whether a list was there before. */
        public enum How {
            NEW,
            REPLACED,
            THERE_ALREADY
        }
    }
}
