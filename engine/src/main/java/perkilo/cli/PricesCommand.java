package perkilo.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import perkilo.workbook.lists.ListFolder;
import perkilo.workbook.lists.TakeIn;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes suppliers' price lists in, and shows what changed since the last ones. */
@Command(
        name = "prices",
        mixinStandardHelpOptions = true,
        description = {
            "Take suppliers' price lists in, in whatever layout they come, and keep them by supplier and date.",
            "With --changes: show what rose or fell since the last lists, and what that does to a workbook's costs."
        })
final class PricesCommand implements Callable<Integer> {

    @Parameters(
            arity = "0..*",
            paramLabel = "FILE",
            description = "Price lists, .xlsx, .csv or .json; with --changes the workbook to cost, or nothing.")
    private List<Path> files = List.of();

    @Option(
            names = "--prices",
            paramLabel = "FOLDER",
            defaultValue = "prices",
            description = "The folder that lists are kept in; usually ${DEFAULT-VALUE}.")
    private Path folder = Path.of("prices");

    @Option(names = "--supplier", paramLabel = "NAME", description = "Whose list it is, where the list doesn't tell.")
    private @Nullable String supplier;

    @Option(
            names = "--quoted",
            paramLabel = "YYYY-MM-DD",
            description = "The day the list holds from, where the list doesn't tell.")
    private @Nullable LocalDate quoted;

    @Option(
            names = "--valid-until",
            paramLabel = "YYYY-MM-DD",
            description = "The last day the list holds, where the list doesn't tell.")
    private @Nullable LocalDate validUntil;

    @Option(
            names = "--book",
            paramLabel = "BOOK",
            description = "A workbook whose names the list's names are matched with, besides the folder's materials.")
    private @Nullable Path book;

    @Option(names = "--changes", description = "Show what rose or fell since the last lists.")
    private boolean changes;

    @Option(names = "--rates", paramLabel = "FILE", description = "With --changes: exchange rates, a dated table.")
    private @Nullable Path rates;

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            description = "With --changes: the day to look from, in place of the workbook's costing date.")
    private @Nullable LocalDate date;

    @Option(names = "--json", description = "Print the answer as JSON, and nothing else, on standard output.")
    private boolean json;

    @Option(
            names = {"-q", "--quiet"},
            description = "Print no table and no notes; warnings and errors stay.")
    private boolean quiet;

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Mixin
    private RunOptions runs = new RunOptions();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        Console console = new Console(spec, json, quiet);
        if (changes) {
            checkChanges();
            ShownChanges shown = new ShownChanges(console, folder, rates, date, output, runs);
            return files.isEmpty() ? shown.alone() : shown.with(files.get(0));
        }
        if (files.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "name the price lists to take in, or use --changes");
        }
        if (output.isAny() || runs.isAny() || rates != null || date != null) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--out, --in-place, --sheet-only, --date, --rates, --units and --batch-kg are for --changes, not for"
                            + " taking lists in");
        }
        TakeInLists lists = new TakeInLists(console, new ListFolder(folder), book);
        return lists.take(files, new TakeIn.Said(supplier, quoted, validUntil), json);
    }

    private void checkChanges() {
        if (files.size() > 1) {
            throw new ParameterException(spec.commandLine(), "--changes takes one workbook, or none");
        }
        if (supplier != null || quoted != null || validUntil != null || book != null) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--supplier, --quoted, --valid-until and --book are for taking lists in, not for --changes");
        }
        if (files.isEmpty() && output.inPlace()) {
            throw new ParameterException(spec.commandLine(), "--in-place needs a workbook to write into");
        }
        output.checkUsage(spec);
        runs.checkUsage(spec);
    }
}
