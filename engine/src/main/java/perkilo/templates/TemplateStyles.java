package perkilo.templates;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cell styles of a template; cells that a person fills in have a pale fill. */
final class TemplateStyles {

    private static final byte[] INK = rgb(0x2f, 0x3b, 0x45);
    private static final byte[] HEAD = rgb(0xdd, 0xe6, 0xe4);
    private static final byte[] PALE = rgb(0xfb, 0xf6, 0xe9);
    private static final byte[] RULE = rgb(0xe3, 0xdc, 0xc8);

    private final XSSFWorkbook book;
    private final XSSFCellStyle header;
    private final XSSFCellStyle numberHeader;
    private final XSSFCellStyle input;
    private final XSSFCellStyle text;
    private final XSSFCellStyle day;
    private final XSSFCellStyle title;
    private final XSSFCellStyle words;

    TemplateStyles(XSSFWorkbook book) {
        this.book = book;
        this.header = header();
        this.numberHeader = header();
        this.numberHeader.setAlignment(HorizontalAlignment.RIGHT);
        this.input = input("General");
        this.text = input("General");
        indent(header);
        indent(text);
        this.day = input("yyyy\\-mm\\-dd");
        this.title = plain(16, true);
        this.words = plain(11, false);
        this.words.setWrapText(true);
    }

    /** The head of a column of words. */
    CellStyle headerStyle() {
        return header;
    }

    /** The head of a column of numbers or dates: on the right, like the values. */
    CellStyle numberHeaderStyle() {
        return numberHeader;
    }

    CellStyle inputStyle() {
        return input;
    }

    /** Words, with a small gap to a number on their left. */
    CellStyle textStyle() {
        return text;
    }

    CellStyle dayStyle() {
        return day;
    }

    CellStyle titleStyle() {
        return title;
    }

    CellStyle wordsStyle() {
        return words;
    }

    private XSSFCellStyle header() {
        XSSFCellStyle style = plain(11, true);
        fill(style, HEAD);
        style.setWrapText(true);
        return style;
    }

    private static void indent(XSSFCellStyle style) {
        style.setAlignment(HorizontalAlignment.LEFT);
        style.setIndention((short) 1);
    }

    private XSSFCellStyle input(String format) {
        XSSFCellStyle style = plain(11, false);
        fill(style, PALE);
        style.setBorderBottom(BorderStyle.THIN);
        style.setBottomBorderColor(new XSSFColor(RULE, null));
        style.setDataFormat(book.createDataFormat().getFormat(format));
        return style;
    }

    private XSSFCellStyle plain(int points, boolean bold) {
        XSSFFont font = book.createFont();
        font.setFontName("Calibri");
        font.setFontHeightInPoints((short) points);
        font.setBold(bold);
        font.setColor(new XSSFColor(INK, null));
        XSSFCellStyle style = book.createCellStyle();
        style.setFont(font);
        style.setVerticalAlignment(VerticalAlignment.TOP);
        return style;
    }

    private static void fill(XSSFCellStyle style, byte[] colour) {
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        style.setFillForegroundColor(new XSSFColor(colour, null));
    }

    private static byte[] rgb(int red, int green, int blue) {
        return new byte[] {(byte) red, (byte) green, (byte) blue};
    }
}
