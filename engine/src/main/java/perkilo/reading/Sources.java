package perkilo.reading;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is read together.
 *
 * @param book the person's workbook
 * @param priceFiles price lists that add to the workbook's own offers; files, or folders of them
 * @param rates a file of exchange rates that adds to the workbook's own; null for none
 * @param costingDate replaces the workbook's own; null to use that
 */
public record Sources(
        Path book,
        List<Path> priceFiles,
        @Nullable Path rates,
        @Nullable LocalDate costingDate) {

    public Sources {
        priceFiles = List.copyOf(priceFiles);
    }

    /** A workbook alone. */
    public static Sources of(Path book) {
        return new Sources(book, List.of(), null, null);
    }
}
