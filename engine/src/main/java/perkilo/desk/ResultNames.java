package perkilo.desk;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** The names of files that this tool writes beside a person's workbook. */
public final class ResultNames {

    private static final Pattern BACKUP = Pattern.compile("(?i).*\\.backup-\\d{4}-\\d\\d-\\d\\d-\\d+(\\.\\w+)?");

    private static final List<String> RESULTS = List.of(
            Destination.COSTED, Destination.ORDERED, Destination.SWAPPED, Destination.TARGET, Destination.COMPARED);

    private ResultNames() {}

    /** Whether a file with this name is a backup. */
    public static boolean isBackup(String name) {
        return BACKUP.matcher(name).matches();
    }

    /** Whether a workbook with this name is the result of a command. */
    public static boolean isResult(String name) {
        int dot = name.lastIndexOf('.');
        String stem = (dot < 0 ? name : name.substring(0, dot)).toLowerCase(Locale.ROOT);
        return RESULTS.stream().anyMatch(stem::endsWith);
    }
}
