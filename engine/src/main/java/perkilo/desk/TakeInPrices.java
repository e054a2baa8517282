package perkilo.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.pricelists.ListFiles;
import perkilo.pricelists.ListFolder;
import perkilo.pricelists.TakeIn;
import perkilo.pricelists.TakenIn;
import perkilo.reading.KnownSheets;
import perkilo.review.FilledIn;
import perkilo.review.prices.PriceReview;
import perkilo.xlsx.grid.UnreadableFileException;

/**
 * Service that takes price lists of suppliers in, one after the other, with the answers on the review, and writes the
 * next review.
 */
public final class TakeInPrices {

    private static final TakeIn.Said NOTHING = new TakeIn.Said(null, null, null);

    /**
     * Takes lists in; each is kept or waits by itself. Lists on the review that wait, or whose answers were changed,
     * are tried again.
     *
     * @throws IOException if the only list cannot be read, or a file cannot be written
     */
    public TakeInAnswer take(TakeInRequest request, Watch watch) throws IOException {
        Path folder = request.folder();
        FilledIn filledIn = PriceReview.read(request.review());
        KnownSheets known = KnownSheets.read(request.book(), Files.isDirectory(folder) ? List.of(folder) : List.of());
        TakeIn takeIn = new TakeIn(new ListFolder(folder), known.grids(), new LinkedHashSet<>(known.suppliers()));
        Map<Path, TakeIn.Said> files = new LinkedHashMap<>();
        for (Path file : new ListFiles(folder, request.review()).of(request.files())) {
            files.put(file.toAbsolutePath().normalize(), request.said());
        }
        List<Path> missing = new ArrayList<>();
        for (Path file : PriceReview.toTryAgain(filledIn)) {
            if (Files.exists(file)) {
                files.putIfAbsent(file.toAbsolutePath().normalize(), NOTHING);
            } else if (!files.containsKey(file.toAbsolutePath().normalize())) {
                missing.add(file);
            }
        }
        List<TakenIn> lists = new ArrayList<>();
        List<Path> notBegun = new ArrayList<>();
        boolean alone = files.size() == 1
                && request.files().size() == 1
                && !Files.isDirectory(request.files().get(0));
        int done = 0;
        for (Map.Entry<Path, TakeIn.Said> file : files.entrySet()) {
            if (watch.isCancelled()) {
                notBegun.add(file.getKey());
                continue;
            }
            watch.at(Stage.TAKING_IN, done++, files.size());
            lists.addAll(take(takeIn, file.getKey(), file.getValue(), filledIn, alone));
        }
        watch.at(Stage.TAKING_IN, done, files.size());
        if (notBegun.isEmpty() && !lists.isEmpty()) {
            new PriceReview(lists, takeIn.knownItems()).write(request.review(), !filledIn.isEmpty());
        }
        return new TakeInAnswer(lists, notBegun, missing, request.review());
    }

    /** One file; a file that cannot be opened is a result among others, and a failure if it is the only one. */
    private static List<TakenIn> take(TakeIn takeIn, Path file, TakeIn.Said said, FilledIn filledIn, boolean alone)
            throws IOException {
        try {
            return takeIn.take(file, said, filledIn);
        } catch (UnreadableFileException why) {
            if (alone) {
                throw why;
            }
            Origin whole = new Origin(String.valueOf(file.getFileName()), "", "");
            return List.of(TakenIn.unreadable(file, Finding.error(whole, String.valueOf(why.getMessage()))));
        }
    }
}
