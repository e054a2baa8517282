package perkilo.desk;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Book;
import perkilo.origin.Reading;
import perkilo.reading.Sources;
import perkilo.xlsx.parts.FileStamp;

/**
 * Service that reads workbooks for a caller who asks again and again: a workbook is read anew only if one of its files
 * has changed. The last few are kept. Several threads may call it.
 */
public final class BookShelf {

    private static final int MOST = 4;

    private final List<OpenedBook> kept = new ArrayList<>();

    /**
     * A workbook as it is now.
     *
     * @param sources the workbook, and the files that are read with it; no folders
     * @param today the costing date if none is set
     * @throws IOException if a file cannot be read
     */
    public OpenedBook open(Sources sources, LocalDate today, Watch watch) throws IOException {
        List<FileStamp> stamps = OpenedBook.stampsOf(sources);
        synchronized (kept) {
            for (OpenedBook one : kept) {
                if (one.sources().equals(sources)
                        && one.today().equals(today)
                        && one.stamps().equals(stamps)) {
                    kept.remove(one);
                    kept.add(one); // as the one used last
                    return one;
                }
            }
        }
        Reading<Book> reading = BookReading.of(sources, today, watch);
        OpenedBook opened = new OpenedBook(sources, today, stamps, reading);
        synchronized (kept) {
            kept.removeIf(one -> one.sources().equals(sources));
            kept.add(opened);
            if (kept.size() > MOST) {
                kept.remove(0);
            }
        }
        return opened;
    }
}
