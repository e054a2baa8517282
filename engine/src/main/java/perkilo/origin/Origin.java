package perkilo.origin;

/**
 * The place that something was read from, as a person would point to it.
 *
 * @param file the file's name without its folder; empty where there is no file
 * @param sheet the sheet as its tab shows it; empty for a file without sheets
 * @param cell the cell as a spreadsheet names it, such as {@code F12}; in a text file the line, such as {@code line 4};
 *     empty where the whole sheet or file is meant
 */
public record Origin(String file, String sheet, String cell) {

    /** What no file holds: a default, or a value given through the programming interface. */
    public static final Origin NONE = new Origin("", "", "");

    /** The place as it is written in a message: {@code Offers!F12}, or {@code prices.csv line 4} for a text file. */
    public String where() {
        if (sheet.isEmpty()) {
            return cell.isEmpty() ? file : (file + " " + cell).strip();
        }
        return cell.isEmpty() ? sheet : sheet + "!" + cell;
    }

    /** Whether a file stands behind this place. */
    public boolean isKnown() {
        return !file.isEmpty() || !sheet.isEmpty();
    }

    @Override
    public String toString() {
        return where();
    }
}
