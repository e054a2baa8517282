package perkilo.workbook.write;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import perkilo.report.Look;

/** The fonts, grounds and rules of each look. */
final class LookStyles {

    private static final String FONT = "Calibri";
    private static final int USUAL_SIZE = 11;

    private LookStyles() {}

    /**
     * Dresses a style.
     *
     * @param linked whether a click leads to another cell; such words are in the accent colour
     */
    static void apply(Look look, boolean linked, XSSFWorkbook workbook, XSSFCellStyle style) {
        style.setFont(font(look, linked, workbook));
        ground(look, style);
        rules(look, style);
    }

    private static XSSFFont font(Look look, boolean linked, XSSFWorkbook workbook) {
        XSSFFont font = workbook.createFont();
        font.setFontName(FONT);
        font.setFontHeightInPoints((short) size(look));
        boolean plain = ink(look).equals(Palette.INK);
        font.setColor(Palette.color(linked && plain ? Palette.ACCENT : ink(look)));
        font.setBold(isBold(look));
        return font;
    }

    private static int size(Look look) {
        return switch (look) {
            case TITLE -> 18;
            case ANSWER -> 12;
            case SECTION -> 13;
            case HINT -> 10;
            default -> USUAL_SIZE;
        };
    }

    static String ink(Look look) {
        return switch (look) {
            case TITLE, SECTION, HEADER, KEY -> Palette.ACCENT;
            case HINT -> Palette.MUTED;
            case ERROR -> Palette.ERROR;
            case WARNING -> Palette.WARNING;
            default -> Palette.INK;
        };
    }

    static boolean isBold(Look look) {
        return switch (look) {
            case TITLE, ANSWER, SECTION, HEADER, TOTAL, KEY -> true;
            default -> false;
        };
    }

    /** The colour behind the words; empty for none. */
    static String groundOf(Look look) {
        return switch (look) {
            case HEADER -> Palette.HEADER_GROUND;
            case CHOICE -> Palette.CHOICE_GROUND;
            case KEY -> Palette.ACCENT_GROUND;
            case ERROR -> Palette.ERROR_GROUND;
            case WARNING -> Palette.WARNING_GROUND;
            default -> "";
        };
    }

    private static void ground(Look look, XSSFCellStyle style) {
        String ground = groundOf(look);
        if (!ground.isEmpty()) {
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            style.setFillForegroundColor(Palette.color(ground));
        }
    }

    private static void rules(Look look, XSSFCellStyle style) {
        switch (look) {
            case HEADER, SECTION -> bottom(style, BorderStyle.THIN, Palette.ACCENT);
            case LABEL, PLAIN, ERROR, WARNING -> bottom(style, BorderStyle.HAIR, Palette.RULE);
            case TOTAL, KEY -> {
                top(style, BorderStyle.THIN, Palette.ACCENT);
                bottom(style, BorderStyle.HAIR, Palette.RULE);
            }
            case CHOICE -> box(style, BorderStyle.THIN, Palette.CHOICE_RULE);
            default -> {}
        }
    }

    private static void bottom(XSSFCellStyle style, BorderStyle border, String color) {
        style.setBorderBottom(border);
        style.setBottomBorderColor(Palette.color(color));
    }

    private static void top(XSSFCellStyle style, BorderStyle border, String color) {
        style.setBorderTop(border);
        style.setTopBorderColor(Palette.color(color));
    }

    private static void box(XSSFCellStyle style, BorderStyle border, String color) {
        top(style, border, color);
        bottom(style, border, color);
        style.setBorderLeft(border);
        style.setLeftBorderColor(Palette.color(color));
        style.setBorderRight(border);
        style.setRightBorderColor(Palette.color(color));
    }
}
