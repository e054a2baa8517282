package perkilo.pricelists;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import perkilo.reading.PriceFiles;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableFinder;
import perkilo.schema.OffersSheet;
import perkilo.schema.Schemas;
import perkilo.xlsx.grid.Grids;
import perkilo.xlsx.grid.UnreadableFileException;

/**
 * Finds the lists that arrived.
 *
 * @param kept the folder that lists are kept in
 * @param review the review, which is no list
 */
public record ListFiles(Path kept, Path review) {

    /** Files that operating systems put into folders. */
    private static final Set<String> OF_SYSTEMS = Set.of("thumbs.db", "desktop.ini");

    /**
     * The files themselves, and for each folder the files in it, by name; kept lists and our own files are left out.
     */
    public List<Path> of(List<Path> named) throws IOException {
        Set<Path> files = new LinkedHashSet<>();
        for (Path path : named) {
            if (Files.isDirectory(path)) {
                List<Path> all;
                try (Stream<Path> inside = Files.list(path)) {
                    all = inside.filter(Files::isRegularFile).sorted().toList();
                }
                boolean inKept = Files.exists(kept) && Files.isSameFile(path, kept);
                for (Path file : all) {
                    if (!isOther(file) && !LongForm.is(file) && !(inKept && isOurs(file))) {
                        files.add(file);
                    }
                }
            } else {
                files.add(path);
            }
        }
        return List.copyOf(files);
    }

    private boolean isOther(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        return name.startsWith("~$")
                || name.startsWith(".")
                || name.endsWith(".bak")
                || PriceFiles.isOurOwn(name)
                || OF_SYSTEMS.contains(name.toLowerCase(Locale.ROOT))
                || (Files.exists(review) && Files.isSameFile(file, review));
    }

    /** Whether a file in the folder of lists is read from there as it is: materials, suppliers, lists in our form. */
    private static boolean isOurs(Path file) throws IOException {
        try {
            return new TableFinder(Schemas.OF_PRICE_LISTS, new Findings())
                    .find(Grids.ofPriceFile(file).sheets()).stream()
                            .anyMatch(table ->
                                    !table.schema().equals(OffersSheet.SCHEMA) || table.has(OffersSheet.SUPPLIER));
        } catch (UnreadableFileException e) {
            return !String.valueOf(file.getFileName()).contains(".")
                    || file.toString().endsWith(".md");
        }
    }
}
