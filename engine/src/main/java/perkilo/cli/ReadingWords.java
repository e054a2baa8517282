package perkilo.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.origin.Account;
import perkilo.origin.Account.Entry;
import perkilo.origin.Account.Fate;
import perkilo.origin.Account.Subject;
import perkilo.origin.Counted;
import perkilo.origin.Origin;

/** The account of the reading in a few lines, for the terminal. */
final class ReadingWords {

    private static final int NAMED = 8;

    private ReadingWords() {}

    /** A line for each table and for each sheet that was not understood, and one for what is not needed. */
    static List<String> of(Account account) {
        List<String> lines = new ArrayList<>();
        Map<String, List<String>> notNeeded = new LinkedHashMap<>();
        for (Account.Group group : account.groups()) {
            Entry whole = group.whole();
            String name = name(whole.place());
            if (whole.isRead()) {
                lines.add(name + ": read as " + whole.as() + ", " + Counted.of(whole.rows(), "row") + "."
                        + columns(group) + leftOut(group) + texts(group));
            } else if (whole.fate() == Fate.NOT_UNDERSTOOD) {
                lines.add(name + ": not understood. " + whole.why());
            } else {
                notNeeded.computeIfAbsent(whole.why(), any -> new ArrayList<>()).add(name);
            }
        }
        notNeeded.forEach((why, names) -> lines.add(named(names) + ": not needed. " + why));
        return lines;
    }

    private static String name(Origin place) {
        if (place.sheet().isEmpty()) {
            return place.file();
        }
        String at = place.cell().isEmpty() || place.cell().equals("A1") ? "" : " (from " + place.cell() + ")";
        return "'" + place.sheet() + "'" + at;
    }

    private static String columns(Account.Group group) {
        List<String> columns = group.columnsNotRead();
        return columns.isEmpty() ? "" : " Columns not read: " + named(columns) + ".";
    }

    private static String leftOut(Account.Group group) {
        StringBuilder text = new StringBuilder();
        for (Entry part : group.parts()) {
            if (part.subject() == Subject.ROWS && !part.isRead()) {
                text.append(part.rows() == 1 ? " Row " : " Rows ")
                        .append(part.text())
                        .append(" left out: ")
                        .append(part.why());
            }
        }
        return text.toString();
    }

    /** Lines beside the table that may matter. */
    private static String texts(Account.Group group) {
        List<String> lines = group.parts().stream()
                .filter(part -> part.subject() == Subject.CELLS && part.fate() == Fate.NOT_UNDERSTOOD)
                .map(part -> "\"" + part.text() + "\"")
                .toList();
        return lines.isEmpty() ? "" : " Lines not understood: " + named(lines) + ".";
    }

    private static String named(List<String> names) {
        String first = String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
        return names.size() <= NAMED ? first : first + " and " + (names.size() - NAMED) + " more";
    }
}
