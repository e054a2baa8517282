package perkilo.page.folder;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import perkilo.page.http.Refusal;
import perkilo.page.http.Status;

/** The names that a file in the folder may have, on every system. */
final class FileNames {

    static final List<String> BOOKS = List.of(".xlsx", ".xlsm");

    /** Endings of price lists and of exchange rates. */
    static final List<String> LISTS = List.of(".csv", ".json", ".txt", ".tsv", ".xml", ".zip");

    private static final int LONGEST = 200;

    /** What leads to another folder or stream, or what a system keeps for itself. */
    private static final Pattern BAD = Pattern.compile("[\\\\/:*?\"<>|\\p{Cntrl}\\u202A-\\u202E\\u2066-\\u2069]");

    private static final Pattern DEVICE = Pattern.compile("(?i)(con|prn|aux|nul|com\\d|lpt\\d)(\\..*)?");

    private FileNames() {}

    /**
     * Checks a name that a page sent.
     *
     * @throws Refusal if a file must not have it
     */
    static void check(String name) throws Refusal {
        boolean bad = name.isBlank()
                || name.getBytes(StandardCharsets.UTF_8).length > LONGEST
                || BAD.matcher(name).find()
                || DEVICE.matcher(name).matches()
                || name.startsWith(".")
                || name.startsWith("~$")
                || name.startsWith(" ")
                || name.endsWith(".")
                || name.endsWith(" ");
        if (bad) {
            throw new Refusal(Status.BAD_REQUEST, FolderMessages.badName(shortened(name)));
        }
        if (!isBook(name) && !isList(name)) {
            List<String> known = new java.util.ArrayList<>(BOOKS);
            known.addAll(LISTS);
            throw new Refusal(Status.WRONG_KIND, FolderMessages.otherEnding(known));
        }
    }

    /** Whether a name is that of a workbook. */
    static boolean isBook(String name) {
        return endsWithOne(name, BOOKS);
    }

    /** Whether a name can be that of a list. */
    static boolean isList(String name) {
        return endsWithOne(name, LISTS);
    }

    /** A name with a number before its ending. */
    static String numbered(String name, int number) {
        int dot = name.lastIndexOf('.');
        return name.substring(0, dot) + " (" + number + ")" + name.substring(dot);
    }

    private static boolean endsWithOne(String name, List<String> endings) {
        String small = name.toLowerCase(Locale.ROOT);
        return endings.stream().anyMatch(small::endsWith);
    }

    private static String shortened(String name) {
        String visible = name.replaceAll("\\p{Cntrl}", " ");
        return visible.length() > 60 ? visible.substring(0, 60) + "…" : visible;
    }
}
