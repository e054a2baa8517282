package perkilo.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Set;
import perkilo.model.Book;
import perkilo.model.Gaps;
import perkilo.reading.BookReader;
import perkilo.reading.RatesReader;
import perkilo.reading.Sources;
import perkilo.xlsx.grid.Grids;
import perkilo.xlsx.grid.UnreadableFileException;

/** Service that says what a file is good for, before it is kept. */
public final class FileKinds {

    private static final Set<String> BOOKS = Set.of("xlsx", "xlsm");

    /** Files that can only be exchange rates, as published. */
    private static final Set<String> RATES_ONLY = Set.of("xml", "zip");

    /** What a file is good for. */
    public enum Kind {
        WORKBOOK,
        LIST,
        RATES
    }

    /**
     * The kind of a file.
     *
     * @param name of the file
     * @param content that may be anything
     * @param today for dates without a year
     * @throws UnreadableFileException if it cannot be read, or is made to do harm; the message says what it is
     */
    public Kind of(String name, byte[] content, LocalDate today) throws IOException {
        Path folder = Files.createTempDirectory("perkilo");
        Path file = folder.resolve(name);
        try {
            Files.write(file, content);
            return BOOKS.contains(ending(name)) ? ofBook(file, today) : ofList(file);
        } catch (UnreadableFileException why) {
            String place = folder + folder.getFileSystem().getSeparator();
            throw new UnreadableFileException(String.valueOf(why.getMessage()).replace(place, ""), why);
        } finally {
            Files.deleteIfExists(file);
            Files.deleteIfExists(folder);
        }
    }

    private static Kind ofBook(Path file, LocalDate today) throws IOException {
        Book book = new BookReader().read(Sources.of(file), today).value();
        boolean hasRecipes = !book.formulas().isEmpty()
                || !book.products().isEmpty()
                || book.gaps().has(Gaps.Kind.RECIPE);
        if (hasRecipes) {
            return Kind.WORKBOOK;
        }
        if (!book.offers().isEmpty()) {
            return Kind.LIST;
        }
        return book.rates().rates().isEmpty() ? Kind.WORKBOOK : Kind.RATES;
    }

    private static Kind ofList(Path file) throws IOException {
        try {
            if (!new RatesReader().read(file).value().isEmpty()) {
                return Kind.RATES;
            }
        } catch (UnreadableFileException noRates) {
            if (RATES_ONLY.contains(ending(String.valueOf(file.getFileName())))) {
                throw noRates;
            }
        }
        Grids.ofPriceFile(file);
        return Kind.LIST;
    }

    private static String ending(String name) {
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }
}
