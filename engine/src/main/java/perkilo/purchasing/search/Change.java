package perkilo.purchasing.search;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.PurchasePlan.Line;

/**
 * A change of a plan.
 *
 * @param out lines that are removed
 * @param in lines that replace them
 */
record Change(List<Line> out, List<Line> in) {

    Change {
        out = List.copyOf(out);
        in = List.copyOf(in);
    }

    /** The change from some lines to others; lines that are in both stay. */
    static Change between(List<Line> before, List<Line> after) {
        return new Change(
                before.stream().filter(line -> !after.contains(line)).toList(),
                after.stream().filter(line -> !before.contains(line)).toList());
    }

    /** The move of whole lines to another period; each joins the packs of its quote that are bought there already. */
    static Change moving(Draft draft, List<Line> lines, int period) {
        List<Line> out = new ArrayList<>(lines);
        List<Line> in = new ArrayList<>();
        for (Line line : lines) {
            @Nullable Line there = draft.line(line.quote(), period);
            if (there != null) {
                out.add(there);
            }
            in.add(new Line(line.quote(), period, line.packs() + (there == null ? 0 : there.packs())));
        }
        return new Change(out, in);
    }

    /** The move of some packs of a line to another line of the same quote. */
    static Change shifting(Line from, Line to, long packs) {
        return new Change(List.of(from, to), List.of(with(from, -packs), with(to, packs)));
    }

    /** The removal of some packs from a line. */
    static Change shortening(Line line, long packs) {
        return new Change(List.of(line), List.of(with(line, -packs)));
    }

    private static Line with(Line line, long more) {
        return new Line(line.quote(), line.period(), line.packs() + more);
    }
}
