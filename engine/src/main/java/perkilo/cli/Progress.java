package perkilo.cli;

import java.io.Console;
import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;

/** How far long work has come: one line on a terminal, and nothing elsewhere. */
final class Progress {

    private final PrintWriter err;
    private final boolean shown;
    private final String of;
    private int done;

    /**
     * Progress of some pieces of work.
     *
     * @param shown whether anybody looks
     * @param of what follows the count, such as {@code 12 books}
     */
    Progress(PrintWriter err, boolean shown, String of) {
        this.err = err;
        this.shown = shown;
        this.of = of;
    }

    /** One more is done; may be called by several threads. */
    synchronized void step() {
        done++;
        if (shown) {
            err.print("\r" + done + " of " + of);
            err.flush();
        }
    }

    /** All is done: the line goes away. */
    synchronized void end() {
        if (shown && done > 0) {
            err.print("\r" + " ".repeat((done + " of " + of).length()) + "\r");
            err.flush();
        }
    }

    /** Whether a person looks on. Later JDKs have a console without a terminal too, and say so. */
    @SuppressWarnings("SystemConsoleNull") // it is null up to JDK 21; later ones are asked whether it is a terminal
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
