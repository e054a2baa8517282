package perkilo.cli;

import java.io.Console;
import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import perkilo.desk.Stage;
import perkilo.desk.Watch;

/** The progress of long work: one line on a terminal, and nothing elsewhere. It never stops the work. */
final class Progress implements Watch, AutoCloseable {

    /** Work that ends sooner shows no line. */
    private static final long PATIENCE_NANOS = 1_000_000_000L;

    private final PrintWriter err;
    private final long from;
    private boolean asked;
    private boolean shown;
    private String line = "";

    /** Progress of work that begins now. Whether there is a terminal is checked only once the work takes long. */
    Progress(PrintWriter err) {
        this.err = err;
        this.from = System.nanoTime() + PATIENCE_NANOS;
    }

    /**
     * Progress that is shown from the start, or not at all.
     *
     * @param shown whether there is a terminal
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

    /** Removes the line, as the work is done. */
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

    /** Whether there is a terminal. Since JDK 22 there is a console without one too, which has a method to ask. */
    @SuppressWarnings("SystemConsoleNull") // null up to JDK 21; later consoles are asked if they are a terminal
    static boolean onTerminal() {
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
