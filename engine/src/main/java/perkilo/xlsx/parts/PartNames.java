package perkilo.xlsx.parts;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Locale;
import java.util.function.Predicate;

/** Names of parts: absolute, such as {@code /xl/workbook.xml}; case does not matter. */
public final class PartNames {

    /** The hidden defined name that marks a result sheet of an earlier run, even if the sheet was renamed. */
    public static final String RESULT_MARK = "_perkilo_sheet";

    /** The hidden defined name that keeps a word about a sheet that was written for a person to go on with. */
    public static final String GIVEN_MARK = "_perkilo_given";

    /** The name that means the package itself in relationships. */
    public static final String PACKAGE = "/";

    private PartNames() {}

    /** The name by which parts are compared: from the root, in lower case, with {@code %20} read as a blank. */
    public static String key(String name) {
        String slashed = name.replace('\\', '/').replace("%20", " ");
        return (slashed.startsWith("/") ? slashed : "/" + slashed).toLowerCase(Locale.ROOT);
    }

    /** The part that holds a part's relationships. */
    public static String relationshipsOf(String part) {
        int folder = part.lastIndexOf('/') + 1;
        return part.substring(0, folder) + "_rels/" + part.substring(folder) + ".rels";
    }

    /** The part that a relationship's target names, resolved from the part that has the relationship. */
    public static String resolved(String source, String target) {
        String slashed = target.replace('\\', '/');
        if (slashed.startsWith("/")) {
            return slashed;
        }
        Deque<String> path = new ArrayDeque<>(Arrays.asList(source.substring(1).split("/", -1)));
        path.pollLast();
        for (String step : slashed.split("/", -1)) {
            if (step.equals("..")) {
                path.pollLast();
            } else if (!step.equals(".") && !step.isEmpty()) {
                path.addLast(step);
            }
        }
        return "/" + String.join("/", path);
    }

    /** The target by which one part names another, relative to its own folder. */
    public static String relative(String source, String target) {
        String[] from = source.split("/", -1);
        String[] to = target.split("/", -1);
        int same = 0;
        while (same < from.length - 1 && same < to.length - 1 && from[same].equalsIgnoreCase(to[same])) {
            same++;
        }
        String up = "../".repeat(from.length - 1 - same);
        return up + String.join("/", Arrays.asList(to).subList(same, to.length));
    }

    /**
     * The first name of its kind that is free.
     *
     * @param like such as {@code /xl/charts/chart7.xml}, whose number does not matter
     */
    public static String free(String like, Predicate<String> taken) {
        int dot = like.lastIndexOf('.');
        String stem = like.substring(0, dot).replaceAll("\\d+$", "");
        int number = 1;
        while (taken.test(stem + number + like.substring(dot))) {
            number++;
        }
        return stem + number + like.substring(dot);
    }
}
