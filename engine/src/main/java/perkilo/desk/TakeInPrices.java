package perkilo.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import perkilo.pricelists.ListFolder;
import perkilo.pricelists.TakeIn;
import perkilo.pricelists.TakenIn;
import perkilo.reading.KnownSheets;

/** Service that takes price lists of suppliers in, one after the other. */
public final class TakeInPrices {

    /**
     * Takes lists in; each is kept or refused by itself.
     *
     * @throws IOException if a file cannot be read or written
     */
    public TakeInAnswer take(TakeInRequest request, Watch watch) throws IOException {
        Path folder = request.folder();
        KnownSheets known = KnownSheets.read(request.book(), Files.isDirectory(folder) ? List.of(folder) : List.of());
        TakeIn takeIn = new TakeIn(new ListFolder(folder), known.grids(), new LinkedHashSet<>(known.suppliers()));
        List<Path> files = request.files();
        List<TakenIn> lists = new ArrayList<>();
        while (lists.size() < files.size() && !watch.isCancelled()) {
            watch.at(Stage.TAKING_IN, lists.size(), files.size());
            lists.add(takeIn.take(files.get(lists.size()), request.said()));
        }
        watch.at(Stage.TAKING_IN, lists.size(), files.size());
        return new TakeInAnswer(lists, files.subList(lists.size(), files.size()));
    }
}
