package perkilo.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/** The exit codes of the commands. */
final class Exit {

    static final int DONE = 0;

    static final int BAD_INPUT = 1;

    static final int USAGE = 2;

    static final int PARTLY = 3;

    static final int FILE = 4;

    static final int FAULT = 5;

    private Exit() {}

    /** Each code with its meaning, as the help shows them. */
    static Map<String, String> meanings() {
        Map<String, String> meanings = new LinkedHashMap<>();
        meanings.put(Integer.toString(DONE), "done");
        meanings.put(
                Integer.toString(BAD_INPUT),
                "the input has errors and nothing can be answered; all are listed, and nothing is written");
        meanings.put(Integer.toString(USAGE), "the command line was wrong");
        meanings.put(
                Integer.toString(PARTLY),
                "answered in part: something is missing, late or not covered; each is named, the rest is written");
        meanings.put(Integer.toString(FILE), "a file cannot be read or written");
        meanings.put(Integer.toString(FAULT), "an internal fault; please report it, --debug shows where it happened");
        return meanings;
    }
}
