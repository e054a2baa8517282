package perkilo.swaps;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import perkilo.model.Formula;
import perkilo.names.Names;
import perkilo.origin.Decimals;

/**
 * A line of a formula that was made from another one, with what changed in it.
 *
 * @param line as it is in the new formula
 * @param level as a fraction; the balance for the q.s. line
 * @param from the place of the line in the original, from zero; -1 for a material that came in
 * @param replaced the place in the original of what it replaces, from zero; -1 for none
 * @param change in words; empty for none
 */
public record ChangedLine(Formula.Line line, BigDecimal level, int from, int replaced, String change) {

    /** Whether anything but the balance changed. */
    public boolean isChanged() {
        return !change.isEmpty();
    }

    /** The lines of a formula as it is. */
    public static List<ChangedLine> ofUnchanged(Formula formula) {
        return of(formula, formula);
    }

    /** The lines of a formula that was made from another one. */
    static List<ChangedLine> of(Formula original, Formula formula) {
        int[] froms = froms(original, formula);
        List<ChangedLine> lines = new ArrayList<>();
        for (int i = 0; i < formula.lines().size(); i++) {
            Formula.Line line = formula.lines().get(i);
            BigDecimal level = formula.levelOf(line);
            lines.add(new ChangedLine(
                    line, level, froms[i], replaced(original, formula, froms, i), change(original, formula, froms, i)));
        }
        return lines;
    }

    /** What is in the original and not in the new formula, with its level in words. */
    static List<String> out(Formula original, Formula formula) {
        int[] froms = froms(original, formula);
        List<String> out = new ArrayList<>();
        for (int i = 0; i < original.lines().size(); i++) {
            if (!contains(froms, i)) {
                out.add(named(original, i));
            }
        }
        return out;
    }

    private static int[] froms(Formula original, Formula formula) {
        int[] froms = new int[formula.lines().size()];
        Arrays.fill(froms, -1);
        for (int i = 0; i < froms.length; i++) {
            String key = key(formula.lines().get(i));
            for (int j = 0; j < original.lines().size() && froms[i] < 0; j++) {
                if (key(original.lines().get(j)).equals(key) && !contains(froms, j)) {
                    froms[i] = j;
                }
            }
        }
        return froms;
    }

    private static boolean contains(int[] places, int place) {
        for (int each : places) {
            if (each == place) {
                return true;
            }
        }
        return false;
    }

    private static String key(Formula.Line line) {
        return Names.key(line.phase()) + "|" + Names.key(line.material());
    }

    private static String change(Formula original, Formula formula, int[] froms, int at) {
        Formula.Line line = formula.lines().get(at);
        if (froms[at] >= 0) {
            BigDecimal before = original.levelOf(original.lines().get(froms[at]));
            BigDecimal now = formula.levelOf(line);
            return before.compareTo(now) == 0 ? "" : "before: " + percent(before);
        }
        int replaced = replaced(original, formula, froms, at);
        return replaced < 0 ? "new" : "new, in place of " + named(original, replaced);
    }

    /** A material that came in replaces what stood in the same line, if that went out. */
    private static int replaced(Formula original, Formula formula, int[] froms, int at) {
        boolean alike = formula.lines().size() == original.lines().size();
        return froms[at] < 0 && alike && !contains(froms, at) ? at : -1;
    }

    private static String named(Formula original, int line) {
        Formula.Line one = original.lines().get(line);
        return one.material() + ", " + percent(original.levelOf(one));
    }

    private static String percent(BigDecimal fraction) {
        return Decimals.readable(fraction.movePointRight(2), 4) + " %";
    }
}
