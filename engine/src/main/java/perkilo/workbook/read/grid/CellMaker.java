package perkilo.workbook.read.grid;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import org.apache.poi.ss.usermodel.DateUtil;

/** Makes cells of what a sheet's part says: their type, value and style. */
final class CellMaker {

    private static final double LAST_DAY = 2_958_466;
    private static final double TOO_LARGE = 1e15;
    private static final int ALWAYS_EXACT = 15;
    private static final int DATE_LENGTH = 10;
    private static final int SHOWN = 40;
    private static final int REMEMBERED = 1 << 12;

    private final SharedTexts texts;
    private final NumberFormats formats;
    private final boolean date1904;
    private final Remembered[] recent = new Remembered[REMEMBERED];

    private record Remembered(String value, int style, Cell cell) {}

    CellMaker(SharedTexts texts, NumberFormats formats, boolean date1904) {
        this.texts = texts;
        this.formats = formats;
        this.date1904 = date1904;
    }

    /**
     * The cell of a saved value.
     *
     * @param type as the part spells it; empty for a number
     * @param value not empty
     * @param style the number of its style
     */
    Cell of(String type, String value, int style) {
        return switch (type) {
            case "s" -> texts.at(value.strip());
            case "str", "inlineStr" -> Cell.text(SharedTexts.decoded(value));
            case "b" -> Cell.text(value.strip().equals("1") || value.strip().equals("true") ? "TRUE" : "FALSE");
            case "e" -> Cell.error(shown(value) + ", an error value");
            case "d" -> day(value);
            default -> remembered(value, style);
        };
    }

    /** Sheets repeat their numbers; one cell does for all that are shown alike. */
    private Cell remembered(String value, int style) {
        int place = (value.hashCode() * 31 + style) & (REMEMBERED - 1);
        Remembered known = recent[place];
        if (known != null && known.style == style && known.value.equals(value)) {
            return known.cell;
        }
        Cell cell = number(value, style);
        recent[place] = new Remembered(value, style, cell);
        return cell;
    }

    private Cell number(String text, int style) {
        String stripped = text.strip();
        if (!isNumber(stripped)) {
            return Cell.error("\"" + shown(stripped) + "\" in a cell of numbers, which is none; type it again");
        }
        double value = Double.parseDouble(stripped);
        NumberFormats.Format format = formats.of(style);
        if (!format.date() && Math.abs(value) < TOO_LARGE && stripped.length() <= ALWAYS_EXACT) {
            return Cell.number(Decimal.tidy(new BigDecimal(stripped)), format.code());
        }
        return number(value, format);
    }

    /** The cell of a number that was computed. */
    Cell number(double value, int style) {
        return number(value, formats.of(style));
    }

    private Cell number(double value, NumberFormats.Format format) {
        if (!(Math.abs(value) < TOO_LARGE)) {
            return Cell.error("a number too large to be meant");
        }
        if (format.date()) {
            return value < 0 || value >= LAST_DAY
                    ? Cell.error("a number in date format that is no day")
                    : Cell.date(DateUtil.getLocalDateTime(value, date1904).toLocalDate());
        }
        return Cell.number(Decimal.shortest(value), format.code());
    }

    private static boolean isNumber(String text) {
        boolean digit = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            digit |= c >= '0' && c <= '9';
            if ((c < '0' || c > '9') && "+-.eE".indexOf(c) < 0) {
                return false;
            }
        }
        try {
            return digit && !Double.isNaN(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            return false;
        }
    }

    private static Cell day(String text) {
        String stripped = text.strip();
        try {
            return Cell.date(LocalDate.parse(stripped.substring(0, Math.min(DATE_LENGTH, stripped.length()))));
        } catch (DateTimeException e) {
            return Cell.error("\"" + shown(stripped) + "\" in a cell of dates, which is none; type it again");
        }
    }

    private static String shown(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }
}
