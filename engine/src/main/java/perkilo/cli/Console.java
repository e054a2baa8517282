package perkilo.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import perkilo.json.Json;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.workbook.write.Written;
import picocli.CommandLine.Model.CommandSpec;

/** Prints answers and messages as a command's options ask. */
final class Console {

    private final PrintWriter out;
    private final PrintWriter err;
    private final Printing options;

    Console(CommandSpec spec, Printing options) {
        this.out = spec.commandLine().getOut();
        this.err = spec.commandLine().getErr();
        this.options = options;
    }

    /** Prints findings on standard error, errors first; notes only where they are wanted. */
    void findings(List<Finding> findings) {
        findings("", findings);
    }

    /**
     * Prints findings of one of several books.
     *
     * @param before what each line begins with
     */
    void findings(String before, List<Finding> findings) {
        for (Level level : Level.values()) {
            if (level == Level.NOTE && options.quiet()) {
                continue;
            }
            findings.stream()
                    .filter(finding -> finding.level() == level)
                    .forEach(finding -> err.println(before + finding));
        }
        err.flush();
    }

    /** Prints what kept the command from an answer, and gives the exit code back. */
    int refuse(List<Finding> findings, int exit) {
        if (options.json()) {
            json(Json.onlyMessages(findings));
        }
        findings(findings);
        long errors = findings.stream().filter(Finding::isError).count();
        err.printf("%d %s; nothing was written.%n", errors, errors == 1 ? "error" : "errors");
        err.flush();
        return exit;
    }

    /** Prints an answer as JSON. */
    void json(JsonNode answer) {
        out.println(Json.print(answer));
        out.flush();
    }

    /** Prints an answer as JSON where that was asked for. */
    void jsonIfWanted(JsonNode answer) {
        if (options.json()) {
            json(answer);
        }
    }

    /** Prints a table for a person, unless he asked for JSON or for quiet. */
    void table(TextTable table) {
        if (!options.json() && !options.quiet()) {
            out.print(table);
            out.flush();
        }
    }

    /** Prints a line for a person, unless he asked for JSON or for quiet. */
    void say(String line) {
        if (!options.json() && !options.quiet()) {
            out.println(line);
            out.flush();
        }
    }

    /** Says where the result is, and which of its sheets got another name. */
    void written(Written written) {
        written.sheets().forEach((built, tab) -> {
            if (!built.equals(tab)) {
                err.printf("note: a sheet of yours is called \"%s\"; the result is on \"%s\"%n", built, tab);
            }
        });
        err.flush();
        say("Written to " + written.file());
        Path backup = written.backup();
        if (backup != null) {
            say("What it was before is in " + backup);
        }
    }
}
