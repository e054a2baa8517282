package perkilo.origin;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One cause, one message: findings of one level with the same words have the same cause and become one, with all its
 * places. Cells below each other are a range, such as {@code Offers!H2:H17}.
 */
public final class SameCause {

    /** The most places that one message names. */
    private static final int NAMED = 8;

    private static final Pattern CELL = Pattern.compile("([A-Z]+)(\\d+)");
    private static final Pattern LINE = Pattern.compile("line (\\d+)");

    private SameCause() {}

    /** Level and words. */
    private record Cause(Level level, String text) {}

    /** A cell in a column, or a line of a text file; the column of a line is empty. */
    private record Place(String column, int row) {

        static @Nullable Place of(String cell) {
            Matcher named = CELL.matcher(cell);
            if (named.matches()) {
                return new Place(named.group(1), Integer.parseInt(named.group(2)));
            }
            Matcher line = LINE.matcher(cell);
            return line.matches() ? new Place("", Integer.parseInt(line.group(1))) : null;
        }
    }

    /** The findings, each cause once, in the order in which each cause comes first. */
    public static List<Finding> once(List<Finding> findings) {
        Map<Cause, List<Finding>> byCause = new LinkedHashMap<>();
        for (Finding finding : findings) {
            byCause.computeIfAbsent(new Cause(finding.level(), finding.text()), any -> new ArrayList<>(1))
                    .add(finding);
        }
        if (byCause.size() == findings.size()) {
            return List.copyOf(findings);
        }
        return byCause.values().stream().map(SameCause::one).toList();
    }

    private static Finding one(List<Finding> same) {
        Finding first = same.get(0);
        List<Origin> sheets = bySheet(same);
        if (sheets.size() == 1) {
            return new Finding(first.level(), sheets.get(0), first.text());
        }
        List<String> others =
                sheets.stream().skip(1).limit(NAMED).map(Origin::where).toList();
        int more = sheets.size() - 1 - others.size();
        String also = " Also at " + String.join("; ", others)
                + (more > 0 ? " and " + Counted.of(more, "other place") : "") + ".";
        return new Finding(first.level(), sheets.get(0), first.text() + also);
    }

    /** The places of each sheet together, in the order in which the sheets come first. */
    private static List<Origin> bySheet(List<Finding> same) {
        Map<List<String>, List<Origin>> places = new LinkedHashMap<>();
        for (Finding finding : same) {
            Origin place = finding.origin();
            List<Origin> ofSheet =
                    places.computeIfAbsent(List.of(place.file(), place.sheet()), any -> new ArrayList<>(1));
            if (!ofSheet.contains(place)) {
                ofSheet.add(place);
            }
        }
        return places.values().stream().map(SameCause::together).toList();
    }

    private static Origin together(List<Origin> places) {
        Origin first = places.get(0);
        if (places.size() == 1) {
            return first;
        }
        List<String> ranges = new ArrayList<>();
        @Nullable Place from = null;
        @Nullable Place last = null;
        for (Origin place : places) {
            Place next = Place.of(place.cell());
            if (next == null) {
                ranges.addAll(range(from, last));
                from = null;
                last = null;
                if (!place.cell().isEmpty()) {
                    ranges.add(place.cell());
                }
                continue;
            }
            boolean follows = last != null && last.column().equals(next.column()) && last.row() + 1 == next.row();
            if (!follows) {
                ranges.addAll(range(from, last));
                from = next;
            }
            last = next;
        }
        ranges.addAll(range(from, last));
        int more = ranges.size() - NAMED;
        String cells = String.join(", ", ranges.subList(0, Math.min(NAMED, ranges.size())))
                + (more > 0 ? " and " + more + " more" : "");
        return new Origin(first.file(), first.sheet(), cells);
    }

    private static List<String> range(@Nullable Place from, @Nullable Place last) {
        if (from == null || last == null) {
            return List.of();
        }
        boolean line = from.column().isEmpty();
        if (from.row() == last.row()) {
            return List.of(line ? "line " + from.row() : from.column() + from.row());
        }
        return List.of(
                line
                        ? "lines " + from.row() + "–" + last.row()
                        : from.column() + from.row() + ":" + last.column() + last.row());
    }
}
