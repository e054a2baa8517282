package perkilo.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What is read besides a workbook. */
final class SourceOptions {

    @Option(
            names = "--prices",
            paramLabel = "PATH",
            description =
                    "A price list, or a folder of them; adds to the workbook's own offers. May be given several times.")
    private List<Path> prices = List.of();

    @Option(
            names = "--rates",
            paramLabel = "FILE",
            description = "Exchange rates: a dated table, such as \"perkilo rates\" keeps, or a file of the European"
                    + " Central Bank.")
    private @Nullable Path rates;

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            description = "The costing date, in place of the one in the workbook.")
    private @Nullable LocalDate date;

    /** Price lists and folders of them. */
    List<Path> prices() {
        return prices;
    }

    /** The file of rates; null for none. */
    @Nullable Path rates() {
        return rates;
    }

    /** The costing date; null where that of the workbook holds. */
    @Nullable LocalDate date() {
        return date;
    }
}
