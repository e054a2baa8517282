package perkilo.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.reading.Sources;
import picocli.CommandLine.Model.OptionSpec;

/** The options for what is read together with a workbook. */
final class SourceOptions {

    private final OptionSpec prices = Options.values(
            Path.class,
            "PATH",
            "A price list, or a folder of them, which adds to the workbook's own offers. Can be given several times.",
            "--prices");
    private final OptionSpec rates = Options.value(
            Path.class,
            "FILE",
            "Exchange rates: a dated table, such as \"perkilo rates\" writes, or a file of the European Central Bank.",
            "--rates");
    private final OptionSpec date = Options.day("The costing date, instead of the one in the workbook.", "--date");

    SourceOptions(Command command) {
        command.takes(prices, rates, date);
    }

    /** These sources together with a workbook. */
    Sources with(Path book) {
        return new Sources(book, prices(), rates(), date());
    }

    /** Price lists and folders of them. */
    List<Path> prices() {
        return Options.allSaid(prices, Path.class);
    }

    /** The file of rates; null for none. */
    @Nullable Path rates() {
        return Options.said(rates, Path.class);
    }

    /** The costing date; null to use that of the workbook. */
    @Nullable LocalDate date() {
        return Options.said(date, LocalDate.class);
    }
}
