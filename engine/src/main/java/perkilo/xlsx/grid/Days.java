package perkilo.xlsx.grid;

import java.time.LocalDate;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.DateUtil;

/**
 * Decides which numbers of a sheet are days, and converts them.
 *
 * <p>The usual formats are recognised here; for others POI is used, which takes some milliseconds to load.
 */
final class Days {

    /** The days zero from which sheets count (ECMA-376, 18.17.4.1). */
    private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 31);

    private static final LocalDate FIRST_OF_1904 = LocalDate.of(1904, 1, 1);

    /** Sheets that count from 1900 include 29 February 1900, a day that did not exist. */
    private static final int NO_SUCH_DAY = 60;

    private static final double HALF_A_MILLISECOND = 0.5 / (24 * 60 * 60 * 1000);

    private static final int FIRST_DAY = 14;
    private static final int LAST_DAY_AND_TIME = 22;
    private static final int FIRST_TIME = 45;
    private static final int LAST_TIME = 47;

    private static final Pattern WORDS = Pattern.compile("\"[^\"]*\"|\\\\.");
    private static final Pattern LETTERS = Pattern.compile("[yYmMdDhHsS]|[^\\x00-\\x7f]");
    private static final Pattern PLAIN_DAY = Pattern.compile("[yYmMdD](\\\\?[-./ ]|[yYmMdD])*(;@)?");

    private Days() {}

    /**
     * Whether a number format shows a day or a time of day.
     *
     * @param id its number; some numbers have a fixed meaning
     * @param code as the spreadsheet spells it
     */
    static boolean isShownBy(int id, String code) {
        return isBuiltIn(id)
                || PLAIN_DAY.matcher(code).matches()
                || (mayBeDay(code) && DateUtil.isADateFormat(id, code));
    }

    private static boolean mayBeDay(String code) {
        return LETTERS.matcher(WORDS.matcher(code).replaceAll("")).find();
    }

    /** Whether a built-in format shows a day or a time (ECMA-376, 18.8.30). */
    private static boolean isBuiltIn(int id) {
        return (id >= FIRST_DAY && id <= LAST_DAY_AND_TIME) || (id >= FIRST_TIME && id <= LAST_TIME);
    }

    /**
     * The day that a number stands for.
     *
     * @param value days, with the time of day as the fraction; at least zero
     * @param from1904 whether the workbook counts from 1904
     */
    static LocalDate of(double value, boolean from1904) {
        long days = (long) (value + HALF_A_MILLISECOND);
        if (from1904) {
            return FIRST_OF_1904.plusDays(days);
        }
        return BEFORE_1900.plusDays(days > NO_SUCH_DAY ? days - 1 : days);
    }
}
