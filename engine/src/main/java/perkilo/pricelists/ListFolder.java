package perkilo.pricelists;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import perkilo.layouts.ListWords;
import perkilo.reading.PriceFiles;
import perkilo.xlsx.write.SavedFile;

/**
 * The folder that lists are kept in: {@code SUPPLIER-YYYY-MM-DD.csv} for each list, {@code SUPPLIER-answers.csv} for
 * what is remembered of the supplier.
 *
 * @param path the folder; it need not exist yet
 */
public record ListFolder(Path path) {

    private static final String MAPPING = PriceFiles.MAPPING_ENDING;
    private static final String ANSWERS = PriceFiles.ANSWERS_ENDING;
    private static final String BACKUP = ".bak";

    private static final String NO_ROWS = "none";

    /** The name of the file that says which files are no price lists, without its ending. */
    private static final String NO_LISTS = "no-price-lists";

    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    /** A supplier's name as it is used in file names. */
    static String stem(String supplier) {
        StringBuilder stem = new StringBuilder();
        for (String word : supplier.split("[^\\p{L}\\p{N}]+", -1)) {
            String key = word.isEmpty() ? "" : ListWords.key(word);
            stem.append(stem.length() == 0 || key.isEmpty() ? "" : "-").append(key);
        }
        return stem.length() == 0 ? "supplier" : stem.toString();
    }

    /** Where a supplier's answers are. */
    public Path answers(String supplier) {
        return path.resolve(stem(supplier) + ANSWERS);
    }

    /** Where an earlier version kept how a supplier's lists are read. */
    Path mapping(String supplier) {
        return path.resolve(stem(supplier) + MAPPING);
    }

    /** Where a supplier's list of a day is. */
    Path list(String supplier, LocalDate day) {
        return path.resolve(stem(supplier) + "-" + day + ".csv");
    }

    /** Whether what is remembered of a supplier is still in the form of an earlier version. */
    boolean isOfEarlierVersion(String supplier) {
        return !Files.exists(answers(supplier)) && Files.exists(mapping(supplier));
    }

    /** What is remembered of a supplier. */
    Memory memory(String supplier) throws IOException {
        if (Files.exists(answers(supplier))) {
            return MemoryFile.read(answers(supplier)).copy(supplier);
        }
        return isOfEarlierVersion(supplier)
                ? Memory.of(MappingFile.read(mapping(supplier))).copy(supplier)
                : new Memory(supplier);
    }

    /** What is remembered of all suppliers. */
    List<Memory> memories() throws IOException {
        List<Memory> all = new ArrayList<>();
        for (Path file : files(ANSWERS)) {
            if (!file.equals(noLists())) {
                all.add(MemoryFile.read(file));
            }
        }
        for (Path file : files(MAPPING)) {
            Memory memory = Memory.of(MappingFile.read(file));
            if (isOfEarlierVersion(memory.supplier())) {
                all.add(memory);
            }
        }
        return all;
    }

    private Path noLists() {
        return path.resolve(NO_LISTS + ANSWERS);
    }

    /** Whether a person said that a file with this content is no price list. */
    boolean isNoList(String file, String digest) throws IOException {
        return Files.exists(noLists())
                && MemoryFile.read(noLists()).dayOf(file, digest).isPresent();
    }

    /** Remembers whether a file is no price list. */
    void keepNoList(String file, String digest, boolean noList) throws IOException {
        if (noList == isNoList(file, digest)) {
            return;
        }
        Memory memory = Files.exists(noLists()) ? MemoryFile.read(noLists()) : new Memory("");
        if (noList) {
            memory.putFile(file, SheetTables.NO_LIST, digest, NO_ROWS);
        } else {
            memory.forget(Memory.FILE, file, "");
        }
        Files.createDirectories(path);
        MemoryFile.write(noLists(), memory);
    }

    private List<Path> files(String ending) throws IOException {
        if (!Files.isDirectory(path)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(path)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    /** Keeps what is remembered of a supplier. */
    void keep(Memory memory) throws IOException {
        Files.createDirectories(path);
        MemoryFile.write(answers(memory.supplier()), memory);
    }

    /** The rows of a supplier's list of a day; none if it is not kept. */
    List<KeptRow> rows(String supplier, LocalDate day) throws IOException {
        Path file = list(supplier, day);
        return Files.exists(file) ? LongForm.read(file) : List.of();
    }

    /** The newest row before a day for each pack and price break of a supplier. */
    Map<String, KeptRow> before(String supplier, LocalDate day) throws IOException {
        String stem = stem(supplier);
        List<Path> lists = new ArrayList<>();
        for (Path file : files(".csv")) {
            String name = String.valueOf(file.getFileName());
            String end = name.startsWith(stem + "-") ? name.substring(stem.length() + 1) : "";
            String when = end.isEmpty() ? "" : end.substring(0, end.length() - ".csv".length());
            if (DAY.matcher(when).matches() && when.compareTo(day.toString()) < 0) {
                lists.add(file);
            }
        }
        Collections.sort(lists);
        Map<String, KeptRow> newest = new LinkedHashMap<>();
        for (Path file : lists) {
            for (KeptRow row : LongForm.read(file)) {
                if (row.isPriced()) {
                    newest.put(row.packAndBreak(), row);
                }
            }
        }
        return newest;
    }

    /**
     * Keeps a list; an earlier one of the same supplier and day stays beside it as a backup.
     *
     * @return where it is, and what became of an earlier list
     */
    Kept keep(String supplier, LocalDate day, List<KeptRow> rows, boolean merged) throws IOException {
        Files.createDirectories(path);
        byte[] list = LongForm.bytes(rows);
        Path file = list(supplier, day);
        if (!Files.exists(file)) {
            SavedFile.write(file, list);
            return new Kept(file, Kept.How.NEW);
        }
        byte[] before = Files.readAllBytes(file);
        if (Arrays.equals(before, list)) {
            return new Kept(file, Kept.How.THERE_ALREADY);
        }
        SavedFile.write(file.resolveSibling(file.getFileName() + BACKUP), before);
        SavedFile.write(file, list);
        return new Kept(file, merged ? Kept.How.MERGED : Kept.How.REPLACED);
    }

    /** Takes the rows of a file out of a kept list; the list is deleted if none remains. A backup stays. */
    void takeOut(String supplier, LocalDate day, String source) throws IOException {
        Path file = list(supplier, day);
        if (Files.exists(file)) {
            List<KeptRow> before = LongForm.read(file);
            List<KeptRow> rest =
                    before.stream().filter(row -> !row.file().equals(source)).toList();
            if (rest.size() < before.size()) {
                SavedFile.write(file.resolveSibling(file.getFileName() + BACKUP), Files.readAllBytes(file));
                if (rest.isEmpty()) {
                    Files.delete(file);
                } else {
                    SavedFile.write(file, LongForm.bytes(rest));
                }
            }
        }
    }

    /**
     * A list that is kept.
     *
     * @param file the file that holds it
     * @param how what became of an earlier list of the same supplier and day
     */
    public record Kept(Path file, How how) {

        /** What became of an earlier list of the same supplier and day. */
        public enum How {
            /** There was none. */
            NEW,
            /** It was replaced; a backup is beside it. */
            REPLACED,
            /** Both are one list; a backup of the earlier one is beside it. */
            MERGED,
            /** It says the same. */
            THERE_ALREADY
        }
    }
}
