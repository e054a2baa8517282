package perkilo.xlsx.splice;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Which formulas of a sheet may use a cell. A formula whose reach is not clear, such as one with a name or a function
 * that computes a reference, counts as using every cell.
 */
final class FormulaReach {

    private static final Pattern TEXT = Pattern.compile("\"[^\"]*\"");

    private static final Pattern REFERENCE = Pattern.compile(
            "(?:('(?:[^']|'')+'|[\\w.]+)!)?\\$?([A-Z]{1,3})?\\$?(\\d{1,7})?(?::\\$?([A-Z]{1,3})?\\$?(\\d{1,7})?)?");

    private static final Pattern WORD = Pattern.compile("[A-Z_\\\\][A-Z0-9_.]*(?!\\()");
    private static final Pattern CELL = Pattern.compile("\\$?[A-Z]{1,3}\\$?\\d{1,7}|\\$?[A-Z]{1,3}:\\$?[A-Z]{1,3}");
    private static final Pattern COMPUTED = Pattern.compile("(INDIRECT|OFFSET)\\(|\\[");

    private final String sheet;
    private final CellChange cell;

    private FormulaReach(String sheet, CellChange cell) {
        this.sheet = sheet;
        this.cell = cell;
    }

    /**
     * The first formula of a sheet that may use a cell.
     *
     * @param name of the sheet that the formulas are on
     * @return its place
     */
    static Optional<String> first(String name, XmlElement sheet, CellChange cell) {
        FormulaReach reach = new FormulaReach(name, cell);
        XmlElement data = sheet.child("sheetData");
        if (data == null) {
            return Optional.empty();
        }
        for (XmlElement row : data.children("row")) {
            for (XmlElement one : row.children("c")) {
                XmlElement formula = one.child("f");
                if (formula != null && reach.mayUse(formula)) {
                    return Optional.of(name + "!" + one.get("r", "?"));
                }
            }
        }
        return Optional.empty();
    }

    private boolean mayUse(XmlElement formula) {
        String words = TEXT.matcher(formula.words()).replaceAll("").toUpperCase(Locale.ROOT);
        if (words.isEmpty()) {
            return false; // one of a group: the first of the group has the words
        }
        if (COMPUTED.matcher(words).find() || hasName(words)) {
            return true;
        }
        int[] more = spread(formula);
        Matcher matcher = REFERENCE.matcher(words);
        while (matcher.find()) {
            if (!matcher.group().isEmpty() && holds(matcher, more)) {
                return true;
            }
        }
        return false;
    }

    /** Whether there is a word that is neither a function nor a cell nor a sheet. */
    private static boolean hasName(String words) {
        String bare = words.replaceAll("('(?:[^']|'')+'|[\\w.]+)!", "").replaceAll("\\$", "");
        Matcher matcher = WORD.matcher(bare);
        while (matcher.find()) {
            boolean function = matcher.end() < bare.length() && bare.charAt(matcher.end()) == '(';
            String word = matcher.group();
            boolean within = matcher.start() > 0 && Character.isLetterOrDigit(bare.charAt(matcher.start() - 1));
            boolean column = word.matches("[A-Z]{1,3}")
                    && ((matcher.end() < bare.length() && bare.charAt(matcher.end()) == ':')
                            || (matcher.start() > 0 && bare.charAt(matcher.start() - 1) == ':'));
            if (!function
                    && !within
                    && !column
                    && !CELL.matcher(word).matches()
                    && !word.equals("TRUE")
                    && !word.equals("FALSE")
                    && !isBeforeBracket(bare, matcher.end())) {
                return true;
            }
        }
        return false;
    }

    private static boolean isBeforeBracket(String words, int end) {
        int at = end;
        while (at < words.length() && (Character.isLetterOrDigit(words.charAt(at)) || words.charAt(at) == '.')) {
            at++;
        }
        return at < words.length() && words.charAt(at) == '(';
    }

    /** How many rows and columns a group of formulas takes, whose references move with it. */
    private static int[] spread(XmlElement formula) {
        Matcher block = REFERENCE.matcher(formula.get("ref", ""));
        if (!block.matches() || block.group(4) == null || block.group(5) == null) {
            return new int[] {0, 0};
        }
        return new int[] {
            number(block.group(5), 0) - number(block.group(3), 0), column(block.group(4), 0) - column(block.group(2), 0)
        };
    }

    private boolean holds(Matcher reference, int[] more) {
        String letters = reference.group(2);
        String digits = reference.group(3);
        if (letters == null && digits == null) {
            return false;
        }
        String of = reference.group(1);
        String name = of == null
                ? sheet
                : of.startsWith("'") ? of.substring(1, of.length() - 1).replace("''", "'") : of;
        if (!name.equalsIgnoreCase(cell.sheet())) {
            return false;
        }
        boolean block = reference.group().contains(":");
        if (!block && (letters == null || digits == null)) {
            return false; // a number, or a word that was looked at before
        }
        int firstRow = number(digits, 1) - 1;
        int lastRow = (block ? number(reference.group(5), Integer.MAX_VALUE / 2) : number(digits, 1)) - 1 + more[0];
        int firstColumn = column(letters, 0);
        int lastColumn = (block ? column(reference.group(4), Integer.MAX_VALUE / 2) : column(letters, 0)) + more[1];
        return cell.row() >= firstRow
                && cell.row() <= lastRow
                && cell.column() >= firstColumn
                && cell.column() <= lastColumn;
    }

    private static int number(@Nullable String digits, int otherwise) {
        return digits == null ? otherwise : Integer.parseInt(digits);
    }

    private static int column(@Nullable String letters, int otherwise) {
        if (letters == null) {
            return otherwise;
        }
        int column = 0;
        for (int at = 0; at < letters.length(); at++) {
            column = column * 26 + letters.charAt(at) - 'A' + 1;
        }
        return column - 1;
    }
}
