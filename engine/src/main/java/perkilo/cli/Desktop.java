package perkilo.cli;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** The desktop that a person sits at, if there is one: no windows of our own, only their browser. */
final class Desktop {

    private static final String SYSTEM = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    private static final long PATIENCE_SECONDS = 5;

    /** Programs that open an address in the browser that the person has chosen. */
    private static final List<String> OPENERS = List.of("xdg-open", "sensible-browser", "x-www-browser");

    private Desktop() {}

    /**
     * The words that are meant: a double-click on the program opens the page, and so does a workbook or a folder that
     * is dropped onto it.
     *
     * @param typed at most one word
     * @param onTerminal whether there is a terminal
     * @param isThere whether there is a desktop
     */
    static String[] meant(String[] typed, boolean onTerminal, boolean isThere) {
        if (!isThere) {
            return typed;
        }
        if (typed.length == 0) {
            return onTerminal ? typed : new String[] {"open"};
        }
        return typed.length == 1 && isPlace(typed[0]) ? new String[] {"open", typed[0]} : typed;
    }

    private static boolean isPlace(String word) {
        if (word.startsWith("-")) {
            return false;
        }
        String name = word.toLowerCase(Locale.ROOT);
        try {
            return name.endsWith(".xlsx")
                    || name.endsWith(".xlsm")
                    || (!Commands.NAMES.contains(word) && Files.isDirectory(Path.of(word)));
        } catch (InvalidPathException noPath) {
            return false;
        }
    }

    /** Whether there is a desktop on which a browser can be shown. */
    static boolean isThere() {
        if (isWindows()) {
            return true;
        }
        if (isMac()) {
            return isUnset("SSH_CONNECTION");
        }
        return !isUnset("DISPLAY") || !isUnset("WAYLAND_DISPLAY");
    }

    private static boolean isUnset(String variable) {
        String value = System.getenv(variable);
        return value == null || value.isEmpty();
    }

    private static boolean isWindows() {
        return SYSTEM.startsWith("windows");
    }

    private static boolean isMac() {
        return SYSTEM.startsWith("mac");
    }

    /** Opens an address in the person's browser; false if that is not possible. */
    static boolean show(URI address) {
        return commands(address.toString()).stream().anyMatch(Desktop::isStarted);
    }

    private static boolean isStarted(List<String> command) {
        try {
            Process started = new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            // some of these programs run as long as the browser does
            return !started.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS) || started.exitValue() == 0;
        } catch (IOException failed) {
            return false;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static List<List<String>> commands(String address) {
        if (isWindows()) {
            return List.of(List.of("rundll32", "url.dll,FileProtocolHandler", address));
        }
        if (isMac()) {
            return List.of(List.of("open", address));
        }
        List<List<String>> commands = new ArrayList<>();
        for (String opener : OPENERS) {
            for (String folder : String.valueOf(System.getenv("PATH")).split(File.pathSeparator, -1)) {
                File file = new File(folder, opener);
                if (!folder.isEmpty() && file.canExecute()) {
                    commands.add(List.of(file.getPath(), address));
                    break;
                }
            }
        }
        return commands;
    }

    /** The person's home folder. */
    static Path home() {
        return Path.of(System.getProperty("user.home", "."));
    }

    /** The folder in which the system keeps what programs remember for this person. */
    static Path settings() {
        @Nullable String named = System.getenv(isWindows() ? "APPDATA" : "XDG_CONFIG_HOME");
        Path all = named != null && !named.isEmpty()
                ? Path.of(named)
                : home().resolve(isMac() ? "Library/Application Support" : ".config");
        return all.resolve("perkilo");
    }
}
