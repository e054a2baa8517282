package perkilo.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.json.Json;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.xlsx.write.Written;

/** Prints answers and messages as a command's options ask. */
final class Console {

    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean json;
    private final boolean quiet;

    Console(Command command, BookOptions options) {
        this(command, options.json(), options.quiet());
    }

    /**
     * A console.
     *
     * @param json whether the answer is printed as JSON
     * @param quiet whether only what matters is printed
     */
    Console(Command command, boolean json, boolean quiet) {
        this.json = json;
        this.quiet = quiet;
        this.out = command.spec().commandLine().getOut();
        this.err = command.spec().commandLine().getErr();
    }

    /** Prints findings on standard error, errors first; notes only where they are wanted. */
    void findings(List<Finding> findings) {
        for (Level level : Level.values()) {
            if (level == Level.NOTE && quiet) {
                continue;
            }
            findings.stream().filter(finding -> finding.level() == level).forEach(err::println);
        }
        err.flush();
    }

    /** Prints what kept the command from an answer, and gives the exit code back. */
    int refuse(List<Finding> findings, int exit) {
        return refuse(findings, findings, exit);
    }

    /**
     * Prints what kept the command from an answer, and gives the exit code back.
     *
     * @param unsaid those of the findings that were not printed before
     */
    int refuse(List<Finding> findings, List<Finding> unsaid, int exit) {
        if (json) {
            json(Json.onlyMessages(findings));
        }
        findings(unsaid);
        long errors = findings.stream().filter(Finding::isError).count();
        err.printf("%s; nothing was written.%n", counted(errors, "error"));
        err.flush();
        return exit;
    }

    /** A number of things, such as {@code 1 error}; the words take an s for more. */
    static String counted(long number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }

    /** A line that shows how far long work has come. */
    Progress progress() {
        return new Progress(err);
    }

    /** Whether the answer is printed as JSON. */
    boolean isJson() {
        return json;
    }

    /** Says on standard error what a person has to do. */
    void complain(String line) {
        err.println(line);
        err.flush();
    }

    /** Prints an answer as JSON. */
    void json(ObjectNode answer) {
        out.println(Json.print(answer));
        out.flush();
    }

    /** Prints a table for a person, unless he asked for JSON or for quiet. */
    void table(TextTable table) {
        if (!json && !quiet) {
            out.print(table);
            out.flush();
        }
    }

    /** Prints a line for a person, unless he asked for JSON or for quiet. */
    void say(String line) {
        if (!json && !quiet) {
            out.println(line);
            out.flush();
        }
    }

    /** Prints the errors and warnings of one of several books, errors first; its notes stand in its workbook. */
    void findingsOf(String book, List<Finding> findings) {
        for (Level level : List.of(Level.ERROR, Level.WARNING)) {
            findings.stream()
                    .filter(finding -> finding.level() == level)
                    .forEach(finding -> err.println(book + ": " + finding));
        }
        err.flush();
    }

    /** Prints several answers as JSON, where that was asked for. */
    void answers(ArrayNode answers) {
        if (json) {
            out.println(Json.print(answers));
            out.flush();
        }
    }

    /** Says where the result is, and as a note which of its sheets got another name. */
    void written(Written written) {
        written.sheets().forEach((built, tab) -> {
            if (!quiet && !built.equals(tab)) {
                err.printf("note: a sheet of yours is called \"%s\"; the result is on \"%s\"%n", built, tab);
            }
        });
        err.flush();
        say("Written to " + written.file());
        kept("it", written.backup());
    }

    /** Says where what stood in a result's place is kept, if it is. */
    void kept(String result, @Nullable Path backup) {
        if (backup == null) {
            return;
        }
        String told = "What " + result + " was before is in " + backup;
        if (json || quiet) {
            err.println(told); // it must not be missed
            err.flush();
        } else {
            say(told);
        }
    }
}
