package perkilo.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Book;
import perkilo.origin.Reading;
import perkilo.reading.Sources;
import perkilo.xlsx.parts.FileStamp;

/**
 * A workbook that was read, with the moment of the files that it was read from.
 *
 * @param stamps of the workbook, then of the price lists and rates; taken before they were read
 * @param today the costing date if none is set
 */
public record OpenedBook(Sources sources, LocalDate today, List<FileStamp> stamps, Reading<Book> reading) {

    public OpenedBook {
        stamps = List.copyOf(stamps);
    }

    /** The stamps of the files of some sources at this moment. */
    static List<FileStamp> stampsOf(Sources sources) {
        List<FileStamp> stamps = new ArrayList<>(List.of(FileStamp.of(sources.book())));
        sources.priceFiles().forEach(file -> stamps.add(FileStamp.of(file)));
        if (sources.rates() != null) {
            stamps.add(FileStamp.of(sources.rates()));
        }
        return stamps;
    }

    /** The workbook itself at the moment when it was read. */
    public FileStamp book() {
        return stamps.get(0);
    }
}
