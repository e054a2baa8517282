package perkilo.cli;

import java.nio.file.Path;
import perkilo.reading.Sources;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The options that every command on one workbook takes. */
final class BookOptions {

    private final PositionalParamSpec book =
            Options.parameter(0, "1", Path.class, "BOOK", "The workbook, .xlsx or .xlsm.");
    private final SourceOptions sources;
    private final PrintOptions printing;

    BookOptions(Command command) {
        command.takes(book);
        this.sources = new SourceOptions(command);
        this.printing = new PrintOptions(command);
    }

    /** The workbook. */
    Path book() {
        Path said = Options.said(book, Path.class);
        if (said == null) {
            throw new IllegalStateException("picocli asks for the workbook");
        }
        return said;
    }

    /** The workbook with its price lists and rates. */
    Sources sources() {
        return sources.with(book());
    }

    /** The options for what is read together with a workbook. */
    SourceOptions more() {
        return sources;
    }

    /** Whether the answer is printed as JSON. */
    boolean json() {
        return printing.json();
    }

    /** Whether tables and notes are left out. */
    boolean quiet() {
        return printing.quiet();
    }
}
