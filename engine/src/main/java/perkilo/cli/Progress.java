package perkilo.cli;

import java.io.Console;
import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import perkilo.desk.Stage;
import perkilo.desk.Watch;

/** How far long work has come: one line on a terminal, and nothing elsewhere. Nothing is stopped by it. */
final class Progress implements Watch, AutoCloseable {

    /** Work that is done by then needs no line. */
    private static final long PATIENCE_NANOS = 1_000_000_000L;

    private final PrintWriter err;
    private final long from;
    private boolean asked;
    private boolean shown;
    private String line = "";

    /** Progress of work that begins now; whether a person looks on is asked once it takes long. */
    Progress(PrintWriter err) {
        this.err = err;
        this.from = System.nanoTime() + PATIENCE_NANOS;
    }

    /**
     * Progress that is shown from the first moment on, or not at all.
     *
     * @param shown whether a person looks on
     */
    Progress(PrintWriter err, boolean shown) {
        this.err = err;
        this.from = System.nanoTime();
        this.asked = true;
        this.shown = shown;
    }

    @Override
    public synchronized void at(Stage stage, int done, int of) {
        if (!isShown()) {
            return;
        }
        String next = (of > 0 ? done + " of " + of : Integer.toString(done)) + " " + stage.pieces();
        err.print("\r" + next + " ".repeat(Math.max(0, line.length() - next.length())));
        err.flush();
        line = next;
    }

    @Override
    public boolean isCancelled() {
        return false;
    }

    /** All is done: the line goes away. */
    @Override
    public synchronized void close() {
        if (!line.isEmpty()) {
            err.print("\r" + " ".repeat(line.length()) + "\r");
            err.flush();
            line = "";
        }
    }

    private boolean isShown() {
        if (!asked && System.nanoTime() - from >= 0) {
            asked = true;
            shown = onTerminal();
        }
        return shown;
    }

    /** Whether a person looks on. Later JDKs have a console without a terminal too, and say so. */
    @SuppressWarnings("SystemConsoleNull") // it is null up to JDK 21; later ones are asked whether it is a terminal
    private static boolean onTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException before22) {
            return true;
        } catch (IllegalAccessException | InvocationTargetException odd) {
            return false;
        }
    }
}
