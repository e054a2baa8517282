package perkilo.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.json.Json;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.xlsx.write.Written;

/** Prints answers and messages in the way that the options of a command ask for. */
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
     * @param quiet whether tables and notes are left out
     */
    Console(Command command, boolean json, boolean quiet) {
        this.json = json;
        this.quiet = quiet;
        this.out = command.spec().commandLine().getOut();
        this.err = command.spec().commandLine().getErr();
    }

    /** Prints findings on standard error, errors first; no notes if quiet. */
    void findings(List<Finding> findings) {
        for (Level level : Level.values()) {
            if (level == Level.NOTE && quiet) {
                continue;
            }
            findings.stream().filter(finding -> finding.level() == level).forEach(err::println);
        }
        err.flush();
    }

    /** Prints why there is no answer, and returns the exit code. */
    int refuse(Account account, List<Finding> findings, int exit) {
        return refuse(account, findings, findings, exit);
    }

    /**
     * Prints why there is no answer, and returns the exit code.
     *
     * @param account what became of everything in the files
     * @param unsaid the findings that were not printed before
     */
    int refuse(Account account, List<Finding> findings, List<Finding> unsaid, int exit) {
        if (json) {
            json(Json.onlyMessages(account, findings));
        }
        findings(unsaid);
        long errors = findings.stream().filter(Finding::isError).count();
        err.println(CommandMessages.nothingWritten(errors));
        err.flush();
        return exit;
    }

    /** A line that shows the progress of long work. */
    Progress progress() {
        return new Progress(err);
    }

    /** Whether the answer is printed as JSON. */
    boolean isJson() {
        return json;
    }

    /** Prints on standard error what a person has to do. */
    void complain(String line) {
        err.println(line);
        err.flush();
    }

    /** Prints an answer as JSON. */
    void json(ObjectNode answer) {
        out.println(Json.print(answer));
        out.flush();
    }

    /** Prints a table, unless the output is JSON or quiet. */
    void table(TextTable table) {
        if (!json && !quiet) {
            out.print(table);
            out.flush();
        }
    }

    /** Prints a line, unless the output is JSON or quiet. */
    void say(String line) {
        if (!json && !quiet) {
            out.println(line);
            out.flush();
        }
    }

    /** Prints the errors and warnings of one of several books, errors first; its notes are in its result workbook. */
    void findingsOf(String book, List<Finding> findings) {
        for (Level level : List.of(Level.ERROR, Level.WARNING)) {
            findings.stream()
                    .filter(finding -> finding.level() == level)
                    .forEach(finding -> err.println(book + ": " + finding));
        }
        err.flush();
    }

    /** Prints several answers, if the output is JSON. */
    void answers(ArrayNode answers) {
        if (json) {
            out.println(Json.print(answers));
            out.flush();
        }
    }

    /** Prints where the result is, and as a note which of its sheets got another name. */
    void written(Written written) {
        written.sheets().forEach((built, tab) -> {
            if (!quiet && !built.equals(tab)) {
                err.println(Level.NOTE.word() + ": " + CommandMessages.otherSheet(built, tab));
            }
        });
        err.flush();
        say("Written to " + written.file());
        kept("It", written.backup());
    }

    /** Prints where the file that a result has replaced is kept, if it is. */
    void kept(String result, @Nullable Path backup) {
        if (backup == null) {
            return;
        }
        String told = result + " replaced a file, which is kept as " + backup;
        if (json || quiet) {
            err.println(told); // it must not be missed
            err.flush();
        } else {
            say(told);
        }
    }
}
