package perkilo.xlsx.grid;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Makes cells from a sheet's part: from their type, value and style. */
final class CellMaker implements PackedRow.Maker {

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
    private final List<Cell> made = new ArrayList<>();

    private record Remembered(String value, int style, Cell cell) {}

    /** How numbers are shown. */
    NumberFormats formats() {
        return formats;
    }

    CellMaker(SharedTexts texts, NumberFormats formats, boolean date1904) {
        this.texts = texts;
        this.formats = formats;
        this.date1904 = date1904;
    }

    /**
     * Adds a saved value to a row, unless it is blank.
     *
     * @param type as the part spells it; empty for a number
     * @param value not empty
     * @param style the number of its style
     */
    void pack(PackedRow row, int column, String type, String value, int style) {
        switch (type) {
            case "s" -> shared(row, column, value);
            case "str", "inlineStr" -> text(row, column, SharedTexts.decoded(value));
            case "b" ->
                row.text(column, value.strip().equals("1") || value.strip().equals("true") ? "TRUE" : "FALSE");
            case "e" -> pack(row, column, Cell.error(CellFaults.errorValue(shown(value))));
            case "d" -> pack(row, column, day(value));
            default -> row.number(column, style < 0 ? Integer.MAX_VALUE : style, value);
        }
    }

    /** Adds a cell to a row, unless it is blank. */
    void pack(PackedRow row, int column, Cell cell) {
        if (!cell.isBlank()) {
            row.known(column, PackedRow.MADE, keep(cell));
        }
    }

    /** Adds a text to a row, unless it is blank. */
    void text(PackedRow row, int column, String text) {
        if (!Spaces.isBlank(text)) {
            row.text(column, text);
        }
    }

    private void shared(PackedRow row, int column, String reference) {
        int number = texts.number(reference);
        if (number < 0) {
            pack(row, column, Cell.error(CellFaults.noText()));
        } else if (!texts.at(number).isBlank()) {
            row.known(column, PackedRow.SHARED, number);
        }
    }

    @Override
    public Cell shared(int number) {
        return texts.at(number);
    }

    @Override
    public Cell text(String text) {
        return Cell.text(text);
    }

    @Override
    public Cell made(int number) {
        return made.get(number);
    }

    @Override
    public int keep(Cell cell) {
        made.add(cell);
        return made.size() - 1;
    }

    /** The cell of a number; numbers repeat, so equal ones in the same style share one cell. */
    @Override
    public Cell number(String value, int style) {
        int place = (value.hashCode() * 31 + style) & (REMEMBERED - 1);
        Remembered known = recent[place];
        if (known != null && known.style == style && known.value.equals(value)) {
            return known.cell;
        }
        Cell cell = read(value, style);
        recent[place] = new Remembered(value, style, cell);
        return cell;
    }

    private Cell read(String text, int style) {
        String stripped = text.strip();
        NumberFormats.Format format = formats.of(style);
        if (!format.date() && isShortDecimal(stripped)) {
            return Cell.number(Decimal.tidy(new BigDecimal(stripped)), format.code());
        }
        if (!isNumber(stripped)) {
            return Cell.error(CellFaults.notANumber(shown(stripped)));
        }
        double value = Double.parseDouble(stripped);
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
            return Cell.error(CellFaults.tooLarge());
        }
        if (format.date()) {
            return value < 0 || value >= LAST_DAY
                    ? Cell.error(CellFaults.noDay())
                    : Cell.date(Days.of(value, date1904));
        }
        return Cell.number(Decimal.shortest(value), format.code());
    }

    /** Whether the text is digits with at most one point, and short enough to be exactly what a person typed. */
    private static boolean isShortDecimal(String text) {
        int points = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            points += c == '.' ? 1 : 0;
            if (c != '.' && (c < '0' || c > '9')) {
                return false;
            }
        }
        return points < 2 && text.length() > points && text.length() <= ALWAYS_EXACT;
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
            return Cell.error(CellFaults.notADate(shown(stripped)));
        }
    }

    private static String shown(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }
}
