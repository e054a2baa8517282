package perkilo.cli;

/** What a command's exit code says. */
final class Exit {

    /** It is done. */
    static final int DONE = 0;

    /** The input has errors; all are listed, and nothing is written. */
    static final int BAD_INPUT = 1;

    /** The command line was wrong. */
    static final int USAGE = 2;

    /** There is no purchase that covers every need; nothing is written. */
    static final int NO_PLAN = 3;

    /** A file cannot be read or written. */
    static final int FILE = 4;

    private Exit() {}
}
